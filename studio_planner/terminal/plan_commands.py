"""The commands plan, check and promise."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from studio_planner.services.checking import checked
from studio_planner.services.plan_again import plan_again
from studio_planner.services.promises import promises_of
from studio_planner.services.studio_files import keep_plan, read_planned, read_studio
from studio_planner.terminal.order_pages import print_orders
from studio_planner.terminal.plan_pages import print_plan
from studio_planner.terminal.plan_rows import finding_json, order_json, plan_json
from studio_planner.terminal.reading import days_later, when_of, whole_number
from studio_planner.terminal.writing import moment_words, say, say_json, say_wrapped

if TYPE_CHECKING:
    import argparse
    from collections.abc import Iterable

    from studio_planner.craft.studio import Studio
    from studio_planner.services.checking import Finding
    from studio_planner.terminal.surroundings import Surroundings

_MOST_DAYS = 366


def plan(arguments: argparse.Namespace, around: Surroundings) -> int:
    """Plan again and print the plan; the file changes only with --keep.

    Exit code 1 when a piece cannot be planned; the plan of all others is printed, and kept
    with --keep, all the same. JSON: that of `plan_json`, and kept: whether it is in the file.
    """
    path = Path(arguments.file)
    studio = read_studio(path)
    zone = studio.time_zone
    start = around.clock.now()
    if arguments.start is not None:
        start = when_of(arguments.start, zone, "--from")
    until = None
    if arguments.days is not None:
        until = days_later(zone, start, whole_number(arguments.days, "--days", _MOST_DAYS))
    made = plan_again(studio, start, until)
    if arguments.keep:
        keep_plan(path, made.plan)
    if arguments.json:
        found = plan_json(studio, made.plan, made.report.warnings)
        say_json({**found, "kept": bool(arguments.keep)})
    else:
        print_plan(studio, made.plan, made.report.warnings)
    return 1 if made.plan.unplanned else 0


def check(arguments: argparse.Namespace, around: Surroundings) -> int:
    """Check the kept plan; exit code 1 when a rule is broken.

    JSON: broken and warnings, each a list as `finding_json` gives it.
    """
    del around
    studio, kept = read_planned(Path(arguments.file))
    report = checked(studio, kept)
    if arguments.json:
        found = {"broken": report.broken, "warnings": report.warnings}
        say_json({k: [finding_json(studio, f) for f in v] for k, v in found.items()})
    else:
        count = len(kept.coats)
        verdict = "keeps every rule" if report.clean else _broken_words(len(report.broken))
        say(f"The kept plan of {count} coats {verdict}.")
        _print_findings(studio, "Broken", report.broken)
        _print_findings(studio, "Note", report.warnings)
    return 0 if report.clean else 1


def _broken_words(times: int) -> str:
    return "breaks a rule once" if times == 1 else f"breaks rules {times} times"


def _print_findings(studio: Studio, word: str, findings: Iterable[Finding]) -> None:
    for finding in findings:
        when = "" if finding.when is None else moment_words(studio.time_zone, finding.when)
        say_wrapped(f"{word}{', ' if when else ''}{when} ({finding.rule}): {finding.words}")


def promise(arguments: argparse.Namespace, around: Surroundings) -> int:
    """Print what the kept plan means for each order, or for one; 0 even when it is late.

    JSON: orders, a list as `order_json` gives it.
    """
    del around
    studio, kept = read_planned(Path(arguments.file))
    found = promises_of(studio, kept, arguments.order)
    if arguments.json:
        say_json({"orders": [order_json(studio, one) for one in found]})
    elif found:
        print_orders(studio, found)
    else:
        say("The studio has no orders.")
    return 0
