"""The plainest planner that keeps the rules: whatever was promised first is placed first.

One pass, every chain at its best place among what is planned already, nothing done again. It is
what a maker does with a list of dates, and what the quick plan has to be worth its trouble for.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from studio_planner.planning.clocks.clockwork import Clockworks
from studio_planner.planning.placing.placements import Placement
from studio_planner.planning.problem import build_chains
from studio_planner.planning.rounds import Rounds
from studio_planner.planning.worth import worth_of

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import datetime

    from studio_planner.craft.studio import Studio
    from studio_planner.planning.problem import Chain
    from studio_planner.planning.worth import Worth


def earliest_promise_first(studio: Studio, now: datetime) -> Worth:
    """Plan a studio from `now` on in the order of its dates, and tell what that is worth."""
    chains, _ = build_chains(studio, twins=True)
    placer = Rounds(studio, now, None, chains, Clockworks()).placer()
    placed: list[Placement] = []
    left_out = 0
    for chain in sorted(chains, key=_by_date(studio)):
        found = placer.place(chain)
        if isinstance(found, Placement):
            placer.finisher.book(found)
            placed.append(found)
        else:
            left_out += len(chain.pieces)
    return worth_of(placed, left_out, int(now.timestamp()), {})


def _by_date(studio: Studio) -> Callable[[Chain], float]:
    """When a chain's order is due; what nobody waits for comes last."""

    def due(chain: Chain) -> float:
        if chain.order is None:
            return math.inf
        return chain.order.due(studio.time_zone).timestamp()

    return due
