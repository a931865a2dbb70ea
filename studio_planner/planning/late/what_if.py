"""Studios with one thing changed, to try what a change would buy."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from datetime import UTC, time, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.day_words import weekday_said
from studio_planner.craft.degree_words import degrees_said
from studio_planner.craft.hands import Person, WorkHours
from studio_planner.craft.local_time import daily_span
from studio_planner.craft.places import PlaceKind
from studio_planner.craft.saying import Saying, saying
from studio_planner.craft.tongue import marked
from studio_planner.science.air import dew_point, relative_humidity

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.places import PatternPoint, Place, Spot
    from studio_planner.craft.studio import Studio

WARM_CELSIUS = 22.0
"""The temperature that "a warm room" means in tried changes, where no product asks for more."""

_ALWAYS = (
    WorkHours(rule="FREQ=DAILY", start=time(0), end=time(12)),
    WorkHours(rule="FREQ=DAILY", start=time(12), end=time(0)),
)


_WARMEST_CELSIUS = 30.0
"""No room is heated to more than this for a product's minimum (common practice)."""

EVENING = time(18), time(22)
"""The hours that "an evening" means in tried changes."""

LONG_DAY = time(8), time(22)
"""The hours that "a longer day" means in tried changes."""

_DAY_CODES = ("MO", "TU", "WE", "TH", "FR", "SA", "SU")


@dataclass(frozen=True, slots=True)
class Tried:
    """A changed studio, and the change in words.

    `more` says that it only adds spots or hours: every plan made without it holds with it too.
    `over` are the words of the simpler changes that it contains.
    """

    words: Saying
    studio: Studio
    more: bool = True
    over: tuple[Saying, ...] = ()


def with_tireless_hands(studio: Studio) -> Studio:
    """The studio with one more pair of hands that can work at any hour."""
    helper = Person(key="*tireless", name="hands day and night", work=_ALWAYS)
    return replace(studio, people=(*studio.people, helper))


def warmth(studio: Studio) -> float:
    """What "a warm room" means in a studio: above the minimum of all that is poured, in °C."""
    used = {coat.product for piece in studio.pieces for coat in piece.stack}
    minimums = (studio.product(key).minimum_celsius or 0.0 for key in used)
    asked = (math.floor(low) + 1.0 for low in minimums)
    return max([WARM_CELSIUS, *(low for low in asked if low <= _WARMEST_CELSIUS)])


def with_warm_room(studio: Studio) -> Studio:
    """The studio with its rooms never expected to be colder than is called warm.

    Warming dries the air: the moisture in it, its dew point, stays what it was.
    """
    celsius = warmth(studio)
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


def with_spot(studio: Studio, kind: PlaceKind) -> Studio | None:
    """The studio with one more spot, as large as its largest, in a room or a warm box."""
    places = list(studio.places)
    for index, place in enumerate(places):
        if place.kind is kind and place.spots:
            largest = max(place.spots, key=lambda spot: spot.length_mm * spot.width_mm)
            places[index] = replace(place, spots=(*place.spots, _another(largest, "*")))
            return replace(studio, places=tuple(places))
    return None


def with_spots(studio: Studio, count: int) -> Studio:
    """The studio with so many more of the largest spot of its first room that has any."""
    places = list(studio.places)
    for index, place in enumerate(places):
        if place.kind is PlaceKind.ROOM and place.spots:
            largest = max(place.spots, key=lambda spot: spot.length_mm * spot.width_mm)
            more = tuple(_another(largest, f"*{number}") for number in range(1, count + 1))
            places[index] = replace(place, spots=(*place.spots, *more))
            return replace(studio, places=tuple(places))
    return studio


def _another(spot: Spot, mark: str) -> Spot:
    return replace(spot, key=f"{spot.key}{mark}", name=f"{spot.name} again")


def with_hours(studio: Studio, start: time, end: time, rule: str = "FREQ=DAILY") -> Studio:
    """The studio in which the first person also works from `start` to `end`, by a day rule."""
    first, *others = studio.people
    more = WorkHours(rule=rule, start=start, end=end)
    return replace(studio, people=(replace(first, work=(*first.work, more)), *others))


def evenings(studio: Studio, now: datetime) -> list[Tried]:
    """One evening more in each week, for every weekday on which the first person has it off."""
    zone, first = studio.time_zone, studio.people[0]
    today = now.astimezone(zone).date()
    found = []
    for ahead in range(len(_DAY_CODES)):
        day = today + timedelta(days=ahead)
        evening = daily_span(zone, day, *EVENING)
        if not first.working(zone, *(moment.astimezone(UTC) for moment in evening)):
            code = _DAY_CODES[day.weekday()]
            rule = f"FREQ=WEEKLY;BYDAY={code}"
            said = saying(
                "late",
                "work every {day} evening too, from 18:00 to 22:00",
                day=weekday_said(day.weekday()),
            )
            found.append(Tried(_of_whom(studio, said), with_hours(studio, *EVENING, rule)))
    return found


def changes(studio: Studio) -> list[Tried]:
    """The single changes that are tried for late orders, the cheapest first."""
    spot = with_spot(studio, PlaceKind.ROOM)
    box = with_spot(studio, PlaceKind.WARM_BOX)
    long, evening = _more_hours(studio)
    found = [Tried(evening, with_hours(studio, *EVENING))]
    if spot is not None:
        found.append(Tried(saying("late", _SPOT), spot))
    found.append(Tried(_warm(studio), with_warm_room(studio), more=False))
    if box is not None:
        found.append(Tried(saying("late", "have one more spot in the warm box"), box))
    found.append(Tried(long, with_hours(studio, *LONG_DAY), over=(evening,)))
    return found


def joint_changes(studio: Studio) -> list[Tried]:
    """Several changes at once, for when no single one is enough."""
    warm, words = with_warm_room(studio), _warm(studio)
    long, evening = _more_hours(studio)
    one, two = saying("late", _SPOT), saying("late", _SPOTS)
    found = [Tried(two, with_spots(studio, 2), over=(one,))] if studio.spots else []
    found += [
        Tried(
            saying("late", "{first}, and {second}", first=words, second=evening),
            with_hours(warm, *EVENING),
            more=False,
            over=(words, evening),
        )
    ]
    spot = with_spot(warm, PlaceKind.ROOM)
    if spot is not None:
        found.append(
            Tried(
                saying(
                    "late",
                    "{first}, {second}, and {third}",
                    first=words,
                    second=one,
                    third=long,
                ),
                with_hours(spot, *LONG_DAY),
                more=False,
                over=(words, evening, long, one),
            )
        )
    return found


_SPOT = marked("late", "have one more level spot")
_SPOTS = marked("late", "have two more level spots")


def _more_hours(studio: Studio) -> tuple[Saying, Saying]:
    """A longer day, and an evening, on every day."""
    long = saying("late", "work every day from 8:00 to 22:00")
    evening = saying("late", "work every evening from 18:00 to 22:00")
    return _of_whom(studio, long), _of_whom(studio, evening)


def _of_whom(studio: Studio, hours: Saying) -> Saying:
    """More hours of the first person, named where there are two."""
    first, *others = studio.people
    if not others:
        return hours
    return saying("late", "{hours} ({person})", hours=hours, person=first.name)


def _warm(studio: Studio) -> Saying:
    return saying(
        "late",
        "keep the room at {warmth} or warmer, also at night",
        warmth=warmth_said(studio),
    )


def warmth_said(studio: Studio) -> Saying:
    """What "a warm room" means, in the studio's degrees."""
    return degrees_said(warmth(studio), studio.units)
