"""Which stages of the data sheets a plan goes by, where a sheet does not know all of them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Joint
from studio_planner.craft.products import ProductKind
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio

_GATES = (Stage.HANDLE, Stage.PRINT_FREE, Stage.FULL_CURE)


def handle_stage(product: Product) -> Stage | None:
    """The stage that ends a product's stay on its spot: handle, or the next later one."""
    return gate_stage(product, Stage.HANDLE)


def cover_stage(product: Product) -> Stage | None:
    """The stage from which a wet face takes no harm from dust."""
    stages = (Stage.COVER, Stage.TACK_FREE, Stage.RECOAT_OPENS)
    return next((stage for stage in stages if product.figures(stage)), None)


def gate_stage(product: Product, wished: Stage) -> Stage | None:
    """The wished gate, or the next later one that the product's sheet has."""
    later = _GATES[_GATES.index(wished) :]
    return next((stage for stage in later if product.figures(stage)), None)


def gate_coats(studio: Studio, piece: Piece, stage: Stage) -> list[Coat]:
    """The coats that hold a gate closed.

    All but size and leaf, and one-part primer that can be handled, under other coats whose
    sheets know neither the gate nor a later one.
    """
    return [coat for coat in piece.stack if not _skipped(studio, piece, coat, stage)]


def _is_thin(product: Product) -> bool:
    if product.kind is ProductKind.PRIMER:
        return bool(product.figures(Stage.HANDLE))
    return product.kind in {ProductKind.LEAF, ProductKind.SIZE}


def _skipped(studio: Studio, piece: Piece, coat: Coat, stage: Stage) -> bool:
    product = studio.product(coat.product)
    return (
        _is_thin(product) and gate_stage(product, stage) is None and under_another(piece, coat)
    )


def under_another(piece: Piece, coat: Coat) -> bool:
    """Tell whether a later coat of the piece lies on this one."""
    return any(later.touches(coat) for later in piece.stack[piece.position(coat.key) + 1 :])


def window_stages(
    studio: Studio, piece: Piece, index: int
) -> tuple[Stage | None, Stage | None]:
    """The stages of the coat below that open and close a coat's joint; None: no such edge."""
    below = piece.below(index)
    if below is None:
        return None, None
    product = studio.product(piece.stack[below].product)
    if piece.stack[index].joint is Joint.WET_IN_WET:
        return None, Stage.WORKING_TIME
    opens = Stage.RECOAT_OPENS
    if piece.stack[index].joint is Joint.ON_DRY and not product.figures(opens):
        opens = Stage.TACK_FREE
    closes = Stage.RECOAT_CLOSES if product.figures(Stage.RECOAT_CLOSES) else None
    if _leaf_says_nothing(piece.stack[index], product):
        return None, closes
    return opens, closes


def _leaf_says_nothing(coat: Coat, below: Product) -> bool:
    """Leaf has no film: where its sheet is silent, a coat meant for dry may follow at once."""
    silent = not below.figures(Stage.RECOAT_OPENS) and not below.figures(Stage.TACK_FREE)
    return coat.joint is Joint.ON_DRY and below.kind is ProductKind.LEAF and silent


def window_unknown(studio: Studio, piece: Piece, index: int) -> bool:
    """Tell whether a two-part mix below does not say when its window closes."""
    below = piece.below(index)
    if below is None or piece.stack[index].joint is not Joint.IN_WINDOW:
        return False
    product = studio.product(piece.stack[below].product)
    return product.kind is ProductKind.TWO_PART and not product.figures(Stage.RECOAT_CLOSES)


def may_scuff(studio: Studio, piece: Piece, index: int) -> bool:
    """Tell whether a coat holds on the one below once it is sanded, and from when that can be.

    So it is where the coat below can be sanded, and its sheet says from when on.
    """
    below = piece.below(index)
    if below is None or not piece.stack[index].holds_on_sanded:
        return False
    lower = piece.stack[below]
    return lower.sandable and bool(studio.product(lower.product).figures(Stage.SANDABLE))
