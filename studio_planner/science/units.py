"""Units of data sheets, scales and rulers, turned into °C, hours, grams, mm and ml.

All factors are exact by definition: the international pound and inch (1959 agreement: 1 lb
is 453.59237 g, 1 in is 25.4 mm), the US gallon of 231 in³ and the imperial gallon of
4.54609 l (UK Weights and Measures Act 1985).
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


class VolumeUnit(StrEnum):
    """Units of volume: US and imperial fluid ounces differ by 4 %."""

    MILLILITRE = "ml"
    LITRE = "l"
    US_FLUID_OUNCE = "us_fl_oz"
    IMPERIAL_FLUID_OUNCE = "imperial_fl_oz"


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
_MILLILITRES: Mapping[VolumeUnit, float] = {
    VolumeUnit.MILLILITRE: 1.0,
    VolumeUnit.LITRE: 1000.0,
    VolumeUnit.US_FLUID_OUNCE: 231 * 2.54**3 / 128,
    VolumeUnit.IMPERIAL_FLUID_OUNCE: 4546.09 / 160,
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


def millimetres_from(value: float, unit: LengthUnit | str) -> float:
    """Return millimetres from a value in ``um``, ``mm``, ``cm``, ``mil`` or ``in``.

    Examples
    --------
    >>> round(millimetres_from(0.125, "in"), 4), round(millimetres_from(20, "mil"), 4)
    (3.175, 0.508)

    Raises
    ------
    UnitError
        If the unit is none of these, or the value is not a finite number.
    """
    return _finite(value) * _MILLIMETRES[_unit(LengthUnit, unit)]


def millimetres_to(millimetres: float, unit: LengthUnit | str) -> float:
    """Return millimetres in another unit of length; the inverse of `millimetres_from`.

    Examples
    --------
    >>> millimetres_to(25.4, "in")
    1.0
    """
    return _finite(millimetres) / _MILLIMETRES[_unit(LengthUnit, unit)]


def millilitres_from(value: float, unit: VolumeUnit | str) -> float:
    """Return ml from a value in ``ml``, ``l``, ``us_fl_oz`` or ``imperial_fl_oz``.

    Examples
    --------
    >>> round(millilitres_from(1, "us_fl_oz"), 2)
    29.57
    >>> round(millilitres_from(1, "imperial_fl_oz"), 2)
    28.41

    Raises
    ------
    UnitError
        If the unit is none of these, or the value is not a finite number.
    """
    return _finite(value) * _MILLILITRES[_unit(VolumeUnit, unit)]


def millilitres_to(millilitres: float, unit: VolumeUnit | str) -> float:
    """Return ml in another unit of volume; the inverse of `millilitres_from`.

    Examples
    --------
    >>> round(millilitres_to(100, "us_fl_oz"), 2)
    3.38
    """
    return _finite(millilitres) / _MILLILITRES[_unit(VolumeUnit, unit)]


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
        msg = f"The unit {unit!r} is not known here; use one of {known}."
        raise UnitError(msg) from None
