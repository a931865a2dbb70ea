"""Makes a plan better part by part: frees orders, an evening or some spots, solves, keeps.

Each step aims at one goal and holds those before it; what is found is put back only when the
whole plan is worth more. Steps are drawn from a seeded generator and bounded by the solver's
own work, so that the same steps give the same plan.
"""

from __future__ import annotations

from dataclasses import dataclass
from random import Random
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal
from studio_planner.planning.exact.answers import AnswerReader
from studio_planner.planning.exact.dust import dusty
from studio_planner.planning.exact.freeing import Freeing
from studio_planner.planning.exact.goals import IN_ORDER, hold_before, quantity_of
from studio_planner.planning.exact.hints import Hints
from studio_planner.planning.exact.part import Freedom
from studio_planner.planning.exact.promised import HOUR
from studio_planner.planning.exact.standing_plan import pinned, same_place
from studio_planner.planning.solver import Search, Status
from studio_planner.planning.worth import by_goal

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from studio_planner.planning.exact.best_so_far import BestSoFar
    from studio_planner.planning.exact.draft import Draft
    from studio_planner.planning.exact.foreseen import Foreseen
    from studio_planner.planning.exact.lanes import Lane
    from studio_planner.planning.exact.part import Standing
    from studio_planner.planning.solver import Answer, Quantity

_OTHER_MIXES = 0.4
"""How often mixes may be shared anew for another goal, once it has been aimed at in vain: that
frees hands, but takes longer."""

_FIRST_COATS, _FEWEST_COATS, _MOST_COATS = 22.0, 8.0, 60.0
_MORE, _LESS = 1.04, 0.9
"""New coats in a freed part: as many as are still solved to the end."""

_FORESIGHT, _LEAST_FORESIGHT = 0.7, 0.1
"""How often another foreseen plan is tried after the first ones; less often after each that
was tried in vain."""

_ALL, _AT_FIRST = 2.5, 0.3
"""How much more a step may cost that frees all lanes near a foreseen plan, and how much less
work is put into sharing mixes for the first time: nearly all are found at once."""

_DAYS_AROUND = (2.0, 4.0, 8.0, None)
"""How far from where they are freed coats may go; a part with less room is solved sooner."""

_HOPES = {
    Goal.LEFT_OUT: 60.0,
    Goal.LATENESS: 30.0,
    Goal.SCUFFED: 8.0,
    Goal.TESTED: 6.0,
    Goal.MOVED: 6.0,
    Goal.SPARE: 1.0,
    Goal.MIXES: 0.5,
    Goal.ENDS: 0.5,
}
"""How often each goal is aimed at, against the others, while steps towards it gain."""

_TIRED, _LEAST = 0.85, 0.04
"""A goal that was aimed at in vain is aimed at less often, but never less than a little."""


@dataclass(frozen=True, slots=True)
class _Try:
    """A part that was freed from a standing plan, as a model that aims at a goal."""

    goal: Goal
    standing: Standing
    lanes: frozenset[int]
    draft: Draft
    seed: int
    hoped: float | None = None
    """The value of the goal that is hoped for: with it the search ends."""

    @property
    def everything(self) -> bool:
        """Whether all lanes are free."""
        return len(self.lanes) == len(self.standing.lanes)

    @property
    def enough(self) -> Callable[[Answer], bool] | None:
        """Tells whether an answer has what is hoped for; None to look on to the end."""
        hoped = self.hoped
        if hoped is None:
            return None
        return lambda answer: answer.value is not None and answer.value < hoped


class Improver:
    """Improves the best plan so far, a step at a time.

    Several threads may make steps at once: the solver works beside all else, and what it finds
    is put into the plan as it stands by then. Only steps of one thread can be repeated.
    """

    def __init__(self, best: BestSoFar, seed: int, foreseen: Foreseen | None = None) -> None:
        """Start from a plan; the first steps look for plans near the foreseen ones."""
        self._foreseen = foreseen
        self._foresight = _FORESIGHT
        self._shared = False
        self.steps = 0
        self._best = best
        self._parts = best.parts
        self._random = Random(seed)  # noqa: S311 - to be repeated, not to be secret
        self._hope = dict(_HOPES)
        self._coats = _FIRST_COATS
        self._freeing = Freeing(self._random)

    def step(self, seconds: float, work: float) -> bool:
        """Free one part, or all lanes a little, and solve; tell whether the plan got better."""
        with self._best.lock:
            self.steps += 1
            tried = self._opened()
            goal = self._goal() if tried is None else tried.goal
            tried = tried or self._freed(goal)
            # What all share is put into the very plan that stands: others wait that long.
            now = tried is not None and tried.everything and tried.hoped is None
            answer = self._solved(tried, seconds, work) if now else None
        if not now:
            answer = self._solved(tried, seconds, work)
        with self._best.lock:
            gained = answer is not None and answer.found and self._put_back(tried, answer)
            hope = _TIRED * self._hope[goal]
            self._hope[goal] = _HOPES[goal] if gained else max(_LEAST, hope)
            if tried is not None and not tried.everything:
                self._learn(answer)
            if tried is not None and tried.hoped is not None:
                less = max(_LEAST_FORESIGHT, _TIRED * self._foresight)
                self._foresight = _FORESIGHT if gained else less
        return gained

    def _solved(self, tried: _Try | None, seconds: float, work: float) -> Answer | None:
        if tried is None:
            return None
        more = 1.0 if tried.hoped is None else _ALL
        work *= _AT_FIRST if self._shares_first(tried) else more
        near = None if tried.goal is Goal.ENDS else _MUCH / 2
        search = Search(more * seconds, work, 1, tried.seed, light=True, near=near)
        return tried.draft.model.solve(search, tried.enough)

    def _shares_first(self, tried: _Try) -> bool:
        return self._foreseen is not None and tried.everything and tried.hoped is None

    def _learn(self, answer: Answer | None) -> None:
        """Free more next time when this part was solved to its end, less when it was not."""
        if answer is not None:
            proved = answer.status in {Status.PROVED, Status.IMPOSSIBLE}
            change = _MORE if proved else _LESS
            self._coats = min(_MOST_COATS, max(_FEWEST_COATS, change * self._coats))

    def _opened(self) -> _Try | None:
        """What goes before parts: a plan near one that is foreseen, then mixes shared."""
        if self._foreseen is None:
            return None
        first = self._foreseen.opening or self._random.random() < self._foresight
        if first and self._best.standing.worth.late:
            wish = self._foreseen.less_late(self._best.standing, self._random)
            return None if wish is None else self._near(wish)
        if self._shared:
            return None
        self._shared = True
        return self._sharing()

    def _near(self, wish: Standing) -> _Try | None:
        """All lanes near a foreseen plan; each coat gives way a little to share a mix."""
        standing = self._best.standing
        lanes = frozenset(range(len(standing.lanes)))
        draft = self._parts.draft(standing, Freedom(lanes, beside=lanes, all_mixes=True), wish)
        if draft is None:
            return None
        now = round(standing.worth.late * HOUR)
        most = min(round(wish.worth.late * HOUR) + _NEAR, now - 1)
        draft.model.at_least(most, draft.goals.late)
        draft.model.as_it_is = True
        draft.model.aim(_aimed(draft, Goal.LATENESS))
        draft.model.hint(Hints(draft).values.values())
        hoped = (most + 1) * (_MUCH // draft.grid.step)
        return _Try(Goal.LATENESS, standing, lanes, draft, 0, hoped)

    def _sharing(self) -> _Try | None:
        """All lanes near where they are; each coat gives way a little to share a mix."""
        standing = self._best.standing
        lanes = frozenset(range(len(standing.lanes)))
        if not self._parts.values(standing.lanes):
            return None
        draft = self._parts.draft(standing, Freedom(lanes, beside=lanes, all_mixes=True))
        if draft is None:
            return None
        self._aim(draft, standing.lanes, Goal.MIXES)
        draft.model.start_at(Hints(draft).values.values())
        return _Try(Goal.MIXES, standing, lanes, draft, 0)

    def _freed(self, goal: Goal) -> _Try | None:
        """A part that may gain in a goal; None when it has no room to."""
        standing = self._best.standing
        coats = round(self._coats * self._random.uniform(0.5, 1.2))
        lanes = self._freeing.part(standing, goal, coats, self._could_gain)
        days = self._random.choice(_DAYS_AROUND)
        seed = self._random.randrange(1 << 30)
        tired = 1.0 - self._hope[goal] / _HOPES[goal]
        mixes = goal is Goal.MIXES or self._random.random() < tired * _OTHER_MIXES
        freedom = Freedom(lanes, days, all_mixes=mixes)
        draft = self._parts.draft(standing, freedom) if lanes else None
        if draft is None:
            return None
        self._aim(draft, [standing.lanes[at] for at in sorted(lanes)], goal)
        return _Try(goal, standing, lanes, draft, seed)

    def _aim(self, draft: Draft, free: Sequence[Lane], goal: Goal) -> None:
        """Ask for as little of a goal as can be, and no more of those before it."""
        now = self._parts.values(free)
        aim = Goal.LATENESS if goal is Goal.LEFT_OUT else goal
        if now:
            hold_before(draft, aim, now)
        draft.model.aim(_aimed(draft, aim))
        draft.model.hint(Hints(draft).values.values())

    def _put_back(self, tried: _Try | None, answer: Answer) -> bool:
        """Put an answer into the plan as it stands now; tell whether it gets better by it."""
        if tried is None or self._overtaken(tried):
            return False
        found = AnswerReader(tried.draft, answer).lanes()
        after = (
            None
            if found is None
            else self._parts.put_back(self._best.standing, tried.lanes, found)
        )
        if after is None:
            return False
        apart = self._best.standing is not tried.standing
        if apart and dusty(self._parts.frame, after.lanes):
            return False
        return self._best.offer(after)

    def _overtaken(self, tried: _Try) -> bool:
        """Whether the freed lanes, or mixes they share, were placed anew in the meantime."""
        if self._best.standing is tried.standing or tried.everything:
            return False
        now, then = self._best.standing.lanes, tried.standing.lanes
        if pinned(now, tried.lanes) != pinned(then, tried.lanes):
            return True
        return any(not same_place(now[at], then[at]) for at in tried.lanes)

    def _goal(self) -> Goal:
        """A goal that could be better, the ones with more hope more often."""
        met = self._best.met
        values = by_goal(self._best.standing.worth)
        lacking = [goal for goal, value in values.items() if value and goal not in met]
        hopes = [self._hope[goal] for goal in lacking]
        return self._random.choices(lacking, hopes)[0] if lacking else Goal.ENDS

    def _could_gain(self, lane: Lane) -> bool:
        """Whether a late lane's order could leave earlier if nothing were in its way."""
        order, placed = lane.chain.order, lane.placed
        if order is None or placed is None:
            return False
        least = self._parts.alone_late(self._best.standing.lanes, order)
        return placed.score[0] * 3600 > least + 1


_MUCH = 10_000_000

_NEAR = 1800
"""Seconds by which a plan may be later than was foreseen: parts make it better sooner."""

_GUIDES = {
    Goal.SCUFFED: 2000,
    Goal.TESTED: 400,
    Goal.MOVED: 200,
    Goal.MIXES: 50,
    Goal.ENDS: 1,
}
"""What the goals after the one aimed at count for each other: a guide, the worth decides."""


def _aimed(draft: Draft, aim: Goal) -> Quantity:
    """One goal before all, then those after it without their strict order."""
    total: Quantity = 0
    for goal in IN_ORDER[IN_ORDER.index(aim) + 1 :]:
        total += _GUIDES.get(goal, 0) * quantity_of(draft, goal)
    unit = draft.grid.step if aim in {Goal.LATENESS, Goal.SPARE} else 1
    return _MUCH // unit * quantity_of(draft, aim) + total
