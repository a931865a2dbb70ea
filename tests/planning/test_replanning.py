"""A kept plan made anew: what holds stays, what must move moves, and nothing else."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from datetime import date, time, timedelta
from typing import TYPE_CHECKING

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.craft.hands import WorkHours
from studio_planner.craft.local_time import instant
from studio_planner.craft.plans import Goal
from studio_planner.planning.checker import check_plan
from studio_planner.planning.quick import quick_plan
from studio_planner.planning.worth import MOVED_SECONDS
from studio_planner.services.sample import planned_sample
from tests.planning.benchmark_studios import START, make_studio
from tests.planning.happenings import HAPPENINGS, late_pour, nothing, with_pours
from tests.planning.studios import Situation, studios

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio

SEEDS = (0, 1, 2, 5)


def _value(plan: Plan, goal: Goal) -> float:
    return next(row.value for row in plan.goals if row.goal is goal)


def _where(plan: Plan) -> dict[tuple[str, str], tuple[datetime, str, str]]:
    return {(c.piece, c.coat): (c.start, c.spot, c.person) for c in plan.coats if not c.poured}


def _moved(before: Plan, after: Plan) -> list[PlannedCoat]:
    """Coats of the later plan that start at another time than in the earlier one."""
    old = _where(before)
    most = timedelta(seconds=MOVED_SECONDS)
    return [
        coat
        for coat in after.coats
        if not coat.poured
        and (coat.piece, coat.coat) in old
        and abs(coat.start - old[coat.piece, coat.coat][0]) > most
    ]


def _kept(seed: int, pieces: int = 8, coats: int = 4, weeks: int = 1) -> Studio:
    studio = make_studio(seed, pieces, coats, weeks)
    return replace(studio, plan=quick_plan(studio, START))


def _plan(studio: Studio) -> Plan:
    assert studio.plan is not None
    return studio.plan


@pytest.mark.parametrize("seed", SEEDS)
def test_where_nothing_changed_the_plan_is_the_same(seed: int) -> None:
    studio = _kept(seed, 12, 4, 2)
    again = quick_plan(studio, START)
    assert replace(again, goals=()) == replace(_plan(studio), goals=())
    assert _value(again, Goal.MOVED) == 0


@pytest.mark.parametrize("seed", SEEDS)
def test_seconds_later_nothing_has_moved(seed: int) -> None:
    studio = _kept(seed)
    again = quick_plan(studio, START + timedelta(seconds=20))
    assert not _moved(_plan(studio), again)
    assert not check_plan(studio, again).broken


@pytest.mark.parametrize("seed", SEEDS)
def test_what_went_as_planned_moves_nothing_that_follows(seed: int) -> None:
    studio = _in_time(seed)
    now, then = nothing(studio, _plan(studio))
    again = quick_plan(then, now)
    before = _where(_plan(studio))
    assert _where(again) == {key: before[key] for key in _where(again)}


@pytest.mark.parametrize("seed", range(8))
def test_what_went_as_planned_moves_only_where_more_is_gained(seed: int) -> None:
    studio = _kept(seed)
    now, then = nothing(studio, _plan(studio))
    again = quick_plan(then, now)
    higher = (Goal.LEFT_OUT, Goal.LATENESS, Goal.SCUFFED, Goal.TESTED)
    gained = [_value(again, goal) for goal in higher] < [
        _value(_plan(studio), goal) for goal in higher
    ]
    assert gained or not _moved(_plan(studio), again)


@pytest.mark.parametrize("seed", range(6))
def test_a_late_pour_moves_its_piece_and_what_must_give_way_alone(seed: int) -> None:
    studio = _roomy(seed)
    now, then = late_pour(studio, _plan(studio))
    after = quick_plan(then, now)
    assert not check_plan(then, after).broken
    slipped = {pour.piece for pour in then.poured if pour.end == now}
    for coat in _moved(_plan(studio), after):
        old = _where(_plan(studio))[coat.piece, coat.coat][0]
        # Its own piece was late, its time was over, or another pour or its own window needs it.
        assert coat.piece in slipped or old < now or _gives_way(studio, after, coat)
    assert len(_moved(_plan(studio), after)) * 4 <= len(after.coats)


def _gives_way(studio: Studio, after: Plan, coat: PlannedCoat) -> bool:
    """Whether a coat of a piece moved before it, or another one now is where it was."""
    plan = _plan(studio)
    row = next(one for one in plan.coats if (one.piece, one.coat) == (coat.piece, coat.coat))
    moved = _moved(plan, after)
    before = any(one.piece == coat.piece and one.start < coat.start for one in moved)
    taken = any(
        one.start < row.end and row.start < one.end and one.piece != coat.piece
        for one in after.coats
    )
    return before or taken


def _roomy(seed: int) -> Studio:
    """A studio whose day is long and whose pours are short, with its plan kept."""
    studio = _in_time(seed)
    hours = WorkHours(rule="FREQ=DAILY", start=time(8), end=time(22))
    pieces = tuple(
        replace(
            piece,
            stack=tuple(replace(c, setup_minutes=10, piece_minutes=5) for c in piece.stack),
        )
        for piece in studio.pieces
    )
    people = (replace(studio.people[0], work=(hours,)),)
    studio = replace(studio, plan=None, pieces=pieces, people=people)
    return replace(studio, plan=quick_plan(studio, START))


def test_every_plan_made_anew_keeps_every_rule_and_what_is_poured() -> None:
    seen: Counter[str] = Counter()

    @settings(suppress_health_check=list(HealthCheck))
    @given(studios(), st.sampled_from(sorted(HAPPENINGS)))
    def judge(situation: Situation, name: str) -> None:
        studio = situation.studio
        if name == "new order" and not studio.orders:
            return
        try:
            before = quick_plan(studio, situation.start)
            now, then = HAPPENINGS[name](studio, before)
            after = quick_plan(then, now)
        except NoPlanPossible:
            seen["none"] += 1
            return
        seen["planned"] += 1
        report = check_plan(then, after)
        assert not report.broken, "\n".join(finding.words for finding in report.broken)
        poured = {(c.piece, c.coat, c.start, c.end, c.spot) for c in after.coats if c.poured}
        assert poured == {(p.piece, p.coat, p.start, p.end, p.spot) for p in then.poured}

    judge()
    assert seen["planned"] > seen["none"], seen


@pytest.mark.parametrize("seed", SEEDS)
def test_more_hands_alone_move_no_pour_of_a_plan_that_is_in_time(seed: int) -> None:
    studio = _in_time(seed)
    ada = studio.people[0]
    helped = replace(studio, people=(ada, replace(ada, key="ben", name="Ben")))
    sooner = quick_plan(helped, START, before=None)
    assert _value(sooner, Goal.ENDS) < _value(_plan(studio), Goal.ENDS)
    again = quick_plan(helped, START)
    assert _where(again) == _where(_plan(studio))


def _in_time(seed: int) -> Studio:
    """A studio whose orders are all promised late enough, with its plan kept."""
    studio = make_studio(seed, 8, 4, 1)
    orders = tuple(
        replace(order, promised=order.promised + timedelta(days=60)) for order in studio.orders
    )
    studio = replace(studio, orders=orders)
    return replace(studio, plan=quick_plan(studio, START))


def test_pours_move_where_that_brings_an_order_in_time() -> None:
    studio = _in_time(1)
    last = max(_plan(studio).outcomes, key=lambda row: row.leaves or START)
    hurried = replace(
        studio,
        orders=tuple(
            replace(order, promised=START.date() + timedelta(days=16))
            if order.key == last.order
            else order
            for order in studio.orders
        ),
    )
    held = replace(
        _plan(studio), outcomes=tuple(row for row in _plan(studio).outcomes if row != last)
    )
    after = quick_plan(replace(hurried, plan=held), START)
    alone = quick_plan(hurried, START, before=None, first=(last.order,))
    assert _value(after, Goal.LATENESS) <= _value(alone, Goal.LATENESS)


def test_a_plan_none_of_which_can_be_kept_is_made_anew() -> None:
    studio = _kept(2)
    places = tuple(
        replace(
            place,
            spots=tuple(replace(spot, key=f"new {spot.key}") for spot in place.spots),
        )
        for place in studio.places
    )
    moved_in = replace(studio, places=places)
    after = quick_plan(moved_in, START)
    assert len(after.coats) == len(_plan(studio).coats)
    assert not check_plan(moved_in, after).broken


def test_a_plan_of_other_pieces_does_not_count() -> None:
    studio = _kept(2)
    other = make_studio(3, 8, 4, 1)
    renamed = replace(
        other,
        pieces=tuple(replace(piece, key=f"other {piece.key}") for piece in other.pieces),
        orders=tuple(
            replace(order, pieces=tuple(f"other {key}" for key in order.pieces))
            for order in other.orders
        ),
    )
    fresh = quick_plan(renamed, START)
    assert quick_plan(replace(renamed, plan=studio.plan), START) == fresh


def test_a_plan_all_of_which_lies_behind_does_not_count() -> None:
    studio = _kept(2)
    now = START + timedelta(days=90)
    after = quick_plan(studio, now)
    assert after == quick_plan(replace(studio, plan=None), now)
    assert _value(after, Goal.MOVED) == 0


def test_without_a_plan_before_nothing_counts_as_moved() -> None:
    studio = _kept(0)
    assert quick_plan(studio, START, before=None) == _plan(studio)


def test_lost_hours_leave_most_of_the_plan_where_it_was() -> None:
    studio = _in_time(5)
    now, then = HAPPENINGS["lost hours"](studio, _plan(studio))
    after = quick_plan(then, now)
    moved = _moved(_plan(studio), after)
    assert moved
    assert len(moved) * 2 < sum(not coat.poured for coat in after.coats)
    assert not check_plan(then, after).broken


def _twins() -> Studio:
    """Two twins of one order, whose coats are poured from one mix; the plan is kept."""
    studio = make_studio(3, 8, 4, 1)
    first = next(piece for piece in studio.pieces if piece.count == 1)
    twins = (first, replace(first, key="twin", name="Twin"))
    order = replace(studio.orders[0], pieces=tuple(piece.key for piece in twins))
    studio = replace(studio, pieces=twins, orders=(order,))
    return replace(studio, plan=quick_plan(studio, START))


def test_a_shared_mix_stays_whole_after_the_first_coat() -> None:
    studio = _twins()
    plan = _plan(studio)
    first = [coat for coat in plan.coats if coat.mix == plan.coats[0].mix]
    assert len(first) == 2
    then = with_pours(studio, first)
    after = quick_plan(then, first[0].end)
    assert _where(after) == {
        key: value for key, value in _where(plan).items() if key[1] != first[0].coat
    }
    mixes = Counter(coat.mix for coat in after.coats if not coat.poured)
    assert set(mixes.values()) == {2}
    assert not check_plan(then, after).broken


def test_a_shared_mix_falls_apart_when_one_of_its_pieces_is_late() -> None:
    studio = _twins()
    plan = _plan(studio)
    one, other = (coat for coat in plan.coats if coat.mix == plan.coats[0].mix)
    late = timedelta(hours=30)
    delayed = replace(other, start=other.start + late, end=other.end + late)
    then = with_pours(studio, [one, delayed])
    after = quick_plan(then, delayed.end)
    assert not check_plan(then, after).broken
    assert len(after.coats) == len(plan.coats)


@pytest.mark.parametrize("hour", [14, 17, 20])
def test_leaf_goes_on_its_size_while_the_coat_below_still_cures(hour: int) -> None:
    # The size is put on the slow coat, which holds the spot only until then.
    studio = planned_sample(date(2026, 12, 7))
    plan = _plan(studio)
    now = instant(studio.time_zone, date(2026, 12, 8), time(hour, 50))
    begun = with_pours(studio, [coat for coat in plan.coats if coat.end <= now])
    again = quick_plan(begun, now)
    assert not again.unplanned
    assert not check_plan(begun, again).broken
