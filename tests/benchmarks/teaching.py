"""Whether touch tests teach the truth; run it by hand, it is no test.

    python -m tests.benchmarks.teaching [RUNS]

2,000 seeded studios (`tests/science/touching.py`) touch the films of one to six pours three to
fourteen times, in rooms that go up and down, beside sheets of one to four figures. Truths are
drawn from the prior. Exit 1 unless the law lies in its stated band in 90 % +- 3 % of them, and
one wild test beside seven honest ones, wrong by any factor, moves the likely time by no more
than a tenth.
Reported beside it: the next pour, by the lesson and by the taught law at other temperatures;
truths two deviations off; many tests, no wild test, twice the wild ones, pours that deviate
twice as much.
"""

from __future__ import annotations

import statistics
import sys
from dataclasses import replace
from typing import TYPE_CHECKING

from tests.science.taught_runs import drawn_run, moved_by_wild, share
from tests.science.touching import SETTINGS, Maker, drawn_maker

if TYPE_CHECKING:
    from collections.abc import Callable
    from random import Random

    from studio_planner.science.teaching_pours import TeachingSettings

RUNS = 2000
ASKED, EITHER_WAY = 0.90, 0.03
MOST_MOVED = 0.10
WILD_FACTORS = (0.3, 0.5, 0.67, 0.75, 0.85, 0.95, 1.05, 1.2, 1.35, 1.5, 2.0, 3.0)


def _many(random: Random) -> Maker:
    return Maker(random.randint(8, 20), 40)


def _with(settings: TeachingSettings) -> Callable[[Random], Maker]:
    return lambda random: replace(drawn_maker(random), settings=settings)


def _row(
    name: str,
    runs: int,
    maker: Callable[[Random], Maker] = drawn_maker,
    away: float | None = None,
) -> float:
    found = [drawn_run(seed, maker=maker, away=away) for seed in range(runs)]
    law = share(run.law for run in found)
    others = share(run.next_pour for run in found), share(run.elsewhere for run in found)
    width = statistics.median(run.width for run in found)
    miss = statistics.median(run.miss for run in found)
    cells = [f"{value:9.1%}" for value in (law, *others, width, miss)]
    sys.stdout.write(f"{name:34}{runs:6}{''.join(cells)}\n")
    sys.stdout.flush()
    return law


def _worst_wild(studios: int) -> float:
    """The most by which one wild test moves the likely time, and what it was; told."""
    worst, told = 0.0, ""
    for seed in range(studios):
        for factor in WILD_FACTORS:
            for same_pour in (False, True):
                moved = moved_by_wild(seed, factor, same_pour=same_pour)
                if moved > worst:
                    worst = moved
                    told = f"wrong by {factor:g}, studio {seed}"
    sys.stdout.write(f"one wild test of eight moves likely by {worst:.1%} at most: {told}\n")
    return worst


def main(arguments: list[str]) -> int:
    """Print the table; 1 when the band does not hold what it says."""
    runs = int(arguments[0]) if arguments else RUNS
    heads = ("law", "pour", "elsewh.", "width", "miss")
    sys.stdout.write(f"{'truths':34}{'runs':>6}{''.join(f'{head:>9}' for head in heads)}\n")
    law = _row("drawn from the prior", runs)
    few = max(runs // 4, 1)
    _row("forty tests", few, _many)
    _row("two deviations off", few, away=2.0)
    _row("no wild test", few, _with(replace(SETTINGS, wild_share=0.0)))
    _row("twice the wild tests", few, _with(replace(SETTINGS, wild_share=0.2)))
    _row("pours twice as far apart", few, _with(replace(SETTINGS, pour_sd=0.06)))
    wild = _worst_wild(max(runs // 40, 1))
    return int(abs(law - ASKED) > EITHER_WAY or wild > MOST_MOVED)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
