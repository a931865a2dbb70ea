"""Colour recipes used before: what was in the mix that made that blue."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Colour, Piece
    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True)
class Recipe:
    """A colour as it was mixed before, and the piece and coat that it was mixed for."""

    colour: Colour
    piece: str
    coat: str


def recipes_before(studio: Studio, piece: str) -> tuple[Recipe, ...]:
    """The colours of other pieces, by name; one that several pieces share is given once."""
    found: dict[tuple[str, str, float], Recipe] = {}
    for other in studio.pieces:
        if other.key != piece:
            for recipe in _of_piece(other):
                colour = recipe.colour
                seen = (colour.name.casefold(), colour.colourant, colour.colourant_pct)
                found.setdefault(seen, recipe)
    return tuple(
        sorted(found.values(), key=lambda one: (one.colour.name.casefold(), one.piece))
    )


def _of_piece(piece: Piece) -> list[Recipe]:
    return [
        Recipe(colour, piece.name, piece.coat_name(coat.key))
        for coat in piece.stack
        for colour in coat.colours
    ]
