"""Why an order is late, and whether the changes that are offered really keep its promise."""

from __future__ import annotations

from dataclasses import replace
from datetime import time, timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.hands import WorkHours
from studio_planner.craft.orders import Gate, Promise
from studio_planner.craft.places import PatternPoint, PlaceKind
from studio_planner.planning import what_if
from studio_planner.planning.promises import explain
from studio_planner.planning.quick import quick_plan
from studio_planner.science.air import dew_point
from tests.planning.benchmark_studios import START, make_studio

if TYPE_CHECKING:
    from studio_planner.craft.plans import Outcome
    from studio_planner.craft.studio import Studio


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
    assert outcome.reason == ""
    assert outcome.changes == ()


def test_a_date_that_the_cure_cannot_meet_says_so_with_the_earliest_date() -> None:
    outcome = explained(one_order(1))
    assert outcome.reason.startswith(("Cure time", "Too cold"))
    assert not any(change.keeps_promise for change in outcome.changes)
    assert outcome.changes[-1].words.startswith("nothing else to pour, hands day and night")
    assert outcome.changes[-1].leaves is not None
    assert outcome.changes[-1].leaves > outcome.due


def test_too_few_hands_are_named_and_the_offered_hours_do_keep_the_promise() -> None:
    studio = one_order(9, 0, 1, 2)
    rarely = WorkHours(rule="FREQ=WEEKLY;BYDAY=MO,WE,FR", start=time(12), end=time(20))
    slow = replace(studio, people=(replace(studio.people[0], work=(rarely,)),))
    outcome = explained(slow)
    assert outcome.reason.startswith(("No hands", "Night closes"))
    kept = [change for change in outcome.changes if change.keeps_promise]
    assert kept
    assert all(change.leaves is not None and change.leaves <= outcome.due for change in kept)


def test_each_change_offered_is_what_planning_the_changed_studio_gives() -> None:
    studio = make_studio(0, 20, 5, 2)
    plan = explain(studio, quick_plan(studio, START))
    late = [outcome for outcome in plan.outcomes if outcome.late_hours]
    assert late
    tried = {one.words: one.studio for one in what_if.changes(studio)}
    checked = 0
    for outcome in late:
        assert outcome.reason
        assert outcome.changes
        for change in outcome.changes:
            if change.words in tried:
                again = quick_plan(tried[change.words], START, passes=1)
                same = next(one for one in again.outcomes if one.order == outcome.order)
                assert same.leaves == change.leaves
                checked += 1
    assert checked


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
    assert "no spot is large enough" in outcome.reason


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
    reasons = [outcome.reason for outcome in plan.outcomes if outcome.late_hours]
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
    assert outcome.reason.startswith("Too cold")


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
