"""What a maker should know before weighing a mix."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.products import ProductKind
from studio_planner.science.film_limits import (
    ALL_COLOURANTS_CEILING,
    COLOURANT_LIMITS,
    Colourant,
)

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Coat, Colour
    from studio_planner.craft.products import Product

_ADDED = 1.005
"""From half a per cent on it is worth saying that a mix is larger than it has to be."""


def notes_on(product: Product, coat: Coat, needed: float, total: float) -> tuple[str, ...]:
    """Give the sentences on one mix: what is not weighed, the smallest mix, much colourant.

    `needed` is what the coats and the cups take, `total` what is weighed, both in grams.
    """
    if product.kind is ProductKind.LEAF:
        return ("Leaf is laid, not weighed.",)
    notes = [note for colour in coat.colours if (note := _ceiling_note(colour))]
    # Glitter is meant to stand out of the film and has a ceiling of its own.
    share = (
        sum(
            c.share_pct * c.colourant_pct
            for c in coat.colours
            if _kind_of(c) is not Colourant.GLITTER
        )
        / 10_000.0
    )
    if share > ALL_COLOURANTS_CEILING and not notes:
        notes.append(
            f"All colourants together are {100 * share:.1f} % of the mix; that is much."
        )
    if total > needed * _ADDED and total - needed > 1.0:
        notes.append(
            f"{needed:.1f} g would do, but less than {total:g} g cannot be weighed exactly "
            "enough on this scale."
        )
    return tuple(notes)


def _kind_of(colour: Colour) -> Colourant | None:
    kind = colour.colourant.strip().casefold().replace(" ", "_")
    return Colourant(kind) if kind in set(Colourant) else None


def _ceiling_note(colour: Colour) -> str:
    kind = _kind_of(colour)
    limit = None if kind is None else COLOURANT_LIMITS[kind]
    if limit is None or colour.colourant_pct <= 100.0 * limit.ceiling:
        return ""
    return (
        f"{colour.name}: {colour.colourant_pct:g} % of {colour.colourant} is over the usual "
        f"ceiling of {100.0 * limit.ceiling:g} % ({limit.reason}); ask the product's sheet."
    )
