"""The quick plan: every chain at its best place in turn, late orders first again, best kept."""

from __future__ import annotations

import heapq
from dataclasses import dataclass
from enum import Enum
from typing import TYPE_CHECKING

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.craft.tongue import translate
from studio_planner.planning.clocks.clockwork import Clockworks
from studio_planner.planning.keeping.kept_plan import KeptPlan, plan_that_counts
from studio_planner.planning.problem import build_chains
from studio_planner.planning.rounds import Rounds
from studio_planner.planning.saying import said_once
from studio_planner.planning.worth import UP_TO_LATE, hours_late, starts_of

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import datetime

    from studio_planner.craft.plans import Plan, Unplanned
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.problem import Chain
    from studio_planner.planning.rounds import Pass

_PASSES = 4

_PATIENCE = 5.0
"""How much longer than usual is looked ahead when a piece finds no place."""

_SETTLED = (0, 0.0, 0, 0)
"""Nothing left out, late, scuffed or to be tested: only fewer moves would be better."""

_BIG = 60
"""Chains from which on twins are not tried apart, so that a plan stays a matter of seconds."""

_MANY = 40
"""Chains from which on late orders are moved forward until another one is in front.

With fewer of them the first plan is to come at once, and a search finds the better one soon.
"""

_STRIDES = 5
"""How often a late order is moved on, each time twice as far, before it is left where it is."""

_LATE_FIRST = 3
"""Late orders that a thorough plan tries before all others, the latest by weight first."""


class Before(Enum):
    """Which plan counts as the one before, when none is named."""

    KEPT = "the studio's"


def quick_plan(  # noqa: PLR0913 - each is one plain question
    studio: Studio,
    now: datetime,
    until: datetime | None = None,
    *,
    first: Sequence[str] = (),
    passes: int = _PASSES,
    clockworks: Clockworks | None = None,
    before: Plan | Before | None = Before.KEPT,
) -> Plan:
    """Make a plan from `now` on that keeps every hard rule.

    What of the plan before still keeps every rule stays where it was, and only what must moves;
    more moves only for what ranks higher: pieces left out, lateness, scuffed joints and joints
    to test first.

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
    before
        The plan before, None for none. What it says of pieces and coats that are gone does not
        count, and nothing does when all it had still to pour should have been poured by `now`.

    Raises
    ------
    NoPlanPossible
        When there is nothing to plan with (no piece, no spot, no hands, no room), or when no
        piece at all can be planned.
    """
    made = quick_start(
        studio, now, until, first=first, passes=passes, clockworks=clockworks, before=before
    )
    return made.written()


@dataclass(frozen=True, slots=True)
class QuickStart:
    """A quick plan as placements, from which better ones may start.

    `before` is the plan before that counts, `unplanned` what cannot be planned at all.
    """

    rounds: Rounds
    found: Pass
    unplanned: tuple[Unplanned, ...]
    before: Plan | None

    def written(self) -> Plan:
        """The plan of the craft; NoPlanPossible when no piece at all is in it."""
        plan = self.rounds.written(self.found, self.unplanned)
        if not plan.coats:
            raise NoPlanPossible(map(str, said_once(row.reason for row in plan.unplanned)))
        return plan


def quick_start(  # noqa: PLR0913 - as above
    studio: Studio,
    now: datetime,
    until: datetime | None = None,
    *,
    first: Sequence[str] = (),
    passes: int = _PASSES,
    clockworks: Clockworks | None = None,
    before: Plan | Before | None = Before.KEPT,
    thorough: bool = False,
) -> QuickStart:
    """Make a quick plan as `quick_plan` does, but do not write it down yet.

    One that is `thorough` takes several times as long: each late order is tried before all
    others too, which counts where less comes late by it.

    Raises
    ------
    NoPlanPossible
        When there is nothing to plan with.
    """
    require_means(studio)
    old = studio.plan if isinstance(before, Before) else before
    asked = _Asked(
        studio=studio,
        now=now,
        until=until,
        first=tuple(first),
        passes=passes,
        clockworks=clockworks or Clockworks(),
        before=plan_that_counts(studio, old, now),
    )
    chains, unplanned = build_chains(studio, twins=True)
    rounds = asked.rounds(chains)
    best = (
        _made(asked, rounds, chains, patient=True)
        if asked.before is None or asked.first
        else _kept(asked, rounds, chains, asked.before)
    )
    if thorough:
        best = _late_first(asked, chains, best)
    return QuickStart(*best, tuple(unplanned), asked.before)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Asked:
    """What a plan is asked for; `before` is the plan that still counts."""

    studio: Studio
    now: datetime
    until: datetime | None
    first: tuple[str, ...]
    passes: int
    clockworks: Clockworks
    before: Plan | None

    def rounds(self, chains: list[Chain], patience: float = 1.0) -> Rounds:
        """Rounds over chains; with more patience they look further ahead."""
        starts = starts_of(self.before)
        return Rounds(
            self.studio,
            self.now,
            self.until,
            chains,
            self.clockworks,
            patience=patience,
            before=starts,
        )


_Best = tuple["Rounds", "Pass"]


def _kept(asked: _Asked, rounds: Rounds, chains: list[Chain], before: Plan) -> _Best:
    """The plan before as far as it holds, or one made anew where that is better."""
    kept = KeptPlan(asked.studio, before)
    apart = _apart(asked.studio, chains)
    found = rounds.keeping(list(kept.chains(chains, apart)), kept)
    held = rounds.passed(found, kept)
    if held.worth[: len(_SETTLED)] == _SETTLED:
        return rounds, held
    made = _made(asked, rounds, chains, patient=bool(held.stuck))
    # What can be gained may be gained with fewer moves than a plan made anew has.
    held = rounds.passed(rounds.repaired(found, kept, made[1]), kept)
    return made if made[1].worth < held.worth else (rounds, held)


def _made(asked: _Asked, rounds: Rounds, chains: list[Chain], *, patient: bool) -> _Best:
    """The best plan that is made anew; with patience it is looked further for what is stuck."""
    big = len(chains) > _BIG
    strides = _STRIDES if len(chains) > _MANY else 1
    best = rounds.best(chains, asked.first, asked.passes, strides)
    if patient and not all(one.missed for one in best.stuck) and asked.until is None:
        # What finds no place may only need a longer look ahead.
        further = asked.rounds(chains, _PATIENCE)
        found = further.best(chains, asked.first, 1)
        if found.worth < best.worth:
            rounds, best = further, found
    late = best.worth[0] > 0 or best.worth[1] > 0
    apart = _apart(asked.studio, chains) if late and not big else []
    if len(apart) > len(chains):
        found = rounds.best(apart, asked.first, 1)
        best = min(best, found, key=lambda one: one.worth)
    return rounds, best


def _late_first(asked: _Asked, chains: list[Chain], best: _Best) -> _Best:
    """A plan with one of the late orders before all others, where less comes late in it.

    Whatever ranks after that may be worse in it: a search gets there sooner from few moves.
    """
    rounds, found = best
    late = {key: hours for key, hours in hours_late(found.placed).items() if hours > 0}
    tried = [
        rounds.best(chains, (*asked.first, key), asked.passes)
        for key in heapq.nlargest(_LATE_FIRST, late, key=lambda key: late[key])
    ]
    least = min([found, *tried], key=lambda one: one.worth)
    return rounds, least if least.worth[:UP_TO_LATE] < found.worth[:UP_TO_LATE] else found


def _apart(studio: Studio, chains: list[Chain]) -> list[Chain]:
    """The chains of a studio without twins; the same ones where there are none."""
    twins = any(len(chain.pieces) > 1 for chain in chains)
    return build_chains(studio, twins=False)[0] if twins else chains


def require_means(studio: Studio) -> None:
    """NoPlanPossible with the reasons when there is nothing to plan with."""
    missing = [
        (
            studio.pieces,
            translate("stuck", "There is no piece yet: add a piece with its stack of coats."),
        ),
        (studio.people, translate("stuck", "There are no hands yet: say who can work when.")),
        (
            studio.spots,
            translate("stuck", "There is no spot yet: add a level place on the shelf."),
        ),
        (
            studio.resting_place,
            translate("stuck", "There is no room yet: add one with its temperature."),
        ),
    ]
    reasons = [words for thing, words in missing if not thing]
    if reasons:
        raise NoPlanPossible(reasons)
