"""Between wall clock and UTC: hours that are left out, hours that come twice."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest
from dateutil import tz
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.local_time import (
    Span,
    clipped,
    daily_span,
    days_between,
    instant,
    merged,
    readings_of,
    without,
    zone_named,
)
from studio_planner.craft.tongue import quoted
from tests.craft.clock_changes import AUTUMN, CHANGES, SPRING, Change
from tests.craft.nouns import broken, utc

MINUTE = timedelta(minutes=1)
START = utc(2026, 3, 1)
SPANS = st.lists(
    st.tuples(st.integers(0, 60), st.integers(0, 60)).map(
        lambda pair: (START + pair[0] * MINUTE, START + pair[1] * MINUTE)
    ),
    max_size=8,
)


def minutes(spans: list[Span] | tuple[Span, ...]) -> set[int]:
    """The minutes that spans cover, one by one."""
    return {
        minute
        for minute in range(-10, 80)
        if any(start <= START + minute * MINUTE < end for start, end in spans)
    }


@pytest.mark.parametrize("change", CHANGES, ids=lambda c: f"{c.zone} {c.day}")
@pytest.mark.parametrize("minutes_away", range(-180, 181, 15))
def test_every_reading_round_a_change_is_told_as_an_independent_zone_reader_does(
    change: Change, minutes_away: int
) -> None:
    """Against dateutil's own reader of the IANA time zone database."""
    wall = change.wall + minutes_away * MINUTE
    theirs = tz.gettz(str(change.zone))
    expected = 1
    if not tz.datetime_exists(wall, theirs):
        expected = 0
    elif tz.datetime_ambiguous(wall, theirs):
        expected = 2
    found = readings_of(change.zone, wall)
    assert len(found) == expected
    assert list(found) == sorted(found)
    assert all(moment.tzinfo is UTC for moment in found)
    assert all(moment.astimezone(theirs).replace(tzinfo=None) == wall for moment in found)


@pytest.mark.parametrize("change", SPRING, ids=lambda c: str(c.zone))
def test_a_time_in_the_hour_left_out_counts_on_the_clock_before_the_change(
    change: Change,
) -> None:
    wall = change.wall + change.by / 2
    assert readings_of(change.zone, wall) == ()
    moment = instant(change.zone, wall.date(), wall.time())
    assert moment == change.moment + change.by / 2
    assert moment.astimezone(change.zone).replace(tzinfo=None) == wall + change.by


@pytest.mark.parametrize("change", AUTUMN, ids=lambda c: str(c.zone))
def test_a_time_in_the_doubled_hour_is_its_first_passing(change: Change) -> None:
    wall = change.wall + change.by / 2
    first, second = readings_of(change.zone, wall)
    assert second - first == -change.by
    assert first == change.moment + change.by / 2
    for fold in (0, 1):
        assert instant(change.zone, wall.date(), wall.time().replace(fold=fold)) == first


@given(st.sampled_from(CHANGES), st.integers(-3 * 24 * 60, 3 * 24 * 60), st.integers(0, 59))
def test_every_instant_is_among_the_readings_of_its_own_wall_clock(
    change: Change, minutes_away: int, seconds: int
) -> None:
    moment = change.moment + minutes_away * MINUTE + timedelta(seconds=seconds)
    wall = moment.astimezone(change.zone).replace(tzinfo=None)
    readings = readings_of(change.zone, wall)
    assert moment in readings
    assert instant(change.zone, wall.date(), wall.time()) == readings[0]


@pytest.mark.parametrize("change", CHANGES, ids=lambda c: f"{c.zone} {c.day}")
def test_a_night_is_as_much_shorter_or_longer_as_the_clock_is_changed(change: Change) -> None:
    evening = change.day - timedelta(days=1)
    start, end = daily_span(change.zone, evening, time(22), time(6))
    assert end - start == timedelta(hours=8) - change.by


def test_hours_until_midnight_end_with_the_day() -> None:
    start, end = daily_span(ZoneInfo("UTC"), date(2026, 5, 1), time(18), time(0))
    assert (start, end) == (utc(2026, 5, 1, 18), utc(2026, 5, 2))


@pytest.mark.parametrize("change", CHANGES, ids=lambda c: f"{c.zone} {c.day}")
def test_days_are_counted_by_the_local_calendar(change: Change) -> None:
    days = list(days_between(change.zone, change.moment - 3 * MINUTE, change.moment))
    assert days == [change.day]
    week = list(days_between(change.zone, change.moment, change.moment + timedelta(days=7)))
    assert week == [change.day + timedelta(days=n) for n in range(8)]


@pytest.mark.parametrize("name", ["Mars/Olympus", "", "../etc/passwd", "Europe", "a\0b", "ü"])
def test_a_zone_that_is_none_is_refused_with_an_example(name: str) -> None:
    told = broken(zone_named, name=name)
    assert told.keys() == {"zone"}
    assert quoted(name) in told["zone"]
    assert "Europe/Berlin" in told["zone"]


def test_a_zone_is_found_by_its_name() -> None:
    assert zone_named("Australia/Lord_Howe").key == "Australia/Lord_Howe"


@given(SPANS)
def test_merging_keeps_every_minute_in_spans_apart(spans: list[Span]) -> None:
    result = merged(spans)
    assert minutes(result) == minutes(spans)
    assert all(start < end for start, end in result)
    ends = [end for _, end in result[:-1]]
    assert all(end < start for end, (start, _) in zip(ends, result[1:], strict=True))


@given(SPANS, SPANS)
def test_cutting_holes_leaves_exactly_the_minutes_outside_them(
    spans: list[Span], holes: list[Span]
) -> None:
    assert minutes(without(spans, holes)) == minutes(spans) - minutes(holes)


@given(SPANS, st.integers(-10, 80), st.integers(-10, 80))
def test_clipping_keeps_exactly_the_minutes_between(
    spans: list[Span], start: int, end: int
) -> None:
    kept = clipped(spans, START + start * MINUTE, START + end * MINUTE)
    assert minutes(kept) == minutes(spans) & set(range(start, end))


def test_clipping_with_local_times_gives_utc() -> None:
    zone = ZoneInfo("Europe/Berlin")
    low, high = (datetime(2026, 3, 1, hour, tzinfo=zone) for hour in (2, 3))
    ((start, end),) = clipped([(START, START + timedelta(days=1))], low, high)
    assert (start, end) == (utc(2026, 3, 1, 1), utc(2026, 3, 1, 2))
    assert start.tzinfo is UTC
    assert end.tzinfo is UTC
