"""The units and the currency that a new studio begins with: those of this computer's region."""

from __future__ import annotations

from PySide6.QtCore import QLocale

from studio_planner.craft.settings import (
    ClockForm,
    FilmUnit,
    LengthUnit,
    MassUnit,
    TemperatureUnit,
    Units,
    VolumeUnit,
)

_CURRENCY = "EUR"
_LETTERS = 3  # ISO 4217


def units_of(locale: QLocale) -> Units:
    """The units that makers of a region mostly read; each can be changed in the studio.

    Where inches are bought, films are sold in mils (common practice). The United Kingdom weighs
    and measures its resins in metric units, whatever its roads say.
    """
    twelve = "a" in locale.timeFormat(QLocale.FormatType.ShortFormat).lower()
    clock = ClockForm.HOURS_12 if twelve else ClockForm.HOURS_24
    week_starts = locale.firstDayOfWeek().value - 1
    if locale.measurementSystem() is not QLocale.MeasurementSystem.ImperialUSSystem:
        return Units(clock=clock, week_starts=week_starts)
    return Units(
        temperature=TemperatureUnit.FAHRENHEIT,
        mass=MassUnit.OUNCE,
        length=LengthUnit.INCH,
        film=FilmUnit.MIL,
        volume=VolumeUnit.FLUID_OUNCE_US,
        clock=clock,
        week_starts=week_starts,
    )


def currency_of(locale: QLocale) -> str:
    """The three letters of a region's currency (ISO 4217); EUR where it has none."""
    letters = locale.currencySymbol(QLocale.CurrencySymbolFormat.CurrencyIsoCode)
    known = len(letters) == _LETTERS and letters.isascii() and letters.isalpha()
    return letters if known else _CURRENCY
