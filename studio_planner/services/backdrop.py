"""What lies behind a plan on the same time axis: nights, hands, and the air of the room."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import clipped, without
from studio_planner.science.air import AirError, dew_point_margin

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.local_time import Span
    from studio_planner.craft.pieces import Material
    from studio_planner.craft.places import Place
    from studio_planner.craft.studio import Studio
    from studio_planner.craft.timing import Timing


@dataclass(frozen=True, slots=True)
class AirSample:
    """A room at one instant: °C, its band either way, and the margin above the dew point.

    `margin` is that of the studio's slowest surface; None where no humidity is known.
    """

    second: float
    celsius: float
    band: float
    margin: float | None


class Backdrop:
    """Nights, working hours and room air of a studio over the record of its clocks."""

    def __init__(self, studio: Studio, timing: Timing) -> None:
        """Keep the studio and its clocks; nothing is worked out yet."""
        self.studio = studio
        self.timing = timing

    def take_over(self, known: Backdrop) -> None:
        """Take over nights and hands of another studio where they are the same."""
        mine, theirs = self._people, known._people
        if mine == theirs:
            for name in ("working", "nights"):
                if name in known.__dict__:
                    self.__dict__[name] = known.__dict__[name]

    @property
    def _people(self) -> tuple[object, ...]:
        """All that nights and hands depend on."""
        return (self.studio.people, self.studio.zone, self.timing.start, self.timing.end)

    def same_air(self, other: Backdrop) -> bool:
        """Tell whether `air` says the same of the room as another backdrop does."""
        return self._air == other._air

    @property
    def _air(self) -> tuple[object, ...]:
        """All that the air depends on."""
        lags, slowest = self.studio.settings.surface_lag_hours, self._slowest
        lag = None if slowest is None else lags.get(slowest, 0.0)
        span = (self.timing.start, self.timing.end)
        return (self.room, self.studio.zone, span, lag)

    @cached_property
    def working(self) -> tuple[Span, ...]:
        """Spans in which somebody can work."""
        zone, start, end = self.studio.time_zone, self.timing.start, self.timing.end
        people = self.studio.people
        return clipped((s for p in people for s in p.working(zone, start, end)), start, end)

    @cached_property
    def nights(self) -> tuple[Span, ...]:
        """Spans in which nobody is awake; none at all when the studio has no people."""
        zone, start, end = self.studio.time_zone, self.timing.start, self.timing.end
        people = self.studio.people
        if not people:
            return ()
        return without([(start, end)], [s for p in people for s in p.awake(zone, start, end)])

    @property
    def room(self) -> Place | None:
        """The room that is shown: where pieces rest."""
        return self.studio.resting_place

    @cached_property
    def _slowest(self) -> Material | None:
        lags = self.studio.settings.surface_lag_hours
        used = {piece.material for piece in self.studio.pieces}
        return max(used, key=lambda material: lags.get(material, 0.0), default=None)

    def air(self, seconds: Iterable[float]) -> tuple[AirSample, ...]:
        """The room at each of some instants [s]; those outside the record are left out."""
        room = self.room
        if room is None:
            return ()
        history = self.timing.history(room.key)
        slowest = self._slowest
        surface = history if slowest is None else self.timing.surface(room.key, slowest)
        samples = []
        for second in seconds:
            celsius, band = history.celsius_at(second), history.band_at(second)
            cover = surface.celsius_at(second)
            if celsius is None or band is None or cover is None:
                continue
            margin = _margin(cover, celsius, history.humidity_at(second))
            samples.append(AirSample(second, celsius, band, margin))
        return tuple(samples)


def _margin(surface: float, air: float, humidity: float | None) -> float | None:
    try:
        return dew_point_margin(surface, air, humidity)
    except AirError:
        return None
