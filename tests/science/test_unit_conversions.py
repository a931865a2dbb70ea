"""Units, checked against the pint library (test only)."""

from __future__ import annotations

import math

import pint
import pytest

from studio_planner.science import units

REGISTRY: pint.UnitRegistry[float] = pint.UnitRegistry()

CASES = [
    (units.hours_from, "min", "minute", "hour"),
    (units.hours_from, "h", "hour", "hour"),
    (units.hours_from, "d", "day", "hour"),
    (units.grams_from, "g", "gram", "gram"),
    (units.grams_from, "kg", "kilogram", "gram"),
    (units.grams_from, "oz", "ounce", "gram"),
    (units.grams_from, "lb", "pound", "gram"),
]

MASSES = [unit for convert, unit, *_ in CASES if convert is units.grams_from]
FILMS = {
    "um": "micrometer",
    "mm": "millimeter",
    "cm": "centimeter",
    "mil": "thou",
    "in": "inch",
}


@pytest.mark.parametrize(("convert", "unit", "theirs", "base"), CASES)
def test_every_unit_agrees_with_pint(
    convert: object, unit: str, theirs: str, base: str
) -> None:
    assert callable(convert)
    expected = REGISTRY.Quantity(7.25, theirs).to(base).magnitude
    assert math.isclose(convert(7.25, unit), expected, rel_tol=1e-12)


@pytest.mark.parametrize(("unit", "theirs"), FILMS.items())
def test_every_unit_of_film_agrees_with_pint(unit: str, theirs: str) -> None:
    expected = REGISTRY.Quantity(7.25, "millimeter").to(theirs).magnitude
    assert math.isclose(units.millimetres_to(7.25, unit), expected, rel_tol=1e-12)


@pytest.mark.parametrize("unit", MASSES)
def test_converting_back_gives_the_first_value(unit: str) -> None:
    there = units.grams_from(3.5, unit)
    assert math.isclose(units.grams_to(there, unit), 3.5, rel_tol=1e-12)


@pytest.mark.parametrize("celsius", [-40.0, 0.0, 20.0, 23.0, 37.5])
def test_temperatures_agree_with_pint_both_ways(celsius: float) -> None:
    fahrenheit = REGISTRY.Quantity(celsius, "degC").to("degF").magnitude
    assert math.isclose(units.fahrenheit_from_celsius(celsius), fahrenheit, abs_tol=1e-9)
    assert math.isclose(units.celsius_from(fahrenheit, "F"), celsius, abs_tol=1e-9)
    assert units.celsius_from(celsius, "C") == celsius


def test_an_unknown_unit_is_refused_with_the_known_ones() -> None:
    with pytest.raises(units.UnitError, match=r"unit week is not known.*min, h, d"):
        units.hours_from(1.0, "week")


def test_a_value_that_is_no_number_is_refused() -> None:
    with pytest.raises(units.UnitError, match="finite number"):
        units.grams_from(math.nan, "g")
