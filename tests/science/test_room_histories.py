"""Room histories: lines and steps, joins, gaps, and a logger's rows."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.science.history import (
    History,
    HistoryError,
    constant_history,
    continued_by,
    fill_gaps,
    stepped_history,
)
from studio_planner.science.logs import Sample, history_from_samples

if TYPE_CHECKING:
    import random


def room(*rows: tuple[float, float], band: float = 0.5) -> History:
    """Return a room of (second, °C) rows."""
    return History(
        tuple(r[0] for r in rows), tuple(r[1] for r in rows), (band,) * len(rows),
        (50.0,) * len(rows),
    )  # fmt: skip


def test_between_samples_a_room_is_a_straight_line() -> None:
    night = room((0, 20), (100, 10))
    assert night.celsius_at(25) == 17.5
    assert night.band_at(25) == 0.5
    assert night.humidity_at(25) == 50.0
    assert night.extent == (0.0, 100.0)


def test_two_samples_at_one_second_are_a_step() -> None:
    step = room((0, 20), (10, 20), (10, 15), (20, 15))
    assert step.celsius_at(9.999) == pytest.approx(20)
    assert step.celsius_at(10) == 15


def test_outside_its_ends_a_room_has_no_temperature() -> None:
    night = room((0, 20), (100, 10))
    assert night.celsius_at(-0.1) is None
    assert night.celsius_at(100.1) is None
    assert night.celsius_at(100) == 10


def test_beside_an_unknown_humidity_it_is_unknown() -> None:
    half = History((0, 10, 20), (20, 20, 20), (0, 0, 0), (50.0, None, 60.0))
    assert half.humidity_at(0) == 50.0
    assert half.humidity_at(5) is None
    assert half.humidity_at(15) is None
    assert half.humidity_at(20) == 60.0


@pytest.mark.parametrize(
    ("fields", "sentence"),
    [
        (((), (), (), ()), "at least one sample"),
        (((0.0,), (20.0,), (), (None,)), "all four values"),
        (((math.inf,), (20.0,), (0.0,), (None,)), "not a finite number"),
        (((0.0,), (math.nan,), (0.0,), (None,)), "outside -60 to 120"),
        (((0.0,), (300.0,), (0.0,), (None,)), "outside -60 to 120"),
        (((0.0,), (20.0,), (-1.0,), (None,)), "not 0 to 30"),
        (((0.0,), (20.0,), (0.0,), (101.0,)), "not 0 to 100 %"),
        (((1.0, 0.0), (20.0,) * 2, (0.0,) * 2, (None,) * 2), "out of order"),
        (((0.0,) * 3, (20.0,) * 3, (0.0,) * 3, (None,) * 3), "three samples"),
    ],
)
def test_samples_that_are_no_room_are_refused_in_one_sentence(
    fields: tuple[tuple[float, ...], ...], sentence: str
) -> None:
    with pytest.raises(HistoryError, match=sentence):
        History(*fields)


def test_a_constant_room_lasts_for_all_time() -> None:
    steady = constant_history(20.0, 1.0, 55.0)
    for instant in (-5e10, 0.0, 1.8e9):
        assert steady.celsius_at(instant) == 20.0
        assert steady.humidity_at(instant) == 55.0


def test_a_part_keeps_every_value_inside_it() -> None:
    step = room((0, 20), (10, 20), (10, 15), (20, 5))
    part = step.part(5, 15)
    assert part.extent == (5.0, 15.0)
    assert [part.celsius_at(t) for t in (5, 10, 15)] == [20, 15, 10]
    before = step.part(0, 10)
    assert before.celsius_at(10) == 20
    with pytest.raises(HistoryError, match="not inside"):
        step.part(15, 25)


def test_where_log_and_forecast_overlap_the_log_wins() -> None:
    joined = continued_by(room((0, 20), (100, 20)), room((50, 10), (200, 16), band=2.0))
    assert joined.celsius_at(99) == 20
    assert joined.celsius_at(100) == 12
    assert joined.celsius_at(200) == 16
    assert joined.band_at(99) == 0.5
    assert joined.band_at(150) == 2.0


def test_a_forecast_that_starts_later_leaves_a_gap_that_can_be_seen() -> None:
    joined = continued_by(room((0, 20), (100, 20)), room((200, 10), (300, 10)))
    assert joined.celsius_at(150) == 15
    assert joined.gaps(99.0) == ((0.0, 100.0), (100.0, 200.0), (200.0, 300.0))
    assert joined.gaps(100.0) == ()


def test_a_forecast_that_ends_before_the_log_adds_nothing() -> None:
    log = room((0, 20), (100, 20))
    assert continued_by(log, room((0, 10), (100, 10))) is log


def test_a_forecast_that_starts_where_the_log_ends_makes_one_step() -> None:
    stepping_log = room((0, 20), (100, 20), (100, 18))
    stepping_forecast = room((100, 14), (100, 12), (200, 12))
    joined = continued_by(stepping_log, stepping_forecast)
    assert joined.seconds == (0.0, 100.0, 100.0, 200.0)
    assert joined.celsius == (20.0, 20.0, 12.0, 12.0)
    single = continued_by(room((100, 20)), stepping_forecast)
    assert single.celsius == (20.0, 12.0, 12.0)


@given(
    st.lists(st.floats(0, 1000), min_size=1, max_size=8, unique=True).map(sorted),
    st.lists(st.floats(0, 1000), min_size=1, max_size=8, unique=True).map(sorted),
)
def test_a_joined_room_is_the_log_and_then_the_forecast(
    log_seconds: list[float], forecast_seconds: list[float]
) -> None:
    log = room(*((s, 10 + s / 100) for s in log_seconds))
    forecast = room(*((s, 30 - s / 100) for s in forecast_seconds))
    joined = continued_by(log, forecast)
    end = log.extent[1]
    assert joined.extent == (log.extent[0], max(end, forecast.extent[1]))
    for second in log_seconds[:-1]:
        assert joined.celsius_at(second) == log.celsius_at(second)
    for second in (s for s in forecast_seconds if s > end):
        assert joined.celsius_at(second) == forecast.celsius_at(second)


def test_a_long_gap_is_bridged_with_a_wider_band_and_marked() -> None:
    log = room((0, 20), (60, 20), (7260, 18), (7320, 18))
    filled = fill_gaps(log, 3600.0, 3.0)
    assert filled.gaps == ((60.0, 7260.0),)
    assert filled.history.celsius_at(3660) == 19
    assert [filled.history.band_at(t) for t in (30, 3660, 7300)] == [0.5, 3.0, 0.5]


def test_gaps_beside_steps_and_beside_each_other_are_bridged() -> None:
    log = room((0, 20), (0, 21), (9000, 20), (18000, 20), (18000, 15), (18060, 15))
    filled = fill_gaps(log, 3600.0, 3.0)
    assert filled.gaps == ((0.0, 9000.0), (9000.0, 18000.0))
    assert [filled.history.band_at(t) for t in (4000, 9000, 12000, 18030)] == [3, 3, 3, 0.5]
    assert filled.history.celsius_at(18000) == 15
    alone = fill_gaps(room((0, 20)), 3600.0, 3.0)
    assert alone.history == room((0, 20))


def test_set_backs_hold_each_temperature_until_the_next() -> None:
    with pytest.raises(HistoryError, match="in order of time"):
        stepped_history([(10.0, 20.0), (5.0, 18.0)], 20.0)
    with pytest.raises(HistoryError, match="at least one temperature"):
        stepped_history([], 20.0)


def test_a_loggers_rows_are_sorted_merged_and_accounted_for() -> None:
    rows = [
        Sample(seconds=120, celsius=21.0, humidity=50.0),
        Sample(seconds=0, celsius=20.0, humidity=-5.0),
        Sample(seconds=60, celsius=20.0, humidity=50.0),
        Sample(seconds=60, celsius=20.4, humidity=None),
        Sample(seconds=60, celsius=20.2, humidity=52.0),
        Sample(seconds=180, celsius=-127.0),
        Sample(seconds=math.nan, celsius=20.0),
        Sample(seconds=240, celsius=math.nan),
    ]
    cleaned = history_from_samples(rows, band=0.3)
    assert cleaned.history.seconds == (0.0, 60.0, 120.0)
    assert list(cleaned.history.celsius) == pytest.approx([20.0, 20.2, 21.0])
    assert cleaned.history.humidity == (None, 51.0, 50.0)
    assert cleaned.history.band == (0.3,) * 3
    found = (
        cleaned.rows, cleaned.sorted_rows, cleaned.merged_rows,
        cleaned.dropped_rows, cleaned.dropped_humidities,
    )  # fmt: skip
    assert found == (8, 1, 2, 3, 1)


def test_a_log_without_a_usable_row_is_refused() -> None:
    with pytest.raises(HistoryError, match="no usable row"):
        history_from_samples([Sample(seconds=0, celsius=999.0)])


@given(st.randoms(use_true_random=False))
def test_the_order_of_a_loggers_rows_does_not_matter(chance: random.Random) -> None:
    rows = [Sample(seconds=60 * (i // 2), celsius=20 + i % 5) for i in range(40)]
    shuffled = rows.copy()
    chance.shuffle(shuffled)
    ours, theirs = (history_from_samples(r).history for r in (rows, shuffled))
    assert ours.seconds == theirs.seconds
    assert ours.celsius == pytest.approx(theirs.celsius)
