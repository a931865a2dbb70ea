"""Tape and drips: pulled and trimmed between their open and close, by somebody awake."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from studio_planner.craft.plans import StepKind
from studio_planner.craft.tongue import quoted
from studio_planner.planning.checking.evidence import SLACK_SECONDS, Laid, Lane, moment
from studio_planner.planning.checking.findings import Finding, Rule
from studio_planner.planning.checking.hands import covered
from studio_planner.planning.checking.reading import readable
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import datetime

    from studio_planner.craft.local_time import Span
    from studio_planner.craft.plans import PlannedStep
    from studio_planner.planning.checking.reading import Reading

_WINDOW_SECONDS = 60.0


class _Task(NamedTuple):
    kind: StepKind
    rule: Rule
    opens: Stage
    closes: Stage
    doing: str


_TASKS = (
    _Task(StepKind.TAPE, Rule.TAPE, Stage.TAPE_OPENS, Stage.TAPE_CLOSES, "its tape comes off"),
    _Task(StepKind.TRIM, Rule.TRIM, Stage.TRIM_OPENS, Stage.TRIM_CLOSES, "its drips go"),
)


def broken_trimming(reading: Reading) -> Iterator[Finding]:
    """Tape that stays on, drips that stay, and both done too early, too late or in sleep."""
    for lane in reading.lanes.values():
        for laid in lane.laid:
            for task in _TASKS:
                yield from _broken_task(reading, lane, laid, task)


def _broken_task(reading: Reading, lane: Lane, laid: Laid, task: _Task) -> Iterator[Finding]:
    steps = reading.steps_of(laid.piece.key, task.kind, laid.coat.key)
    wanted = laid.coat.taped if task.kind is StepKind.TAPE else laid.coat.trimmed
    done = (task.kind, laid.piece.key, laid.coat.key) in reading.done
    wanted = wanted and not (done and laid.planned.poured)
    opens, closes = lane.reached(laid, task.opens), lane.reached(laid, task.closes)
    if wanted and not lane.has(laid.product, task.opens):
        sentence = f"{task.doing}, but {laid.product.name} has no time for it on its sheet"
        yield reading.about(task.rule, laid, sentence)
    if len(steps) != int(wanted) and not _excused(reading, laid, steps, opens, closes):
        sentence = f"{task.doing} {len(steps)} times instead of {'once' if wanted else 'never'}"
        yield reading.about(task.rule, laid, sentence)
    for step in steps:
        yield from _outside_window(reading, step, task, opens, closes)
        yield from _misread_window(reading, step, task, opens, closes)
        yield from _nobody_awake(reading, step, task)


def _excused(
    reading: Reading,
    laid: Laid,
    steps: list[PlannedStep],
    opens: float | None,
    closes: float | None,
) -> bool:
    """A poured coat needs no step when nobody is awake in what is left of its window."""
    if not laid.planned.poured or steps:
        return False
    if opens is None:
        return True
    needed = 60.0 * reading.studio.settings.tape_minutes
    start = max(opens, reading.start.timestamp())
    end = start + 86_400.0 if closes is None else closes
    spans = _awake(reading, moment(start), moment(end))
    return not any((b - a).total_seconds() >= needed for a, b in spans)


def _awake(reading: Reading, start: datetime, end: datetime) -> list[Span]:
    spans = (span for one in reading.studio.people for span in reading.awake(one))
    return [(max(a, start), min(b, end)) for a, b in spans]


def _outside_window(
    reading: Reading, step: PlannedStep, task: _Task, opens: float | None, closes: float | None
) -> Iterator[Finding]:
    start, end = step.start.timestamp(), step.end.timestamp()
    if opens is None or start < opens - SLACK_SECONDS:
        sentence = f"{task.doing} {reading.local(start)}, but that opens {reading.local(opens)}"
        yield reading.on_step(task.rule, step, f"{sentence} at the latest")
    if closes is not None and end > closes + SLACK_SECONDS:
        limit = f"that closes {reading.local(closes)} at the earliest"
        sentence = f"{task.doing} till {reading.local(end)}, but {limit}"
        yield reading.on_step(task.rule, step, sentence)


def _misread_window(
    reading: Reading, step: PlannedStep, task: _Task, opens: float | None, closes: float | None
) -> Iterator[Finding]:
    wide = opens is not None and (
        not readable(step.opens) or _second(step.opens) < opens - _WINDOW_SECONDS
    )
    wide |= closes is not None and (
        not readable(step.closes) or _second(step.closes) > closes + _WINDOW_SECONDS
    )
    if wide:
        right = f"{task.doing} between {reading.local(opens)} and {reading.local(closes)}"
        told = f"between {reading.said(step.opens)} and {reading.said(step.closes)}"
        yield reading.on_step(task.rule, step, f"{right}, but the plan says {told}")


def _second(when: datetime | None) -> float:
    return 0.0 if when is None else when.timestamp()


def _nobody_awake(reading: Reading, step: PlannedStep, task: _Task) -> Iterator[Finding]:
    person = reading.person(step.person)
    if person is None:
        sentence = f"{task.doing} by {quoted(step.person)}, but nobody of that key works here"
        yield reading.on_step(task.rule, step, sentence)
    elif not covered(reading.awake(person), step.start, step.end):
        when = reading.local(step.start)
        sentence = f"{task.doing} {when}, when {person.name} sleeps or is away"
        yield reading.on_step(task.rule, step, sentence)
