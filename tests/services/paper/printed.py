"""Sheets of the mixing tests' bench, and reading figures off them as a maker does."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.services.desk import DeskView
from studio_planner.services.paper.pages import Table
from tests.services.mixing.bench_mixes import START, bench, plan_of, poured

if TYPE_CHECKING:
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.services.paper.pages import Block, Sheet

NOW = START - timedelta(hours=3)
DAY = START.date()


def seen(studio: Studio | None = None, *coats: PlannedCoat) -> DeskView:
    """A view of a studio with a plan of those coats, else of one."""
    planned = replace(studio or bench(), plan=plan_of(*(coats or (poured(1),))))
    return DeskView(planned, NOW)


def blocks(sheet: Sheet) -> list[Block]:
    return [block for part in sheet.parts for block in part.blocks]


def tables(sheet: Sheet, title: str) -> list[Table]:
    """The tables whose title begins so, in order."""
    found = (one for one in blocks(sheet) if isinstance(one, Table))
    return [table for table in found if table.title.startswith(title)]


def grams(text: str) -> float:
    """A mass as it is printed, in the unit that it is printed in."""
    number, _unit = text.split(" ")
    return float(number)


def of_cups(table: Table) -> list[float]:
    """What is printed to be poured into each cup."""
    return [grams(row.cells[1]) for row in table.rows if row.cells[0].startswith("cup ")]
