"""What if: one thing changed in a studio, to be planned and compared, and perhaps done."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any

from studio_planner.craft.errors import StudioError
from studio_planner.craft.hands import Absence
from studio_planner.craft.log import Poured
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping
    from datetime import datetime

    from studio_planner.craft.hands import Person
    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView
    from studio_planner.services.questions.asking import Parameter
    from studio_planner.services.questions.sentences import Sentence


class CannotTry(StudioError):  # noqa: N818 - reads as a sentence where it is raised
    """What was asked cannot be tried; the text says why and what to do."""


@dataclass(frozen=True, slots=True)
class Warmth:
    """A place (a key of the tried studio) that is warmer than it would be, from when to when.

    `degree_hours` are the °C above what it would be, summed over its hours.
    """

    place: str
    start: datetime
    end: datetime
    degree_hours: float


@dataclass(frozen=True, slots=True)
class Trial:
    """A studio with one thing changed, before it is planned.

    `words` finish the sentence "Undo: ...". `to_do` says what the maker has to do besides; None
    where that is nothing.
    `coats` are those it is about (piece and coat), if it is about any.
    """

    words: str
    studio: Studio
    to_do: Sentence | None = None
    warmth: Warmth | None = None
    coats: frozenset[tuple[str, str]] = frozenset()


@dataclass(frozen=True, slots=True)
class WhatIf:
    """A question that is answered by planning a changed studio.

    `tried` raises CannotTry or InvalidEntry where what is given makes no sense.
    """

    key: str
    words: str
    parameters: Callable[[DeskView], tuple[Parameter, ...]]
    tried: Callable[[DeskView, Mapping[str, Any]], Trial]


def begun_coats(studio: Studio, now: datetime) -> tuple[PlannedCoat, ...]:
    """The planned coats that have begun by `now` and are not written down as poured."""
    coats = studio.plan.coats if studio.plan is not None else ()
    begun = (one for one in coats if one.start <= now)
    return tuple(one for one in begun if (one.piece, one.coat) not in studio.poured_keys)


def as_followed(studio: Studio, now: datetime) -> Studio:
    """The studio in which the kept plan was followed so far: what has begun is poured.

    Otherwise planning it again would move pours that only nobody has written down, and all of
    that would look like the work of what is tried.
    """
    poured = tuple(
        Poured(
            piece=one.piece,
            coat=one.coat,
            start=one.start,
            end=one.end,
            spot=one.spot,
            joint=one.joint,
        )
        for one in begun_coats(studio, now)
    )
    people = tuple(_at_work(studio, person, now) for person in studio.people)
    return replace(studio, people=people, poured=(*studio.poured, *poured))


def _at_work(studio: Studio, person: Person, now: datetime) -> Person:
    """Somebody who is pouring has no hands for anything else until that is done."""
    coats = (one for one in begun_coats(studio, now) if one.person == person.key)
    blocks = {(one.start, one.end) for one in coats if one.end > now}
    busy = tuple(Absence(start=start, end=end) for start, end in sorted(blocks))
    return replace(person, absences=(*person.absences, *busy)) if busy else person


def done_with(trial: Trial, planned: Studio) -> Studio:
    """The tried studio with the plan that was found for it, as it is kept when it is done.

    What was only taken as poured is planned again as it was, in a plan that begins before it.
    """
    studio, plan = trial.studio, planned.plan
    if plan is None or studio.plan is None:
        return replace(studio, plan=plan, plan_outdated=False)
    start = min(plan.start, studio.plan.start)
    coats = _unpoured(studio, studio.plan, plan)
    return replace(studio, plan=replace(plan, coats=coats, start=start), plan_outdated=False)


def _unpoured(studio: Studio, before: Plan, after: Plan) -> tuple[PlannedCoat, ...]:
    """The coats of a new plan, those as they were before that nobody has written down."""
    written = studio.poured_keys
    were = {(one.piece, one.coat): one for one in before.coats}
    free = max((one.mix for one in after.coats), default=0)
    coats = []
    for one in after.coats:
        was = were.get((one.piece, one.coat))
        if one.poured and was is not None and (one.piece, one.coat) not in written:
            # What shared a mix still does, under a number that the new plan has not given.
            coats.append(replace(was, number=one.number, mix=free + was.mix))
        else:
            coats.append(one)
    return tuple(coats)


def no_person() -> CannotTry:
    """Say that there is nobody to try it with."""
    return CannotTry(
        translate("trying", "Nobody works in this studio yet; add a person on the page Studio.")
    )
