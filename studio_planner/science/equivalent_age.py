"""Equivalent age by the Arrhenius function of ASTM C1074, as a check from outside.

The planner's clocks use the sheet's own law; with a single Arrhenius slope they are the
same thing, and a test says so.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from studio_planner.science.curves import kelvin

if TYPE_CHECKING:
    from collections.abc import Iterable

REFERENCE_CELSIUS = 23.0
"""Reference temperature [°C] of ASTM C1074; 20 °C is in use too."""

ENERGY_OVER_GAS_CONSTANT = 5000.0
"""Q, the activation energy over the gas constant [K]; value from memory."""


def age_factor(
    celsius: float,
    reference_celsius: float = REFERENCE_CELSIUS,
    energy_kelvin: float = ENERGY_OVER_GAS_CONSTANT,
) -> float:
    """Return q = exp(-Q (1/Ta - 1/Ts)): equivalent hours per hour at a temperature.

    Parameters
    ----------
    celsius
        Temperature Ta [°C].
    reference_celsius
        Reference temperature Ts [°C].
    energy_kelvin
        Q [K].

    Examples
    --------
    >>> age_factor(23.0), round(age_factor(13.0), 3), round(age_factor(20.0, 20.0), 3)
    (1.0, 0.554, 1.0)
    """
    return math.exp(-energy_kelvin * (1 / kelvin(celsius) - 1 / kelvin(reference_celsius)))


def equivalent_age(
    intervals: Iterable[tuple[float, float]],
    reference_celsius: float = REFERENCE_CELSIUS,
    energy_kelvin: float = ENERGY_OVER_GAS_CONSTANT,
) -> float:
    """Return the equivalent age [h] at the reference temperature.

    Parameters
    ----------
    intervals
        (hours, temperature in °C during them).
    reference_celsius, energy_kelvin
        As `age_factor`.

    Examples
    --------
    >>> round(equivalent_age([(10.0, 23.0), (10.0, 13.0)]), 2)
    15.54
    """
    return math.fsum(
        hours * age_factor(celsius, reference_celsius, energy_kelvin)
        for hours, celsius in intervals
    )
