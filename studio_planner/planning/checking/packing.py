"""Packing and promises: packed once, when cured, and what that means for each order."""

from __future__ import annotations

from collections import Counter
from typing import TYPE_CHECKING

from studio_planner.craft.plans import StepKind
from studio_planner.craft.tongue import quoted
from studio_planner.planning.checking.evidence import SLACK_SECONDS, Lane
from studio_planner.planning.checking.faces import cured, skipped
from studio_planner.planning.checking.facts import given_up, whole
from studio_planner.planning.checking.findings import Finding, Rule
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import datetime

    from studio_planner.craft.orders import Order
    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.plans import Outcome, PlannedStep
    from studio_planner.planning.checking.reading import Reading


def broken_packing(reading: Reading) -> Iterator[Finding]:
    """Pieces of an order not packed, or packed before they may."""
    left_out = given_up(reading)
    for order in reading.studio.orders:
        for key in order.pieces:
            piece = reading.studio.piece(key)
            yield from _broken_pack(reading, order, piece, left_out)


def _broken_pack(
    reading: Reading, order: Order, piece: Piece, left_out: set[str]
) -> Iterator[Finding]:
    packs = reading.steps_of(piece.key, StepKind.PACK)
    wanted = 0 if piece.key in left_out else 1
    if len(packs) != wanted:
        sentence = f"is packed {len(packs)} times for {order.name}, not {wanted}"
        yield reading.finding(Rule.PACK, piece, None, None, sentence)
    for pack in packs:
        yield from _packed_too_early(reading, order, piece, pack)


def _packed_too_early(
    reading: Reading, order: Order, piece: Piece, pack: PlannedStep
) -> Iterator[Finding]:
    if not whole(reading, piece):
        when = reading.local(pack.start)
        sentence = f"is packed {when}, but not all of its coats are planned"
        yield reading.finding(Rule.PACK, piece, None, pack.start, sentence)
        return
    lane = reading.lanes[piece.key]
    for laid in lane.laid:
        if skipped(lane, laid, order.gate.stage):
            continue
        ready = cured(lane, laid, order.gate.stage, Edge.LATE)
        if ready is None or pack.start.timestamp() < ready - SLACK_SECONDS:
            sentence = (
                f"is packed {reading.local(pack.start)}, but the {laid.name} "
                f"may go from {reading.local(ready)}"
            )
            yield reading.finding(Rule.PACK, piece, laid.coat, pack.start, sentence)


def broken_promises(reading: Reading) -> Iterator[Finding]:
    """Outcomes that are missing, doubled, or do not follow from the packing."""
    orders = {order.key: order for order in reading.studio.orders}
    times = Counter(outcome.order for outcome in reading.plan.outcomes)
    for key, order in orders.items():
        if times[key] != 1:
            sentence = (
                f"the plan tells {times[key]} times what becomes of {order.name}, not once"
            )
            yield reading.finding(Rule.PROMISE, None, None, None, sentence)
    for outcome in reading.plan.outcomes:
        if outcome.order in orders:
            yield from _misread_outcome(reading, orders[outcome.order], outcome)
        else:
            sentence = f"the plan tells of an order {quoted(outcome.order)}, but there is none"
            yield reading.finding(Rule.UNKNOWN, None, None, None, sentence)


def _misread_outcome(reading: Reading, order: Order, outcome: Outcome) -> Iterator[Finding]:
    due, leaves = order.due(reading.zone), _leaves(reading, order)
    if outcome.due != due:
        told = reading.said(outcome.due)
        sentence = f"{order.name} is due {reading.local(due)}, but the plan says {told}"
        yield reading.finding(Rule.PROMISE, None, None, due, sentence)
    if outcome.leaves != leaves:
        told = reading.said(outcome.leaves)
        sentence = f"{order.name} leaves {reading.local(leaves)}, but the plan says {told}"
        yield reading.finding(Rule.PROMISE, None, None, leaves, sentence)


def _leaves(reading: Reading, order: Order) -> datetime | None:
    """When an order leaves; None when one of its pieces is not packed."""
    left_out = given_up(reading)
    ends = []
    for key in order.pieces:
        packs = reading.steps_of(key, StepKind.PACK)
        if key in left_out or not packs:
            return None
        ends.append(max(pack.end for pack in packs))
    return order.leaves(reading.zone, max(ends))


def ready(lane: Lane, stage: Stage, edge: Edge) -> float | None:
    """When a whole piece has reached a stage; None when one of its coats never does.

    Of several coats of one product the last is the last to get there.
    """
    counting = [laid for laid in lane.laid if not skipped(lane, laid, stage)]
    last = {laid.product.key: laid for laid in sorted(counting, key=lambda one: one.end)}
    seconds = [cured(lane, laid, stage, edge) for laid in last.values()]
    found = [second for second in seconds if second is not None]
    return max(found, default=0.0) if len(found) == len(seconds) else None
