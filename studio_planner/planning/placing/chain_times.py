"""What a chain's coats and joints need on a ground: stage times, sanding, tape and trim."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import StepKind, Trust
from studio_planner.planning.clocks.stage_times import ALWAYS
from studio_planner.planning.placing.coat_times import CoatTimes
from studio_planner.planning.placing.means import Ground, Means, standing
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from studio_planner.planning.problem import Chain, Task

__all__ = [
    "Allow",
    "ChainTimes",
    "Ground",
    "Means",
    "PlacedJoint",
    "narrow_windows",
    "standing",
]

_NO_SANDINGS: Mapping[int, tuple[int, int]] = {}


@dataclass(frozen=True, slots=True)
class Allow:
    """Which joints besides the safe ones may be used."""

    test_first: bool = False
    scuff: bool = False


@dataclass(frozen=True, slots=True)
class PlacedJoint:
    """A joint as placed: its window in seconds, or its sanding."""

    joint: Joint
    trust: Trust | None = None
    opens: int | None = None
    closes: int | None = None
    sand: tuple[int, int] | None = None


def narrow_windows(task: Task) -> list[tuple[Stage, Stage]]:
    """The tape and trim windows that a coat has, but for what was done already."""
    windows = []
    if task.coat.taped and StepKind.TAPE not in task.done:
        windows.append((Stage.TAPE_OPENS, Stage.TAPE_CLOSES))
    if task.coat.trimmed and StepKind.TRIM not in task.done:
        windows.append((Stage.TRIM_OPENS, Stage.TRIM_CLOSES))
    return windows


class ChainTimes(CoatTimes):
    """The times of one chain on its grounds, with one set of allowed joints, and hands."""

    def __init__(
        self,
        means: Means,
        chain: Chain,
        grounds: Sequence[Ground],
        allow: Allow,
        sandings: Mapping[int, tuple[int, int]] = _NO_SANDINGS,
    ) -> None:
        """Answer for a chain tried on grounds, one for each coat.

        `sandings` are kept for the coats at these positions where they still can be.
        """
        super().__init__(means, chain, grounds)
        self._grounds = grounds
        self.tape_seconds = means.tape_seconds
        self._allow = allow
        self._sandings = sandings

    def tests(self, task: Task) -> bool:
        """Tell whether a joint may rely on a touch test."""
        return self._allow.test_first and task.may_test

    def scuffs(self, task: Task) -> bool:
        """Tell whether a joint may be scuffed."""
        return self._allow.scuff and task.may_scuff

    def settling(self, index: int) -> int:
        """Seconds to leave between sanding for a coat and its block."""
        return max(self._means.shop.settle, self._chain.tasks[index].lead)

    def sand_length(self, index: int) -> int:
        """Seconds of sanding for a coat, with turning first."""
        count = sum(piece.count for piece in self._chain.pieces)
        return self._means.sand_seconds * count + self._chain.tasks[index].lead

    def sanding(self, index: int, starts: list[int]) -> tuple[int, int] | None:
        """The earliest sanding for a coat, turning first where it has to be turned.

        The coat below can be sanded, what lies in between is under its cover, and what the
        piece lies on can be handled.
        """
        task = self._chain.tasks[index]
        below = task.below
        ready = None if below is None else self.sandable(below, starts[below])
        if ready is None:
            return None
        waits: list[int | None] = [ready]
        waits += [self.handled(other, starts[other]) for other in task.rests_on]
        between = range((below or 0) + 1, index)
        waits += [self.covered(i, starts[i]) for i in between]
        if None in waits:
            return None
        length = self.sand_length(index)
        after = max(wait for wait in waits if wait is not None)
        kept = self._sandings.get(index)
        if kept is not None and self._may_stay(kept, after, length):
            return kept
        start = self._means.shop.earliest_sanding(after, length)
        return None if start is None else (start, start + length)

    def _may_stay(self, sand: tuple[int, int], after: int, length: int) -> bool:
        """Tell whether sanding can be done when it was planned before."""
        start, end = sand
        fits = start >= after and end - start == length
        return fits and self._means.shop.earliest_sanding(start, length) == start

    def joint(self, index: int, starts: list[int]) -> PlacedJoint | None:
        """The joint that a coat makes with the starts chosen; None when none holds."""
        task = self._chain.tasks[index]
        if task.fixed is not None:
            return PlacedJoint(task.fixed.joint)
        if task.below is None:
            return PlacedJoint(Joint.BARE)
        if task.sanded is not None:
            settled = self._means.settled(task) <= starts[index]
            return PlacedJoint(Joint.SCUFFED) if settled else None
        start, below_start = starts[index], starts[task.below]
        for trust, edge in ((Trust.SAFE, None), (Trust.TEST_FIRST, Edge.LIKELY)):
            if trust is Trust.SAFE or self.tests(task):
                opens = self.opens(index, below_start, edge)
                closes = self.closes_on_the_way(index, starts, edge)
                inside = opens is not None and opens <= start and start + task.block <= closes
                if inside and task.has_window:
                    shown = None if closes == ALWAYS else closes
                    return PlacedJoint(task.joint, trust, opens, shown)
        return self._scuffed(index, starts)

    def _scuffed(self, index: int, starts: list[int]) -> PlacedJoint | None:
        sanding = self.sanding(index, starts) if self.scuffs(self._chain.tasks[index]) else None
        if sanding is None or sanding[1] + self.settling(index) > starts[index]:
            return None
        return PlacedJoint(Joint.SCUFFED, sand=sanding)

    def steps_fit(self, index: int, starts: list[int]) -> bool:
        """Tell whether tape and drips can be done before the next block of the piece begins.

        And whether size that keeps its spot has it until then.
        """
        task = self._chain.tasks[index]
        last = index + 1 == len(starts)
        before = ALWAYS if last else starts[index + 1] - self._chain.tasks[index + 1].lead
        if task.stays and not last and task.fixed is None:
            shop = self._means.shop
            span = starts[index], starts[index + 1]
            if not all(shop.spots[spot].holds(*span) for spot in self._grounds[index].spots):
                return False
        return all(
            self._step_fits(index, starts[index], window, before)
            for window in narrow_windows(task)
        )

    def _step_fits(
        self, index: int, start: int, window: tuple[Stage, Stage], before: int
    ) -> bool:
        if self.awake_step(index, start, *window, before) is not None:
            return True
        # What is left of a poured coat's window may lie in the night; then it is too late.
        fixed = self._chain.tasks[index].fixed is not None
        return fixed and self.awake_step(index, start, *window, ALWAYS) is None

    def awake_step(
        self, index: int, start: int, opens: Stage, closes: Stage, before: int
    ) -> tuple[int, str] | None:
        """When and by whom tape is pulled or drips are trimmed, before the next block."""
        low, high = self.awake_window(index, start, opens, closes)
        if low >= ALWAYS:
            return None
        return self._means.shop.awake_within(low, min(high, before), self._means.tape_seconds)

    def awake_window(
        self, index: int, start: int, opens: Stage, closes: Stage
    ) -> tuple[int, int]:
        """The safe window for tape or drips; it opens at ALWAYS when it never does."""
        task = self._chain.tasks[index]
        edges, place = self._means.edges, self.place(index)
        opening = edges.not_before(task.product, place, opens)
        closing = edges.not_after(task.product, place, closes)
        low = None if opening is None else opening.at(start + task.block)
        high = ALWAYS if closing is None else closing.at(start)
        return (ALWAYS if low is None else low, high)
