"""What stays where it is while a pour is moved: hands, spots, sanding, and who is awake."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import merged
from studio_planner.craft.log import EntryKind, GoneKind
from studio_planner.craft.plans import StepKind
from studio_planner.services.moving.held import Stay, stays_on
from studio_planner.services.step_words import step_words

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence
    from datetime import datetime

    from studio_planner.craft.hands import Person
    from studio_planner.craft.local_time import Span
    from studio_planner.craft.plans import PlannedCoat, PlannedStep
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView

_HANDS = {StepKind.SAND, StepKind.TURN, StepKind.PACK}
_ALONG = {StepKind.SAND, StepKind.TURN}


@dataclass(frozen=True, slots=True)
class Work:
    """Somebody's hands from `start` to `end`, and what they are busy with."""

    start: datetime
    end: datetime
    what: str


class Around:
    """All of a studio but one mix; every part is worked out once, when first asked for."""

    def __init__(self, view: DeskView, mix: Sequence[PlannedCoat]) -> None:
        """See `view` without the coats of `mix`."""
        self.view = view
        self.studio: Studio = view.studio
        self.timing = view.timing
        self.coats = {(coat.piece, coat.coat) for coat in mix}
        self.pieces = {coat.piece for coat in mix}
        self._stays: dict[str, tuple[Stay, ...]] = {}

    @property
    def steps(self) -> tuple[PlannedStep, ...]:
        """The steps of the plan."""
        plan = self.view.plan
        return plan.steps if plan else ()

    @cached_property
    def sandings(self) -> tuple[PlannedStep, ...]:
        """The sandings of the plan."""
        return tuple(step for step in self.steps if step.kind is StepKind.SAND)

    @cached_property
    def sanded(self) -> tuple[tuple[str, datetime], ...]:
        """What was sanded already, by the piece's name, and when."""
        studio = self.studio
        names = {one.key: one.name for one in studio.gone if one.kind is GoneKind.PIECE}
        names |= {piece.key: piece.name for piece in studio.pieces}
        return tuple(
            (names.get(entry.piece, entry.piece), entry.at)
            for entry in studio.standing
            if entry.kind is EntryKind.SANDED
        )

    @cached_property
    def busy(self) -> Mapping[str, tuple[Work, ...]]:
        """What each person does besides, by the person's key."""
        found: dict[str, list[Work]] = {person.key: [] for person in self.studio.people}
        for coat in self.view.plan.coats if self.view.plan else ():
            if not coat.poured and (coat.piece, coat.coat) not in self.coats:
                work = Work(coat.start, coat.end, coat_words(self.studio, coat))
                found.setdefault(coat.person, []).append(work)
        for step in self.steps:
            # Its own turning goes along, and its sanding is where it serves, or elsewhere.
            along = step.kind in _ALONG and (step.piece, step.coat) in self.coats
            if step.kind in _HANDS and not along:
                name = f"{self.studio.piece(step.piece).name}, {step_words(self.studio, step)}"
                found.setdefault(step.person, []).append(Work(step.start, step.end, name))
        return {key: tuple(work) for key, work in found.items()}

    @cached_property
    def working(self) -> Mapping[str, tuple[Span, ...]]:
        """When each person can work."""
        return {person.key: self._spans(person) for person in self.studio.people}

    @cached_property
    def awake(self) -> Mapping[str, tuple[Span, ...]]:
        """When each person is there and awake."""
        span = self.timing.start, self.timing.end
        zone = self.studio.time_zone
        return {person.key: person.awake(zone, *span) for person in self.studio.people}

    def _spans(self, person: Person) -> tuple[Span, ...]:
        return person.working(self.studio.time_zone, self.timing.start, self.timing.end)

    @cached_property
    def somebody_awake(self) -> tuple[Span, ...]:
        """When somebody is there and awake."""
        return merged(span for spans in self.awake.values() for span in spans)

    def stays_on(self, spot: str) -> tuple[Stay, ...]:
        """When other pieces are on a spot (a key)."""
        if spot not in self._stays:
            self._stays[spot] = tuple(
                stay
                for lane in self.view.lanes
                if lane.piece.key not in self.pieces
                for stay in stays_on(lane, spot)
            )
        return self._stays[spot]


def coat_words(studio: Studio, coat: PlannedCoat) -> str:
    """A pour in a few words: Moon tray, glitter."""
    piece = studio.piece(coat.piece)
    return f"{piece.name}, {piece.coat_name(coat.coat)}"
