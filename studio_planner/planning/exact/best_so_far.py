"""The best plan that was found so far, and below which no plan can get, goal by goal."""

from __future__ import annotations

from threading import Lock
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal
from studio_planner.planning.exact.goals import in_hours
from studio_planner.planning.exact.sharing import least_mixes
from studio_planner.planning.worth import by_goal, goals_of

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from studio_planner.craft.places import Spot
    from studio_planner.craft.plans import GoalValue
    from studio_planner.planning.exact.lanes import Lane
    from studio_planner.planning.exact.part import Parts, Standing


class BestSoFar:
    """A standing plan that several threads improve, each taking `lock` while it does."""

    def __init__(self, parts: Parts, standing: Standing) -> None:
        """Start from a plan; what each piece needs by itself bounds what all can get."""
        self.parts = parts
        self.standing = standing
        self.lock = Lock()
        self._bounds: dict[Goal, float] = {}
        lanes = standing.lanes
        self.bound(Goal.LEFT_OUT, _without_a_spot(lanes, parts.frame.studio.spots))
        orders = {lane.chain.order.key: lane.chain.order for lane in lanes if lane.chain.order}
        least = sum(parts.alone_late(lanes, order) for order in orders.values())
        self.bound(Goal.LATENESS, least)
        self.bound(Goal.MIXES, least_mixes(lanes))
        self.bound(Goal.ENDS, parts.alone_ends(lanes))

    def offer(self, standing: Standing | None) -> bool:
        """Take a plan if it is worth more; tell whether it was."""
        if standing is None or not standing.worth < self.standing.worth:
            return False
        self.standing = standing
        return True

    def bound(self, goal: Goal, bound: float) -> None:
        """Keep a bound, in the model's units, on a goal whose earlier ones are all met."""
        known = in_hours(goal, bound)
        value = by_goal(self.standing.worth)[goal]
        # What is met to less than a unit is met.
        known = value if known > value - in_hours(goal, 1) else known
        self._bounds[goal] = max(self._bounds.get(goal, 0.0), known)

    def least(self, goal: Goal) -> int:
        """Below what a goal cannot get, in the model's units."""
        unit = in_hours(goal, 1)
        return round(self._bounds.get(goal, 0.0) / unit)

    @property
    def goals(self) -> tuple[GoalValue, ...]:
        """What the plan is worth, with the bounds that hold."""
        return goals_of(self.standing.worth, self._bounds)

    @property
    def met(self) -> set[Goal]:
        """Goals that cannot get better."""
        return {row.goal for row in self.goals if row.proved}

    @property
    def may_be_less_late(self) -> bool:
        """Whether a plan could exist that is less late."""
        return Goal.LATENESS not in self.met

    @property
    def proved(self) -> bool:
        """Whether nothing can be better any more."""
        return all(row.proved for row in self.goals)


def _without_a_spot(lanes: Iterable[Lane], spots: Sequence[Spot]) -> int:
    """How many pieces that are to be poured on lie on no spot: no plan has a place for them."""
    pieces = (piece for lane in lanes if lane.new_coats for piece in lane.chain.pieces)
    return sum(not any(piece.fits(spot) for spot in spots) for piece in pieces)
