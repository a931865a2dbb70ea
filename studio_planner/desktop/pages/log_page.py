"""The page of the log: what happened, and where a piece came from."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QStackedWidget, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop.log_pages.happened_part import HappenedPart
from studio_planner.desktop.log_pages.trace_part import TracePart
from studio_planner.desktop.page import Page
from studio_planner.desktop.piece_pages.part_bar import PartBar
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView

HAPPENED, TRACE = "happened", "trace"
"""The keys of its parts."""


class LogPage(Page):
    """Two parts, one in front; what is typed in either stays."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Show no studio yet."""
        super().__init__(desk, parent)
        self._minute = 0
        self._view: DeskView | None = None
        self._stale: set[str] = set()
        parts = (
            (HAPPENED, translate("happened", "What happened")),
            (TRACE, translate("happened", "Where did it come from?")),
        )
        self.parts = PartBar(self.canvas, parts, self)
        self.parts.setAccessibleName(translate("happened", "Of the log"))
        self.happened = HappenedPart(desk, self)
        self.trace = TracePart(desk, self)
        self._front = QStackedWidget(self)
        self._front.addWidget(self.happened)
        self._front.addWidget(self.trace)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(14, 8, 4, 8)
        layout.setSpacing(2)
        layout.addWidget(self.parts)
        layout.addWidget(self._front, 1)
        self.parts.part_asked.connect(self.show_part)
        self.happened.trace_asked.connect(self._trace)
        self.canvas.redrawn.connect(self._time_passes)
        self.show_part(HAPPENED)

    def show_part(self, key: str) -> None:
        """Bring what happened, or the trace, to the front."""
        self.parts.show_part(key)
        self._front.setCurrentWidget(self.trace if key == TRACE else self.happened)
        self._show_front()

    @override
    def show_view(self, view: DeskView | None) -> None:
        self._view = view
        self._stale = {HAPPENED, TRACE}
        self._show_front()

    def _show_front(self) -> None:
        """Show the studio on the part in front; the other one has to wait until it is there."""
        view, key = self._view, HAPPENED if self._front.currentIndex() == 0 else TRACE
        if key not in self._stale:
            return
        self._stale.remove(key)
        if key == HAPPENED:
            self.happened.show_view(view)
        else:
            self.trace.show_studio(None if view is None else view.studio)

    @property
    @override
    def chosen(self) -> str:
        return self.happened.piece

    @override
    def choose(self, key: str) -> None:
        """Ask what happened to a piece; behind trace/ where it came from."""
        part, _, piece = key.partition("/")
        if part == TRACE:
            self._trace(piece)
        else:
            self.show_part(HAPPENED)
            self.happened.ask(key)

    def _trace(self, piece: str) -> None:
        self.show_part(TRACE)
        self.trace.ask_piece(piece)

    def _time_passes(self) -> None:
        minute = int(self.desk.clock.now().timestamp() // 60.0)
        if minute != self._minute and self.happened.isVisible():
            self._minute = minute
            # The view gets the new moment after everything was told to draw it.
            QTimer.singleShot(0, self, self.happened.tick)
