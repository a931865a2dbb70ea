"""Which rules the coats of pieces and patterns keep among the products of a studio."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

from studio_planner.craft.pieces import EDGE, UNDERSIDE, CoatKind
from studio_planner.craft.products import ProductKind
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.errors import Rulebook
    from studio_planner.craft.pieces import Coat, Piece, StackPattern
    from studio_planner.craft.products import Product
    from studio_planner.craft.settings import Settings


class Stacked(Protocol):
    """What of a studio is looked at."""

    @property
    def pieces(self) -> tuple[Piece, ...]:
        """Its pieces."""
        ...

    @property
    def patterns(self) -> tuple[StackPattern, ...]:
        """Its stack patterns."""
        ...

    @property
    def products(self) -> tuple[Product, ...]:
        """Its products."""
        ...

    @property
    def settings(self) -> Settings:
        """Its rules of thumb."""
        ...


def check_stacks(studio: Stacked, rules: Rulebook) -> None:
    """Note every coat whose product there is not, or whose film does not go with it."""
    products = {product.key: product for product in studio.products}
    for piece in studio.pieces:
        for coat in piece.stack:
            where = f"piece {piece.name}, coat {coat.key}"
            product = _product_of(coat, products, where, rules)
            if product is not None:
                _check_film(coat, product, where, rules)
                _check_run_off(coat, piece, studio.settings.film_refuse_mm, where, rules)
    for pattern in studio.patterns:
        for coat in pattern.stack:
            where = f"stack pattern {pattern.name}, coat {coat.key}"
            _product_of(coat, products, where, rules)


def _product_of(
    coat: Coat, products: Mapping[str, Product], where: str, rules: Rulebook
) -> Product | None:
    product = products.get(coat.product)
    rules.require(
        product is not None,
        f"{where}, product",
        translate("rules", "there is no product “{product}”.").format(product=coat.product),
    )
    return product


def _check_film(coat: Coat, product: Product, where: str, rules: Rulebook) -> None:
    limit = product.depth_limit_mm
    rules.require(
        limit is None or coat.film_mm <= limit,
        f"{where}, film_mm",
        translate(
            "rules", "{film_mm:g} mm is deeper than the {limit:g} mm of {product}."
        ).format(film_mm=coat.film_mm, limit=limit or 0.0, product=product.name),
    )
    rules.require(
        (coat.kind is CoatKind.LEAF) == (product.kind is ProductKind.LEAF),
        f"{where}, product",
        translate("rules", "leaf is laid from a leaf product, and nothing else is."),
    )


def _check_run_off(
    coat: Coat, piece: Piece, refuse_mm: float, where: str, rules: Rulebook
) -> None:
    # A rim stands around the top: it holds nothing on the underside or the edge alone.
    inside = bool(coat.faces - {UNDERSIDE, EDGE})
    rules.require(
        coat.film_mm <= (max(refuse_mm, piece.rim_mm) if inside else refuse_mm),
        f"{where}, film_mm",
        translate(
            "rules", "{film_mm:g} mm runs off a piece without a rim; {refuse:g} mm is most."
        ).format(film_mm=coat.film_mm, refuse=refuse_mm),
    )
