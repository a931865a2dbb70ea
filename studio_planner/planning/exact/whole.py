"""Solves a whole studio goal by goal, strictly in their order, and says what is proved."""

from __future__ import annotations

import math
from dataclasses import replace
from time import monotonic
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal
from studio_planner.planning.exact.answers import AnswerReader
from studio_planner.planning.exact.goals import IN_ORDER, InOneGo, hold_before, quantity_of
from studio_planner.planning.exact.hints import Hints
from studio_planner.planning.exact.part import Freedom
from studio_planner.planning.exact.sharing import sharing
from studio_planner.planning.solver import Status

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping, Sequence

    from studio_planner.planning.exact.best_so_far import BestSoFar
    from studio_planner.planning.exact.draft import Draft
    from studio_planner.planning.exact.part import Standing
    from studio_planner.planning.solver import Answer, Model, Quantity, Search

_SHARE, _LONG = 0.6, 8.0
"""The share of the time left that one goal may take, so that some is left for the next; and the
seconds after which a question about less lateness is hardly answered any more."""

_MUCH_LESS = (16, 4)
"""Into how many parts the lateness above its bound is divided when much less is asked for: no
more than one of them. That leaves so little room that either answer comes sooner than the least
lateness is found from where the plan stands (a third of the time, measured)."""

_JOINTS = (Goal.SCUFFED, Goal.TESTED)

_BY_MIXES = (Goal.MIXES, Goal.ENDS)
"""The goals that are made small by a model in which mixes are unknowns."""

_LOOKS = ((2.0, False), (math.inf, True), (math.inf, False))
"""How long a goal in hours is looked at, and whether just its bound is asked for: the way down
to that is long where many plans differ by little."""

_TELLING = 0.5
"""Seconds between two better answers that are read: the search waits while one is."""

_ROUNDING = 1e-6
"""By what a bound on a whole number may be off."""


class Whole:
    """The studio as one model that leaves nothing out."""

    def __init__(self, best: BestSoFar) -> None:
        """Start from the best plan so far; others may make it better meanwhile."""
        self._best = best
        self._all = frozenset(range(len(best.standing.lanes)))
        self._at_hand: tuple[Goal, Model] | None = None

    def ask_for_less(
        self,
        end: float,
        search: Search,
        over: Callable[[], bool],
        put: Callable[[], None] = lambda: None,
    ) -> None:
        """Ask for a plan that is much less late; best before all else.

        `put` is called when a question is put to the solver, which leaves Python to others.
        """
        for parts in _MUCH_LESS:
            if over() or Goal.LATENESS in self._best.met:
                return
            values = self._best.parts.values(self._best.standing.lanes)
            least = self._best.least(Goal.LATENESS)
            most = least + (values[Goal.LATENESS] - least) // parts
            seconds = min(_LONG, _SHARE * (end - monotonic()))
            asked = self._no_later(most, replace(search, seconds=seconds), put)
            if asked is not Status.IMPOSSIBLE:
                return
            with self._best.lock:
                self._best.bound(Goal.LATENESS, most + 1)

    def solve(self, end: float, search: Search, over: Callable[[], bool]) -> None:
        """Make each goal small in turn, until the monotonic clock says `end`.

        A goal that cannot be proved in its share of the time is looked at once more when the
        plan has become better: less room is left then. Otherwise it is left, and with it all
        that follow: their bounds would hold for nothing.
        """
        for goal in IN_ORDER:
            while goal not in self._best.met:
                if over():
                    return
                before = self._best.standing.worth
                self._aim(goal, search, end)
                if goal not in self._best.met and not self._best.standing.worth < before:
                    return

    def halt(self) -> None:
        """End what is being solved: nobody waits for it any more."""
        at_hand = self._at_hand
        if at_hand is not None:
            at_hand[1].halt()

    def leave_what_is_met(self) -> None:
        """Look no longer for what others have met by now."""
        at_hand = self._at_hand  # another thread lays it down at any moment
        if at_hand is not None and at_hand[0] in self._best.met:
            at_hand[1].halt()

    def _no_later(self, most: int, search: Search, put: Callable[[], None]) -> Status:
        """Look for a plan that is so many weighted seconds late at most, joints and all."""
        draft = self._draft(self._best.standing, most)
        if draft is None:
            return Status.IMPOSSIBLE
        draft.model.at_least(most, draft.goals.late)
        in_one_go = InOneGo(draft, (Goal.LATENESS, *_JOINTS))
        put()
        # Told of before its end it would be left as soon as the lateness is met.
        answer = self._solved(draft, Goal.LATENESS, in_one_go.number, search, tells=False)
        if answer.bound is not None:
            self._bound(in_one_go.parted(math.ceil(answer.bound - _ROUNDING)))
        return answer.status

    def _bound(self, bounds: Mapping[Goal, int]) -> None:
        """Keep bounds in one go: each holds only for plans that have just those before it."""
        with self._best.lock:
            values = self._best.parts.values(self._best.standing.lanes)
            for goal, bound in bounds.items():
                self._best.bound(goal, bound)
                if values[goal] != bound:
                    return

    def _aim(self, goal: Goal, search: Search, end: float) -> None:
        """Make a goal small: joints of both kinds in one go."""
        goals = _JOINTS if goal is _JOINTS[0] else (goal,)
        for seconds, least in _LOOKS if goal is Goal.SPARE else _LOOKS[-1:]:
            share = 1.0 if goal is IN_ORDER[-1] else _SHARE
            left = min(seconds, share * (end - monotonic()))
            if goal not in self._best.met and left > 0:
                self._seek(goals, replace(search, seconds=left), least=least)

    def _seek(self, goals: Sequence[Goal], search: Search, *, least: bool = False) -> None:
        """Look for less of some goals; for the `least` there could be of the first, or none."""
        standing = self._best.standing
        values = self._best.parts.values(standing.lanes)
        by_mixes = values[Goal.MIXES] if goals[0] in _BY_MIXES else None
        draft = self._draft(standing, most_mixes=by_mixes)
        if draft is None:
            return
        hold_before(draft, goals[0], values)
        in_one_go = InOneGo(draft, goals)
        bound = self._best.least(goals[0])
        if least:
            draft.model.at_least(bound, quantity_of(draft, goals[0]))
        answer = self._solved(draft, goals[-1], in_one_go.number, search)
        if least and answer.status is Status.IMPOSSIBLE:
            self._bound({goals[0]: bound + 1})
        elif answer.bound is not None:
            self._bound(in_one_go.parted(math.ceil(answer.bound - _ROUNDING)))

    def _draft(
        self, standing: Standing, late: int | None = None, most_mixes: int | None = None
    ) -> Draft | None:
        freedom = Freedom(
            self._all, all_mixes=True, to_prove=True, late=late, most_mixes=most_mixes
        )
        return self._best.parts.draft(standing, freedom)

    def _solved(
        self, draft: Draft, goal: Goal, aim: Quantity, search: Search, *, tells: bool = True
    ) -> Answer:
        draft.model.aim(aim)
        if draft.in_turn:
            draft.model.start_at(Hints(draft).values.values())
        else:
            draft.model.hint(Hints(draft).values.values())
        self._at_hand = goal, draft.model
        told = monotonic()

        def better(found: Answer) -> bool:
            nonlocal told
            if monotonic() > told + _TELLING:
                self._offer(draft, found)
                told = monotonic()
            return False

        answer = draft.model.solve(search, better if tells else None)
        self._at_hand = None
        if answer.found:
            self._offer(draft, answer)
        return answer

    def _offer(self, draft: Draft, answer: Answer) -> None:
        found = AnswerReader(draft, answer).lanes()
        if found is not None:
            with self._best.lock:
                self._best.offer(
                    self._best.parts.put_back(self._best.standing, self._all, found)
                )


def leaves_nothing_out(best: BestSoFar) -> bool:
    """Whether the model has all that a plan may do, so that its bounds hold for every plan.

    In a second place clocks depend on where other coats stood; two people may sand at once;
    twins that are turned together are one lane; a mix may be shared by very many.
    """
    frame, lanes = best.parts.frame, best.standing.lanes
    places = {spots.place for spots in frame.choices.spots}
    return (
        places == {frame.means.edges.rest}
        and (len(frame.means.shop.hands) == 1 or _nobody_sands_at_once(best))
        and all(len(lane.chain.pieces) == 1 and lane.placed is not None for lane in lanes)
        and not sharing(frame.studio, lanes, all_pairs=True).capped
    )


def _nobody_sands_at_once(best: BestSoFar) -> bool:
    """Whether two never sand at once in any plan that is as good as the one that stands.

    With one joint to be sanded there is nothing beside it; but only where no plan is less late
    is it known that sanding more is worth nothing.
    """
    lanes = best.standing.lanes
    scuffs = any(task.may_scuff for lane in lanes for task in lane.chain.tasks)
    return not scuffs or (Goal.LATENESS in best.met and best.standing.worth.scuffed <= 1)
