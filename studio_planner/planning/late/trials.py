"""Plans of changed studios for late orders: what each change would buy, and what it would cost.

A change that only adds spots or hours leaves the shown plan possible, so the answer for it is
the best of that plan, of that plan with its late orders placed anew, and of one planned from
the start: as a whole it is never worth less than the shown plan. An order may still leave later
in it where the orders together come less late; then the words name that order. Warmth is no
pure gain and is shown as it comes out. What needs no change at all, only another order of
pouring, is a plan of the studio as it is: where it is better, it is to be taken (`better`).
"""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.craft.orders import MOST_WEIGHT
from studio_planner.craft.saying import SILENT, Saying, saying
from studio_planner.planning.keeping.kept_plan import plan_that_counts
from studio_planner.planning.late import what_if
from studio_planner.planning.late.fewer_coats import fewer_coats
from studio_planner.planning.late.fitting import Fitter, Stacks
from studio_planner.planning.late.shut_windows import shut_at_night
from studio_planner.planning.late.trial import Trial
from studio_planner.planning.late.written_worth import plan_worth, worth_against
from studio_planner.planning.quick import quick_plan
from studio_planner.planning.worth import starts_of

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import datetime

    from studio_planner.craft.orders import Order
    from studio_planner.craft.plans import Outcome, Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.clocks.clockwork import Clockworks
    from studio_planner.planning.late.what_if import Tried
    from studio_planner.planning.worth import Worth

_FIRST_TRIED_FOR = 3
"""Late orders for which *pour it before all others* is tried; each costs one plan."""

_ROUNDS_AS_IT_IS = 4
"""Rounds of a plan that may take the place of the shown one: it may have had as many."""

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


class Trials:
    """The changes tried for one plan, made one after another as they are asked for."""

    def __init__(
        self,
        studio: Studio,
        plan: Plan,
        clockworks: Clockworks,
        until: datetime | None = None,
    ) -> None:
        """Try changes for the late orders of a plan, the latest by weight first.

        Nothing is poured from `until` on, if that was asked for.
        """
        self._as_it_is = studio
        # Changes are planned from the start, not held to what an older plan had.
        self.studio = replace(studio, plan=None)
        self.plan = plan
        self.clockworks = clockworks
        self._until = until
        self._before = starts_of(plan_that_counts(studio, studio.plan, plan.start))
        keys = {one.order: one for one in plan.outcomes if is_late(one)}
        late = [order for order in studio.orders if order.key in keys]
        self._late = sorted(late, key=lambda order: -_hours(keys[order.key]) * order.weight)
        todo = sum(not coat.poured for coat in plan.coats)
        self._left = _FEW_PLANS if todo > _BIG else _MOST_PLANS
        self._worth = plan_worth(studio, plan)
        self._stacks = Stacks(studio)

    def all(self) -> Iterator[Trial]:
        """Every single change, the cheapest first."""
        yield from self._as_planned()
        evening = self._best_evening()
        for tried in ([evening] if evening else []) + what_if.changes(self.studio):
            if self._left > 0:
                yield self.trial(tried)
        for order in self._late[:_MOVED_FOR]:
            yield from self._fewer(order)

    def better(self) -> Plan | None:
        """The best plan with no change but the order of pouring, where it is worth more."""
        plans = [trial.plan for trial in self._as_planned() if trial.plan is not None]
        best = min(plans, key=self._worth_as_it_is, default=None)
        return best if best is not None and self._is_better(best) else None

    def joint(self) -> Iterator[Trial]:
        """Several changes at once."""
        for tried in what_if.joint_changes(self.studio):
            if self._left > 0:
                yield self.trial(tried)

    def _as_planned(self) -> Iterator[Trial]:
        """What needs no change: another order of pouring."""
        fitter = self._fitter(self._as_it_is, self._stacks)
        for order in self._late[:_MOVED_FOR]:
            moved = fitter.with_order_moved(order)
            if moved is not None and self._is_better(moved):
                words = saying(
                    "late", "pour it where there is room between the others; nothing else moves"
                )
                yield Trial(_again(words), self.studio, moved, order.key)
        # One order alone has nothing to go before.
        for order in self._late[:_FIRST_TRIED_FOR] if len(self.studio.orders) > 1 else ():
            self._left -= 1
            yield self._first(order)

    def _first(self, order: Order) -> Trial:
        plan = self._quick(self._as_it_is, (order.key,), _ROUNDS_AS_IT_IS)
        words = saying("late", "pour it before all others")
        better = plan is not None and self._is_better(plan)
        trial = Trial(_again(words) if better else words, self.studio, plan, order.key)
        weight = None if better or plan is None else self._weight(order, plan)
        return replace(self._with_costs(trial), weight=weight)

    def _weight(self, order: Order, plan: Plan) -> int | None:
        """From which weight of an order on another plan is worth more than the shown one."""
        now, then = self._worth, plan_worth(self.studio, plan)
        hours, fewer = (_late_hours(one, order) for one in (self.plan, plan))
        alike = then.left_out == now.left_out
        if not alike or hours is None or fewer is None or fewer >= hours:
            return None
        others = (then.late - order.weight * fewer) - (now.late - order.weight * hours)
        least = math.floor(others / (hours - fewer)) + 1
        return least if least <= MOST_WEIGHT else None

    def _is_better(self, plan: Plan) -> bool:
        return self._worth_as_it_is(plan) < self._worth_as_it_is(self.plan)

    def _worth_as_it_is(self, plan: Plan) -> Worth:
        """A plan's worth with the pours that it moves from where the studio's plan has them."""
        return worth_against(self.studio, plan, self._before)

    def _best_evening(self) -> Tried | None:
        """The evening of the week that helps the latest orders most."""
        found = what_if.evenings(self.studio, self.plan.start)
        return min(found, key=lambda one: self._after_moving(one.studio)[1], default=None)

    def _after_moving(self, studio: Studio, most: int = _EVENINGS_FOR) -> tuple[Plan, Worth]:
        """The shown plan with its late orders placed anew, one by one, in a changed studio."""
        best, worth = self.plan, self._worth
        fitter = self._fitter(studio, self._stacks)
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
        cost = SILENT if tried.more else self._shut(tried)
        trial = Trial(tried.words, tried.studio, plan, over=tried.over, cost=cost)
        return self._with_costs(trial)

    def _fewer(self, order: Order) -> Iterator[Trial]:
        for tried in fewer_coats(self.studio, order):
            plan = self._fitter(tried.studio).with_order_moved(order)
            # Nothing is known where it shares a mix, or finds no place between the others.
            if plan is not None:
                yield Trial(tried.words, tried.studio, plan, order.key)

    def _fitter(self, studio: Studio, stacks: Stacks | None = None) -> Fitter:
        return Fitter(studio, self.plan, self.clockworks, stacks, self._until)

    def _quick(
        self, studio: Studio, first: tuple[str, ...] = (), rounds: int = 1
    ) -> Plan | None:
        """A studio planned from the start, in so many rounds."""
        now = self.plan.start
        try:
            return quick_plan(
                studio,
                now,
                self._until,
                first=first,
                passes=rounds,
                clockworks=self.clockworks,
            )
        except NoPlanPossible:
            return None

    def _shut(self, tried: Tried) -> Saying:
        count = shut_at_night(tried.studio, self.plan, self.clockworks)
        if not count:
            return SILENT
        if count == 1:
            return saying("late", "one window then closes while nobody can work")
        return saying("late", "{count} windows then close while nobody can work", count=count)

    def _with_costs(self, trial: Trial) -> Trial:
        """A trial with the orders that would be worse off with it than in the shown plan."""
        if trial.plan is None:
            return trial
        before = {one.order: one for one in self.plan.outcomes}
        worse = [
            one.order
            for one in trial.plan.outcomes
            if is_late(one) and _later(one, before[one.order])
        ]
        return replace(
            trial,
            newly=tuple(key for key in worse if not is_late(before[key])),
            later=tuple(key for key in worse if is_late(before[key])),
        )


def _again(words: Saying) -> Saying:
    return saying("late", "plan again: {change}", change=words)


def _late_hours(plan: Plan, order: Order) -> float | None:
    return next(one.late_hours for one in plan.outcomes if one.order == order.key)


def is_late(outcome: Outcome) -> bool:
    """Tell whether an order leaves after its date, or not at all."""
    return outcome.leaves is None or outcome.leaves > outcome.due


def _hours(outcome: Outcome) -> float:
    return float("inf") if outcome.late_hours is None else outcome.late_hours


def _later(one: Outcome, other: Outcome) -> bool:
    if one.leaves is None or other.leaves is None:
        return one.leaves is None and other.leaves is not None
    return one.leaves > other.leaves
