"""How far a film has come: its stages along the likely clock, and its shade at any minute.

A film's shade runs from 0 (wet) to 1 (as hard as its data sheet goes). Between two stages it
follows the clock of the next one: the share of that stage that the film has reached.
"""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from datetime import UTC, datetime
from functools import cached_property
from itertools import pairwise
from typing import TYPE_CHECKING

from studio_planner.science.clocks import degree_over, reached_through
from studio_planner.science.stages import Edge, Stage, safe_edge

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from studio_planner.craft.products import Product
    from studio_planner.craft.timing import Leg, Timing
    from studio_planner.science.clocks import StageClock

TONES = {
    Stage.WORKING_TIME: 0.10,
    Stage.TACK_FREE: 0.34,
    Stage.RECOAT_OPENS: 0.44,
    Stage.SANDABLE: 0.60,
    Stage.HANDLE: 0.70,
    Stage.PRINT_FREE: 0.82,
    Stage.FULL_CURE: 1.0,
}
"""The stages that a shade passes, and how hard each looks; sheets have them in any order."""

FIRM = (Stage.TACK_FREE, Stage.RECOAT_OPENS)
"""With the first of these a film is no longer wet to look at."""

_HARD = (Stage.HANDLE, Stage.PRINT_FREE)
_SAMPLE_SECONDS = 2 * 3600.0
_FEWEST_SAMPLES = 6
_MOST_SAMPLES = 48


@dataclass(frozen=True, slots=True)
class StageMark:
    """A stage of a film, and the likely instant it is reached; None: never in this record."""

    stage: Stage
    at: float | None


@dataclass(frozen=True, slots=True)
class Shade:
    """A film at one instant.

    `reached` counts the stages behind it; `share` is what the likely clock has of the `next`
    one (0 to 1; 1 and None when all are reached); `tone` is 0 for wet to 1 for hard.
    """

    reached: int
    next: Stage | None
    share: float
    tone: float


@dataclass(frozen=True, slots=True)
class _Step:
    """To a stage from the one before: tones, and the share already there at its start."""

    mark: StageMark
    tones: tuple[float, float]
    begun: float

    @property
    def ends(self) -> float:
        """When the stage is reached [s]; infinite when it never is."""
        return _when(self.mark)

    def tone(self, share: float) -> float:
        """The tone at a share of the stage that the step leads to."""
        way = (share - self.begun) / (1.0 - self.begun) if self.begun < 1.0 else 1.0
        low, high = self.tones
        return low + (high - low) * min(max(way, 0.0), 1.0)


class Film:
    """One spread film: where it lies from when, and what the likely clocks say about it.

    `mixed` and `spread` are the start and the end of its hands-on block (aware); the first of
    `legs` begins at `mixed` or before. Nothing is computed before it is asked for.
    """

    def __init__(
        self,
        timing: Timing,
        product: Product,
        mixed: datetime,
        spread: datetime,
        legs: Sequence[Leg],
    ) -> None:
        """Keep what the clocks need."""
        self._timing = timing
        self.product = product
        self.mixed = mixed
        self.spread = spread
        self._begins = spread.timestamp()
        self._legs = [(place, when.timestamp()) for place, when in legs]

    def reached(self, stage: Stage, edge: Edge) -> datetime | None:
        """When the film reaches a stage; *not after* stages count from the mixing."""
        second = self._reached(stage, edge)
        return None if second is None else datetime.fromtimestamp(second, UTC)

    def safe(self, stage: Stage) -> datetime | None:
        """When the film reaches a stage at its safe edge."""
        return self.reached(stage, safe_edge(stage))

    def asking(self, safe: Iterable[Stage]) -> Iterator[None]:
        """Ask the clocks of `marks`, and those of some stages at their safe edge, one by one.

        A clock that was never asked before takes a few milliseconds.
        """
        known = {point.stage for point in self.product.sheet}
        for stage in TONES:
            if stage in known:
                self._reached(stage, Edge.LIKELY)
                yield
        for stage in safe:
            self.safe(stage)
            yield

    @cached_property
    def marks(self) -> tuple[StageMark, ...]:
        """The stages that its data sheet knows, in the order it likely reaches them."""
        known = {point.stage for point in self.product.sheet}
        marks = [
            StageMark(stage, self._reached(stage, Edge.LIKELY))
            for stage in TONES
            if stage in known
        ]
        return tuple(sorted(marks, key=_when))

    def first_of(self, stages: Iterable[Stage], otherwise: float) -> float:
        """When the first of some stages is likely reached [s]; `otherwise` when none is."""
        found = [self._at[stage] for stage in stages if stage in self._at]
        return min(found, default=otherwise)

    def phases(self, until: float) -> tuple[tuple[float, float, float], ...]:
        """The film `until` an instant in three tones, wet, firm, hard: (from, to, tone) [s]."""
        until = max(until, self._begins)
        firm = min(max(self.first_of(FIRM, until), self._begins), until)
        hard = min(max(self.first_of(_HARD, until), firm), until)
        cuts = ((self._begins, firm, 0.15), (firm, hard, 0.5), (hard, until, 0.9))
        return tuple((start, end, tone) for start, end, tone in cuts if end > start)

    @cached_property
    def _at(self) -> dict[Stage, float]:
        return {mark.stage: mark.at for mark in self.marks if mark.at is not None}

    def shade_at(self, second: float) -> Shade:
        """The film's shade at an instant (seconds since 1970 UTC); wet before it is spread."""
        for passed, step in enumerate(self._steps):
            if second < step.ends:
                (share,) = self._shares(step.mark.stage, [second])
                shown = min(max(share, 0.0), 1.0)
                return Shade(passed, step.mark.stage, shown, step.tone(share))
        return Shade(len(self._steps), None, 1.0, 1.0)

    def tones(self, until: float) -> tuple[tuple[float, float], ...]:
        """The tone from the end of the block `until` an instant, dense enough to draw."""
        found: list[tuple[float, float]] = []
        begin = self._begins
        for step in self._steps:
            end = min(step.ends, until)
            if end > begin:
                seconds = _samples(begin, end)
                shares = self._shares(step.mark.stage, seconds)
                found += zip(seconds, map(step.tone, shares), strict=True)
                begin = end
        if not found:
            found = [(begin, self.shade_at(begin).tone)]
        return (*found, (until, self.shade_at(until).tone))

    @cached_property
    def _steps(self) -> tuple[_Step, ...]:
        tones = [0.0, *sorted(TONES[mark.stage] for mark in self.marks)]
        tones[-1] = 1.0 if self.marks else 0.0
        steps, begins = [], self._begins
        for mark, pair in zip(self.marks, pairwise(tones), strict=True):
            (begun,) = self._shares(mark.stage, [begins])
            steps.append(_Step(mark, pair, begun))
            begins = max(self._begins, _when(mark))
        return tuple(steps)

    def _reached(self, stage: Stage, edge: Edge) -> float | None:
        clocks = self._clocks(stage, edge)
        return reached_through(clocks) if clocks else None

    def _shares(self, stage: Stage, seconds: Sequence[float]) -> list[float]:
        """What the likely clock of a stage has at some instants."""
        clocks = self._clocks(stage, Edge.LIKELY)
        if len(clocks) == 1:
            clock, begun = clocks[0]
            return clock.degrees(begun, seconds)
        return [_share(clocks, second) for second in seconds]

    def _clocks(self, stage: Stage, edge: Edge) -> list[tuple[StageClock, float]]:
        """The stage's clock in every place, each from when on; none where its law is missing.

        All places share the product's law: either all of them have a clock or none has.
        """
        product, clock_in = self.product, self._timing.clock
        legs = self._since_mixed if stage.not_after else self._since_spread
        found = ((clock_in(product, place, stage, edge), when) for place, when in legs)
        return [(clock, when) for clock, when in found if clock is not None]

    @cached_property
    def _since_mixed(self) -> list[tuple[str, float]]:
        return self._legs_since(self.mixed.timestamp())

    @cached_property
    def _since_spread(self) -> list[tuple[str, float]]:
        return self._legs_since(self._begins)

    def _legs_since(self, since: float) -> list[tuple[str, float]]:
        here = bisect_right(self._legs, since, key=_instant_of)
        return [(self._legs[here - 1][0], since), *self._legs[here:]]


def _instant_of(leg: tuple[str, float]) -> float:
    return leg[1]


def _share(clocks: Sequence[tuple[StageClock, float]], second: float) -> float:
    ends = [*(when for _, when in clocks[1:]), second]
    return degree_over(
        (clock, begun, min(end, second))
        for (clock, begun), end in zip(clocks, ends, strict=True)
        if begun < second
    )


def _when(mark: StageMark) -> float:
    return float("inf") if mark.at is None else mark.at


def _samples(begin: float, end: float) -> list[float]:
    """Instants from `begin` on, before `end`, near enough for a straight line between them."""
    wanted = round((end - begin) / _SAMPLE_SECONDS)
    count = min(max(wanted, _FEWEST_SAMPLES), _MOST_SAMPLES)
    return [begin + (end - begin) * index / count for index in range(count)]
