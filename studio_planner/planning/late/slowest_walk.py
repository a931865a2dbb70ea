"""The soonest pours of an order's slowest chain, with nothing else in the workshop."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.late.soonest import Soonest
from studio_planner.planning.late.waits_said import slowest

if TYPE_CHECKING:
    from studio_planner.planning.late.fitting import Fit
    from studio_planner.planning.late.ladder import Ladder, Rung
    from studio_planner.planning.late.soonest import Wait, Walk

_NAMED_SECONDS = 3600
"""A shorter wait is no reason that is worth a name (our choice)."""


def is_long(wait: Wait) -> bool:
    """Whether a wait is worth a name."""
    return wait.seconds >= _NAMED_SECONDS


def slowest_walk(ladder: Ladder, rung: Rung, fit: Fit) -> Walk | None:
    """Walk the chain that comes last in `fit`, with what a rung allows; None without one.

    What is still to be poured cures where the plan has it, or where pieces rest when the plan
    has it in two places.
    """
    chain = slowest(fit)
    if chain is None or chain.order is None:
        return None
    means = ladder.fitter(rung).empty()
    key = chain.key
    mine = (c for c in ladder.plan.coats if c.piece == key and not c.poured)
    places = {means.place_of_spot[coat.spot] for coat in mine}
    place = places.pop() if len(places) == 1 else means.edges.rest
    return Soonest(ladder.studio, means, chain, place).walk()
