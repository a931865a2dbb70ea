"""Why an order is late, and which tried changes would keep its promise."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import Change
from studio_planner.planning import what_if
from studio_planner.planning.clockwork import Clockworks
from studio_planner.planning.quick import quick_plan
from studio_planner.planning.why_stuck import DAYS_ASKED_FOR

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.orders import Order
    from studio_planner.craft.plans import Outcome, Plan
    from studio_planner.craft.studio import Studio

_FIRST_TRIED_FOR = 6
"""Late orders for which *pour it before all others* is tried; each costs one plan."""

_PASSES = 1
"""Rounds for each tried change: many are tried, and a maker waits for them."""

_ENOUGH = 2
"""Changes that keep an order's promise, after which no more are looked for."""


def explain(studio: Studio, plan: Plan) -> Plan:
    """Give every late or unplanned order of a plan its reason and its tried changes.

    Each change is tried by planning the whole studio with it; nothing is guessed. Orders in
    time are left as they are.
    """
    late = [outcome for outcome in plan.outcomes if _late(outcome)]
    if not late:
        return plan
    tried = _Trials(studio, plan, [outcome.order for outcome in late])
    told = {outcome.order: _told(tried, outcome) for outcome in late}
    outcomes = tuple(told.get(outcome.order, outcome) for outcome in plan.outcomes)
    return replace(plan, outcomes=outcomes)


def _late(outcome: Outcome) -> bool:
    return outcome.leaves is None or outcome.leaves > outcome.due


def _told(tried: _Trials, outcome: Outcome) -> Outcome:
    order = tried.order(outcome.order)
    stuck = [row.reason for row in tried.plan.unplanned if row.piece in order.pieces]
    if any(reason.endswith(DAYS_ASKED_FOR) for reason in stuck):
        # More days are the answer, and nothing else needs to be tried.
        return replace(outcome, reason=" ".join(stuck))
    found = tried.changes_for(outcome)
    reason = " ".join(stuck) or _reason(tried, order, found)
    if not any(change.keeps_promise for change in found):
        reason += " None of the changes that were tried keeps it; the soonest date is below."
    return replace(outcome, reason=reason, changes=found)


class _Trials:
    """Plans of changed studios, each made once and only when asked for."""

    def __init__(self, studio: Studio, plan: Plan, late: list[str]) -> None:
        self.studio = studio
        self.plan = plan
        self._late = late
        self._changed: list[tuple[str, dict[str, Outcome]]] = []
        self._more = what_if.changes(studio)
        self._clockworks = Clockworks()

    def order(self, key: str) -> Order:
        """The order called `key`."""
        return next(order for order in self.studio.orders if order.key == key)

    def outcome(self, studio: Studio, order: str) -> Outcome | None:
        """What a changed studio would mean for an order; None when nothing can be planned."""
        return self._outcomes(studio, ()).get(order)

    def in_time(self, studio: Studio, order: str, *, first: bool) -> bool:
        """Tell whether an order of a changed studio keeps its promise, poured first or not."""
        found = self._outcomes(studio, (order,) if first else ()).get(order)
        return found is not None and not _late(found)

    def plan_of(self, studio: Studio, first: tuple[str, ...] = ()) -> Plan | None:
        """A changed studio's plan, or None when nothing can be planned."""
        now, clocks = self.plan.start, self._clockworks
        try:
            return quick_plan(studio, now, first=first, passes=_PASSES, clockworks=clocks)
        except NoPlanPossible:
            return None

    def _outcomes(self, studio: Studio, first: tuple[str, ...]) -> dict[str, Outcome]:
        plan = self.plan_of(studio, first)
        return {} if plan is None else {outcome.order: outcome for outcome in plan.outcomes}

    def changes_for(self, outcome: Outcome) -> tuple[Change, ...]:
        """Tried changes: those that keep the promise first, then the best of the others."""
        found: list[Change] = []
        for change in self._all_changes(outcome.order):
            simpler = (one.words for one in found if one.keeps_promise)
            if not any(words in change.words for words in simpler):
                found.append(change)
            if sum(one.keeps_promise for one in found) >= _ENOUGH:
                break
        kept = [change for change in found if change.keeps_promise]
        if kept:
            return tuple(kept)
        sooner = [c for c in found if _sooner(c, outcome)]
        sooner.sort(key=lambda change: str(change.leaves))
        return (*sooner[:_ENOUGH], self._earliest(outcome))

    def _all_changes(self, order: str) -> Iterator[Change]:
        if order in self._late[:_FIRST_TRIED_FOR] and len(self.studio.orders) > 1:
            outcomes = self._outcomes(self.studio, (order,))
            yield _change(self._first_words(outcomes), outcomes.get(order))
        for words, outcomes in self._changed_plans():
            yield _change(words, outcomes.get(order))

    def _changed_plans(self) -> Iterator[tuple[str, dict[str, Outcome]]]:
        """All changed studios in turn; those already planned are not planned again."""
        index = 0
        while True:
            if index == len(self._changed):
                tried = next(self._more, None)
                if tried is None:
                    return
                self._changed.append((tried.words, self._outcomes(tried.studio, ())))
            yield self._changed[index]
            index += 1

    def _first_words(self, outcomes: dict[str, Outcome]) -> str:
        before = {one.order for one in self.plan.outcomes if _late(one)}
        newly = [key for key, one in outcomes.items() if _late(one) and key not in before]
        names = ", ".join(self.order(key).name for key in newly)
        return "pour it before all others" + (f" (makes {names} late)" if names else "")

    def _earliest(self, outcome: Outcome) -> Change:
        studio = what_if.with_warm_room(
            what_if.with_tireless_hands(what_if.alone(self.studio, outcome.order))
        )
        best = self.outcome(studio, outcome.order)
        words = "nothing else to pour, hands day and night and a warm room"
        return _change(words, best)


def _change(words: str, outcome: Outcome | None) -> Change:
    leaves = None if outcome is None else outcome.leaves
    keeps = outcome is not None and not _late(outcome)
    return Change(words=words, leaves=leaves, keeps_promise=keeps)


def _sooner(one: Outcome | Change | None, other: Outcome | Change | None) -> bool:
    if one is None or one.leaves is None:
        return False
    return other is None or other.leaves is None or one.leaves < other.leaves


def _reason(tried: _Trials, order: Order, found: tuple[Change, ...]) -> str:
    """The first rung of the ladder that makes the order late is what binds it."""
    alone = what_if.alone(tried.studio, order.key)
    tireless = what_if.with_tireless_hands(alone)
    if not tried.in_time(tireless, order.key, first=True):
        if tried.in_time(what_if.with_warm_room(tireless), order.key, first=True):
            return "Too cold: at the room's temperature its coats cure too slowly for the date."
        if not any(change.keeps_promise for change in found):
            return (
                "Cure time: its coats cannot cure by then, "
                "even poured day and night in a warm room."
            )
    own = tried.plan_of(alone, (order.key,))
    mine = None if own is None else own.outcomes[0]
    if own is None or mine is None or _late(mine):
        return _hands_reason(own)
    return _shared_reason(tried, order)


def _shared_reason(tried: _Trials, order: Order) -> str:
    """What the other orders take from one that would be in time alone."""
    with_spots = tried.outcome(what_if.with_spots_for_all(tried.studio), order.key)
    with_hands = tried.outcome(what_if.with_tireless_hands(tried.studio), order.key)
    by_spots = with_spots is not None and not _late(with_spots)
    by_hands = with_hands is not None and not _late(with_hands)
    if by_spots and not (by_hands and _sooner(with_hands, with_spots)):
        return "No spot: other pieces stand on the shelf when its coats have to be poured."
    if by_hands:
        return "No hands: the free hours go to pours of other orders."
    return "Other orders come first: the spots and the free hours go to their pours."


def _hands_reason(plan: Plan | None) -> str:
    scuffed = plan is not None and any(coat.joint is Joint.SCUFFED for coat in plan.coats)
    if scuffed:
        return (
            "Night closes a window: one of its windows opens and closes while nobody can work, "
            "so its coats have to wait, or be washed and sanded."
        )
    return "No hands: with your working hours its coats come too far apart for the date."
