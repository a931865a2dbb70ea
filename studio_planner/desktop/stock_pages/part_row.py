"""One part of a product on the page of what lasts: its bottles, words, steps and a verb."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from studio_planner.desktop.stock_pages.bottle_drawing import filled
from studio_planner.desktop.stock_pages.bottle_row import BottleRow
from studio_planner.desktop.stock_pages.level_steps import LevelSteps
from studio_planner.desktop.stock_pages.stock_said import (
    described,
    left_line,
    letter_of,
    verdict_line,
)
from studio_planner.desktop.studio_pages.lines import Line, Rule, verb
from studio_planner.desktop.tongue import translate
from studio_planner.services.stocks.stock_words import stuff_said

if TYPE_CHECKING:
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.desk import DeskView
    from studio_planner.services.stocks.running_out import StockRow
    from studio_planner.services.stocks.stock_view import LotRow, Stock

_HIGH, _MOST_BOTTLES = 74, 4


class PartRow(QWidget):
    """What is there of one part, what the plan takes of it, and whether it is enough.

    Signals:
        bottle_asked: the key of its first bottle, which the maker wants to see.
        new_asked: (product, part) of which a bottle is to be entered.
    """

    bottle_asked = Signal(str)
    new_asked = Signal(str, object)

    def __init__(self, canvas: Canvas, parent: QWidget) -> None:
        """Show no part yet."""
        super().__init__(parent)
        self._row: StockRow | None = None
        self._first = ""
        self.bottles = BottleRow(canvas, _HIGH, self)
        self.name = Line(canvas, "", self, font="bold")
        self.left = Line(canvas, "", self)
        self.enough = Line(canvas, "", self)
        self.short = Line(canvas, "", self, colour="now")
        self.steps = LevelSteps(canvas, self)
        self.button = verb("", self._ask, self)
        lines = QVBoxLayout()
        lines.setSpacing(2)
        lines.addStretch(1)
        for line in (self.name, self.left, self.enough, self.short):
            lines.addWidget(line)
        lines.addStretch(1)
        row = QHBoxLayout()
        row.setSpacing(14)
        row.addWidget(self.bottles, 0, Qt.AlignmentFlag.AlignVCenter)
        row.addLayout(lines, 3)
        row.addWidget(self.steps, 2)
        row.addWidget(self.button, 0, Qt.AlignmentFlag.AlignVCenter)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 2)
        layout.setSpacing(8)
        layout.addWidget(Rule(canvas, self))
        layout.addLayout(row)

    def show_row(self, view: DeskView, stock: Stock, row: StockRow, places: int) -> None:
        """Show a part; there is room for the drawings of so many bottles."""
        studio, self._row = view.studio, row
        today = view.now.astimezone(studio.time_zone).date()
        own = bottles_of(stock, row)
        name = stuff_said(studio, row.product, row.part)
        self._first = own[0].lot.key if own else ""
        self.bottles.least = places
        self.bottles.setAccessibleName(
            translate("stock", "Bottles of {stuff}").format(stuff=name)
        )
        self.bottles.show_bottles(
            [filled(one, letter_of(row.part)) for one in standing(stock, row)],
            " ".join(described(studio, one) for one in own),
        )
        self.name.say(name)
        self.left.say(left_line(studio, row))
        verdict = verdict_line(studio, row, today)
        self.enough.say(verdict if row.enough else "")
        self.short.say("" if row.enough else verdict)
        self.steps.show_row(view, stock, row)
        words = (
            translate("stock", "Its bottles") if own else translate("stock", "Enter a bottle")
        )
        self.button.setText(words)
        self.button.setAccessibleName(f"{words}: {name}")

    def _ask(self) -> None:
        if self._first:
            self.bottle_asked.emit(self._first)
        elif self._row is not None:
            self.new_asked.emit(self._row.product, self._row.part)


def bottles_of(stock: Stock, row: StockRow) -> list[LotRow]:
    """All bottles of a part, in the order that they were entered in."""
    key = (row.product, row.part)
    return [one for one in stock.lots if (one.lot.product, one.lot.part) == key]


def standing(stock: Stock, row: StockRow) -> list[LotRow]:
    """The bottles that are drawn: those that hold something, as far as there is room."""
    own = bottles_of(stock, row)
    return [one for one in own if one.level.left_g > 0.0][:_MOST_BOTTLES]
