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
from studio_planner.craft.saying import SILENT, Saying, joined, saying
from studio_planner.planning.late import what_if
from studio_planner.planning.late.fewer_coats import fewer_coats
from studio_planner.planning.late.fitting import Fitter, Stacks
from studio_planner.planning.late.shut_windows import shut_at_night
from studio_planner.planning.quick import quick_plan
from studio_planner.planning.saying import listed
from studio_planner.planning.worth import Worth

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.orders import Order
    from studio_planner.craft.plans import Outcome, Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.clocks.clockwork import Clockworks
    from studio_planner.planning.late.what_if import Tried

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

    `order` is the only order that it is offered to; None: to all. `over` are the names of
    simpler changes that it contains. `cost` is what it costs besides; `newly` are the orders
    that it makes late, `later` those that are late and would leave later still.
    """

    name: Saying
    studio: Studio
    plan: Plan | None
    order: str | None = None
    over: tuple[Saying, ...] = ()
    cost: Saying = SILENT
    newly: tuple[str, ...] = ()
    later: tuple[str, ...] = ()

    def words(self, order: str) -> Saying:
        """The change, and in brackets what it costs others than the order that is told."""
        newly, later = self._names(self.newly, order), self._names(self.later, order)
        costs = [self.cost] if self.cost else []
        costs += [saying("late", "makes {names} late", names=newly)] if newly else []
        costs += (
            [saying("late", "{names} would leave later still", names=later)] if later else []
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
        words = saying("late", "nothing else to pour, hands day and night and a warm room")
        return Trial(words, studio, self._quick(studio), order.key)

    def _moved_alone(self) -> Iterator[Trial]:
        fitter = Fitter(self.studio, self.plan, self.clockworks, self._stacks)
        for order in self._late[:_MOVED_FOR]:
            moved = fitter.with_order_moved(order)
            if moved is not None and plan_worth(self.studio, moved) < self._worth:
                words = saying(
                    "late", "pour it where there is room between the others; nothing else moves"
                )
                yield Trial(words, self.studio, moved, order.key)

    def _first(self) -> Iterator[Trial]:
        if len(self.studio.orders) < 2:  # noqa: PLR2004 - nothing to go before
            return
        for order in self._late[:_FIRST_TRIED_FOR]:
            self._left -= 1
            plan = self._quick(self.studio, (order.key,))
            trial = Trial(
                saying("late", "pour it before all others"), self.studio, plan, order.key
            )
            yield self._with_costs(trial)

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
        cost = SILENT if tried.more else self._shut(tried)
        trial = Trial(tried.words, tried.studio, plan, over=tried.over, cost=cost)
        return self._with_costs(trial)

    def _fewer(self, order: Order) -> Iterator[Trial]:
        for tried in fewer_coats(self.studio, order):
            plan = Fitter(tried.studio, self.plan, self.clockworks).with_order_moved(order)
            yield Trial(tried.words, tried.studio, plan, order.key)

    def _quick(self, studio: Studio, first: tuple[str, ...] = ()) -> Plan | None:
        """A changed studio planned from the start, in one round."""
        now = self.plan.start
        try:
            return quick_plan(studio, now, first=first, passes=1, clockworks=self.clockworks)
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
