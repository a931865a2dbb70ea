"""What a rehearsal found, in plain numbers, and how a plan carries it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan


@dataclass(frozen=True, slots=True, kw_only=True)
class CoatHeld:
    """Shares of the weeks in which a coat, by its number, went as planned or not.

    `held`: it was put on in its window (without a window: it was put on). `scuffed`: its window
    had closed, and the coat below was sanded instead. `missing`: it was never put on.
    """

    number: int
    held: float
    scuffed: float
    missing: float


@dataclass(frozen=True, slots=True, kw_only=True)
class OrderHeld:
    """The share of the weeks in which an order's promise was kept, and the spare.

    `spare_hours` is how long before its due instant the order left in nine weeks out of ten;
    negative when it was late, None when it never left in more than one week out of ten.
    """

    order: str
    held: float
    spare_hours: float | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Rehearsed:
    """A plan followed through simulated weeks; coats by their number, orders as entered."""

    weeks: int
    seed: int
    coats: tuple[CoatHeld, ...]
    orders: tuple[OrderHeld, ...]

    @property
    def most_fragile(self) -> CoatHeld | None:
        """The coat whose window held least often, the first of several; None without coats."""
        return min(self.coats, key=lambda coat: (coat.held, coat.number), default=None)

    @property
    def mean_held(self) -> float:
        """The mean share over all coats; 1 without coats."""
        if not self.coats:
            return 1.0
        return sum(coat.held for coat in self.coats) / len(self.coats)


def with_rehearsal(plan: Plan, rehearsed: Rehearsed) -> Plan:
    """The plan with how often each coat and each promise held; what is poured has no share."""
    coats = {coat.number: coat.held for coat in rehearsed.coats}
    orders = {order.order: order.held for order in rehearsed.orders}
    return replace(
        plan,
        coats=tuple(replace(coat, held=coats.get(coat.number)) for coat in plan.coats),
        outcomes=tuple(replace(one, held=orders.get(one.order)) for one in plan.outcomes),
        rehearsals=rehearsed.weeks,
    )
