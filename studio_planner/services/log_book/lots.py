"""Lots in the mixes: keys of bottles, or what somebody read off a label."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from studio_planner.craft.mixes import WeighedMix
    from studio_planner.craft.studio import Studio


def lot_words(studio: Studio, text: str) -> str:
    """What is on the label of a lot that a mix names by key or by words."""
    return next((lot.label for lot in studio.lots if lot.key == text), text)


def lots_of(studio: Studio, mix: WeighedMix) -> frozenset[str]:
    """The lots of a mix, so that the same lot is the same text however it was noted.

    A bottle is named by its key. Words alone go with the product and the part, since two
    makers number their bottles alike.
    """
    named = ((mix.lot_a, "A"), (mix.lot_b, "B"))
    return frozenset(_same(studio, mix, text, part) for text, part in named if text.strip())


def _same(studio: Studio, mix: WeighedMix, text: str, part: str) -> str:
    wanted = text.strip().casefold()
    for lot in studio.lots:
        if lot.key == text or (lot.product == mix.product and lot.label.casefold() == wanted):
            return lot.key
    return f"{mix.product}/{part}/{wanted}"


def mixes_of_lot(studio: Studio, lot: str) -> tuple[WeighedMix, ...]:
    """The mixes, as they stand, that something of a lot is in; `lot` is its key or label."""
    wanted = lot.strip().casefold()
    alike = {wanted}
    for one in studio.lots:
        if wanted in {one.key.casefold(), one.label.casefold()}:
            alike |= {one.key.casefold(), one.label.casefold()}
    return tuple(
        mix
        for mix in studio.standing_mixes
        if alike & {mix.lot_a.strip().casefold(), mix.lot_b.strip().casefold()} - {""}
    )
