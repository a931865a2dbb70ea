"""The arguments of the commands log and trace."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.terminal.file_arguments import json_argument, named, studio_argument

if TYPE_CHECKING:
    import argparse
    from collections.abc import Sequence

LOG_FORM = """\
WHAT and NAME are one of:
  poured NUMBER               the whole mix of the coat of that number in the plan
  poured PIECE                its next coat; without --at it is just finished
  poured PIECE COAT           any coat, by its name or its place in the stack: 1, 2, 3
  weighed PRODUCT A B         grams of A and of B, with --for PIECE/COAT, --lot-a, --lot-b
  touched PIECE COAT TEST     string, tack, no-mark or thumbnail; then already or not-yet
  taped, trimmed PIECE COAT   the tape was pulled, the drips trimmed
  turned, sanded PIECE COAT   made ready for that coat, which may be left out
  moved PIECE SPOT
  packed PIECE
  reading 19.5C 45% PLACE     what its thermometer says, or 67F; the humidity and the place
                              (the first room) may be left out
  shipped ORDER
  spoiled, stripped PIECE     what is stripped is a bare blank again
  correct ENTRY               with --at, --end, --spot or --words; the old entry is kept
  withdraw ENTRY              it never happened; it is kept all the same
"""


def log_arguments(command: argparse.ArgumentParser) -> None:
    """Take what happened, to what, and when."""
    studio_argument(command)
    command.add_argument("what", metavar="WHAT", nargs="?", help="what happened; see below")
    command.add_argument("names", metavar="NAME", nargs="*", help="to what; see below")
    command.add_argument(
        "--at", metavar="WHEN", help="when it happened, or began (now); 18:30 will do"
    )
    command.add_argument("--end", metavar="WHEN", help="when a pour ended")
    command.add_argument("--spot", metavar="SPOT", help="where it was poured (as planned)")
    command.add_argument("--batch", metavar="N", help="the number of the mix it came from")
    command.add_argument(
        "--for",
        dest="coats",
        metavar="PIECE/COAT",
        action="append",
        help="a coat that was weighed for; may be given again",
    )
    command.add_argument("--lot-a", metavar="LOT", help="the lot of A, or of what is not mixed")
    command.add_argument("--lot-b", metavar="LOT", help="the lot of B")
    command.add_argument("--words", metavar="TEXT", help="a note")
    command.add_argument("--last", metavar="N", help="list the last N entries (30)")
    json_argument(command)


def take_words(arguments: argparse.Namespace, left: Sequence[str]) -> None:
    """Take words that were typed behind options as if they stood before them."""
    typed = [word for word in (arguments.what, *arguments.names, *left) if word is not None]
    arguments.what, *arguments.names = typed


def trace_arguments(command: argparse.ArgumentParser) -> None:
    """Take what is traced."""
    studio_argument(command)
    command.add_argument(
        "name",
        metavar="NAME",
        type=named,
        help="a piece, an order (the beginning will do), a mix's number or a lot",
    )
    json_argument(command)
