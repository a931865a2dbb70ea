"""The hands-on block of a coat that is poured by itself, as the planner counts it."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.amounts import attended_minutes

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.studio import Studio


def block_of(studio: Studio, piece: Piece, coat: Coat) -> timedelta:
    """The block of a coat of a whole piece or set that shares its mix with no other."""
    product = studio.product(coat.product)
    return timedelta(minutes=attended_minutes([(piece, coat)], product, studio.settings))
