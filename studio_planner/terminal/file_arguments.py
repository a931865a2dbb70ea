"""Arguments that many commands have: the studio file, and whether JSON is wanted."""

from __future__ import annotations

import argparse


def named(text: str) -> str:
    """A name that is not empty."""
    if not text.strip():
        raise argparse.ArgumentTypeError("the name is empty; write one")
    return text


def studio_argument(command: argparse.ArgumentParser) -> None:
    """Take the studio file."""
    command.add_argument("file", metavar="FILE", type=named, help="the studio file")


def json_argument(command: argparse.ArgumentParser) -> None:
    """Take --json."""
    command.add_argument("--json", action="store_true", help="print JSON")
