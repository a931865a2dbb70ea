"""What the window holds once a studio is open: timeline, room, its scroll bar, and the side."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from studio_planner.desktop.room_strip import RoomStrip
from studio_planner.desktop.side_panel import SidePanel
from studio_planner.desktop.time_scroll import TimeScroll
from studio_planner.desktop.timeline import Timeline

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.desk import DeskView


class DeskParts(QWidget):
    """Timeline over room over scroll bar, the side beside them; a choice in one goes to all."""

    def __init__(
        self, canvas: Canvas, attempt: Callable[[Callable[[], object]], bool], parent: QWidget
    ) -> None:
        """Draw what `canvas` shows; `attempt` runs what may fail in a sentence."""
        super().__init__(parent)
        self._canvas = canvas
        self._attempt = attempt
        self.timeline = Timeline(canvas, self)
        self.room = RoomStrip(canvas, self)
        self.time_scroll = TimeScroll(canvas.scale, self)
        self.side = SidePanel(canvas, self)
        self._lay_out()
        self.timeline.piece_chosen.connect(self._piece_chosen)
        self.side.piece_chosen.connect(self.timeline.choose_piece)

    def _lay_out(self) -> None:
        left = QVBoxLayout()
        left.setSpacing(0)
        left.addWidget(self.timeline, 1)
        left.addWidget(self.room)
        left.addWidget(self.time_scroll)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addLayout(left, 1)
        layout.addWidget(self.side)
        self.setTabOrder(self.timeline, self.side.hands)
        self.setTabOrder(self.side.hands, self.side.promises)

    def show_view(self, view: DeskView | None) -> None:
        """Show a view of a studio in every part."""
        self.timeline.show_lanes()
        lanes, row = (view.lanes if view else ()), self._canvas.current_row
        self.side.show_lane(lanes[row] if 0 <= row < len(lanes) else None)
        # What needs hands asks many clocks: the timeline is up before it is asked.
        QTimer.singleShot(0, self, self.show_side)

    def show_side(self) -> None:
        """Ask anew what needs hands and how the promises stand."""
        self._attempt(lambda: self.side.show_view(self._canvas.view))

    def _piece_chosen(self, key: str) -> None:
        lanes = self.timeline.lanes.lanes
        self.side.show_lane(next((lane for lane in lanes if lane.piece.key == key), None))
