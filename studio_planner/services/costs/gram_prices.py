"""What a gram of each part and each colourant costs."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.stock import LotPart
from studio_planner.services.colour_stuff import kind_called, pigment_called
from studio_planner.services.stocks.levels import lot_levels

if TYPE_CHECKING:
    from studio_planner.craft.pigments import Pigment
    from studio_planner.craft.studio import Studio


class GramPrices:
    """The prices of a gram in the studio's currency, read once for many pieces.

    Bottles with a price count by what is left in them; where all are empty, the one that was
    received last.
    """

    def __init__(self, studio: Studio) -> None:
        """Read the studio's bottles and pigments."""
        self._studio = studio
        self._levels, _ = lot_levels(studio)
        self._known: dict[tuple[str, LotPart], float | None] = {}

    def of_part(self, product: str, part: LotPart) -> float | None:
        """What a gram of a product's part costs; None where no bottle of it has a price."""
        key = (product, part)
        if key not in self._known:
            self._known[key] = self._mean(product, part)
        return self._known[key]

    def of_colourant(self, words: str) -> float | None:
        """What a gram of a colourant costs; None where no pigment with a price serves.

        Its pots count before the price of 100 g in its entry. A colour that names only a kind,
        such as "mica", costs the mean of the studio's pigments of that kind.
        """
        pigments = self._studio.pigments
        named = pigment_called(words, pigments)
        price = None if named is None else self._of_pigment(named)
        if price is not None:
            return price
        alike = (self._of_pigment(one) for one in pigments if one.kind is kind_called(words))
        prices = [one for one in alike if one is not None]
        return sum(prices) / len(prices) if prices else None

    def _of_pigment(self, pigment: Pigment) -> float | None:
        of_pots = self.of_part(pigment.key, LotPart.COLOURANT)
        return of_pots or pigment.price_per_100g / 100.0 or None

    def _mean(self, product: str, part: LotPart) -> float | None:
        priced = [
            level
            for level in self._levels
            if (level.lot.product, level.lot.part) == (product, part) and level.lot.price > 0.0
        ]
        if not priced:
            return None
        left = sum(level.left_g for level in priced)
        if left <= 0.0:
            return max(priced, key=lambda level: level.lot.received).lot.price_per_g
        return sum(level.left_g * level.lot.price_per_g for level in priced) / left
