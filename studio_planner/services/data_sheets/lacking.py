"""What the sheets of a studio lack for a plan."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.products import ProductKind
from studio_planner.craft.tongue import listed, translate
from studio_planner.science.stages import Stage
from studio_planner.services.needs import Need, SetUpStep

if TYPE_CHECKING:
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio

_HANDLED = (Stage.HANDLE, Stage.PRINT_FREE, Stage.FULL_CURE)
"""From the first of these that its sheet knows, a piece may be taken off its spot."""


def product_step(studio: Studio) -> SetUpStep:
    """How far the products of a studio can be planned with."""
    if not studio.products:
        lacking = translate(
            "set up", "There is no product yet: add one with the figures of its data sheet."
        )
        return SetUpStep(need=Need.PRODUCT, there="", lacking=(lacking,))
    there = listed(product.name for product in studio.products)
    faults = {product.key: _sheet_faults(product) for product in studio.products}
    knowing = [words for product in studio.products for words in faults[product.key]]
    stopped, words = _stopped_pieces(studio)
    knowing += [one for one in words if one not in knowing]
    nothing = all(faults[product.key][:1] and _dead(product) for product in studio.products)
    every = bool(studio.pieces) and stopped == len(studio.pieces)
    if nothing or every:
        return SetUpStep(need=Need.PRODUCT, there=there, lacking=tuple(knowing))
    return SetUpStep(need=Need.PRODUCT, there=there, knowing=tuple(knowing))


def _dead(product: Product) -> bool:
    """Whether no piece can ever be planned with a product, as its sheet is now."""
    cures = product.kind in {ProductKind.TWO_PART, ProductKind.PRIMER}
    return cures and not any(product.figures(stage) for stage in _HANDLED)


def _sheet_faults(product: Product) -> list[str]:
    if product.kind is not ProductKind.TWO_PART:
        return [_no_handle(product)] if _dead(product) else []
    found = [_no_handle(product)] if _dead(product) else []
    opens, closes = (product.figures(s) for s in (Stage.RECOAT_OPENS, Stage.RECOAT_CLOSES))
    if not opens:
        found.append(
            translate(
                "set up",
                "{product}: the sheet has no figure for when recoat opens, so no coat can "
                "follow in its window.",
            ).format(product=product.name)
        )
    elif not closes:
        found.append(
            translate(
                "set up",
                "{product}: the sheet has no figure for when recoat closes, so every coat "
                "upon it has to be scuffed.",
            ).format(product=product.name)
        )
    return found


def _no_handle(product: Product) -> str:
    return translate(
        "set up",
        "{product}: the sheet has no figure for handle, print-free or full cure, so a piece "
        "would never leave its spot; add one from the sheet.",
    ).format(product=product.name)


def _stopped_pieces(studio: Studio) -> tuple[int, list[str]]:
    """How many pieces lack figures of their products, and the sentences about them."""
    # Only a maker who looks at the set-up asks this; the window opens without it.
    from studio_planner.planning.missing_figures import missing_figures  # noqa: PLC0415
    from studio_planner.planning.saying import said_once  # noqa: PLC0415

    faults = [missing_figures(studio, piece) for piece in studio.pieces]
    words = said_once(row.reason for rows in faults for row in rows)
    return sum(1 for rows in faults if rows), [str(one) for one in words]
