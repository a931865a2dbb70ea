"""A late piece may be touch-tested or sanded; no joints that were not tried are better."""

from __future__ import annotations

from collections import Counter

from studio_planner.planning.clocks.clockwork import Clockworks
from studio_planner.planning.placing.placements import Placement
from studio_planner.planning.problem import build_chains
from studio_planner.planning.rounds import Rounds
from tests.planning.benchmark_studios import START, hurried, make_studio


def test_no_joints_make_a_late_piece_any_better() -> None:
    seen: Counter[str] = Counter()
    for seed in range(3):
        _judge(seed, seen)
    assert seen["sanded"]
    assert seen["touch-tested"]


def _judge(seed: int, seen: Counter[str]) -> None:
    studio = hurried(make_studio(seed, 40, 5, 4), 7)
    chains, _ = build_chains(studio, twins=True)
    placer = Rounds(studio, START, None, chains, Clockworks()).placer()
    for chain in chains:
        found = placer.place(chain)
        assert isinstance(found, Placement)
        late, scuffed, tested, *_ = found.score
        for allow in placer.more_joints(chain) if late else ():
            other = placer.try_on(chain, found.laid.grounds[-1], allow)
            assert isinstance(other, Placement)
            assert found.score <= other.score
        seen["sanded" if scuffed else "touch-tested" if tested else "safe"] += 1
        placer.finisher.book(found)
