"""Whether a coat that is past its window could follow on washed and sanded ground instead."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import TYPE_CHECKING, NamedTuple

from studio_planner.craft.grid import last_on_grid, next_on_grid
from studio_planner.craft.local_time import clipped
from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import PlannedStep, StepKind
from studio_planner.craft.products import ProductKind
from studio_planner.craft.sheet_stages import may_scuff
from studio_planner.science.stages import Stage
from studio_planner.services.moving.breaks import Break, Rule
from studio_planner.services.moving.held import ribbons_of
from studio_planner.services.moving.joint_then import Met, handled_below
from studio_planner.services.moving.spot_then import covered_at
from studio_planner.services.questions.sentences import Clock, Lasting, Moment, Sentence, said
from studio_planner.services.ribbons import Ribbon

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from studio_planner.craft.local_time import Span
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.services.moving.around import Around
    from studio_planner.services.moving.held import Held

_HANDS = {StepKind.SAND, StepKind.TURN}


class _Slot(NamedTuple):
    """Somebody's hands for turning and sanding, from `start` to `end`."""

    start: datetime
    end: datetime
    person: str


class _Bounds(NamedTuple):
    """Sanding lies between two instants and takes so long; the settling dust follows it."""

    since: datetime
    until: datetime
    length: timedelta


class Scuffing:
    """Finds time to wash and sand before a pour: hands, dust, and what can be sanded."""

    def __init__(self, around: Around) -> None:
        """Look among what stays where it is."""
        self._around = around
        self._covered: dict[Ribbon, datetime] = {}

    def instead(self, held: Held, bar: Ribbon, met: Met, steps: list[PlannedStep]) -> Met:
        """The joint scuffed, with its sanding added to `steps`; else `met`, and why not.

        `steps` are those that go with the pour so far; a turn of the piece that is in them
        comes before the sanding then.
        """
        studio = self._around.studio
        if not bar.coat.holds_on_sanded:
            return met
        if not may_scuff(studio, bar.lane.piece, bar.position):
            return _not(met, _cannot(bar))
        ready = self._ready(bar)
        if ready is None:
            text = "The {below} cannot be sanded in the time looked at."
            return _not(met, said(text, below=_below(bar)))
        lead = sum((s.end - s.start for s in steps if _turns(s, bar)), timedelta())
        minutes = studio.settings.sand_minutes * bar.lane.piece.count
        settle = timedelta(minutes=studio.settings.settle_minutes)
        length = timedelta(minutes=minutes)
        bounds = _Bounds(self._since(ready), held.start - settle, lead + length)
        if bounds.until - bounds.since < bounds.length:
            return _not(met, self._too_soon(bar, bounds, settle))
        slot = self._latest(held, bar, bounds, steps)
        if slot is None:
            text = (
                "Nobody has {lasting} to wash and sand it before that: from {ready} on hands "
                "are busy, or something wet would get the dust."
            )
            lasting = Lasting(bounds.length.total_seconds() / 3600.0)
            return _not(met, said(text, lasting=lasting, ready=Moment(bounds.since)))
        self._add(bar, slot, lead, steps)
        return Met(joint=Joint.SCUFFED, breaks=(self._words(slot, lead, settle),))

    def _ready(self, bar: Ribbon) -> datetime | None:
        """When the coat below can be sanded and all else of the piece bears it."""
        bars, piece = ribbons_of(bar.lane), bar.lane.piece
        position = piece.below(bar.position)
        below = None if position is None else bars.get(piece.stack[position].key)
        if below is None or position is None:
            return None
        waits = [below.film.safe(Stage.SANDABLE), *handled_below(bar.lane, bar)]
        between = (bars.get(coat.key) for coat in piece.stack[position + 1 : bar.position])
        waits += [covered_at(one) for one in between if one is not None]
        found = [wait for wait in waits if wait is not None]
        return max(found) if len(found) == len(waits) else None

    def _since(self, ready: datetime) -> datetime:
        view = self._around.view
        begins = view.now if view.plan is None else max(view.now, view.plan.start)
        return next_on_grid(max(ready, begins))

    def _too_soon(self, bar: Ribbon, bounds: _Bounds, settle: timedelta) -> Sentence:
        text = (
            "Washed and sanded first it can be poured from {soonest} on: the {below} can be "
            "sanded from {ready}."
        )
        soonest = bounds.since + bounds.length + settle
        facts = {"soonest": Moment(soonest), "ready": Moment(bounds.since)}
        return said(text, below=_below(bar), **facts)

    # When

    def _latest(
        self, held: Held, bar: Ribbon, bounds: _Bounds, steps: list[PlannedStep]
    ) -> _Slot | None:
        """The latest sanding that hands and dust allow."""
        dust = [*self._dusted(bar, bounds)]
        own = [(s.start, s.end) for s in steps if s.kind in _HANDS and not _turns(s, bar)]
        found: list[_Slot] = []
        for key, spans in self._around.working.items():
            busy = [(work.start, work.end) for work in self._around.busy[key]]
            start = _latest_free([*busy, *own, *dust], spans, bounds)
            if start is not None:
                found.append(_Slot(start, start + bounds.length, key))
        planned = held.mix[0].person
        return max(found, key=lambda slot: (slot.start, slot.person == planned), default=None)

    def _dusted(self, bar: Ribbon, bounds: _Bounds) -> Iterator[Span]:
        """When sanding would dust a pour, then or while its dust settles, or a wet face."""
        settle = timedelta(minutes=self._around.studio.settings.settle_minutes)
        for lane in self._around.view.lanes:
            for other in lane.bars:
                if other.start >= bounds.until + settle or not isinstance(other, Ribbon):
                    continue
                if other.product.kind is not ProductKind.LEAF and self._stays(bar, other):
                    until = self._covered_at(other)
                    if until > bounds.since:
                        yield other.start - settle, until

    def _stays(self, bar: Ribbon, other: Ribbon) -> bool:
        """Whether another pour is neither in the hand nor a later coat of the same piece."""
        piece, mine = bar.lane.piece.key, other.lane.piece.key
        if (mine, other.coat.key) in self._around.coats:
            return False
        return mine != piece or other.position < bar.position

    def _covered_at(self, bar: Ribbon) -> datetime:
        if bar not in self._covered:
            self._covered[bar] = covered_at(bar)
        return self._covered[bar]

    def _add(self, bar: Ribbon, slot: _Slot, lead: timedelta, steps: list[PlannedStep]) -> None:
        steps[:] = [
            PlannedStep(
                kind=step.kind,
                piece=step.piece,
                coat=step.coat,
                start=slot.start,
                end=slot.start + lead,
                person=slot.person,
            )
            if _turns(step, bar)
            else step
            for step in steps
        ]
        sanding = PlannedStep(
            kind=StepKind.SAND,
            piece=bar.lane.piece.key,
            coat=bar.coat.key,
            start=slot.start + lead,
            end=slot.end,
            person=slot.person,
        )
        steps.append(sanding)

    def _words(self, slot: _Slot, lead: timedelta, settle: timedelta) -> Break:
        text = (
            "It is washed and sanded first: {who}, {start} to {end}; the dust settles until "
            "{settled}."
        )
        who = next(p.name for p in self._around.studio.people if p.key == slot.person)
        words = said(
            text,
            who=who,
            start=Moment(slot.start + lead),
            end=Clock(slot.end),
            settled=Clock(slot.end + settle),
        )
        return Break(rule=Rule.SCUFF, words=words, hard=False)


def replaced_sandings(
    mets: Sequence[Met], coats: Sequence[PlannedCoat], steps: Iterable[PlannedStep]
) -> frozenset[tuple[str, str]]:
    """The coats (piece, coat) whose planned sanding goes, or is elsewhere in `steps`."""
    sanded = {(step.piece, step.coat) for step in steps if step.kind is StepKind.SAND}
    keys = zip(mets, ((coat.piece, coat.coat) for coat in coats), strict=True)
    return frozenset(
        key for met, key in keys if met.joint is not Joint.SCUFFED or key in sanded
    )


def _latest_free(
    taken: list[Span], spans: tuple[Span, ...], bounds: _Bounds
) -> datetime | None:
    """The latest start on the grid inside `spans` that meets nothing of what is taken."""
    for begin, end in reversed(clipped(spans, bounds.since, bounds.until)):
        start = last_on_grid(end - bounds.length)
        while start >= begin:
            met = [a for a, b in taken if a < start + bounds.length and start < b]
            if not met:
                return start
            start = last_on_grid(min(met) - bounds.length)
    return None


def _turns(step: PlannedStep, bar: Ribbon) -> bool:
    mine = (step.piece, step.coat) == (bar.lane.piece.key, bar.coat.key)
    return mine and step.kind is StepKind.TURN


def _not(met: Met, words: Sentence) -> Met:
    return Met(joint=met.joint, breaks=(*met.breaks, Break(rule=Rule.SCUFF, words=words)))


def _cannot(bar: Ribbon) -> Sentence:
    piece = bar.lane.piece
    position = piece.below(bar.position)
    if position is not None and piece.stack[position].sandable:
        text = "The sheet of the {below} does not say from when on it can be sanded."
        return said(text, below=_below(bar))
    return said("The {below} can't be sanded to make up for it.", below=_below(bar))


def _below(bar: Ribbon) -> str:
    piece = bar.lane.piece
    position = piece.below(bar.position)
    return piece.coat_name(piece.stack[0 if position is None else position].key)
