"""What if a heater is on tonight: hours of a date in which a place is warmer than expected."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, time, timedelta
from itertools import pairwise
from typing import TYPE_CHECKING, Any

from studio_planner.craft.degree_words import degrees_said
from studio_planner.craft.local_time import instant
from studio_planner.craft.places import Place, PlaceKind
from studio_planner.craft.spells import Spell
from studio_planner.craft.tongue import translate
from studio_planner.services.editing.nouns import with_thing
from studio_planner.services.editing.spells import with_spells
from studio_planner.services.questions.asking import Kind, Parameter
from studio_planner.services.questions.sentences import Clock, Degrees, said
from studio_planner.services.trying.trial import CannotTry, Trial, Warmth, WhatIf

if TYPE_CHECKING:
    from collections.abc import Mapping
    from zoneinfo import ZoneInfo

    from studio_planner.science.history import History
    from studio_planner.services.desk import DeskView

_CELSIUS, _MOST_CELSIUS = 22.0, 35.0
_EVENING, _UNTIL = time(18), time(7)
_DAY, _HOUR, _MINUTE = timedelta(days=1), timedelta(hours=1), timedelta(minutes=1)
_SECONDS_IN_HOUR = 3600.0


def _parameters(view: DeskView) -> tuple[Parameter, ...]:
    options = tuple((place.key, place.name) for place in view.studio.places)
    rest = view.studio.resting_place
    first = rest.key if rest is not None else next((key for key, _ in options), "")
    local = view.now.astimezone(view.studio.time_zone)
    start = max(_EVENING, time(local.hour, local.minute))
    return (
        Parameter("place", "Where", Kind.CHOICE, first, options),
        Parameter("celsius", "Warm to", Kind.TEMPERATURE, _CELSIUS),
        Parameter("start", "From", Kind.TIME, start),
        Parameter("end", "Until", Kind.TIME, _UNTIL),
    )


def _tried(view: DeskView, given: Mapping[str, Any]) -> Trial:
    zone = view.studio.time_zone
    place = next((one for one in view.studio.places if one.key == given["place"]), None)
    if place is None:
        raise CannotTry(
            translate(
                "trying", "There is no room in this studio yet; add one on the page Studio."
            )
        )
    start, end = _night(view, given["start"], given["end"])
    celsius = float(given["celsius"])
    if place.kind is PlaceKind.ROOM and celsius > _MOST_CELSIUS:
        text = translate(
            "trying", "No room is heated to more than {most} here; choose a warm box instead."
        )
        raise CannotTry(text.format(most=degrees_said(_MOST_CELSIUS, view.studio.units)))
    expected = _expected(place, zone, start, end)
    marks = _marks(place, expected, zone, (start, end), celsius)
    degree_hours = _degree_hours(expected, marks, celsius)
    if degree_hours <= 0.0:
        raise CannotTry(
            translate(
                "trying", "{place} is expected to be as warm as that anyway; warm it to more."
            ).format(place=place.name)
        )
    warm = with_spells(place, _warmer(expected, marks, celsius))
    to_do = said(
        "Set the heater of {place} to {celsius} from {start} until {end}; electric or indirect "
        "heat only. The plan expects it then; once there are readings, it follows them.",
        place=place.name,
        celsius=Degrees(celsius),
        start=Clock(start),
        end=Clock(end),
    )
    return Trial(
        words=translate("changes", "Heat {place} tonight").format(place=place.name),
        studio=with_thing(view.studio, warm),
        to_do=to_do,
        warmth=Warmth(place.key, start, end, degree_hours),
    )


def _night(view: DeskView, start: time, end: time) -> tuple[datetime, datetime]:
    """From `start` today to the next `end`; a start that is past is now."""
    zone = view.studio.time_zone
    today = view.now.astimezone(zone).date()
    begins = max(instant(zone, today, start), _minute(view.now))
    ends = instant(zone, today, end)
    if ends <= begins:
        ends = instant(zone, today + _DAY, end)
    return begins, ends


def _minute(when: datetime) -> datetime:
    return when.astimezone(UTC).replace(second=0, microsecond=0)


def _expected(place: Place, zone: ZoneInfo, start: datetime, end: datetime) -> History:
    return replace(place, readings=()).history(zone, start - _DAY, end + _DAY)


def _marks(
    place: Place,
    expected: History,
    zone: ZoneInfo,
    span: tuple[datetime, datetime],
    celsius: float,
) -> list[datetime]:
    """Instants between which the warmed pattern runs straight, to the minute."""
    start, end = span
    hours = (start + _HOUR * step for step in range(int((end - start) / _HOUR) + 1))
    marks = {start, end, *hours}
    days = {start.astimezone(zone).date(), end.astimezone(zone).date()}
    kinks = {instant(zone, day, point.at) for day in days for point in place.pattern}
    marks |= {kink for kink in kinks if start < kink < end}
    for one, other in pairwise(sorted(marks)):
        low = _at(expected, one) - celsius
        high = _at(expected, other, before=True) - celsius
        if low * high < 0.0:
            marks.add(_minute(one + (other - one) * (low / (low - high))))
    return sorted(marks)


def _at(expected: History, when: datetime, *, before: bool = False) -> float:
    """What is expected at an instant; where it makes a step, after it or `before` it."""
    second = when.timestamp()
    found = expected.part(second - 1.0, second).celsius[-1] if before else None
    found = expected.celsius_at(second) if found is None else found
    return 0.0 if found is None else found


def _degree_hours(expected: History, marks: list[datetime], celsius: float) -> float:
    return (
        sum(
            (other - one).total_seconds()
            * (
                max(0.0, celsius - _at(expected, one))
                + max(0.0, celsius - _at(expected, other, before=True))
            )
            / 2.0
            for one, other in pairwise(marks)
        )
        / _SECONDS_IN_HOUR
    )


def _warmer(expected: History, marks: list[datetime], celsius: float) -> list[Spell]:
    """The hours in which it would be colder; the heater never cools."""
    spells: list[Spell] = []
    for one, other in pairwise(marks):
        middle = _at(expected, one) + _at(expected, other, before=True)
        if middle / 2.0 >= celsius:
            continue
        if spells and spells[-1].end == one:
            spells[-1] = replace(spells[-1], end=other)
        else:
            spells.append(Spell(start=one, end=other, celsius=celsius))
    return spells


WHAT_IF = WhatIf("heating", "What if the heater is on tonight?", _parameters, _tried)
