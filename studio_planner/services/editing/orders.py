"""Entering orders: one that is new, and one that is made of what a form says."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING, Any

from studio_planner.craft.errors import BrokenRule, InvalidEntry
from studio_planner.craft.orders import Courier, Order
from studio_planner.craft.tongue import translate
from studio_planner.services.editing.nouns import free_name, key_for

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import date

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.studio import Studio

_AHEAD = timedelta(days=21)
"""How far off a promise is set until the maker says better (common practice: three weeks)."""

_OF_THE_COURIER = ("days", "cut_off", "transit_days")


def free_pieces(studio: Studio, order: str = "") -> tuple[Piece, ...]:
    """The pieces that are promised to nobody, and those of the order of that key."""
    taken = {key for one in studio.orders if one.key != order for key in one.pieces}
    return tuple(piece for piece in studio.pieces if piece.key not in taken)


def new_order(studio: Studio, today: date, name: str) -> Order:
    """Make an order of the first piece that is free; it goes as the last order does.

    InvalidEntry when every piece is promised already.
    """
    free = free_pieces(studio)
    if not free:
        rule = BrokenRule(
            "pieces", translate("orders", "every piece is promised already; add a piece first.")
        )
        raise InvalidEntry(translate("nouns", "new order"), [rule])
    own = free_name((one.name for one in studio.orders), name)
    return Order(
        key=key_for(studio, Order, own),
        name=own,
        pieces=(free[0].key,),
        promised=today + _AHEAD,
        courier=studio.orders[-1].courier if studio.orders else Courier(),
    )


def values_of(order: Order) -> dict[str, Any]:
    """What a form shows of an order, by the names of its fields; its courier's among them."""
    names = ("name", "promise", "promised", "opens", "gate", "packing_minutes", "weight")
    values = {name: getattr(order, name) for name in (*names, "pieces", "contact", "note")}
    return values | {name: getattr(order.courier, name) for name in _OF_THE_COURIER}


def order_with(order: Order, values: Mapping[str, Any]) -> Order:
    """The order as a form says it; InvalidEntry with every rule that it breaks."""
    courier = {name: values[name] for name in _OF_THE_COURIER}
    own = {name: value for name, value in values.items() if name not in courier}
    return replace(order, courier=Courier(**courier), **own)
