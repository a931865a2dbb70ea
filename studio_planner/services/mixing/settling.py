"""How far the colours of a planned coat sink in its own film and air."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.science.clocks import StageClock
from studio_planner.science.grains import Liquid
from studio_planner.science.sinking import (
    DEFAULT_VISCOSITY_MPAS,
    STAYS_SHARE,
    Thickening,
    stays_from_minute,
    sunk_mm,
    thickening,
    viscosity_at,
)
from studio_planner.science.stages import Edge, Stage
from studio_planner.services.colour_stuff import Heaviness
from studio_planner.services.cup_times import air_at

if TYPE_CHECKING:
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio
    from studio_planner.services.colour_stuff import ColourStuff

_SETS_WITHIN = timedelta(days=4)
"""How far ahead the room is looked at for the film to set (our choice)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Settling:
    """A planned coat's film as grains sink in it: how it thickens, how thick and deep it is."""

    film: Thickening
    liquid: Liquid
    film_mm: float

    def sinks_mm(self, stuff: ColourStuff, minute: float) -> float:
        """How far a colour sinks that is poured at a minute after A met B, within its film."""
        if stuff.heaviness is Heaviness.CLEAR or stuff.grain is None:
            return 0.0
        depth = abs(sunk_mm(stuff.grain, self.liquid, self.film, minute))
        return min(depth, self.film_mm)

    def stays_from(self, stuff: ColourStuff) -> float:
        """The first minute after A met B from which a colour stays where it is poured."""
        if stuff.heaviness is Heaviness.CLEAR or stuff.grain is None:
            return 0.0
        return stays_from_minute(stuff.grain, self.liquid, self.film, self.film_mm, STAYS_SHARE)


def settling_of(studio: Studio, product: Product, planned: PlannedCoat) -> Settling | None:
    """The film of a planned coat; None where its sheet has no working time.

    Its clock runs at the late edge: what sets slowly sinks far.
    """
    law = product.law(Stage.WORKING_TIME)
    film_mm = studio.piece(planned.piece).coat(planned.coat).film_mm
    if law is None or film_mm <= 0.0:
        return None
    place = studio.place_of_spot(planned.spot)
    room = place.history(studio.time_zone, planned.start, planned.start + _SETS_WITHIN)
    clock = StageClock(law, room, Edge.LATE, product.minimum_celsius)
    film = thickening(clock, planned.start.timestamp())
    if film is None:
        return None
    celsius, _ = air_at(studio, planned.spot, planned.start)
    sheet = product.viscosity_mpas or DEFAULT_VISCOSITY_MPAS
    return Settling(
        film=film,
        liquid=Liquid(viscosity_at(celsius, sheet), product.density),
        film_mm=film_mm,
    )
