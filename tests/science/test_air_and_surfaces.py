"""Dew point against a psychrometric reference library, and surfaces that lag the air."""

from __future__ import annotations

import itertools

import psychrolib
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import solve_ivp

from studio_planner.craft.settings import Settings
from studio_planner.science.air import (
    AirError,
    Deposit,
    condensation_point,
    dew_point,
    dew_point_margin,
    frost_point,
    relative_humidity,
    surface_history,
)
from studio_planner.science.history import History, constant_history
from tests.science.rooms import wavy_room

psychrolib.SetUnitSystem(psychrolib.SI)
HOUR = 3600.0
GRID = list(itertools.product(range(-10, 51, 2), range(5, 101, 5)))


def reference_point(celsius: float, humidity: float) -> float:
    """Return psychrolib's dew point (ASHRAE 2017): frost point where below freezing."""
    return float(psychrolib.GetTDewPointFromRelHum(celsius, humidity / 100))


def test_the_dew_point_agrees_with_the_reference_within_a_tenth_of_a_degree() -> None:
    """Source: PsychroLib 2.5 (ASHRAE Handbook of Fundamentals 2017), where above 0 °C."""
    above = [(c, h) for c, h in GRID if c > 0 and reference_point(c, h) > 0.0]
    assert len(above) > 300
    for celsius, humidity in above:
        ours = condensation_point(celsius, humidity)
        assert ours.deposit is Deposit.DEW
        assert abs(ours.celsius - reference_point(celsius, humidity)) < 0.1


def test_below_freezing_air_over_zero_meets_the_reference_at_the_frost_point() -> None:
    """The reference answers with the frost point there; the dew point lies below it."""
    below = [(c, h) for c, h in GRID if c > 0 and reference_point(c, h) < -0.5]
    assert len(below) > 40
    for celsius, humidity in below:
        ours = condensation_point(celsius, humidity)
        assert ours.deposit is Deposit.FROST
        assert abs(ours.celsius - reference_point(celsius, humidity)) < 0.1
        assert dew_point(celsius, humidity) < ours.celsius


@pytest.mark.parametrize(
    ("celsius", "row"),
    [
        (15, (1.5, 4.7, 7.3, 9.6, 11.6)),
        (18, (4.2, 7.4, 10.1, 12.4, 14.5)),
        (20, (6.0, 9.3, 12.0, 14.4, 16.4)),
        (22, (7.8, 11.1, 13.9, 16.3, 18.4)),
        (25, (10.5, 13.9, 16.7, 19.1, 21.3)),
    ],
)
def test_the_dew_point_table_of_the_trade_is_met(
    celsius: float, row: tuple[float, ...]
) -> None:
    """Common practice: the workshop's dew-point table at 40 to 80 %, to a tenth."""
    found = [dew_point(celsius, humidity) for humidity in (40, 50, 60, 70, 80)]
    assert found == pytest.approx(row, abs=0.06)


def test_a_night_set_back_takes_the_margin_below_practice() -> None:
    """21 °C at 60 % has dew point 12.9 °C; at 15 °C that is 87 % and a margin of 2 °C."""
    dew = dew_point(21.0, 60.0)
    assert dew == pytest.approx(12.9, abs=0.05)
    humidity = relative_humidity(15.0, dew)
    assert humidity == pytest.approx(87, abs=0.5)
    margin = dew_point_margin(15.0, 15.0, humidity)
    assert margin is not None
    assert margin == pytest.approx(2.1, abs=0.1)
    assert margin < Settings().dew_margin_celsius == 3.0


@given(st.floats(-30.0, 50.0), st.floats(5.0, 100.0))
def test_humidity_from_a_dew_point_goes_back(celsius: float, humidity: float) -> None:
    dew = min(dew_point(celsius, humidity), celsius)
    assert relative_humidity(celsius, dew) == pytest.approx(humidity, abs=1e-6)


def test_saturated_air_has_its_own_dew_point() -> None:
    assert dew_point(17.0, 100.0) == pytest.approx(17.0, abs=1e-12)
    assert frost_point(0.0, 100.0) == pytest.approx(0.0, abs=1e-12)


@pytest.mark.parametrize("humidity", [0.0, -5.0, 101.0])
def test_a_humidity_that_can_not_be_is_refused(humidity: float) -> None:
    with pytest.raises(AirError, match="more than 0 and up to 100"):
        dew_point(20.0, humidity)


def test_air_or_dew_out_of_range_is_refused() -> None:
    with pytest.raises(AirError, match="outside the -60 to 120"):
        frost_point(180.0, 50.0)
    with pytest.raises(AirError, match="above the air's"):
        relative_humidity(10.0, 12.0)


def test_without_humidity_the_margin_is_unknown() -> None:
    assert dew_point_margin(15.0, 20.0, None) is None
    assert dew_point_margin(15.0, 20.0, 0.0) is None


@pytest.mark.parametrize("lag_hours", [0.2, 1.0, 6.0])
def test_a_surface_follows_the_air_as_the_equation_says(lag_hours: float) -> None:
    """Source: scipy.integrate.solve_ivp on ds/dt = (air - s)/lag."""
    air = wavy_room(2, HOUR, start=0.0)
    surface = surface_history(air, lag_hours, start_celsius=10.0)

    def change(second: float, state: list[float]) -> list[float]:
        celsius = air.celsius_at(min(second, air.extent[1]))
        assert celsius is not None
        return [(celsius - state[0]) / (lag_hours * HOUR)]

    instants = [air.extent[1] * share / 97 for share in range(98)]
    solved = solve_ivp(
        change, air.extent, [10.0], t_eval=instants, max_step=300.0, rtol=1e-9, atol=1e-9
    )
    for instant, expected in zip(instants, solved.y[0], strict=True):
        assert surface.celsius_at(instant) == pytest.approx(expected, abs=0.011)


def test_a_surface_in_steady_air_is_the_air() -> None:
    steady = constant_history(20.0, 0.5, 50.0)
    assert surface_history(steady, 2.0) == steady
    wavy = wavy_room(1, HOUR)
    assert surface_history(wavy, 0.0) is wavy


def test_a_surface_keeps_no_step_of_the_air() -> None:
    air = History(
        (0.0, HOUR, HOUR, 2 * HOUR),
        (20.0, 20.0, 10.0, 10.0),
        (0.5,) * 4,
        (50.0, None, 60.0, 60.0),
    )
    surface = surface_history(air, 1.0)
    assert surface.celsius_at(HOUR) == 20.0
    assert surface.celsius_at(2 * HOUR) == pytest.approx(10 + 10 / 2.718281828, abs=1e-6)
    assert surface.humidity_at(1.5 * HOUR) == 60.0
    assert surface.humidity_at(0.5 * HOUR) is None


def test_a_lag_that_can_not_be_is_refused() -> None:
    with pytest.raises(AirError, match="zero or more"):
        surface_history(constant_history(20.0), -1.0)
