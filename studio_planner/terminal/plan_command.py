"""The command plan."""

from __future__ import annotations

from contextlib import nullcontext
from datetime import timedelta
from pathlib import Path
from threading import Event
from typing import TYPE_CHECKING, NamedTuple

from studio_planner.craft.tongue import quoted
from studio_planner.services.keeping import PAUSE_SECONDS, FileToPlan, Paced
from studio_planner.services.plan_again import explained, plan_again
from studio_planner.services.plan_worth import better_words
from studio_planner.services.speaking import ENGLISH, speak
from studio_planner.services.studio_files import NoKeptPlan, read_studio
from studio_planner.terminal.bad_input import BadInput
from studio_planner.terminal.plan_pages import print_plan
from studio_planner.terminal.plan_rows import plan_json, worth_json
from studio_planner.terminal.reading import days_later, when_of, whole_number
from studio_planner.terminal.stopping import stopping
from studio_planner.terminal.writing import (
    complain,
    moment_words,
    say,
    say_json,
    say_json_line,
    say_wrapped,
)

if TYPE_CHECKING:
    import argparse
    from contextlib import AbstractContextManager
    from datetime import datetime

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.services.plan_again import CheckedPlan
    from studio_planner.terminal.surroundings import Surroundings

_MOST_DAYS = 366
_MOST_SECONDS = 3600

_JUST_NOW = timedelta(minutes=5)
"""A plan that begins so shortly before now begins now."""


def plan(arguments: argparse.Namespace, around: Surroundings) -> int:
    """Plan again and print the plan; the file changes only with --keep.

    Exit code 1 when a piece cannot be planned; the plan of all others is printed, and kept
    with --keep, all the same. JSON: that of `plan_json`, and kept: whether it is in the file.

    With --progress the JSON is on one line, the last. A line comes before it for each better
    plan, with the one key progress: words (the plan in one line, and what is better where that
    does not tell), kept (whether the file holds that plan now) and what `worth_json` gives.
    Ended at any time, the file holds the plan of the last line. A line with the word enough on
    the input looks no further, as Ctrl-C does: what was found is rehearsed and explained, and
    is the answer.

    With --language JSON says its sentences in that language; the plan keeps them in none.
    """
    try:
        _require_sense(arguments)
        return _plan(arguments, around)
    finally:
        speak(ENGLISH)


def _plan(arguments: argparse.Namespace, around: Surroundings) -> int:
    file = FileToPlan(Path(arguments.file))
    try:
        made = _made(file, arguments, around)
    except KeyboardInterrupt:
        complain(_what_stands(file))
        raise
    if arguments.json:
        found = plan_json(file.as_it_is, made.plan, made.report.warnings)
        written = say_json_line if arguments.progress else say_json
        written({**found, "kept": bool(arguments.keep)})
    else:
        print_plan(file.as_it_is, made.plan, made.report.warnings)
        _print_notes(file, made, arguments, around)
    return 1 if made.plan.unplanned else 0


def _print_notes(
    file: FileToPlan, made: CheckedPlan, arguments: argparse.Namespace, around: Surroundings
) -> None:
    if arguments.start is not None and made.plan.start < around.clock.now() - _JUST_NOW:
        say_wrapped(
            "Note: --from has passed. The plan is made as if it were then, and nothing had "
            "been poured since but what is written down."
        )
    if made.moved:
        pours = "1 pour" if made.moved == 1 else f"{made.moved} pours"
        say_wrapped(f"Note: {pours} had to move for what was changed while it was planned.")
    if not arguments.keep and not arguments.reasons:
        say()
        say_wrapped(_not_kept(file.studio))


def _made(file: FileToPlan, arguments: argparse.Namespace, around: Surroundings) -> CheckedPlan:
    if arguments.reasons:
        made = _explained(file)
        return file.keep(made, last=True) if arguments.keep else made
    asked = _asked(arguments, file.studio, around.clock.now())
    ends: AbstractContextManager[Event] = (
        stopping(listens=arguments.progress) if asked.seconds else nullcontext(Event())
    )
    with ends as enough:
        made = _planned(file, arguments, asked, enough)
        return file.keep(made, asked.until, last=True) if arguments.keep else made


def _what_stands(file: FileToPlan) -> str:
    """What is in the file after a command that was ended at once."""
    name = file.path.name
    if read_studio(file.path).plan != file.studio.plan:
        return (
            f"Ended at once. {name} holds the best plan that was kept until then, as far as it "
            "was rehearsed and explained; plan --reasons --keep says why orders are late."
        )
    if file.studio.plan is None:
        return f"Ended at once. No plan was kept, and {name} holds none."
    made = moment_words(file.studio.time_zone, file.studio.plan.made)
    return f"Ended at once. No plan was kept; {name} still holds the one of {made}."


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


class _Asked(NamedTuple):
    start: datetime
    until: datetime | None
    seconds: float


def _planned(
    file: FileToPlan, arguments: argparse.Namespace, asked: _Asked, enough: Event
) -> CheckedPlan:
    before: Plan | None = None

    def better(found: CheckedPlan) -> None:
        nonlocal before
        made = file.keep(found, asked.until) if arguments.keep else found
        if arguments.progress:
            words = better_words(file.as_it_is, before, made.plan)
            told = {"words": words, "kept": bool(arguments.keep), **worth_json(made.plan)}
            say_json_line({"progress": told})
        before = made.plan

    paced = Paced(better, pause=PAUSE_SECONDS)
    start, until, seconds = asked
    try:
        return plan_again(
            file.studio, start, until, seconds=seconds, told=paced.take, enough=enough
        )
    finally:
        paced.end()


def _asked(arguments: argparse.Namespace, studio: Studio, now: datetime) -> _Asked:
    zone, until = studio.time_zone, None
    start = now if arguments.start is None else when_of(arguments.start, zone, "--from")
    if arguments.days is not None:
        days = whole_number(arguments.days, "--days", _MOST_DAYS)
        until = days_later(zone, start, days)
    return _Asked(start, until, _seconds(arguments.seconds))


def _seconds(typed: str | None) -> float:
    return 0.0 if typed is None else float(whole_number(typed, "--seconds", _MOST_SECONDS, 0))
