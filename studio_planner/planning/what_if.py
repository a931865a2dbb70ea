"""Studios with one thing changed, to try what a change would buy."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import time
from typing import TYPE_CHECKING

from studio_planner.craft.hands import Person, WorkHours
from studio_planner.craft.places import PlaceKind
from studio_planner.science.air import dew_point, relative_humidity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.places import PatternPoint, Place, Spot
    from studio_planner.craft.studio import Studio

WARM_CELSIUS = 22.0
"""The temperature that "a warm room" means in tried changes."""

_ALWAYS = (
    WorkHours(rule="FREQ=DAILY", start=time(0), end=time(12)),
    WorkHours(rule="FREQ=DAILY", start=time(12), end=time(0)),
)


@dataclass(frozen=True, slots=True)
class Tried:
    """A changed studio, and the change in words."""

    words: str
    studio: Studio


def with_tireless_hands(studio: Studio) -> Studio:
    """The studio with one more pair of hands that can work at any hour."""
    helper = Person(key="*tireless", name="hands day and night", work=_ALWAYS)
    return replace(studio, people=(*studio.people, helper))


def with_warm_room(studio: Studio, celsius: float = WARM_CELSIUS) -> Studio:
    """The studio with its rooms never expected to be colder than `celsius`.

    Warming dries the air: the moisture in it, its dew point, stays what it was.
    """
    places = tuple(_warmed(place, celsius) for place in studio.places)
    return replace(studio, places=places)


def _warmed(place: Place, celsius: float) -> Place:
    if place.kind is not PlaceKind.ROOM:
        return place
    points = tuple(_warmed_point(point, celsius) for point in place.pattern)
    return replace(place, pattern=points)


def _warmed_point(point: PatternPoint, celsius: float) -> PatternPoint:
    if point.celsius >= celsius:
        return point
    humidity = point.humidity_pct
    if humidity is not None:
        humidity = relative_humidity(celsius, dew_point(point.celsius, humidity))
    return replace(point, celsius=celsius, humidity_pct=humidity)


def with_spot(studio: Studio, kind: PlaceKind, mark: str = "*") -> Studio | None:
    """The studio with one more spot, as large as its largest, in a room or a warm box.

    `mark` is added to that spot's key, so that the new one has its own.
    """
    places = list(studio.places)
    for index, place in enumerate(places):
        if place.kind is kind and place.spots:
            largest = max(place.spots, key=lambda spot: spot.length_mm * spot.width_mm)
            places[index] = replace(place, spots=(*place.spots, _another(largest, mark)))
            return replace(studio, places=tuple(places))
    return None


def with_spots_for_all(studio: Studio) -> Studio:
    """The studio with one more of its largest room spots for every piece."""
    for piece in studio.pieces:
        more = with_spot(studio, PlaceKind.ROOM, f"*{piece.key}")
        studio = studio if more is None else more
    return studio


def _another(spot: Spot, mark: str) -> Spot:
    return replace(spot, key=f"{spot.key}{mark}", name=f"{spot.name} again")


def with_hours(studio: Studio, start: time, end: time) -> Studio:
    """The studio in which the first person also works every day from `start` to `end`."""
    first, *others = studio.people
    more = WorkHours(rule="FREQ=DAILY", start=start, end=end)
    return replace(studio, people=(replace(first, work=(*first.work, more)), *others))


def changes(studio: Studio) -> Iterator[Tried]:
    """The changes that are tried for late orders, the cheapest first."""
    evening = time(18), time(22)
    yield Tried("work every evening from 18:00 to 22:00", with_hours(studio, *evening))
    spot = with_spot(studio, PlaceKind.ROOM)
    if spot is not None:
        yield Tried("have one more level spot", spot)
    warm = f"keep the room at {WARM_CELSIUS:.0f} °C or warmer, also at night"
    yield Tried(warm, with_warm_room(studio))
    box = with_spot(studio, PlaceKind.WARM_BOX)
    if box is not None:
        yield Tried("have one more spot in the warm box", box)
    yield Tried("work every day from 8:00 to 22:00", with_hours(studio, time(8), time(22)))
    yield Tried(
        f"{warm}, and work every evening from 18:00 to 22:00",
        with_hours(with_warm_room(studio), *evening),
    )
    if spot is not None:
        yield Tried(
            f"{warm}, have one more level spot, and work every day from 8:00 to 22:00",
            with_hours(with_warm_room(spot), time(8), time(22)),
        )


def alone(studio: Studio, order: str) -> Studio:
    """The studio with nothing to do but one order; what is poured of the rest stays."""
    mine = {key for one in studio.orders if one.key == order for key in one.pieces}
    poured = {pour.piece for pour in studio.poured}
    return replace(
        studio,
        pieces=tuple(p for p in studio.pieces if p.key in mine or p.key in poured),
        orders=tuple(one for one in studio.orders if one.key == order),
        plan=None,
    )
