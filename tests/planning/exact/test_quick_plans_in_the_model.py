"""What the quick planner places is an answer of the exact model: they follow the same rules."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from datetime import timedelta

import pytest
from hypothesis import HealthCheck, given, settings

from studio_planner.craft.log import EntryKind, LogEntry, Poured
from studio_planner.planning.checker import check_plan
from studio_planner.planning.exact.hints import Hints
from studio_planner.planning.exact.part import Freedom
from studio_planner.planning.exact.search import Effort, PlanSearch
from studio_planner.planning.quick import quick_start
from studio_planner.planning.solver import Status
from tests.planning.benchmark_studios import START, make_studio
from tests.planning.exact.frames import (
    examples,
    fixed_at,
    sanded_at_once,
    search_of,
    warmed_from_above,
)
from tests.planning.studios import Situation, studios


@pytest.mark.parametrize("as_placed", [False, True])
def test_a_quick_plan_fixed_by_its_hints_is_an_answer_of_the_model(*, as_placed: bool) -> None:
    seen: Counter[str] = Counter()

    @settings(suppress_health_check=list(HealthCheck), max_examples=examples(12))
    @given(studios())
    def judge(situation: Situation) -> None:
        search = search_of(situation.studio, situation.start)
        if search is None or sanded_at_once(search) or warmed_from_above(search):
            return
        lanes = search.best.standing.lanes
        placed = frozenset(at for at, lane in enumerate(lanes) if lane.placed is not None)
        freedom = Freedom(placed, as_placed=as_placed)
        draft = search.best.parts.draft(search.best.standing, freedom)
        assert draft is not None
        answer = fixed_at(draft, Hints(draft))
        seen[answer.status] += 1
        assert answer.status is not Status.IMPOSSIBLE

    judge()
    assert seen[Status.PROVED] >= sum(seen.values()) - 1


def test_each_lane_of_a_quick_plan_may_stay_while_all_others_do() -> None:
    @settings(suppress_health_check=list(HealthCheck), max_examples=examples(5))
    @given(studios())
    def judge(situation: Situation) -> None:
        search = search_of(situation.studio, situation.start)
        if search is None or sanded_at_once(search) or warmed_from_above(search):
            return
        for at, lane in enumerate(search.best.standing.lanes):
            if lane.placed is not None:
                draft = search.best.parts.draft(search.best.standing, Freedom(frozenset([at])))
                assert draft is not None
                assert fixed_at(draft, Hints(draft)).status is not Status.IMPOSSIBLE

    judge()


def test_a_quick_plan_of_a_realistic_studio_is_an_answer_and_worth_the_same() -> None:
    search = PlanSearch(quick_start(make_studio(3, 12, 4, 2), START))
    lanes = search.best.standing.lanes
    draft = search.best.parts.draft(search.best.standing, Freedom(frozenset(range(len(lanes)))))
    assert draft is not None
    answer = fixed_at(draft, Hints(draft))
    assert answer.status is Status.PROVED


def test_poured_pieces_that_were_carried_onto_one_spot_take_it_once() -> None:
    studio = make_studio(3, 8, 4, 1)
    here, there, *_ = studio.spots
    pours = tuple(
        Poured(
            piece=piece.key,
            coat=piece.stack[0].key,
            start=START - timedelta(hours=2),
            end=START - timedelta(hours=1),
            spot=spot.key,
        )
        for piece, spot in zip(studio.pieces, (here, there, there), strict=False)
    )
    moves = tuple(
        LogEntry(
            number=number,
            kind=EntryKind.MOVED,
            at=START,
            written=START,
            piece=pour.piece,
            spot=here.key,
        )
        for number, pour in enumerate(pours[1:], start=1)
    )
    spots = replace(studio.places[0], spots=(here, there))
    studio = replace(studio, places=(spots,), poured=pours, log=moves)
    search = PlanSearch(quick_start(studio, START))
    placed = frozenset(
        at for at, lane in enumerate(search.best.standing.lanes) if lane.placed is not None
    )
    draft = search.best.parts.draft(search.best.standing, Freedom(placed))
    assert draft is not None
    assert fixed_at(draft, Hints(draft)).status is not Status.IMPOSSIBLE
    search.run(Effort(600.0, 3, 1), lambda _: None, lambda: False)
    assert not check_plan(studio, search.plan()).broken


def test_many_twins_that_share_their_mixes_are_an_answer_of_the_model() -> None:
    studio = make_studio(3, 20, 3, 1)
    first = studio.pieces[0]
    stack = tuple(replace(one, setup_minutes=20, piece_minutes=10) for one in first.stack)
    twins = tuple(
        replace(first, key=f"twin{n}", name=f"Twin {n}", count=1, stack=stack) for n in range(6)
    )
    order = replace(studio.orders[0], pieces=tuple(twin.key for twin in twins))
    search = PlanSearch(quick_start(replace(studio, pieces=twins, orders=(order,)), START))
    assert search.best.standing.worth.mixes == len(stack)
    every = frozenset(range(len(twins)))
    for freedom in (Freedom(every), Freedom(every, all_mixes=True)):
        draft = search.best.parts.draft(search.best.standing, freedom)
        assert draft is not None
        assert fixed_at(draft, Hints(draft)).status is not Status.IMPOSSIBLE
