"""Whether the bottles are enough for the plan: a row for each part, what runs out first."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop.page import Page
from studio_planner.desktop.stock_pages.part_row import PartRow, standing
from studio_planner.desktop.stock_pages.stock_said import matched_lines
from studio_planner.desktop.studio_pages.lines import Line
from studio_planner.desktop.tongue import translate
from studio_planner.services.caution import deferral
from studio_planner.services.stocks.stock_view import stock_of
from studio_planner.services.stocks.stock_words import running_out_said

if TYPE_CHECKING:
    from datetime import date

    from PySide6.QtGui import QResizeEvent

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView
    from studio_planner.services.stocks.stock_view import Stock

_WIDEST = 980
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
        canvas = self.canvas
        self.hint = Line(canvas, "", self)
        self.to_mind = Line(canvas, "", self, colour="now")
        self.matched = Line(canvas, "", self)
        self.legend = Line(canvas, "", self, font="small", colour="quiet")
        self.rows: list[PartRow] = []
        self._body = QVBoxLayout()
        self._body.setSpacing(6)
        self._lay_out()

    def _lay_out(self) -> None:
        column = QWidget(self)
        column.setMaximumWidth(_WIDEST)
        inside = QVBoxLayout(column)
        inside.setContentsMargins(0, 0, 0, 0)
        inside.setSpacing(6)
        title = translate("stock", "What the bottles are enough for")
        inside.addWidget(Line(self.canvas, title, self, font="clock"))
        for line in (self.hint, self.to_mind, self.matched, self.legend):
            inside.addWidget(line)
        inside.addLayout(self._body)
        inside.addWidget(Line(self.canvas, deferral(), self, font="small", colour="quiet"))
        inside.addStretch(1)
        whole = QHBoxLayout(self)
        whole.setContentsMargins(20, 12, 16, 12)
        whole.addWidget(column, 10)
        whole.addStretch(1)

    @override
    def show_view(self, view: DeskView | None) -> None:
        if view is None:
            self._say_nothing()
            self.hint.say(translate("stock", "Open a studio first."))
            return
        stock = stock_of(view.studio, view.plan, view.now)
        today = view.now.astimezone(view.studio.time_zone).date()
        self.hint.say("" if stock.rows else _nothing())
        marked = (
            f"\N{BLACK RIGHT-POINTING TRIANGLE} {sentence}"
            for sentence in _to_mind(view.studio, stock, today)
        )
        self.to_mind.say("\n".join(marked))
        self.matched.say("\n".join(matched_lines(view.studio, stock)))
        planned = any(row.planned_g > 0.0 for row in stock.rows)
        self.legend.say(_legend() if planned else "")
        self._show_rows(view, stock)
        self._fit()

    def _say_nothing(self) -> None:
        for line in (self.to_mind, self.matched, self.legend):
            line.say("")
        for row in self.rows:
            row.hide()

    def _show_rows(self, view: DeskView, stock: Stock) -> None:
        rows = sorted(stock.rows, key=lambda row: row.enough)
        while len(self.rows) < len(rows):
            made = PartRow(self.canvas, self)
            made.bottle_asked.connect(self.bottle_asked)
            made.new_asked.connect(self.new_asked)
            self._body.addWidget(made)
            self.rows.append(made)
        places = max((len(standing(stock, row)) for row in rows), default=1)
        for number, widget in enumerate(self.rows):
            widget.setVisible(number < len(rows))
            if number < len(rows):
                widget.show_row(view, stock, rows[number], places)

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        for row in self.rows:
            row.steps.setVisible(self.width() >= _ROOM_FOR_STEPS)


def _nothing() -> str:
    return translate(
        "stock",
        "Nothing is planned and no bottle is entered. Enter the bottles on your shelf, and "
        "plan: then you see here what lasts and what to order.",
    )


def _legend() -> str:
    return translate(
        "stock",
        "Hatched is what the plan has reserved. Each step on the right is a pour, from today "
        "on; the broken line is your reserve, the post the day to order by.",
    )


def _to_mind(studio: Studio, stock: Stock, today: date) -> list[str]:
    """What no row says by itself."""
    of_rows = {said for row in stock.rows for said in running_out_said(studio, row, today)}
    return [sentence for sentence in stock.warnings if sentence not in of_rows]
