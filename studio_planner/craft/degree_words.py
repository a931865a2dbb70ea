"""Temperatures in words, in the degrees that the studio reads."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.saying import Saying
from studio_planner.craft.settings import TemperatureUnit
from studio_planner.science.units import fahrenheit_from_celsius

if TYPE_CHECKING:
    from studio_planner.craft.settings import Units


def degrees_said(celsius: float, units: Units) -> Saying:
    """A temperature as somebody typed it: to a tenth where it is no whole degree.

    Examples
    --------
    >>> from studio_planner.craft.settings import Units
    >>> [str(degrees_said(celsius, Units())) for celsius in (21.0, 21.5, -0.04)]
    ['21 °C', '21.5 °C', '0 °C']
    >>> str(degrees_said(60.0, Units(temperature=TemperatureUnit.FAHRENHEIT)))
    '140 °F'
    """
    return _said(fahrenheit_from_celsius(celsius) if _fahrenheit(units) else celsius, units)


def degree_step_said(celsius: float, units: Units) -> Saying:
    """A difference of temperatures, likewise.

    Examples
    --------
    >>> from studio_planner.craft.settings import Units
    >>> str(degree_step_said(3.0, Units(temperature=TemperatureUnit.FAHRENHEIT)))
    '5.4 °F'
    """
    return _said(celsius * 1.8 if _fahrenheit(units) else celsius, units)


def _said(degrees: float, units: Units) -> Saying:
    # Adding nothing takes the sign from a nought.
    shown = round(degrees, 1) + 0.0
    return Saying(f"{{degrees:g}} °{units.temperature}", facts=(("degrees", shown),))


def _fahrenheit(units: Units) -> bool:
    return units.temperature is TemperatureUnit.FAHRENHEIT
