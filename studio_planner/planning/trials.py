"""Plans of changed studios for late orders: what each change would buy, and what it would cost.

A change that only adds spots or hours leaves the shown plan possible, so the answer for it is
the best of that plan, of that plan with its late orders placed anew, and of one planned from
the start: as a whole it is never worth less than the shown plan. An order may still leave later
in it where the orders together come less late; then the words name that order. Warmth, and
pouring one order first, are no pure gain and are shown as they come out.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import StepKind, Trust
from studio_planner.planning import what_if
from studio_planner.planning.fewer_coats import fewer_coats
from studio_planner.planning.fitting import Fitter, Stacks
from studio_planner.planning.quick import quick_plan
from studio_planner.planning.saying import listed
from studio_planner.planning.shut_windows import shut_at_night
from studio_planner.planning.worth import Worth

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.orders import Order
    from studio_planner.craft.plans import Outcome, Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.clockwork import Clockworks
    from studio_planner.planning.what_if import Tried

_FIRST_TRIED_FOR = 3
"""Late orders for which *pour it before all others* is tried; each costs one plan."""

_MOVED_FOR = 6
"""Late orders that are placed anew between the others, for each change."""

_EVENINGS_FOR = 2
"""Late orders by which the best evening of the week is chosen."""

_MOST_PLANS = 12
"""Plans from the start that are made to explain one plan; a maker waits for them."""

_FEW_PLANS = 6
"""The same in a big studio."""

_BIG = 400
"""Coats to pour from which on a studio is big."""


@dataclass(frozen=True, slots=True)
class Trial:
    """A tried change, and the studio and the plan that it led to (None: none was found).

    `order` is the only order that it is offered to; None: to all. `name` is the change without
    what it costs, `over` the names of simpler changes that it contains.
    """

    words: str
    name: str
    studio: Studio
    plan: Plan | None
    order: str | None = None
    over: tuple[str, ...] = ()

    def outcome(self, order: str) -> Outcome | None:
        """What it means for an order."""
        rows = () if self.plan is None else self.plan.outcomes
        return next((one for one in rows if one.order == order), None)


class Trials:
    """The changes tried for one plan, made one after another as they are asked for."""

    def __init__(self, studio: Studio, plan: Plan, clockworks: Clockworks) -> None:
        """Try changes for the late orders of a plan, the latest by weight first."""
        # Changes are planned from the start, not held to what an older plan had.
        self.studio = replace(studio, plan=None)
        self.plan = plan
        self.clockworks = clockworks
        keys = {one.order: one for one in plan.outcomes if is_late(one)}
        late = [order for order in studio.orders if order.key in keys]
        self._late = sorted(late, key=lambda order: -_hours(keys[order.key]) * order.weight)
        todo = sum(not coat.poured for coat in plan.coats)
        self._left = _FEW_PLANS if todo > _BIG else _MOST_PLANS
        self._worth = plan_worth(studio, plan)
        self._stacks = Stacks(studio)

    def all(self) -> Iterator[Trial]:
        """Every single change, the cheapest first."""
        yield from self._moved_alone()
        yield from self._first()
        evening = self._best_evening()
        for tried in ([evening] if evening else []) + what_if.changes(self.studio):
            if self._left > 0:
                yield self.trial(tried)
        for order in self._late[:_MOVED_FOR]:
            yield from self._fewer(order)

    def joint(self) -> Iterator[Trial]:
        """Several changes at once."""
        for tried in what_if.joint_changes(self.studio):
            if self._left > 0:
                yield self.trial(tried)

    def soonest(self, order: Order) -> Trial:
        """An order alone with tireless hands in a warm room: no change brings it sooner."""
        alone = what_if.with_tireless_hands(what_if.alone(self.studio, order.key))
        studio = what_if.with_warm_room(alone)
        words = "nothing else to pour, hands day and night and a warm room"
        return Trial(words, words, studio, self._quick(studio), order.key)

    def _moved_alone(self) -> Iterator[Trial]:
        fitter = Fitter(self.studio, self.plan, self.clockworks, self._stacks)
        for order in self._late[:_MOVED_FOR]:
            moved = fitter.with_order_moved(order)
            if moved is not None and plan_worth(self.studio, moved) < self._worth:
                words = "pour it where there is room between the others; nothing else moves"
                yield Trial(words, words, self.studio, moved, order.key)

    def _first(self) -> Iterator[Trial]:
        if len(self.studio.orders) < 2:  # noqa: PLR2004 - nothing to go before
            return
        for order in self._late[:_FIRST_TRIED_FOR]:
            plan = self._quick(self.studio, (order.key,))
            name = "pour it before all others"
            words = name + self._cost(plan, order.key)
            self._left -= 1
            yield Trial(words, name, self.studio, plan, order.key)

    def _best_evening(self) -> Tried | None:
        """The evening of the week that helps the latest orders most."""
        found = what_if.evenings(self.studio, self.plan.start)
        return min(found, key=lambda one: self._after_moving(one.studio)[1], default=None)

    def _after_moving(self, studio: Studio, most: int = _EVENINGS_FOR) -> tuple[Plan, Worth]:
        """The shown plan with its late orders placed anew, one by one, in a changed studio."""
        best, worth = self.plan, self._worth
        fitter = Fitter(studio, best, self.clockworks, self._stacks)
        for order in self._late[:most]:
            moved = fitter.after(best).with_order_moved(order)
            value = None if moved is None else plan_worth(studio, moved)
            if moved is not None and value is not None and value < worth:
                best, worth = moved, value
        return best, worth

    def trial(self, tried: Tried) -> Trial:
        """Plan with one change."""
        self._left -= 1
        plan = self._quick(tried.studio)
        if tried.more and (plan is None or plan_worth(tried.studio, plan) >= self._worth):
            plan, _ = self._after_moving(tried.studio, _MOVED_FOR)
        costs = self._shut(tried) if not tried.more else ""
        words = tried.words + self._cost(plan, None, costs)
        return Trial(words, tried.words, tried.studio, plan, over=tried.over)

    def _fewer(self, order: Order) -> Iterator[Trial]:
        for tried in fewer_coats(self.studio, order):
            plan = Fitter(tried.studio, self.plan, self.clockworks).with_order_moved(order)
            yield Trial(tried.words, tried.words, tried.studio, plan, order.key)

    def _quick(self, studio: Studio, first: tuple[str, ...] = ()) -> Plan | None:
        """A changed studio planned from the start, in one round."""
        now = self.plan.start
        try:
            return quick_plan(studio, now, first=first, passes=1, clockworks=self.clockworks)
        except NoPlanPossible:
            return None

    def _shut(self, tried: Tried) -> str:
        count = shut_at_night(tried.studio, self.plan, self.clockworks)
        if not count:
            return ""
        windows = "one window then closes" if count == 1 else f"{count} windows then close"
        return f"{windows} while nobody can work"

    def _cost(self, plan: Plan | None, order: str | None, more: str = "") -> str:
        """What a change does to orders that are no part of it, in brackets."""
        costs = [more] if more else []
        if plan is not None:
            before = {one.order: one for one in self.plan.outcomes}
            worse = [
                one
                for one in plan.outcomes
                if one.order != order and is_late(one) and _later(one, before[one.order])
            ]
            newly = [one.order for one in worse if not is_late(before[one.order])]
            later = [one.order for one in worse if is_late(before[one.order])]
            costs += [f"makes {self._names(newly)} late"] if newly else []
            costs += [f"{self._names(later)} would leave later still"] if later else []
        return f" ({'; '.join(costs)})" if costs else ""

    def _names(self, orders: list[str]) -> str:
        return listed(order.name for order in self.studio.orders if order.key in orders)


def is_late(outcome: Outcome) -> bool:
    """Tell whether an order leaves after its date, or not at all."""
    return outcome.leaves is None or outcome.leaves > outcome.due


def _hours(outcome: Outcome) -> float:
    return float("inf") if outcome.late_hours is None else outcome.late_hours


def _later(one: Outcome, other: Outcome) -> bool:
    if one.leaves is None or other.leaves is None:
        return one.leaves is None and other.leaves is not None
    return one.leaves > other.leaves


def plan_worth(studio: Studio, plan: Plan) -> Worth:
    """A written plan's goals in their order, but for pours moved: all are compared as new."""
    weights = {order.key: order.weight for order in studio.orders}
    late = sum(weights[one.order] * (one.late_hours or 0.0) for one in plan.outcomes)
    spare = studio.settings.spare_hours
    new = [coat for coat in plan.coats if not coat.poured]
    ends = {coat.piece: coat.end for coat in new}
    ends |= {step.piece: step.end for step in plan.steps if step.kind is StepKind.PACK}
    return Worth(
        left_out=len({row.piece for row in plan.unplanned}),
        late=round(late, 6),
        scuffed=sum(coat.joint is Joint.SCUFFED for coat in new),
        tested=sum(c.window is not None and c.window.trust is Trust.TEST_FIRST for c in new),
        moved=0,
        spare=round(sum(max(0.0, spare - (o.spare_hours or 0.0)) for o in plan.outcomes), 6),
        mixes=len({coat.mix for coat in new}),
        ends=sum((end - plan.start).total_seconds() / 3600.0 for end in ends.values()),
    )
