"""What a gram of each part and each colourant costs."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.services.colour_stuff import kind_called
from studio_planner.services.stocks.levels import lot_levels

if TYPE_CHECKING:
    from studio_planner.craft.stock import LotPart
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

        A colour that names only a kind, such as "mica", costs the mean of the studio's pigments
        of that kind.
        """
        priced = [one for one in self._studio.pigments if one.price_per_100g > 0.0]
        meant = [one for one in priced if one.called(words)] or [
            one for one in priced if one.kind is kind_called(words)
        ]
        if not meant:
            return None
        return sum(one.price_per_100g for one in meant) / len(meant) / 100.0

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
