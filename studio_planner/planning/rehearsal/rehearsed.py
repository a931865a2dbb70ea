"""What a rehearsal found, in plain numbers, and how a plan carries it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan


@dataclass(frozen=True, slots=True, kw_only=True)
class CoatHeld:
    """The share of the weeks in which a coat, by its number, was put on in its window.

    A coat without a window held where it was put on.
    """

    number: int
    held: float


@dataclass(frozen=True, slots=True, kw_only=True)
class OrderHeld:
    """The share of the weeks in which an order's promise was kept."""

    order: str
    held: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Rehearsed:
    """A plan followed through simulated weeks; coats by their number, orders as entered."""

    weeks: int
    coats: tuple[CoatHeld, ...]
    orders: tuple[OrderHeld, ...]


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
