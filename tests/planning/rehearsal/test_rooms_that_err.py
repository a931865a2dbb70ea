"""How simulated rooms err: as far as their band and their log say, and as long."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import time, timedelta
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from scipy.stats import norm

from studio_planner.craft.places import PatternPoint, Place, Reading
from studio_planner.planning.rehearsal.chances import NORMAL_90, Chances
from studio_planner.planning.rehearsal.rooms import (
    CELL_SECONDS,
    forecast,
    grid_over,
    logged_errors,
    simulated,
    wandering,
)
from tests.planning.checker.hand_made import MONDAY

if TYPE_CHECKING:
    from collections.abc import Sequence

UTC_ZONE = ZoneInfo("UTC")
WEEK = timedelta(days=7)
ROOM = Place(
    key="room",
    name="Workshop",
    band_celsius=2.0,
    pattern=(
        PatternPoint(at=time(6), celsius=17.0),
        PatternPoint(at=time(8), celsius=21.0),
        PatternPoint(at=time(22), celsius=21.0),
        PatternPoint(at=time(22), celsius=17.0),
    ),
)


def read(errors: Sequence[float], hours: float = 1.0) -> Place:
    """The room with a log that ends on the Monday and errs so much from reading to reading."""
    exact = ROOM.history(UTC_ZONE, MONDAY - 20 * WEEK, MONDAY + WEEK)
    whens = [MONDAY - timedelta(hours=hours * back) for back in range(len(errors))][::-1]
    readings = []
    for when, error in zip(whens, errors, strict=True):
        celsius = exact.celsius_at(when.timestamp())
        assert celsius is not None
        readings.append(Reading(when=when, celsius=celsius + error))
    return replace(ROOM, readings=tuple(readings))


def test_a_band_of_ninety_per_cent_is_so_many_standard_deviations() -> None:
    assert pytest.approx(norm.ppf(0.95), abs=1e-12) == NORMAL_90


def test_being_late_is_as_stated_by_half_and_by_nine_tenths() -> None:
    chances = Chances()
    middle = math.log(chances.late_middle_minutes)
    ninth = math.exp(middle + chances.late_spread * norm.ppf(0.9))
    assert ninth == pytest.approx(chances.late_90_minutes, abs=1e-9)


@pytest.mark.parametrize("hourly", [0.0, 0.8, 0.96])
def test_errors_have_the_asked_spread_and_fade_by_the_formula(hourly: float) -> None:
    errors = wandering(np.random.default_rng(1), 4000, 60, hourly)
    assert errors.shape == (4000, 60)
    # Every cell alone, the first included: the process is stationary.
    assert errors.std(axis=0) == pytest.approx(np.ones(60), abs=0.05)
    assert errors.mean() == pytest.approx(0.0, abs=0.06)
    for hours in (0.5, 1.0, 2.0, 10.0):
        cells = round(hours * 3600.0 / CELL_SECONDS)
        found = float(np.mean(errors[:, cells:] * errors[:, :-cells]))
        assert found == pytest.approx(hourly**hours, abs=0.04)


def test_a_room_is_within_its_band_nine_times_in_ten() -> None:
    grid = grid_over(MONDAY, MONDAY + WEEK)
    expected = forecast(ROOM, UTC_ZONE, grid, Chances())
    air = simulated(np.random.default_rng(2), 3000, expected)
    inside = np.abs(air - expected.celsius) <= ROOM.band_celsius
    assert float(inside.mean()) == pytest.approx(0.90, abs=0.01)


def test_a_cell_holds_the_mean_of_its_half_hour() -> None:
    grid = grid_over(MONDAY, MONDAY + WEEK)
    celsius = forecast(ROOM, UTC_ZONE, grid, Chances()).celsius
    assert (celsius[11], celsius[12], celsius[15]) == pytest.approx((17.0, 17.5, 20.5))
    # A heater switched off at ten in the evening.
    assert (celsius[43], celsius[44]) == pytest.approx((21.0, 17.0))


def test_a_grid_begins_on_a_half_hour_and_covers_everything() -> None:
    start, end = MONDAY + timedelta(minutes=47), MONDAY + timedelta(hours=3, minutes=1)
    grid = grid_over(start, end)
    assert grid.span == (MONDAY + timedelta(minutes=30), MONDAY + timedelta(hours=3.5))


def test_a_place_without_a_log_errs_as_its_band_says() -> None:
    expected = forecast(ROOM, UTC_ZONE, grid_over(MONDAY, MONDAY + WEEK), Chances())
    assert logged_errors(ROOM, UTC_ZONE, Chances()) is None
    assert expected.spread == pytest.approx(np.full(336, 2.0 / norm.ppf(0.95)))
    assert expected.hourly_correlation == Chances().hourly_correlation


def test_a_long_log_says_how_far_and_how_long_a_room_errs() -> None:
    drawn = wandering(np.random.default_rng(3), 1, 2 * 24 * 50, 0.9)[0, ::2] * 0.7
    place = read(drawn.tolist())
    errors = logged_errors(place, UTC_ZONE, Chances())
    assert errors is not None
    assert errors.celsius == pytest.approx(0.7, abs=0.1)
    assert errors.hourly_correlation == pytest.approx(0.9, abs=0.03)
    assert errors.independent == pytest.approx(1200 * 0.1 / 1.9, rel=0.3)
    expected = forecast(place, UTC_ZONE, grid_over(MONDAY, MONDAY + WEEK), Chances())
    assert expected.spread[0] < 0.8 < ROOM.band_celsius / NORMAL_90
    assert expected.hourly_correlation == pytest.approx(0.9, abs=0.03)


def test_readings_every_two_hours_tell_the_same_of_one_hour() -> None:
    drawn = wandering(np.random.default_rng(4), 1, 4 * 700, 0.9)[0, ::4]
    errors = logged_errors(read(drawn.tolist(), hours=2.0), UTC_ZONE, Chances())
    assert errors is not None
    assert errors.hourly_correlation == pytest.approx(0.9, abs=0.03)


def test_a_few_readings_move_the_stated_spread_only_a_little() -> None:
    place = read([0.01, -0.01, 0.02])
    errors = logged_errors(place, UTC_ZONE, Chances())
    assert errors is not None
    assert errors.hourly_correlation == Chances().hourly_correlation
    expected = forecast(place, UTC_ZONE, grid_over(MONDAY, MONDAY + WEEK), Chances())
    assert expected.spread[0] == pytest.approx(2.0 / NORMAL_90, rel=0.02)


def test_a_pattern_that_is_always_too_warm_errs() -> None:
    errors = logged_errors(read([-1.5] * 100), UTC_ZONE, Chances())
    assert errors is not None
    assert errors.celsius == pytest.approx(1.5)


def test_only_the_last_weeks_of_a_log_count() -> None:
    errors = logged_errors(read([3.0] * 1000 + [0.5] * 1441), UTC_ZONE, Chances())
    assert errors is not None
    assert errors.celsius == pytest.approx(0.5)


def test_what_was_read_keeps_the_band_of_its_readings() -> None:
    place = read([0.0] * 100)
    grid = grid_over(MONDAY - timedelta(days=2), MONDAY + WEEK)
    spread = forecast(place, UTC_ZONE, grid, Chances()).spread
    assert spread[:96] == pytest.approx(np.full(96, 0.3 / NORMAL_90))
    assert spread[96] > spread[95]
