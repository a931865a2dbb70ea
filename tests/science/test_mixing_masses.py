"""Grams to mix: films, edges, drips, cups, ratios, limits."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.science.film_limits import (
    COLOURANT_LIMITS,
    Colourant,
    FilmVerdict,
    film_verdict,
    puddle_height,
)
from studio_planner.science.masses import CoatArea, coat_grams, film_grams, mix_grams
from studio_planner.science.mix_ratio import (
    MassError,
    MixRatio,
    Parts,
    a_to_add,
    hardener_error,
)


def test_one_millimetre_over_a_hundred_square_centimetres_is_eleven_grams() -> None:
    """Common practice, at 1.10 g/cm³."""
    assert film_grams(100.0, 1.0, 1.10) == pytest.approx(11.0, abs=1e-12)


def test_a_published_flood_and_seal_coverage_are_met() -> None:
    """Source: Epoxyworks, table-top applications: 0.75 lb/ft² at 1/8 in (density 1.15)."""
    square_foot = 30.48**2
    assert film_grams(square_foot, 3.175, 1.15) == pytest.approx(0.75 * 453.59237, rel=0.005)


def test_ninety_and_thirty_make_a_hundred_and_twenty_at_three_to_one() -> None:
    """Common practice: 3:1 by weight."""
    parts = MixRatio.by_weight(3, 1).parts(120.0)
    assert (parts.a_grams, parts.b_grams, parts.total) == (90.0, 30.0, 120.0)


def test_six_coasters_take_what_the_worked_example_says() -> None:
    """Worked example of common practice: 144.4 g, unrounded."""
    coaster = CoatArea(
        area_cm2=math.pi * 25, film_mm=2.0, perimeter_cm=math.pi * 10,
        edge_height_mm=8.0, edge_film_mm=0.4, drip_share=0.20,
    )  # fmt: skip
    total = mix_grams([coat_grams(coaster)] * 6, cups=3, cup_loss_grams=4.0).total
    assert total == pytest.approx(144.4, abs=0.05)


def test_a_rimmed_tray_takes_what_the_worked_example_says() -> None:
    """Worked example of common practice: 276.6 g, unrounded."""
    tray = CoatArea(
        area_cm2=1200, film_mm=2.0, perimeter_cm=140, edge_height_mm=10.0, edge_film_mm=0.3
    )
    assert mix_grams([coat_grams(tray)], cups=2).total == pytest.approx(276.6, abs=0.05)


def test_the_same_tray_without_a_rim_takes_what_the_worked_example_says() -> None:
    """Worked example: 316.2 g, with the edge rounded to 11 g first; unrounded 316.35 g."""
    tray = CoatArea(
        area_cm2=1200, film_mm=2.0, perimeter_cm=140, edge_height_mm=18.0, edge_film_mm=0.4,
        drip_share=0.15,
    )  # fmt: skip
    coat = coat_grams(tray)
    assert coat.total == pytest.approx(1.15 * (264 + 11.088), abs=1e-9)
    assert 1.15 * (coat.face + round(coat.edge)) == pytest.approx(316.2, abs=0.051)
    assert coat.total == pytest.approx(316.2, abs=0.2)


def test_a_board_takes_what_the_worked_example_says() -> None:
    """Worked example of common practice: 165.1 g, unrounded."""
    board = CoatArea(
        area_cm2=600, film_mm=2.0, perimeter_cm=100, edge_height_mm=18.0, drip_share=0.18
    )
    assert coat_grams(board).total == pytest.approx(165.1, abs=0.05)


def test_bare_blanks_drink_their_share_and_the_reserve_comes_last() -> None:
    seal = CoatArea(
        area_cm2=1000, film_mm=0.1, perimeter_cm=100, edge_height_mm=10.0, edge_film_mm=0.1,
        face_absorption=1.0, edge_absorption=2.0,
    )  # fmt: skip
    coat = coat_grams(seal, 1.0)
    assert [coat.face, coat.edge] == pytest.approx([10.0, 1.0])
    assert coat.absorbed == pytest.approx(12.0)
    mix = mix_grams([coat], cups=1, cup_loss_grams=2.0, reserve_share=0.05)
    assert mix.reserve == pytest.approx(1.25)
    assert mix.total == pytest.approx(26.25)


@pytest.mark.parametrize(
    ("a_density", "b_density", "volumes", "per_hundred"),
    [(1.15, 0.9545, (1, 1), 83), (1.15, 1.012, (2, 1), 44), (1.10, 1.034, (2, 1), 47)],
)
def test_a_ratio_by_volume_needs_the_densities(
    a_density: float, b_density: float, volumes: tuple[float, float], per_hundred: float
) -> None:
    """Published pairs: 1:1 by volume is 100:83 by weight, 2:1 is 100:44 or 100:47.

    Sources: Jamestown Distributors; Duckworks magazine 05; Swell Composites. The densities
    are the ones that give those weights.
    """
    ratio = MixRatio.by_volume(*volumes, a_density=a_density, b_density=b_density)
    assert 100 * ratio.b_per_a == pytest.approx(per_hundred, abs=0.05)


def test_the_scale_sets_the_smallest_mix() -> None:
    """Common practice: smaller part of 50 steps; about 165 g at 100:44 on a 1 g scale."""
    ratio = MixRatio.by_weight(100, 44)
    assert ratio.smallest_mix(1.0) == pytest.approx(163.6, abs=0.05)
    assert ratio.smallest_mix(0.1, floor_grams=0.0) == pytest.approx(16.4, abs=0.05)
    assert ratio.smallest_mix(0.1) == 25.0
    assert MixRatio.by_weight(44, 100).smallest_mix(1.0) == pytest.approx(163.6, abs=0.05)


def test_too_much_b_asks_for_more_a() -> None:
    ratio = MixRatio.by_weight(100, 44)
    assert a_to_add(ratio, Parts(100.0, 50.0)) == pytest.approx(13.636, abs=1e-3)
    assert a_to_add(ratio, Parts(100.0, 40.0)) == 0.0
    assert hardener_error(ratio, Parts(100.0, 45.1)) == pytest.approx(0.025)


@given(st.floats(0.1, 10.0), st.floats(0.1, 10.0), st.floats(1.0, 5000.0))
def test_parts_add_up_and_keep_the_ratio(a: float, b: float, total: float) -> None:
    ratio = MixRatio.by_weight(a, b)
    parts = ratio.parts(total)
    assert parts.total == pytest.approx(total)
    assert ratio.b_for(parts.a_grams) == pytest.approx(parts.b_grams)
    assert ratio.a_for(parts.b_grams) == pytest.approx(parts.a_grams)


@pytest.mark.parametrize(
    "refused",
    [
        lambda: MixRatio.by_weight(0, 1),
        lambda: MixRatio.by_volume(1, 1, a_density=0.0, b_density=1.0),
        lambda: MixRatio.by_weight(1, 1).smallest_mix(0.0),
        lambda: MixRatio.by_weight(1, math.inf),
        lambda: hardener_error(MixRatio.by_weight(1, 1), Parts(0.0, 1.0)),
        lambda: CoatArea(area_cm2=0, film_mm=1),
        lambda: CoatArea(area_cm2=1, film_mm=1, drip_share=-0.1),
        lambda: coat_grams(CoatArea(area_cm2=1, film_mm=1), 0.0),
        lambda: mix_grams([], cups=-1),
    ],
    ids=[
        "a_zero_part",
        "a_zero_density",
        "a_scale_without_steps",
        "an_endless_part",
        "no_a",
        "no_area",
        "negative_drips",
        "zero_density",
        "negative_cups",
    ],
)
def test_amounts_that_can_not_be_are_refused(refused: object) -> None:
    assert callable(refused)
    with pytest.raises(MassError, match="zero"):
        refused()


@pytest.mark.parametrize(
    ("film", "rim", "verdict"),
    [
        (2.5, 0, FilmVerdict.HOLDS),
        (2.51, 0, FilmVerdict.NEAR_LIMIT),
        (3.2, 0, FilmVerdict.NEAR_LIMIT),
        (3.21, 0, FilmVerdict.RUNS_OFF),
        (5.0, 6, FilmVerdict.HOLDS),
        (9.0, 6, FilmVerdict.NEAR_LIMIT),
        (9.3, 6, FilmVerdict.RUNS_OFF),
    ],
)
def test_without_a_rim_a_film_runs_off_above_its_limit(
    film: float, rim: float, verdict: FilmVerdict
) -> None:
    """Common practice: 1/8 in (3.2 mm) is the flood limit, about 2.5 mm holds."""
    assert film_verdict(film, rim) is verdict


@pytest.mark.parametrize(
    ("angle", "low", "high"), [(45, 1.35, 1.55), (60, 1.8, 2.0), (90, 2.5, 2.85)]
)
def test_a_puddle_stands_as_high_as_the_trade_reckons(
    angle: float, low: float, high: float
) -> None:
    """Height h = 2 sqrt(gamma / (rho g)) sin(theta / 2), 35 to 43 mN/m, 1.10 g/cm³."""
    assert puddle_height(35.0, 1.10, angle) >= low
    assert puddle_height(43.0, 1.10, angle) <= high


def test_every_colourant_has_a_working_range_below_its_ceiling() -> None:
    assert set(COLOURANT_LIMITS) == set(Colourant)
    for limit in COLOURANT_LIMITS.values():
        assert limit.working_from <= limit.working_to <= limit.ceiling
