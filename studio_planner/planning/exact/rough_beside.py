"""Rough plans beside the one that stands: a few chains take other ways, all others their own.

What parts of a plan can gain ends where a piece would have to go through another week and
several others give way to it, in days that have nothing else in common. That is seen at once
when only the hands and spots of each day are counted.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.exact.lanes import Lane
from studio_planner.planning.exact.rough_model import RoughModel
from studio_planner.planning.exact.ways import Ways
from studio_planner.planning.solver import Search

if TYPE_CHECKING:
    from random import Random

    from studio_planner.planning.exact.part import Standing
    from studio_planner.planning.exact.ways import Blocks, Way
    from studio_planner.planning.exact.working_days import WorkingDays
    from studio_planner.planning.placing.placements import Placement
    from studio_planner.planning.placing.placer import Placer

    _Named = tuple[str, tuple[int, ...]]
    """A way by the key of its lane and the starts of its coats."""

_SHARES = (0.9, 0.95, 1.0, 1.05)
"""The shares of all hands of a day that may be given: mixes may save more than is thought."""

_FEWEST, _MOST = 2, 6
"""Chains that may take other ways at the most: where more do, a true plan is seldom found."""

_COSTS = (10, 60, 300)
"""The weighted minutes that each of them must gain."""

_LEAST_GAIN = 15
"""The weighted minutes that all of them must gain: parts find what is less."""

_OWN = 0.5
"""How often ways are taken in which a coat lasts no longer than by itself."""

_SECONDS, _WORK = 3.0, 0.6


class RoughBeside:
    """Finds other ways for a few chains, so that less comes late."""

    def __init__(self, placer: Placer, days: WorkingDays, until: int, blocks: Blocks) -> None:
        """Look for ways that begin until an instant."""
        self.days = days
        self._until = until
        self._ways = Ways(placer, days)
        self._placer = placer
        self._blocks = blocks
        self._known: dict[tuple[str, bool], list[Way]] = {}
        self._last: tuple[Lane, ...] = ()
        self._changed: list[_Named] = []
        self._in_vain: set[_Named] = set()

    def lanes(self, standing: Standing, random: Random) -> list[Lane] | None:
        """The lanes of a plan, some of which take another way; None when none gains.

        Asked about the same plan again it leaves out one way of its last answer: nothing has
        come of that so far.
        """
        self._hear_of(standing, random)
        placed = [lane for lane in standing.lanes if lane.placed is not None]
        found = self._solved(placed, round(60 * standing.worth.late), random)
        if found is None:
            self._in_vain.clear()
            return None
        pairs = zip(placed, found, strict=True)
        other = {lane.key: way.placed for lane, way in pairs if way.placed is not lane.placed}
        self._changed = [(key, one.starts) for key, one in other.items()]
        return [
            Lane(lane.chain, other[lane.key]) if lane.key in other else lane
            for lane in standing.lanes
        ]

    def _hear_of(self, standing: Standing, random: Random) -> None:
        """Begin again with a plan that is new; else leave out what was in vain."""
        if self._last is not standing.lanes:
            self._in_vain.clear()
        elif self._changed:
            self._in_vain.add(random.choice(self._changed))
        self._last, self._changed = standing.lanes, []

    def _solved(self, placed: list[Lane], late: int, random: Random) -> list[Way] | None:
        """The ways of lanes that are less late than so many weighted minutes."""
        own = random.random() < _OWN
        ways = [self._of(lane, own=own) for lane in placed]
        rough = RoughModel(self._placer, self.days, self._blocks.paid, ways, stand=True)
        rough.limit_hands(random.choice(_SHARES))
        rough.limit_spots()
        changed = len(ways) - sum(flags[0] for flags in rough.chosen)
        rough.model.at_least(random.randint(_FEWEST, _MOST), changed)
        total = rough.late()
        rough.model.at_least(late - _LEAST_GAIN, total)
        rough.model.aim(total + random.choice(_COSTS) * changed)
        seed = random.randrange(1 << 30)
        return rough.found(Search(_SECONDS, _WORK, seed=seed, light=True, sums=1))

    def _of(self, lane: Lane, *, own: bool) -> list[Way]:
        """The way that a lane takes, and those on other days."""
        assert lane.placed is not None  # noqa: S101 - asked only for such
        days = self._days(lane.placed)
        others = (
            way
            for way in self._all(lane, own=own)
            if self._days(way.placed) != days
            and (lane.key, way.placed.starts) not in self._in_vain
        )
        return [self._ways.way(lane.placed), *others]

    def _days(self, placed: Placement) -> list[int]:
        return [self.days.of(start) for start in placed.starts]

    def _all(self, lane: Lane, *, own: bool) -> list[Way]:
        """All ways of a lane, looked for once."""
        key = lane.key, own
        if key not in self._known:
            lasting = None if own else self._blocks.lasting
            self._known[key] = self._ways.of(lane.chain, self._until, lasting=lasting)
        return self._known[key]
