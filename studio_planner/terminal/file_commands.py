"""The commands sample, export and import."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from studio_planner.services.sample import create_sample, sample_day
from studio_planner.services.stack_doubts import stack_doubts
from studio_planner.services.studio_files import export_studio, import_studio
from studio_planner.terminal.reading import day_of
from studio_planner.terminal.writing import say_wrapped

if TYPE_CHECKING:
    import argparse

    from studio_planner.terminal.surroundings import Surroundings


def sample(arguments: argparse.Namespace, around: Surroundings) -> int:
    """Make a studio file with the sample studio, dated from a day, and its plan."""
    path = Path(arguments.file)
    day = sample_day(around.clock.now())
    if arguments.on is not None:
        day = day_of(arguments.on, "--on")
    studio = create_sample(path, day)
    coats = 0 if studio.plan is None else len(studio.plan.coats)
    say_wrapped(
        f"{path}: {studio.name}, invented, from {day} on, with {len(studio.pieces)} pieces, "
        f"{len(studio.orders)} orders and a plan of {coats} coats."
    )
    return 0


def export(arguments: argparse.Namespace, around: Surroundings) -> int:
    """Write a whole studio as JSON to a new file."""
    del around
    studio = export_studio(Path(arguments.file), Path(arguments.target))
    plan = "which keeps no plan yet" if studio.plan is None else "with its kept plan"
    say_wrapped(f"{arguments.target}: everything in {arguments.file}, {plan}.")
    return 0


def import_(arguments: argparse.Namespace, around: Surroundings) -> int:
    """Make a new studio file from JSON; an existing file is refused."""
    del around
    studio = import_studio(Path(arguments.source), Path(arguments.file))
    say_wrapped(f"{arguments.file}: everything in {arguments.source}.")
    for doubt in stack_doubts(studio):
        say_wrapped(doubt)
    return 0
