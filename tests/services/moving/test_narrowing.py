"""Only the lanes that are asked for: by words, late ones, those of this week; and by spot."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studio_planner.craft.pieces import Colour
from studio_planner.craft.plans import Unplanned
from studio_planner.craft.saying import Saying
from studio_planner.craft.settings import Units
from studio_planner.services.desk import DeskView
from studio_planner.services.moving.narrowing import Wanted, narrowed
from studio_planner.services.moving.spot_lanes import spot_lanes
from tests.desktop import scenes
from tests.services.small_studios import kept


def view() -> DeskView:
    return DeskView(scenes.planned(), scenes.NOW)


def names(wanted: Wanted, seen: DeskView | None = None) -> list[str]:
    return [lane.piece.name for lane in narrowed(seen or view(), wanted)]


def test_without_a_wish_all_lanes_are_there() -> None:
    seen = view()
    assert narrowed(seen, Wanted(text="  ")) is seen.lanes


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("moon", ["Moon tray"]),
        ("HARBOUR pair", ["Harbour board 1", "Harbour board 2"]),
        ("brush-on", ["Fen clock"]),
        ("harbour 2", ["Harbour board 2"]),
        ("quay", ["Market board 7"]),
        ("nothing like it", []),
    ],
)
def test_every_word_is_in_the_name_the_order_the_product_or_a_colour(
    text: str, found: list[str]
) -> None:
    assert names(Wanted(text=text)) == found


def test_a_colour_is_found() -> None:
    studio = scenes.planned()
    moon = studio.piece("m")
    teal = replace(moon.stack[1], colours=(Colour(name="Teal"),))
    pieces = tuple(
        replace(p, stack=(p.stack[0], teal, p.stack[2])) if p is moon else p
        for p in studio.pieces
    )
    seen = DeskView(replace(studio, pieces=pieces), scenes.NOW)
    assert names(Wanted(text="teal"), seen) == ["Moon tray"]


def test_late_orders_and_pieces_that_are_not_planned_are_late() -> None:
    assert names(Wanted(late=True)) == ["Moon tray"]
    studio = scenes.planned()
    row = Unplanned(piece="f", coat=None, reason=Saying("nobody works."))
    plan = replace(kept(studio), unplanned=(row,))
    seen = DeskView(replace(studio, plan=plan), scenes.NOW)
    assert names(Wanted(late=True), seen) == ["Moon tray", "Fen clock"]
    assert names(Wanted(late=True), DeskView(replace(studio, plan=None), scenes.NOW)) == []


def test_this_week_begins_on_the_day_that_the_studio_says() -> None:
    seen = view()
    assert len(names(Wanted(week=True), seen)) == len(seen.lanes)
    # Two weeks on there is nothing, and a week that begins on a Sunday ends before it.
    later = DeskView(seen.studio, scenes.at(13, "12:00"))
    assert names(Wanted(week=True), later) == []
    sunday = replace(seen.studio, units=replace(Units(), week_starts=6))
    monday_morning = DeskView(sunday, scenes.at(-2, "12:00"))
    assert "Moon tray" in names(Wanted(week=True), monday_morning)


def test_spots_hold_a_piece_from_its_pour_until_it_can_be_handled() -> None:
    seen = view()
    lanes = spot_lanes(seen)
    assert [lane.spot.key for lane in lanes] == [spot.key for spot in seen.studio.spots]
    board = next(lane for lane in lanes if lane.spot.key == "B1").stands[0]
    assert board.piece.key == "h1"
    assert [coat.coat for coat in board.coats][:2] == ["seal", "flood"]
    assert board.start == scenes.at(0, "18:20")
    assert board.end is not None
    assert sum(len(one.coats) for lane in lanes for one in lane.stands) == len(
        kept(seen.studio).coats
    )
    for lane in lanes:
        for one, other in zip(lane.stands, lane.stands[1:], strict=False):
            assert one.end is None or one.end <= other.start
