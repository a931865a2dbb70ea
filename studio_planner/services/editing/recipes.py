"""Colour recipes used before: what was in the mix that made that blue."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Colour, Piece
    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True)
class Recipe:
    """A colour as it was mixed before, and the piece and coat that it was mixed for.

    `photo` is the key of the last picture of that piece; empty without one.
    """

    colour: Colour
    piece: str
    coat: str
    photo: str = ""


def recipes_before(studio: Studio, piece: str) -> tuple[Recipe, ...]:
    """The colours of other pieces, by name.

    One that several pieces share is given once, of a piece with a photo where there is one.
    """
    found: dict[tuple[str, str, float], Recipe] = {}
    for other in studio.pieces:
        if other.key != piece:
            for recipe in _of_piece(other):
                colour = recipe.colour
                seen = (colour.name.casefold(), colour.colourant, colour.colourant_pct)
                if seen not in found or (recipe.photo and not found[seen].photo):
                    found[seen] = recipe
    return tuple(
        sorted(found.values(), key=lambda one: (one.colour.name.casefold(), one.piece))
    )


def _of_piece(piece: Piece) -> list[Recipe]:
    photos = sorted(piece.photos, key=lambda photo: photo.taken)
    photo = photos[-1].key if photos else ""
    return [
        Recipe(colour, piece.name, piece.coat_name(coat.key), photo)
        for coat in piece.stack
        for colour in coat.colours
    ]
