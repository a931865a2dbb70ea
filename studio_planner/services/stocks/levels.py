"""What is left in each bottle, from what it held, its counts and what was weighed from it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

from studio_planner.craft.products import ProductKind
from studio_planner.craft.stock import LotPart
from studio_planner.services.colour_stuff import pigment_called

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import datetime

    from studio_planner.craft.stock import Lot
    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True, kw_only=True)
class Level:
    """What is left in a bottle, in grams.

    Nobody notes from which pot a colourant was weighed: it comes from the one in use, and that
    is no guess worth a word.
    `guessed_g` of what was taken from it was weighed without its lot being noted: it is taken
    as from the bottle that was in use. Where more was weighed than it held, `left_g` is 0 and
    `lacking_g` says by how much the book is wrong: the bottle has to be counted.
    """

    lot: Lot
    left_g: float
    guessed_g: float = 0.0
    lacking_g: float = 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Unplaced:
    """What was weighed [g] of a product's part although no bottle of it was entered."""

    product: str
    part: LotPart
    grams: float


@dataclass(frozen=True, slots=True)
class _Weighing:
    at: datetime
    product: str
    part: LotPart
    grams: float
    words: str


def lot_levels(studio: Studio) -> tuple[tuple[Level, ...], tuple[Unplaced, ...]]:
    """What is left in every bottle, in the studio's order, and what came from none of them."""
    taken: dict[str, list[tuple[datetime, float]]] = {lot.key: [] for lot in studio.lots}
    guessed: dict[str, float] = {}
    unplaced: dict[tuple[str, LotPart], float] = {}
    for weighing in sorted(_weighings(studio), key=lambda one: one.at):
        named = _named(studio, weighing)
        lot = named or _in_use(studio, weighing, taken)
        if lot is None:
            key = (weighing.product, weighing.part)
            unplaced[key] = unplaced.get(key, 0.0) + weighing.grams
            continue
        taken[lot.key].append((weighing.at, weighing.grams))
        if named is None and weighing.part is not LotPart.COLOURANT:
            guessed[lot.key] = guessed.get(lot.key, 0.0) + weighing.grams
    levels = tuple(
        _level(lot, lot.left_g(taken[lot.key]), guessed.get(lot.key, 0.0))
        for lot in studio.lots
    )
    rest = (Unplaced(product=key[0], part=key[1], grams=g) for key, g in unplaced.items())
    return levels, tuple(rest)


def in_order_of_use(lot: Lot, opened_days: int) -> tuple[bool, date, date, str]:
    """Sort by this to use first what is open, then what ends first, then what came first.

    A bottle of which nobody knows when it ends comes after those that end.
    """
    ends = lot.good_until(opened_days)
    return lot.opened is None, ends or date.max, lot.received, lot.key


def _level(lot: Lot, left: float, guessed: float) -> Level:
    return Level(lot=lot, left_g=max(left, 0.0), guessed_g=guessed, lacking_g=max(-left, 0.0))


def _weighings(studio: Studio) -> Iterator[_Weighing]:
    kinds = {product.key: product.kind for product in studio.products}
    counted = {lot.product for lot in studio.lots if lot.part is LotPart.COLOURANT}
    for mix in studio.standing_mixes:
        if kinds.get(mix.product) is ProductKind.TWO_PART:
            yield _Weighing(mix.at, mix.product, LotPart.A, mix.a_grams, mix.lot_a)
            yield _Weighing(mix.at, mix.product, LotPart.B, mix.b_grams, mix.lot_b)
        else:
            yield _Weighing(mix.at, mix.product, LotPart.WHOLE, mix.a_grams, mix.lot_a)
        for used in mix.colourants:
            pigment = pigment_called(used.name, studio.pigments)
            if pigment is not None and pigment.key in counted:
                yield _Weighing(mix.at, pigment.key, LotPart.COLOURANT, used.grams, "")


def _fits(lot: Lot, weighing: _Weighing) -> bool:
    return (lot.product, lot.part) == (weighing.product, weighing.part)


def _named(studio: Studio, weighing: _Weighing) -> Lot | None:
    words = weighing.words.strip().casefold()
    fitting = [lot for lot in studio.lots if words and _fits(lot, weighing)]
    by_key = [lot for lot in fitting if lot.key.casefold() == words]
    by_label = [lot for lot in fitting if lot.label.casefold() == words]
    return next(iter(by_key or by_label), None)


def _in_use(
    studio: Studio, weighing: _Weighing, taken: dict[str, list[tuple[datetime, float]]]
) -> Lot | None:
    """The bottle that it was most likely weighed from: there, not empty, the first to use."""
    day = weighing.at.astimezone(studio.time_zone).date()
    there = [lot for lot in studio.lots if _fits(lot, weighing) and lot.received <= day] or [
        lot for lot in studio.lots if _fits(lot, weighing)
    ]
    days = studio.stock.opened_days
    there.sort(key=lambda lot: in_order_of_use(lot, days))
    full = [lot for lot in there if lot.left_g(taken[lot.key]) > 0.0]
    return next(iter(full or there), None)
