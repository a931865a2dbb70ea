"""Places: what was read, then what is expected, with a band that grows.

Temperatures are invented; the straight lines between them are arithmetic.
"""

from __future__ import annotations

from datetime import UTC, datetime, time, timedelta
from itertools import pairwise
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.places import PatternPoint, Place, PlaceKind, Reading
from tests.craft.clock_changes import CHANGES, SPRING, Change
from tests.craft.nouns import broken, place, spot, utc

if TYPE_CHECKING:
    from studio_planner.science.history import History

ZONE = ZoneInfo("UTC")
BERLIN = ZoneInfo("Europe/Berlin")
MONDAY = utc(2026, 1, 12)
DAY = timedelta(days=1)
HOUR = timedelta(hours=1)


def at(hour: int, celsius: float, day: int | None = None) -> PatternPoint:
    return PatternPoint(at=time(hour), celsius=celsius, day=day)


def read(when: datetime, celsius: float, humidity: float | None = None) -> Reading:
    return Reading(when=when, celsius=celsius, humidity_pct=humidity)


def celsius(history: History, when: datetime) -> float:
    found = history.celsius_at(when.timestamp())
    assert found is not None
    return found


def band(history: History, when: datetime) -> float:
    found = history.band_at(when.timestamp())
    assert found is not None
    return found


def steps(history: History) -> list[tuple[datetime, float, float]]:
    """Every instant with two samples, and the temperatures before and after it."""
    rows = list(zip(history.seconds, history.celsius, strict=True))
    return [
        (datetime.fromtimestamp(one[0], UTC), one[1], other[1])
        for one, other in pairwise(rows)
        if one[0] == other[0] and one[1] != other[1]
    ]


def test_one_point_is_a_steady_room() -> None:
    history = place(at(9, 20)).history(ZONE, MONDAY, MONDAY + 5 * DAY)
    assert set(history.celsius) == {20}
    assert history.extent == (MONDAY.timestamp(), (MONDAY + 5 * DAY).timestamp())


@pytest.mark.parametrize(
    ("hours", "expected"), [(22, 20.0), (26, 18.0), (28, 17.0), (30, 16.0)]
)
def test_a_night_cools_in_a_straight_line(hours: int, expected: float) -> None:
    room = place(at(22, 20), at(6, 16))
    history = room.history(ZONE, MONDAY, MONDAY + 3 * DAY)
    assert celsius(history, MONDAY + hours * HOUR) == pytest.approx(expected)


def test_the_order_in_which_points_are_entered_does_not_matter() -> None:
    points = (at(6, 16), at(22, 20), at(22, 15), at(12, 18))
    turned = (points[3], *points[:3])
    span = (MONDAY + HOUR, MONDAY + 4 * DAY)
    assert place(*points).history(ZONE, *span) == place(*turned).history(ZONE, *span)


def test_two_points_at_one_time_are_a_step() -> None:
    history = place(at(22, 20), at(22, 15)).history(ZONE, MONDAY, MONDAY + 2 * DAY)
    evening = MONDAY + 22 * HOUR
    assert steps(history) == [(evening, 20, 15), (evening + DAY, 20, 15)]
    assert celsius(history, evening) == 15
    assert celsius(history, evening - HOUR / 3600) == pytest.approx(20, abs=1e-3)


def test_a_record_that_ends_with_a_step_stays_warm_to_its_end() -> None:
    room = place(at(6, 20), at(22, 20), at(22, 15), at(5, 15))
    evening = MONDAY + 22 * HOUR
    history = room.history(ZONE, MONDAY + 7 * HOUR, evening)
    assert set(history.celsius) == {20}
    from_then = room.history(ZONE, evening, evening + 5 * HOUR)
    assert set(from_then.celsius) == {15}


@pytest.mark.parametrize("change", CHANGES, ids=lambda c: f"{c.zone} {c.day}")
def test_a_weekly_set_back_at_22_stays_at_22_local_across_a_change(change: Change) -> None:
    friday = 4
    room = place(at(22, 20, friday), at(22, 14, friday), at(6, 14, 0), at(6, 20, 0))
    low, high = change.moment - 20 * DAY, change.moment + 20 * DAY
    found = steps(room.history(change.zone, low, high))
    local = [(when.astimezone(change.zone), one, other) for when, one, other in found]
    colder = [when for when, one, other in local if (one, other) == (20, 14)]
    warmer = [when for when, one, other in local if (one, other) == (14, 20)]
    assert {(when.weekday(), when.time()) for when in colder} == {(friday, time(22))}
    assert {(when.weekday(), when.time()) for when in warmer} == {(0, time(6))}
    assert min(len(colder), len(warmer)) >= 5
    gaps = {b.timestamp() - a.timestamp() for a, b in pairwise(colder)}
    week = 7 * DAY.total_seconds()
    assert gaps == {week, week - change.by.total_seconds()}


@pytest.mark.parametrize("change", SPRING, ids=lambda c: str(c.zone))
def test_points_in_the_hour_left_out_keep_the_order_of_the_wall_clock(change: Change) -> None:
    inside = (change.wall + change.by / 2).time()
    after = (change.wall + change.by + timedelta(minutes=5)).time()
    pattern = [
        PatternPoint(at=when, celsius=degrees)
        for when, degrees in ((inside, 18), (inside, 12), (after, 12), (after, 21))
    ]
    room = place(*pattern, at(20, 21), at(20, 18))
    low, high = change.moment - 3 * HOUR, change.moment + 3 * HOUR
    history = room.history(change.zone, low, high)
    # In that night both steps fall together: from 18 straight to 21.
    assert steps(history) == [(change.moment + timedelta(minutes=5), 18, 21)]
    usual = room.history(change.zone, low - 2 * DAY, high - 2 * DAY)
    assert [step[1:] for step in steps(usual)] == [(18, 12), (12, 21)]


PATTERNS = st.lists(
    st.builds(
        PatternPoint,
        at=st.builds(time, st.integers(0, 4), st.sampled_from([0, 15, 30])),
        celsius=st.floats(-30, 80),
        humidity_pct=st.none() | st.floats(1, 100),
        day=st.none() | st.integers(0, 6),
    ),
    min_size=1,
    max_size=8,
    unique_by=lambda point: (point.at, point.day),
)


@given(
    PATTERNS,
    st.sampled_from(CHANGES),
    st.integers(-5000, 5000),
    st.integers(1, 20_000),
    st.lists(st.tuples(st.integers(-9000, 9000), st.floats(-40, 90)), max_size=5),
)
def test_any_pattern_and_readings_cover_the_whole_span_within_their_own_range(
    pattern: list[PatternPoint],
    change: Change,
    ahead: int,
    length: int,
    readings: list[tuple[int, float]],
) -> None:
    low = change.moment + timedelta(minutes=ahead)
    high = low + timedelta(minutes=length)
    taken = {change.moment + timedelta(minutes=m): degrees for m, degrees in readings}
    room = place(*pattern, readings=tuple(read(when, taken[when]) for when in sorted(taken)))
    history = room.history(change.zone, low, high)
    assert history.extent[0] <= low.timestamp() < high.timestamp() <= history.extent[1]
    known = [point.celsius for point in pattern] + list(taken.values())
    assert min(known) - 1e-9 <= min(history.celsius)
    assert max(history.celsius) <= max(known) + 1e-9
    assert all(width == 0.3 or 1.0 <= width <= 2.0 for width in history.band)


def test_the_band_doubles_over_a_week_and_grows_no_more() -> None:
    room = place(at(9, 20), readings=(read(MONDAY, 18),), band_celsius=1.5)
    history = room.history(ZONE, MONDAY, MONDAY + 20 * DAY)
    for days, expected in ((0, 1.5), (3.5, 2.25), (6.9, 1.5 * (1 + 6.9 / 7)), (7, 3), (15, 3)):
        assert band(history, MONDAY + days * DAY) == pytest.approx(expected)


def test_a_room_that_was_never_read_keeps_its_band() -> None:
    room = place(at(9, 20), band_celsius=1.5)
    for start in (MONDAY - 5 * DAY, MONDAY):
        history = room.history(ZONE, start, MONDAY + 20 * DAY)
        assert set(history.band) == {1.5}


def test_the_band_counts_from_the_last_reading_however_long_ago() -> None:
    room = place(at(9, 20), readings=(read(MONDAY, 18),), band_celsius=1.0)
    later = room.history(ZONE, MONDAY + 3.5 * DAY, MONDAY + 20 * DAY)
    assert band(later, MONDAY + 3.5 * DAY) == pytest.approx(1.5)
    assert band(later, MONDAY + 7 * DAY) == pytest.approx(2.0)
    assert band(later, MONDAY + 20 * DAY) == pytest.approx(2.0)


LOG = (read(MONDAY, 16, 50), read(MONDAY + 2 * HOUR, 18, 60), read(MONDAY + 3 * HOUR, 17, 60))


def test_readings_count_straight_from_one_to_the_next() -> None:
    history = place(at(9, 22), readings=LOG).history(ZONE, MONDAY, MONDAY + DAY)
    assert celsius(history, MONDAY + HOUR) == pytest.approx(17)
    assert history.humidity_at((MONDAY + HOUR).timestamp()) == pytest.approx(55)
    assert band(history, MONDAY + HOUR) == 0.3


def test_the_pattern_begins_with_a_step_where_the_readings_end() -> None:
    history = place(at(9, 22), readings=LOG).history(ZONE, MONDAY, MONDAY + DAY)
    last = LOG[-1].when
    assert steps(history) == [(last, 17, 22)]
    assert band(history, last) == 1.0
    assert band(history, last + HOUR) == pytest.approx(1 + 1 / 168)
    assert history.humidity_at((last + HOUR).timestamp()) is None


def test_before_the_first_reading_the_pattern_counts_to_the_last_second() -> None:
    history = place(at(9, 22), readings=LOG).history(ZONE, MONDAY - DAY, MONDAY + HOUR)
    assert steps(history) == [(MONDAY, 22, 16)]
    assert celsius(history, MONDAY - HOUR) == 22
    assert band(history, MONDAY - HOUR) == 1.0


def test_a_span_before_every_reading_is_pattern_alone() -> None:
    history = place(at(9, 22), readings=LOG).history(ZONE, MONDAY - 2 * DAY, MONDAY - DAY)
    assert set(history.celsius) == {22}
    assert set(history.band) == {1.0}


def test_a_span_between_two_readings_is_told_by_both() -> None:
    middle = LOG[0].when + HOUR / 2
    history = place(at(9, 22), readings=LOG).history(ZONE, middle, middle + HOUR / 4)
    assert celsius(history, middle) == pytest.approx(16.5)
    assert celsius(history, middle + HOUR / 4) == pytest.approx(16.75)


def test_a_reading_at_either_end_of_a_span_is_told() -> None:
    room = place(at(9, 22), readings=LOG)
    before = room.history(ZONE, MONDAY - DAY, MONDAY)
    assert steps(before) == [(MONDAY, 22, 16)]
    last = LOG[-1].when
    after = room.history(ZONE, last, last + DAY)
    assert (after.celsius[0], after.band[0], after.humidity[0]) == (17, 0.3, 60)
    assert steps(after) == [(last, 17, 22)]


def test_a_span_of_readings_alone_has_no_pattern_in_it() -> None:
    history = place(at(9, 60), readings=LOG).history(ZONE, MONDAY, LOG[-1].when)
    assert list(history.celsius) == [16, 18, 17]
    assert set(history.band) == {0.3}


def test_a_record_of_exactly_a_week_ends_with_twice_the_band() -> None:
    room = place(at(9, 20), readings=(read(MONDAY, 18),))
    history = room.history(ZONE, MONDAY, MONDAY + 7 * DAY)
    assert band(history, MONDAY + 7 * DAY) == pytest.approx(2.0)


def test_a_single_reading_has_no_stretch_of_its_own() -> None:
    history = place(at(9, 22), readings=LOG[:1]).history(ZONE, MONDAY - DAY, MONDAY + DAY)
    assert set(history.celsius) == {22}


def test_readings_of_the_doubled_hour_are_in_order_of_true_time() -> None:
    first = datetime(2026, 10, 25, 2, 45, tzinfo=BERLIN)
    second = first.replace(minute=15, fold=1)
    room = place(at(9, 22), readings=(read(first, 16), read(second, 18)))
    history = room.history(BERLIN, first, second)
    half = utc(2026, 10, 25, 1, 0)
    assert celsius(history, half) == pytest.approx(17)
    told = broken(place, pattern=(at(9, 22),), readings=(read(second, 18), read(first, 16)))
    assert told.keys() == {"readings"}


def test_three_temperatures_at_one_time_are_refused_with_the_weekday() -> None:
    told = broken(place, pattern=(at(9, 20), at(9, 21), at(9, 22, day=2)))
    assert told == {"pattern": "Wednesday 09:00 has 3 temperatures; a step has two."}


def test_everything_wrong_with_a_place_is_reported() -> None:
    told = broken(
        place,
        key="",
        name="",
        pattern=(),
        band_celsius=-1,
        read_band_celsius=16,
        readings=(LOG[0], LOG[0]),
    )
    assert told.keys() == {
        "key",
        "name",
        "pattern",
        "band_celsius",
        "read_band_celsius",
        "readings",
    }


def test_everything_wrong_with_a_point_or_a_reading_is_reported() -> None:
    zoned = time(9, tzinfo=UTC)
    told = broken(PatternPoint, at=zoned, celsius=81, humidity_pct=0, day=7)
    assert told.keys() == {"at", "celsius", "humidity_pct", "day"}
    naive = MONDAY.replace(tzinfo=None)
    told = broken(Reading, when=naive, celsius=91, humidity_pct=101)
    assert told.keys() == {"when", "celsius", "humidity_pct"}


def test_everything_wrong_with_a_spot_is_reported() -> None:
    told = broken(spot, key="", name="", length_mm=9, width_mm=0, height_mm=10_001)
    assert told.keys() == {"key", "name", "length_mm", "width_mm", "height_mm"}


SIDES = st.integers(10, 1000)


SIZES = st.tuples(SIDES, SIDES, SIDES)


@given(SIZES, SIZES)
def test_a_spot_holds_what_fits_one_way_or_the_other(
    mine: tuple[int, int, int], its: tuple[int, int, int]
) -> None:
    level = spot(length_mm=mine[0], width_mm=mine[1], height_mm=mine[2])
    ways = [(its[0], its[1]), (its[1], its[0])]
    fits = any(long <= mine[0] and across <= mine[1] for long, across in ways)
    assert level.holds(its[:2], its[2]) == (fits and its[2] <= mine[2])


def test_a_place_is_a_room_unless_it_is_a_warm_box() -> None:
    assert place(at(9, 20)).kind is PlaceKind.ROOM
    box: Place = place(at(9, 30), kind=PlaceKind.WARM_BOX)
    assert box.kind is PlaceKind.WARM_BOX
