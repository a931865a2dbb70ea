"""Ribbons of a plan: shades from the clocks, doorways, flags, and where a piece is."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from studio_planner.craft.log import EntryKind, LogEntry
from studio_planner.craft.pieces import UNDERSIDE, Joint
from studio_planner.craft.plans import Plan, PlannedCoat, Trust
from studio_planner.science.clocks import StageClock
from studio_planner.science.stages import Edge, Stage
from studio_planner.services.backdrop import Backdrop
from studio_planner.services.desk import DeskView
from studio_planner.services.doorways import Hands
from studio_planner.services.film_shades import TONES, Film
from studio_planner.services.ribbons import Lane, Ribbon, StepMark
from tests.desktop import scenes


def view_of(room: object = None) -> DeskView:
    return DeskView(scenes.planned(room), scenes.NOW)  # type: ignore[arg-type]


def lane_of(view: DeskView, key: str) -> Lane:
    return next(lane for lane in view.lanes if lane.piece.key == key)


def ribbon_of(view: DeskView, piece: str, coat: str) -> Ribbon:
    bars = lane_of(view, piece).bars
    return next(b for b in bars if isinstance(b, Ribbon) and b.planned.coat == coat)


def test_stages_in_an_even_room_are_the_hours_of_the_sheet_after_the_block() -> None:
    # A published figure is returned exactly: recoat opens after 3.5 h at 25 °C.
    view = view_of(scenes.constant_room(25.0))
    ribbon = ribbon_of(view, "k", "clear")
    marks = {mark.stage: mark.at for mark in ribbon.film.marks}
    end, start = ribbon.planned.end.timestamp(), ribbon.start.timestamp()
    assert marks[Stage.RECOAT_OPENS] == pytest.approx(end + 3.5 * 3600.0, abs=1.0)
    assert marks[Stage.FULL_CURE] == pytest.approx(end + 90.0 * 3600.0, abs=1.0)
    assert marks[Stage.WORKING_TIME] == pytest.approx(start + 0.6 * 3600.0, abs=1.0)


@pytest.mark.parametrize("room", [scenes.constant_room(), scenes.night_room()])
def test_a_share_is_what_the_clock_of_the_next_stage_has(room: object) -> None:
    view = view_of(room)
    ribbon = ribbon_of(view, "k", "clear")
    film = ribbon.film
    history = view.timing.history("room")
    for hours in range(1, 120, 7):
        second = ribbon.planned.end.timestamp() + hours * 3600.0
        shade = film.shade_at(second)
        assert shade.next is not None
        law = film.product.law(shade.next)
        assert law is not None
        clock = StageClock(law, history, Edge.LIKELY, film.product.minimum_celsius)
        since = ribbon.start if shade.next is Stage.WORKING_TIME else ribbon.planned.end
        assert shade.share == pytest.approx(clock.degree(since.timestamp(), second), abs=1e-9)


def test_a_shade_runs_from_wet_to_hard_without_a_jump() -> None:
    ribbon = ribbon_of(view_of(), "k", "clear")
    film = ribbon.film
    for mark in film.marks:
        assert mark.at is not None
        before, after = film.shade_at(mark.at - 0.5), film.shade_at(mark.at + 0.5)
        assert after.reached == before.reached + 1
        assert after.tone == pytest.approx(before.tone, abs=2e-3)
    assert film.shade_at(film.marks[-1].at or 0.0).tone == 1.0
    tones = [tone for _, tone in ribbon.tones]
    assert tones == sorted(tones)


def test_every_stage_has_a_tone_of_its_own_and_full_cure_is_the_hardest() -> None:
    assert len(set(TONES.values())) == len(TONES)
    assert max(TONES, key=TONES.__getitem__) is Stage.FULL_CURE


def test_a_film_that_moves_out_of_the_warm_box_cures_on_in_the_room() -> None:
    view = view_of()
    timing = view.timing
    ribbon = ribbon_of(view, "m", "lock")
    handled = timing.safe(scenes.FAST, Stage.HANDLE, [("box", ribbon.planned.end)])
    assert handled is not None
    legs = [("box", ribbon.start), ("room", handled)]
    moved = Film(timing, scenes.FAST, ribbon.start, ribbon.planned.end, legs)
    stayed = Film(timing, scenes.FAST, ribbon.start, ribbon.planned.end, legs[:1])
    full = moved.reached(Stage.FULL_CURE, Edge.LIKELY)
    sooner = stayed.reached(Stage.FULL_CURE, Edge.LIKELY)
    assert full is not None
    assert sooner is not None
    assert ribbon.film.reached(Stage.FULL_CURE, Edge.LIKELY) == full > sooner
    # The share adds up over both places: half way it is below one, at the stage it is one.
    shade = moved.shade_at(full.timestamp() - 60.0)
    assert shade.next is Stage.FULL_CURE
    assert shade.share == pytest.approx(1.0, abs=1e-3)


def test_a_ribbon_ends_where_the_next_coat_covers_it() -> None:
    view = view_of()
    seal, flood = ribbon_of(view, "h1", "seal"), ribbon_of(view, "h1", "flood")
    assert seal.covered_by is flood.planned
    assert seal.until == flood.start == seal.hidden_after


def test_the_last_ribbon_ends_at_full_cure_on_its_safe_edge() -> None:
    ribbon = ribbon_of(view_of(), "k", "clear")
    assert ribbon.covered_by is None
    assert ribbon.until == ribbon.film.safe(Stage.FULL_CURE)


def test_a_doorway_that_is_used_has_the_times_of_the_plan() -> None:
    view = view_of()
    ribbon, flood = ribbon_of(view, "h1", "seal"), ribbon_of(view, "h1", "flood")
    door, window = ribbon.doorway, flood.planned.window
    assert door is not None
    assert window is not None
    assert (door.opens, door.closes, door.used) == (window.opens, window.closes, True)


def test_a_doorway_that_is_missed_is_shown_with_its_safe_times() -> None:
    view = view_of()
    ribbon = ribbon_of(view, "c", "seal")
    assert ribbon.covered_by is not None
    assert ribbon.covered_by.joint is Joint.SCUFFED
    door = ribbon.doorway
    assert door is not None
    assert not door.used
    assert door.opens == ribbon.film.safe(Stage.RECOAT_OPENS)
    assert door.closes == ribbon.film.safe(Stage.RECOAT_CLOSES)


def test_a_doorway_without_an_end_stays_open_until_the_ribbon_ends() -> None:
    door = ribbon_of(view_of(), "f", "prime").doorway
    assert door is not None
    assert door.closes is None


def test_a_last_coat_has_no_doorway() -> None:
    assert ribbon_of(view_of(), "k", "clear").doorway is None


def test_the_touch_test_goes_with_its_window() -> None:
    window = ribbon_of(view_of(), "m", "lock").planned.window
    assert window is not None
    assert window.trust is Trust.TEST_FIRST


def test_nobody_and_somebody_make_up_the_whole_doorway() -> None:
    view = view_of()
    door = ribbon_of(view, "h1", "seal").doorway
    assert door is not None
    assert door.closes is not None
    hands = Hands(view.backdrop.working)
    working = sum(
        (
            min(end, door.closes) - max(start, door.opens)
            for start, end in hands.spans
            if end > door.opens and start < door.closes
        ),
        start=timedelta(),
    )
    missing = sum((end - start for start, end in door.nobody), start=timedelta())
    assert working + missing == door.closes - door.opens
    assert working > timedelta()


def test_flags_are_those_of_the_plan_and_else_those_of_the_clocks() -> None:
    view = view_of()
    kept = lane_of(view, "k").flags
    assert view.plan is not None
    bare = DeskView(replace(view.studio, plan=replace(view.plan, ready=())), scenes.NOW)
    assert lane_of(bare, "k").flags == kept
    assert [flag.stage for flag in kept] == [Stage.HANDLE, Stage.PRINT_FREE, Stage.FULL_CURE]
    for flag in kept:
        assert flag.likely is not None
        assert flag.safe is not None
        assert flag.likely < flag.safe


def test_a_piece_with_a_coat_to_come_has_no_flags_yet() -> None:
    view = view_of()
    plan = view.plan
    assert plan is not None
    some = tuple(coat for coat in plan.coats if (coat.piece, coat.coat) != ("h1", "clear"))
    short = DeskView(replace(view.studio, plan=replace(plan, coats=some)), scenes.NOW)
    assert lane_of(short, "h1").flags == ()


def test_bars_are_in_order_of_time_and_counted_without_laying_them_out() -> None:
    for lane in view_of().lanes:
        starts = [bar.start for bar in lane.bars]
        assert starts == sorted(starts)
        assert len(lane.bars) == lane.bar_count
    steps = [bar for bar in lane_of(view_of(), "c").bars if isinstance(bar, StepMark)]
    assert len(steps) == 1


def test_without_a_plan_what_was_poured_is_still_shown() -> None:
    poured = scenes.poured_studio()
    lane = lane_of(DeskView(poured, scenes.NOW), "k")
    (ribbon,) = (bar for bar in lane.bars if isinstance(bar, Ribbon))
    assert ribbon.planned.poured
    assert lane.flags


def test_a_lane_names_the_spots_that_its_piece_was_carried_to() -> None:
    studio = scenes.poured_studio()
    move = LogEntry(
        number=1,
        kind=EntryKind.MOVED,
        at=scenes.NOW,
        written=scenes.NOW,
        piece="k",
        spot="W1",
    )
    moved = lane_of(DeskView(replace(studio, log=(move,)), scenes.NOW), "k")
    assert moved.spots == (*lane_of(DeskView(studio, scenes.NOW), "k").spots, "Box 1")


def test_a_coat_on_the_other_face_lies_beside_the_film_that_cures_on() -> None:
    top = scenes.PIECES[5].stack[0]
    under = replace(top, key="under", faces=frozenset({UNDERSIDE}))
    piece = replace(scenes.PIECES[5], key="two", stack=(top, under))
    coats = tuple(
        PlannedCoat(
            number=number,
            piece="two",
            coat=key,
            start=scenes.at(day, "18:00"),
            end=scenes.at(day, "19:00"),
            spot="A1",
            joint=Joint.BARE,
            mix=number,
            person="ada",
        )
        for number, (key, day) in enumerate([("clear", 0), ("under", 3)], start=1)
    )
    plan = Plan(made=scenes.NOW, start=scenes.NOW, coats=coats)
    studio = replace(scenes.studio(pieces=(piece,)), plan=plan)
    first, second = lane_of(DeskView(studio, scenes.NOW), "two").bars
    assert isinstance(first, Ribbon)
    assert isinstance(second, Ribbon)
    assert first.covered_by is None
    assert second.lifted
    assert not first.lifted
    assert first.doorway is None


def test_nights_are_when_nobody_is_awake() -> None:
    view = view_of()
    night = scenes.at(1, "02:00")
    day = scenes.at(1, "12:00")
    assert any(start <= night < end for start, end in view.backdrop.nights)
    assert not any(start <= day < end for start, end in view.backdrop.nights)


def test_the_rooms_air_is_that_of_its_history_and_unknown_outside() -> None:
    view = view_of(scenes.constant_room(22.0))
    second = scenes.at(1, "12:00").timestamp()
    (sample,) = view.backdrop.air([second, view.timing.end.timestamp() + 10.0])
    assert sample.celsius == pytest.approx(22.0)
    # Air of 22 °C and 50 % has a dew point of 11.1 °C (Magnus; common psychrometric tables).
    assert sample.margin == pytest.approx(22.0 - 11.1, abs=0.1)


def test_without_humidity_the_margin_is_unknown() -> None:
    room = scenes.constant_room()
    dry = replace(room, pattern=tuple(replace(p, humidity_pct=None) for p in room.pattern))
    view = view_of(dry)
    (sample,) = view.backdrop.air([scenes.at(1, "12:00").timestamp()])
    assert sample.margin is None


def test_a_studio_without_rooms_or_people_has_an_empty_backdrop() -> None:
    empty = scenes.studio(pieces=(), places=(), people=())
    view = DeskView(empty, scenes.NOW)
    backdrop = Backdrop(empty, view.timing)
    assert view.lanes == ()
    assert backdrop.nights == backdrop.working == ()
    assert backdrop.air([scenes.NOW.timestamp()]) == ()
