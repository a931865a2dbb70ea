"""Makes a plan better part by part: frees orders, an evening or some spots, solves, keeps.

Each step aims at one goal and holds those before it; what is found is put back only when the
whole plan is worth more. Steps are drawn from a seeded generator and bounded by the solver's
own work, so that the same steps give the same plan.
"""

from __future__ import annotations

from random import Random
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal
from studio_planner.planning.exact.all_lanes import (
    FEWEST_DAYS,
    FIRST_DAYS,
    MOST_COATS,
    SOON,
    AllLanes,
    Together,
)
from studio_planner.planning.exact.answers import AnswerReader
from studio_planner.planning.exact.dust import dusty
from studio_planner.planning.exact.freeing import Freeing
from studio_planner.planning.exact.hints import Hints
from studio_planner.planning.exact.homeless import Homeless
from studio_planner.planning.exact.near import near
from studio_planner.planning.exact.part import Freedom
from studio_planner.planning.exact.standing_plan import pinned, same_place
from studio_planner.planning.exact.tries import Try, aim
from studio_planner.planning.exact.wishes import Wishes
from studio_planner.planning.solver import Search, Status
from studio_planner.planning.worth import by_goal

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.planning.exact.best_so_far import BestSoFar
    from studio_planner.planning.exact.foreseen import Foreseen, Wish
    from studio_planner.planning.exact.lanes import Lane
    from studio_planner.planning.exact.part import Standing
    from studio_planner.planning.solver import Answer

_OTHER_MIXES = 0.4
"""How often mixes may be shared anew for another goal, once it has been aimed at in vain: that
frees hands, but takes longer."""

_FIRST_COATS, _FEWEST_COATS, _MOST_COATS = 22.0, 8.0, 60.0
_MORE, _LESS = 1.04, 0.9
"""New coats in a freed part: as many as are still solved to the end."""

_MORE_EFFORT, _LESS_EFFORT, _MOST_EFFORT = 1.04, 0.6, 6.0
"""How much more the next part may cost while parts are solved in vain: where a plan is as good
as small parts can make it, larger ones still gain (sixty pieces: 24 hours late for 95)."""

_OFTEN_SOME = 0.2
"""How often some of the lanes that moved look for another place, where they are many."""

_RARELY = 0.4
"""How often all lanes are freed a little where no kept plan draws them."""

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


class Improver:
    """Improves the best plan so far, a step at a time.

    Several threads may make steps at once: the solver works beside all else, and what it finds
    is put into the plan as it stands by then. Only steps of one thread can be repeated.
    """

    def __init__(self, best: BestSoFar, seed: int, foreseen: Foreseen | None = None) -> None:
        """Start from a plan; the first steps look for plans near the foreseen ones."""
        self._random = Random(seed)  # noqa: S311 - to be repeated, not to be secret
        self._again = bool(best.parts.frame.before)
        self._large = best.standing.new_coats > MOST_COATS
        self._wishes = (
            None
            if foreseen is None
            else Wishes(foreseen, self._random, again=self._again, beside=self._large)
        )
        self._at_hand: list[Try] = []
        self._together = self._together_at(FIRST_DAYS)
        self._shared = False
        self._homeless = Homeless(self._random, best.parts.frame.before)
        self.steps = 0
        self._best = best
        self._parts = best.parts
        self._hope = dict(_HOPES)
        self._coats = _FIRST_COATS
        self._effort = 1.0
        self._freeing = Freeing(self._random, best.parts.frame.before)
        self._all_lanes = AllLanes(best.parts)

    def step(self, seconds: float, work: float) -> bool:
        """Free one part, or all lanes a little, and solve; tell whether the plan got better."""
        wish = None if self._wishes is None else self._wishes.drawn(self._best)
        with self._best.lock:
            self.steps += 1
            tried = self._opened(wish)
            goal = self._goal() if tried is None else tried.goal
            tried = tried or self._freed(goal)
        answer = self._solved(tried, seconds, work)
        with self._best.lock:
            gained = answer is not None and answer.found and self._put_back(tried, answer)
            if wish is None:
                hope = _TIRED * self._hope[goal]
                self._hope[goal] = _HOPES[goal] if gained else max(_LEAST, hope)
            if tried is not None:
                self._learn(tried, answer, gained=gained)
            if gained:
                self._leave_outdone()
        return gained

    def _together_at(self, days: float) -> Together:
        """How all lanes are freed a little, from so many days on."""
        usual = 1.0 if self._again else _RARELY
        return Together(days=days, usual=usual, often=usual)

    def halt(self) -> None:
        """End what is being solved: nobody waits for it any more."""
        for tried in list(self._at_hand):
            tried.draft.model.halt()

    def _leave_outdone(self) -> None:
        """End what is being solved near plans that foresee more lateness than now stands.

        What is beside a plan gains all the same: in other lanes.
        """
        late = self._best.standing.worth.late
        for tried in list(self._at_hand):
            wish = tried.wish
            if wish is not None and wish.beside is None and wish.plan.worth.late > late:
                tried.draft.model.halt()

    def _solved(self, tried: Try | None, seconds: float, work: float) -> Answer | None:
        if tried is None:
            return None
        more, model = tried.effort, tried.draft.model
        more *= 1.0 if tried.replaces else self._effort
        search = Search(
            max(1.0, more) * seconds, more * work, 1, tried.seed, light=True, near=tried.near
        )
        self._at_hand.append(tried)
        try:
            return model.solve(search, tried.enough)
        finally:
            self._at_hand.remove(tried)

    def _learn(self, tried: Try, answer: Answer | None, *, gained: bool) -> None:
        """Free more next time when a part was solved to its end, less when it was not.

        And do less often what was in vain.
        """
        if tried.wish and self._wishes:
            missed = answer is not None and answer.status is Status.IMPOSSIBLE
            self._wishes.learn(tried.wish, gained=gained, missed=missed)
            if gained and tried.replaces:
                self._together = self._together_at(FEWEST_DAYS)
        elif tried.goal is Goal.MOVED and tried.replaces:
            self._homeless.learn(done=_is_done(answer))
        elif tried.replaces and tried.goal is Goal.MIXES:
            # What others made better meanwhile has not been shared yet.
            self._shared = gained or self._best.standing is tried.standing
        elif tried.replaces:
            self._together.learn(gained=gained, done=_is_done(answer))
        elif answer is not None and not tried.replaces:
            change = _MORE if _is_done(answer) else _LESS
            self._coats = min(_MOST_COATS, max(_FEWEST_COATS, change * self._coats))
        if not tried.replaces and not tried.wish:
            change = _LESS_EFFORT if gained else _MORE_EFFORT
            self._effort = min(_MOST_EFFORT, max(1.0, change * self._effort))

    def _opened(self, wish: Wish | None) -> Try | None:
        """What is near a foreseen plan; else what frees all lanes: to share mixes, a little."""
        wishes, standing = self._wishes, self._best.standing
        if wishes is not None and wish is not None:
            tried = near(self._parts, standing, wish, self._random.randrange(1 << 30))
            if tried is None:
                wishes.learn(wish, gained=False, missed=False)
            return tried
        if wishes is None or self._large:
            return None
        if not (self._shared or self._again):
            self._shared = True
            return self._all_lanes.sharing(standing)
        if not self._soon_lacking:
            return None
        homeless = self._without_home(standing) if self._again else None
        if homeless is None and self._together.drawn(self._random):
            return self._a_little(standing)
        return homeless

    def _without_home(self, standing: Standing) -> Try | None:
        """What frees lanes that have moved from a kept plan, while all others stay."""
        some = self.steps > 1 and self._random.random() < _OFTEN_SOME
        lanes = self._homeless.drawn(standing, self._could_gain, some=some)
        seed = self._random.randrange(1 << 30)
        return self._all_lanes.homeless(standing, seed, lanes) if lanes else None

    def _a_little(self, standing: Standing) -> Try | None:
        seed, together = self._random.randrange(1 << 30), self._together
        return self._all_lanes.a_little(standing, together.days, seed, all_mixes=together.mixes)

    @property
    def _soon_lacking(self) -> bool:
        """Whether there is still something that all lanes together could gain."""
        met, values = self._best.met, by_goal(self._best.standing.worth)
        return any(values[goal] and goal not in met for goal in SOON)

    def _freed(self, goal: Goal) -> Try | None:
        """A part that may gain in a goal; None when it has no room to."""
        standing = self._best.standing
        coats = round(self._coats * self._random.uniform(0.5, 1.2))
        lanes = self._freeing.part(standing, goal, coats, self._could_gain)
        days = self._random.choice(_DAYS_AROUND)
        seed = self._random.randrange(1 << 30)
        tired = 1.0 - self._hope[goal] / _HOPES[goal]
        mixes = goal is Goal.MIXES or self._random.random() < tired * _OTHER_MIXES
        freedom = Freedom(lanes, days, all_mixes=mixes, back=goal is Goal.MOVED)
        draft = self._parts.draft(standing, freedom) if lanes else None
        if draft is None:
            return None
        aim(self._parts, draft, [standing.lanes[at] for at in sorted(lanes)], goal)
        draft.model.hint(Hints(draft).values.values())
        return Try(goal, standing, lanes, draft, seed)

    def _put_back(self, tried: Try | None, answer: Answer) -> bool:
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

    def _overtaken(self, tried: Try) -> bool:
        """Whether the freed lanes, or mixes they share, were placed anew in the meantime."""
        now, then = self._best.standing.lanes, tried.standing.lanes
        if now is then:
            return False
        if tried.replaces:
            return _without_place(now) != _without_place(then)
        if pinned(now, tried.lanes) != pinned(then, tried.lanes):
            return True
        return any(not same_place(now[at], then[at]) for at in tried.lanes)

    def _goal(self) -> Goal:
        """A goal that could be better, the ones with more hope more often."""
        met = self._best.met
        values = by_goal(self._best.standing.worth)
        lacking = [goal for goal, value in values.items() if value and goal not in met]
        if Goal.LEFT_OUT in lacking and not self._any_more_could_be_placed():
            lacking.remove(Goal.LEFT_OUT)
        hopes = [self._hope[goal] for goal in lacking]
        return self._random.choices(lacking, hopes)[0] if lacking else Goal.ENDS

    def _any_more_could_be_placed(self) -> bool:
        lanes = self._best.standing.lanes
        return any(lane.placed is None and self._parts.possible(lane) for lane in lanes)

    def _could_gain(self, lane: Lane) -> bool:
        """Whether a late lane's order could leave earlier if nothing were in its way."""
        order, placed = lane.chain.order, lane.placed
        if order is None or placed is None:
            return False
        least = self._parts.alone_late(self._best.standing.lanes, order)
        return placed.score[0] * 3600 > least + 1


def _without_place(lanes: Sequence[Lane]) -> list[str]:
    return [lane.key for lane in lanes if lane.placed is None]


def _is_done(answer: Answer | None) -> bool:
    return answer is not None and answer.status in {Status.PROVED, Status.IMPOSSIBLE}
