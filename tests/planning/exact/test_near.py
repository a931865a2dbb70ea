"""Plans near a foreseen one: all lanes of a studio, or those that are wanted elsewhere."""

from __future__ import annotations

from dataclasses import replace
from functools import partial
from random import Random
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.pieces import UNDERSIDE
from studio_planner.planning.checker import check_plan
from studio_planner.planning.exact.all_lanes import MOST_COATS
from studio_planner.planning.exact.foreseen import Foreseen, Wish
from studio_planner.planning.exact.improving import Improver
from studio_planner.planning.exact.near import _bound, _moved, near
from studio_planner.planning.exact.search import PlanSearch
from studio_planner.planning.quick import quick_plan, quick_start
from studio_planner.planning.solver import Search
from tests.planning.benchmark_studios import (
    START,
    Dates,
    benchmark_studio,
    late_studio,
    make_studio,
)
from tests.planning.happenings import HAPPENINGS

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.exact.lanes import Lane
    from studio_planner.planning.exact.tries import Try

_LATE_WHERE_COLD = 1
"""The seed of a small studio whose plan comes late by colder nights."""

_TRIES = 40
"""How many plans beside one are looked near to."""

_TIGHT = Dates(4.0, 0.5)
_LONG, _WORK = 60.0, 0.6


def _begun(studio: Studio) -> PlanSearch:
    """A search that begins at a quick plan, of which much is late."""
    return PlanSearch(quick_start(studio, START))


def _drawn(number: int = 0) -> Random:
    return Random(number)  # noqa: S311 - to be repeated, not to be secret


@pytest.mark.parametrize("loosely", [False, True])
def test_near_a_foreseen_plan_less_comes_late_with_few_pours_moved(*, loosely: bool) -> None:
    studio = benchmark_studio("S", _LATE_WHERE_COLD)
    now, then = HAPPENINGS["cold nights"](studio, quick_plan(studio, START))
    start = quick_start(then, now)
    search = PlanSearch(start)
    best, standing = search.best, search.best.standing
    foreseen = Foreseen(start.rounds, best.parts, standing, 1, start.before)
    wish = foreseen.less_late(best, _drawn())
    assert wish is not None
    tried = near(best.parts, standing, replace(wish, loosely=loosely), 0)
    assert tried is not None
    assert tried.effort == 1.0, "no more than a part, with a kept plan"
    answer = tried.draft.model.solve(Search(_LONG, _WORK, light=True), tried.enough)
    assert Improver(best, 0)._put_back(tried, answer)
    after = best.standing.worth
    most = standing.worth.late if loosely else wish.plan.worth.late + 0.5
    assert after.late <= most
    assert after < standing.worth
    assert loosely or after.moved <= wish.plan.worth.moved + 3
    assert not check_plan(then, search.plan()).broken


def _with_turned_twins() -> Studio:
    """A studio whose first order is of pieces that are turned together for their last coat."""
    studio = benchmark_studio("S", 3)
    order = next(order for order in studio.orders if len(order.pieces) > 1)
    first = studio.piece(order.pieces[0])
    last = replace(first.stack[-1], faces=frozenset({UNDERSIDE}))
    stack = (*first.stack[:-1], last)
    twins = [replace(first, key=key, name=key, stack=stack) for key in order.pieces]
    others = [piece for piece in studio.pieces if piece.key not in order.pieces]
    return replace(studio, pieces=(*twins, *others))


def test_twins_that_are_turned_together_get_blocks_as_long_as_their_work() -> None:
    studio = _with_turned_twins()
    search = PlanSearch(quick_start(studio, START))
    standing = search.best.standing
    assert any(len(lane.chain.pieces) > 1 for lane in standing.lanes)
    wish = search._foreseen().less_late(search.best, _drawn())
    assert wish is not None
    tried = near(search.best.parts, standing, wish, 0)
    assert tried is not None
    answer = tried.draft.model.solve(Search(_LONG, _WORK, light=True), tried.enough)
    assert Improver(search.best, 0)._put_back(tried, answer)
    assert not check_plan(studio, search.plan()).broken


def test_of_a_large_studio_lanes_are_opened_only_near_a_foreseen_plan() -> None:
    search = PlanSearch(quick_start(make_studio(2, 40, 4, 2, _TIGHT), START))
    best, foreseen = search.best, search._foreseen()
    improver = Improver(best, 0, foreseen)
    assert improver._opened(None) is None
    wish = foreseen.less_late(best, _drawn())
    assert wish is not None
    tried = improver._opened(wish)
    assert tried is not None
    assert tried.wish is wish
    assert tried.replaces
    small = _begun(benchmark_studio("S", 1))
    wish = small._foreseen().less_late(small.best, _drawn())
    assert wish is not None
    less = near(small.best.parts, small.best.standing, wish, 0)
    assert less is not None
    many = best.standing.new_coats / MOST_COATS
    assert many > 1.2
    assert tried.effort == pytest.approx(less.effort * many**1.5)


def _beside(search: PlanSearch) -> Wish:
    wish = search._foreseen().beside(search.best, _drawn())
    assert wish is not None
    return wish


def _starts(lane: Lane) -> tuple[int, ...]:
    return () if lane.placed is None else lane.placed.starts


def _found_beside(search: PlanSearch, *, by_days: bool) -> tuple[Wish, Try]:
    """The first plan beside the one that stands near which there is a true one; put back."""
    foreseen, drawn, standing = search._foreseen(), _drawn(), search.best.standing
    look = foreseen.beside_by_days if by_days else foreseen.beside
    for _ in range(_TRIES):
        wish = look(search.best, drawn)
        tried = None if wish is None else near(search.best.parts, standing, wish, 0)
        if wish is None or tried is None:
            continue
        answer = tried.draft.model.solve(Search(_LONG, 2 * _WORK, light=True), tried.enough)
        if answer.found and Improver(search.best, 0)._put_back(tried, answer):
            return wish, tried
    pytest.fail("no true plan was found")


@pytest.mark.parametrize("by_days", [False, True])
def test_what_is_wanted_elsewhere_is_freed_with_its_order_and_all_else_stays(
    *, by_days: bool
) -> None:
    search = _begun(late_studio(0))
    standing = search.best.standing
    wish, tried = _found_beside(search, by_days=by_days)
    assert not tried.replaces
    pairs = list(zip(standing.lanes, wish.plan.lanes, strict=True))
    moved = _moved(standing, wish.plan)
    assert moved
    assert moved <= tried.lanes
    orders = {pairs[at][0].chain.order for at in moved} - {None}
    assert all(
        at in tried.lanes for at, (lane, _) in enumerate(pairs) if lane.chain.order in orders
    )
    after = search.best.standing
    assert after.worth.late < standing.worth.late
    stayed = set(range(len(pairs))) - tried.lanes
    assert all(_starts(pairs[at][0]) == _starts(after.lanes[at]) for at in stayed)
    assert (wish.days is not None) == by_days
    if wish.days is not None:
        of = wish.days.of
        for at in moved:
            wanted = [of(start) for start in _starts(pairs[at][1])]
            assert [of(start) for start in _starts(after.lanes[at])] == wanted
    assert not check_plan(search._frame.studio, search.plan()).broken


def test_who_shares_a_mix_with_what_is_wanted_elsewhere_is_freed_too() -> None:
    search = _begun(benchmark_studio("S", 1))
    alone = search.best.standing
    Improver(search.best, 0, search._foreseen()).step(_LONG, _WORK)
    shared = search.best.standing
    groups: dict[str, set[int]] = {}
    for at, lane in enumerate(shared.lanes):
        for mix in set(lane.placed.laid.mixes if lane.placed else ()) - {""}:
            groups.setdefault(mix, set()).add(at)
    assert groups
    for lanes in groups.values():
        one = min(lanes)
        wanted = list(shared.lanes)
        wanted[one] = alone.lanes[one]
        elsewhere = replace(shared, lanes=tuple(wanted))
        moved = _moved(shared, elsewhere)
        assert lanes <= moved | _bound(shared, elsewhere, moved)


def test_what_promises_more_lateness_than_now_stands_is_no_longer_looked_for() -> None:
    search = _begun(late_studio(0))
    improver = Improver(search.best, 0, search._foreseen())
    anew = search._foreseen().less_late(search.best, _drawn())
    assert anew is not None
    halted: list[Wish] = []
    for wish in (anew, _beside(search)):
        tried = near(search.best.parts, search.best.standing, wish, 0)
        assert tried is not None
        tried.draft.model.halt = partial(halted.append, wish)  # type: ignore[method-assign]
        improver._at_hand.append(tried)
    improver._leave_outdone()
    assert not halted
    worth = search.best.standing.worth._replace(late=0.0)
    search.best.standing = replace(search.best.standing, worth=worth)
    improver._leave_outdone()
    assert halted == [anew], "what is beside a plan gains all the same, in other lanes"
