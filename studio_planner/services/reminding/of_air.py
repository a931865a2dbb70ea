"""Reminders of the air: nights too cold or too damp, readings missing, windows that moved."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import instant
from studio_planner.craft.log_legs import stays_along
from studio_planner.craft.reminders import Reminder, ReminderKind, Urgency, uid_of
from studio_planner.science.stages import Edge, Stage
from studio_planner.services.questions.air_ahead import air_between
from studio_planner.services.reminding.scene import below_of, coat_below

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import date

    from studio_planner.craft.pieces import Material
    from studio_planner.services.questions.air_ahead import AirAt
    from studio_planner.services.reminding.scene import Scene
    from studio_planner.services.ribbons import Ribbon

    _Seen = dict[tuple[str, Material], tuple[AirAt, ...]]

_DAY = timedelta(days=1)
_AHEAD = timedelta(days=7)
_STEP = timedelta(minutes=30)


@dataclass(frozen=True, slots=True)
class _Lying:
    """A film that lies in a place (a key) until it can be handled or is carried on."""

    bar: Ribbon
    place: str
    start: datetime
    end: datetime


def of_air(scene: Scene) -> Iterator[Reminder]:
    """Everything there is to be told of the air in which films lie."""
    lying = tuple(_lying(scene))
    yield from _of_nights(scene, lying)
    yield from _of_readings(scene, lying)
    for bar in scene.ribbons():
        yield from _of_moved(scene, bar)


def _lying(scene: Scene) -> Iterator[_Lying]:
    for bar in scene.ribbons():
        handled = bar.film.reached(Stage.HANDLE, Edge.LATE) or bar.planned.end + _DAY
        if handled > scene.now - _DAY and bar.planned.start < scene.now + _AHEAD:
            for spot, since, left in stays_along(bar.lane.stands(bar.planned), handled):
                yield _Lying(bar, scene.studio.place_of_spot(spot).key, since, left)


def _of_nights(scene: Scene, lying: tuple[_Lying, ...]) -> Iterator[Reminder]:
    """One for each place and evening: the first instant of the night that is bad."""
    found: dict[tuple[ReminderKind, str, date], datetime] = {}
    seen: _Seen = {}
    for film in lying:
        for kind, when in _bad_air(scene, film, seen):
            key = (kind, film.place, _evening_of(scene, when))
            found[key] = min(when, found.get(key, when))
    for (kind, place, day), when in found.items():
        reminding = scene.studio.reminding
        evening = instant(scene.studio.time_zone, day, reminding.evening)
        lead = timedelta(minutes=reminding.lead(kind))
        yield Reminder(
            uid=uid_of(kind, place, day.isoformat()),
            kind=kind,
            urgency=Urgency.CAN_WAIT,
            due=evening - lead,
            meant=evening - lead,
            moment=when,
            saved_until=when,
            place=place,
        )


def _bad_air(
    scene: Scene, film: _Lying, seen: _Seen
) -> Iterator[tuple[ReminderKind, datetime]]:
    settings = scene.studio.settings
    dewed = film.bar.start + timedelta(hours=settings.dew_hours)
    minimum = film.bar.product.minimum_celsius
    for air in _air_over(scene, film, seen):
        if minimum is not None and air.celsius < minimum:
            yield ReminderKind.COLD, air.when
        if air.when <= dewed and _too_damp(air, settings.dew_margin_celsius):
            yield ReminderKind.DAMP, air.when


def _air_over(scene: Scene, film: _Lying, seen: _Seen) -> tuple[AirAt, ...]:
    """The air over a film; films of one material in one place share what was looked up."""
    material = film.bar.lane.piece.material
    key = (film.place, material)
    if key not in seen:
        now = scene.now.astimezone(UTC).replace(minute=0, second=0, microsecond=0)
        first, last = now - _DAY, now + _AHEAD
        seen[key] = air_between(scene.timing, film.place, material, first, last, step=_STEP)
    air = seen[key]
    start = bisect_left(air, film.start, key=_when)
    return air[start : bisect_right(air, film.end, key=_when)]


def _when(air: AirAt) -> datetime:
    return air.when


def _too_damp(air: AirAt, asked: float) -> bool:
    return air.margin is not None and air.margin < asked


def _evening_of(scene: Scene, when: datetime) -> date:
    """The day whose evening comes before an instant."""
    local = when.astimezone(scene.studio.time_zone)
    today = local.time() >= scene.studio.reminding.evening
    return local.date() if today else local.date() - _DAY


def _of_readings(scene: Scene, lying: tuple[_Lying, ...]) -> Iterator[Reminder]:
    """Somebody reads the air of a place, and has not for long, while a film lies there."""
    hours = timedelta(hours=scene.studio.reminding.readings_hours)
    for place in scene.studio.places:
        if not place.readings:
            continue
        last = place.readings[-1].when.astimezone(UTC)
        missed = last + hours
        lies = any(
            film.place == place.key and film.start < max(missed, scene.now) + _DAY
            for film in lying
            if film.end > max(missed, scene.now - _DAY)
        )
        if lies:
            yield scene.reminder(
                ReminderKind.READINGS,
                (place.key, last.isoformat(timespec="minutes")),
                missed,
                place=place.key,
            )


def _of_moved(scene: Scene, bar: Ribbon) -> Iterator[Reminder]:
    """A window that has moved by more than the maker's threshold since it was planned."""
    planned, opening, below = bar.planned.window, scene.opening(bar), below_of(bar)
    if planned is None or opening is None or below is None or scene.is_poured(bar):
        return
    shifts = [opening.opens - planned.opens]
    if planned.closes is not None and opening.closes is not None:
        shifts.append(opening.closes - planned.closes)
    shift = max(shifts, key=abs)
    threshold = timedelta(minutes=scene.studio.reminding.moved_minutes)
    times = int(shift / threshold)
    if times == 0:
        return
    stack_below = coat_below(bar)
    strong = stack_below is not None and not stack_below.sandable
    closes = opening.closes
    yield scene.reminder(
        ReminderKind.MOVED,
        (bar.planned.piece, bar.planned.coat, f"{times:+d}"),
        _known_since(scene, below),
        Urgency.LOST_LATER if strong and closes is not None else Urgency.CAN_WAIT,
        saved_until=None if closes is None else closes - (bar.planned.end - bar.planned.start),
        together=bar.planned.piece,
        piece=bar.planned.piece,
        coat=bar.planned.coat,
        strong=strong,
    )


def _known_since(scene: Scene, below: Ribbon) -> datetime:
    """When it became known: with the last reading of the place, the pour, or the last move."""
    spot, since = below.lane.stands(below.planned)[-1]
    place = scene.studio.place_of_spot(spot)
    readings = [r.when for r in place.readings if r.when <= scene.now]
    known = [since, scene.plan.made, *readings[-1:]]
    return min(max(known), scene.now)
