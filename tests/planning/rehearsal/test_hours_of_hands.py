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
        (0, "21:30", 3.0, 3 * 24 - 6),  # would end after bedtime
        (3, "23:30", 0.2, math.inf),
        (0, "12:00", 6.5, math.inf),  # no evening is that long
    ],
)
def test_work_begins_in_the_hours_or_soon_after_and_ends_before_bedtime(
    day: int, clock: str, length: float, begins: float
) -> None:
    assert earliest(hours(), day, clock, length) == pytest.approx([begins] * 2)


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


def begun(day: int, clock: str, *late_minutes: float, length: float = 1.0) -> list[float]:
    """By how many minutes makers who are so late begin after the planned time."""
    daily = WorkHours(rule="FREQ=DAILY", start=time(8), end=time(22))
    all_day = replace(ADA, work=(daily,))
    mine = Hours(all_day, ZoneInfo("UTC"), (MONDAY, MONDAY + timedelta(days=4)))
    planned = at(day, clock).timestamp()
    late = 60.0 * np.array(late_minutes)
    found = mine.in_time(planned, late, np.full(len(late), length * HOUR))
    return [round((float(one) - planned) / 60.0, 6) for one in found]


def test_who_has_to_leave_begins_in_time_to_be_done() -> None:
    # Away from Tuesday noon to Wednesday noon; awake until midnight.
    assert begun(1, "11:00", 0, 5, 20) == [0, 0, 0]
    assert begun(1, "10:50", 0, 5, 20) == [0, 5, 10]
    assert begun(0, "22:50", 0, 5, 20) == [0, 5, 10]


def test_who_is_held_up_for_longer_than_half_an_hour_does_not_make_it() -> None:
    assert begun(1, "11:00", 30, 31, 50) == [0, 1, 20]


def test_long_before_one_has_to_leave_nothing_is_begun_sooner() -> None:
    assert begun(0, "19:00", 0, 5, 90) == [0, 5, 90]
    assert begun(9, "11:00", 5) == [5]  # after all hours that are known
