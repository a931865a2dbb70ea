"""Rules of thumb: their defaults, and ranges outside which none of them can stand."""

from __future__ import annotations

import math
from dataclasses import fields

import pytest

from studio_planner.craft.pieces import Material
from studio_planner.craft.settings import Settings, Units
from tests.craft.nouns import broken

FIGURES = [f.name for f in fields(Settings) if f.name != "surface_lag_hours"]


def test_the_defaults_are_those_of_the_trade() -> None:
    settings = Settings()
    # ISO 8502-4 practice: the surface 3 °C above the dew point.
    assert settings.dew_margin_celsius == 3.0
    # Common practice: an eighth of an inch is the most that stays on a piece without a rim.
    assert settings.film_refuse_mm == pytest.approx(25.4 / 8, abs=0.05)
    assert settings.film_warn_mm < settings.film_refuse_mm


def test_every_material_has_a_surface_lag() -> None:
    assert Settings().surface_lag_hours.keys() == set(Material)


def test_studios_do_not_share_their_lags() -> None:
    one, other = Settings(), Settings()
    one.surface_lag_hours[Material.MDF] = 5.0
    assert other.surface_lag_hours[Material.MDF] != 5.0


@pytest.mark.parametrize("figure", FIGURES)
@pytest.mark.parametrize("value", [-0.1, 1e6, math.nan])
def test_no_figure_can_be_negative_huge_or_no_number(figure: str, value: float) -> None:
    assert broken(Settings, **{figure: value}).keys() == {figure}


def test_everything_wrong_with_settings_is_reported() -> None:
    told = broken(
        Settings, **dict.fromkeys(FIGURES, -1), surface_lag_hours={Material.GLASS: -1}
    )
    assert told.keys() == {*FIGURES, "surface_lag_hours, glass"}


def test_inside_is_metric_unless_the_maker_reads_otherwise() -> None:
    units = Units()
    assert (units.temperature, units.mass, units.length) == ("C", "g", "mm")
