"""A piece that is put on another spot: it fits, it is free, and all its coats go along."""

from __future__ import annotations

from dataclasses import replace
from functools import partial
from itertools import islice
from typing import TYPE_CHECKING, Any

from studio_planner.planning.checker import check_plan
from studio_planner.planning.quick import quick_plan
from studio_planner.services.desk import DeskView
from studio_planner.services.editing.pins import put_elsewhere
from studio_planner.services.moving.breaks import Rule
from studio_planner.services.moving.held import Goes
from studio_planner.services.moving.judging import Judge
from studio_planner.services.moving.moved_plan import moved_plan, put_on_spot
from studio_planner.services.moving.spot_lanes import spot_lanes
from tests.services.moving.test_comparing import plain_voice
from tests.services.small_studios import kept, planned_once

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.studio import Studio
    from studio_planner.services.moving.judging import Verdict
    from studio_planner.services.moving.spot_lanes import Standing


def view_of(studio: Studio) -> DeskView:
    return DeskView(studio, kept(studio).start)


def to_come(view: DeskView) -> list[Standing]:
    lanes = spot_lanes(view)
    stands = [one for spot in lanes for one in spot.stands]
    return [one for one in stands if not any(coat.poured for coat in one.coats)]


def put(view: DeskView, one: Standing, spot: str) -> Verdict:
    goes = Goes(spot, frozenset(coat.coat for coat in one.coats))
    coat = one.coats[0]
    return Judge(view, coat).at(coat.start, goes)


def hard(verdict: Verdict) -> str:
    return " ".join(one.words.words(plain_voice()) for one in verdict.hard)


def free_moves(studio: Studio) -> Iterator[tuple[Standing, str, Verdict]]:
    """Pieces that may be put on another spot of their place, with the verdict."""
    view = view_of(studio)
    for one in to_come(view):
        own = one.coats[0].spot
        for spot in studio.place_of_spot(own).spots:
            verdict = put(view, one, spot.key)
            if spot.key != own and verdict.allowed:
                yield one, spot.key, verdict


def test_a_free_spot_that_is_large_enough_is_allowed_and_breaks_no_rule() -> None:
    studio = planned_once()
    moves = list(islice(free_moves(studio), 6))
    assert moves
    for one, spot, verdict in moves:
        goes = Goes(spot, frozenset(coat.coat for coat in one.coats))
        put_there = partial(put_on_spot, piece=one.piece.key, goes=goes)
        after = put_elsewhere(put_there, "Put it elsewhere").make(studio)
        assert not check_plan(after, kept(after)).broken
        assert not verdict.hard
        keys = {(coat.piece, coat.coat) for coat in one.coats}
        assert {c.spot for c in kept(after).coats if (c.piece, c.coat) in keys} == {spot}
        assert not after.plan_outdated
        assert not after.pins


def test_planning_again_leaves_a_piece_where_it_was_put() -> None:
    studio = planned_once()
    for one, spot, verdict in islice(free_moves(studio), 3):
        after = replace(studio, plan=moved_plan(kept(studio), verdict), plan_outdated=True)
        again = quick_plan(after, kept(studio).start)
        keys = {(coat.piece, coat.coat) for coat in one.coats}
        assert {c.spot for c in again.coats if (c.piece, c.coat) in keys} == {spot}


def test_what_stands_there_is_named() -> None:
    studio = planned_once()
    view = view_of(studio)
    for one in to_come(view):
        for other in to_come(view):
            meet = one.start < (other.end or one.start) and other.start < (one.end or one.start)
            spot = studio.spot(other.coats[0].spot)
            large = spot.holds(one.piece.footprint, one.piece.body_mm + one.piece.cover_mm)
            if one.piece is not other.piece and meet and large:
                verdict = put(view, one, spot.key)
                assert Rule.SPOT in {b.rule for b in verdict.hard}
                assert spot.name in hard(verdict)
                return
    raise AssertionError


def test_a_spot_that_is_too_small_or_too_low_is_said_to_be_so() -> None:
    studio = planned_once()
    one = to_come(view_of(studio))[0]
    small_ones: tuple[tuple[dict[str, Any], str], ...] = (
        ({"length_mm": 20.0, "width_mm": 20.0}, "longer or wider"),
        ({"height_mm": 10.0}, "too high"),
    )
    for size, words in small_ones:
        places = tuple(
            replace(
                place,
                spots=tuple(
                    spot if spot.key == one.coats[0].spot else replace(spot, **size)
                    for spot in place.spots
                ),
            )
            for place in studio.places
        )
        small = replace(studio, places=places)
        other = next(s.key for s in small.spots if s.key != one.coats[0].spot)
        assert words in hard(put(view_of(small), one, other))


def test_a_piece_that_was_poured_on_stays_until_it_can_be_handled() -> None:
    studio = planned_once()
    lanes = spot_lanes(view_of(studio))
    for spot in lanes:
        for one in spot.stands:
            coming = [coat for coat in one.coats if not coat.poured]
            if coming and len(coming) < len(one.coats):
                other = next(s.key for s in studio.spots if s.key != spot.spot.key)
                goes = Goes(other, frozenset(coat.coat for coat in one.coats))
                verdict = Judge(view_of(studio), coming[0]).at(coming[0].start, goes)
                assert "stays where it is" in hard(verdict)
                return
    poured = replace(to_come(view_of(studio))[0], coats=())
    assert not poured.coats


def test_in_another_place_the_clocks_are_those_of_that_place() -> None:
    studio = planned_once()
    boxes = [place for place in studio.places if len(studio.places) > 1][1:]
    assert boxes
    spot, view = boxes[0].spots[0], view_of(studio)
    for one in to_come(view):
        if one.coats[0].spot != spot.key:
            verdict = put(view, one, spot.key)
            (lane,) = (ln for ln in verdict.lanes if ln.piece.key == one.piece.key)
            mine = {coat.coat for coat in one.coats}
            assert {coat.spot for coat in lane.coats if coat.coat in mine} == {spot.key}
