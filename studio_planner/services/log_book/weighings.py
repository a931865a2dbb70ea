"""Writing down what was really weighed, under the studio's own rising batch number."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.log import EntryKind, LogEntry
from studio_planner.craft.mixes import MixedFor, WeighedColour, WeighedMix
from studio_planner.craft.products import ProductKind
from studio_planner.craft.tongue import translate
from studio_planner.services.editing.changes import Change
from studio_planner.services.log_book.entries import NEW, as_logged, next_number
from studio_planner.services.log_book.known import product_name, the_coat
from studio_planner.services.log_book.times import require_past

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True, kw_only=True)
class WeighingTold:
    """What was weighed: product, when A met B, grams as the scale showed them, lots, coats.

    `b_grams` is 0 for a product that is not mixed. `lot_a` and `lot_b` are keys of lots or what
    the labels say. `coats` are pairs of piece and coat.
    """

    product: str
    at: datetime
    a_grams: float
    b_grams: float = 0.0
    colourants: tuple[WeighedColour, ...] = ()
    lot_a: str = ""
    lot_b: str = ""
    coats: tuple[tuple[str, str], ...] = ()
    words: str = ""


def next_batch(studio: Studio) -> int:
    """The number that the next mix gets: one more than any mix ever had."""
    return max((mix.batch for mix in studio.mixes), default=0) + 1


def weighed(studio: Studio, told: WeighingTold, now: datetime) -> Change:
    """Write a mix down under the next batch number, at `now` (aware)."""
    said = translate("log", "Weighed: {product}").format(
        product=product_name(studio, told.product)
    )
    return Change(said, lambda then: with_weighing(then, told, now))


def with_weighing(
    studio: Studio, told: WeighingTold, now: datetime, corrects: WeighedMix | None = None
) -> Studio:
    """The studio with a mix, which may take the place of one that it corrects.

    InvalidEntry in sentences where it can't have been weighed. Coats that are poured already
    get its number.
    """
    check_weighing(studio, told, now)
    batch = next_batch(studio) if corrects is None else corrects.batch
    entry = LogEntry(
        number=NEW,
        kind=EntryKind.WEIGHED,
        at=told.at,
        written=now,
        batch=batch,
        words=told.words,
        corrects=None if corrects is None else corrects.entry,
    )
    mix = WeighedMix(
        entry=next_number(studio),
        batch=batch,
        product=told.product,
        at=told.at,
        a_grams=told.a_grams,
        b_grams=told.b_grams,
        lot_a=told.lot_a.strip(),
        lot_b=told.lot_b.strip(),
        colourants=told.colourants,
        coats=tuple(MixedFor(piece=piece, coat=coat) for piece, coat in told.coats),
    )
    return with_mixes_again(_with_both(studio, entry, mix))


def _with_both(studio: Studio, entry: LogEntry, mix: WeighedMix) -> Studio:
    # An entry without its mix, or a mix without its entry, is no studio for a moment.
    numbered = replace(entry, number=mix.entry)
    return replace(studio, log=(*studio.log, numbered), mixes=(*studio.mixes, mix))


def with_mixes_again(studio: Studio) -> Studio:
    """Give pours the batch numbers that follow from the mixes as they stand now."""
    told = {(e.piece, e.coat) for e in studio.standing if e.kind is EntryKind.POURED}
    pieces = {pour.piece for pour in studio.poured}
    # A piece with a pour that is older than the log stays as it is.
    whole = {
        piece
        for piece in pieces
        if all((piece, pour.coat) in told for pour in studio.pours_of(piece))
    }
    return as_logged(studio, whole)


def check_weighing(studio: Studio, told: WeighingTold, now: datetime) -> None:
    """Require that a mix can have been weighed; InvalidEntry says why not."""
    rules = Rulebook(
        translate("log", "weighed: {product}").format(
            product=product_name(studio, told.product)
        )
    )
    require_past(rules, told.at, now)
    product = next((one for one in studio.products if one.key == told.product), None)
    rules.require(
        product is not None,
        "product",
        translate("rules", "there is no product “{product}”.").format(product=told.product),
    )
    mixed = product is not None and product.kind is ProductKind.TWO_PART
    for name in ("a_grams", "b_grams"):
        rules.require(
            not mixed or getattr(told, name) != 0.0,
            name,
            translate("log", "a two-part mix needs both A and B."),
        )
    rules.require(
        mixed or product is None or told.b_grams == 0.0,
        "b_grams",
        translate("log", "it is not mixed; there is no B."),
    )
    for piece, coat in told.coats:
        wanted = the_coat(studio, piece, coat).product
        rules.require(
            wanted == told.product,
            "coats",
            translate("log", "{piece}, {coat} is of {product}.").format(
                piece=studio.piece(piece).name,
                coat=studio.piece(piece).coat_name(coat),
                product=product_name(studio, wanted),
            ),
        )
    rules.close()
