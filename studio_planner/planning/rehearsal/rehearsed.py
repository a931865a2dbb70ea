"""What a rehearsal found, in plain numbers, and how a plan carries it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from studio_planner.craft.plans import Outcome, Plan, PlannedCoat


@dataclass(frozen=True, slots=True, kw_only=True)
class CoatHeld:
    """Shares of the weeks in which a coat, by its number, went as planned or not.

    `held`: it was put on in its window (without a window: it was put on). `wrong_first`: its
    piece went wrong, and with this coat first: what follows is not its own fault.
    """

    number: int
    held: float
    wrong_first: float


@dataclass(frozen=True, slots=True, kw_only=True)
class OrderHeld:
    """Shares of the weeks in which an order's promise, and the plan's day, were kept.

    `day_held` is None where the plan has no day. `spare_hours` is how long before its due
    instant the order left in nine weeks out of ten at least; negative when it was late, None
    when it never left in more than one week out of ten.
    """

    order: str
    held: float
    day_held: float | None
    spare_hours: float | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Rehearsed:
    """A plan followed through simulated weeks; coats by their number, orders as entered."""

    weeks: int
    coats: tuple[CoatHeld, ...]
    orders: tuple[OrderHeld, ...]


def with_rehearsal(plan: Plan, rehearsed: Rehearsed) -> Plan:
    """The plan with what was rehearsed of each coat and promise; nothing of what is poured."""
    coats = {coat.number: coat for coat in rehearsed.coats}
    orders = {order.order: order for order in rehearsed.orders}
    return replace(
        plan,
        coats=tuple(_coat(coat, coats.get(coat.number)) for coat in plan.coats),
        outcomes=tuple(_outcome(one, orders.get(one.order)) for one in plan.outcomes),
        rehearsals=rehearsed.weeks,
    )


def _coat(coat: PlannedCoat, found: CoatHeld | None) -> PlannedCoat:
    if found is None:
        return replace(coat, held=None, wrong_first=None)
    return replace(coat, held=found.held, wrong_first=found.wrong_first)


def _outcome(outcome: Outcome, found: OrderHeld | None) -> Outcome:
    if found is None:
        return replace(outcome, held=None, day_held=None, rehearsed_spare_hours=None)
    return replace(
        outcome,
        held=found.held,
        day_held=found.day_held,
        rehearsed_spare_hours=found.spare_hours,
    )
