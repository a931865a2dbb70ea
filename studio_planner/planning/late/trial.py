"""A change that was tried for late orders, in words: what it is, and what it costs others."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.saying import SILENT, Saying, joined, saying
from studio_planner.planning.saying import listed

if TYPE_CHECKING:
    from studio_planner.craft.plans import Outcome, Plan
    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True)
class Trial:
    """A tried change, and the studio and the plan that it led to (None: none was found).

    `order` is the only order that it is offered to; None: to all. `over` are the names of
    simpler changes that it contains. `cost` is what it costs besides; `newly` are the orders
    that it makes late, `later` those that are late and would leave later still. With a `weight`
    of at least so much, planning prefers that order so.
    """

    name: Saying
    studio: Studio
    plan: Plan | None
    order: str | None = None
    over: tuple[Saying, ...] = ()
    cost: Saying = SILENT
    newly: tuple[str, ...] = ()
    later: tuple[str, ...] = ()
    weight: int | None = None

    def words(self, order: str) -> Saying:
        """The change, and in brackets what it costs others than the order that is told."""
        newly, later = self._names(self.newly, order), self._names(self.later, order)
        costs = [self.cost] if self.cost else []
        costs += [saying("late", "makes {names} late", names=newly)] if newly else []
        costs += (
            [saying("late", "{names} would leave later still", names=later)] if later else []
        )
        if self.weight is not None:
            costs.append(
                saying(
                    "late",
                    "it is planned so once its being late counts {weight}",
                    weight=self.weight,
                )
            )
        if not costs:
            return self.name
        return joined(self.name, joined("(", joined(*costs, between="; "), ")", between=""))

    def _names(self, orders: tuple[str, ...], told: str) -> Saying:
        names = [o.name for o in self.studio.orders if o.key in orders and o.key != told]
        return listed(names) if names else SILENT

    def outcome(self, order: str) -> Outcome | None:
        """What it means for an order."""
        rows = () if self.plan is None else self.plan.outcomes
        return next((one for one in rows if one.order == order), None)
