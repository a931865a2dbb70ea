"""Room histories: lines and steps, joins, gaps, and a logger's rows."""

from __future__ import annotations

import math

import pytest

from studio_planner.science.history import (
    History,
    HistoryError,
    constant_history,
    fill_gaps,
)


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
