"""Heat of cups and deep pours, and what is said of a mix."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from studio_planner.craft.pieces import EDGE, TOP, UNDERSIDE, CoatKind, Colour
from studio_planner.craft.products import ProductKind
from studio_planner.craft.settings import TemperatureUnit, Units
from studio_planner.science.exotherm import Exotherm, HeatVerdict
from studio_planner.science.pour_depth import DepthReason
from studio_planner.services.caution import DEFERRAL
from studio_planner.services.mixing.heat import cure_rate, depth_of, heat_in_cup
from studio_planner.services.mixing.mix_sheet import mix_sheet, mixes_to_pour
from studio_planner.services.mixing.mix_words import heat_words, mix_warnings
from studio_planner.services.mixing.splitting import split_of
from tests.services.mixing.bench_mixes import (
    FLOOD,
    START,
    THREE,
    bench,
    coasters,
    flood_coat,
    plan_of,
    portions,
    poured,
)

DEEP = coasters("deep", 1, flood_coat(film_mm=3.0))


def said(piece_coat: tuple[Colour, ...] = (), count: int = 4, **entries: object) -> str:
    studio = bench(coasters("set", count, flood_coat(piece_coat)), **entries)  # type: ignore[arg-type]
    split = split_of(studio, (poured(1),))
    heat = heat_in_cup(studio, split.times[0].portion)
    return " ".join(mix_warnings(studio, split, heat))


def test_a_cup_that_is_left_gets_too_hot() -> None:
    studio = bench(coasters("set", 6, flood_coat()))
    heat = heat_in_cup(studio, portions(studio)[0])
    assert heat is not None
    assert heat.verdict is HeatVerdict.TOO_HOT


def test_of_several_cups_the_fullest_is_looked_at() -> None:
    whole = bench(coasters("set", 6, flood_coat()))
    split = bench(coasters("set", 6, flood_coat(THREE)))
    one, three = (heat_in_cup(studio, portions(studio)[0]) for studio in (whole, split))
    assert one is not None
    assert three is not None
    assert three.peak_celsius < one.peak_celsius


def test_what_has_no_cup_life_or_is_not_mixed_or_weighs_nothing_has_no_heat() -> None:
    studio = bench(coasters("set", 6, flood_coat()))
    (portion,) = portions(studio)
    assert heat_in_cup(studio, replace(portion, cups=())) is None
    assert cure_rate(replace(FLOOD, sheet=()), 20.0, 100.0) is None
    assert cure_rate(replace(FLOOD, kind=ProductKind.PRIMER, ratio=None), 20.0, 100.0) is None


def test_the_nearest_figure_of_the_sheet_is_reckoned_from() -> None:
    hundred, three = (cure_rate(FLOOD, 20.0, grams) for grams in (90.0, 350.0))
    assert hundred != three
    bare = replace(FLOOD, sheet=(replace(FLOOD.sheet[0], mass_g=None),))
    assert cure_rate(bare, 20.0, 90.0) == hundred


def test_without_a_rim_the_studios_own_limit_holds() -> None:
    slow = replace(FLOOD, sheet=(replace(FLOOD.sheet[0], from_hours=8.0),))
    depth = depth_of(bench(DEEP, product=slow), DEEP, DEEP.stack[0], 20.0)
    assert (depth.limit.film_mm, depth.limit.reason) == (3.2, DepthReason.EDGE)
    assert not depth.too_deep


def test_inside_a_rim_heat_limits_a_quick_mix_and_the_sheet_has_the_last_word() -> None:
    rimmed = replace(DEEP, rim_mm=10.0, stack=(flood_coat(film_mm=8.0),))
    depth = depth_of(bench(rimmed), rimmed, rimmed.stack[0], 20.0)
    assert depth.limit.reason is DepthReason.HEAT
    assert depth.too_deep
    sheet = replace(FLOOD, depth_limit_mm=9.0)
    told = depth_of(bench(rimmed, product=sheet), rimmed, rimmed.stack[0], 20.0)
    assert (told.limit.film_mm, told.limit.reason) == (9.0, DepthReason.SHEET)


def test_a_rim_holds_nothing_on_the_underside() -> None:
    rimmed = replace(DEEP, rim_mm=10.0)
    under = replace(rimmed.stack[0], faces=frozenset({UNDERSIDE}), area_cm2=50.0)
    depth = depth_of(bench(DEEP), rimmed, under, 20.0)
    assert depth.limit.film_mm == 3.2


def test_a_cup_life_of_seconds_says_nothing_of_a_film() -> None:
    flash = replace(FLOOD, sheet=(replace(FLOOD.sheet[0], from_hours=1e-3),))
    depth = depth_of(bench(DEEP, product=flash), DEEP, DEEP.stack[0], 20.0)
    assert depth.limit.reason is DepthReason.EDGE


def test_without_a_cup_life_no_heat_limits_a_film() -> None:
    rimmed = replace(DEEP, rim_mm=10.0)
    silent = bench(rimmed, product=replace(FLOOD, sheet=()))
    depth = depth_of(silent, rimmed, rimmed.stack[0], 20.0)
    assert (depth.limit.film_mm, depth.limit.reason) == (10.0, DepthReason.RIM)


def test_a_small_clear_mix_needs_no_warning() -> None:
    assert said() == ""


def test_a_mix_that_is_too_slow_is_to_be_weighed_in_two() -> None:
    assert "weigh it in 2 mixes, one after the other" in said(count=12)


def test_a_mix_that_no_number_of_mixes_helps_says_what_does() -> None:
    sheet = (replace(FLOOD.sheet[0], from_hours=0.1),)
    assert "take fewer pieces, fewer colours" in said(product=replace(FLOOD, sheet=sheet))


def test_a_sheet_without_cup_life_is_told_of() -> None:
    assert "has no cup life" in said(product=replace(FLOOD, sheet=FLOOD.sheet[2:]))


def test_a_cup_that_gets_warm_while_it_is_poured_is_told_of() -> None:
    sentence = said(count=12)
    assert "Left in its cup it passes 60 °C" in sentence
    assert "enough to smoke" in sentence


def test_degrees_are_said_in_the_studios_unit() -> None:
    studio = replace(bench(), units=Units(temperature=TemperatureUnit.FAHRENHEIT))
    warm = Exotherm(
        peak_celsius=70.0, peak_minutes=30.0, warm_minutes=20.0, verdict=HeatVerdict.WARM
    )
    assert heat_words(studio, warm) == (
        "Left in its cup it passes 140 °F after about 20 minutes: spread it before."
    )
    cool = replace(warm, warm_minutes=None, verdict=HeatVerdict.COOL)
    assert heat_words(studio, cool) == ""


def test_a_heavy_colour_that_sinks_is_told_of_with_the_minute_from_which_it_stays() -> None:
    gold = (Colour(name="gold", colourant="metal powder", colourant_pct=4),)
    thick = replace(FLOOD, viscosity_mpas=300.0)
    assert "gold poured at minute" in said(gold, product=thick)
    assert "its cup has to be empty before" in said(gold, product=thick)
    no_life = replace(thick, sheet=FLOOD.sheet[2:])
    studio = bench(coasters("set", 4, flood_coat(gold)), product=no_life)
    short = poured(1, end=START + timedelta(minutes=20))
    words = " ".join(mix_warnings(studio, split_of(studio, (short,)), None))
    assert "it would stay from minute" in words
    assert "has to be empty before" not in words


def test_flakes_are_to_lie_flat_and_may_sink() -> None:
    flakes = (Colour(name="sparks", colourant="glitter", colourant_pct=8),)
    coat = replace(flood_coat(flakes), kind=CoatKind.GLITTER, faces=frozenset({TOP, EDGE}))
    studio = bench(coasters("set", 4, coat))
    split = split_of(studio, (poured(1),))
    assert not [s for s in mix_warnings(studio, split, None) if "sinks" in s]


def test_the_sheet_of_a_mix_has_everything_and_ends_with_the_caution() -> None:
    studio = bench()
    sheet = mix_sheet(studio, plan_of(poured(1)), 1)
    assert sheet.product == FLOOD
    assert sheet.total_grams == pytest.approx(sum(p.total_grams for p in sheet.portions))
    assert len(sheet.times) == len(sheet.portions) == sheet.split.parts
    assert (sheet.start, sheet.coats) == (START, (poured(1),))
    assert sheet.caution == DEFERRAL


def test_there_is_no_sheet_of_a_mix_that_is_not_planned() -> None:
    with pytest.raises(KeyError):
        mix_sheet(bench(), plan_of(poured(1)), 9)


def test_mixes_still_to_be_poured_come_in_order_of_time() -> None:
    studio = bench(coasters("a"), coasters("b"), coasters("c"))
    later = START + timedelta(hours=5)
    plan = plan_of(
        poured(1, "a", mix=4, start=later, end=later + timedelta(hours=1)),
        poured(2, "b", mix=7),
        poured(3, "c", mix=2, poured=True),
    )
    assert mixes_to_pour(studio, plan) == (7, 4)
