"""The plan without a change and the tried one side by side: promises, then what changes."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QVBoxLayout, QWidget

from studio_planner.desktop import words
from studio_planner.desktop.layouts import take_out
from studio_planner.desktop.question_pages.window_strip import WindowStrip
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtGui import QFont

    from studio_planner.craft.plans import Outcome
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.desk import DeskView
    from studio_planner.services.trying.comparing_trials import Comparison
    from studio_planner.services.trying.pours import PourThen

_MOST_POURS = 8
_NAME, _WITHOUT, _TRIED = 0, 1, 2


class BesideView(QWidget):
    """Two tables, each with what it is about, and the plans without and with the change."""

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Compare nothing yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._shown: tuple[DeskView, Comparison] | None = None
        self._body: QWidget | None = None
        self._layout = QVBoxLayout(self)
        self._layout.setContentsMargins(0, 0, 0, 0)
        canvas.recoloured.connect(self._again)
        self._look = canvas.theme.look
        self.hide()

    def clear(self) -> None:
        """Compare nothing any more."""
        self._shown = None
        self._drop_body()
        self.hide()

    @property
    def spoken(self) -> str:
        """Everything that stands there, cell by cell."""
        found = self._body.findChildren(QLabel) if self._body is not None else []
        return "\n".join(label.text() for label in found)

    def show_comparison(self, today: DeskView, comparison: Comparison) -> None:
        """Show a comparison of two plans that begin `today`."""
        self._shown = (today, comparison)
        self._look = self._canvas.theme.look
        self._drop_body()
        body = self._body = QWidget(self)
        self._layout.addWidget(body)
        grid = QGridLayout(body)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(22)
        grid.setVerticalSpacing(5)
        for column, stretch in ((_NAME, 4), (_WITHOUT, 5), (_TRIED, 5)):
            grid.setColumnStretch(column, stretch)
        self._windows(grid, today, comparison)
        self._promises(grid, today, comparison)
        self._pours(grid, today, comparison)
        self.show()

    def _again(self) -> None:
        # The now line moves every few seconds; only other colours need other labels.
        if self._shown is not None and self._look is not self._canvas.theme.look:
            self.show_comparison(*self._shown)

    def _drop_body(self) -> None:
        body, self._body = self._body, None
        if body is not None:
            take_out(self._layout, body)

    # Promises

    def _promises(self, grid: QGridLayout, today: DeskView, comparison: Comparison) -> None:
        if not comparison.promises:
            return
        self._heads(grid, translate("questions", "Promises"))
        for row in comparison.promises:
            self._row(
                grid,
                row.name,
                self._promise(today, row.without),
                self._promise(today, row.tried),
            )

    def _promise(self, view: DeskView, outcome: Outcome | None) -> str:
        word = words.promise_word(outcome, view.studio.settings)
        if outcome is None or outcome.leaves is None:
            return word
        leaves = words.moment(outcome.leaves, words.wall_of(view.studio))
        text = translate("questions", "leaves {leaves}, {word}")
        return text.format(leaves=leaves, word=word)

    # Pours

    def _pours(self, grid: QGridLayout, today: DeskView, comparison: Comparison) -> None:
        shown = comparison.pours[:_MOST_POURS]
        if not shown:
            return
        self._heads(grid, translate("questions", "Pours that change"))
        for row in shown:
            self._row(
                grid, row.words, self._pour(today, row.without), self._pour(today, row.tried)
            )
        left = len(comparison.pours) - len(shown)
        if left:
            text = translate("questions", "and {count} more").format(count=left)
            grid.addWidget(
                self._label(text, self._canvas.fonts.small, "quiet"), grid.rowCount(), 0
            )

    def _windows(self, grid: QGridLayout, today: DeskView, comparison: Comparison) -> None:
        strip = WindowStrip(self._canvas, today, comparison.pours, self._body)
        strip.setVisible(strip.worth_drawing)
        if strip.worth_drawing:
            grid.addWidget(strip, grid.rowCount(), 0, 1, 3)

    def _pour(self, view: DeskView, then: PourThen | None) -> str:
        if then is None:
            return translate("questions", "not in this plan")
        wall = words.wall_of(view.studio)
        parts = [words.moment(then.start, wall)]
        if then.opens is not None:
            opens = words.moment(then.opens, wall)
            if then.closes is None:
                text = translate("questions", "window from {opens}, stays open")
                parts.append(text.format(opens=opens))
            else:
                text = translate("questions", "window {opens} to {closes}")
                parts.append(text.format(opens=opens, closes=words.moment(then.closes, wall)))
        parts.append(self._margin(view, then))
        return "\n".join(parts)

    def _margin(self, view: DeskView, then: PourThen) -> str:
        if then.margin is None:
            return translate("questions", "dew-point margin not known")
        step = words.degree_step(then.margin, view.studio.units, decimals=1)
        if then.margin < view.studio.settings.dew_margin_celsius:
            return translate("questions", "dew-point margin only {step}: blush").format(
                step=step
            )
        return translate("questions", "dew-point margin {step} or more").format(step=step)

    # Cells

    def _heads(self, grid: QGridLayout, title: str) -> None:
        row = grid.rowCount()
        fonts = self._canvas.fonts
        grid.setRowMinimumHeight(row, round(fonts.plain_height * 2))
        below = Qt.AlignmentFlag.AlignBottom
        grid.addWidget(self._label(title, fonts.bold), row, _NAME, below)
        without, tried = translate("questions", "Without it"), translate("questions", "Tried")
        grid.addWidget(self._label(without, fonts.small_bold, "quiet"), row, _WITHOUT, below)
        grid.addWidget(self._label(tried, fonts.small_bold, "quiet"), row, _TRIED, below)

    def _row(self, grid: QGridLayout, name: str, without: str, tried: str) -> None:
        row, fonts = grid.rowCount(), self._canvas.fonts
        same = without == tried
        top = Qt.AlignmentFlag.AlignTop
        grid.addWidget(self._label(name, fonts.plain), row, _NAME, top)
        grid.addWidget(self._label(without, fonts.small), row, _WITHOUT, top)
        text = translate("questions", "the same") if same else tried
        font = fonts.small if same else fonts.small_bold
        grid.addWidget(self._label(text, font, "quiet" if same else "ink"), row, _TRIED, top)

    def _label(self, text: str, font: QFont, colour: str = "ink") -> QLabel:
        label = QLabel(text, self._body)
        label.setFont(font)
        label.setWordWrap(True)
        label.setTextFormat(Qt.TextFormat.PlainText)
        palette = label.palette()
        palette.setColor(palette.ColorRole.WindowText, self._canvas.theme.colour(colour))
        label.setPalette(palette)
        return label
