"""What there is to say about the stock, in sentences."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.day_words import day_word
from studio_planner.craft.stock import LotPart
from studio_planner.craft.tongue import translate
from studio_planner.services.amount_words import grams_said

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator
    from datetime import date

    from studio_planner.craft.studio import Studio
    from studio_planner.services.stocks.drawing import Drawing
    from studio_planner.services.stocks.levels import Level, Unplaced
    from studio_planner.services.stocks.matched import OddSet
    from studio_planner.services.stocks.running_out import StockRow
    from studio_planner.services.stocks.using import Use

_SOON_DAYS, _WORTH_A_WORD_G = 14, 20.0
"""So near an end of shelf life, and so much of a bottle, is worth a word (our choice)."""


def stuff_said(studio: Studio, product: str, part: LotPart) -> str:
    """A product's part by name: "Tarn, part A", or only the product's or pigment's name."""
    if part is LotPart.COLOURANT:
        return next(one.name for one in studio.pigments if one.key == product)
    name = studio.product(product).name
    if part is LotPart.WHOLE:
        return name
    return translate("stock", "{product}, part {part}").format(product=name, part=part)


def running_out_said(studio: Studio, row: StockRow, today: date) -> Iterator[str]:
    """What to say of one row: it runs out at a pour, or its reserve is touched; by when."""
    if not row.known:
        if row.planned_g > 0.0:
            yield translate(
                "stock", "No bottle of {stuff} is entered; the plan takes {planned}."
            ).format(
                stuff=stuff_said(studio, row.product, row.part),
                planned=grams_said(row.planned_g, studio.units),
            )
        return
    if row.runs_out is not None:
        yield translate(
            "stock", "{stuff} runs out at pour {number} ({pieces}): {short} are short in all."
        ).format(
            stuff=stuff_said(studio, row.product, row.part),
            number=row.runs_out.number,
            pieces=_pieces_said(studio, row.runs_out),
            short=grams_said(row.short_g, studio.units),
        )
    elif row.under_reserve is not None:
        yield translate(
            "stock", "After pour {number} less than the reserve of {stuff} is left."
        ).format(
            stuff=stuff_said(studio, row.product, row.part), number=row.under_reserve.number
        )
    if row.order_by is not None and row.order_by <= today:
        yield translate(
            "stock", "An order for {stuff} that goes out today may come too late for it."
        ).format(stuff=stuff_said(studio, row.product, row.part))


def levels_said(studio: Studio, levels: tuple[Level, ...]) -> Iterator[str]:
    """What to say of bottles whose book cannot be right or is only a guess."""
    for level in levels:
        stuff = stuff_said(studio, level.lot.product, level.lot.part)
        if level.lacking_g > 0.0:
            yield translate(
                "stock",
                "{lacking} more were weighed from lot {label} of {stuff} than it held: count "
                "what is left in it.",
            ).format(
                lacking=grams_said(level.lacking_g, studio.units),
                label=level.lot.label,
                stuff=stuff,
            )
        elif level.guessed_g > 0.0:
            yield translate(
                "stock",
                "{guessed} of {stuff} were weighed without their lot; they count as from lot "
                "{label}.",
            ).format(
                guessed=grams_said(level.guessed_g, studio.units),
                label=level.lot.label,
                stuff=stuff,
            )


def unplaced_said(studio: Studio, unplaced: tuple[Unplaced, ...]) -> Iterator[str]:
    """What to say of weighings of which no bottle was entered, while others are."""
    keys = {product.key for product in studio.products}
    for one in unplaced:
        if studio.lots and one.product in keys:
            yield translate(
                "stock", "{grams} of {stuff} were weighed, but no bottle of it is entered."
            ).format(
                grams=grams_said(one.grams, studio.units),
                stuff=stuff_said(studio, one.product, one.part),
            )


def stale_said(studio: Studio, drawing: Drawing) -> Iterator[str]:
    """What to say of pours from bottles that are past their day then, once for each bottle."""
    labels = {lot.key: lot.label for lot in studio.lots}
    seen: set[str] = set()
    for draw in drawing.draws:
        if draw.stale and draw.lot not in seen:
            seen.add(draw.lot)
            yield translate(
                "stock", "Lot {label} of {stuff} is past its day at pour {number}."
            ).format(
                label=labels[draw.lot],
                stuff=stuff_said(studio, draw.use.product, draw.use.part),
                number=draw.use.number,
            )


def ending_said(
    studio: Studio, bottles: Iterable[tuple[Level, float]], today: date
) -> Iterator[str]:
    """What to say of bottles whose last day is over, or near while much of them is free [g]."""
    for level, free in bottles:
        lot = level.lot
        last = lot.good_until(studio.stock.opened_days)
        if last is None or level.left_g < _WORTH_A_WORD_G:
            continue
        words = ""
        if last < today:
            words = translate("stock", "Lot {label} of {stuff} was good until {day}.")
        elif (last - today).days <= _SOON_DAYS and free >= _WORTH_A_WORD_G:
            words = translate(
                "stock",
                "Lot {label} of {stuff} is good until {day}, and nothing planned takes "
                "{free} of it.",
            )
        if words:
            yield words.format(
                label=lot.label,
                stuff=stuff_said(studio, lot.product, lot.part),
                day=day_word(last),
                free=grams_said(free, studio.units),
            )


def odd_said(studio: Studio, odd: tuple[OddSet, ...]) -> Iterator[str]:
    """What to say of sets that would not match."""
    labels = {lot.key: lot.label for lot in studio.lots}
    for one in odd:
        yield translate(
            "stock",
            "{piece} would come from lots {lots} of {stuff}: a set from one lot matches in "
            "colour.",
        ).format(
            piece=", ".join(studio.piece(key).name for key in one.pieces),
            lots=", ".join(labels[key] for key in one.lots),
            stuff=stuff_said(studio, one.product, one.part),
        )


def _pieces_said(studio: Studio, use: Use) -> str:
    keys = dict.fromkeys(share.piece for share in use.shares)
    return ", ".join(studio.piece(key).name for key in keys)
