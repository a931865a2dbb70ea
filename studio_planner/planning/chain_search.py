"""Places one chain of coats on given spots: all feasible starts forward, then one choice back.

Windows move with the start but never overtake each other (a later pour never opens or closes
earlier), so the feasible starts of each coat are a few stretches, and the latest start that
still serves the next coat is always a good one.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import CoatKind, Joint
from studio_planner.craft.plans import Trust
from studio_planner.planning.spans import (
    GRID,
    Stretches,
    common,
    grid_down,
    grid_up,
    latest_until,
    outside,
    united,
)
from studio_planner.planning.stage_times import ALWAYS
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.planning.air_times import AirTimes
    from studio_planner.planning.edges import Edges
    from studio_planner.planning.problem import Chain, Task
    from studio_planner.planning.stage_times import NotBefore
    from studio_planner.planning.workshop import Workshop

_STEPS_INTO_A_STRETCH = 12


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


@dataclass(frozen=True, slots=True)
class Dead:
    """Where a chain found no start: the position of the coat, and what was asked of it."""

    index: int
    ranges: tuple[tuple[int, int], ...]


@dataclass(frozen=True, slots=True)
class Ground:
    """Where a chain is tried: spots of one place, one for each of its pieces."""

    place: str
    spots: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Means:
    """What a search works with."""

    shop: Workshop
    edges: Edges
    air: AirTimes
    place_of_spot: dict[str, str]
    now: int
    until: int
    end: int
    sand_seconds: int
    tape_seconds: int


class ChainSearch:
    """One chain, one ground, one set of allowed joints."""

    def __init__(
        self, means: Means, chain: Chain, ground: Ground, allow: Allow, most: int
    ) -> None:
        """Prepare; `most` bounds the stretches looked at for each coat."""
        self._means = means
        self._chain = chain
        self._ground = ground
        self._allow = allow
        self._most = most
        self._starts: list[Stretches] = []
        self.truncated = False

    def solve(self) -> tuple[list[int], list[PlacedJoint]] | Dead:
        """Starts (seconds) and joints of all coats, or the coat that found no start."""
        for index in range(len(self._chain.tasks)):
            ranges = self._ranges(index)
            stretches = self._feasible(index, ranges)
            if not stretches:
                return Dead(index, tuple(ranges))
            self._starts.append(stretches)
        for target in self._targets():
            found = self._walk_back(target)
            if found is not None:
                return found
        return Dead(len(self._chain.tasks) - 1, tuple(self._starts[-1]))

    # Forward

    def _place(self, index: int) -> str:
        fixed = self._chain.tasks[index].fixed
        return self._ground.place if fixed is None else self._means.place_of_spot[fixed.spot]

    def _ranges(self, index: int) -> Stretches:
        task = self._chain.tasks[index]
        if task.fixed is not None:
            start = int(task.fixed.start.timestamp())
            return [(start, start)]
        low = self._earliest(index)
        if low is None:
            return []
        ranges = [(grid_up(low), grid_down(self._means.until))]
        if task.below is not None:
            ranges = common(self._joint_ranges(index), ranges)
        return ranges

    def _earliest(self, index: int) -> int | None:
        task = self._chain.tasks[index]
        low = self._means.now + task.lead
        if index > 0:
            before = self._chain.tasks[index - 1]
            low = max(low, self._starts[index - 1][0][0] + before.block + task.lead)
        waits = list(task.rests_on)
        if index == self._chain.first and index > 0 and self._moved(index - 1):
            waits.append(index - 1)
        for other in waits:
            handled = self._handled(other, self._starts[other][0][0])
            if handled is None:
                return None
            low = max(low, handled + task.lead)
        return low

    def _moved(self, index: int) -> bool:
        fixed = self._chain.tasks[index].fixed
        return fixed is not None and fixed.spot not in self._ground.spots

    def _handled(self, index: int, start: int) -> int | None:
        task = self._chain.tasks[index]
        return self._means.edges.handle(task.product, self._place(index)).at(start + task.block)

    def _joint_ranges(self, index: int) -> Stretches:
        task = self._chain.tasks[index]
        below = task.below
        assert below is not None  # noqa: S101 - asked only for coats on a coat
        edge = Edge.LIKELY if self._tests(task) else None
        ranges = []
        for first, last in self._starts[below] if task.has_window else []:
            opens = self._opens(index, first, edge)
            closes = self._closes(index, last, edge)
            if opens is not None:
                high = min(closes - task.block, self._means.until)
                ranges.append((grid_up(opens), grid_down(high)))
        ranges += self._scuffed_ranges(index)
        return united(ranges)

    def _tests(self, task: Task) -> bool:
        return self._allow.test_first and task.may_test

    def _scuffs(self, task: Task) -> bool:
        return self._allow.scuff and task.may_scuff

    def _scuffed_ranges(self, index: int) -> Stretches:
        if not self._scuffs(self._chain.tasks[index]):
            return []
        firsts = [stretches[0][0] for stretches in self._starts]
        sanding = self._sanding(index, firsts)
        if sanding is None:
            return []
        return [(grid_up(sanding[1] + self._settling(index)), grid_down(self._means.until))]

    def _settling(self, index: int) -> int:
        return max(self._means.shop.settle, self._chain.tasks[index].lead)

    def _sanding(self, index: int, starts: list[int]) -> tuple[int, int] | None:
        """The earliest sanding for a coat, turning first where it has to be turned.

        The coat below can be sanded, what lies in between is under its cover, and what the
        piece lies on can be handled.
        """
        task = self._chain.tasks[index]
        below = task.below
        ready = None if below is None else self._sandable(below, starts[below])
        if ready is None:
            return None
        waits: list[int | None] = [ready]
        waits += [self._handled(other, starts[other]) for other in task.rests_on]
        between = range((below or 0) + 1, index)
        waits += [self.covered(self._chain.tasks[i], starts[i]) for i in between]
        if None in waits:
            return None
        length = self._sand_length(index)
        after = max(wait for wait in waits if wait is not None)
        start = self._means.shop.earliest_sanding(after, length)
        return None if start is None else (start, start + length)

    def _sand_length(self, index: int) -> int:
        count = sum(piece.count for piece in self._chain.pieces)
        return self._means.sand_seconds * count + self._chain.tasks[index].lead

    def _sandable(self, index: int, start: int) -> int | None:
        task = self._chain.tasks[index]
        clock = self._means.edges.not_before(task.product, self._place(index), Stage.SANDABLE)
        return None if clock is None else clock.at(start + task.block)

    def _opens(self, index: int, below_start: int, edge: Edge | None) -> int | None:
        task = self._chain.tasks[index]
        below = self._chain.tasks[task.below or 0]
        spread = below_start + below.block
        if task.sheet_opens is None:
            return spread
        clock = self._means.edges.not_before(
            below.product, self._place(task.below or 0), task.sheet_opens, edge or Edge.LATE
        )
        return None if clock is None else clock.at(spread)

    def _closes(self, index: int, below_start: int, edge: Edge | None) -> int:
        task = self._chain.tasks[index]
        below = self._chain.tasks[task.below or 0]
        if task.sheet_closes is None:
            return ALWAYS
        clock = self._means.edges.not_after(
            below.product, self._place(task.below or 0), task.sheet_closes, edge or Edge.EARLY
        )
        return ALWAYS if clock is None else clock.at(below_start)

    def _feasible(self, index: int, ranges: Stretches) -> Stretches:
        task = self._chain.tasks[index]
        if task.fixed is not None:
            return ranges
        found = ranges
        for spot in self._ground.spots:
            found = found and common(found, self._on_spot(task, spot, found))
        for opens, closes in narrow_windows(task):
            found = found and common(found, self._awake_for(task, opens, closes, found))
        found = found and self._with_hands(task, found)
        found = found and self.in_good_air(task, found)
        return found and self._out_of_dust(task, found)

    def _with_hands(self, task: Task, found: Stretches) -> Stretches:
        shop = self._means.shop
        starts = shop.starts(found, task.lead, task.block, self._most)
        self.truncated = self.truncated or len(starts) >= self._most
        return starts

    def in_good_air(self, task: Task, found: Stretches) -> Stretches:
        """What the air of the ground's place leaves of some starts."""
        material = self._chain.pieces[0].material
        air, place = self._means.air, self._ground.place
        lows, highs = air.holes(place, task.product, material, task.block)
        found = outside(found, _overlapping(lows, highs, found))
        if task.bare_porous and found:
            rising = air.rising(place, task.block, found[0][0], found[-1][1])
            found = outside(found, rising)
        return found

    def _out_of_dust(self, task: Task, found: Stretches) -> Stretches:
        if task.coat.kind is CoatKind.LEAF:
            return found
        settle = self._means.shop.settle
        holes = [
            (self._covered_by(task, start), end + settle)
            for start, end in self._means.shop.sanding
            if end + settle > found[0][0]
        ]
        return outside(found, holes)

    def _covered_by(self, task: Task, by: int) -> int:
        """The latest start that is under its cover by some second."""
        clock = self._cover_clock(task)
        latest = by if clock is None else clock.latest(by)
        return -1 if latest is None else min(latest, by) - task.block

    def _awake_for(
        self, task: Task, opens: Stage, closes: Stage, found: Stretches
    ) -> Stretches:
        """Starts whose tape or trim window meets somebody's waking hours."""
        edges, place = self._means.edges, self._ground.place
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

    def _on_spot(self, task: Task, spot: str, found: Stretches) -> Stretches:
        handle = self._means.edges.handle(task.product, self._ground.place)
        hold = self._own_hold(spot)
        fits: Stretches = []
        for start, end in self._means.shop.spots[spot].from_(found[0][0]):
            if start > found[-1][1]:
                break
            latest = handle.latest(end)
            if latest is not None:
                begin = hold[0] if hold is not None and start == hold[1] else start
                fit = (grid_up(begin), grid_down(latest - task.block))
                fits += [fit] if fit[0] <= fit[1] else []
        return united(fits)

    def _own_hold(self, spot: str) -> tuple[int, int] | None:
        """The time for which the chain's own last poured coat holds this spot."""
        last = self._chain.first - 1
        fixed = self._chain.tasks[last].fixed if last >= 0 else None
        if fixed is None or fixed.spot != spot:
            return None
        start = int(fixed.start.timestamp())
        handled = self._handled(last, start)
        return (start, self._means.until if handled is None else handled)

    def covered(self, task: Task, start: int) -> int:
        """When a coat's wet face is under its cover, or past the stage that stands for it."""
        end = start + task.block
        clock = self._cover_clock(task)
        if clock is None:
            return end
        reached = clock.at(end)
        return self._means.end if reached is None else max(end, reached)

    def _cover_clock(self, task: Task) -> NotBefore | None:
        edges, place = self._means.edges, self._ground.place
        clocks = (
            edges.not_before(task.product, place, stage)
            for stage in (Stage.COVER, Stage.TACK_FREE, Stage.RECOAT_OPENS)
        )
        return next((clock for clock in clocks if clock is not None), None)

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
        edges, place = self._means.edges, self._place(index)
        opening = edges.not_before(task.product, place, opens)
        closing = edges.not_after(task.product, place, closes)
        low = None if opening is None else opening.at(start + task.block)
        high = ALWAYS if closing is None else closing.at(start)
        return (ALWAYS if low is None else low, high)

    # Backward

    def _targets(self) -> Iterator[int]:
        for first, last in self._starts[-1]:
            for step in range(_STEPS_INTO_A_STRETCH):
                if first + step * GRID <= last:
                    yield first + step * GRID

    def _walk_back(self, target: int) -> tuple[list[int], list[PlacedJoint]] | None:
        tasks = self._chain.tasks
        starts = [0] * len(tasks)
        starts[-1] = target
        for index in reversed(range(len(tasks) - 1)):
            chosen = self._latest(index, starts)
            if chosen is None:
                return None
            starts[index] = chosen
        joints = []
        for index in range(len(tasks)):
            joint = self._joint(index, starts)
            if joint is None or not self._steps_fit(index, starts):
                return None
            joints.append(joint)
        return starts, joints

    def _latest(self, index: int, starts: list[int]) -> int | None:
        tasks = self._chain.tasks
        task = tasks[index]
        if task.fixed is not None:
            return self._starts[index][0][0]
        following = tasks[index + 1]
        limit = starts[index + 1] - following.lead - task.block
        for later in range(index + 1, len(tasks)):
            if index in tasks[later].rests_on:
                handle = self._means.edges.handle(task.product, self._place(index))
                latest = handle.latest(starts[later] - tasks[later].lead)
                limit = min(limit, -1 if latest is None else latest - task.block)
            if tasks[later].below == index:
                limit = min(limit, self._joint_limit(index, later, starts[later]))
            elif self._scuffs(tasks[later]) and (tasks[later].below or 0) < index:
                limit = min(limit, self._cover_limit(index, later, starts[later]))
        return latest_until(self._starts[index], limit)

    def _joint_limit(self, index: int, later: int, upper: int) -> int:
        """The latest start of a coat that still lets the coat on it start at `upper`."""
        above = self._chain.tasks[later]
        for edge in (None, Edge.LIKELY) if self._tests(above) else (None,):
            limit = self._opening_limit(index, later, upper, edge)
            start = latest_until(self._starts[index], limit)
            if start is not None and above.has_window:
                if self._closes(later, start, edge) >= upper + above.block:
                    return limit
        return self._scuff_limit(index, later, upper)

    def _opening_limit(self, index: int, later: int, upper: int, edge: Edge | None) -> int:
        task, above = self._chain.tasks[index], self._chain.tasks[later]
        if above.sheet_opens is None:
            return upper - task.block
        clock = self._means.edges.not_before(
            task.product, self._place(index), above.sheet_opens, edge or Edge.LATE
        )
        latest = None if clock is None else clock.latest(upper)
        return -1 if latest is None else latest - task.block

    def _scuff_limit(self, index: int, later: int, upper: int) -> int:
        """The latest start of a coat that leaves time to sand it before the one at `upper`."""
        task = self._chain.tasks[index]
        sanding = self._latest_sanding(index, later, upper)
        clock = self._means.edges.not_before(task.product, self._place(index), Stage.SANDABLE)
        latest = None if sanding is None or clock is None else clock.latest(sanding)
        return -1 if latest is None else latest - task.block

    def _latest_sanding(self, index: int, later: int, upper: int) -> int | None:
        if not self._scuffs(self._chain.tasks[later]):
            return None
        first = self._starts[index][0][0]
        until = upper - self._settling(later)
        return self._means.shop.latest_sanding(first, until, self._sand_length(later))

    def _cover_limit(self, index: int, later: int, upper: int) -> int:
        """The latest start of a coat in between that is covered while another is sanded."""
        task = self._chain.tasks[index]
        sanding = self._latest_sanding(index, later, upper)
        return -1 if sanding is None else self._covered_by(task, sanding)

    def _joint(self, index: int, starts: list[int]) -> PlacedJoint | None:
        task = self._chain.tasks[index]
        if task.fixed is not None:
            return PlacedJoint(task.fixed.joint)
        if task.below is None:
            return PlacedJoint(Joint.BARE)
        start, below_start = starts[index], starts[task.below]
        for trust, edge in ((Trust.SAFE, None), (Trust.TEST_FIRST, Edge.LIKELY)):
            if trust is Trust.SAFE or self._tests(task):
                opens = self._opens(index, below_start, edge)
                closes = self._closes(index, below_start, edge)
                inside = opens is not None and opens <= start and start + task.block <= closes
                if inside and task.has_window:
                    shown = None if closes == ALWAYS else closes
                    return PlacedJoint(task.joint, trust, opens, shown)
        return self._scuffed(index, starts)

    def _scuffed(self, index: int, starts: list[int]) -> PlacedJoint | None:
        sanding = self._sanding(index, starts) if self._scuffs(self._chain.tasks[index]) else None
        if sanding is None or sanding[1] + self._settling(index) > starts[index]:
            return None
        return PlacedJoint(Joint.SCUFFED, sand=sanding)

    def _steps_fit(self, index: int, starts: list[int]) -> bool:
        """Tell whether tape and drips can be done before the next block of the piece begins.

        And whether size that keeps its spot has it until then.
        """
        task = self._chain.tasks[index]
        last = index + 1 == len(starts)
        before = ALWAYS if last else starts[index + 1] - self._chain.tasks[index + 1].lead
        if task.stays and not last and task.fixed is None:
            shop = self._means.shop
            span = starts[index], starts[index + 1]
            if not all(shop.spots[spot].holds(*span) for spot in self._ground.spots):
                return False
        return all(
            self._step_fits(index, starts[index], window, before) for window in narrow_windows(task)
        )

    def _step_fits(
        self, index: int, start: int, window: tuple[Stage, Stage], before: int
    ) -> bool:
        if self.awake_step(index, start, *window, before) is not None:
            return True
        # What is left of a poured coat's window may lie in the night; then it is too late.
        fixed = self._chain.tasks[index].fixed is not None
        return fixed and self.awake_step(index, start, *window, ALWAYS) is None


def narrow_windows(task: Task) -> list[tuple[Stage, Stage]]:
    """The tape and trim windows that a coat has."""
    windows = []
    if task.coat.taped:
        windows.append((Stage.TAPE_OPENS, Stage.TAPE_CLOSES))
    if task.coat.trimmed:
        windows.append((Stage.TRIM_OPENS, Stage.TRIM_CLOSES))
    return windows


def _overlapping(
    lows: list[float], highs: list[float], found: Stretches
) -> list[tuple[int, int]]:
    """The holes that touch the stretches found, on whole seconds."""
    first = bisect_right(highs, found[0][0])
    last = bisect_left(lows, found[-1][1])
    return [(int(lows[i]), int(highs[i]) + 1) for i in range(first, last)]
