"""Alike spots and people are given out so that nobody has two things, and all keep theirs."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from itertools import pairwise
from typing import TYPE_CHECKING

from studio_planner.craft.log import Poured
from studio_planner.planning.exact.assigning import assigned
from studio_planner.planning.exact.search import PlanSearch
from studio_planner.planning.exact.standing_plan import Takings
from studio_planner.planning.quick import quick_start
from tests.planning.benchmark_studios import START, make_studio

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.planning.exact.answers import Rough
    from studio_planner.planning.exact.frame import Frame
    from studio_planner.planning.placing.placements import Placement


def _roughs(pieces: int) -> tuple[Frame, list[Rough], Sequence[Placement]]:
    """A quick plan without its very spots and people, and the plan itself."""
    search = PlanSearch(quick_start(make_studio(3, pieces, 4, 2), START))
    standing = search.best.standing
    frame = search.best.parts.frame
    return frame, Takings(frame).roughs(standing.lanes, ()), standing.placed


def _forgetful(roughs: list[Rough]) -> list[Rough]:
    """The same, as if nothing had had a spot or a person before."""
    return [replace(rough, lane=replace(rough.lane, placed=None)) for rough in roughs]


def test_everything_keeps_the_spot_and_the_person_it_had() -> None:
    frame, roughs, placed = _roughs(24)
    again = assigned(frame, roughs)
    assert again is not None
    for before, after in zip(placed, again, strict=True):
        assert before.people == after.people
        assert [g.spots for g in before.laid.grounds] == [g.spots for g in after.laid.grounds]
        assert before.packed == after.packed


def test_without_a_past_no_spot_holds_two_pieces_at_once() -> None:
    frame, roughs, _ = _roughs(24)
    found = assigned(frame, _forgetful(roughs))
    assert found is not None
    stays: dict[str, list[tuple[int, int, str]]] = {}
    for one in found:
        for index, start in enumerate(one.starts):
            last = index + 1 == len(one.starts)
            until = frame.finisher.freed(one.laid, index)
            until = until if last else min(until, one.starts[index + 1])
            key = one.chain.pieces[0].key
            for spot in one.laid.grounds[index].spots:
                stays.setdefault(spot, []).append((start, until, key))
    for spans in stays.values():
        for before, after in pairwise(sorted(spans)):
            assert before[1] <= after[0] or before[2] == after[2]


def test_without_a_past_nobody_does_two_things_at_once() -> None:
    frame, roughs, _ = _roughs(24)
    found = assigned(frame, _forgetful(roughs))
    assert found is not None
    work: dict[str, set[tuple[int, int]]] = {}
    for one in found:
        for index, start in enumerate(one.starts):
            task = one.chain.tasks[index]
            span = (start - task.lead, start + task.block)
            work.setdefault(one.people[index], set()).add(span)
        for pack in one.packed:
            work.setdefault(pack.person, set()).add((pack.start, pack.end))
    for spans in work.values():
        assert all(before[1] <= after[0] for before, after in pairwise(sorted(spans)))


def test_more_at_once_than_there_are_spots_is_no_plan() -> None:
    frame, roughs, _ = _roughs(24)
    spots = sum(len(alike.spots) for alike in frame.choices.spots)
    first = roughs[0]
    crowd = [replace(first, lane=replace(first.lane, placed=None)) for _ in range(spots + 1)]
    assert assigned(frame, crowd) is None


def test_nobody_gets_a_spot_on_which_a_piece_without_a_place_was_poured() -> None:
    studio = make_studio(3, 12, 4, 2)
    piece, spot = studio.pieces[0], studio.spots[0]
    pour = Poured(
        piece=piece.key,
        coat=piece.stack[0].key,
        start=START - timedelta(hours=1),
        end=START,
        spot=spot.key,
    )
    search = PlanSearch(quick_start(replace(studio, poured=(pour,)), START))
    frame = search.best.parts.frame
    lanes = [
        replace(lane, placed=None) if lane.key == piece.key else lane
        for lane in search.best.standing.lanes
    ]
    takings = Takings(frame)
    held = takings.settled(lanes, ()).lying[spot.key]
    assert int(pour.start.timestamp()) in {start for start, _ in held}
    found = assigned(frame, _forgetful(takings.roughs(lanes, ())))
    assert found is not None
    until = next(end for start, end in held if start == int(pour.start.timestamp()))
    for one in found:
        for start, ground in zip(one.starts, one.laid.grounds, strict=True):
            assert start >= until or spot.key not in ground.spots
