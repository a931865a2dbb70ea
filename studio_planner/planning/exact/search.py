"""The search for the best plan: from the quick plan on, better ones until time or doubt ends."""

from __future__ import annotations

from dataclasses import dataclass, replace
from threading import Thread
from time import monotonic
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal
from studio_planner.planning.exact.bounding import MOST_COATS, Bound, first_open
from studio_planner.planning.exact.frame import frame_of
from studio_planner.planning.exact.improving import Improver
from studio_planner.planning.exact.lanes import lanes_of
from studio_planner.planning.exact.part import Parts
from studio_planner.planning.exact.promised import HOUR
from studio_planner.planning.exact.whole import IN_ORDER
from studio_planner.planning.problem import build_chains
from studio_planner.planning.rounds import Pass
from studio_planner.planning.solver import Search
from studio_planner.planning.worth import goals_of, starts_of

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.craft.plans import Plan
    from studio_planner.planning.quick import QuickStart
    from studio_planner.planning.worth import Worth

_AT_ONCE = 2
"""Parts that are solved at once: what two cores can do."""

_GLANCE = 0.1
"""Seconds between two looks at what was found."""

_BOUND_AFTER = 0.06
"""Seconds for each coat before bounds are looked for: first the plan, then what it is worth."""

_STEP_SECONDS = 1.0
_STEP_WORK = 0.6
"""What one part may cost: seconds at the most, and the solver's own work."""


@dataclass(frozen=True, slots=True)
class Effort:
    """How long is looked: seconds, and steps if the same plan is wanted every time."""

    seconds: float
    steps: int | None = None
    seed: int = 0


class PlanSearch:
    """Looks for better plans of one studio."""

    def __init__(self, start: QuickStart, *, step: int | None = None) -> None:
        """Start from a quick plan; `step` is the grid in seconds, five minutes if not given."""
        self._start = start
        studio = start.rounds.studio
        placer = start.rounds.placer()
        before = starts_of(start.before)
        grid = {} if step is None else {"step": step}
        self._frame = frame_of(studio, placer.finisher, placer.means, before, **grid)
        self.parts = Parts(self._frame)
        alone, _ = build_chains(studio, twins=False)
        left_out = [one.chain for one in start.found.stuck]
        self.standing = self.parts.standing(lanes_of(start.found.placed, left_out, alone))
        self.bounds: dict[Goal, float] = {}
        self._begun = monotonic()
        self._bound: Bound | None = None
        self._tried: set[tuple[Goal, Worth]] = set()
        self._bound_lateness()

    def run(
        self, effort: Effort, told: Callable[[PlanSearch], None], stop: Callable[[], bool]
    ) -> None:
        """Look for better plans and tell of each, until the effort is spent or all is proved.

        Without a number of steps two look at once, and bounds are looked for beside them.
        """
        end = self._begun + effort.seconds
        improver = Improver(self.parts, self.standing, effort.seed)

        def over() -> bool:
            return stop() or self.proved or monotonic() >= end

        def steps() -> None:
            while not over() and (effort.steps is None or improver.steps < effort.steps):
                seconds = min(_STEP_SECONDS, max(0.05, end - monotonic()))
                improver.step(seconds, _STEP_WORK, self._reached())

        if effort.steps is not None:
            steps()
            self._take(improver, told)
            return
        looking = [Thread(target=steps, daemon=True) for _ in range(_AT_ONCE)]
        for thread in looking:
            thread.start()
        while any(thread.is_alive() for thread in looking):
            looking[0].join(_GLANCE)
            self._take(improver, told)
            if self._look_for_bounds(end, effort.seed):
                told(self)

    def _take(self, improver: Improver, told: Callable[[PlanSearch], None]) -> None:
        """Tell of a plan that got better."""
        if improver.standing is not self.standing:
            self.standing = improver.standing
            told(self)

    @property
    def proved(self) -> bool:
        """Whether nothing can be better any more."""
        return all(row.proved for row in goals_of(self.standing.worth, self.bounds))

    def plan(self) -> Plan:
        """The best plan so far."""
        stuck = [
            one
            for one in self._start.found.stuck
            if any(
                lane.placed is None and lane.chain.pieces[0] in one.chain.pieces
                for lane in self.standing.lanes
            )
        ]
        found = Pass(tuple(self.standing.placed), tuple(stuck), self.standing.worth)
        plan = self._start.rounds.written(found, self._start.unplanned)
        return replace(
            plan,
            goals=goals_of(self.standing.worth, self.bounds),
            grid_minutes=self._frame.grid.step // 60,
            solved_seconds=round(monotonic() - self._begun, 1),
        )

    # Bounds

    def _bound_lateness(self) -> None:
        """No order leaves before its own lanes could, with nothing else in the studio."""
        lanes = self.standing.lanes
        orders = {lane.chain.order.key: lane.chain.order for lane in lanes if lane.chain.order}
        least = sum(self.parts.alone_late(lanes, order) for order in orders.values())
        self._set_bound(Goal.LATENESS, least)

    def _set_bound(self, goal: Goal, bound: float) -> None:
        """Keep a bound in the model's units; what is met to the unit is met."""
        value = dict(zip(IN_ORDER, self.standing.worth[1:], strict=True))[goal]
        unit = _UNITS.get(goal, 1.0) if goal is not Goal.ENDS else self._frame.grid.step / HOUR
        known = bound * unit
        met = known > value - unit
        self.bounds[goal] = max(self.bounds.get(goal, 0.0), value if met else known)

    def _reached(self) -> set[Goal]:
        """Goals that cannot get better."""
        return {row.goal for row in goals_of(self.standing.worth, self.bounds) if row.proved}

    def _look_for_bounds(self, end: float, seed: int) -> bool:
        """Take a bound that was found, and look for the next; tell whether one got better."""
        better = self._take_bound()
        values = self.parts.values(self.standing.lanes)
        if self._bound is not None or not values or not self._bounded():
            return better
        goal = first_open(self._reached(), values)
        left = end - monotonic()
        if goal is None or left < 1.0 or (goal, self.standing.worth) in self._tried:
            return better
        self._tried.add((goal, self.standing.worth))
        self._bound = Bound(self.parts, self.standing, goal, Search(0.9 * left, seed=seed))
        self._bound.start()
        return better

    def _take_bound(self) -> bool:
        """Take what a search for a bound has found when it is done."""
        found = self._bound
        if found is None or not found.done.is_set():
            return False
        self._bound = None
        earlier = IN_ORDER[: IN_ORDER.index(found.goal)]
        same = found.worth[: 1 + len(earlier)] == self.standing.worth[: 1 + len(earlier)]
        if found.value is None or not same:
            return False
        before = self.bounds.get(found.goal, -1.0)
        self._set_bound(found.goal, found.value)
        return self.bounds[found.goal] > before

    def _bounded(self) -> bool:
        coats = sum(len(lane.chain.tasks) - lane.chain.first for lane in self.standing.lanes)
        return coats <= MOST_COATS and self._exact()

    def _exact(self) -> bool:
        """Whether the model leaves nothing out that a plan may do, so that its bounds hold.

        In a second place clocks depend on where other coats stood, and two people may sand at
        once; twins that are turned together are one lane.
        """
        means, lanes = self._frame.means, self.standing.lanes
        places = {spots.place for spots in self._frame.choices.spots}
        scuffs = any(task.may_scuff for lane in lanes for task in lane.chain.tasks)
        return (
            places == {means.edges.rest}
            and (len(means.shop.hands) == 1 or not scuffs)
            and all(len(lane.chain.pieces) == 1 for lane in lanes)
            and all(lane.placed is not None for lane in lanes)
        )


_UNITS = {Goal.LATENESS: 1 / HOUR, Goal.SPARE: 1 / HOUR}
