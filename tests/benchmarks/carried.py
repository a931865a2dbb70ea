"""Plans for pieces that were carried about: python -m tests.benchmarks.carried [COUNT [FIRST]].

Asked: the checker passes every plan of the exact model for studios whose poured pieces were
carried to other spots and into the warm box, at any time. Ends with 1 when one is broken, and
names the seeds; also when the model does not know a quick plan of a studio without a box.
"""

from __future__ import annotations

import sys
from multiprocessing import get_context
from time import perf_counter

from tests.planning.exact.carried_plans import Judged, judged

_COUNT = 1000
_PROCESSES = 2
_CHUNK = 4


def main(count: int = _COUNT, first: int = 0) -> int:
    """Judge them all and say what came out."""
    begun = perf_counter()
    with get_context("spawn").Pool(_PROCESSES) as pool:
        seeds = range(first, first + count)
        found = sorted(pool.imap_unordered(judged, seeds, chunksize=_CHUNK), key=_seed_of)
    broken = [one for one in found if one.broken]
    refused = [one for one in found if one.refused]
    surprising = [one for one in refused if not one.box]
    moved = [one for one in found if one.carried]
    print(f"{count} studios from seed {first}, {perf_counter() - begun:.0f} s")
    print(f"in {len(moved)} pieces were carried, {sum(one.carried for one in moved)} times")
    print(f"plans judged: {sum(one.plans for one in found)}, in studios: {len(broken)} broken")
    print(f"quick plans that the model does not know: {len(refused)},", end=" ")
    print(f"{len(surprising)} of studios without a warm box")
    for one in (*broken, *surprising):
        print(f"  seed {one.seed}: {one.broken or 'the model does not know the quick plan'}")
    return 1 if broken or surprising else 0


def _seed_of(one: Judged) -> int:
    return one.seed


if __name__ == "__main__":
    sys.exit(main(*(int(text) for text in sys.argv[1:])))
