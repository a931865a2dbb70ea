"""Whether the bottles are enough for the plan: a row for each part of each product."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop.layouts import empty
from studio_planner.desktop.page import Page
from studio_planner.desktop.stock_pages.bottle_drawing import filled
from studio_planner.desktop.stock_pages.bottle_row import BottleRow
from studio_planner.desktop.stock_pages.level_steps import LevelSteps
from studio_planner.desktop.stock_pages.stock_said import (
    described,
    left_line,
    letter_of,
    matched_lines,
    verdict_line,
)
from studio_planner.desktop.studio_pages.lines import Line, Rule, verb
from studio_planner.desktop.tongue import translate
from studio_planner.services.caution import deferral
from studio_planner.services.stocks.stock_view import stock_of
from studio_planner.services.stocks.stock_words import running_out_said, stuff_said

if TYPE_CHECKING:
    from datetime import date

    from PySide6.QtGui import QResizeEvent

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView
    from studio_planner.services.stocks.running_out import StockRow
    from studio_planner.services.stocks.stock_view import LotRow, Stock

_WIDEST, _HIGH, _MOST_BOTTLES = 980, 74, 4
_ROOM_FOR_STEPS = 720
"""From this width on the steps have room beside the words."""


class EnoughSection(Page):
    """What runs out when, and what else there is to mind.

    Signals:
        bottle_asked: the key of a bottle that the maker wants to see.
        new_asked: (product, part) of which a bottle is to be entered.
    """

    bottle_asked = Signal(str)
    new_asked = Signal(str, object)

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Lie in the window `desk`, of no studio yet."""
        super().__init__(desk, parent)
        self._least = 1
        self._rows = QVBoxLayout()
        self._rows.setSpacing(8)
        column = QWidget(self)
        column.setMaximumWidth(_WIDEST)
        inside = QVBoxLayout(column)
        inside.setContentsMargins(0, 0, 0, 0)
        inside.setSpacing(6)
        title = translate("stock", "What the bottles are enough for")
        inside.addWidget(Line(self.canvas, title, self, font="clock"))
        inside.addLayout(self._rows)
        inside.addWidget(Line(self.canvas, deferral(), self, font="small", colour="quiet"))
        inside.addStretch(1)
        whole = QHBoxLayout(self)
        whole.setContentsMargins(20, 12, 16, 12)
        whole.addWidget(column, 10)
        whole.addStretch(1)

    @override
    def show_view(self, view: DeskView | None) -> None:
        empty(self._rows)
        if view is None:
            self._say(translate("stock", "Open a studio first."))
            return
        stock = stock_of(view.studio, view.plan, view.now)
        if not stock.rows:
            self._say(
                translate(
                    "stock",
                    "Nothing is planned and no bottle is entered. Enter the bottles on your "
                    "shelf, and plan: then you see here what lasts and what to order.",
                )
            )
        today = view.now.astimezone(view.studio.time_zone).date()
        for sentence in _to_mind(view.studio, stock, today):
            self._say(f"\N{BLACK RIGHT-POINTING TRIANGLE} {sentence}", colour="now")
        for sentence in matched_lines(view.studio, stock):
            self._say(sentence)
        if any(row.planned_g > 0.0 for row in stock.rows):
            said = translate(
                "stock",
                "Hatched is what the plan has reserved. Each step on the right is a pour, from "
                "today on; the broken line is your reserve, the post the day to order by.",
            )
            self._say(said, font="small", colour="quiet")
        standing = [len(_standing(stock, row)) for row in stock.rows]
        self._least = max(standing, default=1)
        for row in stock.rows:
            self._rows.addWidget(Rule(self.canvas, self))
            self._rows.addWidget(self._row(view, stock, row, today))
        self._fit()

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        for steps in self.findChildren(LevelSteps):
            steps.setVisible(self.width() >= _ROOM_FOR_STEPS)

    def _say(self, words: str, *, font: str = "plain", colour: str = "ink") -> None:
        self._rows.addWidget(Line(self.canvas, words, self, font=font, colour=colour))

    def _row(self, view: DeskView, stock: Stock, row: StockRow, today: date) -> QWidget:
        studio = view.studio
        own = [one for one in stock.lots if (one.lot.product, one.lot.part) == _key(row)]
        name = stuff_said(studio, row.product, row.part)
        whole = QWidget(self)
        bottles = BottleRow(self.canvas, _HIGH, whole, least=self._least)
        bottles.setAccessibleName(translate("stock", "Bottles of {stuff}").format(stuff=name))
        bottles.show_bottles(
            [filled(one, letter_of(row.part)) for one in _standing(stock, row)],
            " ".join(described(studio, one) for one in own),
        )
        layout = QHBoxLayout(whole)
        layout.setContentsMargins(0, 2, 0, 2)
        layout.setSpacing(14)
        layout.addWidget(bottles, 0, Qt.AlignmentFlag.AlignVCenter)
        layout.addLayout(self._words(studio, row, name, today), 3)
        steps = LevelSteps(self.canvas, whole)
        steps.show_row(view, stock, row)
        layout.addWidget(steps, 2)
        button = self._verb(row, own[0].lot.key if own else "", name, whole)
        layout.addWidget(button, 0, Qt.AlignmentFlag.AlignVCenter)
        return whole

    def _words(self, studio: Studio, row: StockRow, name: str, today: date) -> QVBoxLayout:
        lines = QVBoxLayout()
        lines.setSpacing(2)
        lines.addStretch(1)
        lines.addWidget(Line(self.canvas, name, self, font="bold"))
        lines.addWidget(Line(self.canvas, left_line(studio, row), self))
        verdict = Line(self.canvas, "", self, colour="ink" if row.enough else "now")
        verdict.say(verdict_line(studio, row, today))
        lines.addWidget(verdict)
        lines.addStretch(1)
        return lines

    def _verb(self, row: StockRow, key: str, name: str, parent: QWidget) -> QWidget:
        if key:
            said = translate("stock", "Its bottles")
            return verb(said, lambda: self.bottle_asked.emit(key), parent, about=name)
        said = translate("stock", "Enter a bottle")
        return verb(
            said, lambda: self.new_asked.emit(row.product, row.part), parent, about=name
        )


def _standing(stock: Stock, row: StockRow) -> list[LotRow]:
    """The bottles that are drawn: those that hold something, as far as there is room."""
    own = [one for one in stock.lots if (one.lot.product, one.lot.part) == _key(row)]
    return [one for one in own if one.level.left_g > 0.0][:_MOST_BOTTLES]


def _to_mind(studio: Studio, stock: Stock, today: date) -> list[str]:
    """What no row says by itself."""
    of_rows = {said for row in stock.rows for said in running_out_said(studio, row, today)}
    return [sentence for sentence in stock.warnings if sentence not in of_rows]


def _key(row: StockRow) -> tuple[str, object]:
    return (row.product, row.part)
