"""Stacks with one coat fewer, where that is a maker's to decide; each changes the piece.

What may go is a second flood, lock coat or top coat over one of its own kind: the finish stays
what it was, only thinner (common practice). Two such coats that follow each other from the same
product may become one where the data sheet's depth, the rim and the thickest film that holds
without one allow it. Nothing that is taped, trimmed, coloured or laid over leaf, size, glitter
or a one-part primer is left out.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.pieces import CoatKind, Joint
from studio_planner.craft.saying import Saying, saying
from studio_planner.craft.tongue import marked
from studio_planner.planning.late.what_if import Tried
from studio_planner.planning.saying import coat_said, listed

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.craft.orders import Order
    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.studio import Studio

_CLEAR = {CoatKind.FLOOD, CoatKind.LOCK, CoatKind.TOP_COAT}

_Less = tuple[Saying, tuple["Coat", ...]]
"""What is done to a piece in words, and its stack then."""


def fewer_coats(studio: Studio, order: Order) -> list[Tried]:
    """The order's pieces with one coat left out, and with two of them poured as one."""
    found = []
    for way in (_left_out, _as_one):
        tried = _tried(studio, order, way)
        if tried is not None:
            found.append(tried)
    return found


def _tried(
    studio: Studio, order: Order, way: Callable[[Studio, Piece], _Less | None]
) -> Tried | None:
    said: list[Saying] = []
    pieces = {piece.key: piece for piece in studio.pieces}
    for key in order.pieces:
        less = way(studio, pieces[key])
        if less is not None:
            said.append(less[0])
            pieces[key] = replace(pieces[key], stack=less[1])
    if not said:
        return None
    try:
        changed = replace(studio, pieces=tuple(pieces.values()))
    except InvalidEntry:
        return None
    text = (
        marked(
            "late",
            "leave out {coats} (this changes the piece, so it is for you and the customer to "
            "decide)",
        )
        if way is _left_out
        else marked(
            "late",
            "pour {coats} (this changes the piece, so it is for you and the customer to "
            "decide)",
        )
    )
    return Tried(saying("late", text, coats=listed(said)), changed, more=False)


def _left_out(studio: Studio, piece: Piece) -> _Less | None:
    for index in range(len(piece.stack) - 1, len(studio.pours_of(piece.key)) - 1, -1):
        if _may_go(piece, index):
            stack = (*piece.stack[:index], *piece.stack[index + 1 :])
            return coat_said(piece, piece.stack[index].key), stack
    return None


def _as_one(studio: Studio, piece: Piece) -> _Less | None:
    for index in range(len(piece.stack) - 1, len(studio.pours_of(piece.key)), -1):
        upper, lower = piece.stack[index], piece.stack[index - 1]
        film = upper.film_mm + lower.film_mm
        alike = (upper.product, upper.faces) == (lower.product, lower.faces)
        if alike and _may_go(piece, index) and _holds(studio, piece, upper.product, film):
            one = replace(upper, joint=lower.joint, film_mm=film)
            words = saying(
                "late",
                "the {lower} and {upper} as one of {film:g} mm",
                lower=piece.coat_name_said(lower.key),
                upper=coat_said(piece, upper.key),
                film=film,
            )
            return words, (*piece.stack[: index - 1], one, *piece.stack[index + 1 :])
    return None


def _may_go(piece: Piece, index: int) -> bool:
    """Tell whether a clear coat lies directly on another of its kind, and nothing needs it."""
    coat, below = piece.stack[index], piece.below(index)
    if below is None or not _plain(coat):
        return False
    lower = piece.stack[below]
    if lower.kind is not coat.kind or not _plain(lower) or not coat.faces <= lower.faces:
        return False
    above = [one for i, one in enumerate(piece.stack) if i > index and piece.below(i) == index]
    return all(one.joint is Joint.IN_WINDOW for one in (coat, *above))


def _plain(coat: Coat) -> bool:
    return coat.kind in _CLEAR and not (coat.taped or coat.trimmed or coat.colours)


def _holds(studio: Studio, piece: Piece, product: str, film_mm: float) -> bool:
    deepest = studio.product(product).depth_limit_mm
    runs_off = max(studio.settings.film_warn_mm, piece.rim_mm)
    return deepest is not None and film_mm <= min(deepest, runs_off)
