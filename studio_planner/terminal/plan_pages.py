"""A plan as a maker reads it: day by day, then the pieces' ready times and the orders."""

from __future__ import annotations

from itertools import groupby
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import Trust
from studio_planner.science.stages import Stage
from studio_planner.services.promises import promises_of
from studio_planner.terminal.writing import (
    clock_words,
    day_words,
    hours_words,
    moment_words,
    say,
    say_table,
    say_wrapped,
    short_moment,
)

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator
    from datetime import datetime

    from studio_planner.craft.plans import Plan, PlannedCoat, PlannedStep
    from studio_planner.craft.studio import Studio
    from studio_planner.services.checking import Finding
    from studio_planner.services.promises import PromiseKept

_HEADS = ("No", "Hands-on", "Piece", "What", "Joint", "Closes", "Spot", "Mix", "Who")
_SHORT_JOINTS = {Joint.BARE: "bare", Joint.IN_WINDOW: "in window"}
_READY = (Stage.HANDLE, Stage.PRINT_FREE, Stage.FULL_CURE)
_Row = tuple["datetime", tuple[str, ...]]


def print_plan(studio: Studio, plan: Plan, warnings: Iterable[Finding] = ()) -> None:
    """Print a whole plan in the studio's local time."""
    zone = studio.time_zone
    say_wrapped(
        f"{studio.name}: planned from {moment_words(zone, plan.start)} on. "
        f"All times are {studio.zone}."
    )
    say()
    _print_days(studio, plan)
    _print_ready(studio, plan)
    print_orders(studio, promises_of(studio, plan))
    for row in plan.unplanned:
        say_wrapped(f"Not planned: {studio.piece(row.piece).name}. {row.reason}")
    for finding in warnings:
        say_wrapped(f"Note: {finding.words}")


def _print_days(studio: Studio, plan: Plan) -> None:
    zone = studio.time_zone
    rows = sorted([*_coat_rows(studio, plan), *_step_rows(studio, plan)])
    table: list[tuple[str, ...]] = []
    for day, group in groupby(rows, key=lambda row: day_words(zone, row[0])):
        table.append((day,))
        table += [row for _, row in group]
    say_table(_HEADS, table)


def _coat_rows(studio: Studio, plan: Plan) -> Iterator[_Row]:
    people = {person.key: person.name for person in studio.people}
    for coat in plan.coats:
        entered = studio.piece(coat.piece).coat(coat.coat)
        yield (
            coat.start,
            (
                str(coat.number),
                _span(studio, coat),
                studio.piece(coat.piece).name,
                entered.kind,
                _joint_words(coat),
                _closes_words(studio, coat),
                studio.spot(coat.spot).name,
                str(coat.mix),
                "poured" if coat.poured else people.get(coat.person, coat.person),
            ),
        )


def _step_rows(studio: Studio, plan: Plan) -> Iterator[_Row]:
    people = {person.key: person.name for person in studio.people}
    for step in plan.steps:
        closes = "" if step.closes is None else short_moment(studio.time_zone, step.closes)
        name = studio.piece(step.piece).name
        who = people.get(step.person, step.person)
        yield step.start, ("", _span(studio, step), name, step.kind, "", closes, "", "", who)


def _span(studio: Studio, block: PlannedCoat | PlannedStep) -> str:
    zone = studio.time_zone
    return f"{clock_words(zone, block.start)}-{clock_words(zone, block.end)}"


def _joint_words(coat: PlannedCoat) -> str:
    if coat.window is not None and coat.window.trust is Trust.TEST_FIRST:
        return "test first"
    return _SHORT_JOINTS.get(coat.joint, coat.joint)


def _closes_words(studio: Studio, coat: PlannedCoat) -> str:
    if coat.window is None or coat.joint is Joint.BARE:
        return ""
    if coat.window.closes is None:
        return "never"
    return short_moment(studio.time_zone, coat.window.closes)


def _print_ready(studio: Studio, plan: Plan) -> None:
    zone = studio.time_zone
    safe = {(row.piece, row.stage): row.safe for row in plan.ready}
    rows = [
        (
            piece.name,
            *(moment_words(zone, safe.get((piece.key, stage))) for stage in _READY),
        )
        for piece in studio.pieces
    ]
    say()
    say_table(("Ready, on the safe side", "To handle", "To pack", "Full cure"), rows)


def print_orders(studio: Studio, promises: Iterable[PromiseKept]) -> None:
    """Print orders with their dates; for late ones the reason and the tried changes."""
    zone = studio.time_zone
    listed = list(promises)
    if not listed:
        return
    rows = [
        (
            kept.order.name,
            kept.order.promise,
            moment_words(zone, kept.order.due(zone)),
            moment_words(zone, None if kept.outcome is None else kept.outcome.leaves),
            _state_words(kept),
        )
        for kept in listed
    ]
    say()
    say_table(("Order", "Promise", "Due", "Leaves", "How it stands"), rows)
    for kept in listed:
        _print_reason(studio, kept)


def _state_words(kept: PromiseKept) -> str:
    outcome = kept.outcome
    if outcome is None or outcome.late_hours is None:
        return kept.word
    hours = outcome.late_hours or outcome.spare_hours
    if kept.word == "late":
        return f"late by {hours_words(hours)}"
    return f"in time, {hours_words(hours)} to spare"


def _print_reason(studio: Studio, kept: PromiseKept) -> None:
    outcome = kept.outcome
    if outcome is None or not outcome.reason:
        return
    zone = studio.time_zone
    say()
    say_wrapped(f"{kept.order.name}: {outcome.reason}")
    for change in outcome.changes:
        keeps = "keeps the promise" if change.keeps_promise else "is still late"
        leaves = "not even then" if change.leaves is None else moment_words(zone, change.leaves)
        say_wrapped(f"Tried: {change.words} - leaves {leaves}, {keeps}.", "  ")
