"""Why there are no hands at all: who is away until when, and who has no working hours."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from studio_planner.craft.day_words import month_said
from studio_planner.craft.saying import Saying, saying
from studio_planner.planning.saying import listed

if TYPE_CHECKING:
    from zoneinfo import ZoneInfo

    from studio_planner.craft.hands import Person
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.placing.chain_times import Means


def why_no_hands(studio: Studio, means: Means) -> Saying:
    """Why nobody works in the time looked at, to follow the name of a piece."""
    return saying(
        "stuck",
        "nobody works before {until}, which is as far as was looked: {who}; add working hours "
        "or shorten an absence, under Studio.",
        until=_day_said(studio.time_zone, datetime.fromtimestamp(means.end, UTC)),
        who=listed(_why(studio, person, means) for person in studio.people),
    )


def _why(studio: Studio, person: Person, means: Means) -> Saying:
    zone = studio.time_zone
    start, end = (datetime.fromtimestamp(second, UTC) for second in (means.now, means.end))
    if not replace(person, absences=()).working(zone, start, end):
        return saying("stuck", "{name} has no working hours", name=person.name)
    back = max(absence.end for absence in person.absences if absence.start < end)
    until = _day_said(zone, back)
    return saying("stuck", "{name} is away until {until}", name=person.name, until=until)


def _day_said(zone: ZoneInfo, when: datetime) -> Saying:
    """A local date with its year: an absence may last long."""
    local = when.astimezone(zone)
    month = month_said(local.month)
    return saying("stuck", "{day} {month} {year}", day=local.day, month=month, year=local.year)
