"""The command calendar."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from studio_planner.craft.tongue import counted
from studio_planner.services.calendar.files import ENDING, Only
from studio_planner.services.calendar.keeping import write_calendar, write_trial
from studio_planner.services.naming import UnknownName, find_named
from studio_planner.services.studio_files import read_studio
from studio_planner.terminal.ask_command import TerminalVoice
from studio_planner.terminal.bad_input import BadInput
from studio_planner.terminal.reading import day_of
from studio_planner.terminal.writing import day_words, say_wrapped

if TYPE_CHECKING:
    import argparse
    from datetime import datetime

    from studio_planner.craft.studio import Studio
    from studio_planner.terminal.surroundings import Surroundings


def calendar(arguments: argparse.Namespace, around: Surroundings) -> int:
    """Write a calendar file of the plan, of one order, of one week, or a test for the phone."""
    path, target = Path(arguments.file), Path(arguments.target)
    now = around.clock.now()
    if arguments.test:
        read_studio(path)
        write_trial(target, now)
        say_wrapped(f"{target}: one event that rings in five minutes; import it at once.")
        return 0
    week = None if arguments.week is None else day_of(arguments.week, "--week")

    def only(studio: Studio) -> Only:
        if arguments.order is None:
            return Only(week_of=week)
        try:
            return Only(order=find_named(studio.orders, arguments.order, "order"))
        except UnknownName as error:
            raise BadInput(str(error)) from None

    made = write_calendar(path, target, now, TerminalVoice, only)
    if made.says_nothing:
        why = _why_empty(read_studio(path), arguments, now)
        raise BadInput(f"{target} is not written. {why}")
    said = counted(made.events, "{count} event", "{count} events")
    gone = f", {made.cancelled} cancelled" if made.cancelled else ""
    say_wrapped(f"{target}: {said}{gone}. Import it into a calendar of its own.")
    if target.suffix.casefold() != ENDING:
        say_wrapped(f"A phone opens it only once its name ends with {ENDING}.")
    return 0


def _why_empty(studio: Studio, arguments: argparse.Namespace, now: datetime) -> str:
    """What could be done to find something for the file."""
    coats = () if studio.plan is None else studio.plan.coats
    ahead = sorted(coat.start for coat in coats if coat.end >= now and not coat.poured)
    if not ahead:
        return "Nothing of the plan lies ahead; plan FILE --keep plans again."
    zone = studio.time_zone
    first, last = day_words(zone, ahead[0]), day_words(zone, ahead[-1])
    if arguments.week is not None:
        return f"Nothing is planned in that week; pours are planned from {first} to {last}."
    return "Nothing is planned for that order; plan FILE says why."
