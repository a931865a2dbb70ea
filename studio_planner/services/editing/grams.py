"""The grams that a coat takes, as the maker changes it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.amounts import coat_grams
from studio_planner.craft.pieces import CoatKind

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.studio import Studio


def grams_of(studio: Studio, piece: Piece, coat: Coat) -> float | None:
    """Mixed grams of a coat on the whole piece or set, without what stays in cups.

    `coat` may be another one than the piece has under its key; None for leaf, which weighs
    nothing.
    """
    if coat.kind is CoatKind.LEAF:
        return None
    return coat_grams(piece, coat, studio.product(coat.product), studio.settings)
