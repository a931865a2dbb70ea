"""What is still to be planned: everything but pieces that are packed or have left.

A packed piece is off the shelf and asks for nothing any more; its order still counts it. So
plans are made for, and checked against, the studio without such pieces, and what they mean for
their orders is added afterwards.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, NamedTuple

from studio_planner.craft.log import EntryKind
from studio_planner.craft.part_of_studio import part_of
from studio_planner.craft.plans import Outcome, pours_as_planned
from studio_planner.craft.standing import lives_of, packed_at, shipped_at
from studio_planner.services.editing.changes import fitting

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.orders import Order
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio


_OFF_THE_SHELF = {EntryKind.PACKED, EntryKind.SHIPPED}


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
    others = (order for order in studio.orders if order.key not in told)
    outcomes = tuple(
        found.outcome for order in others if (found := done_with(studio, order)) is not None
    )
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


class Done(NamedTuple):
    """What became of an order of which everything is done; `shipped` is when all had left."""

    outcome: Outcome
    shipped: datetime | None


def done_with(studio: Studio, order: Order) -> Done | None:
    """What the log says of an order, whatever a plan does; None while there is more to do.

    It has left when its last piece did, or leaves at the next pick-up after it was packed.
    """
    off = {entry.piece for entry in studio.standing if entry.kind in _OFF_THE_SHELF}
    if not off.issuperset(order.pieces):
        return None
    lives = lives_of(studio)
    packed = [packed_at(lives.get(key, ())) for key in order.pieces]
    known = [at for at in packed if at is not None]
    if len(known) < len(packed):
        return None
    left = [at for key in order.pieces if (at := shipped_at(lives[key])) is not None]
    shipped = max(left) if len(left) == len(packed) else None
    zone = studio.time_zone
    leaves = shipped or order.leaves(zone, max(known))
    return Done(Outcome(order=order.key, due=order.due(zone), leaves=leaves), shipped)


def only_to_do(plan: Plan, studio: Studio) -> Plan:
    """What a plan says of what is still to do, in a studio without what is done."""
    if studio is still_to_do(studio):
        return plan
    return fitting(plan, still_to_do(studio))
