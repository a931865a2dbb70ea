"""Which foreseen plan comes next, and how often."""

from __future__ import annotations

from random import Random
from threading import Event, Thread
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.plans import Goal
from studio_planner.planning.exact.foreseen import Foreseen, Wish
from studio_planner.planning.exact.search import PlanSearch
from studio_planner.planning.exact.wishes import Wishes
from studio_planner.planning.exact.working_days import WorkingDays
from studio_planner.planning.quick import quick_start
from tests.planning.benchmark_studios import START, benchmark_studio

if TYPE_CHECKING:
    from studio_planner.planning.exact.best_so_far import BestSoFar

_LATE = 5
"""The seed of a small studio whose quick plan is late, with no mix shared."""

_DRAWS = 200


@pytest.fixture(scope="module")
def search() -> PlanSearch:
    """A search that has only begun."""
    return PlanSearch(quick_start(benchmark_studio("S", _LATE), START))


def _wishes(search: PlanSearch, first: int = 1, *, again: bool = False) -> Wishes:
    start = quick_start(benchmark_studio("S", _LATE), START)
    best = search.best
    foreseen = Foreseen(start.rounds, best.parts, best.standing, first, start.before)
    return Wishes(foreseen, Random(0), again=again, beside=False)  # noqa: S311 - to be repeated


def _drawn(wishes: Wishes, best: BestSoFar) -> Wish:
    wish = wishes.drawn(best)
    assert wish is not None
    return wish


def test_a_wish_that_is_nowhere_near_comes_once_more_and_then_anything_better_will_do(
    search: PlanSearch,
) -> None:
    wishes = _wishes(search)
    wish = _drawn(wishes, search.best)
    assert wish.plan.worth.late < search.best.standing.worth.late
    assert not wish.loosely
    wishes.learn(wish, gained=False, missed=True)
    again = _drawn(wishes, search.best)
    assert again.loosely
    assert again.plan is wish.plan
    wishes.learn(again, gained=False, missed=True)
    assert wishes.drawn(search.best) != again


def test_what_has_moved_from_a_kept_plan_comes_before_the_first_wish(
    search: PlanSearch,
) -> None:
    wishes = _wishes(search, again=True)
    assert wishes.drawn(search.best) is None
    assert wishes.opening
    assert wishes.drawn(search.best) is not None
    assert not wishes.opening


def test_nothing_is_wished_for_once_nothing_can_be_less_late() -> None:
    search = PlanSearch(quick_start(benchmark_studio("S", _LATE), START))
    best = search.best
    best.bound(Goal.LATENESS, best.parts.values(best.standing.lanes)[Goal.LATENESS])
    assert _wishes(search).drawn(best) is None


def test_wishes_in_vain_are_drawn_less_often(
    search: PlanSearch, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked: list[BestSoFar] = []

    def nothing(_: Foreseen, best: BestSoFar, random: Random) -> None:
        del random
        asked.append(best)

    monkeypatch.setattr(Foreseen, "less_late", nothing)
    wish = Wish(search.best.standing)
    tired, lively = _wishes(search, 0), _wishes(search, 0)
    for _ in range(_DRAWS):
        assert tired.drawn(search.best) is None
    in_vain = len(asked)
    for _ in range(_DRAWS):
        lively.learn(wish, gained=True, missed=False)
        assert lively.drawn(search.best) is None
    assert 0 < in_vain < 0.5 * (len(asked) - in_vain)


def test_one_thread_looks_for_a_wish_while_the_other_goes_on(
    search: PlanSearch, monkeypatch: pytest.MonkeyPatch
) -> None:
    looking, found = Event(), Event()

    def slow(_: Foreseen, best: BestSoFar, random: Random) -> None:
        del best, random
        looking.set()
        found.wait()

    monkeypatch.setattr(Foreseen, "less_late", slow)
    wishes = _wishes(search)
    thread = Thread(target=wishes.drawn, args=(search.best,))
    thread.start()
    looking.wait()
    assert wishes.drawn(search.best) is None
    found.set()
    thread.join()


def test_of_a_large_studio_plans_beside_the_one_that_stands_are_wished_for(
    search: PlanSearch, monkeypatch: pytest.MonkeyPatch
) -> None:
    standing = search.best.standing
    found = [Wish(standing, standing), None]
    monkeypatch.setattr(Foreseen, "less_late", lambda *_: None)
    monkeypatch.setattr(Foreseen, "beside", lambda *_: found[0])
    start = quick_start(benchmark_studio("S", _LATE), START)
    foreseen = Foreseen(start.rounds, search.best.parts, standing, 0, start.before)
    wishes = Wishes(foreseen, Random(0), again=False, beside=True)  # noqa: S311
    drawn = [wishes.drawn(search.best) for _ in range(_DRAWS)]
    often = sum(wish is not None for wish in drawn)
    assert 0.5 * _DRAWS < often < _DRAWS
    for _ in range(_DRAWS):
        wishes.learn(Wish(standing, standing), gained=False, missed=True)
    drawn = [wishes.drawn(search.best) for _ in range(_DRAWS)]
    seldom = sum(wish is not None for wish in drawn)
    assert 0.2 * _DRAWS < seldom < 0.8 * often, "less often in vain, but never hardly ever"
    assert all(wish is None or not wish.loosely for wish in drawn)


def test_where_there_are_rough_plans_other_days_are_wished_for_as_often_as_they_gain(
    search: PlanSearch, monkeypatch: pytest.MonkeyPatch
) -> None:
    standing, days = search.best.standing, WorkingDays(0, [])
    by_days, other = Wish(standing, standing, days=days), Wish(standing, standing)
    monkeypatch.setattr(Foreseen, "beside_by_days", lambda *_: by_days)
    monkeypatch.setattr(Foreseen, "beside", lambda *_: other)
    start = quick_start(benchmark_studio("S", _LATE), START)
    foreseen = Foreseen(start.rounds, search.best.parts, standing, 0, start.before)
    monkeypatch.setattr(foreseen, "rough", True)
    monkeypatch.setattr(foreseen, "anew", False)
    wishes = Wishes(foreseen, Random(0), again=False, beside=True)  # noqa: S311
    before = [wishes.drawn(search.best) for _ in range(_DRAWS)]
    assert 0 < before.count(other) < before.count(by_days)
    for _ in range(_DRAWS):
        wishes.learn(by_days, gained=False, missed=True)
    after = [wishes.drawn(search.best) for _ in range(_DRAWS)]
    assert after.count(by_days) < before.count(by_days)
    wishes.learn(by_days, gained=True, missed=False)
    again = [wishes.drawn(search.best) for _ in range(_DRAWS)]
    assert again.count(by_days) > after.count(by_days)
