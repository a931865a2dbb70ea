"""How long a mix may stay in its cup, in the air of the place where it is poured."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.science.stages import Edge

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio


def out_of_cup_minutes(
    studio: Studio, product: Product, grams: float, coat: PlannedCoat
) -> float | None:
    """Give the minutes after A meets B by which a cup of `grams` has to be empty.

    Two thirds of its cup life at the early edge, at the warmest likely air of the coat's
    place when its block starts. None when the sheet has no cup life or nothing is in the cup.
    """
    life = product.cup_life()
    if life is None or grams <= 0.0:
        return None
    celsius, band = air_at(studio, coat.spot, coat.start)
    return life.out_of_cup_by(celsius, grams, Edge.EARLY, band) * 60.0


def air_at(studio: Studio, spot: str, when: datetime) -> tuple[float, float]:
    """Give the likely temperature of a spot's place at an instant, and its band, in °C."""
    place = studio.place_of_spot(spot)
    record = place.history(studio.time_zone, when, when + timedelta(hours=1))
    second = when.timestamp()
    return record.celsius_at(second) or 0.0, record.band_at(second) or 0.0
