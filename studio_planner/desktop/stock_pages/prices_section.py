"""The rules of the stock, what things cost, and how a price is made of it."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.craft.prices import PriceRule
from studio_planner.desktop.forms.fields import ChoiceField, NumberField
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.page import Page
from studio_planner.desktop.stock_pages.price_texts import (
    Figure,
    cost_figures,
    price_figures,
    stock_figures,
)
from studio_planner.desktop.studio_pages.lines import Line
from studio_planner.desktop.tongue import translate
from studio_planner.services.amount_words import money_said
from studio_planner.services.costs.order_cost import price_for
from studio_planner.services.editing.changes import Change

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView

_WIDEST, _FIELD_WIDTH = 820, 210
_UNDER_A_FIELD = 8
_EXAMPLE = 40.0
"""The cost in the example under the rule."""


class PricesSection(Page):
    """All figures, each beside what it does; the example at the foot follows them."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Lie in the window `desk`, of no studio yet."""
        super().__init__(desk, parent)
        self._path: object = None
        self.stock = Form(self.canvas, self._enter_stock, self)
        self.prices = Form(self.canvas, self._enter_prices, self)
        self._money: list[tuple[NumberField, Figure]] = []
        self.example = Line(self.canvas, "", self, font="bold")
        self._lay_out()

    def _lay_out(self) -> None:
        canvas = self.canvas
        column = QWidget(self)
        column.setMaximumWidth(_WIDEST)
        layout = QVBoxLayout(column)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(2)
        title = translate("prices", "Prices and rules")
        layout.addWidget(Line(canvas, title, self, font="clock"))
        said = translate(
            "prices",
            "Bottles and pigments have their prices in their own entries, blanks with their "
            "pieces. What nobody has entered is named where it is missing and counts nothing.",
        )
        layout.addWidget(Line(canvas, said, self, colour="quiet"))
        self._group(layout, translate("prices", "The stock"), stock_figures(), self.stock)
        layout.addWidget(self.stock)
        self._group(layout, translate("prices", "What it costs"), cost_figures(), self.prices)
        self._head(layout, translate("prices", "What you ask"))
        rules = [
            (PriceRule.ON_COST, translate("prices", "a share on top of the cost")),
            (PriceRule.OF_PRICE, translate("prices", "a share of the price")),
        ]
        rule = ChoiceField(canvas, translate("prices", "Your margin is"), rules)
        self.prices.add("rule", rule, into=layout)
        for figure in price_figures():
            layout.addWidget(self._row(figure, self.prices))
        layout.addWidget(self.prices)
        layout.addSpacing(6)
        layout.addWidget(self.example)
        layout.addStretch(1)
        whole = QHBoxLayout(self)
        whole.setContentsMargins(20, 12, 16, 12)
        whole.addWidget(column, 10)
        whole.addStretch(1)

    def _head(self, layout: QVBoxLayout, title: str) -> None:
        line = Line(self.canvas, title, self, font="bold")
        line.setContentsMargins(0, 12, 0, 2)
        layout.addWidget(line)

    def _group(
        self, layout: QVBoxLayout, title: str, figures: tuple[Figure, ...], form: Form
    ) -> None:
        self._head(layout, title)
        for figure in figures:
            layout.addWidget(self._row(figure, form))

    def _row(self, figure: Figure, form: Form) -> QWidget:
        row = QWidget(self)
        layout = QHBoxLayout(row)
        layout.setContentsMargins(0, 2, 0, 2)
        layout.setSpacing(16)
        field = NumberField(self.canvas, figure.title, figure.quantity, row)
        field.setFixedWidth(_FIELD_WIDTH)
        form.add(figure.name, field, into=layout)
        if figure.money:
            self._money.append((field, figure))
        sentence = Line(self.canvas, figure.sentence, row)
        sentence.setContentsMargins(0, 0, 0, _UNDER_A_FIELD)
        layout.addWidget(sentence, 1, Qt.AlignmentFlag.AlignBottom)
        return row

    @override
    def show_view(self, view: DeskView | None) -> None:
        self.setEnabled(view is not None)
        if view is None:
            return
        studio, session = view.studio, self.desk.session
        path = None if session is None else session.path
        fresh, self._path = path != self._path, path
        for field, figure in self._money:
            field.rename(
                translate("prices", "{what}, {currency}").format(
                    what=figure.title, currency=studio.currency
                )
            )
        for form, rules in ((self.stock, studio.stock), (self.prices, studio.prices)):
            values = {name: getattr(rules, name) for name in form.fields}
            form.show_values(values, studio.units, fresh=fresh)
        self.example.say(_example(studio))

    def _enter_stock(self, name: str, values: Mapping[str, Any]) -> None:
        self._make(
            self.stock.fields[name].words,
            lambda studio: replace(studio, stock=replace(studio.stock, **values)),
        )

    def _enter_prices(self, name: str, values: Mapping[str, Any]) -> None:
        self._make(
            self.prices.fields[name].words,
            lambda studio: replace(studio, prices=replace(studio.prices, **values)),
        )

    def _make(self, words: str, make: Any) -> None:  # noqa: ANN401 - as a change takes it
        self.desk.changes.make(Change(words, make))


def _example(studio: Studio) -> str:
    price = price_for(studio.prices, _EXAMPLE)
    return translate("prices", "So what costs {cost} is offered for {asked}.").format(
        cost=money_said(_EXAMPLE, studio.currency),
        asked=money_said(price.asked, studio.currency),
    )
