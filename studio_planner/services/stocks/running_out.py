"""When each part of each product runs out, at which pour, and by when to order it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.stock import LotPart

if TYPE_CHECKING:
    from datetime import date

    from studio_planner.craft.studio import Studio
    from studio_planner.services.stocks.drawing import Drawing
    from studio_planner.services.stocks.levels import Level
    from studio_planner.services.stocks.using import Use

_CRUMB = 1e-6


@dataclass(frozen=True, slots=True, kw_only=True)
class StockRow:
    """One part of a product: what is there, what the plan takes, and whether it is enough.

    `left_g` is in bottles that are there today, `coming_g` in those that are entered as
    received later. `known` is whether any bottle of it was entered at all. `runs_out` is the
    first use that cannot be served in full, `short_g` all that is short; `under_reserve` is the
    first use after which less is left than the reserve of it. `order_by` is the day to order on
    for the first of these, None when neither comes; it may have gone by.
    """

    product: str
    part: LotPart
    known: bool
    left_g: float
    coming_g: float
    planned_g: float
    short_g: float
    reserve_g: float
    runs_out: Use | None
    under_reserve: Use | None
    order_by: date | None

    @property
    def after_g(self) -> float:
        """What is left in all when everything planned is poured."""
        return self.left_g + self.coming_g - (self.planned_g - self.short_g)

    @property
    def enough(self) -> bool:
        """Whether the plan is served in full and the reserve is left."""
        return self.runs_out is None and self.under_reserve is None


@dataclass(frozen=True, slots=True, kw_only=True)
class Book:
    """What is planned, what is there, and which bottle serves what."""

    uses: tuple[Use, ...]
    levels: tuple[Level, ...]
    drawing: Drawing

    def of(self, key: tuple[str, LotPart]) -> Book:
        """The same for one part of a product."""
        drawing = replace(
            self.drawing,
            draws=tuple(one for one in self.drawing.draws if _key(one.use) == key),
            shorts=tuple(one for one in self.drawing.shorts if _key(one.use) == key),
        )
        return Book(
            uses=tuple(use for use in self.uses if _key(use) == key),
            levels=tuple(one for one in self.levels if (one.lot.product, one.lot.part) == key),
            drawing=drawing,
        )


def stock_rows(studio: Studio, book: Book, today: date) -> tuple[StockRow, ...]:
    """Give a row for each part of each product that is there or planned, as products come.

    Pigments follow them.
    What is past its day counts as there: the warnings on shelf life tell of it.
    """
    keys = {_key(use) for use in book.uses} | {
        (level.lot.product, level.lot.part) for level in book.levels
    }
    products = {product.key: number for number, product in enumerate(studio.products)}
    pigments = {pigment.key: number for number, pigment in enumerate(studio.pigments)}

    def place(key: tuple[str, LotPart]) -> tuple[bool, int, LotPart]:
        stuff, part = key
        colour = part is LotPart.COLOURANT
        return colour, (pigments if colour else products)[stuff], part

    return tuple(_row(studio, key, book.of(key), today) for key in sorted(keys, key=place))


def _row(studio: Studio, key: tuple[str, LotPart], own: Book, today: date) -> StockRow:
    shorts = own.drawing.shorts
    runs_out = min((short.use for short in shorts), key=_comes, default=None)
    reserve = 0.0 if key[1] is LotPart.COLOURANT else studio.stock.reserve_g
    under = _under_reserve(studio, own, reserve)
    first = min((use for use in (runs_out, under) if use is not None), key=_comes, default=None)
    return StockRow(
        product=key[0],
        part=key[1],
        known=bool(own.levels),
        left_g=sum(one.left_g for one in own.levels if one.lot.received <= today),
        coming_g=sum(one.left_g for one in own.levels if one.lot.received > today),
        planned_g=sum(use.grams for use in own.uses),
        short_g=sum(short.grams for short in shorts),
        reserve_g=reserve,
        runs_out=runs_out,
        under_reserve=under,
        order_by=None if first is None else _order_by(studio, first),
    )


def _key(use: Use) -> tuple[str, LotPart]:
    return (use.product, use.part)


def _comes(use: Use) -> tuple[float, int]:
    return (use.at.timestamp(), use.number)


def _order_by(studio: Studio, use: Use) -> date:
    day = use.at.astimezone(studio.time_zone).date()
    return day - timedelta(days=studio.stock.lead_days)


def _under_reserve(studio: Studio, own: Book, reserve: float) -> Use | None:
    taken = 0.0
    for use in sorted(own.uses, key=_comes):
        taken += use.grams
        day = use.at.astimezone(studio.time_zone).date()
        there = sum(level.left_g for level in own.levels if level.lot.received <= day)
        if reserve > 0.0 and there - taken < reserve - _CRUMB:
            return use
    return None
