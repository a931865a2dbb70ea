"""Everything that plans ask of the air and the laws, kept for studios that share them.

A tried change of hands or spots leaves every cure clock as it was; only a warmer room needs new
ones.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.craft.timing import Timing
from studio_planner.planning.clocks.air_times import AirTimes
from studio_planner.planning.clocks.edges import Edges

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True)
class Clockwork:
    """Clocks of one air over one record, with what planning has asked of them so far."""

    timing: Timing
    edges: Edges
    air: AirTimes


class Clockworks:
    """Clockworks made so far, to be used again where the air and the products are the same."""

    def __init__(self) -> None:
        """Start with none."""
        self._made: list[Clockwork] = []

    def over(self, studio: Studio, start: datetime, end: datetime) -> Clockwork:
        """A clockwork for a studio that covers `start` to `end`."""
        for made in self._made:
            covers = made.timing.start <= start and end <= made.timing.end
            if covers and _same_air(made.timing.studio, studio):
                return made
        timing = Timing(studio, start, end)
        self._made.append(Clockwork(timing, Edges(timing), AirTimes(timing)))
        return self._made[-1]


def _same_air(one: Studio, other: Studio) -> bool:
    return (
        one.zone == other.zone
        and one.products == other.products
        and one.settings == other.settings
        and len(one.places) == len(other.places)
        and all(
            replace(mine, spots=()) == replace(theirs, spots=())
            for mine, theirs in zip(one.places, other.places, strict=True)
        )
    )
