"""What a new studio begins with in some regions, as Unicode's locale data know them."""

from __future__ import annotations

import pytest
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
from studio_planner.desktop.system_units import currency_of, units_of

AMERICAN = Units(
    temperature=TemperatureUnit.FAHRENHEIT,
    mass=MassUnit.OUNCE,
    length=LengthUnit.INCH,
    film=FilmUnit.MIL,
    volume=VolumeUnit.FLUID_OUNCE_US,
    clock=ClockForm.HOURS_12,
    week_starts=6,
)


@pytest.mark.parametrize(
    ("region", "units", "currency"),
    [
        ("de_DE", Units(), "EUR"),
        ("en_GB", Units(), "GBP"),
        ("en_US", AMERICAN, "USD"),
        ("en_AU", Units(clock=ClockForm.HOURS_12), "AUD"),
        ("pt_BR", Units(week_starts=6), "BRL"),
        ("ar_EG", Units(clock=ClockForm.HOURS_12, week_starts=5), "EGP"),
    ],
)
def test_a_region_has_its_units_its_clock_its_week_and_its_money(
    region: str, units: Units, currency: str
) -> None:
    assert units_of(QLocale(region)) == units
    assert currency_of(QLocale(region)) == currency


def test_where_nothing_is_known_it_is_metric_and_the_euro() -> None:
    assert currency_of(QLocale.c()) == "EUR"
    assert units_of(QLocale.c()).length is LengthUnit.MILLIMETRE
