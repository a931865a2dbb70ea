"""Cup life against mass and temperature."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.science.cups import CupFigure, cup_life
from studio_planner.science.laws import LawError, SheetFigure, stage_law
from studio_planner.science.stages import Basis, Edge, Stage

FILM = stage_law(Stage.WORKING_TIME, [SheetFigure(15, 1.6), SheetFigure(25, 0.8)])


def test_published_cups_are_returned_exactly(cup_rows: list[dict[str, str]]) -> None:
    """Source: 3M, Scotch-Weld DP460 Off-White data sheet, January 2019 (work life, 23 °C)."""
    rows = [row for row in cup_rows if row["record"] == "DP460"]
    figures = [
        CupFigure(float(r["temperature_c"]), float(r["mass_g"]), float(r["value"]) / 60)
        for r in rows
    ]
    assert len(figures) == 3
    life = cup_life(figures)
    for figure in figures:
        hours = life.hours(figure.celsius, figure.grams)
        assert math.isclose(hours, figure.from_hours, rel_tol=1e-12)
        assert life.basis(figure.celsius, figure.grams) is Basis.PUBLISHED
    assert life.basis(23, 7) is Basis.BETWEEN
    assert life.basis(23, 50) is Basis.OUTSIDE
    assert life.basis(20, 7) is Basis.ASSUMED


def test_small_published_masses_give_an_exponent_of_about_three_tenths(
    cup_rows: list[dict[str, str]],
) -> None:
    """Source: as above; 0.26 between 5 and 10 g, 0.32 between 10 and 20 g."""
    rows = sorted(
        (float(r["mass_g"]), float(r["value"])) for r in cup_rows if r["record"] == "DP460"
    )
    exponents = [math.log(t0 / t1) / math.log(m1 / m0) for (m0, t0), (m1, t1) in pairwise(rows)]
    assert exponents == pytest.approx([0.26, 0.32], abs=0.01)


def test_the_cup_of_a_published_system_is_far_shorter_than_its_film(
    cup_rows: list[dict[str, str]],
) -> None:
    """Source: Gougeon Brothers, Epoxyworks: 9-12 min in 100 g, 60-70 min as a thin film."""
    cup, film, _ = [r for r in cup_rows if r["record"] == "EPWX1"]
    working = stage_law(Stage.WORKING_TIME, [SheetFigure(22.2, 1.0, 70 / 60)])
    life = cup_life([CupFigure(22.2, 100, 9 / 60, 12 / 60)], film=working)
    assert float(cup["value"]) == 10.5
    assert float(film["value"]) == 65
    assert math.isclose(life.hours(22.2, 100) * 60, 10.5, rel_tol=1e-12)
    assert math.isclose(life.hours(22.2, 100, Edge.EARLY) * 60, 9.0, rel_tol=1e-9)
    assert math.isclose(life.out_of_cup_by(22.2, 100) * 60, 6.0, rel_tol=1e-9)
    assert life.basis(22.2, 100) is Basis.PUBLISHED


def test_without_two_masses_the_assumed_exponents_hold() -> None:
    life = cup_life([CupFigure(23, 100, 0.5)])
    assert math.isclose(life.hours(23, 50), 0.5 * 2**0.3, rel_tol=1e-12)
    assert math.isclose(life.hours(23, 200), 0.5 * 2**-0.6, rel_tol=1e-12)
    assert life.basis(23, 50) is Basis.ASSUMED


def test_a_cup_never_outlasts_its_film() -> None:
    life = cup_life([CupFigure(25, 100, 0.5)], film=FILM)
    assert life.hours(25, 1.0) == FILM.hours(25)
    assert life.hours(25, 200) < 0.5


def test_a_cup_with_one_temperature_borrows_the_slope_of_its_film() -> None:
    life = cup_life([CupFigure(25, 100, 0.5)], film=FILM)
    assert math.isclose(life.hours(15, 100), 1.0, rel_tol=1e-9)
    assert life.basis(15, 100) is Basis.ASSUMED
    single = stage_law(Stage.WORKING_TIME, [SheetFigure(25, 0.8)])
    lonely = cup_life([CupFigure(25, 100, 0.5)], film=single)
    alone = cup_life([CupFigure(25, 100, 0.5)])
    assert lonely.hours(20, 100) == alone.hours(20, 100)


def test_a_cup_with_its_own_temperatures_follows_them() -> None:
    """Masses at one temperature bring the figures of others to the reference mass."""
    figures = [CupFigure(20, 100, 0.6), CupFigure(20, 200, 0.4), CupFigure(30, 200, 0.2)]
    life = cup_life(figures, film=FILM)
    for figure in figures:
        hours = life.hours(figure.celsius, figure.grams)
        assert math.isclose(hours, figure.from_hours, rel_tol=1e-9)
    assert math.isclose(life.hours(30, 100), 0.3, rel_tol=1e-9)
    assert life.basis(25, 150) is Basis.BETWEEN


@given(st.floats(5.0, 400.0), st.floats(1.0, 5.0), st.sampled_from(list(Edge)))
def test_a_larger_mix_never_lasts_longer(grams: float, factor: float, edge: Edge) -> None:
    figures = [CupFigure(23, 50, 0.7), CupFigure(23, 100, 0.5), CupFigure(23, 250, 0.3)]
    life = cup_life(figures, film=FILM)
    more = life.hours(23, grams * factor, edge)
    assert more <= life.hours(23, grams, edge) * (1 + 1e-12)


@pytest.mark.parametrize(
    ("figures", "sentence"),
    [
        ([], "no figure for cup_life"),
        ([CupFigure(23, 0, 0.5)], "0 g is no mass"),
        ([CupFigure(23, 100, 0)], "more than zero"),
        ([CupFigure(23, 100, 0.5, -1.0)], "more than zero"),
        ([CupFigure(23, 100, 0.5, 0.4)], "ends before it starts"),
        ([CupFigure(23, 100, 0.5), CupFigure(23, 100, 0.4)], "two figures for 100 g"),
        ([CupFigure(23, 100, 0.5), CupFigure(23, 200, 0.6)], "lasts longer"),
        ([CupFigure(20, 100, 0.5), CupFigure(30, 100, 0.6)], "warmth does not slow"),
    ],
)
def test_a_cup_that_can_not_be_read_is_refused(figures: list[CupFigure], sentence: str) -> None:
    with pytest.raises(LawError, match=sentence):
        cup_life(figures)


def test_a_mix_of_nothing_has_no_cup_life() -> None:
    with pytest.raises(LawError, match="more than zero"):
        cup_life([CupFigure(23, 100, 0.5)]).hours(23, 0.0)
