"""What a chain's coats and joints need on a ground: stage times, sanding, tape and trim."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import Trust
from studio_planner.planning.clocks.stage_times import ALWAYS
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from studio_planner.craft.pieces import Coat
    from studio_planner.planning.clocks.air_times import AirTimes
    from studio_planner.planning.clocks.edges import Edges
    from studio_planner.planning.clocks.stage_times import NotBefore
    from studio_planner.planning.clocks.window_times import WindowTimes
    from studio_planner.planning.placing.workshop import Workshop
    from studio_planner.planning.problem import Chain, Task


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


@dataclass(frozen=True, slots=True)
class Ground:
    """Where a coat is put on: spots of one place, one for each of its chain's pieces."""

    place: str
    spots: tuple[str, ...]


def standing(chain: Chain, ground: Ground) -> tuple[Ground, ...]:
    """The grounds of a chain whose coats are all put on at the same one."""
    return (ground,) * len(chain.tasks)


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


def narrow_windows(coat: Coat) -> list[tuple[Stage, Stage]]:
    """The tape and trim windows that a coat has."""
    windows = []
    if coat.taped:
        windows.append((Stage.TAPE_OPENS, Stage.TAPE_CLOSES))
    if coat.trimmed:
        windows.append((Stage.TRIM_OPENS, Stage.TRIM_CLOSES))
    return windows


class ChainTimes:
    """The times of one chain on its grounds, with one set of allowed joints."""

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
        self._means = means
        self.tape_seconds = means.tape_seconds
        self._chain = chain
        self._grounds = grounds
        self._allow = allow
        self._sandings = sandings
        self._places = [
            ground.place if task.fixed is None else means.place_of_spot[task.fixed.spot]
            for task, ground in zip(chain.tasks, grounds, strict=True)
        ]

    def place(self, index: int) -> str:
        """The place that a coat stands in until it can be handled."""
        return self._places[index]

    def rests_from(self, index: int) -> bool:
        """Tell whether a piece stands in the place where it rests from a coat on to its end."""
        rest = self._means.edges.rest
        return all(place == rest for place in self._places[index:])

    def handled(self, index: int, start: int) -> int | None:
        """When a coat that starts at `start` can be handled; None when never."""
        task = self._chain.tasks[index]
        return self._means.edges.handle(task.product, self.place(index)).at(start + task.block)

    def sandable(self, index: int, start: int) -> int | None:
        """When a coat that starts at `start` can be sanded; None when never."""
        task = self._chain.tasks[index]
        clock = self._means.edges.not_before(task.product, self.place(index), Stage.SANDABLE)
        return None if clock is None else clock.at(start + task.block)

    def window_times(self, index: int, *, tests: bool) -> WindowTimes:
        """The window of a joint to the coat below: the likely one where it may be tested."""
        task = self._chain.tasks[index]
        below = task.below or 0
        return self._means.edges.window_times(
            task, self._chain.tasks[below], self.place(below), likely=tests
        )

    def opens(self, index: int, below_start: int, edge: Edge | None) -> int | None:
        """When the joint to the coat below opens, for a start of that one."""
        task = self._chain.tasks[index]
        below = self._chain.tasks[task.below or 0]
        spread = below_start + below.block
        if task.sheet_opens is None:
            return spread
        clock = self._means.edges.not_before(
            below.product, self.place(task.below or 0), task.sheet_opens, edge or Edge.LATE
        )
        return None if clock is None else clock.at(spread)

    def closes(self, index: int, below_start: int, edge: Edge | None) -> int:
        """When the joint to the coat below closes; ALWAYS when it never does."""
        task = self._chain.tasks[index]
        below = self._chain.tasks[task.below or 0]
        if task.sheet_closes is None:
            return ALWAYS
        clock = self._means.edges.not_after(
            below.product, self.place(task.below or 0), task.sheet_closes, edge or Edge.EARLY
        )
        return ALWAYS if clock is None else clock.at(below_start)

    def _closes_on_the_way(self, index: int, starts: list[int], edge: Edge | None) -> int:
        """As `closes`, for a piece that is moved before or for this coat."""
        task = self._chain.tasks[index]
        below = task.below or 0
        if task.sheet_closes is None or self.rests_from(below):
            return self.closes(index, starts[below], edge)
        legs = self.itinerary(starts, below, starts[below])
        product = self._chain.tasks[below].product
        exact = self._means.edges.along(product, task.sheet_closes, edge or Edge.EARLY, legs)
        return ALWAYS if exact is None else int(exact) - 2

    def itinerary(self, starts: Sequence[int], index: int, since: int) -> list[tuple[str, int]]:
        """Where a piece is from `since` on, when coat `index` is on it: places and seconds."""
        if self.rests_from(index):
            return [(self._means.edges.rest, since)]
        legs: list[tuple[str, int]] = []
        for later in range(index, len(starts)):
            begins = since if later == index else starts[later]
            legs.append((self.place(later), begins))
            leaves = self._leaves(later, starts)
            if leaves is not None:
                legs.append((self._means.edges.rest, max(leaves, begins)))
        return legs

    def _leaves(self, index: int, starts: Sequence[int]) -> int | None:
        """When a piece leaves the spot of a coat to rest; None when it stays until the next."""
        task = self._chain.tasks[index]
        handled = self.handled(index, starts[index])
        last = index + 1 == len(starts)
        if handled is None or (task.stays and not last):
            return None
        return handled if last or handled < starts[index + 1] else None

    def tests(self, task: Task) -> bool:
        """Tell whether a joint may rely on a touch test."""
        return self._allow.test_first and task.may_test

    def scuffs(self, task: Task) -> bool:
        """Tell whether a joint may be scuffed."""
        return self._allow.scuff and task.may_scuff

    def covered(self, index: int, start: int) -> int:
        """When a coat's wet face is under its cover, or past the stage that stands for it."""
        end = start + self._chain.tasks[index].block
        clock = self._cover_clock(index)
        if clock is None:
            return end
        reached = clock.at(end)
        return self._means.end if reached is None else max(end, reached)

    def _cover_clock(self, index: int) -> NotBefore | None:
        product = self._chain.tasks[index].product
        return self._means.edges.cover(product, self._grounds[index].place)

    def covered_by(self, index: int, by: int) -> int:
        """The latest start that is under its cover by some second."""
        clock = self._cover_clock(index)
        latest = by if clock is None else clock.latest(by)
        return -1 if latest is None else min(latest, by) - self._chain.tasks[index].block

    def own_hold(self, spot: str) -> tuple[int, int] | None:
        """The time for which the chain's own last poured coat holds this spot."""
        last = self._chain.first - 1
        fixed = self._chain.tasks[last].fixed if last >= 0 else None
        if fixed is None or fixed.spot != spot:
            return None
        start = int(fixed.start.timestamp())
        handled = self.handled(last, start)
        return (start, self._means.until if handled is None else handled)

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
        start, below_start = starts[index], starts[task.below]
        for trust, edge in ((Trust.SAFE, None), (Trust.TEST_FIRST, Edge.LIKELY)):
            if trust is Trust.SAFE or self.tests(task):
                opens = self.opens(index, below_start, edge)
                closes = self._closes_on_the_way(index, starts, edge)
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
            for window in narrow_windows(task.coat)
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
