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
    (units.millimetres_from, "um", "micrometer", "millimeter"),
    (units.millimetres_from, "mm", "millimeter", "millimeter"),
    (units.millimetres_from, "cm", "centimeter", "millimeter"),
    (units.millimetres_from, "mil", "thou", "millimeter"),
    (units.millimetres_from, "in", "inch", "millimeter"),
    (units.millilitres_from, "ml", "milliliter", "milliliter"),
    (units.millilitres_from, "l", "liter", "milliliter"),
    (units.millilitres_from, "us_fl_oz", "US_fluid_ounce", "milliliter"),
    (units.millilitres_from, "imperial_fl_oz", "imperial_fluid_ounce", "milliliter"),
]

BACK = {
    units.grams_from: units.grams_to,
    units.millimetres_from: units.millimetres_to,
    units.millilitres_from: units.millilitres_to,
}


@pytest.mark.parametrize(("convert", "unit", "theirs", "base"), CASES)
def test_every_unit_agrees_with_pint(
    convert: object, unit: str, theirs: str, base: str
) -> None:
    assert callable(convert)
    expected = REGISTRY.Quantity(7.25, theirs).to(base).magnitude
    assert math.isclose(convert(7.25, unit), expected, rel_tol=1e-12)


@pytest.mark.parametrize(("convert", "unit"), [case[:2] for case in CASES if case[0] in BACK])
def test_converting_back_gives_the_first_value(convert: object, unit: str) -> None:
    assert callable(convert)
    there = convert(3.5, unit)
    assert math.isclose(BACK[convert](there, unit), 3.5, rel_tol=1e-12)


@pytest.mark.parametrize("celsius", [-40.0, 0.0, 20.0, 23.0, 37.5])
def test_temperatures_agree_with_pint_both_ways(celsius: float) -> None:
    fahrenheit = REGISTRY.Quantity(celsius, "degC").to("degF").magnitude
    assert math.isclose(units.fahrenheit_from_celsius(celsius), fahrenheit, abs_tol=1e-9)
    assert math.isclose(units.celsius_from(fahrenheit, "F"), celsius, abs_tol=1e-9)
    assert units.celsius_from(celsius, "C") == celsius


def test_an_unknown_unit_is_refused_with_the_known_ones() -> None:
    with pytest.raises(units.UnitError, match=r"'week' is not known.*min, h, d"):
        units.hours_from(1.0, "week")


def test_a_value_that_is_no_number_is_refused() -> None:
    with pytest.raises(units.UnitError, match="finite number"):
        units.grams_from(math.nan, "g")
