"""What a plan means for the promises that were given."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.tongue import translate
from studio_planner.services.naming import find_named
from studio_planner.services.still_to_do import done_with

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.orders import Order
    from studio_planner.craft.plans import Outcome, Plan
    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True, kw_only=True)
class PromiseKept:
    """An order and what the plan means for it; `outcome` is None when the plan knows it not.

    What is packed or has left is as the log has it, whatever the plan says; `shipped` is when
    all of it had left.
    """

    order: Order
    outcome: Outcome | None
    shipped: datetime | None = None

    @property
    def word(self) -> str:
        """One word or two for how it stands: shipped, in time, late, or not planned."""
        if self.shipped is not None:
            return translate("promises", "shipped")
        if self.outcome is None or self.outcome.late_hours is None:
            return translate("promises", "not planned")
        if self.outcome.late_hours > 0:
            return translate("promises", "late")
        return translate("promises", "in time")


def promises_of(
    studio: Studio, plan: Plan, wanted: str | None = None
) -> tuple[PromiseKept, ...]:
    """Give every order, or only the one called `wanted`, most pressing promise first.

    Raises UnknownName when no order is called that.
    """
    orders = studio.orders if wanted is None else (find_named(studio.orders, wanted, "order"),)
    ordered = sorted(orders, key=lambda order: (order.due(studio.time_zone), order.key))
    return tuple(promise_of(studio, plan, order) for order in ordered)


def promise_of(studio: Studio, plan: Plan | None, order: Order) -> PromiseKept:
    """Give what became of an order, or what the plan means for it."""
    done = done_with(studio, order)
    if done is not None:
        return PromiseKept(order=order, outcome=done.outcome, shipped=done.shipped)
    told = (one for one in (plan.outcomes if plan else ()) if one.order == order.key)
    return PromiseKept(order=order, outcome=next(told, None))
