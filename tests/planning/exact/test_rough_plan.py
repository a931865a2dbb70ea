"""Rough plans: which days each chain takes, counted anew, and what the solver makes of them."""

from __future__ import annotations

from collections import Counter, defaultdict
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from random import Random
from typing import TYPE_CHECKING

from hypothesis import HealthCheck, given, settings

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.planning.checker import check_plan
from studio_planner.planning.exact.foreseen import Foreseen, Wish
from studio_planner.planning.exact.improving import Improver
from studio_planner.planning.exact.near import near
from studio_planner.planning.exact.rough_plan import RoughPlans
from studio_planner.planning.exact.search import PlanSearch
from studio_planner.planning.exact.ways import Blocks, Ways
from studio_planner.planning.exact.wishes import Wishes
from studio_planner.planning.exact.working_days import WorkingDays, working_days
from studio_planner.planning.quick import quick_plan, quick_start
from studio_planner.planning.solver import Search
from studio_planner.planning.spans import GRID
from studio_planner.planning.worth import hours_late
from tests.planning.benchmark_studios import START, benchmark_studio, late_studio
from tests.planning.happenings import as_planned_for
from tests.planning.studios import Situation, studios

if TYPE_CHECKING:
    import pytest

    from studio_planner.planning.placing.placements import Placement
    from studio_planner.planning.problem import Task
    from studio_planner.planning.quick import QuickStart

_DAY, _HOUR = 86_400, 3600
_LATE = late_studio(4)

_LONG, _WORK = 60.0, 0.6


def _drawn() -> Random:
    return Random(0)  # noqa: S311 - to be repeated, not to be secret


def _begun() -> QuickStart:
    return quick_start(_LATE, START, before=None)


def test_a_day_ends_when_the_night_does_and_has_the_hands_of_all() -> None:
    four = 4 * _HOUR
    evening, late = (
        (four + 15 * _HOUR, four + 22 * _HOUR),
        (four + 20 * _HOUR, four + 26 * _HOUR),
    )
    days = WorkingDays(four, [evening, late])
    assert days.of(four) == days.of(four + _DAY - 1) == 0
    assert days.numbers(10 * _DAY) == [0, 1]
    assert dict(days.hands) == {0: 11 * _HOUR, 1: 2 * _HOUR}
    assert days.starts(0) == (evening[0], four + _DAY - GRID)
    assert days.numbers(four + _HOUR) == [0]
    assert [days.quarter(four + hour * _HOUR) for hour in (0, 5, 6, 24)] == [0, 0, 1, 4]


def test_days_begin_at_four_by_the_clock_of_the_studio() -> None:
    start = _begun()
    days = working_days(start.rounds.studio, start.rounds.placer().means)
    first = min(days.numbers(int(START.timestamp()) + 7 * _DAY))
    begins = days.starts(first)[0]
    at = datetime.fromtimestamp(begins, UTC).astimezone(start.rounds.studio.time_zone)
    since = begins - next(
        s for s in range(begins, begins - _DAY, -GRID) if days.of(s - 1) < first
    )
    assert since == (at.hour - 4) * _HOUR + at.minute * 60


def test_ways_begin_and_end_in_hours_with_hands_and_no_two_on_the_same_days() -> None:
    seen: Counter[str] = Counter()

    @settings(suppress_health_check=list(HealthCheck))
    @given(studios())
    def judge(situation: Situation) -> None:
        try:
            start = quick_start(situation.studio, situation.start, before=None)
        except NoPlanPossible:
            return
        placer = start.rounds.placer()
        days = working_days(situation.studio, placer.means)
        ways = Ways(placer, days)
        for one in start.found.placed:
            chain, until = one.chain, round(one.score[4])
            found = ways.of(chain, until)
            new = range(chain.first, len(chain.tasks))
            taken = Counter()  # type: ignore[var-annotated]
            for way in found:
                placed = way.placed
                taken[placed.laid.grounds, tuple(days.of(at) for at in placed.starts)] += 1
                assert all(placed.people[index] for index in new)
                assert all(joint.sand is None for joint in placed.laid.joints)
                assert days.quarter(placed.starts[-1]) in way.stands
            assert all(count == 1 for count in taken.values())
            seen["found"] += bool(found)

    judge()
    assert seen["found"]


def test_what_is_begun_goes_on_from_where_it_lies() -> None:
    now, then = as_planned_for(timedelta(days=5), _LATE, quick_plan(_LATE, START))
    start = quick_start(then, now, before=None)
    placer = start.rounds.placer()
    ways = Ways(placer, working_days(then, placer.means))
    left = set()
    for one in start.found.placed:
        chain = one.chain
        if not chain.first or any(one.score[1:3]):
            continue
        found = ways.of(chain, round(one.score[4]))
        assert found
        for way in found:
            assert way.placed.starts[: chain.first] == one.starts[: chain.first]
            new = chain.first < len(chain.tasks)
            assert not new or 0 in way.stands, "it stands somewhere already"
        left.add(min(2, len(chain.tasks) - chain.first))
    assert left == {0, 1, 2}


def _blocks() -> Blocks:
    def own(task: Task) -> int:
        return task.block - 60 * task.coat.setup_minutes

    return Blocks(
        lambda task: task.block + own(task),
        lambda task: own(task) + round(0.6 * 60 * task.coat.setup_minutes),
    )


def _rough(start: QuickStart) -> tuple[RoughPlans, WorkingDays]:
    placer = start.rounds.placer()
    days = working_days(start.rounds.studio, placer.means)
    return RoughPlans(placer, days, start.found.placed, _blocks()), days


def _hands(placed: list[Placement], days: WorkingDays) -> dict[int, int]:
    """The seconds of hands that placements take in each day."""
    found: dict[int, int] = defaultdict(int)
    paid = _blocks().paid
    for one in placed:
        for task, start in zip(one.chain.tasks, one.starts, strict=True):
            found[days.of(start)] += paid(task) + task.lead
        for pack in one.packed:
            found[days.of(pack.start)] += pack.end - pack.start
    return found


def test_no_day_has_more_work_than_hands_and_no_quarter_more_pieces_than_spots() -> None:
    start = _begun()
    rough, days = _rough(start)
    share = 0.9
    placed = rough.placed(share, 0)
    assert placed is not None
    assert [one.chain for one in placed] == [one.chain for one in start.found.placed]
    for day, seconds in _hands(placed, days).items():
        assert seconds <= share * days.hands[day] + 60 * len(placed)
    placer = start.rounds.placer()
    stays = [
        (one.starts[0], placer.finisher.left(one.laid, len(one.starts) - 1)) for one in placed
    ]
    pieces = [len(one.chain.pieces) for one in placed]
    spots = len(start.rounds.studio.spots)
    for at, _ in stays:
        there = zip(stays, pieces, strict=True)
        assert sum(count for (begin, end), count in there if begin <= at < end) <= spots
    late = sum(hours_late(placed).values())
    assert late < start.found.worth.late


def test_there_is_no_rough_plan_without_hands_and_none_of_nothing() -> None:
    start = _begun()
    assert _rough(start)[0].placed(0.0, 0) is None
    placer = start.rounds.placer()
    none = RoughPlans(placer, working_days(start.rounds.studio, placer.means), [], _blocks())
    assert none.placed(0.85, 0) is None


def _wish(search: PlanSearch) -> Wish:
    wish = search._foreseen().by_days(search.best, _drawn())
    assert wish is not None
    assert wish.days is not None
    assert wish.plan.worth.late < search.best.standing.worth.late
    return wish


def test_in_the_days_of_a_rough_plan_every_rule_is_kept_and_less_comes_late() -> None:
    search = PlanSearch(_begun())
    standing = search.best.standing
    wish = _wish(search)
    assert wish.days is not None
    tried = near(search.best.parts, standing, wish, 0)
    assert tried is not None
    answer = tried.draft.model.solve(Search(_LONG, 10 * _WORK, light=True), tried.enough)
    assert Improver(search.best, 0)._put_back(tried, answer)
    after = search.best.standing
    assert after.worth.late < standing.worth.late
    for wanted, lane in zip(wish.plan.lanes, after.lanes, strict=True):
        assert wanted.placed is not None
        assert lane.placed is not None
        of = wish.days.of
        assert [of(at) for at in wanted.placed.starts] == [of(at) for at in lane.placed.starts]
    assert not check_plan(_LATE, search.plan()).broken


def test_a_rough_plan_that_promises_no_less_or_is_not_found_is_not_wished_for(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    search = PlanSearch(_begun())
    foreseen, best = search._foreseen(), search.best
    late = best.standing
    best.standing = replace(late, worth=late.worth._replace(late=0.0))
    assert foreseen.by_days(best, _drawn()) is None
    best.standing = late
    monkeypatch.setattr(RoughPlans, "placed", lambda *_: None)
    assert foreseen.by_days(best, _drawn()) is None


def test_rough_plans_are_of_many_coats_without_a_kept_plan() -> None:
    small = PlanSearch(quick_start(benchmark_studio("S", 5), START))
    assert not small._foreseen().by_days_first
    start, search = _begun(), PlanSearch(_begun())
    assert search._foreseen().by_days_first
    kept = start.written()
    best = search.best
    again = Foreseen(start.rounds, best.parts, best.standing, 1, kept)
    assert not again.by_days_first


def test_the_next_rough_plan_comes_when_it_is_known_what_came_of_the_last(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    search = PlanSearch(_begun())
    best, foreseen = search.best, search._foreseen()
    wish = Wish(best.standing, days=WorkingDays(0, []))
    asked = [wish, wish, None, wish]
    monkeypatch.setattr(Foreseen, "by_days_first", property(lambda _: bool(asked)))
    monkeypatch.setattr(Foreseen, "by_days", lambda *_: asked.pop(0))
    monkeypatch.setattr(Foreseen, "less_late", lambda *_: None)
    wishes = Wishes(foreseen, _drawn(), again=False, beside=False)
    assert wishes.drawn(best) is wish
    assert wishes.drawn(best) is None, "what comes of the first is not known yet"
    wishes.learn(wish, gained=False, missed=True)
    assert wishes.drawn(best) is wish
    wishes.learn(wish, gained=True, missed=False)
    assert wishes.drawn(best) is None, "there was none for these hands"
    assert wishes.drawn(best) is wish


def test_of_a_large_studio_two_rough_plans_are_tried_before_anything_else(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    search = PlanSearch(_begun())
    best, foreseen = search.best, search._foreseen()
    other = Wish(best.standing)
    days = WorkingDays(0, [])
    asked = [Wish(best.standing, days=days) for _ in range(4)]
    monkeypatch.setattr(Foreseen, "by_days_first", property(lambda _: bool(asked)))
    monkeypatch.setattr(Foreseen, "by_days", lambda *_: asked.pop())
    monkeypatch.setattr(Foreseen, "leave_rough_plans", lambda _: asked.clear())
    monkeypatch.setattr(Foreseen, "less_late", lambda *_: other)
    wishes = Wishes(foreseen, _drawn(), again=False, beside=True)
    first, second = wishes.drawn(best), wishes.drawn(best)
    assert first is not None
    assert second is not None
    assert first.days is second.days is days
    assert wishes.drawn(best) is None, "what comes of them is not known yet"
    wishes.learn(first, gained=False, missed=True)
    third = wishes.drawn(best)
    assert third is not None
    assert third.days is days, "nothing came of the first"
    wishes.learn(second, gained=True, missed=False)
    assert wishes.drawn(best) is None, "the third is still tried"
    wishes.learn(third, gained=False, missed=False)
    assert not asked, "one of them gained"
    assert wishes.drawn(best) is other


def test_a_wish_without_room_is_learned_from(monkeypatch: pytest.MonkeyPatch) -> None:
    search = PlanSearch(_begun())
    foreseen = search._foreseen()
    learned: list[Wish] = []
    monkeypatch.setattr(Wishes, "learn", lambda _, wish, **__: learned.append(wish))
    monkeypatch.setattr("studio_planner.planning.exact.improving.near", lambda *_: None)
    wish = Wish(search.best.standing)
    assert Improver(search.best, 0, foreseen)._opened(wish) is None
    assert learned == [wish]
