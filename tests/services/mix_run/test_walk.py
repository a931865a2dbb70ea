"""A mix at the scale, tap by tap: what is next follows from what the display has read."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.amounts import ratio_by_weight
from studio_planner.craft.products import ProductKind
from studio_planner.craft.settings import Settings
from studio_planner.services.mix_run.stand import Do
from studio_planner.services.mix_run.taps import TapKind
from studio_planner.services.mix_run.walk import least_reading, stand_of
from studio_planner.services.mixing.scale_steps import ScaleWork
from tests.services.mix_run.runs import begun, left_over, obeyed, reads, taps
from tests.services.mixing.bench_mixes import FLOOD, THREE, bench, coasters, flood_coat

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.services.mix_run.stand import Stand

CLEAR = coasters("set", 6, flood_coat())


def after_a(studio: Studio, grams: float) -> Stand:
    return stand_of(studio, reads(begun(), grams))


def test_three_colours_are_weighed_stirred_and_poured_in_this_order() -> None:
    studio, seen = bench(), list[Do]()
    obeyed(studio, begun(), Do.WRITE, lambda stand: seen.append(stand.step.do))
    assert seen == [
        Do.WEIGH, Do.MEET, Do.WEIGH, Do.STIR, *[Do.WEIGH] * 6, *[Do.POUR] * 3, Do.WRITE,
    ]  # fmt: skip


def test_the_steps_are_counted() -> None:
    studio = bench()
    stand = stand_of(studio, begun())
    assert (stand.step_number, stand.step_count) == (1, 13)
    stand = stand_of(studio, obeyed(studio, begun(), Do.STIR))
    assert (stand.step_number, stand.step_count) == (4, 13)


def test_the_b_follows_the_a_that_is_really_in_the_cup() -> None:
    stand = after_a(bench(CLEAR), 108.0)
    assert stand.step.do is Do.MEET
    assert stand.step.scale is not None
    assert (stand.step.scale.add_grams, stand.step.scale.reads_grams) == (47.5, 155.5)
    assert least_reading(stand) == 108.0


def test_nothing_goes_on_by_itself_before_a_meets_b_and_then_the_clock_counts() -> None:
    studio = bench(CLEAR)
    running = reads(reads(begun(), 108.0), 155.5)
    assert stand_of(studio, running).step.do is Do.MEET
    met = taps(running, TapKind.MET)
    assert stand_of(studio, met).now.since == met.taps[-1].at


def test_too_much_a_for_one_cup_stops_before_b_and_is_weighed_anew() -> None:
    studio = bench(CLEAR, product=replace(FLOOD, cup_limit_g=150.0))
    stand = after_a(studio, 120.0)
    assert stand.step.scale is not None
    assert (stand.step.do, stand.step.scale.work) == (Do.WEIGH, ScaleWork.PART_A)
    assert stand.now.real is not None
    assert "Stop: 172.8 g" in stand.now.real.sentences[0]
    better = reads(reads(begun(), 120.0), 100.0)
    assert stand_of(studio, better).step.do is Do.MEET


def wrong_b(studio: Studio, b_grams: float) -> Stand:
    running = taps(reads(begun(), 100.0), TapKind.MET)
    return stand_of(studio, reads(running, 100.0 + b_grams))


def test_too_much_b_asks_for_a_and_cannot_be_left_from_five_per_cent_on() -> None:
    stand = wrong_b(bench(CLEAR), 48.4)
    assert stand.step.do is Do.MORE
    assert stand.step.scale is not None
    assert stand.step.scale.work is ScaleWork.PART_A
    assert (stand.step.scale.add_grams, stand.step.scale.reads_grams) == (10.0, 158.4)
    assert not stand.now.can_leave


def test_a_ratio_that_is_off_by_three_per_cent_may_be_left_and_is_noted() -> None:
    studio = bench(CLEAR)
    stand = wrong_b(studio, 45.3)
    assert (stand.step.do, stand.now.can_leave) == (Do.MORE, True)
    running = reads(taps(reads(begun(), 100.0), TapKind.MET), 145.3)
    assert stand_of(studio, taps(running, TapKind.LEAVE)).step.do is Do.STIR


def test_a_ratio_that_is_to_be_stopped_stays_where_it_is() -> None:
    studio = bench(CLEAR)
    running = reads(taps(reads(begun(), 100.0), TapKind.MET), 148.4)
    assert stand_of(studio, taps(running, TapKind.LEAVE)).step.do is Do.MORE
    assert stand_of(studio, reads(running, 158.4)).step.do is Do.STIR


def test_what_became_too_much_for_one_cup_is_divided_before_it_is_stirred() -> None:
    studio = bench(CLEAR, product=replace(FLOOD, cup_limit_g=150.0))
    running = reads(taps(reads(begun(), 104.0), TapKind.MET), 152.0)
    assert stand_of(studio, running).step.do is Do.MORE
    running = reads(running, 155.0)
    running = obeyed(studio, running, Do.DIVIDE)
    assert stand_of(studio, taps(running, TapKind.DONE)).step.do is Do.STIR


def test_the_last_cup_takes_what_the_others_left() -> None:
    studio = bench()
    running = taps(obeyed(studio, begun(), Do.STIR), TapKind.DONE)
    white = stand_of(studio, running)
    assert white.step.scale is not None
    running = reads(running, white.step.scale.add_grams + 5.0)
    poured: list[float] = []

    def note(stand: Stand) -> None:
        scale = stand.step.scale
        if scale is not None and scale.work is ScaleWork.MIX:
            poured.append(scale.add_grams)

    obeyed(studio, running, Do.POUR, note)
    total = white.now.portion.total_grams
    assert white.step.scale.add_grams + 5.0 + sum(poured) == pytest.approx(total)


def test_colour_goes_by_the_mix_that_is_really_in_its_cup() -> None:
    studio = bench()
    running = reads(taps(obeyed(studio, begun(), Do.STIR), TapKind.DONE), 100.0)
    scale = stand_of(studio, running).step.scale
    assert scale is not None
    assert (scale.add_grams, scale.reads_grams) == (3.0, 103.0)  # white: 3 % paste


def test_paint_is_weighed_whole_and_poured_without_stirring() -> None:
    paint = replace(FLOOD, kind=ProductKind.PRIMER, ratio=None)
    studio, seen = bench(CLEAR, product=paint), list[Do]()
    obeyed(studio, begun(), Do.WRITE, lambda stand: seen.append(stand.step.do))
    assert seen == [Do.WEIGH, Do.POUR, Do.WRITE]


def test_portions_come_one_after_the_other() -> None:
    studio = bench(product=replace(FLOOD, cup_limit_g=90.0))
    parts: list[int] = []
    running = obeyed(studio, begun(), Do.WRITE, lambda stand: parts.append(stand.part))
    assert parts == sorted(parts)
    assert parts[-1] == stand_of(studio, running).parts > 1


def test_what_is_left_in_a_cup_is_noted_with_its_colour() -> None:
    studio = bench()
    running = obeyed(studio, begun(), Do.POUR)
    ((_, left),) = stand_of(studio, left_over(running, 40.0)).lefts
    assert (left.colour, left.grams) == ("white", 40.0)
    assert stand_of(studio, left_over(running, 40.0)).step.do is Do.POUR


def test_a_tap_that_does_not_fit_is_passed_over() -> None:
    studio = bench()
    odd = taps(taps(begun(), TapKind.DONE), TapKind.LEAVE)
    assert stand_of(studio, odd).step == stand_of(studio, begun()).step
    assert stand_of(studio, reads(begun(), 0.0)).step == stand_of(studio, begun()).step


@given(
    count=st.integers(1, 6),
    step=st.sampled_from([0.01, 0.1, 0.5, 1.0]),
    limit=st.floats(150.0, 600.0),
    slips=st.lists(st.integers(-6, 6), min_size=30, max_size=30),
)
def test_what_the_steps_show_adds_up_to_the_mix_whatever_the_hand_does(
    count: int, step: float, limit: float, slips: list[int]
) -> None:
    """Each reading is what was there and what was added; the ratio holds when it is stirred."""
    studio = bench(
        coasters("set", count, flood_coat(THREE)),
        product=replace(FLOOD, cup_limit_g=limit),
        settings=Settings(scale_step_g=step, reserve_pct=0),
    )
    running, slipped = begun(), iter(slips)
    while (stand := stand_of(studio, running)).step.do is not Do.WRITE:
        assert len(running.taps) < 300
        scale = stand.step.scale
        if scale is not None and stand.step.weighs:
            before = scale.reads_grams - scale.add_grams
            assert before == pytest.approx(0.0 if scale.tare else on_display(stand), abs=1e-6)
            wanted = scale.reads_grams + next(slipped, 0) * step
            running = reads(running, max(wanted, before + step))
        else:
            met = stand.step.do is Do.MEET
            running = taps(running, TapKind.MET if met else TapKind.DONE)
    for portion in stand.portions:
        assert portion.a_grams is not None
        assert portion.b_grams is not None
        total = portion.portion.total_grams
        assert total == pytest.approx(portion.a_grams + portion.b_grams, abs=step / 2 + 1e-6)
        assert sum(c.mix_grams for c in portion.portion.cups) == pytest.approx(total)
        wanted = ratio_by_weight(portion.portion.product).b_for(portion.a_grams)
        off = max(0.02 * wanted, step)
        assert portion.b_grams == pytest.approx(wanted, abs=off + 1e-6)


def on_display(stand: Stand) -> float:
    """What is in the cup that stands on the scale."""
    scale, now = stand.step.scale, stand.now
    assert scale is not None
    if scale.cup:
        return now.mixes.get(scale.cup, 0.0)
    return now.on_scale
