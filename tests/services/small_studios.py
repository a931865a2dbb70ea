"""Small studios cut from the sample, for tests that need a plan in a moment."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date, datetime, time
from functools import cache
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import instant
from studio_planner.craft.part_of_studio import part_of
from studio_planner.services.sample import planned_sample, sample_studio
from studio_planner.storage.studio_file import open_studio

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio

DAY = date(2026, 2, 2)


@dataclass(frozen=True)
class StoppedClock:
    """A clock that stands still."""

    moment: datetime

    def now(self) -> datetime:
        return self.moment


def morning(studio: Studio, day: date = DAY) -> datetime:
    return instant(studio.time_zone, day, time(7))


def cut_down(studio: Studio, *pieces: str, orders: tuple[str, ...] = ()) -> Studio:
    """Keep only those pieces, what was poured of them, and those orders for them."""
    return replace(part_of(studio, pieces, orders), plan=studio.plan)


def two_trays() -> Studio:
    """Two trays whose primer is dry; one of them is promised for a market."""
    return cut_down(sample_studio(DAY), "tide-tray", "dusk-tray", orders=("market",))


@cache
def planned_once() -> Studio:
    """The whole sample with its plan; it takes seconds, so all tests share one."""
    return planned_sample(DAY)


def kept(studio: Studio) -> Plan:
    assert studio.plan is not None
    return studio.plan


def put_plan(path: Path, plan: Plan) -> None:
    """Put a plan into a studio file, whatever it is worth."""
    with open_studio(path) as file:
        file.keep_plan(plan)
