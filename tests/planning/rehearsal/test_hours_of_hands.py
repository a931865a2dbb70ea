"""Hands in simulated weeks: hours, bedtime, and what is booked already."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import time, timedelta
from zoneinfo import ZoneInfo

import numpy as np
import pytest

from studio_planner.craft.hands import Absence, Person, WorkHours
from studio_planner.planning.rehearsal.hands import Hours
from tests.planning.checker.hand_made import MONDAY, at

ADA = Person(
    key="ada",
    name="Ada",
    sleeps=time(0, 0),
    work=(WorkHours(rule="FREQ=DAILY", start=time(18), end=time(22)),),
    absences=(Absence(start=at(1, "12:00"), end=at(2, "12:00")),),
)
HOUR = 3600.0


def hours() -> Hours:
    return Hours(ADA, ZoneInfo("UTC"), (MONDAY, MONDAY + timedelta(days=4)))


def earliest(mine: Hours, day: int, clock: str, length: float = 1.0) -> list[float]:
    """The first begin, in hours since Monday, for two weeks that are alike."""
    after = np.full(2, at(day, clock).timestamp())
    found = mine.earliest(after, np.full(2, length * HOUR))
    return [(float(one) - MONDAY.timestamp()) / HOUR for one in found]


@pytest.mark.parametrize(
    ("day", "clock", "length", "begins"),
    [
        (0, "07:00", 1.0, 18.0),
        (0, "19:30", 1.0, 19.5),
        (0, "22:55", 1.0, 22.0 + 55 / 60),  # begun after the hours, done before bedtime
        (0, "23:00", 0.5, 3 * 24 - 6),  # too long after the hours; away on Tuesday
        (0, "21:30", 3.0, 21.5),  # half an hour late to bed
        (0, "21:31", 3.0, 3 * 24 - 6),  # would end later still
        (3, "23:30", 0.2, math.inf),
        (0, "12:00", 6.6, math.inf),  # no evening is that long
    ],
)
def test_work_begins_in_the_hours_or_soon_after_and_ends_soon_after_bedtime(
    day: int, clock: str, length: float, begins: float
) -> None:
    assert earliest(hours(), day, clock, length) == pytest.approx([begins] * 2)


@pytest.mark.parametrize(
    ("clock", "length", "begins"),
    [
        ("11:00", 1.0, 24 + 11),
        ("11:29", 1.0, 24 + 11 + 29 / 60),  # away half an hour late
        ("11:31", 1.0, 2 * 24 + 12),  # would be gone later still
        ("12:01", 0.1, 2 * 24 + 12),  # begins nothing any more
    ],
)
def test_who_is_at_a_pour_when_an_absence_begins_finishes_it(
    clock: str, length: float, begins: float
) -> None:
    daily = (WorkHours(rule="FREQ=DAILY", start=time(8), end=time(22)),)
    span = MONDAY, MONDAY + timedelta(days=4)
    mine = Hours(replace(ADA, work=daily), ZoneInfo("UTC"), span)
    assert earliest(mine, 1, clock, length) == pytest.approx([begins] * 2)


def test_nobody_does_two_things_at_once() -> None:
    mine = hours()
    begun = np.full(2, at(0, "18:30").timestamp())
    mine.book(begun, begun + HOUR, np.array([True, False]))
    assert earliest(mine, 0, "18:00") == pytest.approx([19.5, 18.0])
    assert earliest(mine, 0, "18:00", 0.5) == pytest.approx([18.0, 18.0])
    mine.book(begun + HOUR, begun + 3 * HOUR, np.array([True, True]))
    assert earliest(mine, 0, "18:45") == pytest.approx([21.5, 21.5])


def test_what_is_over_before_all_that_is_to_come_is_forgotten() -> None:
    mine = hours()
    begun = np.full(2, at(0, "18:30").timestamp())
    mine.book(begun, begun + HOUR, np.array([True, True]))
    mine.forget(at(0, "19:00").timestamp())
    assert earliest(mine, 0, "18:30") == pytest.approx([19.5, 19.5])
    mine.forget(at(0, "19:30").timestamp())
    assert earliest(mine, 0, "18:30") == pytest.approx([18.5, 18.5])


def test_never_stays_never() -> None:
    mine = hours()
    never = np.array([math.inf, at(0, "18:00").timestamp()])
    found = mine.earliest(never, np.full(2, HOUR))
    assert found.tolist() == never.tolist()
