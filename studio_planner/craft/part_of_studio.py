"""A part of a studio that can be planned by itself: some pieces, and what bears on them."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Collection

    from studio_planner.craft.log import LogEntry
    from studio_planner.craft.studio import Studio


def part_of(studio: Studio, pieces: Collection[str], orders: Collection[str]) -> Studio:
    """The studio with only those pieces and orders (keys), and without a plan.

    An order keeps those of its pieces that are left, and goes when none is. Of the log only
    what stands about the pieces is left; bottles, mixes and what is gone are left out, since no
    plan asks for them.
    """
    kept = tuple(
        replace(order, pieces=tuple(key for key in order.pieces if key in pieces))
        for order in studio.orders
        if order.key in orders and any(key in pieces for key in order.pieces)
    )
    return replace(
        studio,
        pieces=tuple(piece for piece in studio.pieces if piece.key in pieces),
        orders=kept,
        poured=tuple(
            replace(pour, batch=None) for pour in studio.poured if pour.piece in pieces
        ),
        pins=tuple(pin for pin in studio.pins if pin.piece in pieces),
        lots=(),
        log=_log_about(studio, pieces, {order.key for order in kept}),
        mixes=(),
        gone=(),
        plan=None,
    )


def _log_about(
    studio: Studio, pieces: Collection[str], orders: Collection[str]
) -> tuple[LogEntry, ...]:
    about = (entry for entry in studio.standing if entry.piece in pieces)
    return tuple(
        replace(entry, corrects=None, batch=None, order=_if_in(entry.order, orders))
        for entry in sorted(about, key=lambda entry: entry.number)
    )


def _if_in(order: str, orders: Collection[str]) -> str:
    return order if order in orders else ""
