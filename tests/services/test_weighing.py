"""Weighing against the trade's arithmetic; every sentence says where a figure is from."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.pieces import (
    EDGE,
    TOP,
    Coat,
    CoatKind,
    Colour,
    Joint,
    Material,
    Piece,
)
from studio_planner.craft.plans import Plan, PlannedCoat
from studio_planner.craft.products import MixRatio, Product, ProductKind, RatioBy
from studio_planner.craft.settings import Settings
from studio_planner.craft.shapes import Rectangle, Round
from studio_planner.craft.studio import Studio
from studio_planner.services.naming import UnknownName
from studio_planner.services.sample import sample_studio
from studio_planner.services.weighing import MixPortion, weigh
from tests.services.small_studios import DAY

START = datetime(2026, 2, 2, 18, 0, tzinfo=UTC)
RULES = Settings(reserve_pct=0, drip_loss_pct=20, edge_film_mm=0.4, cup_loss_g=4)
THREE = (
    Colour(name="white", share_pct=50, colourant="paste", colourant_pct=3),
    Colour(name="blue", share_pct=30, colourant="paste", colourant_pct=2),
    Colour(name="gold", share_pct=20, colourant="mica", colourant_pct=5),
)


def studio_with(product: Product, coat: Coat, settings: Settings, count: int = 6) -> Studio:
    base = sample_studio(DAY)
    coasters = Piece(
        key="set", name="Set", shape=Round(diameter_mm=100), material=Material.SLATE,
        body_mm=8, stack=(coat,), count=count,
    )  # fmt: skip
    return Studio(
        name="Test", zone=base.zone, settings=settings, places=base.places,
        products=(product,), people=base.people, pieces=(coasters,),
    )  # fmt: skip


def planned(
    number: int = 1, piece: str = "set", coat: str = "flood", mix: int = 1
) -> PlannedCoat:
    return PlannedCoat(
        number=number, piece=piece, coat=coat, start=START, end=START + timedelta(hours=1),
        spot="trolley", joint=Joint.BARE, mix=mix, person="ilka",
    )  # fmt: skip


def plan_of(*coats: PlannedCoat) -> Plan:
    return Plan(made=START, start=START, coats=coats)


def flood(film_mm: float = 2.0, colours: tuple[Colour, ...] = THREE) -> Coat:
    return Coat(
        key="flood", kind=CoatKind.FLOOD, product="mix", film_mm=film_mm, colours=colours,
        faces=frozenset({TOP, EDGE}),
    )  # fmt: skip


def mix_product(a: float = 100, b: float = 44, limit: float = 600) -> Product:
    return replace(
        sample_studio(DAY).product("tarn"),
        key="mix",
        ratio=MixRatio(a=a, b=b),
        mix_limit_g=limit,
    )


def weighed(
    product: Product | None = None, coat: Coat | None = None, settings: Settings = RULES
) -> tuple[MixPortion, ...]:
    studio = studio_with(product or mix_product(), coat or flood(), settings)
    return weigh(studio, plan_of(planned()), [1])


def test_six_coasters_in_three_colours_take_144_4_g_as_a_and_b() -> None:
    # Worked example A of the trade: 144.4 g with three cups; 100:44 by weight.
    (mix,) = weighed()
    assert mix.total_grams == pytest.approx(144.4, abs=0.2)
    assert mix.a_grams == pytest.approx(mix.total_grams / 1.44, abs=0.06)
    assert mix.b_grams == pytest.approx(mix.total_grams * 0.44 / 1.44, abs=0.06)


def test_the_cups_of_a_mix_add_up_to_the_mix_and_carry_their_colourant() -> None:
    (mix,) = weighed()
    assert [cup.colour for cup in mix.cups] == ["white", "blue", "gold"]
    assert sum(cup.mix_grams for cup in mix.cups) == pytest.approx(mix.total_grams)
    # 3 % of the white half, 2 % of the blue, 5 % of the gold (common practice).
    for cup, pct in zip(mix.cups, (3, 2, 5), strict=True):
        assert cup.colourant_grams == pytest.approx(cup.mix_grams * pct / 100, abs=0.051)
        assert cup.reads_grams == pytest.approx(cup.mix_grams + cup.colourant_grams)


def test_a_coat_above_the_mix_limit_is_weighed_in_equal_mixes() -> None:
    mixes = weighed(product=mix_product(limit=60))
    assert [(mix.part, mix.parts) for mix in mixes] == [(1, 3), (2, 3), (3, 3)]
    assert sum(mix.spread_grams for mix in mixes) == pytest.approx(132.4, abs=0.1)


def test_no_more_is_mixed_in_one_cup_than_the_product_allows() -> None:
    # A tray of 30 x 40 cm, rim 10 mm, 2 mm deep: 264 g and 4.6 g on its walls, a cup loses 4 g:
    # 276.6 g, in two mixes of 140 g because of the cup limit (worked example B of the trade).
    coat = replace(flood(2.0, ()), faces=frozenset({TOP}))
    rules = replace(RULES, rim_drip_loss_pct=0)
    plain = studio_with(replace(mix_product(), cup_limit_g=140.0), coat, rules)
    tray = replace(
        plain.pieces[0], shape=Rectangle(length_mm=400, width_mm=300),
        rim_mm=10.0, count=1, key="set", name="Tray",
    )  # fmt: skip
    mixes = weigh(replace(plain, pieces=(tray,)), plan_of(planned()), [1])
    assert [(mix.part, mix.parts) for mix in mixes] == [(1, 2), (2, 2)]
    assert sum(mix.total_grams for mix in mixes) == pytest.approx(276.6, abs=0.4)
    assert max(mix.total_grams for mix in mixes) <= 140.0


def test_every_portion_has_its_colours_and_the_cups_are_counted_through() -> None:
    mixes = weighed(product=replace(mix_product(), cup_limit_g=60.0))
    assert max(mix.total_grams for mix in mixes) <= 60.0 + 0.1
    assert [cup.number for mix in mixes for cup in mix.cups] == list(range(1, 10))
    for mix in mixes:
        assert [cup.colour for cup in mix.cups] == ["white", "blue", "gold"]


def test_a_portion_is_out_of_its_cup_by_its_own_mass() -> None:
    # A smaller mass heats itself less: its cup lives longer.
    (whole,) = weighed(product=replace(mix_product(), cup_limit_g=600.0))
    portions = weighed(product=replace(mix_product(), cup_limit_g=60.0))
    assert whole.out_of_cup_minutes is not None
    for portion in portions:
        assert portion.out_of_cup_minutes is not None
        assert portion.out_of_cup_minutes > whole.out_of_cup_minutes


def test_a_mix_too_small_for_the_scale_is_made_larger_and_says_so() -> None:
    # The smaller part needs 50 steps of the scale for 2 % (common practice).
    coarse = replace(RULES, scale_step_g=1.0)
    (mix,) = weighed(coat=flood(0.3, ()), settings=coarse)
    assert mix.b_grams is not None
    assert mix.b_grams >= 50.0
    assert any("cannot be weighed exactly enough" in note for note in mix.notes)


def test_a_cup_takes_no_more_than_it_may_hold_though_the_scale_is_too_coarse_for_it() -> None:
    # 50 steps of B ask for 163.6 g of a mix of 100:44; its cup may hold 150 g.
    coarse = replace(RULES, scale_step_g=1.0)
    small = replace(mix_product(), cup_limit_g=150.0)
    (mix,) = weighed(product=small, coat=flood(0.3, ()), settings=coarse)
    assert (mix.a_grams, mix.b_grams, mix.total_grams) == (104.0, 46.0, 150.0)
    (note,) = [note for note in mix.notes if "in one cup" in note]
    assert note.startswith("More than 150.0 g must not be in one cup, and less than 163.6 g")


@given(
    step=st.sampled_from([0.01, 0.1, 0.5, 1.0]),
    limit=st.floats(60.0, 600.0),
    film_mm=st.floats(0.2, 3.0),
)
def test_no_rounding_takes_a_cup_over_what_it_may_hold(
    step: float, limit: float, film_mm: float
) -> None:
    product = replace(mix_product(), cup_limit_g=limit)
    rules = replace(RULES, scale_step_g=step)
    for portion in weighed(product=product, coat=flood(film_mm), settings=rules):
        assert portion.total_grams <= limit + step / 2 + 1e-6


def test_a_one_part_product_has_no_parts() -> None:
    paint = replace(mix_product(), kind=ProductKind.PRIMER, ratio=None)
    (mix,) = weighed(product=paint, coat=flood(0.2, ()))
    assert mix.a_grams is None
    assert mix.b_grams is None
    assert mix.total_grams > 0.0


def test_leaf_is_laid_and_not_weighed() -> None:
    studio = sample_studio(DAY)
    (mix,) = weigh(studio, plan_of(planned(piece="copper-fern", coat="leaf")), [1])
    assert mix.total_grams == 0.0
    assert mix.cups == ()
    assert mix.notes == ("Leaf is laid, not weighed.",)


def test_asking_for_one_coat_gives_the_whole_mix_it_is_poured_from() -> None:
    studio = sample_studio(DAY)
    two = plan_of(
        planned(1, "tide-tray", "flood", mix=4), planned(2, "dusk-tray", "flood", mix=4)
    )
    portions = weigh(studio, two, [2])
    assert {tuple(coat.number for coat in one.coats) for one in portions} == {(1, 2)}
    assert weigh(studio, two, [1, 2]) == portions


def test_too_much_colourant_is_noted() -> None:
    much = (Colour(name="red", colourant="paste", colourant_pct=9),)
    (mix,) = weighed(coat=flood(colours=much))
    assert any("over the usual ceiling of 6 %" in note for note in mix.notes)


def test_colourants_that_are_much_only_together_are_noted() -> None:
    much = (Colour(name="grey", colourant="ground slate", colourant_pct=7),)
    (mix,) = weighed(coat=flood(colours=much))
    assert any("7.0 % of the mix" in note for note in mix.notes)


def test_the_cup_is_empty_by_two_thirds_of_its_life() -> None:
    # Tarn: 45 min for 100 g at 20 °C; the early edge is shorter, and so is a warmer room.
    studio = sample_studio(DAY)
    (mix,) = weigh(studio, plan_of(planned(piece="key-hooks", coat="top")), [1])
    assert mix.out_of_cup_minutes is not None
    assert 20.0 < mix.out_of_cup_minutes < 45.0


def test_a_product_without_cup_life_gives_no_time() -> None:
    bare = replace(mix_product(), sheet=())
    assert weighed(product=bare)[0].out_of_cup_minutes is None


def test_a_number_that_is_not_in_the_plan_is_refused_with_those_that_are() -> None:
    with pytest.raises(UnknownName, match="no coat 7 in the kept plan; it has 1 to 1"):
        weigh(studio_with(mix_product(), flood(), RULES), plan_of(planned()), [7])


@given(
    a=st.floats(50, 200),
    b=st.floats(20, 200),
    film=st.floats(0.1, 3.0),
    step=st.sampled_from([0.01, 0.1, 0.5, 1.0]),
    limit=st.floats(30, 400),
)
def test_rounding_to_the_scale_never_spoils_the_ratio_unsaid(
    a: float, b: float, film: float, step: float, limit: float
) -> None:
    settings = replace(RULES, scale_step_g=step)
    product = replace(mix_product(a, b), cup_limit_g=limit)
    for mix in weighed(product=product, coat=flood(film), settings=settings):
        assert mix.a_grams is not None
        assert mix.b_grams is not None
        error = mix.b_grams / (mix.a_grams * b / a) - 1.0
        said = any("use a finer one" in note for note in mix.notes)
        assert said or abs(error) <= settings.ratio_tolerance_pct / 100.0
        assert mix.total_grams == pytest.approx(mix.a_grams + mix.b_grams)
        assert sum(cup.mix_grams for cup in mix.cups) == pytest.approx(mix.total_grams)
        assert mix.total_grams >= mix.spread_grams - step
        assert len({cup.number for cup in mix.cups}) == len(THREE)


def test_what_is_in_one_bottle_is_not_portioned_for_its_heat() -> None:
    coat = Coat(key="flood", kind=CoatKind.PRIME, product="p", film_mm=2.0)
    one = Product(
        key="p",
        name="P",
        kind=ProductKind.PRIMER,
        sheet=(),
        cup_limit_g=50.0,
        mix_limit_g=500.0,
    )
    two = replace(one, kind=ProductKind.TWO_PART, ratio=MixRatio(a=2, b=1))
    plan = plan_of(planned())
    assert len(weigh(studio_with(one, coat, RULES), plan, [1])) == 1
    assert len(weigh(studio_with(two, coat, RULES), plan, [1])) > 1


def test_a_mix_whose_ratio_nobody_has_said_is_not_to_be_mixed_yet() -> None:
    coat = Coat(key="flood", kind=CoatKind.FLOOD, product="p", film_mm=2.0)
    ratio = MixRatio(a=1, b=1, by=RatioBy.ASSUMED)
    new = Product(key="p", name="New", kind=ProductKind.TWO_PART, sheet=(), ratio=ratio)
    said = replace(new, ratio=replace(ratio, by=RatioBy.WEIGHT))
    plan = plan_of(planned())
    (first, *_), (other, *_) = (
        weigh(studio_with(one, coat, RULES), plan, [1]) for one in (new, said)
    )
    assert first.notes[0].startswith("Do not mix yet: the ratio of New is only assumed")
    assert not any("assumed" in note for note in other.notes)
    assert first.a_grams == other.a_grams == first.b_grams
