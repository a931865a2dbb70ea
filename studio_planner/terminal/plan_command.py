"""The command plan."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from studio_planner.craft.tongue import quoted
from studio_planner.services.keeping import PAUSE_SECONDS, FileToPlan, Paced
from studio_planner.services.plan_again import explained, plan_again
from studio_planner.services.plan_worth import summary_words
from studio_planner.services.speaking import ENGLISH, speak
from studio_planner.services.studio_files import NoKeptPlan
from studio_planner.terminal.bad_input import BadInput
from studio_planner.terminal.plan_pages import print_plan
from studio_planner.terminal.plan_rows import plan_json, worth_json
from studio_planner.terminal.reading import days_later, when_of, whole_number
from studio_planner.terminal.writing import (
    moment_words,
    say,
    say_json,
    say_json_line,
    say_wrapped,
)

if TYPE_CHECKING:
    import argparse
    from datetime import datetime

    from studio_planner.craft.studio import Studio
    from studio_planner.services.plan_again import CheckedPlan
    from studio_planner.terminal.surroundings import Surroundings

_MOST_DAYS = 366
_MOST_SECONDS = 3600


def plan(arguments: argparse.Namespace, around: Surroundings) -> int:
    """Plan again and print the plan; the file changes only with --keep.

    Exit code 1 when a piece cannot be planned; the plan of all others is printed, and kept
    with --keep, all the same. JSON: that of `plan_json`, and kept: whether it is in the file.

    With --progress the JSON is on one line, the last. A line comes before it for each better
    plan, with the one key progress: words (the plan in one line), kept (whether the file holds
    that plan now) and what `worth_json` gives. Ended at any time, the file holds the plan of
    the last line.

    With --language JSON says its sentences in that language; the plan keeps them in none.
    """
    try:
        _require_sense(arguments)
        return _plan(arguments, around)
    finally:
        speak(ENGLISH)


def _plan(arguments: argparse.Namespace, around: Surroundings) -> int:
    file = FileToPlan(Path(arguments.file))
    made = _explained(file) if arguments.reasons else _planned(file, arguments, around)
    if arguments.keep:
        file.keep(made.plan)
    if arguments.json:
        found = plan_json(file.studio, made.plan, made.report.warnings)
        written = say_json_line if arguments.progress else say_json
        written({**found, "kept": bool(arguments.keep)})
    else:
        print_plan(file.studio, made.plan, made.report.warnings)
        if not arguments.keep and not arguments.reasons:
            say()
            say_wrapped(_not_kept(file.studio))
    return 1 if made.plan.unplanned else 0


def _not_kept(studio: Studio) -> str:
    """What a plan that was only looked at does not change."""
    if studio.plan is None:
        return "This plan is not kept: weigh, log and sheet know none yet. --keep keeps it."
    made = moment_words(studio.time_zone, studio.plan.made)
    return (
        "This plan is not kept, and its numbers of coats hold in this list alone: weigh, log "
        f"and sheet still follow the kept plan of {made}. --keep keeps a new one instead."
    )


def _require_sense(arguments: argparse.Namespace) -> None:
    if arguments.progress and not arguments.json:
        raise BadInput("--progress writes lines of JSON; write --json with it.")
    _begin_to_speak(arguments)
    asked = (arguments.start, arguments.days, arguments.seconds)
    if arguments.reasons and any(value is not None for value in asked):
        raise BadInput(
            "--reasons plans nothing anew, so --from, --days and --seconds do not go with it; "
            "leave them out."
        )


def _begin_to_speak(arguments: argparse.Namespace) -> None:
    if arguments.language is None:
        return
    if not arguments.json:
        raise BadInput("--language is for the sentences in JSON; write --json with it.")
    if not speak(arguments.language):
        raise BadInput(
            f"--language: no {quoted(arguments.language)} is spoken here; "
            "write for example de or en."
        )


def _explained(file: FileToPlan) -> CheckedPlan:
    kept = file.studio.plan
    if kept is None:
        raise NoKeptPlan(
            f"{file.path} keeps no plan yet that could be explained; write plan without "
            "--reasons to make one."
        )
    return explained(file.studio, kept)


def _planned(
    file: FileToPlan, arguments: argparse.Namespace, around: Surroundings
) -> CheckedPlan:
    start, until = _span(arguments, file.studio, around.clock.now())
    seconds = _seconds(arguments.seconds)

    def better(made: CheckedPlan) -> None:
        if arguments.keep:
            file.keep(made.plan)
        if arguments.progress:
            say_json_line({"progress": _progress(file.studio, made, kept=bool(arguments.keep))})

    paced = Paced(better, pause=PAUSE_SECONDS)
    try:
        return plan_again(file.studio, start, until, seconds=seconds, told=paced.take)
    finally:
        paced.end()


def _span(
    arguments: argparse.Namespace, studio: Studio, now: datetime
) -> tuple[datetime, datetime | None]:
    zone = studio.time_zone
    start = now if arguments.start is None else when_of(arguments.start, zone, "--from")
    if arguments.days is None:
        return start, None
    days = whole_number(arguments.days, "--days", _MOST_DAYS)
    return start, days_later(zone, start, days)


def _seconds(typed: str | None) -> float:
    if typed is None or typed.strip() == "0":
        return 0.0
    return float(whole_number(typed, "--seconds", _MOST_SECONDS))


def _progress(studio: Studio, made: CheckedPlan, *, kept: bool) -> dict[str, Any]:
    return {"words": summary_words(studio, made.plan), "kept": kept, **worth_json(made.plan)}
