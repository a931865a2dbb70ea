"""Which bottle a mix is weighed from: the one that the stock sets aside for it, or another."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.products import ProductKind
from studio_planner.craft.stock import LotPart
from studio_planner.services.stocks.drawing import drawn
from studio_planner.services.stocks.levels import in_order_of_use, lot_levels
from studio_planner.services.stocks.using import planned_uses

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio
    from studio_planner.services.stocks.levels import Level


@dataclass(frozen=True, slots=True, kw_only=True)
class Bottles:
    """The bottles of one part of a product, the one to use first; `chosen` is a key or ""."""

    part: LotPart
    levels: tuple[Level, ...]
    chosen: str


def bottles_for(studio: Studio, plan: Plan, mix: int, product: Product) -> tuple[Bottles, ...]:
    """The bottles of each part of a planned mix: A and B, or the whole."""
    levels, _ = lot_levels(studio)
    drawing = drawn(studio, planned_uses(studio, plan), levels)
    two_part = product.kind is ProductKind.TWO_PART
    found = []
    for part in (LotPart.A, LotPart.B) if two_part else (LotPart.WHOLE,):
        mine = [one for one in levels if (one.lot.product, one.lot.part) == (product.key, part)]
        mine.sort(key=lambda one: in_order_of_use(one.lot, studio.stock.opened_days))
        draws = (d.lot for d in drawing.draws if (d.use.mix, d.use.part) == (mix, part))
        first = mine[0].lot.key if mine else ""
        found.append(Bottles(part=part, levels=tuple(mine), chosen=next(draws, first)))
    return tuple(found)


def lots_for(studio: Studio, plan: Plan, mix: int, product: Product) -> dict[LotPart, str]:
    """The labels of the bottles that the stock sets aside for a planned mix, by part."""
    found = bottles_for(studio, plan, mix, product)
    labels = {level.lot.key: level.lot.label for one in found for level in one.levels}
    return {one.part: labels[one.chosen] for one in found if one.chosen}
