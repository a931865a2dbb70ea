"""Which rules the bottles of a studio keep among its products and orders."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

from studio_planner.craft.products import ProductKind
from studio_planner.craft.stock import LotPart
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from studio_planner.craft.errors import Rulebook
    from studio_planner.craft.orders import Order
    from studio_planner.craft.pigments import Pigment
    from studio_planner.craft.products import Product
    from studio_planner.craft.stock import Lot


class Stocked(Protocol):
    """What of a studio is looked at."""

    @property
    def lots(self) -> tuple[Lot, ...]:
        """Its bottles."""
        ...

    @property
    def products(self) -> tuple[Product, ...]:
        """Its products."""
        ...

    @property
    def pigments(self) -> tuple[Pigment, ...]:
        """Its pigments."""
        ...

    @property
    def orders(self) -> tuple[Order, ...]:
        """Its orders."""
        ...


def check_stock(studio: Stocked, rules: Rulebook) -> None:
    """Note every bottle whose product, part or order does not fit the studio."""
    products = {product.key: product for product in studio.products}
    pigments = {pigment.key for pigment in studio.pigments}
    orders = {order.key for order in studio.orders}
    for lot in studio.lots:
        where = f"lot {lot.label}"
        if lot.part is LotPart.COLOURANT:
            rules.require(
                lot.product in pigments,
                f"{where}, product",
                translate("rules", "there is no pigment “{pigment}”.").format(
                    pigment=lot.product
                ),
            )
        else:
            _check_product(lot, products.get(lot.product), where, rules)
        rules.require(
            not lot.kept_for or lot.kept_for in orders,
            f"{where}, kept_for",
            translate("rules", "there is no order “{order}”.").format(order=lot.kept_for),
        )


def _check_product(lot: Lot, product: Product | None, where: str, rules: Rulebook) -> None:
    if product is None:
        said = translate("rules", "there is no product “{product}”.")
        rules.require(False, f"{where}, product", said.format(product=lot.product))  # noqa: FBT003
        return
    mixed = product.kind is ProductKind.TWO_PART
    rules.require(
        mixed == (lot.part is not LotPart.WHOLE),
        f"{where}, part",
        translate("rules", "say whether it is part A or part B.")
        if mixed
        else translate("rules", "a product that is not mixed has no part A or B."),
    )
