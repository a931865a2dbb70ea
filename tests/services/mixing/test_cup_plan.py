"""Mixes minute by minute: cups in order, in time, split, shared."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.pieces import Colour
from studio_planner.craft.products import ProductKind
from studio_planner.craft.settings import Settings
from studio_planner.science.cups import SHARE_TO_USE
from studio_planner.services.mixing.cup_plan import (
    COLOUR_MINUTES,
    POUR_MINUTES,
    STIR_MINUTES,
    portion_time,
)
from studio_planner.services.mixing.splitting import saved_by_sharing, split_of
from studio_planner.services.weighing import amounts_of, smallest_mix_grams
from tests.services.mixing.bench_mixes import (
    FLOOD,
    THREE,
    bench,
    coasters,
    flood_coat,
    portions,
    poured,
)


def test_stirring_splitting_and_pouring_are_counted() -> None:
    """By hand: 6 min, three colours of 1.5 min each, six coasters of 2.5 min."""
    (portion,) = portions(bench(coasters("set", 6, flood_coat(_light()))))
    time = portion_time(bench(coasters("set", 6, flood_coat(_light()))), portion)
    assert time.stirred_minute == STIR_MINUTES
    assert time.split_minute == STIR_MINUTES + 3 * COLOUR_MINUTES
    assert time.poured_minute == pytest.approx(time.split_minute + 6 * POUR_MINUTES)


def test_a_clear_mix_is_poured_from_the_cup_that_it_was_stirred_in() -> None:
    studio = bench(coasters("set", 6, flood_coat()))
    (portion,) = portions(studio)
    time = portion_time(studio, portion)
    assert time.split_minute == STIR_MINUTES
    assert time.cups[0].out_by_minute == pytest.approx(portion.out_of_cup_minutes)


def test_one_colour_is_stirred_in_but_not_split() -> None:
    studio = bench(coasters("set", 1, flood_coat((Colour(name="w", colourant="paste",
                                                         colourant_pct=2),))))  # fmt: skip
    time = portion_time(studio, portions(studio)[0])
    assert time.split_minute == STIR_MINUTES + COLOUR_MINUTES


def test_what_is_used_of_the_cups_life_adds_up_over_the_split() -> None:
    """By hand: the whole portion until the split, then each colour's smaller cup."""
    studio = bench()
    (portion,) = portions(studio)
    time = portion_time(studio, portion)
    life = FLOOD.cup_life()
    assert life is not None
    early = {  # the early edge of a published temperature is 10 % shorter
        grams: 60.0 * life.hours(20.0, grams) / 1.1
        for grams in (portion.total_grams, time.cups[0].cup.mix_grams)
    }
    used = time.split_minute / early[portion.total_grams]
    first = time.cups[0]
    assert first.out_by_minute == pytest.approx(
        time.split_minute + (SHARE_TO_USE - used) * early[first.cup.mix_grams], rel=1e-3
    )


def test_heavy_pigments_wait_until_they_stay_or_their_cup_has_to_be_empty() -> None:
    studio = bench()
    time = portion_time(studio, portions(studio)[0])
    white, pearl, gold = time.cups
    assert white.pour_minute == time.split_minute
    assert pearl.pour_minute >= white.empty_minute
    assert gold.pour_minute >= pearl.empty_minute
    assert gold.out_by_minute is not None
    assert gold.empty_minute <= gold.out_by_minute + 1e-9
    assert gold.sinks_mm is not None
    assert white.sinks_mm is not None
    assert gold.sinks_mm > white.sinks_mm


def test_the_makers_own_minute_is_waited_for() -> None:
    late = tuple(replace(colour, pour_at_minute=20.0) for colour in _light())
    studio = bench(coasters("set", 1, flood_coat(late)))
    assert portion_time(studio, portions(studio)[0]).cups[0].pour_minute == 20.0


def test_without_a_working_time_nobody_knows_what_sinks() -> None:
    bare = replace(FLOOD, sheet=FLOOD.sheet[:2])
    studio = bench(product=bare)
    time = portion_time(studio, portions(studio)[0])
    assert {cup.sinks_mm for cup in time.cups} == {None}
    assert {cup.stays_from_minute for cup in time.cups} == {None}


def test_a_film_that_does_not_set_in_days_has_no_answer() -> None:
    slow = replace(FLOOD, sheet=(*FLOOD.sheet[:2], replace(FLOOD.sheet[2], from_hours=400.0)))
    studio = bench(product=slow)
    assert portion_time(studio, portions(studio)[0]).cups[0].sinks_mm is None


def test_without_a_cup_life_nobody_knows_whether_it_is_in_time() -> None:
    studio = bench(product=replace(FLOOD, sheet=FLOOD.sheet[2:]))
    time = portion_time(studio, portions(studio)[0])
    assert time.in_time is None
    assert time.late_minutes == 0.0
    assert {cup.in_time for cup in time.cups} == {None}


def test_a_one_part_product_has_no_cup_life() -> None:
    paint = replace(FLOOD, kind=ProductKind.PRIMER, ratio=None)
    studio = bench(product=paint)
    assert portion_time(studio, portions(studio)[0]).in_time is None


def test_a_mix_that_takes_no_grams_takes_no_cups() -> None:
    studio = bench(coasters("set", 6, flood_coat()))
    (portion,) = portions(studio)
    nothing = replace(portion, cups=(), total_grams=0.0)
    time = portion_time(studio, nothing)
    assert time.cups == ()
    assert time.poured_minute == time.split_minute


def _light() -> tuple[Colour, ...]:
    return tuple(replace(colour, colourant="paste") for colour in THREE)


@given(
    count=st.integers(1, 30),
    film=st.floats(0.3, 3.0),
    hours=st.floats(0.1, 2.0),
    shares=st.integers(1, 4).map(lambda cups: [25.0] * cups)
    | st.lists(st.floats(5.0, 60.0), min_size=1, max_size=4),
    kinds=st.lists(st.sampled_from(["paste", "mica", "metal powder"]), min_size=4, max_size=4),
)
def test_waiting_for_heavy_colours_never_makes_a_mix_late(
    count: int, film: float, hours: float, shares: list[float], kinds: list[str]
) -> None:
    whole = sum(shares)
    colours = tuple(
        Colour(
            name=f"c{n}",
            share_pct=min(100.0 * s / whole, 100.0),
            colourant=kind,
            colourant_pct=3.0,
        )
        for n, (s, kind) in enumerate(zip(shares, kinds, strict=False))
    )
    light = tuple(replace(colour, colourant="paste") for colour in colours)
    quick = replace(FLOOD, sheet=(replace(FLOOD.sheet[0], from_hours=hours), *FLOOD.sheet[2:]))
    times = []
    for chosen in (colours, light):
        # The shares are those of the colours in the order they are poured.
        studio = bench(coasters("set", count, flood_coat(chosen, film_mm=film)), product=quick)
        times.append([portion_time(studio, portion) for portion in portions(studio)])
    heavy, plain = times
    for one in heavy:
        assert sum(c.cup.mix_grams for c in one.cups) == pytest.approx(one.portion.total_grams)
        begun = [cup.pour_minute for cup in one.cups]
        assert begun == sorted(begun)
        sinks = [cup.stuff.sinks for cup in one.cups]
        assert sinks == sorted(sinks)
    if len(set(shares)) == 1 and plain[0].in_time:
        assert heavy[0].late_minutes <= 1e-6


def test_a_mix_that_is_too_slow_for_its_cup_is_split() -> None:
    studio = bench(coasters("set", 12, flood_coat()))
    split = split_of(studio, (poured(1),))
    assert not split.fits
    assert split.parts == 1
    assert split.needed_parts == 2
    two = portions(studio, poured(1, end=poured(1).end + timedelta(hours=2)), parts=2)
    assert all(portion_time(studio, portion).in_time for portion in two)


def test_a_mix_that_is_quick_enough_stays_one() -> None:
    studio = bench(coasters("set", 4, flood_coat()))
    split = split_of(studio, (poured(1),))
    assert split.fits
    assert split.needed_parts == split.parts == 1


def test_a_cup_life_of_minutes_helps_no_number_of_mixes() -> None:
    sheet = tuple(replace(point, from_hours=0.1) for point in FLOOD.sheet[:1])
    studio = bench(coasters("set", 6, flood_coat()), product=replace(FLOOD, sheet=sheet))
    assert split_of(studio, (poured(1),)).needed_parts is None


def test_two_sets_that_share_a_mix_save_cups_and_a_set_up() -> None:
    """By hand: three cups of 4 g fewer, one set-up of 20 minutes less."""
    studio = bench(coasters("one"), coasters("two"))
    saving = saved_by_sharing(studio, (poured(1, "one"), poured(2, "two")))
    assert saving.mixes == 1
    assert saving.minutes == 20.0
    assert saving.grams == pytest.approx(12.0, abs=0.3)


def test_a_mix_by_itself_saves_nothing() -> None:
    saving = saved_by_sharing(bench(), (poured(1),))
    assert (saving.mixes, saving.grams, saving.minutes) == (0, 0.0, 0.0)


def test_small_coats_save_what_the_scale_asks_for_as_well() -> None:
    """Common practice: the smaller part needs 50 steps of the scale; 1 g: 164 g at 100:44."""
    studio = bench(
        coasters("one", 1, flood_coat(film_mm=0.5)),
        coasters("two", 1, flood_coat(film_mm=0.5)),
        settings=Settings(scale_step_g=1.0),
    )
    assert smallest_mix_grams(studio, FLOOD) == pytest.approx(163.6, abs=0.1)
    saving = saved_by_sharing(studio, (poured(1, "one"), poured(2, "two")))
    assert saving.grams == pytest.approx(164.0, abs=1.1)


def test_what_is_not_mixed_can_be_weighed_from_one_step_on() -> None:
    paint = replace(FLOOD, kind=ProductKind.PRIMER, ratio=None)
    assert smallest_mix_grams(bench(), paint) == Settings().scale_step_g


@given(st.integers(1, 12), st.integers(1, 12), st.floats(0.2, 2.5))
def test_together_nothing_takes_more_than_apart(one: int, two: int, film: float) -> None:
    studio = bench(
        coasters("one", one, flood_coat(THREE, film_mm=film)),
        coasters("two", two, flood_coat(THREE, film_mm=film)),
    )
    coats = [(piece, piece.stack[0]) for piece in studio.pieces]
    together = amounts_of(studio, coats)
    apart = [amounts_of(studio, [coat]) for coat in coats]
    step = studio.settings.scale_step_g
    assert together.total_grams <= sum(a.total_grams for a in apart) + 2 * step
    assert sum(together.spread_grams) == pytest.approx(
        sum(sum(amounts.spread_grams) for amounts in apart)
    )
    assert together.a_grams is not None
    assert together.b_grams is not None
    assert together.a_grams + together.b_grams == pytest.approx(together.total_grams)
