"""How fast a pour in the hand is judged and drawn; run it by hand, it is no test.

    python -m tests.benchmarks.moves

Moves every pour of the planned sample by steps of five minutes over five hours each way and
prints how long one step takes: judging it, and working out all that is drawn of its lane
(asked: typically under 16 ms). Exit 1 when the median is more.
"""

from __future__ import annotations

import statistics
from datetime import timedelta
from time import perf_counter

from studio_planner.services.desk import DeskView
from studio_planner.services.moving.judging import Judge
from studio_planner.services.ribbons import Ribbon
from tests.services.small_studios import kept, planned_once

MILLISECONDS = 16.0
STEPS = 60
_THOUSAND = 1000.0


def main() -> int:
    """Measure and print; 1 when a step typically takes too long."""
    studio = planned_once()
    view = DeskView(studio, kept(studio).start)
    judged: list[float] = []
    drawn: list[float] = []
    taken: list[float] = []
    for coat in kept(studio).coats:
        if coat.poured:
            continue
        begun = perf_counter()
        judge = Judge(view, coat)
        judge.at(coat.start)
        taken.append(perf_counter() - begun)
        for step in range(-STEPS, STEPS + 1):
            begun = perf_counter()
            verdict = judge.at(coat.start + timedelta(minutes=5 * step))
            judged.append(perf_counter() - begun)
            begun = perf_counter()
            for lane in judge.shown(verdict):
                for bar in lane.bars:
                    if isinstance(bar, Ribbon):
                        bar.ask_clocks(fine=True)
            drawn.append(perf_counter() - begun)
    _say("taking it in hand", taken)
    _say("judging a step", judged)
    _say("clocks for drawing it", drawn)
    whole = [one + other for one, other in zip(judged, drawn, strict=True)]
    _say("both", whole)
    return int(statistics.median(whole) * _THOUSAND > MILLISECONDS)


def _say(what: str, seconds: list[float]) -> None:
    found = sorted(seconds)
    median, late = statistics.median(found), found[int(0.95 * (len(found) - 1))]
    print(
        f"{what:24} median {median * _THOUSAND:6.2f} ms, 95 % {late * _THOUSAND:6.2f} ms, "
        f"most {found[-1] * _THOUSAND:6.2f} ms"
    )


if __name__ == "__main__":
    raise SystemExit(main())
