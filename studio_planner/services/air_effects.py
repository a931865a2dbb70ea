"""What the air of a place does to a pour of this evening: when it can be coated again."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, time, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import instant
from studio_planner.craft.products import ProductKind
from studio_planner.craft.timing import Timing
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from studio_planner.craft.places import Place
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio

EVENING = time(20, 0)
_BEFORE = timedelta(hours=2)
_AFTER = timedelta(days=10)


@dataclass(frozen=True, slots=True, kw_only=True)
class PourTonight:
    """A pour of this evening in one place, all instants at their safe edges.

    `opens` and `closes` bound the window for the next coat, `handle` is when the piece can be
    taken off its spot; None where the sheet has no figure, or it is not reached in ten days
    (`has_opening` and `has_closing` tell whether the sheet has the figures). `too_cold` and
    `too_warm` tell that the place is outside the product's temperatures at the pour.
    """

    product: Product
    opens: datetime | None
    closes: datetime | None
    handle: datetime | None
    has_opening: bool
    has_closing: bool
    too_cold: bool
    too_warm: bool

    @property
    def shut(self) -> bool:
        """Whether it closes before it safely opens."""
        return None not in {self.opens, self.closes} and self.closes <= self.opens  # type: ignore[operator]


def tonight(studio: Studio, now: datetime) -> datetime:
    """Eight in the evening of today, or of tomorrow when it is past."""
    zone = studio.time_zone
    today = now.astimezone(zone).date()
    evening = instant(zone, today, EVENING)
    return evening if evening >= now else instant(zone, today + timedelta(days=1), EVENING)


def pours_tonight(studio: Studio, place: Place, now: datetime) -> tuple[PourTonight, ...]:
    """Every two-part product, poured this evening in `place`, which need not be kept yet."""
    poured = tonight(studio, now)
    timing = _OnePlace(studio, place, poured - _BEFORE, poured + _AFTER)
    products = [one for one in studio.products if one.kind is ProductKind.TWO_PART]
    return tuple(_pour(timing, product, place.key, poured) for product in products)


class _OnePlace(Timing):
    """The clocks of a studio in which one place is another one, which is not in it yet."""

    def __init__(self, studio: Studio, place: Place, start: datetime, end: datetime) -> None:
        super().__init__(studio, start, end)
        self._places[place.key] = place


def _pour(timing: Timing, product: Product, place: str, poured: datetime) -> PourTonight:
    legs = [(place, poured)]
    air = timing.history(place).celsius_at(poured.timestamp())
    low, high = product.minimum_celsius, product.maximum_celsius
    return PourTonight(
        product=product,
        opens=timing.safe(product, Stage.RECOAT_OPENS, legs),
        closes=timing.safe(product, Stage.RECOAT_CLOSES, legs),
        handle=timing.safe(product, Stage.HANDLE, legs),
        has_opening=product.law(Stage.RECOAT_OPENS) is not None,
        has_closing=product.law(Stage.RECOAT_CLOSES) is not None,
        too_cold=low is not None and air is not None and air < low,
        too_warm=high is not None and air is not None and air > high,
    )
