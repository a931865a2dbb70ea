"""A plan as a maker reads it: day by day, then the pieces' ready times and the orders."""

from __future__ import annotations

from collections import Counter
from itertools import groupby
from typing import TYPE_CHECKING

from studio_planner.craft.orders import Gate
from studio_planner.craft.pieces import Joint
from studio_planner.craft.tongue import capital
from studio_planner.services.promises import promises_of
from studio_planner.services.step_words import gate_words, step_words, waits_for_words
from studio_planner.services.still_to_do import nothing_left, still_to_do
from studio_planner.terminal.order_pages import print_orders
from studio_planner.terminal.plan_legend import (
    NEVER,
    joint_words,
    never_closes,
    print_legend,
)
from studio_planner.terminal.worth_pages import print_worth
from studio_planner.terminal.writing import (
    clock_words,
    day_words,
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

_HEADS = ("No", "Hands-on", "Piece", "What", "Joint", "Closes", "Spot", "Mix", "Who")
_MIX = _HEADS.index("Mix")
_Row = tuple["datetime", tuple[str, ...]]


def print_plan(studio: Studio, plan: Plan, warnings: Iterable[Finding] = ()) -> None:
    """Print a whole plan in the studio's local time."""
    zone = studio.time_zone
    said = (
        "everything is packed or has left; there is nothing to plan."
        if nothing_left(studio)
        else f"planned from {moment_words(zone, plan.start)} on."
    )
    say_wrapped(f"{studio.name}: {said} All times are {studio.zone}.")
    say()
    _print_days(studio, plan)
    _print_ready(studio, plan)
    promises = promises_of(studio, plan)
    print_orders(studio, promises)
    print_worth(studio, plan, promises)
    _print_unplanned(studio, plan)
    for finding in warnings:
        say_wrapped(f"Note: {finding.words}")


def _print_unplanned(studio: Studio, plan: Plan) -> None:
    """Print why pieces are not planned, unless an order of theirs has said so already."""
    said = " ".join(str(outcome.reason) for outcome in plan.outcomes)
    reasons = [(studio.piece(row.piece).name, str(row.reason)) for row in plan.unplanned]
    left = [(name, reason) for name, reason in reasons if reason not in said]
    if left:
        say()
    for name, reason in left:
        named = reason if reason.startswith(name) else f"{name}: {reason}"
        say_wrapped(f"Not planned - {named}")


def _print_days(studio: Studio, plan: Plan) -> None:
    zone = studio.time_zone
    rows = sorted([*_coat_rows(studio, plan), *_step_rows(studio, plan)])
    table: list[tuple[str, ...]] = []
    for day, group in groupby(rows, key=lambda row: day_words(zone, row[0])):
        table.append((day,))
        table += [row for _, row in group]
    _say_days(table, mixed_together=bool(_shared_mixes(plan)))
    print_legend(plan)


def _say_days(table: Iterable[tuple[str, ...]], *, mixed_together: bool) -> None:
    if mixed_together:
        say_table(_HEADS, table)
        return
    rows = [row if len(row) == 1 else _without_mix(row) for row in table]
    say_table(_without_mix(_HEADS), rows)


def _without_mix(row: tuple[str, ...]) -> tuple[str, ...]:
    return row[:_MIX] + row[_MIX + 1 :]


def _shared_mixes(plan: Plan) -> set[int]:
    """The mixes that several coats are poured from."""
    counts = Counter(coat.mix for coat in plan.coats)
    return {mix for mix, coats in counts.items() if coats > 1}


def _coat_rows(studio: Studio, plan: Plan) -> Iterator[_Row]:
    people = {person.key: person.name for person in studio.people}
    shared = _shared_mixes(plan)
    for coat in plan.coats:
        entered = studio.piece(coat.piece).coat(coat.coat)
        yield (
            coat.start,
            (
                str(coat.number),
                _span(studio, coat),
                studio.piece(coat.piece).name,
                entered.kind,
                joint_words(coat),
                _closes_words(studio, coat),
                studio.spot(coat.spot).name,
                str(coat.mix) if coat.mix in shared else "",
                "poured" if coat.poured else people.get(coat.person, coat.person),
            ),
        )


def _step_rows(studio: Studio, plan: Plan) -> Iterator[_Row]:
    people = {person.key: person.name for person in studio.people}
    for step in plan.steps:
        closes = "" if step.closes is None else short_moment(studio.time_zone, step.closes)
        name = studio.piece(step.piece).name
        who = people.get(step.person, step.person)
        what = step_words(studio, step)
        yield step.start, ("", _span(studio, step), name, what, "", closes, "", "", who)


def _span(studio: Studio, block: PlannedCoat | PlannedStep) -> str:
    zone = studio.time_zone
    return f"{clock_words(zone, block.start)}-{clock_words(zone, block.end)}"


def _closes_words(studio: Studio, coat: PlannedCoat) -> str:
    if never_closes(coat):
        return NEVER
    if coat.window is None or coat.window.closes is None or coat.joint is Joint.BARE:
        return ""
    return short_moment(studio.time_zone, coat.window.closes)


def _print_ready(studio: Studio, plan: Plan) -> None:
    zone = studio.time_zone
    safe = {(row.piece, row.stage): row.safe for row in plan.ready}
    rows = [
        (
            piece.name,
            *(moment_words(zone, safe.get((piece.key, gate.stage))) for gate in Gate),
            waits_for_words(studio, piece.key),
        )
        for piece in still_to_do(studio).pieces
    ]
    if not rows:
        return
    say()
    gates = (capital(gate_words(gate)) for gate in Gate)
    say_table(("Ready, on the safe side", *gates, "Order waits for"), rows)
