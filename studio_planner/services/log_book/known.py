"""The things that an entry speaks of, which have to be there."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.errors import BrokenRule, InvalidEntry
from studio_planner.craft.log import GoneKind
from studio_planner.craft.log_rules import gone_of
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.studio import Studio


def the_piece(studio: Studio, key: str) -> Piece:
    """The piece of that key; InvalidEntry when there is none."""
    found = next((piece for piece in studio.pieces if piece.key == key), None)
    if found is None:
        said = translate("rules", "there is no piece “{key}”.").format(key=key)
        raise InvalidEntry(translate("nouns", "log"), [BrokenRule("piece", said)])
    return found


def the_coat(studio: Studio, piece: str, key: str) -> Coat:
    """The coat of that key on a piece; InvalidEntry when there is none."""
    stack = the_piece(studio, piece).stack
    found = next((coat for coat in stack if coat.key == key), None)
    if found is None:
        said = translate("log", "there is no coat “{key}”; the stack is {what}.").format(
            key=key, what=", ".join(coat.key for coat in stack)
        )
        raise InvalidEntry(studio.piece(piece).name, [BrokenRule("coat", said)])
    return found


def piece_name(studio: Studio, key: str) -> str:
    """What a piece is called, or was called when it was still there."""
    found = next((piece.name for piece in studio.pieces if piece.key == key), None)
    return found or _gone_name(studio, GoneKind.PIECE, key)


def order_name(studio: Studio, key: str) -> str:
    """What an order is called, or was called."""
    found = next((order.name for order in studio.orders if order.key == key), None)
    return found or _gone_name(studio, GoneKind.ORDER, key)


def product_name(studio: Studio, key: str) -> str:
    """What a product is called, or was called."""
    found = next((one.name for one in studio.products if one.key == key), None)
    return found or _gone_name(studio, GoneKind.PRODUCT, key)


def coat_name(studio: Studio, piece: str, key: str) -> str:
    """What a coat of a piece is called; its key where the stack has it no longer."""
    found = next((one for one in studio.pieces if one.key == piece), None)
    known = found is not None and any(coat.key == key for coat in found.stack)
    return found.coat_name(key) if found is not None and known else key


def spot_name(studio: Studio, key: str) -> str:
    """What a spot is called; its key where it is there no longer."""
    return next((spot.name for spot in studio.spots if spot.key == key), key)


def _gone_name(studio: Studio, kind: GoneKind, key: str) -> str:
    gone = gone_of(studio, kind, key)
    return key if gone is None else gone.name
