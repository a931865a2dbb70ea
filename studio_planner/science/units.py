"""Units of data sheets, scales and rulers, into °C, hours and grams, and out of grams and mm.

All factors are exact by definition: the international pound and inch (1959 agreement: 1 lb
is 453.59237 g, 1 in is 25.4 mm).
"""

from __future__ import annotations

import math
from enum import StrEnum
from typing import TYPE_CHECKING, TypeVar

if TYPE_CHECKING:
    from collections.abc import Mapping


class UnitError(ValueError):
    """A value or a unit that can't be read."""


class TemperatureUnit(StrEnum):
    """Units of temperature: °C and °F."""

    CELSIUS = "C"
    FAHRENHEIT = "F"


class TimeUnit(StrEnum):
    """Units of time on a data sheet."""

    MINUTE = "min"
    HOUR = "h"
    DAY = "d"


class MassUnit(StrEnum):
    """Units of mass: an ounce here is the avoirdupois ounce, never a fluid ounce."""

    GRAM = "g"
    KILOGRAM = "kg"
    OUNCE = "oz"
    POUND = "lb"


class LengthUnit(StrEnum):
    """Units of film and size: a mil is a thousandth of an inch."""

    MICROMETRE = "um"
    MILLIMETRE = "mm"
    CENTIMETRE = "cm"
    MIL = "mil"
    INCH = "in"


_Unit = TypeVar("_Unit", bound=StrEnum)

_HOURS: Mapping[TimeUnit, float] = {
    TimeUnit.MINUTE: 1 / 60,
    TimeUnit.HOUR: 1.0,
    TimeUnit.DAY: 24.0,
}
_GRAMS: Mapping[MassUnit, float] = {
    MassUnit.GRAM: 1.0,
    MassUnit.KILOGRAM: 1000.0,
    MassUnit.OUNCE: 453.59237 / 16,
    MassUnit.POUND: 453.59237,
}
_MILLIMETRES: Mapping[LengthUnit, float] = {
    LengthUnit.MICROMETRE: 0.001,
    LengthUnit.MILLIMETRE: 1.0,
    LengthUnit.CENTIMETRE: 10.0,
    LengthUnit.MIL: 0.0254,
    LengthUnit.INCH: 25.4,
}


def celsius_from_fahrenheit(fahrenheit: float) -> float:
    """Return a temperature in °C from one in °F; any finite value.

    Examples
    --------
    >>> celsius_from_fahrenheit(77)
    25.0
    """
    return (_finite(fahrenheit) - 32) / 1.8


def fahrenheit_from_celsius(celsius: float) -> float:
    """Return a temperature in °F from one in °C; any finite value.

    Examples
    --------
    >>> fahrenheit_from_celsius(25)
    77.0
    """
    return _finite(celsius) * 1.8 + 32


def celsius_from(value: float, unit: TemperatureUnit | str) -> float:
    """Return °C from a value in ``C`` or ``F``.

    Examples
    --------
    >>> celsius_from(68, "F")
    20.0

    Raises
    ------
    UnitError
        If the unit is neither, or the value is not a finite number.
    """
    if _unit(TemperatureUnit, unit) is TemperatureUnit.FAHRENHEIT:
        return celsius_from_fahrenheit(value)
    return _finite(value)


def hours_from(value: float, unit: TimeUnit | str) -> float:
    """Return hours from a value in ``min``, ``h`` or ``d``.

    Examples
    --------
    >>> hours_from(90, "min"), hours_from(7, "d")
    (1.5, 168.0)

    Raises
    ------
    UnitError
        If the unit is none of these, or the value is not a finite number.
    """
    return _finite(value) * _HOURS[_unit(TimeUnit, unit)]


def grams_from(value: float, unit: MassUnit | str) -> float:
    """Return grams from a value in ``g``, ``kg``, ``oz`` or ``lb``.

    Examples
    --------
    >>> round(grams_from(1, "oz"), 3)
    28.35

    Raises
    ------
    UnitError
        If the unit is none of these, or the value is not a finite number.
    """
    return _finite(value) * _GRAMS[_unit(MassUnit, unit)]


def grams_to(grams: float, unit: MassUnit | str) -> float:
    """Return grams in another unit of mass; the inverse of `grams_from`.

    Examples
    --------
    >>> round(grams_to(100, "oz"), 2)
    3.53
    """
    return _finite(grams) / _GRAMS[_unit(MassUnit, unit)]


def millimetres_to(millimetres: float, unit: LengthUnit | str) -> float:
    """Return millimetres in ``um``, ``mm``, ``cm``, ``mil`` or ``in``.

    Examples
    --------
    >>> millimetres_to(25.4, "in")
    1.0
    """
    return _finite(millimetres) / _MILLIMETRES[_unit(LengthUnit, unit)]


def _finite(value: float) -> float:
    if not math.isfinite(value):
        msg = f"{value} is not a number that can be used; give a finite number."
        raise UnitError(msg)
    return value


def _unit(kind: type[_Unit], unit: str) -> _Unit:
    try:
        return kind(unit)
    except ValueError:
        known = ", ".join(kind)
        msg = f"The unit {unit} is not known here; use one of {known}."
        raise UnitError(msg) from None
