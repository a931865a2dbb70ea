"""What if somebody is away for a while."""

from __future__ import annotations

from dataclasses import replace
from datetime import time, timedelta
from typing import TYPE_CHECKING, Any

from studio_planner.craft.hands import Absence
from studio_planner.craft.local_time import instant
from studio_planner.craft.tongue import translate
from studio_planner.services.editing.nouns import with_thing
from studio_planner.services.editing.people import person_of
from studio_planner.services.questions.asking import Kind, Parameter
from studio_planner.services.trying.trial import CannotTry, Trial, WhatIf, no_person

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.services.desk import DeskView

_MORNING, _EVENING = time(8), time(20)
_SOON, _LONG = timedelta(days=2), timedelta(days=2)


def _parameters(view: DeskView) -> tuple[Parameter, ...]:
    people = tuple((one.key, one.name) for one in view.studio.people)
    first = next((key for key, _ in people), "")
    day = view.now.astimezone(view.studio.time_zone).date() + _SOON
    return (
        Parameter("person", "Who", Kind.CHOICE, first, people),
        Parameter("leaves_on", "Away from", Kind.DATE, day),
        Parameter("leaves_at", "At", Kind.TIME, _MORNING),
        Parameter("back_on", "Back on", Kind.DATE, day + _LONG),
        Parameter("back_at", "At", Kind.TIME, _EVENING),
    )


def _tried(view: DeskView, given: Mapping[str, Any]) -> Trial:
    person = person_of(view.studio, given["person"])
    if person is None:
        raise no_person()
    zone = view.studio.time_zone
    start = instant(zone, given["leaves_on"], given["leaves_at"])
    end = instant(zone, given["back_on"], given["back_at"])
    if not start < end or end <= view.now:
        raise CannotTry(
            translate(
                "trying", "Give a time to be back that is to come and after the one to leave."
            )
        )
    away = replace(person, absences=(*person.absences, Absence(start=start, end=end)))
    return Trial(
        words=translate("changes", "{person} is away").format(person=person.name),
        studio=with_thing(view.studio, away),
    )


WHAT_IF = WhatIf("being-away", "What if somebody is away?", _parameters, _tried)
