"""What if somebody works an evening more, or begins earlier, on one day."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING, Any

from studio_planner.craft.day_words import day_word
from studio_planner.craft.hands import Person, WorkHours
from studio_planner.craft.local_time import daily_span
from studio_planner.craft.tongue import translate
from studio_planner.services.editing.nouns import with_thing
from studio_planner.services.editing.people import person_of
from studio_planner.services.questions.asking import Kind, Parameter
from studio_planner.services.trying.trial import CannotTry, Trial, WhatIf, no_person

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.local_time import Span
    from studio_planner.services.desk import DeskView

_ONCE = "FREQ=DAILY;COUNT=1"
_EVENING = time(18), time(22)
_HOUR, _DAY = timedelta(hours=1), timedelta(days=1)
_WEEK = 7
_MIDNIGHT = time(0)


def _person(view: DeskView) -> Parameter:
    options = tuple((one.key, one.name) for one in view.studio.people)
    first = next((key for key, _ in options), "")
    return Parameter("person", "Who", Kind.CHOICE, first, options)


def _days(view: DeskView) -> list[date]:
    today = view.now.astimezone(view.studio.time_zone).date()
    return [today + timedelta(days=ahead) for ahead in range(_WEEK)]


def _evening_parameters(view: DeskView) -> tuple[Parameter, ...]:
    days = _days(view)
    free = days[0]
    if view.studio.people:
        first = view.studio.people[0]
        free = next((day for day in days if not _work_on(view, first, day, *_EVENING)), free)
    return (
        _person(view),
        Parameter("day", "On", Kind.DATE, free),
        Parameter("start", "From", Kind.TIME, _EVENING[0]),
        Parameter("end", "Until", Kind.TIME, _EVENING[1]),
    )


def _evening(view: DeskView, given: Mapping[str, Any]) -> Trial:
    person = person_of(view.studio, given["person"])
    if person is None:
        raise no_person()
    hours = (given["start"], given["end"])
    _, end = daily_span(view.studio.time_zone, given["day"], *hours)
    if end <= view.now:
        raise CannotTry(
            translate("trying", "Those hours are past; choose some that are to come.")
        )
    return _with(view, person, given["day"], *hours)


def _earlier_parameters(view: DeskView) -> tuple[Parameter, ...]:
    zone = view.studio.time_zone
    who = _person(view)
    person = person_of(view.studio, who.value)
    first = None if person is None else _next_start(view, person)
    start = (view.now if first is None else first).astimezone(zone) - _HOUR
    return (
        who,
        Parameter("day", "On", Kind.DATE, start.date()),
        Parameter("start", "From", Kind.TIME, time(start.hour, start.minute)),
    )


def _earlier(view: DeskView, given: Mapping[str, Any]) -> Trial:
    person = person_of(view.studio, given["person"])
    if person is None:
        raise no_person()
    spans = _work_on(view, person, given["day"], _MIDNIGHT, _MIDNIGHT)
    if not spans:
        raise CannotTry(
            translate(
                "trying", "{person} does not work on that day; ask for an evening more instead."
            ).format(person=person.name)
        )
    begins = spans[0][0].astimezone(view.studio.time_zone)
    usual = time(begins.hour, begins.minute)
    if given["start"] >= usual:
        raise CannotTry(
            translate(
                "trying", "{person} begins at {usual:%H:%M} on that day; go below it."
            ).format(person=person.name, usual=usual)
        )
    return _with(view, person, given["day"], given["start"], usual)


def _with(view: DeskView, person: Person, day: date, start: time, end: time) -> Trial:
    more = WorkHours(rule=_ONCE, first=day, start=start, end=end)
    return Trial(
        words=translate("changes", "{person} works more on {day}").format(
            person=person.name, day=day_word(day)
        ),
        studio=with_thing(view.studio, replace(person, work=(*person.work, more))),
    )


def _work_on(
    view: DeskView, person: Person, day: date, start: time, end: time
) -> tuple[Span, ...]:
    zone = view.studio.time_zone
    begins, ends = daily_span(zone, day, start, end)
    return person.working(zone, begins.astimezone(UTC), ends.astimezone(UTC))


def _next_start(view: DeskView, person: Person) -> datetime | None:
    spans = person.working(view.studio.time_zone, view.now, view.now + _WEEK * _DAY)
    return next((start for start, _ in spans if start > view.now), None)


EVENING_MORE = WhatIf(
    "evening-more", "What if I work an evening more?", _evening_parameters, _evening
)
EARLIER = WhatIf("earlier", "What if I begin earlier?", _earlier_parameters, _earlier)
