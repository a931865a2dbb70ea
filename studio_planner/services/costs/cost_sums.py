"""Costs of several pieces added up kind by kind, and the joints whose scuffing would cost."""

from __future__ import annotations

from itertools import pairwise
from typing import TYPE_CHECKING

from studio_planner.services.costs.extras import scuff_extra
from studio_planner.services.costs.piece_cost import CostKind, HandsOn, scuffed_coats
from studio_planner.services.editing.grams import adding_up

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.orders import Order
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.services.costs.extras import Extra
    from studio_planner.services.costs.piece_cost import PieceCost

_CENT = 0.01


def amounts_by_kind(pieces: Iterable[PieceCost]) -> dict[CostKind, float]:
    """What the pieces cost, by kind in the order of the kinds; what is nothing is left out."""
    listed = tuple(pieces)
    sums = {kind: sum(one.amounts.get(kind, 0.0) for one in listed) for kind in CostKind}
    return {kind: amount for kind, amount in sums.items() if amount > 0.0}


def cents_by_kind(pieces: Iterable[PieceCost]) -> dict[CostKind, float]:
    """The same in whole cents that add up to the sum as it is shown."""
    amounts = amounts_by_kind(pieces)
    cents = adding_up({str(kind): amount for kind, amount in amounts.items()}, _CENT)
    return {kind: cents[str(kind)] for kind in amounts}


def minutes_by_kind(pieces: Iterable[PieceCost]) -> dict[HandsOn, float]:
    """The attended minutes of the pieces, by what they are spent on; nothing is left out."""
    listed = tuple(pieces)
    sums = {kind: sum(one.minutes.get(kind, 0.0) for one in listed) for kind in HandsOn}
    return {kind: minutes for kind, minutes in sums.items() if minutes > 0.0}


def one_scuffed_joint(studio: Studio, plan: Plan | None, order: Order) -> Extra | None:
    """What it costs at most to scuff for one coat of an order; None where it has no such coat.

    That is the joint with the most single pieces, of those that are not scuffed already.
    """
    extras = [
        scuff_extra(studio, plan, piece, coat.key)
        for piece in (studio.piece(key) for key in order.pieces)
        for below, coat in pairwise(piece.stack)
        if below.sandable and coat.key not in scuffed_coats(plan, piece.key)
    ]
    return max(extras, key=lambda extra: extra.cost, default=None)
