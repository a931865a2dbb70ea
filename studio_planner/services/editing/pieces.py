"""Entering pieces: one that is new, and the blank as a form says it."""

from __future__ import annotations

from dataclasses import replace
from enum import StrEnum
from typing import TYPE_CHECKING, Any

from studio_planner.craft.errors import BrokenRule, InvalidEntry
from studio_planner.craft.pieces import CoatKind, Material, Piece
from studio_planner.craft.products import ProductKind
from studio_planner.craft.shapes import FreeArea, Oval, Rectangle, Round
from studio_planner.craft.tongue import translate
from studio_planner.services.editing.new_coats import new_coat
from studio_planner.services.editing.nouns import (
    copy_of,
    free_name,
    key_for,
    with_thing,
    without_thing,
)

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping, Sequence

    from studio_planner.craft.orders import Order
    from studio_planner.craft.shapes import Shape
    from studio_planner.craft.studio import Studio

_PLAIN = (
    "name",
    "count",
    "material",
    "body_mm",
    "rim_mm",
    "clearance_mm",
    "cover_mm",
    "blank_price",
    "note",
)
_FIRST_COAT = {
    ProductKind.TWO_PART: CoatKind.SEAL,
    ProductKind.PRIMER: CoatKind.PRIME,
    ProductKind.SIZE: CoatKind.SIZE,
}


class Outline(StrEnum):
    """The outlines that a blank can have."""

    RECTANGLE = "rectangle"
    ROUND = "round"
    OVAL = "oval"
    MEASURED = "measured outline"


_OUTLINES: dict[type[Shape], Outline] = {
    Rectangle: Outline.RECTANGLE,
    Round: Outline.ROUND,
    Oval: Outline.OVAL,
    FreeArea: Outline.MEASURED,
}


def outline_of(shape: Shape) -> Outline:
    """The outline of a shape."""
    return _OUTLINES[type(shape)]


def can_be_coated(studio: Studio) -> bool:
    """Tell whether there is a product that a first coat can be made of."""
    return any(product.kind in _FIRST_COAT for product in studio.products)


def new_piece(studio: Studio, name: str) -> Piece:
    """A board of 300 by 200 mm with one coat of the first product that serves.

    InvalidEntry when no product does.
    """
    product = next((one for one in studio.products if one.kind in _FIRST_COAT), None)
    if product is None:
        said = translate("stacks", "a piece needs a coat; add a product under Products first.")
        raise InvalidEntry(translate("nouns", "new piece"), [BrokenRule("product", said)])
    own = free_name((piece.name for piece in studio.pieces), name)
    first = replace(new_coat(studio, _FIRST_COAT[product.kind], (), 0), product=product.key)
    return Piece(
        key=key_for(studio, Piece, own),
        name=own,
        shape=Rectangle(length_mm=300, width_mm=200),
        material=Material.MDF,
        body_mm=18,
        stack=(first,),
    )


def copied(studio: Studio, keys: Iterable[str]) -> tuple[Studio, tuple[str, ...]]:
    """Copy pieces, without order, pours and photos; the studio, and the copies' keys."""
    made = []
    for key in keys:
        copy = replace(copy_of(studio, studio.piece(key)), photos=())
        studio = with_thing(studio, copy)
        made.append(copy.key)
    return studio, tuple(made)


def orders_going_with(studio: Studio, keys: Iterable[str]) -> tuple[Order, ...]:
    """The orders that would be empty without those pieces, and go with them."""
    leaving = set(keys)
    return tuple(order for order in studio.orders if leaving.issuperset(order.pieces))


def without_pieces(studio: Studio, keys: Iterable[str]) -> Studio:
    """Take pieces out, from their orders too; an order that is empty then goes with them."""
    for key in keys:
        studio = without_thing(studio, Piece, key)
    return studio


def found(studio: Studio, words: str) -> tuple[Piece, ...]:
    """The pieces in which all those words occur: name, material, coats, colours, order."""
    wanted = words.casefold().split()
    return tuple(
        piece
        for piece in studio.pieces
        if all(word in _all_words(studio, piece) for word in wanted)
    )


def _all_words(studio: Studio, piece: Piece) -> str:
    order = studio.order_of(piece.key)
    said = [piece.name, str(piece.material), piece.note, order.name if order else ""]
    for coat in piece.stack:
        said += [str(coat.kind), studio.product(coat.product).name, *coat.colour_names]
    return " ".join(said).casefold()


def values_of(studio: Studio, piece: Piece) -> dict[str, Any]:
    """What a form shows of a blank, by the names of its fields; sizes for every outline."""
    shape, own = piece.shape, piece.footprint_mm
    order = studio.order_of(piece.key)
    return {name: getattr(piece, name) for name in _PLAIN} | {
        "outline": outline_of(shape),
        "length_mm": shape.length_mm,
        "width_mm": shape.width_mm,
        "diameter_mm": shape.length_mm,
        "area_cm2": shape.area_cm2,
        "perimeter_mm": shape.perimeter_mm,
        "footprint_mm": own[0] if own else None,
        "footprint_width": own[1] if own else None,
        "order": order.key if order else None,
    }


def with_values(studio: Studio, piece: Piece, values: Mapping[str, Any]) -> Studio:
    """The studio with the blank as a form says it; InvalidEntry with all that it breaks."""
    plain = {name: values[name] for name in _PLAIN}
    new = replace(piece, shape=_shape(values), footprint_mm=_footprint(values), **plain)
    return _promised(with_thing(studio, new), new, values["order"])


def _shape(values: Mapping[str, Any]) -> Shape:
    match values["outline"]:
        case Outline.ROUND:
            return Round(diameter_mm=values["diameter_mm"])
        case Outline.OVAL:
            return Oval(length_mm=values["length_mm"], width_mm=values["width_mm"])
        case Outline.MEASURED:
            return FreeArea(
                area_cm2=values["area_cm2"],
                perimeter_mm=values["perimeter_mm"],
                length_mm=values["length_mm"],
                width_mm=values["width_mm"],
            )
        case _:
            return Rectangle(length_mm=values["length_mm"], width_mm=values["width_mm"])


def _footprint(values: Mapping[str, Any]) -> tuple[float, float] | None:
    sides = values["footprint_mm"], values["footprint_width"]
    if sides == (None, None):
        return None
    if None in sides:
        sentence = translate(
            "stacks", "give both sides, or neither: then it follows from the shape."
        )
        raise InvalidEntry(
            translate("nouns", "footprint"), [BrokenRule("footprint_mm", sentence)]
        )
    return sides


def _promised(studio: Studio, piece: Piece, order: str | None) -> Studio:
    """Let a piece belong to another order, or to none."""
    before = studio.order_of(piece.key)
    if order == (before.key if before else None):
        return studio
    if before is not None and before.pieces == (piece.key,):
        sentence = translate(
            "stacks",
            "{order} would have no piece left; give it another one, or remove it first.",
        ).format(order=before.name)
        raise InvalidEntry(
            translate("nouns", "piece {name}").format(name=piece.name),
            [BrokenRule("order", sentence)],
        )
    orders = tuple(
        replace(one, pieces=_pieces_with(one.pieces, piece.key, here=one.key == order))
        for one in studio.orders
    )
    return replace(studio, orders=orders)


def _pieces_with(pieces: Sequence[str], key: str, *, here: bool) -> tuple[str, ...]:
    rest = tuple(one for one in pieces if one != key)
    return (*rest, key) if here else rest
