"""The pour that a plan most often fails at, why it does, and what can be done about it.

Named is the cause, not what follows: the coat with which its piece most often goes wrong first.
What can be done is done with the hands that the plan leaves free.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.grid import next_on_grid
from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.local_time import without
from studio_planner.craft.plans import StepKind
from studio_planner.services.how_sure import share_words, weeks_words
from studio_planner.services.questions.sentences import Moment, said

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import datetime

    from studio_planner.craft.hands import Person
    from studio_planner.craft.local_time import Span
    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.services.questions.sentences import Sentence, Voice

_WATCHED = frozenset({StepKind.TAPE, StepKind.TRIM})
"""Steps that need somebody awake, and no free hands."""

_A_DAY = timedelta(days=1)

_LOOKED_AHEAD = timedelta(days=14)
"""How long after a pour its person's day, and hands in its window, are looked for at most."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Fragile:
    """The pour that needs most care; `piece` is empty when none needs any."""

    title: Sentence
    details: tuple[Sentence, ...]
    piece: str = ""

    def detail(self, voice: Voice) -> str:
        """How often it fails, why, and what to do, in sentences."""
        return " ".join(one.words(voice) for one in self.details)

    def words(self, voice: Voice) -> str:
        """All of it."""
        return f"{self.title.words(voice)}: {self.detail(voice)}"


def most_fragile(plan: Plan) -> PlannedCoat | None:
    """The pour to come with which most goes wrong first; None when nothing ever does."""
    fragile = [coat for coat in plan.coats if not coat.poured and coat.wrong_first]
    return min(fragile, key=lambda coat: (-(coat.wrong_first or 0.0), coat.start), default=None)


def fragile_of(studio: Studio, plan: Plan) -> Fragile | None:
    """Say which pour needs most care, and what can be done; None when nothing was rehearsed."""
    if not plan.rehearsals or all(coat.wrong_first is None for coat in plan.coats):
        return None
    coat, weeks = most_fragile(plan), weeks_words(plan.rehearsals)
    if coat is None:
        none = said("None: no piece went wrong in any of {weeks}.", weeks=weeks)
        return Fragile(title=said("Most fragile"), details=(none,))
    piece = studio.piece(coat.piece)
    title = said(
        "Most fragile: {piece}, {coat}, {when} (pour {number})",
        piece=piece.name,
        coat=kind_word(piece.coat(coat.coat).kind),
        when=Moment(coat.start),
        number=coat.number,
    )
    often = said(
        "In {share} of {weeks} its piece goes wrong, and with this coat first.",
        share=share_words(coat.wrong_first or 0.0),
        weeks=weeks,
    )
    return Fragile(title=title, details=(often, *_remedy(studio, plan, coat)), piece=coat.piece)


@dataclass(frozen=True, slots=True)
class _Door:
    """The part of time in which a whole mix may be poured; None: no such edge."""

    opens: datetime | None
    closes: datetime | None


def _door(plan: Plan, coat: PlannedCoat) -> _Door:
    mixed = [one for one in plan.coats if one.mix == coat.mix and not one.poured]
    windows = [one.window for one in mixed if one.window is not None]
    closing = [window.closes for window in windows if window.closes is not None]
    return _Door(
        max((window.opens for window in windows), default=None), min(closing, default=None)
    )


def _remedy(studio: Studio, plan: Plan, coat: PlannedCoat) -> Iterator[Sentence]:
    """Why it goes wrong with a coat, and what may help against it."""
    person = next((one for one in studio.people if one.key == coat.person), None)
    if person is not None:
        door = _door(plan, coat)
        yield from _why(studio, coat, person, door)
        yield from _what_to_do(studio, plan, coat, person, door)


def _why(studio: Studio, coat: PlannedCoat, person: Person, door: _Door) -> Iterator[Sentence]:
    """When its window closes, and when its maker goes if that is sooner."""
    if door.closes is not None:
        yield said("Its window closes {closes}.", closes=Moment(door.closes))
    until = min(door.closes or coat.end + _LOOKED_AHEAD, coat.end + _LOOKED_AHEAD)
    for start, end in person.awake(studio.time_zone, coat.start, until):
        if start <= coat.start < end < until:
            away = any(absence.start == end for absence in person.absences)
            text = "{who} is away from {end} on." if away else "{who} sleeps from {end} on."
            yield said(text, who=person.name, end=Moment(end))


def _what_to_do(
    studio: Studio, plan: Plan, coat: PlannedCoat, person: Person, door: _Door
) -> Iterator[Sentence]:
    """Other free hands while it is open: sooner, or else later."""
    opens = door.opens or coat.start - _A_DAY
    last = door.closes or coat.end + _LOOKED_AHEAD
    free = _free(studio, plan, coat, person, (max(opens, plan.start), last))
    starts = [
        next_on_grid(a) for a, b in free if next_on_grid(a) + (coat.end - coat.start) <= b
    ]
    sooner = next((start for start in starts if start < coat.start), None)
    later = next((start for start in starts if start > coat.start), None)
    if door.opens is not None:
        yield said("It opens {opens}.", opens=Moment(door.opens))
    if sooner is not None:
        text = "Begin sooner if you can: {who} is free from {free}."
        yield said(text, who=person.name, free=Moment(sooner))
    elif later is not None:
        text = "After that {who} is free again from {free}."
        yield said(text, who=person.name, free=Moment(later))
    else:
        text = "{who} has no other free time for it: more hours would help."
        yield said(text, who=person.name)


def _free(
    studio: Studio, plan: Plan, coat: PlannedCoat, person: Person, span: Span
) -> tuple[Span, ...]:
    """When somebody can work and has nothing else to do, with the time of the coat's mix."""
    busy = [
        (one.start, one.end)
        for one in plan.coats
        if one.person == person.key and one.mix != coat.mix and not one.poured
    ]
    busy += [
        (step.start, step.end)
        for step in plan.steps
        if step.person == person.key and step.kind not in _WATCHED
    ]
    return without(person.working(studio.time_zone, *span), busy)
