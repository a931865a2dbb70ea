"""Ready times: for handle, print-free and full cure, likely and safe, of every whole piece."""

from __future__ import annotations

from collections import Counter
from itertools import product
from typing import TYPE_CHECKING

from studio_planner.planning.checking.facts import given_up, whole
from studio_planner.planning.checking.findings import Finding, Rule
from studio_planner.planning.checking.packing import ready
from studio_planner.planning.checking.reading import readable
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import datetime

    from studio_planner.craft.plans import Readiness
    from studio_planner.planning.checking.evidence import Lane
    from studio_planner.planning.checking.reading import Reading

_STAGES = (Stage.HANDLE, Stage.PRINT_FREE, Stage.FULL_CURE)
_SAME_SECONDS = 60.0


def broken_ready(reading: Reading) -> Iterator[Finding]:
    """Ready times that are missing, doubled or wrong."""
    times = Counter((row.piece, row.stage) for row in reading.plan.ready)
    left_out = given_up(reading)
    complete = [p for p in reading.studio.pieces if p.key not in left_out and whole(reading, p)]
    for piece, stage in product(complete, _STAGES):
        if times[piece.key, stage] != 1:
            often = times[piece.key, stage]
            sentence = f"the plan tells {often} times when {_noun(stage)}, not once"
            yield reading.finding(Rule.READY, piece, None, None, sentence)
    keys = {piece.key for piece in complete}
    for row in reading.plan.ready:
        if reading.piece(row.piece) is None:
            sentence = "the plan tells when it is ready, but there is no such piece"
            yield reading.finding(Rule.UNKNOWN, row.piece, None, None, sentence)
        elif row.piece in keys and row.stage in _STAGES:
            yield from _misread(reading, row, reading.lanes[row.piece])


def _noun(stage: Stage) -> str:
    return f"it reaches {str(stage).replace('_', ' ')}"


def _misread(reading: Reading, row: Readiness, lane: Lane) -> Iterator[Finding]:
    rows = ((row.likely, Edge.LIKELY, "likely"), (row.safe, Edge.LATE, "safely"))
    for said, edge, word in rows:
        second = ready(lane, row.stage, edge)
        if not _agree(reading, said, second):
            right = f"{_noun(row.stage)} {word} {reading.local(second)}"
            sentence = f"{right}, but the plan says {reading.said(said)}"
            yield reading.finding(Rule.READY, lane.piece, None, None, sentence)


def _agree(reading: Reading, said: datetime | None, second: float | None) -> bool:
    """Never in the plan's record may still be reached after its end."""
    if said is None:
        return second is None or second > reading.last_named
    if second is None or not readable(said):
        return False
    return abs(said.timestamp() - second) <= _SAME_SECONDS
