"""What is still to be planned: everything but pieces that are packed or have left.

A packed piece is off the shelf and asks for nothing any more; its order still counts it. So
plans are made for, and checked against, the studio without such pieces, and what they mean for
their orders is added afterwards.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.part_of_studio import part_of
from studio_planner.craft.plans import Outcome, pours_as_planned
from studio_planner.craft.standing import Life, lives_of, packed_at, shipped_at
from studio_planner.services.editing.changes import fitting

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import datetime

    from studio_planner.craft.orders import Order
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio


def done_pieces(studio: Studio) -> frozenset[str]:
    """The keys of the pieces that are packed or have left."""
    lives = lives_of(studio)
    there = {piece.key for piece in studio.pieces}
    return frozenset(key for key in there if packed_at(lives.get(key, ())) is not None)


def nothing_left(studio: Studio) -> bool:
    """Whether there are pieces, and all of them are packed or have left."""
    return bool(studio.pieces) and len(done_pieces(studio)) == len(studio.pieces)


def still_to_do(studio: Studio) -> Studio:
    """The studio without pieces that are done, and without orders of nothing else.

    The studio itself where nothing is done. Of its log only what stands is left, since nothing
    else bears on a plan.
    """
    done = done_pieces(studio)
    if not done:
        return studio
    left = {piece.key for piece in studio.pieces} - done
    whole = part_of(studio, left, {order.key for order in studio.orders})
    plan = studio.plan
    return replace(whole, plan=None if plan is None else fitting(plan, whole))


def with_what_is_done(plan: Plan, studio: Studio) -> Plan:
    """A plan of what is still to do, with what was poured on pieces that are done.

    Orders of which everything is done have left when they did, or leave at the next pick-up.
    """
    done = done_pieces(studio)
    if not done:
        return plan
    told = {row.order for row in plan.outcomes}
    outcomes = tuple(row for row in done_outcomes(studio) if row.order not in told)
    poured = pours_as_planned(
        (pour for pour in studio.poured if pour.piece in done),
        number=max((coat.number for coat in plan.coats), default=0),
        mix=max((coat.mix for coat in plan.coats), default=0),
    )
    return replace(
        plan,
        coats=(*plan.coats, *poured),
        outcomes=(*plan.outcomes, *outcomes),
    )


def done_outcomes(studio: Studio) -> tuple[Outcome, ...]:
    """What became of the orders of which everything is done, whatever a plan says of them."""
    done = done_pieces(studio)
    if not done:
        return ()
    lives = lives_of(studio)
    finished = (order for order in studio.orders if done.issuperset(order.pieces))
    return tuple(_outcome(studio, order, lives) for order in finished)


def left_at(order: Order, lives: Mapping[str, Life]) -> datetime | None:
    """When the last piece of an order left the studio; None while one of them is there."""
    left = [shipped_at(lives.get(key, ())) for key in order.pieces]
    shipped = [at for at in left if at is not None]
    return max(shipped) if shipped and len(shipped) == len(left) else None


def _outcome(studio: Studio, order: Order, lives: Mapping[str, Life]) -> Outcome:
    zone = studio.time_zone
    packed = [at for key in order.pieces if (at := packed_at(lives[key])) is not None]
    leaves = left_at(order, lives) or order.leaves(zone, max(packed))
    return Outcome(order=order.key, due=order.due(zone), leaves=leaves)


def only_to_do(plan: Plan, studio: Studio) -> Plan:
    """What a plan says of what is still to do, in a studio without what is done."""
    if studio is still_to_do(studio):
        return plan
    return fitting(plan, still_to_do(studio))
