"""What pieces and orders cost, which price follows, and what haste and faults cost."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.pieces import Colour
from studio_planner.craft.pigments import Pigment
from studio_planner.craft.prices import PriceRule, Prices
from studio_planner.craft.products import ProductKind
from studio_planner.craft.stock import LotCount, LotPart
from studio_planner.science.film_limits import Colourant
from studio_planner.services.costs.coat_shares import shares_of
from studio_planner.services.costs.cost_words import (
    cost_word,
    hands_word,
    missing_said,
    price_warnings,
)
from studio_planner.services.costs.extras import rush_extra, scuff_extra
from studio_planner.services.costs.gram_prices import GramPrices
from studio_planner.services.costs.order_cost import left_of, order_cost, price_for
from studio_planner.services.costs.piece_cost import (
    CostKind,
    HandsOn,
    Lacking,
    Missing,
    PieceCost,
    piece_cost,
)
from studio_planner.services.sample import sample_studio
from studio_planner.services.weighing import weigh
from tests.services.mixing.bench_mixes import (
    FLOOD,
    START,
    bench,
    coasters,
    flood_coat,
    plan_of,
    poured,
)
from tests.services.small_studios import DAY
from tests.services.stocks.bottles import lot, stocked

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio

A, B = LotPart.A, LotPart.B

RULES = Prices(
    hourly_wage=24.0,
    consumables_per_mix=1.5,
    consumables_per_piece=0.5,
    scrap_pct=0.0,
    margin_pct=50.0,
    rush_wage_pct=50.0,
    rush_freight=9.0,
)


def priced(rules: Prices = RULES, **entries: object) -> Studio:
    studio = stocked(
        lot("a1", price=30.0), lot("b1", B, price=40.0), **entries  # type: ignore[arg-type]
    )  # fmt: skip
    return replace(studio, prices=rules)


def cost_of(studio: Studio, key: str = "one") -> PieceCost:
    return piece_cost(studio, studio.plan, studio.piece(key))


def test_a_set_costs_what_the_arithmetic_says() -> None:
    """By hand: A at 0.03, B at 0.04 a gram, 1.5 and 6 times 0.5, 20 + 60 + 15 minutes at 24."""
    studio = priced()
    assert studio.plan is not None
    mix = weigh(studio, studio.plan, [1])[0]
    assert mix.a_grams is not None
    assert mix.b_grams is not None
    cost = cost_of(studio)
    assert cost.amounts[CostKind.MIX] == pytest.approx(0.03 * mix.a_grams + 0.04 * mix.b_grams)
    assert cost.amounts[CostKind.CONSUMABLES] == pytest.approx(1.5 + 6 * 0.5)
    assert cost.attended_minutes == 20.0 + 60.0 + 15.0
    assert cost.amounts[CostKind.WAGES] == pytest.approx(24.0 * 95.0 / 60.0)
    assert cost.total == pytest.approx(sum(cost.amounts.values()))
    assert cost.grams == pytest.approx(mix.total_grams)
    assert cost.missing == ()


def test_the_blank_counts_once_for_every_single_piece() -> None:
    studio = priced()
    blanks = tuple(replace(piece, blank_price=2.5) for piece in studio.pieces)
    assert cost_of(replace(studio, pieces=blanks)).amounts[CostKind.BLANK] == 15.0


def test_the_pieces_that_pass_bear_those_that_do_not() -> None:
    """Common practice: cost / (1 - share of pieces that do not pass)."""
    plain = cost_of(priced()).total
    assert cost_of(priced(replace(RULES, scrap_pct=20.0))).total == pytest.approx(plain / 0.8)


def test_overhead_goes_on_materials_or_on_hours_whichever_are_dearer() -> None:
    wages = cost_of(priced(replace(RULES, overhead_pct=30.0)))
    assert wages.amounts[CostKind.OVERHEAD] == pytest.approx(
        0.3 * wages.amounts[CostKind.WAGES]
    )
    idle = cost_of(priced(replace(RULES, overhead_pct=30.0, hourly_wage=0.5)))
    materials = idle.amounts[CostKind.MIX] + idle.amounts[CostKind.CONSUMABLES]
    assert idle.amounts[CostKind.OVERHEAD] == pytest.approx(0.3 * materials)


def test_colourants_cost_by_the_gram() -> None:
    """By hand: 3 % of half a mix at 20 for 100 g, in whole steps of the scale."""
    colours = (
        Colour(name="white", share_pct=50, colourant="snow", colourant_pct=3),
        Colour(name="clear", share_pct=50),
    )
    studio = bench(coasters("one", 6, flood_coat(colours)))
    snow = Pigment(key="p1", name="Snow", kind=Colourant.PASTE, price_per_100g=20.0)
    studio = replace(studio, pigments=(snow,), prices=RULES)
    cost = piece_cost(studio, None, studio.piece("one"))
    assert cost.grams * 0.5 * 0.03 == pytest.approx(2.1, abs=0.01)
    assert cost.amounts[CostKind.COLOURANTS] == pytest.approx(2.1 * 0.2, rel=1e-6)
    pot = lot("s1", LotPart.COLOURANT, 50.0, product="p1", price=15.0)
    potted = piece_cost(replace(studio, lots=(pot,)), None, studio.piece("one"))
    assert potted.amounts[CostKind.COLOURANTS] == pytest.approx(2.1 * 0.3, rel=1e-6)
    free = replace(snow, price_per_100g=0.0)
    unpriced = piece_cost(replace(studio, pigments=(free,)), None, studio.piece("one"))
    assert Missing(Lacking.COLOURANT_PRICE, "snow") in unpriced.missing


def test_a_colour_that_names_only_a_kind_costs_the_mean_of_that_kind() -> None:
    snow = Pigment(key="p1", name="Snow", kind=Colourant.PASTE, price_per_100g=20.0)
    ink = replace(snow, key="p2", name="Ink", price_per_100g=10.0)
    pearl = replace(snow, key="p3", name="Pearl", kind=Colourant.MICA, price_per_100g=90.0)
    prices = GramPrices(replace(stocked(), pigments=(snow, ink, pearl)))
    assert prices.of_colourant("paste") == pytest.approx(0.15)
    assert prices.of_colourant("ink") == pytest.approx(0.10)
    assert prices.of_colourant("glitter") is None
    assert prices.of_colourant("my own") is None


def test_pieces_that_share_a_mix_share_its_set_up_and_its_losses() -> None:
    studio = priced()
    together = plan_of(poured(1, "one"), poured(2, "two"))
    apart = cost_of(studio)
    shared = piece_cost(studio, together, studio.piece("one"))
    assert shared.minutes[HandsOn.MIXING] == pytest.approx(10.0)
    assert shared.total < apart.total
    shares = [shares_of(studio, together, studio.piece(key))[0] for key in ("one", "two")]
    assert sum(share.mixes for share in shares) == pytest.approx(1.0)
    assert sum(share.set_up_minutes for share in shares) == pytest.approx(20.0)


def test_a_piece_that_is_not_planned_is_taken_as_mixes_by_itself() -> None:
    studio = priced()
    assert piece_cost(studio, None, studio.piece("one")).total == pytest.approx(
        cost_of(studio).total
    )


def test_turning_tape_and_drips_are_attended_too() -> None:
    """By hand from the settings: tape and drips 10 minutes each, turning 5 for each of six."""
    studio = priced()
    taped = replace(studio.piece("one").stack[0], taped=True, trimmed=True)
    under = replace(flood_coat(), key="under", faces=frozenset({"underside"}))
    piece = replace(studio.piece("one"), stack=(taped, under))
    studio = replace(studio, pieces=(piece, studio.piece("two")), plan=None)
    minutes = piece_cost(studio, None, piece).minutes
    assert minutes[HandsOn.TRIMMING] == 20.0
    assert minutes[HandsOn.TURNING] == 30.0


def test_a_piece_of_no_order_is_not_packed() -> None:
    studio = replace(priced(), orders=())
    assert cost_of(studio).minutes[HandsOn.PACKING] == 0.0


def test_what_nobody_entered_is_named_and_not_guessed() -> None:
    studio = replace(stocked(), prices=Prices())
    missing = cost_of(studio).missing
    assert {one.what for one in missing} == {Lacking.PART_PRICE, Lacking.WAGE}
    assert {one.part for one in missing if one.what is Lacking.PART_PRICE} == {A, B}


def test_every_sentence_on_what_is_missing_says_what_to_enter() -> None:
    sample = sample_studio(DAY)
    missing = (
        Missing(Lacking.WAGE),
        Missing(Lacking.COLOURANT_PRICE, "mica"),
        Missing(Lacking.PART_PRICE, "tarn", A),
        Missing(Lacking.LEAF, "ember"),
    )
    assert all("enter" in one.lower() for one in missing_said(sample, missing))


@pytest.mark.parametrize("lacking", [{"leaf_mm": None}, {"leaf_price": 0.0}])
def test_leaf_without_a_size_or_a_price_is_not_in_the_sum_and_is_missing(
    lacking: dict[str, float | None],
) -> None:
    sample = sample_studio(DAY)
    products = tuple(
        replace(one, **lacking) if one.key == "ember" else one  # type: ignore[arg-type]
        for one in sample.products
    )
    cost = piece_cost(replace(sample, products=products), None, sample.piece("copper-fern"))
    assert Missing(Lacking.LEAF, "ember") in cost.missing
    assert cost.amounts[CostKind.LEAF] == 0.0


def test_leaf_costs_by_its_area_with_what_overlaps_and_tears() -> None:
    """By hand: 240 cm² and a fifth on top are 1.469 leaves of 14 cm at 0.38."""
    sample = sample_studio(DAY)
    cost = piece_cost(sample, None, sample.piece("copper-fern"))
    assert cost.amounts[CostKind.LEAF] == pytest.approx(1.4694 * 0.38, rel=1e-4)
    assert not cost.missing


def test_a_one_part_product_is_priced_whole() -> None:
    paint = replace(FLOOD, kind=ProductKind.PRIMER, ratio=None)
    studio = bench(coasters("one", 6, flood_coat()), product=paint)
    tin = lot("w", LotPart.WHOLE, price=10.0)
    cost = piece_cost(replace(studio, lots=(tin,), prices=RULES), None, studio.piece("one"))
    assert cost.amounts[CostKind.MIX] == pytest.approx(0.01 * cost.grams)


def test_a_gram_costs_what_the_bottles_cost_that_are_left() -> None:
    """By hand: 500 g at 0.02 and 1000 g at 0.05."""
    half = lot("a1", price=20.0, counts=(LotCount(at=START, left_g=500.0),))
    studio = stocked(half, lot("a2", price=50.0), lot("a3"))
    assert GramPrices(studio).of_part("flood", A) == pytest.approx((10.0 + 50.0) / 1500.0)
    assert GramPrices(studio).of_part("flood", B) is None


def test_when_all_is_used_the_last_bottle_tells_the_price() -> None:
    empty = (LotCount(at=START, left_g=0.0),)
    studio = stocked(
        lot("a1", price=20.0, counts=empty),
        lot("a2", price=50.0, counts=empty, received=START.date()),
    )
    prices = GramPrices(studio)
    assert prices.of_part("flood", A) == prices.of_part("flood", A) == 0.05


def test_a_price_is_rounded_up_to_the_makers_step() -> None:
    assert price_for(replace(RULES, round_to=5.0), 41.0).asked == 65.0


@given(
    cost=st.floats(0.01, 5000.0),
    margin=st.floats(0.0, 60.0),
    fees=st.floats(0.0, 30.0),
    rule=st.sampled_from(PriceRule),
    step=st.sampled_from([0.01, 0.5, 1.0, 5.0]),
)
def test_a_price_leaves_at_least_the_margin_that_was_asked_for(
    cost: float, margin: float, fees: float, rule: PriceRule, step: float
) -> None:
    rules = Prices(rule=rule, margin_pct=margin, fees_pct=fees, round_to=step)
    price = price_for(rules, cost)
    assert price.asked >= price.floor - 1e-9
    base = price.asked if rule is PriceRule.OF_PRICE else cost
    assert price.margin >= base * margin / 100.0 - 0.01
    assert left_of(rules, price.floor, cost) == pytest.approx(0.0, abs=1e-6)
    assert price.margin_share <= 1.0


def test_a_price_of_nothing_has_no_margin() -> None:
    assert price_for(RULES, 0.0).margin_share == 0.0


def test_an_order_costs_what_its_pieces_cost() -> None:
    studio = priced()
    order = studio.orders[0]
    cost = order_cost(studio, studio.plan, order)
    assert cost.total == pytest.approx(cost_of(studio).total)
    assert cost.price.asked == pytest.approx(math.ceil(cost.total * 1.5 * 2) / 2)
    assert cost.attended_minutes == 95.0
    assert (cost.agreed, cost.agreed_margin, cost.under_floor) == (None, None, False)
    assert price_warnings(studio, cost) == ()


def test_a_price_under_the_floor_is_told_of() -> None:
    studio = priced()
    cheap = replace(studio.orders[0], price=20.0)
    studio = replace(studio, orders=(cheap, studio.orders[1]))
    cost = order_cost(studio, studio.plan, cheap)
    assert cost.under_floor
    assert cost.agreed_margin == pytest.approx(20.0 - cost.total)
    (sentence,) = price_warnings(studio, cost)
    assert sentence.startswith("20.00 EUR were agreed on")


def test_a_rush_costs_its_own_mixes_its_hours_and_its_freight() -> None:
    """By hand: 10 minutes of set-up more, all hours half again as dear, 9 for the parcel."""
    studio = priced()
    together = plan_of(poured(1, "one"), poured(2, "two"))
    extra = rush_extra(studio, together, studio.orders[0])
    assert extra.minutes == pytest.approx(10.0)
    wages = 24.0 * (95.0 * 1.5 - 85.0) / 60.0
    mixes = 1.5 * 0.5
    assert extra.cost == pytest.approx(wages + mixes + 9.0, abs=0.2)


def test_pieces_of_one_order_still_share_their_mixes_in_a_rush() -> None:
    studio = priced()
    both = replace(studio.orders[0], pieces=("one", "two"))
    studio = replace(studio, orders=(both,))
    together = plan_of(poured(1, "one"), poured(2, "two"))
    assert rush_extra(studio, together, both).minutes == pytest.approx(0.0)
    alone = replace(studio, orders=())
    hurried = piece_cost(alone, together, alone.piece("one"))
    assert hurried.minutes[HandsOn.MIXING] == pytest.approx(10.0)


def test_a_scuffed_joint_costs_the_sanding_of_every_piece() -> None:
    """By hand: 20 minutes for each of six at 24 an hour."""
    studio = priced()
    extra = scuff_extra(studio, studio.plan, studio.piece("one"), "flood")
    assert extra.minutes == 120.0
    assert extra.cost == pytest.approx(48.0)
    assert scuff_extra(studio, None, studio.piece("one"), "flood").cost == pytest.approx(48.0)


def test_everything_has_a_word() -> None:
    assert all(cost_word(kind) for kind in CostKind)
    assert all(hands_word(kind) for kind in HandsOn)


@given(st.integers(1, 12), st.integers(1, 12), st.floats(0.3, 3.0), st.floats(0.0, 60.0))
def test_the_costs_of_the_pieces_of_a_mix_add_up_to_all_of_it(
    one: int, two: int, film: float, scrap: float
) -> None:
    studio = bench(
        coasters("one", one, flood_coat(film_mm=film)),
        coasters("two", two, flood_coat(film_mm=film)),
    )
    rules = replace(RULES, scrap_pct=scrap)
    bottles = (lot("a1", price=30.0), lot("b1", B, price=30.0))
    studio = replace(studio, lots=bottles, prices=rules)
    together = plan_of(poured(1, "one"), poured(2, "two"))
    costs = [piece_cost(studio, together, piece) for piece in studio.pieces]
    whole = sum(mix.total_grams for mix in weigh(studio, together, [1]))
    assert sum(cost.grams for cost in costs) == pytest.approx(whole)
    mixes = sum(cost.amounts[CostKind.MIX] for cost in costs)
    assert mixes == pytest.approx(0.03 * whole)
    for cost in costs:
        passed = cost.total * (1.0 - scrap / 100.0)
        assert passed == pytest.approx(cost.total - cost.amounts[CostKind.SCRAP])
