"""The feasible starts of a chain's coats, carried forward from coat to coat.

Windows move with the start but never overtake each other (a later pour never opens or closes
earlier), so the feasible starts of each coat are a few stretches.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import CoatKind
from studio_planner.planning.placing.chain_times import narrow_windows
from studio_planner.planning.spans import (
    Span,
    Stretches,
    common,
    grid_down,
    grid_up,
    joined,
    outside,
    united,
)

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.planning.placing.chain_times import ChainTimes, Ground, Means
    from studio_planner.planning.placing.pins import Pins
    from studio_planner.planning.problem import Chain, Task
    from studio_planner.science.stages import Stage

_RANGES = 3
"""For how many stretches of a coat the full number of starts is looked at."""


@dataclass(frozen=True, slots=True)
class Look:
    """How closely a search looks.

    `most` bounds the stretches of each coat; shorter times on a spot than `gap` seconds are
    passed over.
    """

    most: int
    gap: int = 0


class FeasibleStarts:
    """The feasible starts of one chain, coat by coat, as far as the search has come.

    `starts` are those of the coats so far, each given what all before it leave; `truncated`
    tells whether some were left out because there are more of them than is looked at.
    """

    def __init__(  # noqa: PLR0913 - each is one plain question
        self,
        means: Means,
        chain: Chain,
        grounds: Sequence[Ground],
        times: ChainTimes,
        *,
        look: Look,
        pins: Pins,
    ) -> None:
        """Begin with no coat; `grounds` are one for each."""
        self._means = means
        self._chain = chain
        self._grounds = grounds
        self._times = times
        self._most = look.most
        self._gap = look.gap
        self._pins = pins
        self.starts: list[Stretches] = []
        self.truncated = False

    def ranges(self, index: int) -> Stretches:
        """What is asked of the starts of a coat, by those of the coats before it."""
        task = self._chain.tasks[index]
        if task.fixed is not None:
            start = int(task.fixed.start.timestamp())
            return [(start, start)]
        low = self._earliest(index)
        if low is None:
            return []
        ranges = [(grid_up(low), grid_down(self._means.until))]
        pinned = task.pinned_from(self._means.now)
        if pinned is not None:
            ranges = common([(pinned, pinned)], ranges)
        if index in self._pins.ranges:
            ranges = common([self._pins.ranges[index]], ranges)
        if task.below is not None and ranges:
            ranges = common(self._joint_ranges(index), ranges)
        return ranges

    def _earliest(self, index: int) -> int | None:
        task = self._chain.tasks[index]
        low = max(self._means.now + task.lead, self._means.settled(task))
        if index > 0:
            before = self._chain.tasks[index - 1]
            low = max(low, self.starts[index - 1][0][0] + before.block + task.lead)
        waits = list(task.rests_on)
        if index > 0 and self.moved(index):
            if self._chain.tasks[index - 1].stays:
                return None
            waits.append(index - 1)
        for other in waits:
            handled = self._times.handled(other, self.starts[other][0][0])
            if handled is None:
                return None
            low = max(low, handled + task.lead)
        return low

    def moved(self, index: int) -> bool:
        """Tell whether a coat is put on at another spot than the one before it."""
        fixed = self._chain.tasks[index - 1].fixed
        before = self._grounds[index - 1].spots
        if fixed is not None:
            before = (self._means.legs(fixed)[-1][0],)
        return before != self._grounds[index].spots

    def _joint_ranges(self, index: int) -> Stretches:
        task = self._chain.tasks[index]
        below = task.below
        assert below is not None  # noqa: S101 - asked only for coats on a coat
        ranges: Stretches = []
        if task.has_window:
            over = self._times.window_times(index, tests=self._times.tests(task)).over
            for stretch in self.starts[below]:
                ranges += over(stretch)
        ranges += self._scuffed_ranges(index)
        return united(ranges)

    def _scuffed_ranges(self, index: int) -> Stretches:
        if not self._times.scuffs(self._chain.tasks[index]):
            return []
        firsts = [stretches[0][0] for stretches in self.starts]
        sanding = self._times.sanding(index, firsts)
        if sanding is None:
            return []
        return [
            (grid_up(sanding[1] + self._times.settling(index)), grid_down(self._means.until))
        ]

    def within(self, index: int, ranges: Stretches) -> Stretches:
        """The starts within ranges that spots, waking hours, hands, air and dust leave."""
        task = self._chain.tasks[index]
        if task.fixed is not None:
            return ranges
        found, ground = ranges, self._grounds[index]
        for spot in ground.spots:
            found = found and common(found, self._on_spot(task, ground, spot, found))
        for window in narrow_windows(task):
            found = found and common(found, self._awake_for(task, ground.place, window, found))
        if index not in self._pins.shared:
            found = found and self._with_hands(task, found)
        found = found and self._in_good_air(task, found, ground.place)
        return found and self._out_of_dust(index, found)

    def _with_hands(self, task: Task, found: Stretches) -> Stretches:
        shop = self._means.shop
        most = self._most * min(len(found), _RANGES)
        starts = shop.starts(found, task.lead, task.block, most)
        self.truncated = self.truncated or len(starts) >= most
        return starts

    def _in_good_air(self, task: Task, found: Stretches, place: str) -> Stretches:
        """What the air of a place leaves of some starts."""
        air, material = self._means.air, self._chain.pieces[0].material
        found = common(found, air.good(place, task.product, material, task.block))
        if not task.bare_porous:
            return found
        steady: Stretches = []
        for stretch in found:
            steady += outside([stretch], air.rising(place, task.block, *stretch))
        return steady

    def _out_of_dust(self, index: int, found: Stretches) -> Stretches:
        sanding, settle = self._means.shop.sanding, self._means.shop.settle
        if not sanding or self._chain.tasks[index].coat.kind is CoatKind.LEAF:
            return found
        holes: list[Span] = []
        for start, end in sanding:
            if end + settle > found[0][0]:
                begin = self._times.covered_by(index, start)
                if begin >= found[-1][1]:
                    break
                holes.append((begin, end + settle))
        return outside(found, joined(holes))

    def _awake_for(
        self, task: Task, place: str, window: tuple[Stage, Stage], found: Stretches
    ) -> Stretches:
        """Starts whose tape or trim window meets somebody's waking hours."""
        edges = self._means.edges
        opens, closes = window
        opening = edges.not_before(task.product, place, opens)
        closing = edges.not_after(task.product, place, closes)
        if opening is None or closing is None:
            return []
        length = self._means.tape_seconds
        fits: Stretches = []
        for start, end, _ in self._means.shop.awake_from(found[0][0]):
            low = closing.earliest(start + length)
            if low is not None and low > found[-1][1]:
                break
            high = opening.latest(end - length)
            if high is not None:
                fits.append((grid_up(low or 0), grid_down(high - task.block)))
        return united(fits)

    def _on_spot(self, task: Task, ground: Ground, spot: str, found: Stretches) -> Stretches:
        latest_for = self._means.edges.handle(task.product, ground.place).latest
        hold = self._times.own_hold(spot)
        last, gap, block = found[-1][1], self._gap, task.block
        fits: Stretches = []
        for start, end in self._means.shop.spots[spot].from_(found[0][0]):
            # On its own spot a piece need not wait until the last coat sets it free.
            begin = hold[0] if hold is not None and start == hold[1] else start
            if begin > last:
                break
            latest = latest_for(end) if end - start >= gap else None
            if latest is not None:
                fits.append((grid_up(begin), grid_down(latest - block)))
        return united(fits)
