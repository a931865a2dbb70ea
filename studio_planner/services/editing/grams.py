"""The grams that a coat takes and where they go, as the maker changes it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.amounts import CoatParts, coat_parts
from studio_planner.craft.pieces import CoatKind

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.studio import Studio

PUT_ON = ("film", "edges", "drips", "absorbed", "reserve")
"""The parts of a coat's grams, as `CoatParts` has them; what stays in cups is none of them."""


def grams_of(studio: Studio, piece: Piece, coat: Coat) -> float | None:
    """Mixed grams of a coat on the whole piece or set, without what stays in cups.

    `coat` may be another one than the piece has under its key; None for leaf, which weighs
    nothing.
    """
    parts = parts_of(studio, piece, coat)
    return None if parts is None else parts.grams


def parts_of(studio: Studio, piece: Piece, coat: Coat) -> CoatParts | None:
    """Where the grams of a coat go; None for leaf."""
    if coat.kind is CoatKind.LEAF:
        return None
    return coat_parts(piece, coat, studio.product(coat.product), studio.settings)


def together(parts: Iterable[CoatParts], portions: int = 1) -> dict[str, float]:
    """The parts of several coats in one portion of their mix, in grams by name.

    Examples
    --------
    >>> one = CoatParts(film=10.0, reserve=1.0)
    >>> together([one, one], portions=2)["film"]
    10.0
    """
    every = list(parts)
    return {name: sum(getattr(one, name) for one in every) / portions for name in PUT_ON}


def adding_up(grams: Mapping[str, float], step: float) -> dict[str, float]:
    """Parts rounded to whole steps [g] so that they add up to their rounded sum.

    Examples
    --------
    >>> adding_up({"film": 1.4, "edges": 1.4, "drips": 1.4}, 1.0)
    {'film': 1.0, 'edges': 2.0, 'drips': 1.0}
    """
    shown, before, whole = {}, 0.0, 0.0
    for name, part in grams.items():
        whole += part
        after = round(whole / step) * step
        shown[name], before = after - before, after
    return shown
