"""Money and pigments: what can be entered."""

from __future__ import annotations

from studio_planner.craft.pigments import Pigment
from studio_planner.craft.prices import PriceRule, Prices
from studio_planner.science.film_limits import Colourant
from tests.craft.nouns import broken, refusal


def test_an_hour_and_a_half_costs_one_and_a_half_wages() -> None:
    assert Prices(hourly_wage=20.0).wage(90.0) == 30.0


def test_nothing_that_a_maker_reckons_with_is_less_than_nothing() -> None:
    figures = (
        "hourly_wage",
        "consumables_per_mix",
        "consumables_per_piece",
        "rush_freight",
        "overhead_pct",
        "scrap_pct",
        "fees_pct",
        "margin_pct",
        "rush_wage_pct",
        "round_to",
    )
    assert set(broken(Prices, **dict.fromkeys(figures, -1.0))) == set(figures)


def test_a_margin_of_the_price_leaves_something_of_it() -> None:
    said = broken(Prices, rule=PriceRule.OF_PRICE, margin_pct=80.0, fees_pct=20.0)
    assert said == {"margin_pct": "margin and fees together leave nothing of the price."}
    assert not refusal(Prices, rule=PriceRule.ON_COST, margin_pct=80.0, fees_pct=20.0)


def test_every_broken_rule_of_a_pigment_is_said() -> None:
    said = broken(
        Pigment,
        key="",
        name=" ",
        kind=Colourant.MICA,
        density=0.1,
        diameter_um=0.0,
        price_per_100g=-1.0,
    )
    assert set(said) == {"key", "name", "density", "diameter_um", "price_per_100g"}


def test_a_colour_names_a_pigment_by_key_or_name_in_any_case() -> None:
    pearl = Pigment(key="pearl", name="Pearl white", kind=Colourant.MICA)
    assert pearl.called(" PEARL ")
    assert pearl.called("pearl White")
    assert not pearl.called("gold")
