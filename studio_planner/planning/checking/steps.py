"""Steps: how long they take, that they belong to a coat, and that they wait for the pours."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import StepKind
from studio_planner.planning.checking.findings import Finding, Rule
from studio_planner.planning.checking.words import step_name

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.plans import PlannedStep
    from studio_planner.planning.checking.reading import Reading


def broken_steps(reading: Reading) -> Iterator[Finding]:
    """Steps of the wrong length, without a coat, or during a pour of their own piece."""
    for step in reading.steps:
        yield from _wrong_length(reading, step)
        yield from _without_cause(reading, step)
        yield from _during_a_pour(reading, step)


def _minutes(reading: Reading, step: PlannedStep) -> int | None:
    settings = reading.studio.settings
    if step.kind is StepKind.PACK:
        order = reading.studio.order_of(step.piece)
        return None if order is None else order.packing_minutes
    count = reading.studio.piece(step.piece).count
    return {
        StepKind.SAND: settings.sand_minutes * count,
        StepKind.TURN: settings.turn_minutes * count,
        StepKind.TAPE: settings.tape_minutes,
        StepKind.TRIM: settings.tape_minutes,
    }[step.kind]


def _wrong_length(reading: Reading, step: PlannedStep) -> Iterator[Finding]:
    minutes = _minutes(reading, step)
    length = step.end - step.start
    if minutes is not None and length != timedelta(minutes=minutes):
        sentence = (
            f"{step_name(step)} is {length.total_seconds() / 60:g} min long, but the "
            f"work takes {minutes} min"
        )
        yield reading.on_step(Rule.STEP, step, sentence)


def _without_cause(reading: Reading, step: PlannedStep) -> Iterator[Finding]:
    """Every step but packing belongs to a coat of the plan; sanding to a scuffed one."""
    if step.kind is StepKind.PACK:
        return
    coats = reading.coats_of(step.piece)
    mine = next((laid for laid in coats if laid.coat.key == step.coat), None)
    if mine is None:
        sentence = f"{step_name(step)} belongs to no coat of the plan"
        yield reading.on_step(Rule.STEP, step, sentence)
    elif step.kind is StepKind.SAND and mine.planned.joint is not Joint.SCUFFED:
        sentence = f"is sanded before a coat that is {mine.planned.joint}, not scuffed"
        yield reading.on_step(Rule.STEP, step, sentence)


def _during_a_pour(reading: Reading, step: PlannedStep) -> Iterator[Finding]:
    for laid in reading.coats_of(step.piece):
        if step.start < laid.planned.end and laid.planned.start < step.end:
            when = reading.local(step.start)
            sentence = f"{step_name(step)} at {when} is during a pour"
            yield reading.on_step(Rule.STEP, step, sentence)
