"""Dust: nobody sands while a wet piece lies uncovered, and dust settles before a pour."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, NamedTuple

from studio_planner.craft.log import EntryKind
from studio_planner.craft.plans import StepKind
from studio_planner.planning.checking.evidence import SLACK_SECONDS, Laid, Lane
from studio_planner.planning.checking.findings import Finding, Rule
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.local_time import Span
    from studio_planner.craft.plans import PlannedStep
    from studio_planner.planning.checking.reading import Reading

_COVERING = (Stage.COVER, Stage.TACK_FREE, Stage.RECOAT_OPENS)


class _Wet(NamedTuple):
    start: float
    end: float
    laid: Laid


def broken_dust(reading: Reading) -> Iterator[Finding]:
    """Sanding beside wet work, and pours into dust; what was sanded is a fact."""
    for entry in reading.studio.standing:
        if entry.kind is EntryKind.SANDED:
            for laid in reading.laid:
                yield from _into_dust(reading, (entry.at, entry.at), laid)
    sandings = [step for step in reading.steps if step.kind is StepKind.SAND]
    if not sandings:
        return
    wet = [_wet(lane, laid) for lane in reading.lanes.values() for laid in lane.laid]
    for step in sandings:
        yield from _beside_wet(reading, step, [one for one in wet if not one.laid.leaf])
        for laid in reading.laid:
            yield from _into_dust(reading, (step.start, step.end), laid)


def _wet(lane: Lane, laid: Laid) -> _Wet:
    stage = next((one for one in _COVERING if lane.has(laid.product, one)), None)
    if stage is None:
        return _Wet(laid.start, laid.end, laid)
    covered = lane.reached(laid, stage)
    return _Wet(laid.start, math.inf if covered is None else max(laid.end, covered), laid)


def _beside_wet(reading: Reading, step: PlannedStep, wet: list[_Wet]) -> Iterator[Finding]:
    start, end = step.start.timestamp(), step.end.timestamp()
    for one in wet:
        if start < one.end - SLACK_SECONDS and end > one.start:
            name = f"{one.laid.name} of {one.laid.piece.name}"
            until = "for good" if one.end == math.inf else f"till {reading.local(one.end)}"
            sentence = f"is sanded {reading.local(start)}, while the {name} is wet {until}"
            yield reading.on_step(Rule.DUST, step, sentence)


def _into_dust(reading: Reading, sanded: Span, laid: Laid) -> Iterator[Finding]:
    settled = sanded[1].timestamp() + 60.0 * reading.studio.settings.settle_minutes
    start = sanded[0].timestamp()
    if laid.leaf or laid.planned.poured:
        return
    if laid.start < settled and laid.end > start:
        sentence = f"starts {reading.local(laid.start)}, but dust from sanding settles till "
        yield reading.about(Rule.DUST, laid, sentence + reading.local(settled))
