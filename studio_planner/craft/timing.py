"""Cure clocks of a studio: a product's stage, in the air of a place, at an edge.

A piece may move: it stands on a coat's spot until *handle*, then rests in the first room until
its next coat. Its itinerary says where it was from when, and every stage counts along it.
"""

from __future__ import annotations

from datetime import UTC, datetime
from typing import TYPE_CHECKING

from studio_planner.science.air import surface_history
from studio_planner.science.clocks import StageClock, reached_through
from studio_planner.science.stages import Edge, Stage, safe_edge

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.pieces import Material
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio
    from studio_planner.science.history import History

Leg = tuple[str, datetime]
"""A place's key, and the instant from which the piece is there."""


class Timing:
    """All clocks of a studio over one record of time, each made once, when asked for."""

    def __init__(self, studio: Studio, start: datetime, end: datetime) -> None:
        """Cover `start` to `end` (aware)."""
        self.studio = studio
        self.start = start
        self.end = end
        self._places = {place.key: place for place in studio.places}
        self._histories: dict[str, History] = {}
        self._surfaces: dict[tuple[str, float], History] = {}
        self._clocks: dict[tuple[str, str, Stage, Edge], StageClock | None] = {}

    def take_over(self, known: Timing) -> None:
        """Take over the clocks of another studio over the same record, where nothing changed.

        A change of the studio mostly leaves its places and products as they were; making
        their clocks is what takes the time.
        """
        if (known.start, known.end) != (self.start, self.end):
            return
        if known.studio.zone != self.studio.zone:
            return
        same = {key for key, place in self._places.items() if known._places.get(key) == place}
        products = {product.key: product for product in known.studio.products}
        alike = {p.key for p in self.studio.products if products.get(p.key) == p}
        self._histories = {k: v for k, v in known._histories.items() if k in same}
        self._surfaces = {k: v for k, v in known._surfaces.items() if k[0] in same}
        self._clocks = {
            key: clock
            for key, clock in known._clocks.items()
            if key[0] in alike and key[1] in same
        }

    def history(self, place: str) -> History:
        """The air of a place over the record."""
        if place not in self._histories:
            self._histories[place] = self._places[place].history(
                self.studio.time_zone, self.start, self.end
            )
        return self._histories[place]

    def surface(self, place: str, material: Material) -> History:
        """The temperature of a blank's surface in a place; it follows the air with a lag."""
        lag = self.studio.settings.surface_lag_hours.get(material, 0.0)
        key = (place, lag)
        if key not in self._surfaces:
            self._surfaces[key] = surface_history(self.history(place), lag)
        return self._surfaces[key]

    def clock(
        self, product: Product, place: str, stage: Stage, edge: Edge
    ) -> StageClock | None:
        """The clock of a stage, or None when the product's sheet has no such stage."""
        key = (product.key, place, stage, edge)
        if key not in self._clocks:
            law = product.law(stage)
            self._clocks[key] = (
                None
                if law is None
                else StageClock(law, self.history(place), edge, product.minimum_celsius)
            )
        return self._clocks[key]

    def reached(
        self, product: Product, stage: Stage, edge: Edge, legs: Sequence[Leg]
    ) -> datetime | None:
        """When a film spread at the first leg's instant reaches a stage along an itinerary.

        None when it never does within the record, or when the sheet lacks the stage.
        """
        clocks = []
        for place, since in legs:
            clock = self.clock(product, place, stage, edge)
            if clock is None:
                return None
            clocks.append((clock, since.timestamp()))
        second = reached_through(clocks)
        return None if second is None else datetime.fromtimestamp(second, UTC)

    def safe(self, product: Product, stage: Stage, legs: Sequence[Leg]) -> datetime | None:
        """When a stage is reached at its safe edge."""
        return self.reached(product, stage, safe_edge(stage), legs)
