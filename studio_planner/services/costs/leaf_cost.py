"""What leaf costs on a piece: it is laid by the sheet, not weighed.

    leaves = area of the coat / area of a leaf, with the waste of the studio's own rule on top

A leaf that is left over in part goes on the next faults, so that parts of leaves count.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.amounts import coat_area_cm2, edge_area_cm2
from studio_planner.craft.products import ProductKind

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.studio import Studio

_MM2_PER_CM2 = 100.0


def leaf_coats(studio: Studio, piece: Piece) -> tuple[Coat, ...]:
    """The coats of a piece that are leaf."""
    return tuple(
        coat for coat in piece.stack if studio.product(coat.product).kind is ProductKind.LEAF
    )


def leaf_price(studio: Studio, piece: Piece, coat: Coat) -> float | None:
    """What the leaf of a coat costs; None where nobody entered its size and its price.

    In the studio's currency, for the whole piece or set.
    """
    leaf = studio.product(coat.product)
    if leaf.leaf_mm is None or leaf.leaf_price <= 0.0:
        return None
    return leaves_for(studio, piece, coat, leaf.leaf_mm) * leaf.leaf_price


def leaves_for(studio: Studio, piece: Piece, coat: Coat, leaf_mm: float) -> float:
    """How many leaves of a side of so many mm a coat takes, with what overlaps and tears."""
    area = (coat_area_cm2(piece, coat) + edge_area_cm2(piece, coat)) * piece.count
    waste = 1.0 + studio.prices.leaf_waste_pct / 100.0
    return area * _MM2_PER_CM2 * waste / leaf_mm**2
