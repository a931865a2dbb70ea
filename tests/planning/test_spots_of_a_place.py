"""A piece goes where the best of all spots would have it, though few of them are looked at."""

from __future__ import annotations

import pytest

from studio_planner.planning.placing.chain_times import Allow
from studio_planner.planning.placing.placements import Placement
from studio_planner.planning.quick import quick_start
from tests.planning.benchmark_studios import START, benchmark_studio


@pytest.mark.parametrize(("size", "seed"), [("S", 0), ("M", 0), ("M", 4)])
def test_no_spot_tried_by_itself_has_a_better_place_for_a_piece(size: str, seed: int) -> None:
    start = quick_start(benchmark_studio(size, seed), START)
    placer = start.rounds.placer()
    tried = 0
    for one in start.found.placed:
        each = [
            placer.try_on(one.chain, ground, Allow())
            for grounds in placer.grounds(one.chain)
            for ground in grounds
        ]
        tried += len(each)
        found = placer.place(one.chain)
        assert isinstance(found, Placement)
        scores = [other.score for other in each if isinstance(other, Placement)]
        assert not scores or found.score <= min(scores)
        placer.finisher.book(found)
    assert tried > len(start.found.placed)
