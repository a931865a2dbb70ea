"""The first thing that turns an order late is the reason; coats and orders are named."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from datetime import time, timedelta
from typing import TYPE_CHECKING

import pytest
from hypothesis import HealthCheck, given, settings

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.craft.hands import Absence, WorkHours
from studio_planner.craft.orders import Gate, Order
from studio_planner.craft.pieces import CoatKind
from studio_planner.planning.checker import check_plan
from studio_planner.planning.clocks.clockwork import Clockworks
from studio_planner.planning.late.booked import Takes
from studio_planner.planning.late.fitting import Fitter, merged
from studio_planner.planning.late.in_the_way import without_whom
from studio_planner.planning.late.ladder import Ladder, Rung
from studio_planner.planning.late.promises import explain
from studio_planner.planning.late.trials import is_late
from studio_planner.planning.quick import quick_plan
from studio_planner.planning.saying import listed
from studio_planner.science.stages import Stage
from tests.planning.impossible_studios import (
    RESIN_HOURS,
    START,
    board,
    coat,
    person,
    resin,
    room,
    small_studio,
)
from tests.planning.studios import Situation, studios

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.plans import Outcome, Plan
    from studio_planner.craft.studio import Studio


def promised(days: int, *pieces: str, number: int = 7, gate: Gate = Gate.PACK) -> Order:
    """An order to be shipped so many days after the start."""
    return Order(
        key=f"o{number}",
        name=f"Order {number}",
        pieces=pieces or ("board",),
        promised=START.date() + timedelta(days=days),
        gate=gate,
    )


def boards(count: int) -> tuple[Piece, ...]:
    """Boards with two coats each, called Board 1 and so on."""
    return tuple(
        board(key=f"b{number}", name=f"Board {number}") for number in range(1, count + 1)
    )


def one_each(pieces: tuple[Piece, ...], days: int) -> tuple[Order, ...]:
    """One order for each piece, all promised for the same day."""
    return tuple(
        promised(days, piece.key, number=number) for number, piece in enumerate(pieces, start=1)
    )


def told(studio: Studio, plan: Plan | None = None) -> list[Outcome]:
    """The late orders of a studio with their reasons."""
    made = explain(studio, plan or quick_plan(studio, START))
    return [outcome for outcome in made.outcomes if is_late(outcome)]


def reason(studio: Studio) -> str:
    """The reason of the only late order."""
    (outcome,) = told(studio)
    return str(outcome.reason)


def test_cure_time_names_the_longest_wait() -> None:
    said = reason(small_studio(orders=(promised(1),)))
    assert said.startswith("Cure time: its coats cannot cure by then, even with hands day and")
    assert "from the flood on Board 3 until it is packed" in said


def test_a_room_that_is_too_cold_says_what_would_be_warm_enough() -> None:
    cold = room((0, 15.0, 45.0))
    said = reason(small_studio(place=cold, orders=(promised(3),)))
    assert said.startswith("Too cold: ")
    assert "never below 22 °C they would be in time" in said


def test_a_room_that_is_cold_for_days_names_the_coat_that_waits() -> None:
    warm_at_weekends = room((0, 15.0, 45.0))
    points = tuple(
        replace(warm_at_weekends.pattern[0], day=day, celsius=15.0 if day < 4 else 21.0)
        for day in range(7)
    )
    place = replace(warm_at_weekends, pattern=points)
    studio = small_studio(product=resin(minimum_celsius=19.0), place=place)
    said = reason(replace(studio, orders=(promised(4),)))
    assert "The seal on Board 3 has to wait from Mon 2 Mar 08:00" in said
    assert "limits of Clear" in said


def test_a_window_that_closes_in_the_night_is_named_with_its_hours() -> None:
    narrow = resin(RESIN_HOURS | {Stage.RECOAT_CLOSES: 16.0})
    studio = small_studio(product=narrow, hands=person(18, 20), orders=(promised(4),))
    said = reason(studio)
    assert said.startswith("Night closes a window: poured as soon as can be, the window of")
    assert "the seal on Board 3 opens Tue 3 Mar 00:21" in said
    assert "when nobody can work" in said
    assert "the flood on Board 3 then waits until it can be washed and sanded" in said


def test_a_window_that_closes_by_day_is_not_laid_to_the_night() -> None:
    narrow = resin(RESIN_HOURS | {Stage.RECOAT_CLOSES: 12.0})
    studio = small_studio(product=narrow, hands=person(6, 8), orders=(promised(4),))
    assert reason(studio).startswith("The working hours miss a window: ")


def test_a_window_that_closes_while_somebody_sleeps_by_day_is_not_laid_to_the_night() -> None:
    narrow = resin(RESIN_HOURS | {Stage.RECOAT_CLOSES: 17.0})
    by_night = person(20, 22, wakes=time(16), sleeps=time(8))
    said = reason(small_studio(product=narrow, hands=by_night, orders=(promised(4),)))
    assert said.startswith("The working hours miss a window: ")


def test_hours_too_far_apart_name_the_coat_that_waits_for_them() -> None:
    rarely = WorkHours(
        rule="FREQ=WEEKLY;BYDAY=MO,TH",
        start=person().work[0].start,
        end=START.time().replace(hour=12),
    )
    studio = small_studio(
        product=resin(RESIN_HOURS | {Stage.RECOAT_CLOSES: 100.0}),
        hands=person(work=(rarely,)),
        orders=(promised(4),),
    )
    said = reason(studio)
    assert said.startswith("No hands: even with nothing else to do")
    assert "could start" in said
    assert "but nobody can work on it before" in said


def test_work_that_is_more_than_the_hours_there_are_is_counted() -> None:
    long = tuple(
        coat(key, kind, setup_minutes=100, piece_minutes=75)
        for key, kind in (("seal", CoatKind.SEAL), ("flood", CoatKind.FLOOD))
    )
    pieces = tuple(replace(piece, stack=long) for piece in boards(4))
    studio = small_studio(hands=person(8, 11))
    studio = replace(
        studio, pieces=pieces, orders=(promised(7, *(piece.key for piece in pieces)),)
    )
    said = reason(studio)
    assert "its own pours and packing take" in said
    assert "and until then there are 24 h 00 min of working hours." in said


def test_somebody_who_is_away_until_a_date_is_named_with_the_end_of_it() -> None:
    ada = person(
        absences=(
            Absence(start=START - timedelta(days=1), end=START + timedelta(days=9)),
            Absence(start=START + timedelta(days=20), end=START + timedelta(days=30)),
        )
    )
    said = reason(small_studio(hands=ada, orders=(promised(5),)))
    assert "and until then nobody works. Ada is away from " in said
    assert " to Wed 11 Mar 08:00. None of " in said


def test_orders_that_stand_on_the_shelf_are_named() -> None:
    pieces = boards(3)
    studio = replace(small_studio(), pieces=pieces, orders=one_each(pieces, 5))
    late = told(studio)
    assert late
    names = {outcome.order: f"Order {outcome.order[1:]}" for outcome in late}
    for outcome in late:
        assert str(outcome.reason).startswith("No spot: Order ")
        assert "on the shelf when its coats have to be poured" in str(outcome.reason)
        assert names[outcome.order] not in str(outcome.reason)


@pytest.mark.parametrize(("count", "days"), [(3, 5), (4, 7), (4, 9)])
def test_who_stands_on_the_shelf_is_why_an_order_is_late(count: int, days: int) -> None:
    pieces = boards(count)
    studio = replace(small_studio(), pieces=pieces, orders=one_each(pieces, days))
    plan = quick_plan(studio, START)
    ladder = Ladder(studio, plan, Clockworks())
    for outcome in told(studio, plan):
        order = ladder.order(outcome.order)
        names = without_whom(ladder, order)
        assert names
        assert str(outcome.reason).startswith(f"No spot: {listed(names)} stand")
        away = {one.pieces[0] for one in studio.orders if one.name in names}
        fitter = Fitter(studio, plan, Clockworks())
        assert fitter.fit(order, Takes.SPOTS).late > 0
        assert fitter.fit(order, Takes.SPOTS, away).late == 0


def test_pieces_of_one_order_that_wait_for_each_other_are_not_laid_to_others() -> None:
    pieces = boards(3)
    order = promised(5, *(piece.key for piece in pieces))
    said = reason(replace(small_studio(), pieces=pieces, orders=(order,)))
    assert said.startswith("No spot: its own pieces have to wait for each other, for only 1 ")


def test_orders_that_take_the_hands_are_named_with_their_hours() -> None:
    pieces = boards(6)
    studio = small_studio(hands=person(8, 9))
    place = studio.places[0]
    spots = tuple(replace(place.spots[0], key=f"S{number}") for number in range(6))
    studio = replace(
        studio,
        places=(replace(place, spots=spots),),
        pieces=pieces,
        orders=one_each(pieces, 9),
    )
    late = told(studio)
    assert late
    for outcome in late:
        assert str(outcome.reason).startswith("No hands: between ")
        assert "the free hours go to Order " in str(outcome.reason)
        assert " min)" in str(outcome.reason)


def test_an_order_that_fits_between_the_others_is_told_so_and_nothing_else_moves() -> None:
    pieces = boards(2)
    first, second = one_each(pieces, 9)
    studio = replace(small_studio(), pieces=pieces, orders=(first, second))
    plan = quick_plan(studio, START)
    assert not any(is_late(outcome) for outcome in plan.outcomes)
    late = quick_plan(studio, START + timedelta(days=10))
    shifted = merged(plan, late, second)
    assert check_plan(studio, shifted).clean
    (outcome,) = told(studio, shifted)
    assert outcome.order == second.key
    assert str(outcome.reason).startswith("Other orders got their places first. It does fit")
    change = outcome.changes[0]
    assert str(change.words) == (
        "plan again: pour it where there is room between the others; nothing else moves"
    )
    assert change.keeps_promise


@pytest.mark.parametrize("days", [1, 3, 4, 6])
def test_the_rungs_are_climbed_in_their_order(days: int) -> None:
    pieces = boards(4)
    studio = replace(
        small_studio(hands=person(18, 20)), pieces=pieces, orders=one_each(pieces, days)
    )
    plan = quick_plan(studio, START)
    ladder = Ladder(studio, plan, Clockworks())
    for order in studio.orders:
        climb = ladder.climb(order)
        assert climb.fit.late > 0 or climb.rung is Rung.NOTHING
        assert climb.before is None or climb.before.late == 0
        assert (climb.before is None) == (climb.rung is Rung.CURE)


def test_an_order_placed_anew_among_the_rest_of_a_plan_breaks_no_rule() -> None:
    seen: Counter[str] = Counter()

    @settings(
        suppress_health_check=list(HealthCheck),
        max_examples=settings.get_profile(settings.get_current_profile_name()).max_examples
        // 2,
    )
    @given(studios(most_pieces=5))
    def judge(situation: Situation) -> None:
        try:
            plan = quick_plan(situation.studio, situation.start)
        except NoPlanPossible:
            return
        fitter = Fitter(situation.studio, plan, Clockworks())
        for order in situation.studio.orders:
            moved = fitter.with_order_moved(order)
            seen["placed" if moved is not None else "not"] += 1
            if moved is not None:
                report = check_plan(situation.studio, moved)
                assert not report.broken, "\n".join(one.words for one in report.broken)

    judge()
    assert seen["placed"], seen
