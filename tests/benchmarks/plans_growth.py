"""How the time of a round grows with the coats, against n log n, once the clocks are built."""

from __future__ import annotations

import math
import statistics
from itertools import pairwise
from time import process_time
from typing import TYPE_CHECKING

from studio_planner.planning.clocks.clockwork import Clockworks
from studio_planner.planning.problem import build_chains
from studio_planner.planning.rounds import Rounds
from tests.benchmarks.plans_judging import Row
from tests.planning.benchmark_studios import START, make_studio

if TYPE_CHECKING:
    from collections.abc import Sequence

GROWING = ((75, 5, 4), (150, 5, 8), (300, 5, 16))
SLACK = 1.25
"""How much faster than n log n it may grow before it counts: the measure is noisy."""

ALL = "all"
"""What stands for the size in these rows."""


def growth_rows(seeds: Sequence[int]) -> list[Row]:
    """Judge how a round's time grows."""
    times = [
        statistics.median(_round_seconds(seed, size) for seed in seeds) for size in GROWING
    ]
    coats = [pieces * each for pieces, each, _ in GROWING]
    rows = []
    for (n0, t0), (n1, t1) in pairwise(zip(coats, times, strict=True)):
        bound = SLACK * n1 * math.log(n1) / (n0 * math.log(n0))
        asked = f"n log n and {SLACK - 1:.0%}: {bound:.2f} x"
        measured = f"{t1 / t0:.2f} x ({t0:.2f} to {t1:.2f} s)"
        rows.append(Row(ALL, f"a round, {n0} to {n1} coats", asked, measured, t1 / t0 < bound))
    return rows


def _round_seconds(seed: int, size: tuple[int, int, int]) -> float:
    """One round over all chains with the clocks built: larger studios get fewer rounds."""
    studio = make_studio(seed, *size)
    clockworks = Clockworks()
    chains, _ = build_chains(studio, twins=True)
    rounds = Rounds(studio, START, None, chains, clockworks)
    rounds.best(chains, (), 1)
    begun = process_time()
    rounds.best(chains, (), 1)
    return process_time() - begun
