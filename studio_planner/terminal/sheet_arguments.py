"""The arguments of sheet, and what its help says about the four sheets."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.terminal.file_arguments import named, studio_argument

if TYPE_CHECKING:
    import argparse

SHEET_FORM = """\
--day is the pour sheet of all mixes that begin on that day, A5 for the clipboard: what to
weigh, the cup's clock, spots, and boxes for what really happens; --mix is that of one mix, by
the number of a coat in the kept plan, as weigh takes it. DATE is 2026-02-02, today or tomorrow.
--week is the week that the day lies in, A4 for the door; --order an order's slip with its care
card, A5; --stock the bottles, A4. It needs no screen; everything is black on white.
"""


def sheet_arguments(command: argparse.ArgumentParser) -> None:
    """Take the studio file, the PDF, and which sheet is wanted."""
    studio_argument(command)
    command.add_argument("target", metavar="OUT.pdf", type=named, help="the file to make")
    which = command.add_mutually_exclusive_group(required=True)
    which.add_argument("--day", metavar="DATE", help="the pour sheet of a day")
    which.add_argument("--mix", metavar="COAT", help="the pour sheet of the mix of that coat")
    which.add_argument("--week", metavar="DATE", help="the week that a day lies in")
    which.add_argument(
        "--order", metavar="ORDER", help="the slip of an order, with a care card"
    )
    which.add_argument("--stock", action="store_true", help="what is in the bottles")
    command.add_argument(
        "--overwrite", action="store_true", help="replace OUT.pdf where it is there already"
    )
    command.add_argument(
        "--language", metavar="CODE", help="the language of the sheet, such as de (en)"
    )
