"""What is remembered of a thing that is taken out, because the log speaks of it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.log import Gone, GoneKind
from studio_planner.craft.orders import Order
from studio_planner.craft.pieces import Piece
from studio_planner.craft.products import Product

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.studio import Studio

_KINDS: dict[type, GoneKind] = {
    Piece: GoneKind.PIECE,
    Order: GoneKind.ORDER,
    Product: GoneKind.PRODUCT,
}


def keys_once_given(studio: Studio, kind: type) -> tuple[str, ...]:
    """The keys of things of a kind that are gone, which nothing new may get."""
    gone = _KINDS.get(kind)
    return tuple(one.key for one in studio.gone if one.kind is gone)


def with_memory(studio: Studio, things: Iterable[Piece | Order | Product]) -> tuple[Gone, ...]:
    """What is gone once those things are taken out, as far as the log speaks of them."""
    spoken = _spoken_of(studio)
    new = (_memory_of(studio, thing) for thing in things)
    return (*studio.gone, *(one for one in new if one.key in spoken[one.kind]))


def _memory_of(studio: Studio, thing: Piece | Order | Product) -> Gone:
    order = studio.order_of(thing.key) if isinstance(thing, Piece) else None
    return Gone(
        kind=_KINDS[type(thing)],
        key=thing.key,
        name=thing.name,
        order=order.key if order else "",
    )


def _spoken_of(studio: Studio) -> dict[GoneKind, set[str]]:
    pieces = {entry.piece for entry in studio.log}
    pieces |= {one.piece for mix in studio.mixes for one in mix.coats}
    orders = {entry.order for entry in studio.log}
    # Whose a piece was is asked for long after the order has gone.
    orders |= {order.key for order in studio.orders if pieces & set(order.pieces)}
    orders |= {one.order for one in studio.gone}
    return {
        GoneKind.PIECE: pieces,
        GoneKind.ORDER: orders,
        GoneKind.PRODUCT: {mix.product for mix in studio.mixes},
    }
