"""Completeness: what is poured stays, every coat is planned once, nothing lies in the past."""

from __future__ import annotations

from collections import Counter
from typing import TYPE_CHECKING

from studio_planner.planning.checking.findings import Finding, Rule
from studio_planner.planning.checking.words import step_name

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.planning.checking.reading import Reading


def broken_facts(reading: Reading) -> Iterator[Finding]:
    """Facts that are changed, coats missing or doubled, and work planned in the past."""
    yield from _broken_poured(reading)
    yield from _in_the_past(reading)
    yield from _incomplete(reading)


def _facts(coat: PlannedCoat) -> tuple[object, ...]:
    return (coat.piece, coat.coat, coat.start, coat.end, coat.spot, coat.joint)


def _broken_poured(reading: Reading) -> Iterator[Finding]:
    poured = {
        (pour.piece, pour.coat, pour.start, pour.end, pour.spot, pour.joint)
        for pour in reading.studio.poured
    }
    marked = {_facts(coat) for coat in reading.plan.coats if coat.poured}
    for pour in reading.studio.poured:
        facts = (pour.piece, pour.coat, pour.start, pour.end, pour.spot, pour.joint)
        if facts not in marked:
            when = reading.local(pour.start)
            sentence = f"was poured {when} on {pour.spot}, but the plan differs"
            yield _on(reading, pour.piece, pour.coat, sentence)
    for coat in reading.plan.coats:
        if coat.poured and _facts(coat) not in poured:
            sentence = "is marked as poured, but nothing of the kind was poured"
            yield _on(reading, coat.piece, coat.coat, sentence)


def _on(reading: Reading, key: str, coat: str, sentence: str) -> Finding:
    piece = reading.piece(key)
    named = next((one for one in piece.stack if one.key == coat), None) if piece else None
    return reading.finding(Rule.POURED, piece or key, named or coat, None, sentence)


def _in_the_past(reading: Reading) -> Iterator[Finding]:
    for laid in reading.laid:
        if not laid.planned.poured and laid.planned.start < reading.start:
            sentence = f"starts {reading.local(laid.start)}, before the plan does"
            yield reading.about(Rule.POURED, laid, sentence)
    for step in reading.steps:
        if step.start < reading.start:
            sentence = f"{step_name(step)} starts {reading.local(step.start)}"
            yield reading.on_step(Rule.POURED, step, f"{sentence}, before the plan does")


def _incomplete(reading: Reading) -> Iterator[Finding]:
    times = Counter((coat.piece, coat.coat) for coat in reading.plan.coats)
    given_up = _given_up(reading)
    for piece in reading.studio.pieces:
        first = given_up.get(piece.key, len(piece.stack))
        yield from _miscounted(reading, piece, first, times, unplanned=piece.key in given_up)
    for row in reading.plan.unplanned:
        if reading.piece(row.piece) is None:
            sentence = "can't be planned, but there is no such piece"
            yield reading.finding(Rule.UNKNOWN, row.piece, row.coat, None, sentence)


def _given_up(reading: Reading) -> dict[str, int]:
    """For each piece that can't be planned, the position from which its coats are missing."""
    first: dict[str, int] = {}
    for row in reading.plan.unplanned:
        piece = reading.piece(row.piece)
        keys = [coat.key for coat in piece.stack] if piece else []
        position = keys.index(row.coat) if row.coat in keys else 0
        first[row.piece] = min(position, first.get(row.piece, position))
    return first


def _miscounted(
    reading: Reading,
    piece: Piece,
    first: int,
    times: Counter[tuple[str, str]],
    *,
    unplanned: bool,
) -> Iterator[Finding]:
    done = {pour.coat for pour in reading.studio.pours_of(piece.key)}
    for position, coat in enumerate(piece.stack):
        count = times[piece.key, coat.key]
        if coat.key not in done and position >= first:
            if count:
                sentence = "is planned, although the piece is said to stop before it"
                yield reading.finding(Rule.COMPLETE, piece, coat, None, sentence)
        elif count > 1 or (not count and not unplanned):
            sentence = f"is in the plan {count} times instead of once"
            yield reading.finding(Rule.COMPLETE, piece, coat, None, sentence)


def whole(reading: Reading, piece: Piece) -> bool:
    """Tell whether every coat of a piece is in the plan and could be read."""
    lane = reading.lanes.get(piece.key)
    return lane is not None and len(lane.laid) == len(piece.stack)


def given_up(reading: Reading) -> set[str]:
    """The keys of the pieces that the plan says can't be planned."""
    return {row.piece for row in reading.plan.unplanned}
