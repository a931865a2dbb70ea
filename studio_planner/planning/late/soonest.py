"""Walks a chain with each coat poured as soon as it may be: where it waits, and what for."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum, auto
from typing import TYPE_CHECKING

from studio_planner.planning.clocks.stage_times import ALWAYS
from studio_planner.planning.problem import gate_coats, gate_stage
from studio_planner.planning.spans import grid_down, grid_up
from studio_planner.planning.stuck.good_air import in_good_air
from studio_planner.planning.stuck.joint_windows import window_of
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.studio import Studio
    from studio_planner.planning.placing.chain_times import Means
    from studio_planner.planning.problem import Chain, Task


class For(Enum):
    """What a coat waits for once its joint is open."""

    AIR = auto()
    HANDS = auto()


@dataclass(frozen=True, slots=True)
class Wait:
    """Coat `index` could start at `since` and starts at `until`; None stands for packing."""

    index: int | None
    since: int
    until: int
    what: For

    @property
    def seconds(self) -> int:
        """How long it waits."""
        return self.until - self.since


@dataclass(frozen=True, slots=True)
class Missed:
    """The window for coat `index` that closes before its air or its hands allow a start."""

    index: int
    opens: int
    closes: int
    what: For


@dataclass(frozen=True, slots=True)
class Walk:
    """All waits of a chain, and the windows that closed before a coat could be poured."""

    waits: tuple[Wait, ...]
    missed: tuple[Missed, ...]

    def longest(self, what: For) -> Wait | None:
        """The longest wait for something; None when there is none."""
        waits = [wait for wait in self.waits if wait.what is what and wait.seconds > 0]
        return max(waits, key=lambda wait: wait.seconds, default=None)

    def total(self, what: For) -> int:
        """Seconds of waiting for something, all coats together."""
        return sum(wait.seconds for wait in self.waits if wait.what is what)


class Soonest:
    """Pours a chain's coats one after another, each as soon as its joint, air and hands allow.

    It looks at safe windows only; where one is missed and the coat below can be sanded, it goes
    on with a scuffed joint. Spots are left out of account.
    """

    def __init__(self, studio: Studio, means: Means, chain: Chain, place: str) -> None:
        """Walk a chain whose coats to come cure in `place`; poured ones cure where they are."""
        self._studio = studio
        self._means = means
        self._chain = chain
        self._place = place
        self._places = [
            place if task.fixed is None else means.place_of(task.fixed) for task in chain.tasks
        ]
        self._waits: list[Wait] = []
        self._missed: list[Missed] = []
        self._starts: list[int] = []
        self._lacking = For.HANDS

    def walk(self) -> Walk:
        """The whole walk; it ends early at a coat that finds no start."""
        for index, task in enumerate(self._chain.tasks):
            start = self._start(index, task)
            if start is None:
                break
            self._starts.append(start)
        else:
            self._pack()
        return Walk(tuple(self._waits), tuple(self._missed))

    def _start(self, index: int, task: Task) -> int | None:
        if task.fixed is not None:
            return int(task.fixed.start.timestamp())
        low = self._earliest(index, task)
        if low is None:
            return None
        opens, closes = self._window(task)
        if opens is not None and task.has_window:
            last = min(closes - task.block, self._means.until)
            start = self._first(index, task, max(low, opens), last)
            if start is not None:
                return start
            if closes < ALWAYS:
                self._missed.append(Missed(index, opens, closes, self._lacking))
        return self._scuffed(index, task, low)

    def _scuffed(self, index: int, task: Task, low: int) -> int | None:
        if not task.may_scuff:
            return None
        ready = self._reached(task.below or 0, Stage.SANDABLE)
        if ready is None:
            return None
        count = sum(piece.count for piece in self._chain.pieces)
        sanding = self._means.sand_seconds * count + self._means.shop.settle
        return self._first(index, task, max(low, ready + sanding), self._means.until)

    def _first(self, index: int, task: Task, low: int, last: int) -> int | None:
        """The first start with air and hands, and the waits for both noted."""
        self._lacking = For.HANDS
        wished = [(grid_up(low), grid_down(last))]
        if wished[0][0] > wished[0][1]:
            return None
        material = self._chain.pieces[0].material
        airy = in_good_air(self._means, task, material, self._place, wished)
        self._lacking = For.HANDS if airy else For.AIR
        if not airy:
            return None
        handy = self._means.shop.starts(airy, task.lead, task.block, 1)
        if not handy:
            return None
        start = handy[0][0]
        self._waits.append(Wait(index, wished[0][0], airy[0][0], For.AIR))
        self._waits.append(Wait(index, airy[0][0], start, For.HANDS))
        return start

    def _earliest(self, index: int, task: Task) -> int | None:
        low = max(self._means.now + task.lead, self._means.settled(task))
        if index:
            before = self._chain.tasks[index - 1]
            low = max(low, self._starts[index - 1] + before.block + task.lead)
        for other in task.rests_on:
            product = self._chain.tasks[other].product
            clock = self._means.edges.handle(product, self._places[other])
            handled = clock.at(self._spread(other))
            if handled is None:
                return None
            low = max(low, handled + task.lead)
        return low

    def _window(self, task: Task) -> tuple[int | None, int]:
        """When the joint to the coat below opens (None: never) and closes."""
        if task.below is None:
            return self._means.now, ALWAYS
        start, end = self._starts[task.below], self._spread(task.below)
        below = self._chain.tasks[task.below]
        there = self._places[task.below]
        return window_of(self._means.edges, task, below, there, (start, end))

    def _spread(self, index: int) -> int:
        return self._starts[index] + self._chain.tasks[index].block

    def _reached(self, index: int, stage: Stage) -> int | None:
        product = self._chain.tasks[index].product
        clock = self._means.edges.not_before(product, self._places[index], stage)
        return None if clock is None else clock.at(self._spread(index))

    def _pack(self) -> None:
        order = self._chain.order
        ready = None if order is None else self._gates(order.gate.stage)
        if order is None or ready is None:
            return
        after = max(ready, self._means.now)
        start = self._means.shop.earliest(after, order.packing_minutes * 60)
        if start is not None:
            self._waits.append(Wait(None, after, start, For.HANDS))

    def _gates(self, wished: Stage) -> int | None:
        piece = self._chain.pieces[0]
        times: list[int | None] = [self._spread(len(self._starts) - 1)]
        for coat in gate_coats(self._studio, piece, wished):
            index = piece.position(coat.key)
            stage = gate_stage(self._chain.tasks[index].product, wished)
            times.append(None if stage is None else self._reached(index, stage))
        return _latest(times)


def _latest(times: Sequence[int | None]) -> int | None:
    known = [one for one in times if one is not None]
    return max(known) if len(known) == len(times) else None
