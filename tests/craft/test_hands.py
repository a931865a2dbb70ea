"""Hands: working hours against dateutil's own rules and zones, nights, absences, waking."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

import pytest
from dateutil import tz
from dateutil.rrule import FR, MO, SA, TH, TU, WE, WEEKLY, rrule
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.hands import Absence, Person, WorkHours
from studio_planner.craft.local_time import merged
from tests.craft.clock_changes import AUTUMN, CHANGES, SPRING, Change
from tests.craft.nouns import broken, utc

BERLIN = ZoneInfo("Europe/Berlin")
WEEKDAYS = "FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR,SA"
DAILY = "FREQ=DAILY"


def hours(start: int, end: int, rule: str = DAILY) -> WorkHours:
    return WorkHours(rule=rule, start=time(start), end=time(end))


def person(*work: WorkHours, **entries: object) -> Person:
    return Person(**({"key": "ada", "name": "Ada", "work": work} | entries))  # type: ignore[arg-type]


def lengths(spans: tuple[tuple[datetime, datetime], ...]) -> list[timedelta]:
    return [end - start for start, end in spans]


@pytest.mark.parametrize("change", CHANGES, ids=lambda c: f"{c.zone} {c.day}")
@pytest.mark.parametrize(("start", "end"), [(9, 17), (18, 22), (18, 0), (22, 6), (4, 3)])
def test_three_weeks_round_a_change_are_those_of_dateutil(
    change: Change, start: int, end: int
) -> None:
    """Against dateutil's rrule and its own reader of the IANA time zone database."""
    theirs = tz.gettz(str(change.zone))
    low, high = change.moment - timedelta(days=10), change.moment + timedelta(days=11)
    evening = datetime.combine(change.day - timedelta(days=14), time(start))
    expected = []
    for begin in rrule(WEEKLY, evening, count=25, byweekday=(MO, TU, WE, TH, FR, SA)):
        finish = datetime.combine(begin.date(), time(end))
        finish += timedelta(days=0 if end > start else 1)
        ends = [wall.replace(tzinfo=theirs).astimezone(UTC) for wall in (begin, finish)]
        expected.append((max(ends[0], low), min(ends[1], high)))
    found = person(hours(start, end, WEEKDAYS)).working(change.zone, low, high)
    assert found == merged(expected)
    assert all(moment.tzinfo is UTC for span in found for moment in span)


@pytest.mark.parametrize("change", CHANGES, ids=lambda c: f"{c.zone} {c.day}")
def test_a_night_shift_is_as_much_shorter_or_longer_as_the_clock_is_changed(
    change: Change,
) -> None:
    around = (change.moment - timedelta(hours=40), change.moment + timedelta(hours=40))
    nights = lengths(person(hours(22, 6)).working(change.zone, *around))
    assert timedelta(hours=8) - change.by in nights
    assert timedelta(hours=8) in nights


@pytest.mark.parametrize("change", SPRING + AUTUMN, ids=lambda c: f"{c.zone} {c.day}")
def test_day_work_keeps_its_hours_across_a_change(change: Change) -> None:
    around = (change.moment - timedelta(days=3), change.moment + timedelta(days=3))
    found = person(hours(9, 17)).working(change.zone, *around)
    assert {start.astimezone(change.zone).time() for start, _ in found[1:]} == {time(9)}
    assert set(lengths(found[1:-1])) == {timedelta(hours=8)}


@pytest.mark.parametrize("change", CHANGES, ids=lambda c: f"{c.zone} {c.day}")
def test_two_halves_of_the_day_make_every_hour_of_both_clock_changes(change: Change) -> None:
    around = (change.moment - timedelta(days=2), change.moment + timedelta(days=2))
    always = person(hours(0, 12), hours(12, 0))
    assert always.working(change.zone, *around) == (around,)


def test_work_that_began_yesterday_still_counts_at_the_start() -> None:
    found = person(hours(22, 6)).working(BERLIN, utc(2026, 1, 10, 1), utc(2026, 1, 10, 12))
    assert found == ((utc(2026, 1, 10, 1), utc(2026, 1, 10, 5)),)


def test_overlapping_hours_are_one_stretch() -> None:
    found = person(hours(9, 13), hours(12, 17)).working(
        ZoneInfo("UTC"), utc(2026, 1, 10), utc(2026, 1, 11)
    )
    assert found == ((utc(2026, 1, 10, 9), utc(2026, 1, 10, 17)),)


def test_an_absence_takes_work_and_waking_and_nothing_else() -> None:
    away = Absence(start=utc(2026, 1, 10, 12), end=utc(2026, 1, 10, 14), why="market")
    ada = person(hours(9, 17), absences=(away,), wakes=time(7), sleeps=time(23))
    day = (utc(2026, 1, 10, 6), utc(2026, 1, 10, 23, 30))
    assert ada.working(ZoneInfo("UTC"), *day) == (
        (utc(2026, 1, 10, 9), away.start),
        (away.end, utc(2026, 1, 10, 17)),
    )
    assert ada.awake(ZoneInfo("UTC"), *day) == (
        (utc(2026, 1, 10, 7), away.start),
        (away.end, utc(2026, 1, 10, 23)),
    )


def test_absences_of_the_doubled_hour_are_cut_out_in_true_time_and_told_in_utc() -> None:
    first = datetime(2026, 10, 25, 2, 15, tzinfo=BERLIN)
    absences = (
        Absence(start=first.replace(fold=1), end=first.replace(fold=1, minute=30)),
        Absence(start=first, end=first.replace(minute=45)),
    )
    found = person(hours(0, 6), absences=absences).working(
        BERLIN, utc(2026, 10, 24, 23), utc(2026, 10, 25, 5)
    )
    assert found == (
        (utc(2026, 10, 24, 23), utc(2026, 10, 25, 0, 15)),
        (utc(2026, 10, 25, 0, 45), utc(2026, 10, 25, 1, 15)),
        (utc(2026, 10, 25, 1, 30), utc(2026, 10, 25, 5)),
    )
    assert all(moment.tzinfo is UTC for span in found for moment in span)


@given(st.integers(0, 23), st.integers(0, 23), st.integers(0, 400), st.integers(1, 90))
def test_whoever_works_is_awake(start: int, end: int, day: int, length: int) -> None:
    if start == end:
        return
    ada = person(hours(start, end), wakes=time(8), sleeps=time(22))
    low = utc(2026, 1, 1) + timedelta(days=day)
    span = (low, low + timedelta(hours=length))
    awake = ada.awake(BERLIN, *span)
    assert merged((*awake, *ada.working(BERLIN, *span))) == awake
    assert all(one[1] < other[0] for one, other in pairwise(awake))
    assert all(span[0] <= begin < finish <= span[1] for begin, finish in awake)


def test_who_sleeps_by_day_is_awake_across_midnight() -> None:
    ada = person(wakes=time(16), sleeps=time(8))
    found = ada.awake(ZoneInfo("UTC"), utc(2026, 1, 10), utc(2026, 1, 11))
    assert found == (
        (utc(2026, 1, 10), utc(2026, 1, 10, 8)),
        (utc(2026, 1, 10, 16), utc(2026, 1, 11)),
    )


def test_nobody_works_without_hours() -> None:
    assert person().working(BERLIN, utc(2026, 1, 1), utc(2026, 2, 1)) == ()


def test_everything_wrong_with_working_hours_is_reported() -> None:
    told = broken(WorkHours, rule="often", start=time(9, tzinfo=UTC), end=time(9, tzinfo=UTC))
    assert told.keys() == {"start", "end", "rule"}
    assert broken(hours, start=9, end=9) == {"end": "start and end are the same time."}


def test_a_person_needs_a_name_and_waking_hours_on_the_wall_clock() -> None:
    told = broken(person, key="", name="", wakes=time(7), sleeps=time(7))
    assert told.keys() == {"key", "name", "sleeps"}
    told = broken(person, wakes=time(7, tzinfo=UTC), sleeps=time(23, tzinfo=UTC))
    assert told.keys() == {"wakes", "sleeps"}


def test_an_absence_without_a_zone_or_backwards_is_refused() -> None:
    naive = utc(2026, 1, 1).replace(tzinfo=None)
    assert broken(Absence, start=naive, end=utc(2026, 1, 2)).keys() == {"start"}
    assert broken(Absence, start=utc(2026, 1, 2), end=utc(2026, 1, 1)).keys() == {"end"}


def test_hours_of_one_day_come_from_their_rule() -> None:
    once = WorkHours(
        rule="FREQ=DAILY;COUNT=1", start=time(9), end=time(10), first=date(2026, 5, 1)
    )
    found = person(once).working(ZoneInfo("UTC"), utc(2026, 4, 1), utc(2026, 6, 1))
    assert found == ((utc(2026, 5, 1, 9), utc(2026, 5, 1, 10)),)
