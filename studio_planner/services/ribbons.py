"""What the desk draws of a plan: one lane for each piece, with its ribbons, steps and flags.

Only values and clocks; nothing here knows how a ribbon looks. Films, windows and flags are
worked out when they are first asked for, so that a long plan opens at once.
"""

from __future__ import annotations

from bisect import bisect_left
from dataclasses import dataclass
from functools import cached_property
from itertools import zip_longest
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import clipped, without
from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import PlannedCoat, Trust, Window
from studio_planner.science.stages import Edge, Stage
from studio_planner.services.film_shades import Film

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence
    from datetime import datetime

    from studio_planner.craft.local_time import Span
    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.plans import Plan, PlannedStep
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio
    from studio_planner.craft.timing import Leg, Timing

FLAG_STAGES = (Stage.HANDLE, Stage.PRINT_FREE, Stage.FULL_CURE)
"""What a maker waits for once the last coat is on: to handle, to pack, and full cure."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Doorway:
    """The window to recoat a film: when it opens and closes, and where nobody can work in it.

    `used` tells whether the next coat stands in it; a scuffed coat comes after it instead.
    """

    opens: datetime
    closes: datetime | None
    trust: Trust
    used: bool
    nobody: tuple[Span, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Flag:
    """When a whole piece is ready for something: likely and safe; None: not in this record."""

    stage: Stage
    likely: datetime | None
    safe: datetime | None


class Hands:
    """All spans in which somebody can work, searched quickly."""

    def __init__(self, spans: Sequence[Span]) -> None:
        """Take merged spans in order of time."""
        self.spans = tuple(spans)
        self._ends = [end for _, end in self.spans]

    def missing(self, start: datetime, end: datetime) -> tuple[Span, ...]:
        """The parts from `start` to `end` in which nobody can work."""
        working = self.spans[bisect_left(self._ends, start) :]
        near = [span for span in working[: bisect_left(working, (end, end))] if span[0] < end]
        return without([(start, end)], clipped(near, start, end))


@dataclass(frozen=True, slots=True)
class PlannedStudio:
    """What all lanes share: the studio, its plan, its clocks and its hands."""

    studio: Studio
    plan: Plan | None
    timing: Timing
    hands: Hands


class Ribbon:
    """One coat on a lane: its hands-on block, then its film until the next coat covers it.

    `planned.start` to `planned.end` is the block.
    """

    def __init__(self, lane: Lane, planned: PlannedCoat, legs: Sequence[Leg]) -> None:
        """Place a planned coat on its lane; `legs` say where the piece is from when."""
        self.lane = lane
        self.planned = planned
        self.coat: Coat = lane.piece.coat(planned.coat)
        self.product: Product = lane.studio.product(self.coat.product)
        self.film = Film(lane.timing, self.product, planned.start, planned.end, legs)

    @property
    def start(self) -> datetime:
        """When hands begin: A meets B."""
        return self.planned.start

    @property
    def position(self) -> int:
        """The coat's place in the stack, 0 for the first."""
        return self.lane.piece.position(self.planned.coat)

    @cached_property
    def covered_by(self) -> PlannedCoat | None:
        """The planned coat that lies on this one, None where it stays in the air."""
        piece = self.lane.piece
        return next(
            (c for c in self._later if piece.below(piece.position(c.coat)) == self.position),
            None,
        )

    @cached_property
    def lifted(self) -> bool:
        """Whether a film on another face is still curing in the open air under this one."""
        earlier = (b for b in self.lane.bars if isinstance(b, Ribbon) and b.start < self.start)
        return any(
            b.covered_by is not self.planned and b.until > self.planned.end for b in earlier
        )

    @cached_property
    def until(self) -> datetime:
        """Where the ribbon ends: the next coat's start, or full cure at its safe edge.

        A film that its data sheet does not follow so far ends at its last known stage.
        """
        if self.covered_by is not None:
            return max(self.covered_by.start, self.planned.end)
        known = {mark.stage for mark in self.film.marks}
        ends = [
            self.film.safe(stage) for stage in (*FLAG_STAGES, Stage.TACK_FREE) if stage in known
        ]
        if not ends:
            return self.planned.end
        return max(end or self.lane.timing.end for end in ends)

    @property
    def hidden_after(self) -> datetime:
        """When nothing of the ribbon shows any more, found without a clock if it can be."""
        return self.covered_by.start if self.covered_by is not None else self.until

    @cached_property
    def tones(self) -> tuple[tuple[float, float], ...]:
        """(second, tone 0 wet to 1 hard) from the block's end to where the ribbon ends."""
        return self.film.tones(self.until.timestamp())

    @cached_property
    def doorway(self) -> Doorway | None:
        """The window to recoat this film; None where no coat is meant to bond to it in one."""
        over = self._over
        if over is None or over.joint is Joint.WET_IN_WET:
            return None
        planned = self.covered_by
        used = planned is not None and planned.window is not None
        window = planned.window if used and planned is not None else self._safe_window(over)
        if window is None:
            return None
        last = window.closes or self.until
        nobody = self.lane.hands.missing(window.opens, last) if window.opens < last else ()
        return Doorway(
            opens=window.opens,
            closes=window.closes,
            trust=window.trust,
            used=used,
            nobody=nobody,
        )

    @property
    def _later(self) -> list[PlannedCoat]:
        coats = self.lane.coats
        return list(coats[coats.index(self.planned) + 1 :])

    @property
    def _over(self) -> Coat | None:
        piece = self.lane.piece
        later = range(self.position + 1, len(piece.stack))
        return next((piece.stack[i] for i in later if piece.below(i) == self.position), None)

    def _safe_window(self, over: Coat) -> Window | None:
        opens = self.film.safe(Stage.RECOAT_OPENS)
        closes = self.film.safe(Stage.RECOAT_CLOSES)
        if opens is None or over.joint is not Joint.IN_WINDOW:
            return None
        if closes is None or opens < closes:
            return Window(opens=opens, closes=closes, trust=Trust.SAFE)
        return None


class StepMark:
    """One step beside the pours on a lane: sand, turn, tape, trim or pack."""

    def __init__(self, lane: Lane, planned: PlannedStep) -> None:
        """Place a planned step on its lane."""
        self.lane = lane
        self.planned = planned

    @property
    def start(self) -> datetime:
        """When hands begin."""
        return self.planned.start

    @property
    def hidden_after(self) -> datetime:
        """When it is done."""
        return self.planned.end


Bar = Ribbon | StepMark


class Lane:
    """One piece or set: its bars in order of time, and its ready flags."""

    def __init__(
        self,
        whole: PlannedStudio,
        piece: Piece,
        coats: Sequence[PlannedCoat],
        steps: Sequence[PlannedStep],
    ) -> None:
        """Lay out one piece; `coats` and `steps` are all that the plan has for it."""
        self.studio = whole.studio
        self.plan = whole.plan
        self.timing = whole.timing
        self.hands = whole.hands
        self.piece = piece
        self.coats = tuple(sorted(coats, key=_by_start))
        self._steps = tuple(sorted(steps, key=_by_start))

    @cached_property
    def bars(self) -> tuple[Bar, ...]:
        """Ribbons and steps, earliest first."""
        legs = self._legs()
        ribbons: list[Bar] = [
            Ribbon(self, coat, [leg for leg in legs if leg[1] >= coat.start])
            for coat in self.coats
        ]
        ribbons += [StepMark(self, step) for step in self._steps]
        return tuple(sorted(ribbons, key=_by_start))

    @property
    def bar_count(self) -> int:
        """How many bars there are, without laying them out."""
        return len(self.coats) + len(self._steps)

    @property
    def spots(self) -> tuple[str, ...]:
        """The names of the spots it stands on, in order, each once."""
        return tuple(dict.fromkeys(self.studio.spot(coat.spot).name for coat in self.coats))

    @property
    def reason(self) -> str:
        """Why the piece, or the rest of it, is not planned; empty when it is."""
        rows = self.plan.unplanned if self.plan else ()
        return next((row.reason for row in rows if row.piece == self.piece.key), "")

    @cached_property
    def flags(self) -> tuple[Flag, ...]:
        """When the whole piece can be handled, can be packed, and is fully cured."""
        if len(self.coats) < len(self.piece.stack):
            return ()
        rows = self.plan.ready if self.plan else ()
        kept = {row.stage: row for row in rows if row.piece == self.piece.key}
        flags = []
        for stage in FLAG_STAGES:
            row = kept.get(stage)
            if row is not None:
                flags.append(Flag(stage=stage, likely=row.likely, safe=row.safe))
            elif not kept and (found := self._flag_by_clock(stage)) is not None:
                flags.append(found)
        return tuple(flags)

    def _flag_by_clock(self, stage: Stage) -> Flag | None:
        films = [
            bar.film
            for bar in self.bars
            if isinstance(bar, Ribbon) and any(p.stage is stage for p in bar.product.sheet)
        ]
        if not films:
            return None
        likely = [film.reached(stage, Edge.LIKELY) for film in films]
        safe = [film.reached(stage, Edge.LATE) for film in films]
        return Flag(stage=stage, likely=_latest(likely), safe=_latest(safe))

    def _legs(self) -> list[Leg]:
        """Where the piece is from when: on a spot until *handle*, then at rest."""
        rest = self.studio.resting_place
        legs: list[Leg] = []
        for coat, following in zip_longest(self.coats, self.coats[1:]):
            place = self.studio.place_of_spot(coat.spot).key
            legs.append((place, coat.start))
            if rest is None or rest.key == place:
                continue
            product = self.studio.product(self.piece.coat(coat.coat).product)
            handled = self.timing.safe(product, Stage.HANDLE, [(place, coat.end)])
            if handled is not None and (following is None or handled < following.start):
                legs.append((rest.key, handled))
        return legs


def lanes_of(studio: Studio, plan: Plan | None, timing: Timing) -> tuple[Lane, ...]:
    """Give one lane for each piece, in the studio's order; without a plan, what was poured."""
    hands = Hands(_working(studio, timing.start, timing.end))
    coats: dict[str, list[PlannedCoat]] = {}
    for coat in plan.coats if plan else poured_coats(studio):
        coats.setdefault(coat.piece, []).append(coat)
    steps: dict[str, list[PlannedStep]] = {}
    for step in plan.steps if plan else ():
        steps.setdefault(step.piece, []).append(step)
    whole = PlannedStudio(studio, plan, timing, hands)
    return tuple(
        Lane(whole, piece, coats.get(piece.key, ()), steps.get(piece.key, ()))
        for piece in studio.pieces
    )


def poured_coats(studio: Studio) -> tuple[PlannedCoat, ...]:
    """What was poured, numbered in order of start, for a studio without a plan."""
    pours = sorted(studio.poured, key=_by_start)
    return tuple(
        PlannedCoat(
            number=number,
            piece=pour.piece,
            coat=pour.coat,
            start=pour.start,
            end=pour.end,
            spot=pour.spot,
            joint=pour.joint,
            mix=number,
            person="",
            poured=True,
        )
        for number, pour in enumerate(pours, start=1)
    )


def _working(studio: Studio, start: datetime, end: datetime) -> tuple[Span, ...]:
    zone = studio.time_zone
    spans = (span for person in studio.people for span in person.working(zone, start, end))
    return clipped(spans, start, end)


def _latest(whens: Iterable[datetime | None]) -> datetime | None:
    found = list(whens)
    known = [when for when in found if when is not None]
    return max(known) if known and len(known) == len(found) else None


def _by_start(thing: _Starting) -> datetime:
    return thing.start


if TYPE_CHECKING:
    from typing import Protocol

    class _Starting(Protocol):
        @property
        def start(self) -> datetime: ...
