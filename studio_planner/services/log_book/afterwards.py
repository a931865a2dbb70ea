"""Weights of a pour that are written down afterwards: of a new mix, or of one that is known."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.craft.log import EntryKind
from studio_planner.craft.products import ProductKind
from studio_planner.craft.tongue import translate
from studio_planner.services.editing.changes import Change
from studio_planner.services.log_book.corrections import pour_corrected, weighing_corrected
from studio_planner.services.log_book.known import coat_name, piece_name
from studio_planner.services.log_book.weighings import WeighingTold, weighed

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.log import LogEntry
    from studio_planner.craft.mixes import WeighedColour, WeighedMix
    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True, kw_only=True)
class Afterwards:
    """What weights are asked for: the product, its coats, when, and the mix if one is known.

    `corrects` is the mix whose weights were written down wrongly, `batch` the mix that the
    pour names already.
    """

    product: str
    coats: tuple[tuple[str, str], ...]
    at: datetime
    mixed: bool
    corrects: WeighedMix | None = None
    batch: int | None = None


def asked_of(studio: Studio, entry: LogEntry) -> Afterwards | None:
    """What is asked of a pour or of a weighing; None of anything else, or what is gone."""
    if entry.kind is EntryKind.WEIGHED:
        return _of_weighing(studio, entry)
    if entry.kind is not EntryKind.POURED:
        return None
    product = _product_of(studio, entry.piece, entry.coat)
    if not product:
        return None
    return Afterwards(
        product=product,
        coats=_poured_together(studio, entry, product),
        at=entry.at,
        mixed=_is_mixed(studio, product),
        batch=entry.batch or _batch_of(studio, entry),
    )


def _of_weighing(studio: Studio, entry: LogEntry) -> Afterwards | None:
    mix = next((one for one in studio.standing_mixes if one.entry == entry.number), None)
    if mix is None:
        return None
    return Afterwards(
        product=mix.product,
        coats=tuple((one.piece, one.coat) for one in mix.coats),
        at=mix.at,
        mixed=_is_mixed(studio, mix.product),
        corrects=mix,
    )


def _is_mixed(studio: Studio, product: str) -> bool:
    kinds = (one.kind for one in studio.products if one.key == product)
    return next(kinds, None) is ProductKind.TWO_PART


def _product_of(studio: Studio, piece: str, coat: str) -> str:
    stack = next((one.stack for one in studio.pieces if one.key == piece), ())
    return next((one.product for one in stack if one.key == coat), "")


def _poured_together(
    studio: Studio, entry: LogEntry, product: str
) -> tuple[tuple[str, str], ...]:
    """The coat of the pour, and all of the same product that were poured in the same block."""
    others = (
        (pour.piece, pour.coat)
        for pour in studio.poured
        if (pour.start, pour.end) == (entry.at, entry.end)
        if _product_of(studio, pour.piece, pour.coat) == product
    )
    return tuple(dict.fromkeys(((entry.piece, entry.coat), *others)))


def _batch_of(studio: Studio, entry: LogEntry) -> int | None:
    pours = (one for one in studio.poured if (one.piece, one.coat) == (entry.piece, entry.coat))
    return next((pour.batch for pour in pours), None)


def known_mixes(studio: Studio, asked: Afterwards) -> tuple[WeighedMix, ...]:
    """The mixes of the product that stand, the latest first."""
    alike = (mix for mix in studio.standing_mixes if mix.product == asked.product)
    return tuple(sorted(alike, key=lambda mix: mix.at, reverse=True))


def coats_words(studio: Studio, asked: Afterwards) -> str:
    """The coats that the mix was for, by name."""
    return ", ".join(
        f"{piece_name(studio, piece)}: {coat_name(studio, piece, coat)}"
        for piece, coat in asked.coats
    )


def weights_told(
    studio: Studio, asked: Afterwards, told: WeighingTold, now: datetime
) -> Change:
    """Write the weights down, of a new mix or of the one that is corrected."""
    if asked.corrects is not None:
        return weighing_corrected(studio, asked.corrects, told, now)
    return weighed(studio, told, now)


def told_of(
    asked: Afterwards,
    at: datetime,
    grams: tuple[float, float],
    lots: tuple[str, str],
    colourants: tuple[WeighedColour, ...],
) -> WeighingTold:
    """What was weighed, as it is written down; grams and lots of A and B."""
    return WeighingTold(
        product=asked.product,
        at=at,
        a_grams=grams[0],
        b_grams=grams[1],
        lot_a=lots[0],
        lot_b=lots[1],
        colourants=colourants,
        coats=asked.coats,
    )


def from_known_mix(studio: Studio, asked: Afterwards, batch: int, now: datetime) -> Change:
    """Say that the coats came from a mix that was written down before."""
    said = translate("log", "Mix {batch}: {coats}").format(
        batch=batch, coats=coats_words(studio, asked)
    )

    def make(then: Studio) -> Studio:
        for piece, coat in asked.coats:
            pours = (p for p in then.pours_of(piece) if p.coat == coat)
            for pour in pours:
                right = replace(pour, batch=batch)
                then = pour_corrected(then, right, now).make(then)
        return then

    return Change(said, make)
