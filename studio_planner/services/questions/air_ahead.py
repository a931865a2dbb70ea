"""The air of a place over a stretch of time: dew-point margin, humidity, how cold it gets."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.log_legs import stays_along
from studio_planner.science.air import (
    AirError,
    condensation_point,
    dew_point_margin,
    surface_history,
)

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from studio_planner.craft.pieces import Material
    from studio_planner.craft.timing import Leg, Timing
    from studio_planner.science.samples import History

_STEP = timedelta(minutes=10)


@dataclass(frozen=True, slots=True)
class AirAt:
    """The air at one instant (aware): °C, % (None: not known), margin and dew point in °C."""

    when: datetime
    celsius: float
    humidity: float | None
    margin: float | None
    dew: float | None


def air_between(  # noqa: PLR0913 - where, for what, and when
    timing: Timing,
    place: str,
    material: Material | None,
    start: datetime,
    end: datetime,
    *,
    step: timedelta = _STEP,
) -> tuple[AirAt, ...]:
    """The air of a place (a key) every ten minutes, or every `step`, both ends inside.

    The margin is that of a blank's surface, which follows the air with its material's lag;
    without a material that of the air itself. What lies outside the record is left out.
    """
    history = timing.history(place)
    surface = history if material is None else timing.surface(place, material)
    return tuple(_airs(history, surface, (start, end), step))


def air_along(
    timing: Timing, legs: Sequence[Leg], material: Material, end: datetime
) -> tuple[AirAt, ...]:
    """The air that a piece meets where it is, every ten minutes from its first leg to the end.

    Its surface is as warm as where it was carried from, and follows the air there with its lag.
    """
    lag = timing.studio.settings.surface_lag_hours.get(material, 0.0)
    surface = timing.surface(legs[0][0], material)
    found: list[AirAt] = []
    for place, since, left in stays_along(legs, end):
        history, second = timing.history(place), since.timestamp()
        if since != legs[0][1]:
            here = history.part(second, history.extent[1])
            surface = surface_history(here, lag, surface.celsius_at(second))
        found += _airs(history, surface, (since, left), _STEP)
    return tuple(found)


def lowest_margin(air: tuple[AirAt, ...]) -> AirAt | None:
    """Where the margin is least; None where it is not known throughout."""
    if not air or any(one.margin is None for one in air):
        return None
    return min(air, key=lambda one: 0.0 if one.margin is None else one.margin)


def _instants(start: datetime, end: datetime, step: timedelta) -> Iterator[datetime]:
    first, last = start.astimezone(UTC), end.astimezone(UTC)
    steps = max(0, int((last - first) / step))
    yield from (first + step * number for number in range(steps + 1))
    if first + step * steps < last:
        yield last


def _airs(
    history: History, surface: History, span: tuple[datetime, datetime], step: timedelta
) -> Iterator[AirAt]:
    found = (_air_at(history, surface, when) for when in _instants(*span, step))
    return (one for one in found if one is not None)


def _air_at(history: History, surface: History, when: datetime) -> AirAt | None:
    second = when.timestamp()
    celsius, film = history.celsius_at(second), surface.celsius_at(second)
    if celsius is None or film is None:
        return None
    humidity = history.humidity_at(second)
    margin, dew = _above_dew(film, celsius, humidity)
    return AirAt(when, celsius, humidity, margin, dew)


def _above_dew(
    surface: float, celsius: float, humidity: float | None
) -> tuple[float | None, float | None]:
    try:
        margin = dew_point_margin(surface, celsius, humidity)
        if margin is None or humidity is None:
            return None, None
        return margin, condensation_point(celsius, humidity).celsius
    except AirError:
        return None, None
