"""Removing pieces: what that is called, and which orders go with them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.desktop.piece_pages.piece_lines import names_line
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.pieces import orders_going_with, without_pieces

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.orders import Order
    from studio_planner.craft.studio import Studio


def removal(studio: Studio, keys: Sequence[str]) -> tuple[Change, str]:
    """The change that removes pieces, and what is to be said of the orders that go too."""
    pieces = names_line(studio.piece(keys[0]), len(keys))
    orders = orders_going_with(studio, keys)
    words, news = _words(pieces, orders)
    return Change(words, lambda now: without_pieces(now, keys)), news


def _words(pieces: str, orders: Sequence[Order]) -> tuple[str, str]:
    if not orders:
        return translate("pieces", "Remove {pieces}").format(pieces=pieces), ""
    names = ", ".join(order.name for order in orders)
    if len(orders) == 1:
        words = translate("pieces", "Remove {pieces} and order {order}")
        news = translate(
            "pieces", "Order {order} has no piece left and goes too. Ctrl+Z brings all back."
        )
        return words.format(pieces=pieces, order=names), news.format(order=names)
    words = translate("pieces", "Remove {pieces} and {count} orders")
    news = translate(
        "pieces",
        "These orders have no piece left and go too: {orders}. Ctrl+Z brings all back.",
    )
    return words.format(pieces=pieces, count=len(orders)), news.format(orders=names)
