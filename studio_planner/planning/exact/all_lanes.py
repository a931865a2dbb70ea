"""Frees all lanes of a plan at once, each coat near where it stands.

So little room makes a model of a hundred coats that is soon searched, and what is gained by
many small moves together is found at once: mixes shared, joints made safe, and most of all
pours that go back to where the maker expects them.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal
from studio_planner.planning.exact.goals import quantity_of
from studio_planner.planning.exact.hints import Hints
from studio_planner.planning.exact.part import Freedom
from studio_planner.planning.exact.tries import MUCH, Try, aim

if TYPE_CHECKING:
    from collections.abc import Collection
    from random import Random

    from studio_planner.planning.exact.draft import Draft
    from studio_planner.planning.exact.part import Parts, Standing
    from studio_planner.planning.solver import Quantity

MOST_COATS = 130
"""New coats up to which all lanes of a studio are soon searched together. Only a plan near a
foreseen one is found for more, and takes long."""

_AT_FIRST = 0.3
"""How much less work is put into sharing mixes for the first time than into a part: nearly all
are found at once."""


_STRICT = {
    Goal.LATENESS: 10**6 * MUCH,
    Goal.SCUFFED: 10**4 * MUCH,
    Goal.TESTED: 100 * MUCH,
    Goal.MOVED: MUCH,
}
"""What each goal counts where some are to be better at once; lateness by the slot. Those that
follow are left to parts: with them it takes twice as long (measured)."""

SOON = (Goal.LATENESS, Goal.SCUFFED, Goal.TESTED, Goal.MOVED)
"""Those that all lanes together soon gain in."""

FIRST_DAYS, FEWEST_DAYS, _MOST_DAYS = 0.5, 0.1, 4.0
_WIDER, _NARROWER = 2.0, 0.6
_LEAST_OFTEN, _IN_VAIN = 0.05, 0.4


@dataclass(slots=True)
class Together:
    """How many days coats may go when all lanes are freed, and how often they are.

    As far as is still searched to the end; and less often after each time that it was not.
    """

    days: float = FIRST_DAYS
    usual: float = 1.0
    """How often while steps gain."""
    often: float = 1.0
    mixes: bool = True
    """Whether they may share mixes anew, which takes longer: every other time."""

    def drawn(self, random: Random) -> bool:
        """Whether it is their turn."""
        if random.random() >= self.often:
            return False
        self.mixes = not self.mixes
        return True

    def learn(self, *, gained: bool, done: bool) -> None:
        """Hear whether the plan got better, and whether all was searched to the end."""
        if gained:
            self.often = self.usual
        elif done and self.days < _MOST_DAYS:
            self.days *= _WIDER
        else:
            self.days = max(FEWEST_DAYS, _NARROWER * self.days)
            self.often = max(_LEAST_OFTEN, _IN_VAIN * self.often)


class AllLanes:
    """Frees all lanes of one studio's plans."""

    def __init__(self, parts: Parts) -> None:
        """Free the lanes of these parts."""
        self._parts = parts

    def sharing(self, standing: Standing) -> Try | None:
        """All lanes near where they are; each coat gives way a little to share a mix."""
        lanes = all_placed(standing)
        draft = self._parts.draft(standing, Freedom(lanes, beside=lanes, all_mixes=True))
        if draft is None:
            return None
        aim(self._parts, draft, [standing.lanes[at] for at in sorted(lanes)], Goal.MIXES)
        draft.model.start_at(Hints(draft).values.values())
        return Try(Goal.MIXES, standing, lanes, draft, effort=_AT_FIRST, replaces=True)

    def a_little(
        self, standing: Standing, days: float, seed: int, *, all_mixes: bool
    ) -> Try | None:
        """All lanes near where they are, or where the plan before had their coats."""
        freedom = Freedom(all_placed(standing), days, all_mixes=all_mixes, back=True)
        return self._back(standing, freedom, seed)

    def homeless(self, standing: Standing, seed: int, lanes: Collection[int]) -> Try | None:
        """Some lanes anywhere; all others stay, or go back to where the plan before had them.

        But not on their spots: what is in the way there gives way to another one.
        """
        everywhere = all_placed(standing)
        others = everywhere.difference(lanes)
        freedom = Freedom(everywhere, beside=others, beside_days=0.0, back=True)
        return self._back(standing, freedom, seed, Goal.MOVED)

    def _back(
        self, standing: Standing, freedom: Freedom, seed: int, goal: Goal = Goal.LATENESS
    ) -> Try | None:
        """All goals together, from where all lanes are."""
        draft = self._parts.draft(standing, freedom)
        if draft is None:
            return None
        draft.model.aim(_strictly(draft))
        draft.model.start_at(Hints(draft).values.values())
        draft.model.as_it_is = draft.model.halves = True
        return Try(goal, standing, freedom.lanes, draft, seed, replaces=True)


def _strictly(draft: Draft) -> Quantity:
    total: Quantity = 0
    for goal, weight in _STRICT.items():
        unit = draft.grid.step if goal is Goal.LATENESS else 1
        total += weight // unit * quantity_of(draft, goal)
    return total


def all_placed(standing: Standing) -> frozenset[int]:
    """All lanes that have a place."""
    return frozenset(at for at, lane in enumerate(standing.lanes) if lane.placed)
