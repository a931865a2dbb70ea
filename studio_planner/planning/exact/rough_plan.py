"""A rough plan: in which days each chain goes through the week, by hands and spots of a day.

Each chain takes one of the ways that it would have alone. Together they need no more hands in a
day than there are, and no more spots in a quarter of one; what else of them is in each other's
way is left open. That is soon searched, and far less late than what is found chain by chain:
which pieces go through which week is settled for all at once.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from studio_planner.planning.exact.rough_model import RoughModel
from studio_planner.planning.exact.ways import Ways
from studio_planner.planning.solver import Search

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.planning.exact.ways import Blocks, Way
    from studio_planner.planning.exact.working_days import WorkingDays
    from studio_planner.planning.placing.placements import Placement
    from studio_planner.planning.placing.placer import Placer

_EFFORT, _BY_CHAINS, _SECONDS = 0.0134, 1.5, 5.0
"""The solver's own work, by which power of the number of chains; it is about a second each, and
so many seconds at the most on a machine gone slow. Twenty chains take one second, sixty up to
six."""


class RoughPlans:
    """Rough plans of the same chains, with more or fewer hands."""

    def __init__(
        self, placer: Placer, days: WorkingDays, stood: Iterable[Placement], blocks: Blocks
    ) -> None:
        """Look for chains as they `stood`, which do so on where they have no other way."""
        self.days = days
        self._placer = placer
        self._blocks = blocks
        self._ways = self._found(list(stood))

    def placed(self, share: float, seed: int) -> list[Placement] | None:
        """A way for each chain, as little late as can be; None when that is not found.

        So large a share of all hands is given at the most.
        """
        rough = RoughModel(self._placer, self.days, self._blocks.paid, self._ways)
        rough.limit_hands(share)
        rough.limit_spots()
        rough.model.aim(rough.late())
        work = _EFFORT * math.pow(len(self._ways), _BY_CHAINS)
        found = rough.found(Search(_SECONDS * work, work, seed=seed, light=True, sums=1))
        return None if found is None else [way.placed for way in found]

    def _found(self, stood: list[Placement]) -> list[list[Way]]:
        ways = Ways(self._placer, self.days)
        until = round(max((one.score[4] for one in stood), default=0))
        found = (
            (one, ways.of(one.chain, until, lasting=self._blocks.lasting)) for one in stood
        )
        return [some or [ways.way(one)] for one, some in found]
