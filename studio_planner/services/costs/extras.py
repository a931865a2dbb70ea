"""What a rush or a scuffed joint really costs: with it and without it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.services.costs.order_cost import OrderCost, order_cost
from studio_planner.services.costs.piece_cost import PieceCost, Way, piece_cost, scuffed_coats

if TYPE_CHECKING:
    from studio_planner.craft.orders import Order
    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True, kw_only=True)
class Extra:
    """What something adds: the cost and the attended minutes without it and with it.

    Costs are in the studio's currency.
    """

    cost_without: float
    cost_with: float
    minutes_without: float
    minutes_with: float

    @property
    def cost(self) -> float:
        """What it costs."""
        return self.cost_with - self.cost_without

    @property
    def minutes(self) -> float:
        """The minutes that it takes."""
        return self.minutes_with - self.minutes_without


def rush_extra(studio: Studio, plan: Plan | None, order: Order) -> Extra:
    """What it costs to make an order for itself, in hours of a rush, and to send it quickly."""
    return _extra(order_cost(studio, plan, order), order_cost(studio, plan, order, hurry=True))


def scuff_extra(studio: Studio, plan: Plan | None, piece: Piece, coat: str) -> Extra:
    """What it costs that the coat below has to be washed and sanded before a coat.

    The minutes for every single piece, with the overhead and the scrap that they carry; the
    abrasive is among the consumables of a piece already.
    """
    scuffed = scuffed_coats(plan, piece.key)
    without, with_it = (
        piece_cost(studio, plan, piece, way=Way(scuffed=coats))
        for coats in (scuffed - {coat}, scuffed | {coat})
    )
    return _extra(without, with_it)


def _extra(without: OrderCost | PieceCost, with_it: OrderCost | PieceCost) -> Extra:
    return Extra(
        cost_without=without.total,
        cost_with=with_it.total,
        minutes_without=without.attended_minutes,
        minutes_with=with_it.attended_minutes,
    )
