"""The commands check and promise: what the kept plan is."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from studio_planner.services.checking import checked
from studio_planner.services.promises import promises_of
from studio_planner.services.studio_files import read_planned
from studio_planner.terminal.order_pages import print_orders
from studio_planner.terminal.plan_rows import finding_json, order_json, worth_json
from studio_planner.terminal.worth_pages import print_sureness
from studio_planner.terminal.writing import moment_words, say, say_json, say_wrapped

if TYPE_CHECKING:
    import argparse
    from collections.abc import Iterable

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.services.checking import CheckReport, Finding
    from studio_planner.terminal.surroundings import Surroundings


def check(arguments: argparse.Namespace, around: Surroundings) -> int:
    """Check the kept plan; exit code 1 when a rule is broken.

    JSON: broken and warnings, each a list as `finding_json` gives it; coats and orders, each
    with its key (number, order) and held; and what `worth_json` gives.
    """
    del around
    studio, kept = read_planned(Path(arguments.file))
    report = checked(studio, kept)
    if arguments.json:
        say_json(_check_json(studio, kept, report))
    else:
        count = len(kept.coats)
        verdict = "keeps every rule" if report.clean else _broken_words(len(report.broken))
        say(f"The kept plan of {count} coats {verdict}.")
        _print_findings(studio, "Broken", report.broken)
        _print_findings(studio, "Note", report.warnings)
    return 0 if report.clean else 1


def _check_json(studio: Studio, kept: Plan, report: CheckReport) -> dict[str, Any]:
    found = {"broken": report.broken, "warnings": report.warnings}
    return {
        **{word: [finding_json(studio, f) for f in of] for word, of in found.items()},
        "coats": [{"number": coat.number, "held": coat.held} for coat in kept.coats],
        "orders": [{"order": one.order, "held": one.held} for one in kept.outcomes],
        **worth_json(kept),
    }


def _broken_words(times: int) -> str:
    return "breaks a rule once" if times == 1 else f"breaks rules {times} times"


def _print_findings(studio: Studio, word: str, findings: Iterable[Finding]) -> None:
    for finding in findings:
        when = "" if finding.when is None else moment_words(studio.time_zone, finding.when)
        say_wrapped(f"{word}{', ' if when else ''}{when} ({finding.rule}): {finding.words}")


def promise(arguments: argparse.Namespace, around: Surroundings) -> int:
    """Print what the kept plan means for each order, or for one; 0 even when it is late.

    JSON: orders, a list as `order_json` gives it, and what `worth_json` gives.
    """
    del around
    studio, kept = read_planned(Path(arguments.file))
    found = promises_of(studio, kept, arguments.order)
    if arguments.json:
        say_json({"orders": [order_json(studio, one) for one in found], **worth_json(kept)})
    elif found:
        print_orders(studio, found)
        print_sureness(kept, found)
    else:
        say("The studio has no orders.")
    return 0
