"""Temperatures in words, in the degrees that the studio reads."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.settings import TemperatureUnit
from studio_planner.craft.tongue import figure
from studio_planner.science.units import fahrenheit_from_celsius

if TYPE_CHECKING:
    from studio_planner.craft.settings import Units


def degrees_said(celsius: float, units: Units) -> str:
    """A temperature as somebody typed it: to a tenth where it is no whole degree.

    Examples
    --------
    >>> from studio_planner.craft.settings import Units
    >>> degrees_said(21.0, Units()), degrees_said(21.5, Units()), degrees_said(-0.04, Units())
    ('21 °C', '21.5 °C', '0 °C')
    >>> degrees_said(60.0, Units(temperature=TemperatureUnit.FAHRENHEIT))
    '140 °F'
    """
    shown = fahrenheit_from_celsius(celsius) if _fahrenheit(units) else celsius
    # Adding nothing takes the sign from a nought.
    return figure(f"{round(shown, 1) + 0.0:g} °{units.temperature}")


def degree_step_said(celsius: float, units: Units) -> str:
    """A difference of temperatures, to a tenth.

    Examples
    --------
    >>> from studio_planner.craft.settings import Units
    >>> degree_step_said(3.0, Units(temperature=TemperatureUnit.FAHRENHEIT))
    '5.4 °F'
    """
    shown = celsius * 1.8 if _fahrenheit(units) else celsius
    return figure(f"{shown:.1f} °{units.temperature}")


def _fahrenheit(units: Units) -> bool:
    return units.temperature is TemperatureUnit.FAHRENHEIT
