"""Sanding and packing in the exact model: in somebody's hours, and each day by itself."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.planning.exact.between_lanes import _meeting
from studio_planner.planning.exact.choices import clipped
from studio_planner.planning.exact.draft import Busy, Draft
from studio_planner.planning.exact.search import PlanSearch
from studio_planner.planning.exact.work_by_hand import work_by_hand
from studio_planner.planning.quick import quick_start
from studio_planner.planning.solver import Search, Status
from tests.planning.benchmark_studios import START, benchmark_studio

_TEN_MINUTES = 600


@pytest.fixture(scope="module")
def search() -> PlanSearch:
    """A search of a studio of one person with hours on every day."""
    return PlanSearch(quick_start(benchmark_studio("S", 0), START))


def _hours(draft: Draft) -> list[tuple[int, int]]:
    choices = draft.frame.choices
    return choices.for_steps(choices.hands[0], _TEN_MINUTES)


@pytest.mark.parametrize("at", [0, 1, 2])
def test_work_begins_in_one_of_the_hours_within_which_it_may(
    search: PlanSearch, at: int
) -> None:
    draft = Draft(search.best.parts.frame)
    hours = _hours(draft)[:3]
    work = work_by_hand(draft, _TEN_MINUTES, (hours[0][0], hours[-1][1]))
    assert [(one.first, one.last) for one in work.hours] == hours
    draft.model.inside(work.start, [hours[at]])
    answer = draft.model.solve(Search(10.0))
    assert answer.found
    assert [answer.of(one.chosen) for one in work.hours] == [int(i == at) for i in range(3)]


def test_of_many_stretches_of_hours_none_is_chosen(search: PlanSearch) -> None:
    draft = Draft(search.best.parts.frame)
    hours = _hours(draft)
    work = work_by_hand(draft, _TEN_MINUTES, (hours[0][0], hours[-1][1]))
    assert [(one.first, one.last) for one in work.hours] == [(hours[0][0], hours[-1][1])]
    draft.model.at_least(hours[1][0] - 1, work.start)
    draft.model.aim(-work.start)
    assert draft.model.solve(Search(10.0)).of(work.start) == hours[0][1]


def test_work_that_finds_no_hours_is_never_done(search: PlanSearch) -> None:
    draft = Draft(search.best.parts.frame)
    between = _hours(draft)[0][1] + 1
    assert not clipped(_hours(draft), between, between)
    done = draft.model.flag()
    assert not work_by_hand(draft, _TEN_MINUTES, (between, between), done).hours
    draft.model.aim(-done)
    assert draft.model.solve(Search(10.0)).of(done) == 0
    work_by_hand(draft, _TEN_MINUTES, (between, between))
    assert draft.model.solve(Search(10.0)).status is Status.IMPOSSIBLE


@given(st.lists(st.tuples(st.integers(0, 60), st.integers(1, 9)), max_size=20))
def test_groups_of_work_never_meet_and_none_could_be_cut(spans: list[tuple[int, int]]) -> None:
    works = [Busy(None, first, first + slots) for first, slots in spans]  # type: ignore[arg-type]
    groups = list(_meeting(works))
    taken = [
        {slot for one in group for slot in range(one.first, one.until)} for group in groups
    ]
    assert sorted(id(one) for group in groups for one in group) == sorted(map(id, works))
    assert sum(len(slots) for slots in taken) == len(set().union(*taken))
    assert all(slots == set(range(min(slots), max(slots) + 1)) for slots in taken)
