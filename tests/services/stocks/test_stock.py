"""What is left, what the plan takes from which bottle, what runs out and when to order."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from typing import TYPE_CHECKING

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.mixes import WeighedColour
from studio_planner.craft.pieces import Colour
from studio_planner.craft.pigments import Pigment
from studio_planner.craft.products import ProductKind
from studio_planner.craft.stock import Lot, LotCount, LotPart, StockRules
from studio_planner.science.film_limits import Colourant
from studio_planner.services.stocks.drawing import drawn
from studio_planner.services.stocks.levels import lot_levels
from studio_planner.services.stocks.matched import one_lot
from studio_planner.services.stocks.stock_view import Stock, stock_of
from studio_planner.services.stocks.stock_words import stuff_said
from studio_planner.services.stocks.using import planned_uses
from studio_planner.services.weighing import weigh
from tests.services.mixing.bench_mixes import (
    FLOOD,
    START,
    bench,
    coasters,
    flood_coat,
    plan_of,
)
from tests.services.stocks.bottles import NOW, TODAY, lot, nightly, sets, stocked, weighed

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.services.stocks.running_out import StockRow

A, B = LotPart.A, LotPart.B


def stock(*lots: object, **entries: object) -> Stock:
    studio = stocked(*lots, **entries)  # type: ignore[arg-type]
    return stock_of(studio, studio.plan, NOW)


def row(view: Stock, part: LotPart = A) -> StockRow:
    return next(one for one in view.rows if one.part is part)


def test_what_the_plan_takes_is_what_will_be_weighed() -> None:
    studio = stocked()
    assert studio.plan is not None
    weighed_ = weigh(studio, studio.plan, [1, 2])
    uses = planned_uses(studio, studio.plan)
    for part, grams in ((A, [m.a_grams for m in weighed_]), (B, [m.b_grams for m in weighed_])):
        assert sum(u.grams for u in uses if u.part is part) == pytest.approx(
            sum(g for g in grams if g is not None)
        )


def test_a_and_b_are_used_in_their_ratio() -> None:
    view = stock()
    assert row(view, B).planned_g == pytest.approx(0.44 * row(view, A).planned_g, abs=0.2)


def test_the_shares_of_a_mix_add_up_to_it() -> None:
    one, two = nightly("one", "two")
    together = replace(two, mix=one.mix, start=one.start, end=one.end)
    studio = stocked()
    assert studio.plan is not None
    plan = replace(studio.plan, coats=(one, together))
    for use in planned_uses(studio, plan):
        assert sum(share.grams for share in use.shares) == pytest.approx(use.grams)
        assert {share.order for share in use.shares} == {"for-one", "for-two"}


def test_a_product_that_is_not_mixed_is_used_whole_and_for_nobody_without_an_order() -> None:
    paint = replace(FLOOD, kind=ProductKind.PRIMER, ratio=None)
    studio = bench(*sets("one"), product=paint)
    plan = stocked().plan
    assert plan is not None
    (use,) = planned_uses(studio, replace(plan, coats=nightly("one")))
    assert use.part is LotPart.WHOLE
    assert use.shares[0].order == ""


def test_without_a_plan_nothing_is_used() -> None:
    assert planned_uses(stocked(), None) == ()


def test_what_was_weighed_is_taken_from_its_lot() -> None:
    studio = weighed(stocked(lot("a1"), lot("a2"), lot("b1", B)), 100.0, 44.0, "a2", "L-b1")
    levels, unplaced = lot_levels(studio)
    assert [level.left_g for level in levels] == [1000.0, 900.0, 956.0]
    assert unplaced == ()
    assert not any(level.guessed_g for level in levels)


def test_what_was_weighed_without_a_lot_counts_as_from_the_bottle_in_use() -> None:
    studio = weighed(stocked(lot("a1"), lot("a2", opened=date(2026, 1, 20))), 100.0)
    levels, _ = lot_levels(studio)
    assert [level.left_g for level in levels] == [1000.0, 900.0]
    assert [level.guessed_g for level in levels] == [0.0, 100.0]
    view = stock_of(studio, studio.plan, NOW)
    assert any(
        "100.0 g of Invented flood, part A were weighed without" in w for w in view.warnings
    )


def test_a_weighing_before_its_bottle_came_still_counts_somewhere() -> None:
    studio = weighed(stocked(lot("a1", received=START.date())), 100.0)
    assert lot_levels(studio)[0][0].left_g == 900.0


def test_an_empty_bottle_is_not_the_one_in_use() -> None:
    emptied = lot("a1", counts=(LotCount(at=START - timedelta(days=3), left_g=0.0),))
    levels, _ = lot_levels(weighed(stocked(emptied, lot("a2")), 100.0))
    assert [level.left_g for level in levels] == [0.0, 900.0]


def test_stock_never_goes_negative_silently() -> None:
    studio = weighed(stocked(lot("a1", grams=80.0)), 100.0, lot_a="a1")
    (level,) = lot_levels(studio)[0]
    assert (level.left_g, level.lacking_g) == (0.0, 20.0)
    warnings = stock_of(studio, studio.plan, NOW).warnings
    assert any("20.0 g more were weighed from lot L-a1" in one for one in warnings)


def test_what_was_weighed_of_no_bottle_is_told_of_once_bottles_are_entered() -> None:
    none = weighed(stocked(), 100.0, 44.0)
    assert not any("were weighed" in one for one in stock_of(none, none.plan, NOW).warnings)
    some = weighed(stocked(lot("a1")), 100.0, 44.0)
    said = stock_of(some, some.plan, NOW).warnings
    assert any(
        "44.0 g of Invented flood, part B were weighed, but no bottle" in w for w in said
    )


def test_nothing_is_said_to_run_out_of_which_no_bottle_was_ever_entered() -> None:
    view = stock()
    assert not row(view).known
    assert any(one.startswith("No bottle of Invented flood, part A") for one in view.warnings)


def test_a_part_runs_out_at_the_pour_that_it_does_not_do_for() -> None:
    view = stock(lot("a1", grams=150.0), lot("b1", B))
    a, b = row(view), row(view, B)
    assert a.runs_out is not None
    assert a.runs_out.number == 2
    assert a.order_by == TODAY + timedelta(days=1 - 7)
    assert a.short_g == pytest.approx(a.planned_g - 150.0)
    assert a.after_g == pytest.approx(0.0)
    assert not a.enough
    assert b.enough
    assert b.order_by is None
    assert any("runs out at pour 2 (Two)" in one for one in view.warnings)
    assert any("goes out today may come too late" in one for one in view.warnings)


def test_a_pour_far_ahead_leaves_time_to_order() -> None:
    studio = stocked(lot("a1", grams=150.0), lot("b1", B))
    view = stock_of(studio, studio.plan, NOW - timedelta(days=30))
    assert not any("too late" in one for one in view.warnings)


def test_what_comes_in_time_serves_the_pours_after_it() -> None:
    coming = lot("a2", received=TODAY + timedelta(days=1))
    view = stock(lot("a1", grams=150.0), coming, lot("b1", B))
    assert row(view).enough
    assert row(view).coming_g == 1000.0
    late = replace(coming, received=TODAY + timedelta(days=2))
    assert not row(stock(lot("a1", grams=150.0), late, lot("b1", B))).enough


def test_the_reserve_is_told_of_before_it_is_touched() -> None:
    studio = stocked(lot("a1", grams=280.0), lot("b1", B))
    kept = replace(studio, stock=StockRules(reserve_g=100.0))
    view = stock_of(kept, kept.plan, NOW)
    under = row(view).under_reserve
    assert under is not None
    assert under.number == 2
    assert row(view).order_by == TODAY + timedelta(days=1 - 7)
    assert any("After pour 2 less than the reserve" in one for one in view.warnings)


def test_two_orders_do_not_count_the_same_bottle() -> None:
    # Each takes 94.8 g of A, so 150 g are enough for either and not for both.
    view = stock(lot("a1", grams=150.0), lot("b1", B))
    a1 = view.lots[0]
    reserved = {one.order: one.grams for one in a1.reserved}
    assert reserved == pytest.approx({"for-one": 94.8, "for-two": 55.2})
    assert a1.free_g == 0.0
    (short,) = view.drawing.shorts
    assert short.grams == pytest.approx(39.6)


def test_a_bottle_that_is_kept_for_an_order_serves_no_other() -> None:
    view = stock(lot("a1", kept_for="for-two"), lot("a2", grams=100.0), lot("b1", B))
    assert {d.share.order for d in view.drawing.draws if d.lot == "a1"} == {"for-two"}
    assert {d.share.order for d in view.drawing.draws if d.lot == "a2"} == {"for-one"}


def test_what_is_open_is_used_before_what_is_not_and_what_ends_first_before_the_rest() -> None:
    fresh, opened = lot("a1"), lot("a2", opened=date(2026, 1, 20))
    assert {d.lot for d in stock(fresh, opened).drawing.draws} == {"a2"}
    soon = lot("a3", best_before=date(2026, 12, 1))
    assert {d.lot for d in stock(fresh, soon).drawing.draws} == {"a3"}


def test_a_mix_comes_from_one_bottle_where_one_has_enough() -> None:
    rest = lot("a1", grams=20.0, opened=date(2026, 1, 20))
    assert {d.lot for d in stock(rest, lot("a2")).drawing.draws} == {"a2"}
    assert {d.lot for d in stock(rest, lot("a2", grams=90.0)).drawing.draws} == {"a1", "a2"}


def test_what_is_past_its_day_is_used_last_and_told_of() -> None:
    old = lot("a1", best_before=date(2026, 1, 15), opened=date(2026, 1, 10))
    view = stock(old, lot("a2", grams=90.0))
    assert [d.lot for d in view.drawing.draws if d.stale] == ["a1", "a1"]
    assert (
        sum("L-a1 of Invented flood, part A is past its day" in w for w in view.warnings) == 1
    )
    assert {d.lot for d in stock(old, lot("a2")).drawing.draws} == {"a2"}


def test_what_ends_before_anything_takes_it_is_told_of() -> None:
    today = NOW.date()
    near = lot("a1", grams=500.0, best_before=today + timedelta(days=3))
    (said,) = (one for one in stock(near).warnings if "is good until" in one)
    free = next(row.free_g for row in stock(near).lots if row.lot.key == "a1")
    assert f"nothing planned takes {free:.1f} g of it" in said
    far = lot("a1", grams=500.0, best_before=today + timedelta(days=60))
    assert not any("is good until" in one for one in stock(far).warnings)
    over = lot("a1", grams=500.0, best_before=today - timedelta(days=1))
    assert any("was good until" in one for one in stock(over).warnings)


def test_a_bottle_that_the_plan_opens_goes_stale_from_then_on() -> None:
    studio = stocked(lot("a1"), names=("one", "two"))
    short_lived = replace(studio, stock=StockRules(opened_days=1))
    one, two = nightly("one", "two")
    later = replace(two, start=two.start + timedelta(days=5), end=two.end + timedelta(days=5))
    assert studio.plan is not None
    plan = replace(studio.plan, coats=(one, later))
    view = stock_of(short_lived, plan, NOW)
    assert [draw.stale for draw in view.drawing.draws] == [False, True]


def test_a_set_from_two_lots_is_told_of() -> None:
    view = stock(lot("a1", grams=90.0), lot("a2", grams=90.0), lot("b1", B), names=("one",))
    assert [odd.lots for odd in view.odd] == [("a1", "a2")]
    assert any("would come from lots L-a1, L-a2" in one for one in view.warnings)


def test_a_single_piece_from_two_lots_is_no_set() -> None:
    view = stock(lot("a1", grams=10.0), lot("a2", grams=10.0), names=("one",), count=1)
    assert view.odd == ()


def test_six_can_be_from_one_lot_when_one_has_enough_beside_what_others_take() -> None:
    studio = stocked(lot("a1", grams=150.0), lot("b1", B))
    uses, (levels, _) = planned_uses(studio, studio.plan), lot_levels(studio)
    a, b = one_lot(studio, uses, levels, ["two"])
    assert (a.part, a.lot, b.lot) == (A, None, "b1")
    both = one_lot(studio, uses, levels, ["one", "two"])
    assert both[0].lot is None
    alone = stocked(lot("a1", grams=150.0), lot("b1", B), names=("one",))
    first = one_lot(alone, planned_uses(alone, alone.plan), lot_levels(alone)[0], ["one"])
    assert [one.lot for one in first] == ["a1", "b1"]


def test_a_bottle_kept_for_another_order_is_not_the_one_lot() -> None:
    studio = stocked(lot("a1", kept_for="for-one"), lot("b1", B))
    (a, _) = one_lot(studio, planned_uses(studio, studio.plan), lot_levels(studio)[0], ["two"])
    assert a.lot is None


bottles = st.lists(
    st.tuples(
        st.sampled_from([A, B]),
        st.floats(1.0, 400.0),
        st.sampled_from(["", "", "for-one", "for-two"]),
        st.integers(-20, 4),
        st.sampled_from([None, -5, 2, 400]),
    ),
    max_size=6,
)


@given(bottles, st.integers(1, 12))
def test_draws_and_shorts_add_up_and_no_bottle_gives_more_than_it_has(
    given_: list[tuple[LotPart, float, str, int, int | None]], count: int
) -> None:
    lots = [
        lot(
            f"l{n}", part, grams, kept_for=kept, received=TODAY + timedelta(days=came),
            best_before=None if ends is None else TODAY + timedelta(days=ends),
        )
        for n, (part, grams, kept, came, ends) in enumerate(given_)
    ]  # fmt: skip
    studio = stocked(*lots, names=("one", "two", "three"), count=count)
    uses, (levels, _) = planned_uses(studio, studio.plan), lot_levels(studio)
    drawing = drawn(studio, uses, levels)
    for use in uses:
        served = sum(draw.grams for draw in drawing.draws if draw.use == use)
        lacking = sum(short.grams for short in drawing.shorts if short.use == use)
        assert served + lacking == pytest.approx(use.grams)
    for level in levels:
        assert drawing.reserved_g(level.lot.key) <= level.left_g + 1e-6
    view = stock_of(studio, studio.plan, NOW)
    for one in view.rows:
        assert one.planned_g - one.short_g <= one.left_g + one.coming_g + 1e-6
        assert one.after_g >= -1e-6
        assert (one.runs_out is None) == (one.short_g == 0.0)
    for draw in drawing.draws:
        kept = next(one for one in lots if one.key == draw.lot).kept_for
        assert kept in {"", draw.share.order}


def test_a_bottle_shows_itself_and_what_is_free_of_it() -> None:
    view = stock(lot("a1"), lot("w", B, opened=date(2026, 1, 20)))
    first, second = view.lots
    assert first.lot.key == "a1"
    assert first.free_g == pytest.approx(1000.0 - sum(one.grams for one in first.reserved))
    assert first.good_until is None
    assert second.good_until == date(2026, 1, 20) + timedelta(days=180)


def test_what_is_not_mixed_is_weighed_from_its_whole_bottle() -> None:
    paint = replace(FLOOD, kind=ProductKind.PRIMER, ratio=None)
    studio = replace(bench(*sets("one"), product=paint), lots=(lot("w", LotPart.WHOLE),))
    used = weighed(studio, 100.0, lot_a="w")
    assert lot_levels(used)[0][0].left_g == 900.0
    assert stuff_said(studio, "flood", LotPart.WHOLE) == "Invented flood"


BLUE = Colour(name="sky", share_pct=60, colourant="Sea blue", colourant_pct=3)
PEARL = Colour(name="pearl", share_pct=40, colourant="pearl", colourant_pct=2)
SEA = Pigment(key="sea", name="Sea blue", kind=Colourant.PASTE)


def coloured(*pots: Lot, pigments: tuple[Pigment, ...] = (SEA,)) -> Studio:
    """Two sets in blue and pearl, one a night."""
    studio = bench(*(coasters(name, 6, flood_coat((BLUE, PEARL))) for name in ("one", "two")))
    return replace(studio, pigments=pigments, lots=pots, plan=plan_of(*nightly("one", "two")))


def pot(key: str, grams: float, **entries: object) -> Lot:
    return lot(key, LotPart.COLOURANT, grams, **({"product": "sea"} | entries))


def test_the_plan_takes_of_a_colour_what_its_cups_will_be_weighed_with() -> None:
    studio = coloured(pot("p1", 50.0))
    assert studio.plan is not None
    cups = [
        cup.colourant_grams
        for portion in weigh(studio, studio.plan, [1, 2])
        for cup in portion.cups
        if cup.colourant == "Sea blue"
    ]
    (blue,) = (one for one in stock_of(studio, studio.plan, NOW).rows if one.product == "sea")
    assert sum(cups) > 0.0
    assert blue.planned_g == pytest.approx(sum(cups))
    assert blue.after_g == pytest.approx(50.0 - sum(cups))


def test_a_colour_that_runs_out_says_at_which_pour_and_by_when_to_order() -> None:
    whole = stock_of(coloured(pot("p1", 50.0)), coloured().plan, NOW).rows[-1].planned_g
    studio = coloured(pot("p1", 0.75 * whole, label="SB-1"))
    studio = replace(studio, stock=StockRules(reserve_g=100.0))
    view = stock_of(studio, studio.plan, NOW)
    blue = view.rows[-1]
    assert blue.runs_out is not None
    assert blue.runs_out.number == 2
    assert blue.short_g == pytest.approx(0.25 * whole)
    assert blue.order_by == TODAY + timedelta(days=1 - studio.stock.lead_days)
    assert any(said.startswith("Sea blue runs out at pour 2") for said in view.warnings)


def test_nothing_is_put_by_of_a_colour() -> None:
    studio = replace(coloured(pot("p1", 50.0)), stock=StockRules(reserve_g=100.0))
    blue = stock_of(studio, studio.plan, NOW).rows[-1]
    assert blue.enough
    assert blue.reserve_g == 0.0


def test_who_counts_no_colour_is_asked_for_none_and_who_counts_one_for_all() -> None:
    other = Pigment(key="rose", name="Rose", kind=Colourant.MICA)
    none = coloured(pigments=(SEA, other))
    assert {row.part for row in stock_of(none, none.plan, NOW).rows} == {A, B}
    one = coloured(pot("p1", 50.0, product="rose"), pigments=(SEA, other))
    view = stock_of(one, one.plan, NOW)
    assert [(row.product, row.known) for row in view.rows[2:]] == [
        ("sea", False), ("rose", True),
    ]  # fmt: skip
    assert any("No bottle of Sea blue is entered" in said for said in view.warnings)


def test_what_was_weighed_of_a_colour_comes_from_its_bottle_in_use() -> None:
    studio = weighed(coloured(pot("p1", 50.0), pot("p2", 50.0, opened=date(2026, 1, 20))), 90.0)
    used = tuple(
        WeighedColour(name=name, grams=grams)
        for name, grams in (("SEA BLUE", 4.0), ("pearl", 2.0))
    )
    studio = replace(studio, mixes=(replace(studio.mixes[0], colourants=used),))
    levels, unplaced = lot_levels(studio)
    assert [level.left_g for level in levels] == [50.0, 46.0]
    assert not any(level.guessed_g for level in levels)
    assert {one.part for one in unplaced} == {A, B}


def test_a_set_is_coloured_from_one_bottle_or_said_not_to_match() -> None:
    whole = stock_of(coloured(pot("p1", 50.0)), coloured().plan, NOW).rows[-1].planned_g
    studio = coloured(pot("p1", 0.3 * whole), pot("p2", 0.3 * whole))
    odd = [one for one in stock_of(studio, studio.plan, NOW).odd if one.product == "sea"]
    assert [one.pieces for one in odd] == [("one",)]
