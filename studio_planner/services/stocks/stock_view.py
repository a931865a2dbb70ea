"""The whole stock at a glance: bottles, what the plan takes from each, what runs out."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.services.stocks.drawing import Drawing, drawn
from studio_planner.services.stocks.levels import Level, lot_levels
from studio_planner.services.stocks.matched import OddSet, odd_sets
from studio_planner.services.stocks.running_out import Book, StockRow, stock_rows
from studio_planner.services.stocks.stock_words import (
    ending_said,
    levels_said,
    odd_said,
    running_out_said,
    stale_said,
    unplaced_said,
)
from studio_planner.services.stocks.using import Use, planned_uses

if TYPE_CHECKING:
    from datetime import date, datetime

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.stock import Lot
    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True, kw_only=True)
class Reservation:
    """What of a bottle is reserved for one order ("" for pieces of no order)."""

    order: str
    grams: float


@dataclass(frozen=True, slots=True, kw_only=True)
class LotRow:
    """One bottle: what is left, what is reserved and for whom, and until when it is good.

    `good_until` is None where neither its label nor its opening tells.
    """

    level: Level
    reserved: tuple[Reservation, ...]
    good_until: date | None

    @property
    def lot(self) -> Lot:
        """The bottle."""
        return self.level.lot

    @property
    def free_g(self) -> float:
        """What nothing that is planned takes."""
        return max(0.0, self.level.left_g - sum(one.grams for one in self.reserved))


@dataclass(frozen=True, slots=True, kw_only=True)
class Stock:
    """The stock of a studio: `rows` by product and part, `lots` by bottle, and sentences."""

    rows: tuple[StockRow, ...]
    lots: tuple[LotRow, ...]
    uses: tuple[Use, ...]
    drawing: Drawing
    odd: tuple[OddSet, ...]
    warnings: tuple[str, ...]


def stock_of(studio: Studio, plan: Plan | None, now: datetime) -> Stock:
    """Give the stock at `now` (aware) and what the plan makes of it."""
    today = now.astimezone(studio.time_zone).date()
    uses = planned_uses(studio, plan)
    levels, unplaced = lot_levels(studio)
    drawing = drawn(studio, uses, levels)
    rows = stock_rows(studio, Book(uses=uses, levels=levels, drawing=drawing), today)
    odd = odd_sets(studio, drawing)
    lots = tuple(_lot_row(studio, level, drawing) for level in levels)
    warnings = (
        *(one for row in rows for one in running_out_said(studio, row, today)),
        *stale_said(studio, drawing),
        *ending_said(studio, ((one.level, one.free_g) for one in lots), today),
        *odd_said(studio, odd),
        *levels_said(studio, levels),
        *unplaced_said(studio, unplaced),
    )
    return Stock(
        rows=rows,
        lots=lots,
        uses=uses,
        drawing=drawing,
        odd=odd,
        warnings=warnings,
    )


def _lot_row(studio: Studio, level: Level, drawing: Drawing) -> LotRow:
    orders = dict.fromkeys(
        draw.share.order for draw in drawing.draws if draw.lot == level.lot.key
    )
    return LotRow(
        level=level,
        reserved=tuple(
            Reservation(order=order, grams=drawing.reserved_g(level.lot.key, order))
            for order in orders
        ),
        good_until=level.lot.good_until(studio.stock.opened_days),
    )
