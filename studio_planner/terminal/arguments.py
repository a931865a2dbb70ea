"""The commands and their arguments."""

from __future__ import annotations

import argparse
import re
import textwrap
from typing import TYPE_CHECKING, NoReturn

from typing_extensions import override

from studio_planner.science.stages import Stage
from studio_planner.terminal.bad_input import BadInput
from studio_planner.terminal.file_arguments import json_argument, named, studio_argument
from studio_planner.terminal.log_arguments import (
    LOG_FORM,
    log_arguments,
    take_words,
    trace_arguments,
)
from studio_planner.terminal.remind_arguments import (
    CALENDAR_FORM,
    REMIND_FORM,
    calendar_arguments,
    remind_arguments,
)
from studio_planner.terminal.sheet_arguments import SHEET_FORM, sheet_arguments
from studio_planner.terminal.stock_arguments import COST_FORM, cost_arguments, stock_arguments
from studio_planner.terminal.writing import say

if TYPE_CHECKING:
    from collections.abc import Sequence

    from _typeshed import SupportsWrite

PROGRAM = "studio-planner"

_MINUS_DEGREES = re.compile(r"-\d+(?:[.,]\d+)?\s*°?[CFcf]")

_ABOUT = """\
Plans the coats of two-part epoxy that a small studio can really pour.

studio-planner opens the desk on the sample studio; studio-planner FILE on a studio of yours.
Where there is no screen the kept plan is printed instead. With a command no window is opened:
"""

_AFTER = """\
WHEN is 2026-02-02T18:00 on the studio's clock, or with a zone as 2026-02-02T18:00+01:00.
TEMP is 20C or 68F. COAT is the number that plan prints.
A studio file that is called like a command is opened as ./plan.
Exit code: 0 done; 1 the studio cannot be planned as asked; 2 something typed cannot be used.
"""


class _Parser(argparse.ArgumentParser):
    @override
    def print_help(self, file: SupportsWrite[str] | None = None) -> None:
        say(self.format_help().rstrip())  # the base swallows what the output complains about

    @override
    def error(self, message: str) -> NoReturn:
        raise BadInput(f"{self.prog}: {message}; see {self.prog} --help.")


COMMANDS: dict[str, str] = {
    "sample": "make a studio file with the sample studio and its plan",
    "plan": "plan a studio again and print the plan",
    "check": "check the kept plan against every rule",
    "promise": "say what the kept plan means for each order",
    "next": "list what needs hands in the next hours, sorted by deadline",
    "weigh": "list what to weigh for coats of the kept plan",
    "stages": "say when a film reaches each stage, steadily warm or in a recorded room",
    "ask": "list the questions that are answered at once, or answer one",
    "sheet": "draw a sheet for paper as a PDF: pours, a week, an order, the stock",
    "log": "list what happened, or write down what happens",
    "trace": "trace a piece or order to mixes, lots and air, or a mix or lot to its pieces",
    "stock": "list the bottles: what is left, what the plan takes, what runs out and when",
    "cost": "say what an order or a piece costs, and which price follows from it",
    "remind": "ring what is due and list it, or take it off the list",
    "calendar": "write a calendar file for the phone",
    "export": "write a studio as JSON",
    "import": "make a studio file from JSON",
}


_FORMS = {
    "plan": """\
The quick plan is there in a moment. With --seconds better ones are looked for, by the goals in
their order: pieces left out, hours late, scuffed joints, joints to test first, pours moved from
the kept plan, spare before each promise, separate mixes, early end. It ends sooner when no
better plan can exist. With --keep each better plan is kept as it comes: ended at any time, the
last one stays. Ctrl-C looks no further and shows the best so far, with --keep it is kept;
Ctrl-C once more ends at once. What others write into the file meanwhile is taken in, if the
plan that was found still holds.
""",
    "log": LOG_FORM,
    "sheet": SHEET_FORM,
    "remind": REMIND_FORM,
    "calendar": CALENDAR_FORM,
    "cost": COST_FORM,
    "stages": f"""\
SHEET.csv has the columns stage,temperature,unit,from,to,time_unit and, for cup life, mass_g.
unit is C or F; time_unit is min, h or d; to may be empty. The stages are:
{textwrap.fill(", ".join(Stage), 90, initial_indent="  ", subsequent_indent="  ")}
ROOM.csv has the columns time,temperature_c and, if known, humidity_pct; time is ISO 8601 with
a zone, such as 2026-02-02T18:00+01:00. What else loggers write is read as far as it is clear.
""",
}


def parsed(argv: Sequence[str]) -> argparse.Namespace:
    """Read a command and its arguments; BadInput in one sentence when that is not possible."""
    if argv and argv[0].startswith("-") and argv[0] not in {"-h", "--help"}:
        raise BadInput(
            f"{PROGRAM}: {argv[0]} is not an option here; a command comes first: "
            f"{', '.join(COMMANDS)}; see {PROGRAM} --help."
        )
    parser = _parser()
    arguments, left = parser.parse_known_args(_with_joined_degrees(argv))
    if left and arguments.command == "log" and not any(word.startswith("-") for word in left):
        take_words(arguments, left)
    elif left:
        parser.error(f"unrecognized arguments: {' '.join(left)}")
    return arguments


def _with_joined_degrees(argv: Sequence[str]) -> list[str]:
    # Argparse takes -5C for an option; joined to the option before it, it is a value.
    joined: list[str] = []
    for item in argv:
        if joined and joined[-1] in {"--at", "--minimum"} and _MINUS_DEGREES.fullmatch(item):
            joined[-1] += f"={item}"
        else:
            joined.append(item)
    return joined


def _parser() -> _Parser:
    parser = _Parser(
        prog=PROGRAM,
        description=_ABOUT,
        epilog=_AFTER,
        formatter_class=argparse.RawDescriptionHelpFormatter,
        allow_abbrev=False,
    )
    commands = parser.add_subparsers(dest="command", metavar="COMMAND", required=True)
    for name, about in COMMANDS.items():
        command = commands.add_parser(
            name,
            help=about,
            description=f"{about[0].upper()}{about[1:]}.",
            epilog=_FORMS.get(name),
            formatter_class=argparse.RawDescriptionHelpFormatter,
            allow_abbrev=False,
        )
        _ARGUMENTS[name](command)
    return parser


def _sample(command: argparse.ArgumentParser) -> None:
    command.add_argument(
        "file", metavar="FILE", type=named, help="the file to make; it must not exist"
    )
    command.add_argument("--on", metavar="DATE", help="the sample's first day (today)")


def _plan(command: argparse.ArgumentParser) -> None:
    studio_argument(command)
    command.add_argument("--from", dest="start", metavar="WHEN", help="plan from then on (now)")
    command.add_argument("--days", metavar="N", help="pour only in the next N days")
    command.add_argument(
        "--seconds",
        metavar="N",
        help="look for better plans for N seconds, 3600 at most (0: only the quick plan)",
    )
    command.add_argument("--keep", action="store_true", help="keep the plan in the file")
    command.add_argument(
        "--reasons",
        action="store_true",
        help="plan nothing; say anew why orders of the kept plan are late",
    )
    json_argument(command)
    command.add_argument(
        "--progress",
        action="store_true",
        help="with --json: a line of JSON for each better plan, the whole plan on the last",
    )
    command.add_argument(
        "--language",
        metavar="CODE",
        help="with --json: the language of reasons and tried changes, such as de (en)",
    )


def _check(command: argparse.ArgumentParser) -> None:
    studio_argument(command)
    json_argument(command)


def _promise(command: argparse.ArgumentParser) -> None:
    studio_argument(command)
    command.add_argument("order", metavar="ORDER", nargs="?", help="only this order")
    json_argument(command)


def _next(command: argparse.ArgumentParser) -> None:
    studio_argument(command)
    command.add_argument("--at", metavar="WHEN", help="as seen then (now)")
    json_argument(command)


def _weigh(command: argparse.ArgumentParser) -> None:
    studio_argument(command)
    command.add_argument("coats", metavar="COAT", nargs="+", help="numbers of coats")
    json_argument(command)


def _stages(command: argparse.ArgumentParser) -> None:
    command.add_argument("file", metavar="FILE", type=named, nargs="?", help="the studio file")
    command.add_argument(
        "product", metavar="PRODUCT", type=named, nargs="?", help="a product of it"
    )
    command.add_argument(
        "--sheet", metavar="SHEET.csv", type=named, help="a data sheet instead of both"
    )
    command.add_argument("--at", metavar="TEMP", help="at this steady temperature")
    command.add_argument("--room", metavar="ROOM.csv", type=named, help="in this recorded room")
    command.add_argument("--poured", metavar="WHEN", help="when the film was spread there")
    command.add_argument("--mass", metavar="GRAMS", help="mixed mass in a cup, for cup life")
    command.add_argument("--minimum", metavar="TEMP", help="the product's lowest temperature")
    json_argument(command)


def _ask(command: argparse.ArgumentParser) -> None:
    studio_argument(command)
    command.add_argument("question", metavar="QUESTION", nargs="?", help="which question")
    command.add_argument("--at", metavar="WHEN", help="as asked then (now)")
    command.add_argument(
        "--with",
        dest="given",
        metavar="NAME=VALUE",
        action="append",
        help="what it wants to know, such as piece=tray; may be given again",
    )
    json_argument(command)


def _export(command: argparse.ArgumentParser) -> None:
    studio_argument(command)
    command.add_argument("target", metavar="OUT.json", type=named, help="the file to make")


def _import(command: argparse.ArgumentParser) -> None:
    command.add_argument("source", metavar="IN.json", type=named, help="what export wrote")
    command.add_argument("file", metavar="FILE", type=named, help="the studio file to make")


_ARGUMENTS = {
    "sample": _sample,
    "plan": _plan,
    "check": _check,
    "promise": _promise,
    "next": _next,
    "weigh": _weigh,
    "stages": _stages,
    "ask": _ask,
    "sheet": sheet_arguments,
    "log": log_arguments,
    "trace": trace_arguments,
    "stock": stock_arguments,
    "cost": cost_arguments,
    "remind": remind_arguments,
    "calendar": calendar_arguments,
    "export": _export,
    "import": _import,
}
