"""What the commands remind and calendar take."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.terminal.file_arguments import json_argument, named, studio_argument

if TYPE_CHECKING:
    import argparse

REMIND_FORM = """\
Without an option it looks once: what is due is written down, told by every means there is, and
listed until it is taken off the list. UID is what the list shows. With --install the system's
own scheduler does so each minute; what that writes is said first.
"""

CALENDAR_FORM = """\
The whole plan, or one order, or the week of a day. Import the file into a calendar of its own
on the phone; import it again after the plan has changed: events keep their names, changed ones
replace the old ones and cancelled ones say so. --test writes one event that rings in five
minutes, to see whether the phone rings at all.
"""


def remind_arguments(command: argparse.ArgumentParser) -> None:
    """What remind takes."""
    studio_argument(command)
    doing = command.add_mutually_exclusive_group()
    doing.add_argument(
        "--done", metavar="UID", action="append", help="take it off the list; may be repeated"
    )
    doing.add_argument(
        "--undone",
        metavar="UID",
        action="append",
        help="put it back on the list: it was not done after all; may be repeated",
    )
    doing.add_argument(
        "--snooze",
        metavar="UID",
        action="append",
        help="tell it again at the next moment that makes sense; may be repeated",
    )
    doing.add_argument(
        "--clear", action="store_true", help="take everything off the list that is too late"
    )
    doing.add_argument("--test", action="store_true", help="ring now, by every means")
    doing.add_argument(
        "--install", action="store_true", help="let the system's own scheduler remind"
    )
    doing.add_argument("--remove", action="store_true", help="take that away again")
    command.add_argument("--yes", action="store_true", help="do not ask before either")
    command.add_argument(
        "--listen", metavar="N", help="wait up to N seconds for a button of what was told"
    )
    json_argument(command)


def calendar_arguments(command: argparse.ArgumentParser) -> None:
    """What calendar takes."""
    studio_argument(command)
    command.add_argument("target", metavar="OUT.ics", type=named, help="the file to write")
    what = command.add_mutually_exclusive_group()
    what.add_argument("--order", metavar="ORDER", help="only this order")
    what.add_argument("--week", metavar="DATE", help="only the week of that day")
    what.add_argument(
        "--test", action="store_true", help="only an event that rings in five minutes"
    )
