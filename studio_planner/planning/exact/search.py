"""The search for the best plan: from the quick plan on, until time or doubt ends."""

from __future__ import annotations

from dataclasses import dataclass, replace
from threading import Event, Thread
from time import monotonic
from typing import TYPE_CHECKING

from studio_planner.planning.exact.all_lanes import MOST_COATS
from studio_planner.planning.exact.best_so_far import BestSoFar
from studio_planner.planning.exact.foreseen import Foreseen
from studio_planner.planning.exact.frame import frame_of
from studio_planner.planning.exact.improving import Improver
from studio_planner.planning.exact.lanes import lanes_of
from studio_planner.planning.exact.part import Parts
from studio_planner.planning.exact.whole import Whole, leaves_nothing_out
from studio_planner.planning.rounds import Pass
from studio_planner.planning.solver import Search
from studio_planner.planning.spans import GRID
from studio_planner.planning.worth import starts_of

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.plans import Plan
    from studio_planner.planning.exact.part import Standing
    from studio_planner.planning.quick import QuickStart

_AT_ONCE = 2
"""Searches beside each other: what two cores can do."""

_FEW_COATS, _LONG = 48, 8.0
"""New coats up to which one of them looks at the studio as a whole in a short search; in one of
more than so many seconds it does up to `MOST_COATS`."""

_FORESEEN, _FORESEEN_AGAIN = 3, 1
"""Foreseen plans that are tried before all else; a plan that is kept is mostly good already."""

_ALONE = 20.0
"""Seconds for which a few coats are looked at as a whole and in no other way."""

_GLANCE = 0.03
"""Seconds between two looks at what was found."""

_STEP_SECONDS = 1.0
_STEP_WORK = 0.6
"""What one part may cost: seconds at the most, and the solver's own work."""


@dataclass(frozen=True, slots=True)
class Effort:
    """How long is looked: seconds, and steps if the same plan is wanted every time."""

    seconds: float
    steps: int | None = None
    seed: int = 0


class _Turns:
    """Who computes when there are few coats: questions about all of them are soon answered.

    That takes half the time if all else waits, so only one step is made beside the first, once
    it is put. What is not answered in so many seconds hardly ever is: all go on then.
    """

    def __init__(self, *, few: bool) -> None:
        self._put, self._answered = Event(), Event()
        if not few:
            self.answered()

    def put(self) -> None:
        """The first question is put to the solver."""
        self._put.set()

    def answered(self) -> None:
        """All are answered, or left, or there are none."""
        self._put.set()
        self._answered.set()

    def wait(self, *, first: bool) -> None:
        """Wait until a step may be made: the first one, or any other."""
        if first:
            self._put.wait()
        elif not self._answered.wait(_ALONE):
            self.answered()


class PlanSearch:
    """Looks for better plans of one studio."""

    def __init__(self, start: QuickStart, *, step: int = GRID) -> None:
        """Start from a quick plan, on a grid of `step` seconds."""
        self._begun = monotonic()
        self._start = start
        studio = start.rounds.studio
        placer = start.rounds.placer()
        self._frame = frame_of(
            studio, placer.finisher, placer.means, starts_of(start.before), step
        )
        left_out = [one.chain for one in start.found.stuck]
        parts = Parts(self._frame)
        standing = parts.standing(lanes_of(start.found.placed, left_out, parts.chains))
        self.best = BestSoFar(parts, standing)

    def run(
        self, effort: Effort, told: Callable[[PlanSearch], None], stop: Callable[[], bool]
    ) -> None:
        """Look for better plans and tell of each, until the effort is spent or all is proved.

        Without a number of steps there are two searches beside each other: parts are improved,
        and a studio that is not too large is looked at as a whole.
        """
        end = self._begun + effort.seconds
        improver = Improver(self.best, effort.seed, self._foreseen())
        few = self._coats <= _FEW_COATS and effort.steps is None
        turns = _Turns(few=few)
        whole = Whole(self.best)

        def over() -> bool:
            return stop() or self.best.proved or monotonic() >= end

        def by_parts(until: Callable[[], bool] = over) -> None:
            while not until() and (effort.steps is None or improver.steps < effort.steps):
                turns.wait(first=not improver.steps)
                left = max(0.05, end - monotonic())
                # Steps that are to be repeated end by the solver's own count alone.
                seconds = min(_STEP_SECONDS, left) if effort.steps is None else left
                improver.step(seconds, _STEP_WORK)

        def as_a_whole() -> None:
            search = Search(seconds=0.0, seed=effort.seed, light=True)
            small = self._is_small(effort.seconds)
            possible = small and leaves_nothing_out(self.best)
            try:
                if possible:
                    whole.ask_for_less(end, search, over, turns.put)
                    turns.answered()
                    whole.solve(end, search, over)
            finally:
                turns.answered()
            if small and not possible:
                by_parts(until=lambda: over() or leaves_nothing_out(self.best))
                whole.solve(end, search, over)
            by_parts()

        if effort.steps is None:
            self._beside([as_a_whole, *[by_parts] * (_AT_ONCE - 1)], end, told, whole)
            # What is still looked for takes time from writing and rehearsing the plan.
            improver.halt()
            whole.halt()
        else:
            by_parts()
            told(self)

    def plan(self) -> Plan:
        """The best plan so far."""
        with self.best.lock:
            standing, goals = self.best.standing, self.best.goals
        seconds = monotonic() - self._begun
        stuck = [
            one for one in self._start.found.stuck if _left_out(one.chain.pieces, standing)
        ]
        found = Pass(tuple(standing.placed), tuple(stuck), standing.worth)
        plan = self._start.rounds.written(found, self._start.unplanned)
        return replace(
            plan,
            goals=goals,
            grid_minutes=self._frame.grid.step // 60,
            solved_seconds=round(seconds, 1),
        )

    def _beside(
        self,
        searches: list[Callable[[], None]],
        end: float,
        told: Callable[[PlanSearch], None],
        whole: Whole,
    ) -> None:
        """Let searches run beside each other, and tell of what they find.

        They look at the time between their steps; who is not done at the end is left behind.
        """
        threads = [Thread(target=search, daemon=True) for search in searches]
        for thread in threads:
            thread.start()
        known = self.best.goals
        while threads and monotonic() < end + _GLANCE:
            threads[0].join(_GLANCE)
            threads = [thread for thread in threads if thread.is_alive()]
            whole.leave_what_is_met()
            if self.best.goals != known:
                known = self.best.goals
                told(self)

    def _foreseen(self) -> Foreseen:
        """Plans that could be if mixes were shared."""
        start, best = self._start, self.best
        first = _FORESEEN_AGAIN if start.before else _FORESEEN
        return Foreseen(start.rounds, best.parts, best.standing, first, start.before)

    @property
    def _coats(self) -> int:
        return self.best.standing.new_coats

    def _is_small(self, seconds: float) -> bool:
        """Whether it can be worth while to look at the studio as a whole."""
        return self._coats <= (_FEW_COATS if seconds < _LONG else MOST_COATS)


def _left_out(pieces: Iterable[Piece], standing: Standing) -> bool:
    """Whether one of some pieces has no place yet."""
    missing = {lane.key for lane in standing.lanes if lane.placed is None}
    return any(piece.key in missing for piece in pieces)
