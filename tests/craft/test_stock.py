"""Bottles: what is left in them, until when they are good, and what cannot be entered."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.errors import InvalidEntry, Rulebook
from studio_planner.craft.orders import Order
from studio_planner.craft.pigments import Pigment
from studio_planner.craft.products import Product, ProductKind
from studio_planner.craft.stock import Lot, LotCount, LotPart, StockRules
from studio_planner.craft.stock_rules import check_stock
from studio_planner.science.film_limits import Colourant
from tests.craft.nouns import broken, resin, utc

NOON = utc(2026, 3, 2, 12)


def lot(**entries: object) -> Lot:
    given_: dict[str, Any] = {
        "key": "a1",
        "product": "resin",
        "part": LotPart.A,
        "label": "L-17",
        "received": date(2026, 3, 1),
        "new_g": 1000.0,
    }
    return Lot(**(given_ | entries))


@dataclass
class Shelf:
    """What of a studio its bottles are checked against."""

    lots: tuple[Lot, ...]
    products: tuple[Product, ...] = (resin(),)
    pigments: tuple[Pigment, ...] = (Pigment(key="sea", name="Sea", kind=Colourant.MICA),)
    orders: tuple[Order, ...] = (
        Order(key="moon", name="Moon", pieces=("tray",), promised=date(2026, 4, 1)),
    )


def refused(*lots: Lot, products: tuple[Product, ...] = (resin(),)) -> dict[str, str]:
    rules = Rulebook("shelf")
    check_stock(Shelf(lots, products), rules)
    try:
        rules.close()
    except InvalidEntry as error:
        return {rule.field: rule.sentence for rule in error.broken}
    return {}


def test_a_new_bottle_has_what_was_in_it() -> None:
    assert lot().left_g([]) == 1000.0


def test_what_was_weighed_is_gone() -> None:
    assert lot().left_g([(NOON, 100.0), (NOON + timedelta(days=1), 50.0)]) == 850.0


def test_a_count_wins_over_everything_before_it() -> None:
    counted = lot(counts=(LotCount(at=NOON, left_g=400.0),))
    assert counted.left_g([(NOON - timedelta(hours=1), 100.0), (NOON, 7.0)]) == 400.0
    assert counted.left_g([(NOON + timedelta(hours=1), 100.0)]) == 300.0


def test_more_than_there_was_shows_as_less_than_nothing() -> None:
    assert lot(new_g=100.0).left_g([(NOON, 130.0)]) == -30.0


@given(st.lists(st.floats(0, 500), max_size=8))
def test_left_and_weighed_add_up_to_the_new_bottle(grams: list[float]) -> None:
    weighed = [(NOON + timedelta(hours=hour), one) for hour, one in enumerate(grams)]
    assert lot().left_g(weighed) + sum(grams) == pytest.approx(1000.0)


def test_a_gram_costs_its_share_of_the_bottle() -> None:
    assert lot(price=25.0).price_per_g == 0.025


def test_an_unopened_bottle_is_good_until_its_label_says() -> None:
    assert lot(best_before=date(2027, 3, 1)).good_until(180) == date(2027, 3, 1)


def test_an_opened_bottle_is_good_for_so_many_days() -> None:
    opened = lot(opened=date(2026, 3, 2), best_before=date(2027, 3, 1))
    assert opened.good_until(180) == date(2026, 8, 29)


def test_a_label_that_ends_sooner_wins_over_the_opening() -> None:
    opened = lot(opened=date(2026, 3, 2), best_before=date(2026, 4, 1))
    assert opened.good_until(180) == date(2026, 4, 1)


def test_a_first_use_to_come_counts_as_its_opening() -> None:
    assert lot().good_until(10, date(2026, 3, 5)) == date(2026, 3, 15)


def test_opening_a_pot_of_colour_does_not_end_its_days() -> None:
    pot = lot(product="sea", part=LotPart.COLOURANT, opened=date(2026, 3, 2))
    assert pot.good_until(180) is None
    assert replace(pot, best_before=date(2028, 3, 1)).good_until(180) == date(2028, 3, 1)


def test_nothing_tells_until_when_a_bottle_without_label_and_opening_is_good() -> None:
    assert lot().good_until(180) is None


def test_every_broken_rule_of_a_bottle_is_said() -> None:
    said = broken(
        lot,
        key=" ",
        product="",
        label="",
        new_g=0.0,
        price=-1.0,
        opened=date(2026, 2, 1),
        counts=(
            LotCount(at=NOON, left_g=2000.0),
            LotCount(at=NOON, left_g=1.0),
        ),
    )
    assert set(said) == {"key", "product", "label", "new_g", "price", "opened", "counts"}


def test_a_count_needs_a_zone_and_a_mass() -> None:
    said = broken(LotCount, at=datetime(2026, 3, 2), left_g=-1.0)  # noqa: DTZ001 - refused
    assert set(said) == {"at", "left_g"}


def test_rules_for_the_stock_have_ranges() -> None:
    said = broken(StockRules, lead_days=-1, opened_days=0, reserve_g=-1.0)
    assert set(said) == {"lead_days", "opened_days", "reserve_g"}


def test_a_bottle_that_fits_the_studio_is_accepted() -> None:
    assert not refused(lot(), lot(key="b1", part=LotPart.B, kept_for="moon"))


def test_a_bottle_needs_a_product_of_the_studio() -> None:
    assert "there is no product “paint”" in refused(lot(product="paint"))["lot L-17, product"]


def test_a_two_part_product_has_no_whole_bottle() -> None:
    assert "part A or part B" in refused(lot(part=LotPart.WHOLE))["lot L-17, part"]


def test_a_one_part_product_has_no_part_a() -> None:
    paint = resin(key="paint", kind=ProductKind.PRIMER, ratio=None)
    said = refused(lot(product="paint"), products=(paint,))
    assert "no part A or B" in said["lot L-17, part"]
    assert not refused(lot(product="paint", part=LotPart.WHOLE), products=(paint,))


def test_a_pot_of_colour_needs_a_pigment_of_the_studio() -> None:
    assert not refused(lot(product="sea", part=LotPart.COLOURANT))
    said = refused(lot(product="resin", part=LotPart.COLOURANT))
    assert "there is no pigment “resin”" in said["lot L-17, product"]


def test_a_bottle_is_kept_for_an_order_that_there_is() -> None:
    assert "there is no order “sun”" in refused(lot(kept_for="sun"))["lot L-17, kept_for"]
