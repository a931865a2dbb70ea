"""Why an order is late, and whether the changes that are offered really keep its promise."""

from __future__ import annotations

import math
import re
from collections import Counter
from dataclasses import replace
from datetime import time, timedelta
from typing import TYPE_CHECKING

import pytest
from hypothesis import HealthCheck, given, settings

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.craft.hands import Absence, WorkHours
from studio_planner.craft.orders import Gate, Promise
from studio_planner.craft.places import PatternPoint, PlaceKind
from studio_planner.craft.products import SheetPoint
from studio_planner.craft.saying import Saying
from studio_planner.planning.checker import check_plan
from studio_planner.planning.clocks.clockwork import Clockworks
from studio_planner.planning.late import what_if
from studio_planner.planning.late.bettering import bettered
from studio_planner.planning.late.promises import explain
from studio_planner.planning.late.trials import Trials, is_late
from studio_planner.planning.late.what_if import Tried
from studio_planner.planning.late.written_worth import plan_worth
from studio_planner.planning.quick import quick_plan
from studio_planner.science.air import dew_point
from studio_planner.science.stages import Stage
from tests.planning.benchmark_studios import START, hurried, make_studio
from tests.planning.impossible_studios import (
    RESIN_HOURS,
    person,
    resin,
    room,
    small_studio,
)
from tests.planning.impossible_studios import START as MONDAY
from tests.planning.studios import Situation, studios

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.plans import Outcome, Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.late.trial import Trial


def one_order(days: int, *pieces: int) -> Studio:
    """A studio with one order, promised so many days after the start."""
    studio = make_studio(4, 8, 4, 1)
    chosen = tuple(studio.pieces[number] for number in pieces or (0,))
    order = replace(
        studio.orders[0],
        pieces=tuple(piece.key for piece in chosen),
        promised=(START + timedelta(days=days)).date(),
    )
    return replace(studio, pieces=chosen, orders=(order,))


def explained(studio: Studio) -> Outcome:
    return explain(studio, quick_plan(studio, START)).outcomes[0]


def test_an_order_in_time_needs_no_reason() -> None:
    outcome = explained(one_order(40))
    assert outcome.late_hours == 0
    assert str(outcome.reason) == ""
    assert outcome.changes == ()


def test_a_date_that_the_cure_cannot_meet_says_so_with_the_earliest_date() -> None:
    outcome = explained(one_order(1))
    assert str(outcome.reason).startswith(("Cure time", "Too cold"))
    assert not any(change.keeps_promise for change in outcome.changes)
    assert re.search(
        r"Even with nothing else to pour, hands day and night and a warm room it leaves "
        r"\w+ \d+ Mar \d+:\d+ at the soonest\.$",
        str(outcome.reason),
    )


def test_too_few_hands_are_named_and_the_offered_hours_do_keep_the_promise() -> None:
    studio = one_order(9, 0, 1, 2)
    rarely = WorkHours(rule="FREQ=WEEKLY;BYDAY=MO,WE,FR", start=time(12), end=time(20))
    slow = replace(studio, people=(replace(studio.people[0], work=(rarely,)),))
    outcome = explained(slow)
    assert str(outcome.reason).startswith(("No hands", "Night closes"))
    kept = [change for change in outcome.changes if change.keeps_promise]
    assert kept
    assert all(change.leaves is not None and change.leaves <= outcome.due for change in kept)


def trials_of(studio: Studio, plan: Plan) -> list[Trial]:
    """All changes that are tried for a plan."""
    tried = Trials(studio, plan, Clockworks())
    return [*tried.all(), *tried.joint()]


def leaving(plan: Plan, order: str) -> datetime | None:
    return next(outcome.leaves for outcome in plan.outcomes if outcome.order == order)


def judge_trials(studio: Studio, plan: Plan) -> int:
    """Check every tried change of a plan, and what its late orders are told of them."""
    trials = trials_of(studio, plan)
    for trial in trials:
        if trial.plan is not None:
            report = check_plan(trial.studio, trial.plan)
            words = "\n".join(finding.words for finding in report.broken)
            assert not report.broken, f"{trial.name}\n{words}"
    checked = 0
    for outcome in explain(studio, plan).outcomes:
        assert bool(outcome.reason) == is_late(outcome)
        if outcome.changes:
            agree_on_changes(outcome)
        for change in outcome.changes:
            offered = [
                one
                for one in trials
                if one.words(outcome.order) == change.words
                and one.order in {None, outcome.order}
            ]
            for trial in offered:
                assert trial.plan is not None
                assert leaving(trial.plan, outcome.order) == change.leaves
                checked += 1
    return checked


def agree_on_changes(outcome: Outcome) -> None:
    """What is said of the changes that were tried is what is listed."""
    said = str(outcome.reason)
    (count,) = re.findall(r"(\d+) changes? (?:was|were|that were) tried", said)
    assert int(count) == len(outcome.changes)
    kept = [change.keeps_promise for change in outcome.changes]
    assert kept == sorted(kept, reverse=True)
    assert ("None of the " in said) == (True not in kept)
    if True in kept:
        assert "nothing else to pour" not in said


@pytest.mark.parametrize(("seed", "sooner"), [(0, 0), (2, 3)])
def test_each_change_offered_gives_its_date_when_planned_and_breaks_no_rule(
    seed: int, sooner: int
) -> None:
    studio = hurried(make_studio(seed, 20, 5, 2), sooner)
    plan = quick_plan(studio, START)
    assert any(is_late(outcome) for outcome in plan.outcomes)
    assert judge_trials(studio, plan)


def some_examples(part: int) -> int:
    """A part of the examples of the profile in use: each of these plans many times."""
    return max(
        1, settings.get_profile(settings.get_current_profile_name()).max_examples // part
    )


def test_in_any_studio_late_orders_have_a_reason_and_every_change_keeps_every_rule() -> None:
    seen: Counter[str] = Counter()

    @settings(suppress_health_check=list(HealthCheck), max_examples=some_examples(4))
    @given(studios(most_pieces=3, most_coats=3))
    def judge(situation: Situation) -> None:
        try:
            plan = quick_plan(situation.studio, situation.start)
        except NoPlanPossible:
            return
        late = any(is_late(outcome) for outcome in plan.outcomes)
        seen["late" if late else "in time"] += 1
        if late:
            judge_trials(situation.studio, plan)

    judge()
    assert seen["late"], seen


def test_in_any_studio_more_spots_hours_or_hands_are_never_worth_less() -> None:
    """No order leaves later unless fewer are left out or the orders are less late together."""
    seen: Counter[str] = Counter()

    @settings(suppress_health_check=list(HealthCheck), max_examples=some_examples(4))
    @given(studios(most_pieces=4, most_coats=3))
    def judge(situation: Situation) -> None:
        studio = situation.studio
        try:
            plan = quick_plan(studio, situation.start)
        except NoPlanPossible:
            return
        if not any(is_late(outcome) for outcome in plan.outcomes):
            return
        trials = Trials(studio, plan, Clockworks())
        before = plan_worth(studio, plan)
        for tried in more_of(studio):
            then = trials.trial(tried).plan
            assert then is not None
            worth = plan_worth(tried.studio, then)
            assert worth <= before
            later = [
                order.key
                for order in studio.orders
                if moment(then, order.key) > moment(plan, order.key)
            ]
            assert not later or worth < before
            seen["later" if later else "none later"] += 1

    judge()
    assert seen["none later"], seen


def moment(plan: Plan, order: str) -> float:
    leaves = leaving(plan, order)
    return math.inf if leaves is None else leaves.timestamp()


def more_of(studio: Studio) -> list[Tried]:
    """One thing more each: hands, spots, and the changes that only add."""
    return [
        Tried(Saying("hands day and night"), what_if.with_tireless_hands(studio)),
        Tried(Saying("three more spots"), what_if.with_spots(studio, 3)),
        *(one for one in what_if.changes(studio) if one.more),
    ]


def test_warmth_is_no_pure_gain_and_says_whose_windows_close_sooner() -> None:
    hours = RESIN_HOURS | {Stage.RECOAT_CLOSES: 26.0}
    points = tuple(
        SheetPoint(stage=stage, celsius=celsius, from_hours=count * factor)
        for stage, count in hours.items()
        for celsius, factor in ((15.0, 1.6), (20.0, 1.0), (25.0, 0.6))
    )
    studio = small_studio(
        product=replace(resin(), sheet=points),
        place=room((0, 18.0, 45.0)),
        hands=person(18, 21),
    )
    plan = explain(studio, quick_plan(studio, MONDAY))
    trial = next(
        one for one in trials_of(studio, plan) if str(one.name).startswith("keep the room")
    )
    assert "(one window then closes while nobody can work" in str(trial.words("o1"))


def test_every_change_that_was_tried_is_listed_and_counted() -> None:
    outcome = explained(one_order(1))
    agree_on_changes(outcome)
    assert len(outcome.changes) >= 4


def test_what_would_keep_a_promise_with_nothing_in_its_way_is_no_change_that_was_tried() -> (
    None
):
    studio = one_order(9)
    away = Absence(start=START - timedelta(days=1), end=START + timedelta(days=30))
    (ada,) = studio.people
    outcome = explained(replace(studio, people=(replace(ada, absences=(away,)),)))
    agree_on_changes(outcome)
    assert str(outcome.reason).endswith(
        "Only with nothing else to pour, hands day and night and a warm room would it be kept."
    )


def test_a_room_that_would_be_too_warm_is_not_said_to_help() -> None:
    cool = resin(maximum_celsius=21.0)
    studio = small_studio(product=cool, place=room((0, 18.0, 45.0)))
    outcome = explained(studio)
    agree_on_changes(outcome)
    assert str(outcome.reason).endswith("changes that were tried keeps the promise.")


def test_of_two_people_the_one_is_named_who_would_work_more() -> None:
    studio = small_studio(hands=person(8, 9))
    two = replace(studio, people=(*studio.people, person(key="bo", name="Bo")))
    words = "work every evening from 18:00 to 22:00"
    assert str(what_if.changes(studio)[0].words) == words
    assert str(what_if.changes(two)[0].words) == f"{words} (Ada)"
    for tried in (*what_if.changes(two), *what_if.evenings(two, MONDAY)):
        assert str(tried.words).startswith("work ") == ("(Ada)" in str(tried.words))


def test_pouring_one_first_names_the_orders_that_it_makes_late() -> None:
    studio = hurried(make_studio(1, 8, 4, 2), 5)
    plan = explain(studio, bettered(studio, quick_plan(studio, START)))
    words = [str(change.words) for outcome in plan.outcomes for change in outcome.changes]
    assert any(re.match(r"pour it before all others \(makes Order \d+ late", w) for w in words)


def test_an_evening_more_is_one_that_the_first_person_has_off() -> None:
    studio = make_studio(0, 8, 4, 1)
    found = [str(one.words) for one in what_if.evenings(studio, START)]
    assert found == [
        f"work every {day} evening too, from 18:00 to 22:00" for day in ("Saturday", "Sunday")
    ]


def test_a_stuck_piece_gives_its_order_the_rule_that_stops_it() -> None:
    studio = one_order(20)
    small = tuple(
        replace(spot, length_mm=50, width_mm=50)
        for place in studio.places
        for spot in place.spots
    )
    rooms = (replace(studio.places[0], spots=small),)
    other = replace(
        studio.pieces[0], key="tiny", name="Tiny", footprint_mm=(40, 40), cover_mm=20
    )
    studio = replace(studio, places=rooms, pieces=(*studio.pieces, other))
    outcome = explained(studio)
    assert outcome.leaves is None
    assert "no spot is large enough" in str(outcome.reason)


def test_one_spot_for_many_pieces_is_named_as_the_spot() -> None:
    studio = make_studio(4, 8, 4, 1)
    room = studio.places[0]
    pieces = tuple(
        replace(studio.pieces[0], key=f"p{i}", name=f"Piece {i}", footprint_mm=None)
        for i in range(4)
    )
    template = studio.orders[0]
    due = (START + timedelta(days=10)).date()
    orders = tuple(
        replace(template, key=f"o{i}", name=f"Order {i}", pieces=(f"p{i}",), promised=due)
        for i in range(4)
    )
    crowded = replace(
        studio, places=(replace(room, spots=room.spots[:1]),), pieces=pieces, orders=orders
    )
    plan = explain(crowded, quick_plan(crowded, START))
    reasons = [str(outcome.reason) for outcome in plan.outcomes if outcome.late_hours]
    assert any(reason.startswith("No spot") for reason in reasons)


def test_a_cold_room_is_named_as_too_cold() -> None:
    studio = one_order(30)
    cold = (PatternPoint(at=time(0), celsius=15.6, humidity_pct=45),)
    full = replace(studio.orders[0], gate=Gate.FULL, promise=Promise.SHIP_BY)
    studio = replace(studio, places=(replace(studio.places[0], pattern=cold),), orders=(full,))
    warm = what_if.with_warm_room(what_if.with_tireless_hands(studio))
    soonest = quick_plan(warm, START).outcomes[0].leaves
    assert soonest is not None
    in_time_if_warm = replace(full, promised=soonest.date())
    outcome = explained(replace(studio, orders=(in_time_if_warm,)))
    assert str(outcome.reason).startswith("Too cold")


@pytest.mark.parametrize("celsius", [12.0, 18.5])
def test_warming_a_room_keeps_the_moisture_of_its_air(celsius: float) -> None:
    studio = make_studio(1, 3, 3, 1)
    point = PatternPoint(at=time(5), celsius=celsius, humidity_pct=70)
    studio = replace(studio, places=(replace(studio.places[0], pattern=(point,)),))
    warmed = what_if.with_warm_room(studio).places[0].pattern[0]
    assert warmed.celsius == what_if.WARM_CELSIUS
    assert warmed.humidity_pct is not None
    assert dew_point(warmed.celsius, warmed.humidity_pct) == pytest.approx(
        dew_point(celsius, 70), abs=1e-6
    )


@pytest.mark.parametrize(
    ("minimum", "warm"), [(None, 22.0), (18.0, 22.0), (25.0, 26.0), (45.0, 22.0)]
)
def test_a_warm_room_is_above_the_minimum_of_what_is_poured(
    minimum: float | None, warm: float
) -> None:
    studio = small_studio(product=resin(minimum_celsius=minimum))
    assert what_if.warmth(studio) == warm
    unused = replace(resin(minimum_celsius=28.0), key="unused")
    assert what_if.warmth(replace(studio, products=(*studio.products, unused))) == warm


def test_warming_leaves_warm_hours_boxes_and_unknown_air_alone() -> None:
    studio = make_studio(1, 3, 3, 1)
    warm = PatternPoint(at=time(5), celsius=25, humidity_pct=40)
    dry = PatternPoint(at=time(12), celsius=18)
    room = replace(studio.places[0], pattern=(warm, dry))
    box = replace(room, key="box", name="Box", kind=PlaceKind.WARM_BOX, spots=())
    warmed = what_if.with_warm_room(replace(studio, places=(room, box)))
    assert warmed.places[0].pattern[0] == warm
    assert warmed.places[0].pattern[1].humidity_pct is None
    assert warmed.places[1] == box


def test_one_more_spot_is_as_large_as_the_largest() -> None:
    studio = make_studio(1, 8, 3, 1)
    more = what_if.with_spot(studio, PlaceKind.ROOM)
    assert more is not None
    assert len(more.spots) == len(studio.spots) + 1
    assert max(s.length_mm * s.width_mm for s in more.spots) == max(
        s.length_mm * s.width_mm for s in studio.spots
    )
    assert what_if.with_spot(studio, PlaceKind.WARM_BOX) is None
