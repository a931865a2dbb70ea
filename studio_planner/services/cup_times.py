"""How long a mix may stay in its cup, in the air of the place where it is poured."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.science.cups import CupFigure, CupLife, cup_life
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import datetime

    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.products import Product, SheetPoint
    from studio_planner.craft.studio import Studio
    from studio_planner.science.laws import StageLaw

SHEET_GRAMS = 100.0
"""The mass that a printed cup life holds for when the sheet names none (common practice)."""


def cup_life_of(points: Sequence[SheetPoint], film: StageLaw | None) -> CupLife | None:
    """Give the cup life of a sheet's figures; None when none of them is a cup life.

    `film` is the law of the working time, which a cup life never outlasts.
    """
    figures = [
        CupFigure(p.celsius, p.mass_g or SHEET_GRAMS, p.from_hours, p.to_hours)
        for p in points
        if p.stage is Stage.CUP_LIFE
    ]
    return cup_life(figures, film=film) if figures else None


def out_of_cup_minutes(
    studio: Studio, product: Product, grams: float, coat: PlannedCoat
) -> float | None:
    """Give the minutes after A meets B by which a cup of `grams` has to be empty.

    Two thirds of its cup life at the early edge, at the warmest likely air of the coat's
    place when its block starts. None when the sheet has no cup life or nothing is in the cup.
    """
    life = cup_life_of(product.sheet, product.law(Stage.WORKING_TIME))
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
