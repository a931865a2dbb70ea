"""The quick plan: every chain at its best place in turn, late orders first again, best kept."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.planning.clockwork import Clockworks
from studio_planner.planning.problem import build_chains
from studio_planner.planning.rounds import Rounds

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import datetime

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio

_PASSES = 4

_PATIENCE = 5.0
"""How much longer than usual is looked ahead when a piece finds no place."""

_BIG = 60
"""Chains from which on fewer rounds are made, so that a plan stays a matter of seconds."""


def quick_plan(  # noqa: PLR0913 - each is one plain question
    studio: Studio,
    now: datetime,
    until: datetime | None = None,
    *,
    first: Sequence[str] = (),
    passes: int = _PASSES,
    clockworks: Clockworks | None = None,
) -> Plan:
    """Make a plan from `now` on that keeps every hard rule.

    Parameters
    ----------
    studio
        The studio; what it has poured stays as it is.
    now
        Aware instant; nothing new starts before it.
    until
        Pours start before it; None lets everything be planned to its end.
    first
        Keys of orders that go before all others.
    passes
        Rounds of putting late orders first, at the most.
    clockworks
        Clocks to use again from plans of studios in the same air.

    Raises
    ------
    NoPlanPossible
        When there is nothing to plan with (no piece, no spot, no hands, no room), or when no
        piece at all can be planned.
    """
    _require_means(studio)
    chains, unplanned = build_chains(studio, twins=True)
    clocks = clockworks or Clockworks()
    rounds = Rounds(studio, now, until, chains, clocks)
    big = len(chains) > _BIG
    best = rounds.best(chains, first, min(passes, 2) if big else passes)
    if best.stuck and until is None:
        # What finds no place may only need a longer look ahead.
        patient = Rounds(studio, now, until, chains, clocks, patience=_PATIENCE)
        found = patient.best(chains, first, 1)
        if found.worth < best.worth:
            rounds, best = patient, found
    late = best.worth[0] > 0 or best.worth[1] > 0
    apart = build_chains(studio, twins=False)[0] if late and not big else []
    if len(apart) > len(chains):
        best = min(best, rounds.best(apart, first, 1), key=lambda found: found.worth)
    plan = rounds.written(best, unplanned)
    if not plan.coats:
        raise NoPlanPossible(row.reason for row in plan.unplanned)
    return plan


def _require_means(studio: Studio) -> None:
    missing = [
        (studio.pieces, "There is no piece yet: add a piece with its stack of coats."),
        (studio.people, "There are no hands yet: say who can work when."),
        (studio.spots, "There is no spot yet: add a level place on the shelf."),
        (studio.resting_place, "There is no room yet: add one with its temperature."),
    ]
    reasons = [words for thing, words in missing if not thing]
    if reasons:
        raise NoPlanPossible(reasons)
