"""What is said of a piece in one line: in the list, and under its name."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_word
from studio_planner.desktop import words
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.pieces import can_be_coated

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.studio import Studio
    from studio_planner.services.editing.stacks import StackHolder


def short_line(studio: Studio | None, piece: Piece) -> str:
    """How many coats a piece has, and its order."""
    order = studio.order_of(piece.key) if studio else None
    count = len(piece.stack)
    coats = (
        translate("pieces", "1 coat")
        if count == 1
        else translate("pieces", "{count} coats").format(count=count)
    )
    return ", ".join(filter(None, (coats, order.name if order else "")))


def full_line(studio: Studio | None, piece: Piece) -> str:
    """The blank, the order and the coats of a piece."""
    if studio is None:
        return ""
    order = studio.order_of(piece.key)
    coats = ", ".join(kind_word(coat.kind) for coat in piece.stack)
    blank = words.blank(piece, studio.units)
    return " · ".join(filter(None, (blank, order.name if order else "", coats)))


def blank_words(studio: Studio, piece: Piece, holder: StackHolder) -> str:
    """On what a pattern is looked at: a piece by name, or a bare board; empty for a piece."""
    if not holder.pattern:
        return ""
    pieces = {one.key: words.piece_name(one) for one in studio.pieces}
    return pieces.get(holder.blank, words.blank(piece, studio.units))


def head_line(studio: Studio | None, piece: Piece | None, count: int, *, searched: bool) -> str:
    """What stands over the chosen piece, one of `count`; what to do where there is none."""
    if studio is None:
        return translate("pieces", "Open a studio first.")
    if piece is not None and count > 1:
        return translate("pieces", "{piece}, one of {count} chosen").format(
            piece=piece.name, count=count
        )
    if piece is not None:
        return words.piece_name(piece)
    if not can_be_coated(studio):
        return translate("pieces", "A piece needs a coat; add a product first.")
    if searched:
        return translate("pieces", "No piece has those words.")
    return translate("pieces", "Add a piece to build its stack.")


def names_line(first: Piece | None, count: int) -> str:
    """The only piece by its name, of several how many there are."""
    if count == 1 and first is not None:
        return first.name
    return translate("pieces", "{count} pieces").format(count=count)
