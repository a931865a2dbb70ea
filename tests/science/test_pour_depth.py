"""How deep a mix may be poured: edges, rims, sheets and heat."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.science.exotherm import HeatVerdict, exotherm, rate_of
from studio_planner.science.film_limits import REFUSE_ABOVE_MM, WARN_ABOVE_MM, puddle_height
from studio_planner.science.heat_bodies import HeatError, cup_body, pour_body
from studio_planner.science.pour_depth import (
    DEEPEST_MM,
    DepthLimit,
    DepthReason,
    deepest_cool_mm,
    deepest_film,
    deepest_pour,
    edge_film_mm,
)

FLOOD = rate_of(0.5, cup_body(100.0), 23.0)


def test_an_upright_edge_holds_what_the_trade_warns_and_refuses_above() -> None:
    """Common practice: 2.5 mm just holds, 1/8 in (3.2 mm) is the limit."""
    assert edge_film_mm(1.10, wetting_degrees=0.0) == pytest.approx(WARN_ABOVE_MM, abs=0.25)
    assert edge_film_mm(1.10) == pytest.approx(REFUSE_ABOVE_MM, abs=0.1)


def test_a_film_at_rest_balances_its_weight_with_its_surface() -> None:
    """Forces on the edge of a wide puddle: rho g h² / 2 = gamma (1 - cos angle), by hand."""
    height = edge_film_mm(1.10, 40.0, 20.0) * 1e-3
    pull = 0.040 * (1.0 - math.cos(math.radians(110.0)))
    assert 1100.0 * 9.80665 * height**2 / 2.0 == pytest.approx(pull, rel=1e-9)


def test_without_an_edge_a_film_stands_as_a_puddle() -> None:
    assert edge_film_mm(1.10, 39.0, 30.0, falls_degrees=0.0) == puddle_height(39.0, 1.10, 30.0)


def test_no_edge_holds_more_than_a_puddle_on_what_it_does_not_wet() -> None:
    assert edge_film_mm(1.10, 39.0, 120.0, 90.0) == puddle_height(39.0, 1.10, 180.0)


@given(st.floats(0.0, 45.0), st.floats(0.0, 85.0))
def test_a_steeper_side_holds_more(wetting: float, falls: float) -> None:
    assert edge_film_mm(1.1, 39.0, wetting, falls + 5.0) > edge_film_mm(
        1.1, 39.0, wetting, falls
    )


@pytest.mark.parametrize(
    ("rim", "sheet", "film", "reason"),
    [
        (0.0, None, 3.2, DepthReason.EDGE),
        (2.0, None, 3.2, DepthReason.EDGE),
        (10.0, None, 10.0, DepthReason.RIM),
        (10.0, 6.0, 6.0, DepthReason.SHEET),
        (0.0, 6.0, 3.2, DepthReason.EDGE),
    ],
)
def test_the_least_of_edge_rim_and_sheet_limits_a_film(
    rim: float, sheet: float | None, film: float, reason: DepthReason
) -> None:
    assert deepest_film(rim_mm=rim, sheet_mm=sheet) == DepthLimit(film, reason)


def test_a_flood_mix_stays_cool_to_about_three_millimetres() -> None:
    """Common practice: 3 mm for flood mixes."""
    assert deepest_cool_mm(FLOOD, 23.0) == pytest.approx(3.2, abs=0.6)


def test_the_deepest_cool_pour_is_cool_and_a_little_more_is_not() -> None:
    depth = deepest_cool_mm(FLOOD, 23.0)
    assert exotherm(FLOOD, pour_body(depth), 23.0).verdict is HeatVerdict.COOL
    assert exotherm(FLOOD, pour_body(depth + 0.1), 23.0).verdict is not HeatVerdict.COOL


def test_a_warm_room_allows_less() -> None:
    assert deepest_cool_mm(FLOOD, 30.0) < deepest_cool_mm(FLOOD, 20.0)


def test_what_cures_for_days_is_reckoned_to_fifty_millimetres_and_no_deeper() -> None:
    assert deepest_cool_mm(FLOOD / 500.0, 23.0) == DEEPEST_MM


def test_a_mix_that_would_heat_the_thinnest_film_is_questioned() -> None:
    with pytest.raises(HeatError, match="check the cup life"):
        deepest_cool_mm(FLOOD * 100.0, 23.0)


def test_heat_limits_a_pour_only_where_it_is_known_and_less() -> None:
    held = DepthLimit(10.0, DepthReason.RIM)
    assert deepest_pour(held, None) == held
    assert deepest_pour(held, 12.0) == held
    assert deepest_pour(held, 4.0) == DepthLimit(4.0, DepthReason.HEAT)
