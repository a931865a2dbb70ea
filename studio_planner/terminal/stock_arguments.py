"""The arguments of stock and cost, and what their help says."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.terminal.file_arguments import json_argument, named, studio_argument

if TYPE_CHECKING:
    import argparse

COST_FORM = """\
Mixes count in grams with the prices of the bottles that they come from, wages in attended
minutes; what nobody has entered is named and not in it. The floor price leaves nothing over.
"""


def stock_arguments(command: argparse.ArgumentParser) -> None:
    """Take the studio file."""
    studio_argument(command)
    json_argument(command)


def cost_arguments(command: argparse.ArgumentParser) -> None:
    """Take the studio file, and the order or piece."""
    studio_argument(command)
    command.add_argument("name", metavar="ORDER|PIECE", type=named, help="its key or name")
    json_argument(command)
