"""Turning: a piece lies only on faces that can be handled, and is turned by somebody."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.plans import StepKind
from studio_planner.craft.products import ProductKind
from studio_planner.planning.checking.evidence import SLACK_SECONDS, Laid, Lane
from studio_planner.planning.checking.findings import Finding, Rule
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.plans import PlannedStep
    from studio_planner.planning.checking.reading import Reading


def broken_faces(reading: Reading) -> Iterator[Finding]:
    """Coats poured on a piece that lies on a soft face, and turns missing or too early."""
    for lane in reading.lanes.values():
        for laid in lane.laid:
            if not laid.planned.poured:
                yield from _soft_below(reading, lane, laid)
                yield from _broken_turn(reading, lane, laid)


def _soft_below(reading: Reading, lane: Lane, laid: Laid) -> Iterator[Finding]:
    for below, handle in _resting(lane, laid.index):
        if handle is None or laid.start < handle - SLACK_SECONDS:
            sentence = (
                f"starts {reading.local(laid.start)} while the piece lies on the {below.name}, "
                f"which can be handled from {reading.local(handle)}"
            )
            yield reading.about(Rule.TURN, laid, sentence)


def _resting(lane: Lane, index: int) -> Iterator[tuple[Laid, float | None]]:
    """The coats that the piece lies on, each with the instant from which it can be handled."""
    for position in lane.piece.rests_on(index):
        below = lane.coat(position)
        if below is not None and not skipped(lane, below, Stage.HANDLE):
            yield below, cured(lane, below, Stage.HANDLE, Edge.LATE)


def skipped(lane: Lane, laid: Laid, stage: Stage) -> bool:
    """Tell whether a stage is not asked of a coat.

    Size, leaf, or one-part primer that can be handled, under another coat, where its sheet has
    neither the stage nor a later one.
    """
    thin = laid.product.kind in {ProductKind.SIZE, ProductKind.LEAF} or (
        laid.product.kind is ProductKind.PRIMER
        and lane.stage_on_sheet(laid.product, Stage.HANDLE) is not None
    )
    silent = lane.stage_on_sheet(laid.product, stage) is None
    return thin and silent and _under_another(laid.piece, laid.index)


def _under_another(piece: Piece, index: int) -> bool:
    return any(coat.touches(piece.stack[index]) for coat in piece.stack[index + 1 :])


def cured(lane: Lane, laid: Laid, stage: Stage, edge: Edge) -> float | None:
    """When a coat reaches handle, print-free, full cure, or the next on its sheet."""
    found = lane.stage_on_sheet(laid.product, stage)
    return None if found is None else lane.reached(laid, found, edge)


def _broken_turn(reading: Reading, lane: Lane, laid: Laid) -> Iterator[Finding]:
    turns = reading.steps_of(laid.piece.key, StepKind.TURN, laid.coat.key)
    done = (StepKind.TURN, laid.piece.key, laid.coat.key) in reading.done
    needed = int(lane.piece.turned_before(laid.index) and not done)
    if len(turns) != needed:
        often = "once" if needed else "never"
        sentence = f"the piece is turned {often} before this coat, not {len(turns)} times"
        yield reading.about(Rule.TURN, laid, sentence)
    for turn in turns if needed else ():
        yield from _turn_at_wrong_time(reading, lane, laid, turn)


def _turn_at_wrong_time(
    reading: Reading, lane: Lane, laid: Laid, turn: PlannedStep
) -> Iterator[Finding]:
    start = turn.start.timestamp()
    for below, handle in _resting(lane, laid.index):
        if handle is None or start < handle - SLACK_SECONDS:
            sentence = (
                f"is turned {reading.local(turn.start)}, but the {below.name} can be handled "
                f"from {reading.local(handle)}"
            )
            yield reading.on_step(Rule.TURN, turn, sentence)
    before = lane.coat(laid.index - 1)
    if before is not None and start < before.end:
        sentence = f"is turned {reading.local(turn.start)}, while a coat is being poured"
        yield reading.on_step(Rule.TURN, turn, sentence)
    if turn.end > laid.planned.start:
        sentence = f"is turned {reading.local(turn.start)}, but the coat has begun by then"
        yield reading.on_step(Rule.TURN, turn, sentence)
