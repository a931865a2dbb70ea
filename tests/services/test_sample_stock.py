"""What the sample studio has on its shelf, and what its prices come to."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from itertools import compress

import pytest

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.products import ProductKind
from studio_planner.craft.stock import LotPart
from studio_planner.services.colour_stuff import kind_called
from studio_planner.services.costs.order_cost import order_cost
from studio_planner.services.editing.products import removed_product
from studio_planner.services.mixing.mix_sheet import mix_sheet, mixes_to_pour
from studio_planner.services.sample import REFERENCE_DAY, sample_studio
from studio_planner.services.stocks.levels import lot_levels
from studio_planner.services.stocks.stock_view import stock_of
from tests.services.small_studios import kept, morning, planned_once


def test_every_product_that_is_weighed_has_bottles_and_all_say_that_they_are_invented() -> None:
    studio = sample_studio(REFERENCE_DAY)
    weighed = {one.key for one in studio.products if one.kind is not ProductKind.LEAF}
    weighed |= {one.key for one in studio.pigments}
    assert {lot.product for lot in studio.lots} == weighed
    assert all("Invented" in lot.note and lot.price > 0.0 for lot in studio.lots)
    assert all("Invented" in pot.note and pot.price_per_100g > 0.0 for pot in studio.pigments)


def test_every_colour_comes_from_a_pot_of_its_own_kind() -> None:
    studio = sample_studio(REFERENCE_DAY)
    for piece in studio.pieces:
        for colour in (colour for coat in piece.stack for colour in coat.colours):
            (pot,) = (one for one in studio.pigments if one.called(colour.colourant))
            assert kind_called(colour.colourant) in {None, pot.kind}


def test_what_was_weighed_came_from_bottles_that_had_it() -> None:
    studio = planned_once()
    stock = stock_of(studio, studio.plan, morning(studio))
    assert lot_levels(studio)[1] == ()
    assert all(row.level.lacking_g == 0.0 for row in stock.lots)
    assert all(row.level.guessed_g == 0.0 for row in stock.lots)


def test_one_part_and_one_colour_run_out_late_enough_to_be_ordered_in_time() -> None:
    studio = planned_once()
    stock = stock_of(studio, studio.plan, morning(studio))
    short = [row for row in stock.rows if row.runs_out is not None]
    assert {row.part is LotPart.COLOURANT for row in short} == {False, True}
    assert all(row.order_by is not None and row.order_by > REFERENCE_DAY for row in short)
    assert stock.odd  # a set that would not match is there to be seen


def test_one_order_was_agreed_on_below_its_floor_price_and_one_above() -> None:
    studio = planned_once()
    costs = [order_cost(studio, studio.plan, order) for order in studio.orders]
    under = [cost.under_floor for cost in costs]
    assert [order.key for order in compress(studio.orders, under)] == ["birthday"]
    agreed = [cost for cost in costs if cost.agreed is not None and not cost.under_floor]
    assert agreed
    assert not any(cost.missing for cost in costs)


def test_its_mixes_say_how_heavy_colours_sink_and_when_to_pour_them() -> None:
    studio = planned_once()
    warnings = [
        sentence
        for mix in mixes_to_pour(studio, kept(studio))
        for sentence in mix_sheet(studio, kept(studio), mix).warnings
    ]
    assert any("sinks about" in sentence for sentence in warnings)
    assert all(p.viscosity_mpas for p in studio.products if p.kind is ProductKind.TWO_PART)


@pytest.mark.parametrize("days", [1, 59, 400])
def test_the_days_of_its_bottles_move_with_it(days: int) -> None:
    stored = sample_studio(REFERENCE_DAY)
    moved = sample_studio(REFERENCE_DAY + timedelta(days=days))
    ahead = timedelta(days=days)
    for one, other in zip(stored.lots, moved.lots, strict=True):
        assert other.received == one.received + ahead
        counts = zip(one.counts, other.counts, strict=True)
        assert all(count.left_g == now.left_g for count, now in counts)
        plain = {"received": one.received, "counts": one.counts}
        days_of_it = {"opened": one.opened, "best_before": one.best_before}
        assert replace(other, **plain, **days_of_it) == one  # type: ignore[arg-type]


def test_a_product_is_not_removed_while_bottles_of_it_are_entered() -> None:
    sample = sample_studio(REFERENCE_DAY)
    lots = tuple(replace(lot, kept_for="") for lot in sample.lots)
    bare = {"pieces": (), "orders": (), "poured": (), "log": (), "mixes": ()}
    studio = replace(sample, lots=lots, **bare)  # type: ignore[arg-type]
    wick = studio.product("wick")
    with pytest.raises(InvalidEntry) as refused:
        removed_product(wick).make(studio)
    assert "WK-41" in str(refused.value)
    emptied = replace(studio, lots=tuple(one for one in studio.lots if one.product != "wick"))
    assert "wick" not in {one.key for one in removed_product(wick).make(emptied).products}
