"""How far a film has come: its stages along the likely clock, and its shade at any minute.

A film's shade runs from 0 (wet) to 1 (as hard as its data sheet goes). Between two stages it
follows the clock of the next one: the share of that stage that the film has reached.
"""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise
from typing import TYPE_CHECKING

from studio_planner.science.clocks import degree_over
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence
    from datetime import datetime

    from studio_planner.craft.products import Product
    from studio_planner.craft.timing import Leg, Timing

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
    """From one stage to the next: instants, tones, and the share already there at its start."""

    begins: float
    mark: StageMark
    tones: tuple[float, float]
    begun: float


class Film:
    """One spread film: where it lies from when, and what the likely clocks say about it.

    `mixed` and `spread` are the start and the end of its hands-on block (aware); `legs` begin
    at `mixed`. Nothing is computed before it is asked for.
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
        self._legs = tuple(legs)

    def reached(self, stage: Stage, edge: Edge) -> datetime | None:
        """When the film reaches a stage; *not after* stages count from the mixing."""
        since = self.mixed if stage.not_after else self.spread
        return self._timing.reached(self.product, stage, edge, self._legs_since(since))

    def safe(self, stage: Stage) -> datetime | None:
        """When the film reaches a stage at its safe edge."""
        return self.reached(stage, Edge.EARLY if stage.not_after else Edge.LATE)

    @cached_property
    def marks(self) -> tuple[StageMark, ...]:
        """The stages that its data sheet knows, in the order it likely reaches them."""
        known = {point.stage for point in self.product.sheet}
        marks = []
        for stage in TONES:
            if stage in known:
                when = self.reached(stage, Edge.LIKELY)
                marks.append(StageMark(stage, None if when is None else when.timestamp()))
        return tuple(sorted(marks, key=_when))

    def first_of(self, stages: Iterable[Stage], otherwise: float) -> float:
        """When the first of some stages is likely reached [s]; `otherwise` when none is."""
        found = [self._at[stage] for stage in stages if stage in self._at]
        return min(found, default=otherwise)

    @cached_property
    def _at(self) -> dict[Stage, float]:
        return {mark.stage: mark.at for mark in self.marks if mark.at is not None}

    def shade_at(self, second: float) -> Shade:
        """The film's shade at an instant (seconds since 1970 UTC); wet before it is spread."""
        steps = self._steps
        passed = bisect_right([_when(step.mark) for step in steps], second)
        if passed == len(steps):
            return Shade(passed, None, 1.0, 1.0)
        step = steps[passed]
        share = self._share(step.mark.stage, second)
        way = (share - step.begun) / (1.0 - step.begun) if step.begun < 1.0 else 1.0
        low, high = step.tones
        tone = low + (high - low) * min(max(way, 0.0), 1.0)
        return Shade(passed, step.mark.stage, min(max(share, 0.0), 1.0), tone)

    def tones(self, until: float) -> tuple[tuple[float, float], ...]:
        """The tone from the end of the block `until` an instant, dense enough to draw."""
        start = self.spread.timestamp()
        cuts = [start, *(m.at for m in self.marks if m.at is not None and start < m.at < until)]
        seconds = [
            begin + (end - begin) * index / count
            for begin, end in pairwise([*cuts, until])
            for count in (_samples(end - begin),)
            for index in range(count)
        ]
        return tuple((second, self.shade_at(second).tone) for second in [*seconds, until])

    @cached_property
    def _steps(self) -> tuple[_Step, ...]:
        start = self.spread.timestamp()
        tones = [0.0, *sorted(TONES[mark.stage] for mark in self.marks)]
        tones[-1] = 1.0 if self.marks else 0.0
        steps, begins = [], start
        for mark, pair in zip(self.marks, pairwise(tones), strict=True):
            begun = self._share(mark.stage, begins)
            steps.append(_Step(begins, mark, pair, begun))
            begins = max(start, _when(mark))
        return tuple(steps)

    def _share(self, stage: Stage, second: float) -> float:
        since = self.mixed if stage.not_after else self.spread
        stays = []
        legs = [(place, when.timestamp()) for place, when in self._legs_since(since)]
        ends = [*(when for _, when in legs[1:]), second]
        for (place, begun), end in zip(legs, ends, strict=True):
            clock = self._timing.clock(self.product, place, stage, Edge.LIKELY)
            if clock is not None and begun < second:
                stays.append((clock, begun, min(end, second)))
        return degree_over(stays)

    def _legs_since(self, since: datetime) -> list[Leg]:
        before = [leg for leg in self._legs if leg[1] <= since]
        return [(before[-1][0], since), *(leg for leg in self._legs if leg[1] > since)]


def _when(mark: StageMark) -> float:
    return float("inf") if mark.at is None else mark.at


def _samples(seconds: float) -> int:
    return min(max(round(seconds / _SAMPLE_SECONDS), _FEWEST_SAMPLES), _MOST_SAMPLES)
