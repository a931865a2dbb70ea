"""The checker's dew point and lagging surface, against outside references."""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np
import psychrolib
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import solve_ivp

from studio_planner.planning.checking.air import dew_margin, dew_point, moments, surfaces
from studio_planner.science.history import History

psychrolib.SetUnitSystem(psychrolib.SI)


@pytest.mark.parametrize("celsius", [5.0, 12.0, 20.0, 28.0, 40.0, 50.0])
@pytest.mark.parametrize("humidity", [40.0, 60.0, 80.0, 100.0])
def test_the_dew_point_is_that_of_a_psychrometric_library(
    celsius: float, humidity: float
) -> None:
    # PsychroLib, after ASHRAE Handbook Fundamentals 2017, chapter 1.
    expected = psychrolib.GetTDewPointFromRelHum(celsius, humidity / 100.0)
    if expected > 0.0:
        assert dew_point(celsius, humidity) == pytest.approx(expected, abs=0.1)


def test_perfectly_dry_air_has_no_dew_point() -> None:
    assert dew_point(20.0, 0.0) == -math.inf


def room(*samples: tuple[float, float, float | None]) -> History:
    seconds, celsius, humidity = zip(*samples, strict=True)
    return History(tuple(seconds), tuple(celsius), (0.0,) * len(samples), tuple(humidity))


@settings(max_examples=25, deadline=None)
@given(
    celsius=st.lists(st.integers(5, 35), min_size=3, max_size=7),
    lag=st.sampled_from([0.3, 0.8, 1.5, 6.0]),
    part=st.floats(0.1, 0.9),
)
def test_a_surface_follows_the_air_as_the_differential_equation_says(
    celsius: list[int], lag: float, part: float
) -> None:
    seconds = [3600.0 * 5 * index for index in range(len(celsius))]
    history = room(*((s, float(c), None) for s, c in zip(seconds, celsius, strict=True)))
    surface = float(celsius[0])
    for (s, c), (s2, c2) in pairwise(zip(seconds, celsius, strict=True)):
        solved = solve_ivp(
            lambda t, y, s=s, c=c, c2=c2: (
                (c + (c2 - c) * (t - s) / 18_000.0 - y) / (lag * 3600)
            ),
            (s, s2),
            [surface],
            rtol=1e-9,
            atol=1e-9,
        )
        surface = float(solved.y[0][-1])
    start = seconds[-1] * part
    *_, (last, found) = surfaces(history, lag, start, seconds[-1])
    assert last.second == seconds[-1]
    assert found == pytest.approx(surface, abs=1e-4)


def test_a_surface_is_cold_for_a_while_after_the_heater_goes_on() -> None:
    steps = room(
        (0.0, 10.0, 50.0),
        (36_000.0, 10.0, 50.0),
        (36_000.0, 20.0, 50.0),
        (90_000.0, 20.0, 50.0),
    )
    seen = list(surfaces(steps, 1.0, 36_000.0, 39_600.0))
    assert seen[0][1] == pytest.approx(10.0)
    # After one lag 63 % of the step: 10 + 10 (1 - 1/e).
    assert seen[-1][1] == pytest.approx(20.0 - 10.0 / math.e, abs=1e-6)
    least, when, known = dew_margin(steps, 1.0, 30_000.0, 60_000.0)
    assert known
    assert when == 36_000.0
    assert least == pytest.approx(10.0 - dew_point(20.0, 50.0), abs=1e-6)


def test_a_surface_without_lag_is_as_warm_as_the_air() -> None:
    steps = room(
        (0.0, 10.0, 50.0), (10.0, 10.0, 50.0), (10.0, 20.0, 50.0), (9000.0, 20.0, 50.0)
    )
    assert all(now.celsius == surface for now, surface in surfaces(steps, 0.0, 0.0, 9000.0))


def test_the_margin_is_that_of_every_moment_and_not_of_the_ends() -> None:
    damp = room((0.0, 20.0, 45.0), (7200.0, 16.0, 78.0), (14_400.0, 20.0, 45.0))
    least, when, _ = dew_margin(damp, 0.5, 0.0, 14_400.0)
    grid = np.linspace(0.0, 14_400.0, 4000)
    fine = min(
        surface - dew_point(now.celsius, now.humidity or 0.0)
        for a, b in pairwise(grid)
        for now, surface in [next(iter(surfaces(damp, 0.5, float(a), float(b))))]
    )
    assert least == pytest.approx(fine, abs=0.03)
    assert 6000.0 < when < 9000.0


def test_humidity_that_is_missing_in_part_makes_the_margin_unknown() -> None:
    part = room(
        (0.0, 20.0, 50.0), (3600.0, 20.0, 50.0), (7200.0, 20.0, None), (9000.0, 20.0, None)
    )
    assert dew_margin(part, 1.0, 0.0, 3600.0).known
    half = dew_margin(part, 1.0, 0.0, 7200.0)
    assert not half.known
    assert half.least == pytest.approx(20.0 - dew_point(20.0, 50.0))
    nothing = dew_margin(part, 1.0, 7200.0, 9000.0)
    assert (nothing.least, nothing.known) == (math.inf, False)


def test_there_is_no_air_outside_the_record() -> None:
    record = room((0.0, 20.0, 50.0), (3600.0, 21.0, 50.0))
    assert list(moments(record, 3600.0, 9000.0, 600.0)) == []
    assert not dew_margin(record, 1.0, 9000.0, 9900.0).known
    before = list(moments(record, -900.0, 1800.0, 600.0))
    assert (before[0].second, before[-1].second) == (0.0, 1800.0)
    assert before[-1].celsius == pytest.approx(20.5)
