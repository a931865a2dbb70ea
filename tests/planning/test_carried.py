"""A piece that was carried after its pour cures where it was put, for every planner."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, time, timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.log import EntryKind, LogEntry, Poured
from studio_planner.craft.orders import Order
from studio_planner.craft.places import PatternPoint, Place, PlaceKind
from studio_planner.craft.plans import Air
from studio_planner.craft.shapes import Rectangle
from studio_planner.craft.timing import Timing
from studio_planner.planning.checker import check_plan
from studio_planner.planning.checking.findings import Rule
from studio_planner.planning.clocks.clockwork import Clockworks
from studio_planner.planning.exact.search import Effort, PlanSearch
from studio_planner.planning.late.in_the_way import standing
from studio_planner.planning.late.ladder import Ladder
from studio_planner.planning.late.soonest import Soonest
from studio_planner.planning.problem import build_chains
from studio_planner.planning.quick import quick_plan, quick_start
from studio_planner.planning.rehearsal.chances import NOTHING_HAPPENS
from studio_planner.planning.rehearsal.rehearsing import rehearse
from studio_planner.science.stages import Stage
from tests.planning.benchmark_studios import START, make_studio

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.late.soonest import Walk

_HOUR = timedelta(hours=1)
_NOW = START + 4 * _HOUR


def _begun(spot: str = "s1") -> Studio:
    """The first coat of the first piece is on, beside a warm box with one spot."""
    studio = make_studio(4, 4, 3, 1)
    room = studio.places[0]
    shelf = replace(room.spots[0], key="s1", name="Shelf 1")
    box = Place(
        key="box",
        name="Warm box",
        kind=PlaceKind.WARM_BOX,
        pattern=(PatternPoint(at=time(0), celsius=30.0, humidity_pct=45.0),),
        spots=(replace(shelf, key="b1", name="Box 1"),),
    )
    pour = Poured(
        piece=studio.pieces[0].key,
        coat=studio.pieces[0].stack[0].key,
        start=START,
        end=START + _HOUR,
        spot=spot,
    )
    shelves = (shelf, *room.spots[1:])
    return replace(studio, places=(replace(room, spots=shelves), box), poured=(pour,))


def _carried(studio: Studio, at: datetime, spot: str = "b1") -> Studio:
    entry = LogEntry(
        number=len(studio.log) + 1,
        kind=EntryKind.MOVED,
        at=at,
        written=at,
        piece=studio.pieces[0].key,
        spot=spot,
    )
    return replace(studio, log=(*studio.log, entry))


def _next(studio: Studio, plan: Plan) -> PlannedCoat:
    piece = studio.pieces[0]
    keys = piece.key, piece.stack[1].key
    return next(coat for coat in plan.coats if (coat.piece, coat.coat) == keys)


def _opens(studio: Studio) -> datetime:
    planned = _next(studio, quick_plan(studio, _NOW))
    assert planned.window is not None
    return planned.window.opens


def _same_but_spots(one: Plan, other: Plan) -> bool:
    """Whether two plans have the same times and joints."""
    return [(c.piece, c.coat, c.start, c.joint, c.window) for c in one.coats] == [
        (c.piece, c.coat, c.start, c.joint, c.window) for c in other.coats
    ]


def test_the_window_opens_sooner_the_sooner_it_is_carried_into_the_box() -> None:
    there, soon, late, never = (
        _opens(studio)
        for studio in (
            _begun("b1"),
            _carried(_begun(), START + 1.5 * _HOUR),
            _carried(_begun(), START + 2.5 * _HOUR),
            _begun(),
        )
    )
    assert there < soon < late < never


def test_the_way_out_of_the_box_counts_too() -> None:
    out = _carried(_carried(_begun(), START + _HOUR), START + 2 * _HOUR, "s1")
    assert _opens(_carried(_begun(), START + _HOUR)) < _opens(out) < _opens(_begun())


def test_who_is_carried_into_the_box_again_has_rested_in_the_room_since_handle() -> None:
    first, *others = _begun().pieces
    single = replace(_begun(), pieces=(replace(first, stack=first.stack[:1]), *others))
    once = _carried(single, START + _HOUR)
    twice = _carried(once, START + 46 * _HOUR)
    plans = [quick_plan(studio, START + 48 * _HOUR) for studio in (once, twice)]
    rests, there = (
        max(row.safe for row in plan.ready if row.piece == first.key and row.safe is not None)
        for plan in plans
    )
    assert there < rests
    assert not check_plan(twice, plans[1]).broken


def test_a_window_closes_as_if_it_left_the_box_when_the_spread_film_could_be_handled() -> None:
    studio = _carried(_begun(), START + _HOUR)
    means = quick_start(studio, _NOW).rounds.placer().means
    piece, (pour,) = studio.pieces[0], studio.poured
    product = studio.product(piece.stack[0].product)
    closes = means.edges.not_after(product, means.place_of(pour), Stage.RECOAT_CLOSES)
    assert closes is not None

    timing = Timing(studio, START - _HOUR, START + 400 * _HOUR)
    handled = timing.safe(product, Stage.HANDLE, [("box", pour.end)])
    assert handled is not None
    legs = [(studio.places[0].key, START), ("box", START + _HOUR)]
    in_the_box = timing.safe(product, Stage.RECOAT_CLOSES, legs)
    left_it = timing.safe(
        product, Stage.RECOAT_CLOSES, [*legs, (studio.places[0].key, handled)]
    )
    assert in_the_box is not None
    assert left_it is not None
    assert in_the_box < left_it
    found = closes.at(int(START.timestamp()))
    assert abs(found - left_it.timestamp()) < 3


def test_a_move_right_at_the_pour_equals_pouring_there() -> None:
    poured, carried = (
        quick_plan(studio, _NOW) for studio in (_begun("b1"), _carried(_begun(), START))
    )
    assert _same_but_spots(poured, carried)
    assert poured.ready == carried.ready


def test_a_move_after_full_cure_changes_no_clock_of_that_film() -> None:
    now = START + timedelta(days=40)
    carried = _carried(_begun(), now)
    before, after = (quick_plan(studio, now) for studio in (_begun(), carried))
    assert _same_but_spots(before, after)
    assert before.ready == after.ready
    assert not check_plan(carried, after).broken


@pytest.mark.parametrize("hours", [0.0, 1.5])
def test_every_planner_keeps_the_checker_s_windows(hours: float) -> None:
    studio = _carried(_begun(), START + hours * _HOUR)
    search = PlanSearch(quick_start(studio, _NOW))
    search.run(Effort(600.0, 2, 3), lambda _: None, lambda: False)
    for plan in (quick_plan(studio, _NOW), search.plan()):
        assert not check_plan(studio, plan).broken
        rehearsed = rehearse(studio, plan, weeks=2, chances=NOTHING_HAPPENS)
        assert [coat for coat in rehearsed.coats if coat.held < 1.0] == []


def test_air_is_known_where_the_piece_is_in_the_hours_after_its_pour() -> None:
    def air(studio: Studio) -> Air:
        return quick_plan(studio, START + 30 * _HOUR).coats[0].air

    begun = _begun()
    room, box = begun.places
    unknown = replace(box.pattern[0], humidity_pct=None)
    begun = replace(begun, places=(room, replace(box, pattern=(unknown,))))
    assert air(begun) is Air.KEPT
    assert air(_carried(begun, START + 6 * _HOUR)) is Air.UNKNOWN
    assert air(_carried(begun, START + 14 * _HOUR)) is Air.KEPT
    there = replace(begun, poured=(replace(begun.poured[0], spot="b1"),))
    assert air(there) is Air.UNKNOWN


def _walked(studio: Studio) -> Walk:
    """The soonest pours of the first piece, with what is to come on the shelf."""
    means = quick_start(studio, _NOW).rounds.placer().means
    piece = studio.pieces[0]
    chain = next(c for c in build_chains(studio, twins=False)[0] if c.pieces == (piece,))
    return Soonest(studio, means, chain, "room").walk()


def test_why_an_order_is_late_follows_the_piece_too() -> None:
    never, carried = _walked(_begun()), _walked(_carried(_begun(), START))
    assert carried == _walked(_begun("b1"))
    assert carried.waits[0].since < never.waits[0].since


def test_who_stands_in_the_way_of_an_order_stands_where_it_was_carried() -> None:
    begun = _begun()
    room, box = begun.places
    first, second, *_ = begun.pieces
    long = Rectangle(length_mm=2000, width_mm=200)
    spots = (replace(box.spots[0], length_mm=2500),)
    day = (START + timedelta(days=5)).date()
    order = Order(key="long", name="Long", pieces=(second.key,), promised=day)
    begun = replace(
        begun,
        places=(room, replace(box, spots=spots)),
        pieces=(first, replace(second, shape=long, count=1)),
        orders=(order,),
    )

    def stands(studio: Studio) -> int:
        plan = quick_plan(studio, _NOW)
        poured = replace(plan, coats=tuple(coat for coat in plan.coats if coat.poured))
        return standing(Ladder(studio, poured, Clockworks()), order, None).total()

    assert stands(begun) == 0
    assert stands(_carried(begun, START + _HOUR)) > 0
    out = _carried(_carried(begun, START + _HOUR), _NOW - _HOUR, "s1")
    assert stands(out) == 0


def test_a_plan_made_for_the_shelf_is_not_thought_right_once_it_is_in_the_box() -> None:
    plan = quick_plan(_begun(), _NOW)
    broken = check_plan(_carried(_begun(), START + _HOUR), plan).broken
    assert {finding.piece for finding in broken} == {_begun().pieces[0].key}


def test_the_box_is_taken_by_what_was_carried_into_it_and_the_shelf_is_free() -> None:
    studio = _carried(_begun(), START + _HOUR)
    plan = quick_plan(studio, _NOW)
    other = next(c for c in plan.coats if not c.poured and c.piece != studio.pieces[0].key)

    def taken(spot: str) -> bool:
        there = replace(other, start=_NOW, end=_NOW + _HOUR, spot=spot)
        coats = tuple(there if coat is other else coat for coat in plan.coats)
        found = check_plan(studio, replace(plan, coats=coats)).broken
        said = "is taken by " + studio.pieces[0].name
        return any(f.rule is Rule.SPOT and said in f.words for f in found)

    assert taken("b1")
    assert not taken("s1")


def test_being_carried_onto_a_spot_that_is_taken_breaks_no_rule() -> None:
    studio = _begun()
    piece = studio.pieces[1]
    there = Poured(
        piece=piece.key,
        coat=piece.stack[0].key,
        start=START + _HOUR,
        end=START + 2 * _HOUR,
        spot="b1",
    )
    studio = _carried(replace(studio, poured=(*studio.poured, there)), START + 2 * _HOUR)
    plan = quick_plan(studio, _NOW)
    assert not check_plan(studio, plan).broken
    search = PlanSearch(quick_start(studio, _NOW))
    search.run(Effort(600.0, 2, 3), lambda _: None, lambda: False)
    assert not check_plan(studio, search.plan()).broken
