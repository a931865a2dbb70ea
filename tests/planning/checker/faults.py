"""A planted fault, and the changes that several of them share."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime, time
from typing import TYPE_CHECKING

from studio_planner.craft.hands import Absence
from studio_planner.craft.pieces import Joint
from studio_planner.craft.places import PatternPoint
from studio_planner.craft.plans import StepKind, Trust
from tests.planning.checker.hand_made import (
    PLAN,
    STEPS,
    STUDIO,
    at,
    hours,
    safe,
    step,
    with_coat,
    with_pattern,
)

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.checker import Rule


@dataclass(frozen=True, kw_only=True)
class Fault:
    """What is changed, and the finding it must lead to."""

    name: str
    rule: Rule
    piece: str | None
    coat: str | None = None
    words: str = ""
    plan: Plan = PLAN
    studio: Studio = STUDIO


def person_away(start: datetime, end: datetime) -> Studio:
    ada, ben = STUDIO.people
    return replace(
        STUDIO, people=(replace(ada, absences=(Absence(start=start, end=end),)), ben)
    )


def cold_from(day_hour: int, celsius: float, humidity: float | None = 45.0) -> Studio:
    """20 °C, but `celsius` on every day between an hour and the next but one."""
    points = [
        PatternPoint(at=time(hour), celsius=warm, humidity_pct=humidity)
        for hour, warm in (
            (day_hour, 20.0),
            (day_hour, celsius),
            (day_hour + 2, celsius),
            (day_hour + 2, 20.0),
        )
    ]
    return with_pattern(STUDIO, *points)


def settings(**fields: object) -> Studio:
    return replace(STUDIO, settings=replace(STUDIO.settings, **fields))  # type: ignore[arg-type]


def steps(*more: object) -> Plan:
    return replace(PLAN, steps=(*STEPS, *more))  # type: ignore[arg-type]


NAIVE = datetime(2026, 3, 2, 10, 0)  # noqa: DTZ001 - that is the fault
TEST_FIRST_LOCK = with_coat(
    PLAN,
    "tray",
    "lock",
    window=replace(
        safe(hours(at(0, "14:15"), 4), hours(at(0, "13:30"), 24)), trust=Trust.TEST_FIRST
    ),
)
ON_GLITTER = replace(
    step(StepKind.SAND, "tray", 1, "12:00", 20, "ben", "lock"), start=at(1, "12:00")
)
SCUFFED_DISH = with_coat(PLAN, "dish", "lock", joint=Joint.SCUFFED, window=None)
SCUFFED_GLITTER = replace(
    with_coat(
        PLAN,
        "tray",
        "lock",
        joint=Joint.SCUFFED,
        window=None,
        start=at(1, "14:20"),
        end=at(1, "15:05"),
    ),
    steps=(*STEPS, ON_GLITTER),
)
