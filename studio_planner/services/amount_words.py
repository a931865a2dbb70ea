"""Masses, films and money in words, for sentences that are made below the desk."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.settings import FilmUnit, MassUnit
from studio_planner.craft.tongue import figure
from studio_planner.science.units import grams_to, millimetres_to

if TYPE_CHECKING:
    from studio_planner.craft.settings import Units

_FILM_DECIMALS = {FilmUnit.MILLIMETRE: 1, FilmUnit.MIL: 0, FilmUnit.INCH: 3}


def grams_said(grams: float, units: Units) -> str:
    """A mass in the studio's unit: to a tenth of a gram, or a thousandth of an ounce.

    Examples
    --------
    >>> from studio_planner.craft.settings import Units
    >>> grams_said(144.37, Units()), grams_said(144.37, Units(mass=MassUnit.OUNCE))
    ('144.4 g', '5.093 oz')
    """
    decimals = 3 if units.mass is MassUnit.OUNCE else 1
    return figure(f"{grams_to(grams, str(units.mass)):.{decimals}f} {units.mass}")


def film_said(millimetres: float, units: Units) -> str:
    """A film in the studio's unit.

    Examples
    --------
    >>> from studio_planner.craft.settings import Units
    >>> film_said(2.0, Units()), film_said(2.0, Units(film=FilmUnit.MIL))
    ('2.0 mm', '79 mil')
    """
    decimals = _FILM_DECIMALS[units.film]
    return figure(f"{millimetres_to(millimetres, str(units.film)):.{decimals}f} {units.film}")


def money_said(amount: float, currency: str) -> str:
    """An amount of money with two decimals and the letters of its currency.

    Examples
    --------
    >>> money_said(1234.5, "EUR")
    '1,234.50 EUR'
    """
    return f"{figure(f'{amount:,.2f}')} {currency}"


def minutes_said(minutes: float) -> str:
    """Minutes as a whole number.

    Examples
    --------
    >>> minutes_said(12.4)
    '12'
    """
    return f"{minutes:.0f}"


def percent_said(share: float, decimals: int = 1) -> str:
    """A share as per cent, without its sign.

    Examples
    --------
    >>> percent_said(0.0625), percent_said(0.5, 0)
    ('6.2', '50')
    """
    return figure(f"{100.0 * share:.{decimals}f}")
