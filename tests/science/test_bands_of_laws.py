"""The bands of the laws, learned from published tables and judged on products left out.

Source of every figure: resources/published/cure_times.csv, publisher by publisher.
``python -m pytest tests/science/test_bands_of_laws.py -s`` prints the table.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from studio_planner.science.bands import (
    Coverage,
    Kind,
    PublishedTable,
    calibrated_settings,
    coverage,
    fitted_energy,
    leave_products_out,
    left_out_figures,
)
from studio_planner.science.laws import LawSettings, SheetFigure
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from collections.abc import Mapping


@pytest.fixture(scope="module")
def found(cure_tables: list[PublishedTable]) -> Mapping[Kind, Coverage]:
    """How energy and bands learned from all other products do on each product."""
    return leave_products_out(cure_tables)


def test_nine_in_ten_left_out_figures_lie_inside_the_band(
    found: Mapping[Kind, Coverage],
) -> None:
    for kind, result in found.items():
        print(  # noqa: T201 - the table is meant to be read
            f"\n{kind.value:8} {result.inside:3} of {result.points:3} inside "
            f"({result.inside / result.points:.1%}), "
            f"median half-width x{result.median_half_width:.2f}",
            end="",
        )
    points = sum(result.points for result in found.values())
    inside = sum(result.inside for result in found.values())
    print(f"\nall      {inside} of {points} inside ({inside / points:.1%})")  # noqa: T201
    assert 0.85 <= inside / points <= 0.97


@pytest.mark.parametrize("kind", list(Kind))
def test_each_kind_of_figure_is_covered_too(found: Mapping[Kind, Coverage], kind: Kind) -> None:
    assert 0.85 <= found[kind].inside / found[kind].points <= 0.97


@pytest.mark.parametrize(("kind", "widest"), [(Kind.BETWEEN, 1.35), (Kind.ASSUMED, 1.8)])
def test_the_band_is_narrow_enough_to_plan_with(
    found: Mapping[Kind, Coverage], kind: Kind, widest: float
) -> None:
    assert found[kind].median_half_width <= widest


def test_the_default_bands_are_those_the_tables_call_for(
    cure_tables: list[PublishedTable],
) -> None:
    learned, default = calibrated_settings(cure_tables), LawSettings()
    assert default.between_band_kj == pytest.approx(learned.between_band_kj, abs=0.5)
    assert default.beyond_band_kj == pytest.approx(learned.beyond_band_kj, abs=0.5)
    assert default.assumed_band_kj == pytest.approx(learned.assumed_band_kj, abs=0.5)


def test_the_default_energy_fits_the_tables(cure_tables: list[PublishedTable]) -> None:
    """45 kJ/mol is the median of the tables to the next 5."""
    assert 5 * round(fitted_energy(cure_tables) / 5) == LawSettings().activation_energy_kj


def test_the_default_settings_hold_nine_in_ten(cure_tables: list[PublishedTable]) -> None:
    default = LawSettings()
    results = coverage((case, default) for case in left_out_figures(cure_tables))
    for result in results.values():
        assert 0.85 <= result.inside / result.points <= 0.97


def test_a_table_of_two_figures_has_none_between_or_beyond() -> None:
    two = (SheetFigure(10, 8), SheetFigure(40, 2))
    assert list(left_out_figures([PublishedTable("X", Stage.COVER, two)])) == []
