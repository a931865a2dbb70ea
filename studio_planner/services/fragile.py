"""The pour that a plan most often fails at, why it does, and what can be done about it.

Named is the cause, not what follows: the coat that is most often the first of its piece to miss
its window. What can be done is begun with the hands that the plan leaves free.
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
    from datetime import datetime

    from studio_planner.craft.hands import Person
    from studio_planner.craft.local_time import Span
    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.services.questions.sentences import Sentence, Voice

_WATCHED = frozenset({StepKind.TAPE, StepKind.TRIM})
"""Steps that need somebody awake, and no free hands."""

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
    """The pour to come that is most often the first to miss its window; None when none is."""
    fragile = [coat for coat in plan.coats if not coat.poured and coat.missed_first]
    return min(
        fragile, key=lambda coat: (-(coat.missed_first or 0.0), coat.start), default=None
    )


def fragile_of(studio: Studio, plan: Plan) -> Fragile | None:
    """Say which pour needs most care, and what can be done; None when nothing was rehearsed."""
    if not plan.rehearsals or all(coat.missed_first is None for coat in plan.coats):
        return None
    coat, weeks = most_fragile(plan), weeks_words(plan.rehearsals)
    if coat is None:
        none = said("None: every pour found its window in all of {weeks}.", weeks=weeks)
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
        "In {share} of {weeks} it is the first of its piece to miss its window.",
        share=share_words(coat.missed_first or 0.0),
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


def _remedy(studio: Studio, plan: Plan, coat: PlannedCoat) -> tuple[Sentence, ...]:
    """Why a coat misses its window, and what may help against it."""
    person = next((one for one in studio.people if one.key == coat.person), None)
    door = _door(plan, coat)
    if person is None:
        return ()
    leaves = _leaves(studio, person, coat)
    return (*_why(person, door, leaves), *_what_to_do(studio, plan, coat, person, door))


def _leaves(studio: Studio, person: Person, coat: PlannedCoat) -> datetime | None:
    """When somebody goes to bed or away after a pour."""
    awake = person.awake(studio.time_zone, coat.start, coat.end + _LOOKED_AHEAD)
    return next((end for start, end in awake if start <= coat.start < end), None)


def _why(person: Person, door: _Door, leaves: datetime | None) -> tuple[Sentence, ...]:
    if door.closes is not None and leaves is not None and leaves < door.closes:
        away = any(absence.start == leaves for absence in person.absences)
        text = (
            "Its window closes {closes}, but {who} is away from {leaves} on."
            if away
            else "Its window closes {closes}, but {who} sleeps from {leaves} on."
        )
        return (said(text, closes=Moment(door.closes), who=person.name, leaves=Moment(leaves)),)
    if door.closes is not None:
        return (said("Its window closes {closes}.", closes=Moment(door.closes)),)
    return ()


def _what_to_do(
    studio: Studio, plan: Plan, coat: PlannedCoat, person: Person, door: _Door
) -> tuple[Sentence, ...]:
    if door.opens is None:
        return ()
    last = door.closes or coat.end + _LOOKED_AHEAD
    span = (max(door.opens, plan.start), max(coat.end, last))
    opens, length = Moment(door.opens), coat.end - coat.start
    found = [(next_on_grid(a), b) for a, b in _free(studio, plan, coat, person, span)]
    starts = [start for start, end in found if start + length <= end]
    sooner = next((start for start in starts if start < coat.start), None)
    if sooner is not None:
        text = "Begin sooner if you can: open from {opens}, and {who} is free from {free}."
        return (said(text, opens=opens, who=person.name, free=Moment(sooner)),)
    later = next((start for start in starts if start > coat.start), None)
    if later is not None:
        text = "It opens {opens}; missed, it is still open {free}, when {who} is free again."
        return (said(text, opens=opens, who=person.name, free=Moment(later)),)
    text = "It opens {opens}, and {who} has no other free time in it: more hours would help."
    return (said(text, opens=opens, who=person.name),)


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
