"""All lanes freed a little: pours go back to where the maker expects them."""

from __future__ import annotations

from dataclasses import replace
from random import Random

import pytest

from studio_planner.craft.plans import Goal
from studio_planner.planning.checker import check_plan
from studio_planner.planning.exact.all_lanes import FEWEST_DAYS, AllLanes, Together
from studio_planner.planning.exact.hints import Hints
from studio_planner.planning.exact.improving import Improver
from studio_planner.planning.exact.part import Freedom
from studio_planner.planning.exact.search import PlanSearch
from studio_planner.planning.exact.started import StartedModel
from studio_planner.planning.quick import quick_plan, quick_start
from studio_planner.planning.solver import Search, Status
from studio_planner.planning.worth import starts_of
from tests.planning.benchmark_studios import START, benchmark_studio, late_studio
from tests.planning.happenings import HAPPENINGS

_LONG, _WORK = 60.0, 0.6


def _after(happening: str, seed: int) -> PlanSearch:
    """A search whose plan was made anew, though another one is kept."""
    studio = benchmark_studio("S", seed)
    now, then = HAPPENINGS[happening](studio, quick_plan(studio, START))
    anew = quick_start(replace(then, plan=None), now)
    search = PlanSearch(replace(anew, before=then.plan))
    search.best.standing = search.best.parts.standing(search.best.standing.lanes)
    return search


@pytest.mark.parametrize(
    ("happening", "seed"),
    [("lost hours", 0), ("lost hours", 6), ("cold nights", 3), ("cold nights", 6)],
)
def test_one_step_takes_most_pours_back_and_nothing_is_lost_by_it(
    happening: str, seed: int
) -> None:
    search = _after(happening, seed)
    before = search.best.standing.worth
    tried = AllLanes(search.best.parts).a_little(
        search.best.standing, FEWEST_DAYS, 0, all_mixes=False
    )
    assert tried is not None
    answer = tried.draft.model.solve(Search(_LONG, _WORK, light=True), tried.enough)
    assert answer.found
    improver = Improver(search.best, 0)
    assert improver._put_back(tried, answer)
    after = search.best.standing.worth
    assert before.moved >= 10
    assert after[:4] <= before[:4]
    assert after.moved <= 0.4 * before.moved
    assert not check_plan(search._frame.studio, search.plan()).broken


def test_coats_start_near_where_they_are_or_where_they_were_and_nowhere_between() -> None:
    search = _after("lost hours", 6)
    parts, standing = search.best.parts, search.best.standing
    lanes = frozenset(range(len(standing.lanes)))
    draft = parts.draft(standing, Freedom(lanes, FEWEST_DAYS, back=True))
    assert draft is not None
    draft.model.hint(Hints(draft).values.values())
    answer = draft.model.solve(Search(_LONG, _WORK, light=True))
    assert answer.status in {Status.PROVED, Status.FOUND}
    step, near = draft.grid.step, FEWEST_DAYS * 86_400
    was = starts_of(search._start.before)
    for unknown in draft.lanes:
        lane = unknown.room.lane
        assert lane.placed is not None
        for index, coat in enumerate(unknown.coats):
            if coat.known_start is None:
                start = answer.of(coat.start) * step
                then = was.get((lane.key, coat.task.coat.key), lane.placed.starts[index])
                origin = draft.grid.origin
                gone = abs(start + origin - lane.placed.starts[index])
                assert gone <= near + step or abs(start + origin - then) <= 1800 + step


def test_they_go_further_when_nothing_is_to_be_gained_and_less_often_in_vain() -> None:
    together = Together()
    together.learn(gained=False, done=True)
    assert together.days == 1.0
    assert together.often == 1.0
    together.learn(gained=False, done=False)
    assert together.days < 1.0
    assert together.often < 1.0
    together.learn(gained=True, done=False)
    assert together.often == 1.0


def test_every_other_time_they_may_share_mixes_anew() -> None:
    together, drawn = Together(), Random(0)  # noqa: S311 - to be repeated
    taken = []
    for _ in range(4):
        assert together.drawn(drawn)
        taken.append(together.mixes)
    assert taken == [False, True, False, True]


def test_a_start_that_cannot_be_is_still_a_hint() -> None:
    model = StartedModel()
    one, other = model.between(0, 9), model.between(0, 9)
    model.at_least(one, 4)
    model.aim(one + other)
    model.start_at([(one, 2), (other, 7)])
    answer = model.solve(Search(_LONG, light=True))
    assert answer.status is Status.PROVED
    assert (answer.of(one), answer.of(other)) == (4, 0)


def test_mixes_are_shared_first_even_where_no_plan_is_less_late() -> None:
    search = PlanSearch(quick_start(late_studio(0), START))
    best, foreseen = search.best, search._foreseen()
    improver = Improver(best, 0, foreseen)
    best.bound(Goal.LATENESS, best.parts.values(best.standing.lanes)[Goal.LATENESS])
    assert best.standing.worth.late
    assert foreseen.opening
    assert not best.may_be_less_late
    tried = improver._opened(None)
    assert tried is not None
    assert (tried.goal, tried.replaces) == (Goal.MIXES, True)
