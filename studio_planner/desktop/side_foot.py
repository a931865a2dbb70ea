"""The foot of the side: the chosen piece in section, its mix, or what the plan is worth."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QTabBar, QVBoxLayout, QWidget

from studio_planner.desktop import bar_words, words
from studio_planner.desktop.idle_work import IdleWork
from studio_planner.desktop.section_view import SectionView
from studio_planner.desktop.short_label import ShortLabel
from studio_planner.desktop.side_lists import RowList
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.side_rows import WorthRow
    from studio_planner.services.ribbons import Bar, Lane

_SECTION, _WORTH, _MIX = 0, 1, 2
_GAP = 2


class SideFoot(QWidget):
    """Three pages of one height, so that the lists above keep theirs."""

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Show the section, of nothing yet."""
        super().__init__(parent)
        self._canvas = canvas
        self.tabs = QTabBar(self)
        self.piece = ShortLabel(self)
        self.sure = ShortLabel(self)
        self.section = SectionView(canvas, self)
        self.later = IdleWork(self)
        self.mix = RowList(
            canvas,
            translate("side", "The mix of the chosen pour"),
            translate("side", "Choose a pour that is still to come: here is its mix."),
            self,
        )
        self.worth = RowList(
            canvas,
            translate("side", "How good this plan is"),
            translate("side", "No plan is kept yet."),
            self,
        )
        self._lay_out()
        self.tabs.currentChanged.connect(self._show_current)
        self.worth.fitted.connect(lambda: self._fit(self.worth))
        self.mix.fitted.connect(lambda: self._fit(self.mix))
        canvas.recoloured.connect(self._recolour)
        self._recolour()
        self.show_lane(None, None)
        self._show_current()

    def _lay_out(self) -> None:
        fonts = self._canvas.fonts
        self.tabs.setAccessibleName(
            translate("side", "The piece in section, its mix, or how good the plan is")
        )
        self.tabs.setFont(fonts.bold)
        self.tabs.setUsesScrollButtons(False)
        self.tabs.setDrawBase(False)
        self.tabs.setExpanding(False)
        self.tabs.addTab(translate("side", "In section"))
        self.tabs.addTab(translate("side", "How good"))
        self.tabs.addTab(translate("side", "Mix"))
        self.tabs.setTabToolTip(
            _SECTION, translate("side", "The chosen piece, cut through its coats")
        )
        self.tabs.setTabToolTip(
            _WORTH, translate("side", "How good this plan is, and how sure that is")
        )
        self.piece.setFont(fonts.bold)
        self.sure.setFont(fonts.small)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(_GAP)
        for part in (self.tabs, self.piece, self.sure, self.section, self.mix, self.worth):
            layout.addWidget(part)
        layout.addStretch(1)
        self.setFixedHeight(self._tabs_height + self._page_height)

    def _recolour(self) -> None:
        palette = self._canvas.theme.palette
        palette.setColor(palette.ColorRole.WindowText, self._canvas.theme.colour("quiet"))
        self.sure.setPalette(palette)

    @property
    def _tabs_height(self) -> int:
        return self.tabs.sizeHint().height() + _GAP

    @property
    def _page_height(self) -> int:
        lines = self.piece.sizeHint().height() + self.sure.sizeHint().height()
        return lines + self.section.height() + 2 * _GAP

    def _fit(self, rows: RowList) -> None:
        rows.setFixedHeight(rows.whole_rows_height(self._page_height))

    def show_page(self, *, worth: bool) -> None:
        """Show what the plan is worth, or a page of the chosen piece: its mix stays in view."""
        if worth:
            self.tabs.setCurrentIndex(_WORTH)
        elif self.tabs.currentIndex() == _WORTH:
            self.tabs.setCurrentIndex(_SECTION)

    def _show_current(self) -> None:
        current = self.tabs.currentIndex()
        self.worth.setVisible(current == _WORTH)
        self.mix.setVisible(current == _MIX)
        for part in (self.piece, self.sure, self.section):
            part.setVisible(current == _SECTION)

    def _reckoning(self, bar: Bar) -> Iterator[None]:
        """Show the mix of a pour in a wait of its own: its minutes and heat are reckoned."""
        from studio_planner.desktop.mix_rows import mix_rows  # noqa: PLC0415 - when a bar is chosen

        yield
        self._show_mix(mix_rows(bar))

    def _show_mix(self, rows: tuple[WorthRow, ...]) -> None:
        """Show the mix of a pour; where there is something to mind its tab says so."""
        self.mix.show_rows(rows)
        minds = next((row.detail for row in rows if row.minds), "")
        about = translate("side", "Cups, minutes and heat of the mix of the chosen pour")
        name = translate("side", "Mix")
        mark = "\N{BLACK RIGHT-POINTING TRIANGLE}"
        self.tabs.setTabText(_MIX, f"{mark} {name}" if minds else name)
        self.tabs.setTabToolTip(_MIX, minds or about)

    def show_lane(self, lane: Lane | None, bar: Bar | None) -> None:
        """Show a piece in section, and how sure it is that the chosen coat finds its window."""
        self.piece.setText(_title(lane, bar))
        self.sure.setText("" if bar is None else bar_words.sure_words(bar))
        self.section.show_lane(lane)
        if bar is None:
            self.later.drop()
            self._show_mix(())
        else:
            # The tab says what to mind, also while another one is in front.
            self.later.do(self._reckoning(bar))


def _title(lane: Lane | None, bar: Bar | None) -> str:
    if bar is not None:
        return bar_words.short_name(bar)
    return "" if lane is None else words.piece_name(lane.piece)
