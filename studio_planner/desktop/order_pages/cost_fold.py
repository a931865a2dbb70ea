"""What an order costs, what is asked and was agreed for it, folded away until asked."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from PySide6.QtWidgets import QVBoxLayout, QWidget

from studio_planner.desktop.cost_view import CostView
from studio_planner.desktop.forms.fields import NumberField
from studio_planner.desktop.forms.fold import Fold
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.tongue import translate
from studio_planner.services.amount_words import minutes_said, money_said, percent_said
from studio_planner.services.costs.cost_sums import one_scuffed_joint
from studio_planner.services.costs.cost_words import missing_said, price_warnings
from studio_planner.services.costs.extras import rush_extra
from studio_planner.services.costs.order_cost import order_cost
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.nouns import with_thing

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from studio_planner.craft.orders import Order
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.desk_changes import DeskChanges
    from studio_planner.services.costs.extras import Extra
    from studio_planner.services.costs.order_cost import OrderCost


class OrderCostFold(QWidget):
    """A verb, and under it the agreed price, the costs by kind, and what would cost more."""

    def __init__(self, canvas: Canvas, changes: DeskChanges, parent: QWidget) -> None:
        """Be folded, and about no order yet."""
        super().__init__(parent)
        self._changes = changes
        self._shown: tuple[Studio, Order] | None = None
        self.form = Form(canvas, self._enter, self)
        self._price = NumberField(canvas, "", optional=True)
        self.form.add("price", self._price)
        self.view = CostView(canvas, self)
        inside = QVBoxLayout()
        inside.setSpacing(8)
        inside.addWidget(self.form)
        inside.addWidget(self.view)
        self.fold = Fold(translate("costs", "What it costs"), inside, self)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.fold)
        # Costs are worked out once somebody wants to see them.
        self.fold.button.toggled.connect(lambda _opened: self._show())

    def show_order(self, studio: Studio, order: Order) -> None:
        """Be about an order of a studio."""
        fresh = self._shown is None or self._shown[1].key != order.key
        self._shown = (studio, order)
        self._price.rename(
            translate("costs", "Price agreed on, {currency}").format(currency=studio.currency)
        )
        self.form.show_values({"price": order.price}, studio.units, fresh=fresh)
        self._show()

    def _show(self) -> None:
        if self._shown is None or not self.fold.button.isChecked():
            return
        studio, order = self._shown
        cost = order_cost(studio, studio.plan, order)
        self.view.show_cost(
            studio,
            cost.pieces,
            _sentences(studio, order, cost),
            (*price_warnings(studio, cost), *missing_said(studio, cost.missing)),
        )

    def _enter(self, name: str, values: Mapping[str, Any]) -> None:
        if self._shown is None:
            return
        key = self._shown[1].key
        words = f"{self._shown[1].name}, {self.form.fields[name].words}"

        def make(studio: Studio) -> Studio:
            order = next(one for one in studio.orders if one.key == key)
            return with_thing(studio, replace(order, price=values["price"]))

        self._changes.make(Change(words, make))


def _sentences(studio: Studio, order: Order, cost: OrderCost) -> Iterator[str]:
    currency = studio.currency
    yield translate(
        "costs",
        "Floor price {floor}, which leaves nothing over. By your rule you ask {asked}, of "
        "which {margin} ({share}) stay.",
    ).format(
        floor=money_said(cost.price.floor, currency),
        asked=money_said(cost.price.asked, currency),
        margin=money_said(cost.price.margin, currency),
        share=f"{percent_said(cost.price.margin_share, 0)}\N{NO-BREAK SPACE}%",
    )
    if cost.agreed is not None and cost.agreed_margin is not None and not cost.under_floor:
        yield translate("costs", "{agreed} were agreed on, of which {left} stay.").format(
            agreed=money_said(cost.agreed, currency),
            left=money_said(cost.agreed_margin, currency),
        )
    rush = rush_extra(studio, studio.plan, order)
    yield translate(
        "costs",
        "As a rush, with mixes of its own and a quick parcel, it would cost {extra} more.",
    ).format(extra=_extra_said(rush, currency))
    scuffed = one_scuffed_joint(studio, studio.plan, order)
    if scuffed is not None:
        yield translate(
            "costs", "One more joint to scuff would cost up to {extra} more."
        ).format(extra=_extra_said(scuffed, currency))


def _extra_said(extra: Extra, currency: str) -> str:
    cost = money_said(extra.cost, currency)
    if round(extra.minutes) == 0:
        return cost
    return translate("costs", "{cost} and {minutes} min").format(
        cost=cost, minutes=minutes_said(extra.minutes)
    )
