"""The time axis: true lengths on both clock changes, local labels, and no jump in a zoom."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.desktop.axis_marks import day_marks, hour_marks
from studio_planner.desktop.time_scale import DAY_SECONDS, TimeScale

BERLIN = ZoneInfo("Europe/Berlin")
# Clocks in Berlin went back on 25 October 2026 and forward on 29 March (EU directive 2000/84).
AUTUMN = datetime(2026, 10, 25, tzinfo=BERLIN)
SPRING = datetime(2026, 3, 29, tzinfo=BERLIN)


def midnights(day: datetime, pixels_per_day: float = 240.0) -> list[float]:
    start = day.timestamp() - 3600.0
    return [
        mark.second
        for mark in day_marks(BERLIN, start, start + 3 * DAY_SECONDS, pixels_per_day)
    ]


@pytest.mark.parametrize(("day", "hours"), [(AUTUMN, 25), (SPRING, 23)])
def test_a_day_of_25_hours_is_25_hours_wide_and_one_of_23_is_23(
    day: datetime, hours: int
) -> None:
    scale = TimeScale(day.timestamp() - 5 * DAY_SECONDS, day.timestamp() + 20 * DAY_SECONDS)
    scale.set_width(1000)
    scale.show(day.timestamp() - 3600.0, 120.0)
    found = [second for second in midnights(day) if second >= day.timestamp()]
    width = scale.x(found[1]) - scale.x(found[0])
    assert width == pytest.approx(hours * 30.0)


def test_the_doubled_hour_is_marked_twice_and_the_missing_one_never() -> None:
    def labels(day: datetime) -> list[int]:
        end = day.timestamp() + DAY_SECONDS
        return [m.local.hour for m in hour_marks(BERLIN, day.timestamp(), end, 2400.0)]

    assert labels(AUTUMN)[:6] == [0, 1, 2, 2, 3, 4]
    assert labels(SPRING)[:4] == [0, 1, 3, 4]


def test_marks_show_the_local_hour_of_their_instant() -> None:
    start = AUTUMN.timestamp()
    for mark in hour_marks(BERLIN, start, start + 2 * DAY_SECONDS, 600.0):
        local = datetime.fromtimestamp(mark.second, UTC).astimezone(BERLIN)
        assert mark.local == local
        assert (local.minute, local.second) == (0, 0)


@pytest.mark.parametrize("pixels_per_day", [300.0, 50.0, 20.0, 6.0, 2.0])
def test_names_of_days_have_room_at_every_zoom(pixels_per_day: float) -> None:
    start = datetime(2026, 12, 1, tzinfo=UTC).timestamp()
    marks = day_marks(BERLIN, start, start + 90 * DAY_SECONDS, pixels_per_day)
    gaps = [(b.second - a.second) / DAY_SECONDS * pixels_per_day for a, b in pairwise(marks)]
    assert min(gaps) >= 50.0
    if pixels_per_day < 20.0:
        assert {mark.local.weekday() for mark in marks} == {0}


@pytest.mark.parametrize("first", range(7))
def test_where_one_day_of_a_week_is_left_it_is_the_one_that_weeks_begin_on(first: int) -> None:
    start = datetime(2026, 12, 1, tzinfo=UTC).timestamp()
    for pixels_per_day in (10.0, 5.0, 2.5):
        marks = day_marks(BERLIN, start, start + 90 * DAY_SECONDS, pixels_per_day, first)
        assert {mark.local.weekday() for mark in marks} == {first}


@given(
    factor=st.floats(0.2, 5.0),
    x=st.floats(0.0, 1000.0),
    start=st.floats(100.0, 110.0),
)
def test_a_zoom_keeps_the_instant_under_the_cursor(
    factor: float, x: float, start: float
) -> None:
    scale = TimeScale(0.0, 400 * DAY_SECONDS)
    scale.set_width(1000)
    scale.show(start * DAY_SECONDS, 300.0)
    held = scale.second(x)
    scale.zoom(factor, x)
    assert scale.second(x) == pytest.approx(held, abs=1e-3)


@given(st.lists(st.tuples(st.floats(0.1, 10.0), st.floats(0, 1000)), max_size=20))
def test_no_zoom_leaves_the_record(zooms: list[tuple[float, float]]) -> None:
    scale = TimeScale(0.0, 40 * DAY_SECONDS)
    scale.set_width(1000)
    for factor, x in zooms:
        scale.zoom(factor, x)
        assert scale.first <= scale.origin
        assert scale.end <= scale.last + 1.0 or scale.origin == scale.first


def test_an_instant_and_its_pixel_are_each_others_inverse() -> None:
    scale = TimeScale(0.0, 40 * DAY_SECONDS)
    scale.set_width(1000)
    for second in (0.0, 12345.0, 10 * DAY_SECONDS):
        assert scale.second(scale.x(second)) == pytest.approx(second)
    assert timedelta(seconds=scale.second(1.0) - scale.second(0.0)) > timedelta()
