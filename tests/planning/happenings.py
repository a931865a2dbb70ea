"""What happens to a kept plan in the middle of its week: the studio afterwards, and when."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import datetime, time, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.hands import Absence
from studio_planner.craft.log import Poured

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.places import PatternPoint
    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio

Happening = Callable[["Studio", "Plan"], tuple[datetime, "Studio"]]
"""From a studio and its plan: the instant to plan anew from, and the studio that it is now."""

_INTO = timedelta(hours=36)
_SLIP = timedelta(minutes=40)
_COLDER = 1.5
_NIGHT = (time(7, 0), time(21, 0))


def poured_as_planned(studio: Studio, plan: Plan, now: datetime) -> Studio:
    """The studio with the plan kept, and all that was to start before `now` poured so."""
    return with_pours(replace(studio, plan=plan), (c for c in plan.coats if c.start < now))


def with_pours(studio: Studio, coats: Iterable[PlannedCoat]) -> Studio:
    """The studio with coats poured as they were planned."""
    pours = [
        Poured(
            piece=coat.piece,
            coat=coat.coat,
            start=coat.start,
            end=coat.end,
            spot=coat.spot,
            joint=coat.joint,
        )
        for coat in coats
        if not coat.poured
    ]
    return replace(studio, poured=(*studio.poured, *pours))


def nothing(studio: Studio, plan: Plan) -> tuple[datetime, Studio]:
    """A day and a half went as planned."""
    return as_planned_for(_INTO, studio, plan)


def as_planned_for(into: timedelta, studio: Studio, plan: Plan) -> tuple[datetime, Studio]:
    """So much time went as planned, and the block that was begun by then."""
    now = _after_blocks(plan, plan.start + into)
    return now, poured_as_planned(studio, plan, now)


def cold_nights(studio: Studio, plan: Plan) -> tuple[datetime, Studio]:
    """The nights from now on are colder."""
    now, then = nothing(studio, plan)
    places = tuple(
        replace(place, pattern=tuple(_colder(point) for point in place.pattern))
        for place in then.places
    )
    return now, replace(then, places=places)


def _colder(point: PatternPoint) -> PatternPoint:
    by_day = _NIGHT[0] < point.at < _NIGHT[1]
    return point if by_day else replace(point, celsius=point.celsius - _COLDER)


def lost_hours(studio: Studio, plan: Plan) -> tuple[datetime, Studio]:
    """Nobody can work for the six hours from the next pour on."""
    now, then = nothing(studio, plan)
    start = min((c.start for c in plan.coats if c.start >= now), default=now)
    away = Absence(start=start, end=start + timedelta(hours=6))
    people = tuple(replace(person, absences=(*person.absences, away)) for person in then.people)
    return now, replace(then, people=people)


def late_pour(studio: Studio, plan: Plan) -> tuple[datetime, Studio]:
    """The next pour was made 40 min late, and nothing after it yet."""
    now, then = nothing(studio, plan)
    following = [coat for coat in plan.coats if coat.start >= now]
    if not following:
        return now, then
    mix = [coat for coat in following if coat.mix == following[0].mix]
    moved = [replace(c, start=c.start + _SLIP, end=c.end + _SLIP) for c in mix]
    return moved[0].end, with_pours(then, moved)


def new_order(studio: Studio, plan: Plan) -> tuple[datetime, Studio]:
    """Somebody wants one more of the last order's first piece, by its date."""
    now, then = nothing(studio, plan)
    order = then.orders[-1]
    piece = replace(then.piece(order.pieces[0]), key="new", name="New piece")
    wanted = replace(order, key="new", name="New order", pieces=(piece.key,))
    return now, replace(then, pieces=(*then.pieces, piece), orders=(*then.orders, wanted))


def _after_blocks(plan: Plan, now: datetime) -> datetime:
    """The first instant from `now` on at which nobody pours."""
    for coat in sorted(plan.coats, key=lambda coat: coat.start):
        if coat.start < now < coat.end:
            now = coat.end
    return now


HAPPENINGS: dict[str, Happening] = {
    "nothing": nothing,
    "cold nights": cold_nights,
    "lost hours": lost_hours,
    "late pour": late_pour,
    "new order": new_order,
}
