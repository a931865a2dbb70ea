"""The side of the desk: hands next, promises, and at its foot the section or the worth."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop.measures import SIDE_WIDTH
from studio_planner.desktop.side_foot import SideFoot
from studio_planner.desktop.side_lists import RowList
from studio_planner.desktop.side_rows import asking_of, hands_rows, promise_rows, worth_rows
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Iterator

    from PySide6.QtGui import QResizeEvent

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.section_view import SectionView
    from studio_planner.services.desk import DeskView
    from studio_planner.services.ribbons import Bar, Lane


_ROOM_FOR_FOOT = 540
"""Height in pixels from which the foot is shown below both lists."""


class SidePanel(QWidget):
    """What to do, what was promised, and beneath it the chosen piece or the plan's worth.

    Signals:
        piece_chosen: the key of a piece that was chosen in one of the lists.
    """

    piece_chosen = Signal(str)

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Draw with `canvas`."""
        super().__init__(parent)
        self._canvas = canvas
        self.setFixedWidth(SIDE_WIDTH)
        self.setAutoFillBackground(True)
        hands, promises = translate("side", "Hands next"), translate("side", "Promises")
        self.hands = RowList(
            canvas, hands, translate("side", "Nothing is planned to need hands."), self
        )
        self.promises = RowList(
            canvas, promises, translate("side", "No orders with a plan yet."), self
        )
        self.foot = SideFoot(canvas, self)
        self._titles = [QLabel(hands, self), QLabel(promises, self)]
        self._lay_out()
        for rows in (self.hands, self.promises):
            rows.piece_chosen.connect(self.piece_chosen)
            rows.fitted.connect(self._share_height)
        self.foot.worth.piece_chosen.connect(self.piece_chosen)
        canvas.recoloured.connect(self._recolour)
        self._recolour()

    def _lay_out(self) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(16, 10, 16, 12)
        layout.setSpacing(2)
        for title, widget in zip(self._titles, (self.hands, self.promises), strict=True):
            title.setFont(self._canvas.fonts.clock)
            title.setBuddy(widget)
            layout.addWidget(title)
            layout.addWidget(widget)
            layout.addSpacing(8)
        layout.addWidget(self.foot)
        layout.addStretch(1)

    def _share_height(self) -> None:
        """Give both lists whole rows: promises at least half, hands what is left of it.

        The foot gives way where there is no room for all three.
        """
        tall = self.height() >= _ROOM_FOR_FOOT
        self.foot.setVisible(tall)
        titles = sum(title.sizeHint().height() + 12 for title in self._titles)
        room = self.height() - titles - (self.foot.height() if tall else 0) - 22
        spare = room - self.hands.wanted_height
        promises = self.promises.whole_rows_height(max(room // 2, spare))
        hands = self.hands.whole_rows_height(room - promises)
        self.hands.setFixedHeight(hands)
        # What hands leave over of their part may be enough for one promise more.
        self.promises.setFixedHeight(
            max(promises, self.promises.whole_rows_height(room - hands))
        )

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._share_height()

    def _recolour(self) -> None:
        theme = self._canvas.theme
        palette = theme.palette
        palette.setColor(palette.ColorRole.Window, theme.colour("panel"))
        palette.setColor(palette.ColorRole.Base, theme.colour("panel"))
        self.setPalette(palette)

    @staticmethod
    def asking_ahead(view: DeskView | None) -> Iterator[None]:
        """Ask the clocks that showing a view asks, a few in each part."""
        if view is not None:
            yield from asking_of(view)

    def show_view(self, view: DeskView | None) -> None:
        """Show what a view of the studio says."""
        self.hands.show_rows(hands_rows(view) if view else ())
        self.promises.show_rows(promise_rows(view) if view else ())
        self.foot.worth.show_rows(worth_rows(view) if view else ())

    @property
    def section(self) -> SectionView:
        """The chosen piece in section."""
        return self.foot.section

    def show_lane(self, lane: Lane | None, bar: Bar | None = None) -> None:
        """Show the chosen piece in section, and how sure the chosen bar is."""
        self.foot.show_lane(lane, bar)

    def show_worth(self) -> None:
        """Show what the plan is worth, in place of the section."""
        self.foot.show_page(worth=True)

    def show_section(self) -> None:
        """Show the section of the chosen piece."""
        self.foot.show_page(worth=False)
