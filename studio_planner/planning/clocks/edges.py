"""The stage times of a chain's coats in the place they stand in, on the safe side."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, TypeAlias

from studio_planner.craft.log_legs import legs_from, rested
from studio_planner.craft.products import ProductKind
from studio_planner.craft.sheet_stages import cover_stage, handle_stage
from studio_planner.planning.clocks.stage_times import AtOnce, NotAfter, NotBefore
from studio_planner.planning.clocks.window_times import WindowTimes
from studio_planner.planning.spans import GRID, grid_down
from studio_planner.science.clocks import reached_through
from studio_planner.science.stages import Edge

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from studio_planner.craft.products import Product
    from studio_planner.craft.timing import Timing
    from studio_planner.planning.problem import Task
    from studio_planner.science.clocks import StageClock
    from studio_planner.science.stages import Stage

_LOOK_BACK = 60 * 86_400

_Joint = tuple[str, str, "Stage | None", "Stage | None", int, int, bool]
"""Product below, its place, the stages that open and close, both blocks [s], likely edges."""


_Clocks: TypeAlias = "Sequence[tuple[StageClock, float]]"


class _Moving:
    """A clock in one place, or along a way, that a piece leaves at *handle* for the room.

    Without a room to rest in it goes nowhere else.
    """

    def __init__(
        self,
        way: _Clocks,
        rest: StageClock | None = None,
        handled: Callable[[float], float | None] | None = None,
    ) -> None:
        self.way, self._rest, self._handled = way, rest, handled

    def reached(self, spread: float) -> float | None:
        """When the stage is reached: along the way until handle, then in the room."""
        legs = legs_from(self.way, spread)
        if self._rest is not None and self._handled is not None:
            legs = rested(legs, self._handled(spread), self._rest)
        return reached_through(legs)

    def start_for(self, by: float) -> float | None:
        """The latest grid start that has reached it by `by`, found by halving."""
        low, high = grid_down(by) - _LOOK_BACK, grid_down(by)
        if not self._by(low, by):
            return None
        while high - low > GRID:
            middle = grid_down((low + high) / 2)
            low, high = (middle, high) if self._by(middle, by) else (low, middle)
        return float(low)

    def _by(self, start: int, by: float) -> bool:
        when = self.reached(start)
        return when is not None and when <= by


@dataclass(frozen=True, slots=True)
class _Way:
    """Where a poured piece was from when, and when its film was spread [s]."""

    legs: list[tuple[str, float]]
    spread: float


class Edges:
    """Every stage time that planning asks for; one per stage, product, place and edge."""

    def __init__(self, timing: Timing) -> None:
        """Use the studio's clocks."""
        self._timing = timing
        rest = timing.studio.resting_place
        self.rest = timing.studio.places[0].key if rest is None else rest.key
        self._before: dict[tuple[str, str, Stage, Edge], NotBefore | None] = {}
        self._handle: dict[tuple[str, str], NotBefore] = {}
        self._after: dict[tuple[str, str, Stage, Edge], NotAfter | None] = {}
        self._cover: dict[tuple[str, str], NotBefore | None] = {}
        self._windows: dict[_Joint, WindowTimes] = {}
        self._ways: dict[str, _Way] = {}

    def way(self, legs: Sequence[tuple[str, float]], spread: float) -> str:
        """What to ask for as a place for a piece that went along legs once it was poured.

        It was spread by then [s]; what went nowhere is simply asked for in its place.
        """
        if len(legs) == 1 or all(place == self.rest for place, _ in legs):
            return legs[0][0]
        name = "\n".join((*(f"{place} {since}" for place, since in legs), f"{spread}"))
        self._ways[name] = _Way(list(legs), spread)
        return name

    def legs(self, place: str, since: float) -> list[tuple[str, float]]:
        """Where a piece is from `since` on, in a place or on a way, until it goes to rest."""
        way = self._ways.get(place)
        return [(place, since)] if way is None else legs_from(way.legs, since)

    def not_before(
        self, product: Product, place: str, stage: Stage, edge: Edge = Edge.LATE
    ) -> NotBefore | None:
        """When a stage opens; None when the sheet lacks it."""
        key = (product.key, place, stage, edge)
        if key not in self._before:
            clock = self._clock(product, place, stage, edge)
            self._before[key] = None if clock is None else NotBefore(clock)
        return self._before[key]

    def not_after(
        self, product: Product, place: str, stage: Stage, edge: Edge = Edge.EARLY
    ) -> NotAfter | None:
        """When a stage closes; None when the sheet lacks it."""
        key = (product.key, place, stage, edge)
        if key not in self._after:
            clock = self._clock(product, place, stage, edge)
            self._after[key] = None if clock is None else NotAfter(clock)
        return self._after[key]

    def handle(self, product: Product, place: str) -> NotBefore:
        """When a coat has safely reached handle, or the next later stage on its sheet.

        Leaf, and size that knows no such stage, are there at once; size keeps its spot all the
        same until the next coat.
        """
        key = (product.key, place)
        if key not in self._handle:
            stage = handle_stage(product)
            clock = None if stage is None else self._staying(product, place, stage, Edge.LATE)
            self._handle[key] = AtOnce() if clock is None else NotBefore(clock)
        return self._handle[key]

    def cover(self, product: Product, place: str) -> NotBefore | None:
        """When a coat is under its cover; None when nothing on its sheet stands for that."""
        key = (product.key, place)
        if key not in self._cover:
            stage = cover_stage(product)
            self._cover[key] = None if stage is None else self.not_before(product, place, stage)
        return self._cover[key]

    def window_times(
        self, task: Task, below: Task, place: str, *, likely: bool = False
    ) -> WindowTimes:
        """The window of a coat's joint to the one below, which stands in `place`.

        Its safe edges, or the likely ones.
        """
        stages = task.sheet_opens, task.sheet_closes
        blocks = below.block, task.block
        key = (below.product.key, place, *stages, *blocks, likely)
        found = self._windows.get(key)
        if found is None:
            found = self._windows[key] = self._window_times(
                below.product, place, stages, blocks, likely=likely
            )
        return found

    def _window_times(
        self,
        below: Product,
        place: str,
        stages: tuple[Stage | None, Stage | None],
        blocks: tuple[int, int],
        *,
        likely: bool,
    ) -> WindowTimes:
        late, early = (Edge.LIKELY, Edge.LIKELY) if likely else (Edge.LATE, Edge.EARLY)
        opens, closes = stages
        opening = AtOnce() if opens is None else self.not_before(below, place, opens, late)
        closing = None if closes is None else self.not_after(below, place, closes, early)
        return WindowTimes(opening, closing, blocks)

    def along(
        self, product: Product, stage: Stage, edge: Edge, legs: Sequence[tuple[str, float]]
    ) -> float | None:
        """When a stage is reached along an itinerary of places; None when never.

        Also None when the sheet lacks the stage.
        """
        clocks = [
            (self._timing.clock(product, place, stage, edge), since) for place, since in legs
        ]
        known = [(clock, float(since)) for clock, since in clocks if clock is not None]
        return reached_through(known) if len(known) == len(legs) else None

    def _clock(
        self, product: Product, place: str, stage: Stage, edge: Edge
    ) -> StageClock | _Moving | None:
        here = self._staying(product, place, stage, edge)
        rest = self._timing.clock(product, self.rest, stage, edge)
        if here is None or rest is None or place == self.rest:
            return here
        handle = handle_stage(product)
        way = here.way if isinstance(here, _Moving) else [(here, 0.0)]
        if handle is None:
            return _Moving(way, rest, float) if product.kind is ProductKind.LEAF else here
        leaves = self._staying(product, place, handle, Edge.LATE)
        assert leaves is not None  # noqa: S101 - the stage is on the sheet
        poured = self._ways.get(place)
        if poured is None:
            return _Moving(way, rest, leaves.reached)
        handled = leaves.reached(poured.spread)
        return _Moving(way, rest, lambda _: handled)

    def _staying(
        self, product: Product, place: str, stage: Stage, edge: Edge
    ) -> StageClock | _Moving | None:
        """The clock of a piece that never goes to rest."""
        if place not in self._ways:
            return self._timing.clock(product, place, stage, edge)
        clocks = [
            (self._timing.clock(product, one, stage, edge), since)
            for one, since in self._ways[place].legs
        ]
        known = [(clock, since) for clock, since in clocks if clock is not None]
        return _Moving(known) if len(known) == len(clocks) else None
