"""What the plan takes of each product and part, mix by mix, and for which orders.

Colourants count from the day on which a pot of any is entered: who counts none is asked for
none.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.stock import LotPart
from studio_planner.services.colour_stuff import pigment_called
from studio_planner.services.mixing.mix_sheet import mixes_to_pour
from studio_planner.services.weighing import MixAmounts, amounts_of

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import datetime

    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True, kw_only=True)
class Share:
    """What of a mix is for one piece: its order ("" for none) and the grams of the part."""

    piece: str
    order: str
    grams: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Use:
    """What one mix of the plan takes of one part of a product, cups and losses with it.

    Of a colourant `product` is the key of its pigment.
    `shares` add up to `grams`. `number` is that of its first coat, what the maker reads.
    """

    mix: int
    number: int
    at: datetime
    product: str
    part: LotPart
    grams: float
    shares: tuple[Share, ...]


def planned_uses(studio: Studio, plan: Plan | None) -> tuple[Use, ...]:
    """Everything that the plan still takes, in order of time; A before B."""
    if plan is None:
        return ()
    found: list[Use] = []
    for mix in mixes_to_pour(studio, plan):
        coats = tuple(coat for coat in plan.coats if coat.mix == mix)
        found += _uses(studio, coats)
    return tuple(found)


def _uses(studio: Studio, coats: tuple[PlannedCoat, ...]) -> Iterator[Use]:
    entered = [(studio.piece(c.piece), studio.piece(c.piece).coat(c.coat)) for c in coats]
    amounts = amounts_of(studio, entered)
    of_product = ((entered[0][1].product, part, grams) for part, grams in amounts.by_part)
    for stuff, part, grams in (*of_product, *_of_pigments(studio, amounts)):
        if grams > 0.0:
            yield Use(
                mix=coats[0].mix,
                number=min(coat.number for coat in coats),
                at=coats[0].start,
                product=stuff,
                part=part,
                grams=grams,
                shares=tuple(_shares(studio, coats, amounts, grams)),
            )


def _of_pigments(studio: Studio, amounts: MixAmounts) -> Iterator[tuple[str, LotPart, float]]:
    if not any(lot.part is LotPart.COLOURANT for lot in studio.lots):
        return
    for pigment in studio.pigments:
        yield (
            pigment.key,
            LotPart.COLOURANT,
            sum(
                grams
                for words, grams in amounts.colourants
                if pigment_called(words, studio.pigments) is pigment
            ),
        )


def _shares(
    studio: Studio, coats: tuple[PlannedCoat, ...], amounts: MixAmounts, grams: float
) -> Iterator[Share]:
    whole = sum(amounts.spread_grams)
    for coat, spread in zip(coats, amounts.spread_grams, strict=True):
        order = studio.order_of(coat.piece)
        yield Share(
            piece=coat.piece,
            order="" if order is None else order.key,
            grams=grams * spread / whole,
        )
