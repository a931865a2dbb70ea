"""Whole plans: across the clock changes, full of nonsense, and of any studio."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from studio_planner.craft.pieces import Joint
from studio_planner.craft.places import PatternPoint
from studio_planner.craft.plans import (
    Air,
    Outcome,
    Plan,
    PlannedCoat,
    PlannedStep,
    Readiness,
    StepKind,
    Trust,
    Unplanned,
    Window,
)
from studio_planner.craft.saying import Saying
from studio_planner.planning.checker import Rule, check_plan
from studio_planner.science.stages import Stage
from tests.planning.checker.hand_made import (
    PLAN,
    RESIN,
    STUDIO,
    at,
    hours,
    moved,
    step_moved,
    with_pattern,
    with_product,
)
from tests.planning.studios import Situation, studios

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio


def in_zone(zone: str, monday: date) -> tuple[Studio, Plan, timedelta]:
    """The hand-made studio and plan in another zone, with its Monday on another day."""
    days = timedelta(days=(monday - date(2026, 3, 2)).days)
    studio = replace(
        STUDIO,
        zone=zone,
        orders=tuple(replace(order, promised=order.promised + days) for order in STUDIO.orders),
        poured=tuple(replace(p, start=p.start + days, end=p.end + days) for p in STUDIO.poured),
    )
    coats = tuple(
        replace(
            coat,
            start=coat.start + days,
            end=coat.end + days,
            window=coat.window and _shifted(coat.window, days),
        )
        for coat in PLAN.coats
    )
    steps = tuple(
        replace(
            step,
            start=step.start + days,
            end=step.end + days,
            opens=step.opens and step.opens + days,
            closes=step.closes and step.closes + days,
        )
        for step in PLAN.steps
    )
    ready = tuple(
        replace(row, likely=row.likely and row.likely + days, safe=row.safe and row.safe + days)
        for row in PLAN.ready
    )
    plan = replace(PLAN, start=PLAN.start + days, coats=coats, steps=steps, ready=ready)
    return studio, replace(plan, outcomes=_outcomes(studio, plan)), days


def _shifted(window: Window, days: timedelta) -> Window:
    return replace(
        window, opens=window.opens + days, closes=window.closes and window.closes + days
    )


def _outcomes(studio: Studio, plan: Plan) -> tuple[Outcome, ...]:
    packed = {step.piece: step.end for step in plan.steps if step.kind is StepKind.PACK}
    zone = studio.time_zone
    return tuple(
        Outcome(
            order=order.key,
            due=order.due(zone),
            leaves=order.leaves(zone, packed[order.pieces[0]])
            if order.pieces[0] in packed
            else None,
        )
        for order in studio.orders
    )


@pytest.mark.parametrize(
    "monday", [date(2026, 3, 28), date(2026, 10, 24)], ids=["spring", "autumn"]
)
def test_a_plan_across_a_clock_change_is_clean(monday: date) -> None:
    studio, plan, _ = in_zone("Europe/Berlin", monday)
    assert check_plan(studio, plan).broken == ()


def test_hands_go_by_the_wall_clock_on_both_sides_of_a_clock_change() -> None:
    # Work ends at 22:00, which is 21:00 UTC the day before the change and 20:00 UTC after it.
    studio, plan, days = in_zone("Europe/Berlin", date(2026, 3, 28))
    early, late = (
        step_moved(plan, StepKind.PACK, "board", at(day, "20:40") + days) for day in (0, 1)
    )
    hands = [
        [f for f in check_plan(studio, one).broken if f.rule is Rule.HANDS]
        for one in (early, late)
    ]
    assert [len(found) for found in hands] == [0, 1]
    assert "Sun 29 Mar 22:40 to Sun 29 Mar 22:55" in hands[1][0].words


def test_the_clock_of_a_film_does_not_jump_with_the_wall_clock() -> None:
    # The window closes at 11:19 UTC on the day after; by the wall clock an hour later than
    # on other days.
    studio, plan, days = in_zone("Europe/Berlin", date(2026, 3, 28))
    plan = moved(plan, "tray", "lock", at(1, "10:35") + days)
    words = [f.words for f in check_plan(studio, plan).broken if f.rule is Rule.JOINT]
    assert any("closes Sun 29 Mar 13:19 at the earliest" in one for one in words)


KEYS = st.sampled_from(["tray", "board", "coasters", "gilded", "ghost", "dish", "nobody"])
COAT_KEYS = st.sampled_from(["flood", "lock", "glitter", "size", "leaf", "under", "seal", "?"])
TIMES = st.one_of(
    st.integers(-3000, 3000).map(lambda n: PLAN.start + timedelta(minutes=5 * n)),
    st.datetimes(timezones=st.sampled_from([UTC, None])),
    st.sampled_from([datetime.min, datetime.max.replace(tzinfo=UTC)]),  # noqa: DTZ901
)
WINDOWS = st.builds(
    Window, opens=TIMES, closes=st.none() | TIMES, trust=st.sampled_from(list(Trust))
)
ANY_COAT = st.builds(
    PlannedCoat,
    number=st.integers(-1, 5),
    piece=KEYS,
    coat=COAT_KEYS,
    start=TIMES,
    end=TIMES,
    spot=st.sampled_from(["A", "B", "X", "none"]),
    joint=st.sampled_from(list(Joint)),
    mix=st.integers(0, 3),
    person=st.sampled_from(["ada", "ben", "eve"]),
    window=st.none() | WINDOWS,
    air=st.sampled_from(list(Air)),
    poured=st.booleans(),
)
ANY_STEP = st.builds(
    PlannedStep,
    kind=st.sampled_from(list(StepKind)),
    piece=KEYS,
    start=TIMES,
    end=TIMES,
    person=st.sampled_from(["ada", "ben", "eve"]),
    coat=st.none() | COAT_KEYS,
    opens=st.none() | TIMES,
    closes=st.none() | TIMES,
)
NONSENSE = st.builds(
    Plan,
    made=TIMES,
    start=TIMES,
    coats=st.lists(ANY_COAT, max_size=8).map(tuple),
    steps=st.lists(ANY_STEP, max_size=6).map(tuple),
    ready=st.lists(
        st.builds(
            Readiness,
            piece=KEYS,
            stage=st.sampled_from(list(Stage)),
            likely=st.none() | TIMES,
            safe=st.none() | TIMES,
        ),
        max_size=4,
    ).map(tuple),
    outcomes=st.lists(
        st.builds(
            Outcome,
            order=st.sampled_from(["shop", "fair", "none"]),
            due=TIMES,
            leaves=st.none() | TIMES,
        ),
        max_size=3,
    ).map(tuple),
    unplanned=st.lists(
        st.builds(
            Unplanned, piece=KEYS, coat=st.none() | COAT_KEYS, reason=st.just(Saying("?"))
        ),
        max_size=3,
    ).map(tuple),
)


@settings(max_examples=150, deadline=None)
@given(NONSENSE)
def test_nonsense_is_told_and_never_crashes_the_check(plan: Plan) -> None:
    report = check_plan(STUDIO, plan)
    assert report.broken
    assert all(finding.words.endswith(".") for finding in report.broken)


@settings(max_examples=60, deadline=None)
@given(plan=NONSENSE, kept=st.integers(0, 17))
def test_nonsense_beside_a_good_plan_never_crashes_the_check(plan: Plan, kept: int) -> None:
    mixed = replace(
        PLAN,
        coats=(*PLAN.coats[:kept], *plan.coats),
        steps=(*PLAN.steps, *plan.steps),
        ready=(*PLAN.ready, *plan.ready),
        unplanned=plan.unplanned,
    )
    assert check_plan(STUDIO, mixed).warnings is not None


@settings(max_examples=60, deadline=None)
@given(studios())
def test_a_plan_without_anything_lacks_every_coat_of_any_studio(situation: Situation) -> None:
    plan = Plan(made=situation.start, start=situation.start, coats=())
    broken = check_plan(situation.studio, plan).broken
    missing = [finding for finding in broken if finding.rule is Rule.COMPLETE]
    assert len(missing) == sum(len(piece.stack) for piece in situation.studio.pieces)


def in_the_box(room_celsius: float) -> tuple[Studio, Plan, datetime]:
    """One flood in a box of 30 °C, with figures at 20 °C and twice as fast ones at 30 °C."""
    sheet = tuple(
        replace(point, celsius=celsius, from_hours=point.from_hours * factor)
        for point in RESIN.sheet
        for celsius, factor in ((20.0, 1.0), (30.0, 0.5))
    )
    studio = with_product(STUDIO, "resin", sheet=sheet)
    for place, celsius in (("box", 30.0), ("room", room_celsius)):
        point = PatternPoint(at=time(0), celsius=celsius, humidity_pct=30.0)
        studio = with_pattern(studio, point, place=place)
    dish = replace(STUDIO.piece("dish"), stack=STUDIO.piece("dish").stack[:1])
    studio = replace(studio, pieces=(dish,), orders=(), poured=())
    end = at(0, "08:45")
    flood = replace(
        PLAN.coats[0], start=at(0, "08:00"), end=end, spot="X", person="ada", poured=False
    )
    return studio, Plan(made=PLAN.made, start=PLAN.start, coats=(flood,)), end


def test_a_piece_that_leaves_the_box_for_a_cold_room_can_be_handled_and_cures_no_further() -> (
    None
):
    studio, plan, end = in_the_box(room_celsius=8.0)
    ready = (
        Readiness(piece="dish", stage=Stage.HANDLE, likely=hours(end, 10), safe=hours(end, 11)),
        Readiness(piece="dish", stage=Stage.PRINT_FREE, likely=None, safe=None),
        Readiness(piece="dish", stage=Stage.FULL_CURE, likely=None, safe=None),
    )
    assert check_plan(studio, replace(plan, ready=ready)).broken == ()


def test_a_piece_cures_in_the_warm_box_until_it_can_be_handled_and_then_in_the_room() -> None:
    """Twice as fast at 30 °C: late 11 h to handle in the box, the rest at the room's pace."""
    studio, plan, end = in_the_box(room_celsius=20.0)
    rows = (
        (Stage.HANDLE, 10.0, 11.0),
        (Stage.PRINT_FREE, 11.0 + (1 - 11 / 24) * 48, 11.0 + (1 - 11 / 26.4) * 52.8),
        (Stage.FULL_CURE, 11.0 + (1 - 11 / 48) * 96, 11.0 + (1 - 11 / 52.8) * 105.6),
    )
    ready = tuple(
        Readiness(piece="dish", stage=stage, likely=hours(end, likely), safe=hours(end, safe))
        for stage, likely, safe in rows
    )
    plan = replace(plan, ready=ready)
    assert check_plan(studio, plan).broken == ()
    # On a spot of the room it would all take until much later.
    in_the_room = replace(plan, coats=(replace(plan.coats[0], spot="A"),))
    assert {f.rule for f in check_plan(studio, in_the_room).broken} == {Rule.READY}
