"""Plays random histories of reminders: python -m tests.benchmarks.reminders [COUNT [FIRST]].

Asked: 10,000 histories with nothing lost, nothing told once it was acknowledged, and at most
one repeat for each kill. Ends with 1 when that is missed, and names the seeds.
"""

from __future__ import annotations

import sys
from dataclasses import dataclass
from multiprocessing import get_context
from time import perf_counter

from tests.services.reminding.expected import Unexpected
from tests.services.reminding.played import History

_COUNT = 10_000
_PROCESSES = 2
_CHUNK = 50
_MOST_NAMED = 20


@dataclass(frozen=True)
class Outcome:
    """What one history came to."""

    seed: int
    told: int
    kills: int
    repeats: int
    broken: str = ""


def outcome_of(seed: int) -> Outcome:
    """Play one history."""
    history = History(seed)
    expected = history.world.expected
    try:
        history.play()
    except Unexpected as error:
        return Outcome(seed, expected.rung, expected.kills, expected.repeats, str(error))
    return Outcome(seed, expected.rung, expected.kills, expected.repeats)


def main(count: int = _COUNT, first: int = 0) -> int:
    """Play them all and say what came out."""
    begun = perf_counter()
    with get_context("spawn").Pool(_PROCESSES) as pool:
        seeds = range(first, first + count)
        outcomes = list(pool.imap_unordered(outcome_of, seeds, chunksize=_CHUNK))
    broken = [one for one in outcomes if one.broken]
    told = sum(one.told for one in outcomes)
    kills = sum(one.kills for one in outcomes)
    repeats = sum(one.repeats for one in outcomes)
    print(f"{count} histories from seed {first}, {perf_counter() - begun:.0f} s")
    print(f"notices shown {told}, kills {kills}, repeats {repeats} (each marked)")
    print(f"histories in which something was lost, doubled or told too late: {len(broken)}")
    for one in broken[:_MOST_NAMED]:
        print(f"  seed {one.seed}: {one.broken}")
    return 1 if broken else 0


if __name__ == "__main__":
    sys.exit(main(*map(int, sys.argv[1:])))
