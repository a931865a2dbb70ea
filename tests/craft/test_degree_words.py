"""Temperatures and differences of temperatures in words."""

from __future__ import annotations

import pytest

from studio_planner.craft.degree_words import degree_step_said, degrees_said
from studio_planner.craft.settings import TemperatureUnit, Units

CELSIUS, FAHRENHEIT = Units(), Units(temperature=TemperatureUnit.FAHRENHEIT)


@pytest.mark.parametrize(
    ("celsius", "units", "words"),
    [
        (21.0, CELSIUS, "21 °C"),
        (21.5, CELSIUS, "21.5 °C"),
        (17.33, CELSIUS, "17.3 °C"),
        (-0.04, CELSIUS, "0 °C"),
        (20.0, FAHRENHEIT, "68 °F"),
        (21.4, FAHRENHEIT, "70.5 °F"),
    ],
)
def test_a_temperature_is_said_as_it_was_typed(
    celsius: float, units: Units, words: str
) -> None:
    assert str(degrees_said(celsius, units)) == words


def test_a_difference_of_temperatures_has_no_zero_point() -> None:
    assert str(degree_step_said(3.0, FAHRENHEIT)) == "5.4 °F"
    assert str(degree_step_said(3.0, CELSIUS)) == "3 °C"
