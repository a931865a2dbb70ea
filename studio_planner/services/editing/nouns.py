"""Adding, replacing, copying, removing and moving the things that a studio has many of."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING, Literal, TypeVar

from studio_planner.craft.hands import Person
from studio_planner.craft.orders import Order
from studio_planner.craft.pieces import Piece, StackPattern
from studio_planner.craft.places import Place
from studio_planner.craft.products import Product
from studio_planner.services.editing.remembering import keys_once_given, with_memory

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.stock import Lot
    from studio_planner.craft.studio import Studio

Field = Literal["places", "products", "people", "patterns", "pieces", "orders"]
"""The fields of a studio that hold many of one noun, each with its key."""

Thing = Place | Product | Person | StackPattern | Piece | Order

_ThingT = TypeVar("_ThingT", Place, Product, Person, StackPattern, Piece, Order)

_FIELDS: dict[type[Thing], Field] = {
    Place: "places",
    Product: "products",
    Person: "people",
    StackPattern: "patterns",
    Piece: "pieces",
    Order: "orders",
}


def field_of(kind: type[Thing]) -> Field:
    """The field of a studio that holds things of that kind."""
    return _FIELDS[kind]


def with_thing(studio: Studio, thing: Thing) -> Studio:
    """Put a thing in the place of the one with its key, or at the end where there is none."""
    field = field_of(type(thing))
    things: tuple[Thing, ...] = getattr(studio, field)
    if any(one.key == thing.key for one in things):
        new = tuple(thing if one.key == thing.key else one for one in things)
    else:
        new = (*things, thing)
    return _with(studio, field, new)


def without_thing(studio: Studio, kind: type[Thing], key: str) -> Studio:
    """Take a thing out; a piece leaves its order and its pins, an empty order goes too.

    What the log tells of it stays to be read under its name. InvalidEntry when something else
    still needs it, such as a coat its product.
    """
    field = field_of(kind)
    things: tuple[Thing, ...] = getattr(studio, field)
    new = tuple(one for one in things if one.key != key)
    leaving = [one for one in things if one.key == key]
    if kind is not Piece:
        spoken_of = [one for one in leaving if isinstance(one, Order | Product)]
        gone, lots = with_memory(studio, spoken_of), _free(studio, leaving)
        return _with(studio, field, new, gone=gone, lots=lots)
    emptied = [order for order in studio.orders if order.pieces == (key,)]
    orders = tuple(
        replace(order, pieces=tuple(piece for piece in order.pieces if piece != key))
        for order in studio.orders
        if order not in emptied
    )
    pins = tuple(pin for pin in studio.pins if pin.piece != key)
    poured = tuple(pour for pour in studio.poured if pour.piece != key)
    return replace(
        studio,
        pieces=tuple(piece for piece in studio.pieces if piece.key != key),
        orders=orders,
        pins=pins,
        poured=poured,
        lots=_free(studio, emptied),
        gone=with_memory(
            studio, [*(one for one in leaving if isinstance(one, Piece)), *emptied]
        ),
    )


def moved_thing(studio: Studio, kind: type[Thing], key: str, to: int) -> Studio:
    """Move a thing to another position among its kind, 0 for the first."""
    field = field_of(kind)
    things: tuple[Thing, ...] = getattr(studio, field)
    moving = next(one for one in things if one.key == key)
    rest = [one for one in things if one.key != key]
    rest.insert(to, moving)
    return _with(studio, field, tuple(rest))


def copy_of(studio: Studio, thing: _ThingT) -> _ThingT:
    """Give a copy of a thing under a key and a name that are not taken yet."""
    things: tuple[Thing, ...] = getattr(studio, field_of(type(thing)))
    name = free_name((one.name for one in things), thing.name)
    return replace(thing, key=key_for(studio, type(thing), name), name=name)


def key_for(studio: Studio, kind: type[Thing], name: str) -> str:
    """Make a key that no thing of that kind has, or had when something was written of it."""
    things: tuple[Thing, ...] = getattr(studio, field_of(kind))
    return free_key((*(one.key for one in things), *keys_once_given(studio, kind)), name)


def free_key(taken: Iterable[str], name: str) -> str:
    """Make a key from a name: small letters, figures and hyphens, not among those taken."""
    stem = re.sub(r"[^a-z0-9]+", "-", name.lower()).strip("-") or "one"
    used = set(taken)
    if stem not in used:
        return stem
    number = 2
    while f"{stem}-{number}" in used:
        number += 1
    return f"{stem}-{number}"


def free_name(taken: Iterable[str], name: str) -> str:
    """Give the name itself, or with the next number behind it where it is taken."""
    used = set(taken)
    if name not in used:
        return name
    stem = re.sub(r" \d+$", "", name)
    number = 2
    while f"{stem} {number}" in used:
        number += 1
    return f"{stem} {number}"


def _free(studio: Studio, leaving: Iterable[Thing]) -> tuple[Lot, ...]:
    """The bottles, none of them kept for an order that leaves."""
    orders = {one.key for one in leaving if isinstance(one, Order)}
    return tuple(
        replace(lot, kept_for="") if lot.kept_for in orders else lot for lot in studio.lots
    )


def _with(studio: Studio, field: Field, things: tuple[Thing, ...], **rest: object) -> Studio:
    # The fields and their things belong together; the type checker cannot see that.
    return replace(studio, **{field: things}, **rest)  # type: ignore[arg-type]
