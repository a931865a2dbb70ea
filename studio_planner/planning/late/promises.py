"""Why an order is late, and which tried changes would keep its promise."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Change
from studio_planner.craft.saying import SILENT, Saying, joined, saying
from studio_planner.craft.tongue import marked
from studio_planner.planning.clocks.clockwork import Clockworks
from studio_planner.planning.late.fitting import leaves
from studio_planner.planning.late.ladder import Ladder, Rung
from studio_planner.planning.late.trials import Trials, is_late
from studio_planner.planning.late.why_late import why_late
from studio_planner.planning.saying import moment_said
from studio_planner.planning.stuck.why_stuck import DAYS_ASKED_FOR

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence
    from datetime import datetime

    from studio_planner.craft.orders import Order
    from studio_planner.craft.plans import Outcome, Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.late.trial import Trial


def explain(studio: Studio, plan: Plan, until: datetime | None = None) -> Plan:
    """Give every late or unplanned order of a plan its reason and its tried changes.

    Nothing was to be poured from `until` on, if that was asked for.

    The reason is the first rung of the ladder that turns the order late, given the places of
    the others in this plan. Each change is tried by planning with it; nothing is guessed.
    Orders in time are left as they are.
    """
    late = [outcome for outcome in plan.outcomes if is_late(outcome)]
    if not late:
        return plan
    clockworks = Clockworks()
    ladder = Ladder(studio, plan, clockworks)
    told = {}
    for outcome in late:
        if _beyond_help(ladder, outcome):
            reason = joined(*_stuck(plan, ladder.order(outcome.order)))
            told[outcome.order] = replace(outcome, reason=reason)
    asked = [outcome for outcome in late if outcome.order not in told]
    if asked:
        tried = _Tried(Trials(studio, plan, clockworks, until), asked)
        told |= {one.order: _told(ladder, tried, one) for one in asked}
    outcomes = tuple(told.get(outcome.order, outcome) for outcome in plan.outcomes)
    return replace(plan, outcomes=outcomes)


def _beyond_help(ladder: Ladder, outcome: Outcome) -> bool:
    """Whether no change is worth trying for an order.

    More days are the answer for one that only those would plan; and nothing is, for one that
    cannot be made even alone in a warm room, with all hands and spots.
    """
    order = ladder.order(outcome.order)
    stuck = _stuck(ladder.plan, order)
    if any(reason.ends_with(DAYS_ASKED_FOR) for reason in stuck):
        return True
    return bool(stuck) and ladder.warm(order).packed is None


def _stuck(plan: Plan, order: Order) -> list[Saying]:
    return [row.reason for row in plan.unplanned if row.piece in order.pieces]


def _told(ladder: Ladder, tried: _Tried, outcome: Outcome) -> Outcome:
    order = ladder.order(outcome.order)
    stuck = _stuck(ladder.plan, order)
    climb = ladder.climb(order)
    told = list(stuck)
    if not stuck or climb.rung > Rung.HOURS:
        told.append(why_late(ladder, order, climb))
    changes = tried.changes(outcome)
    reason = joined(*told, tried.summary(ladder, order, changes))
    return replace(outcome, reason=reason, changes=changes)


class _Tried:
    """The trials of one plan, and what each order is told of them."""

    def __init__(self, trials: Trials, late: Iterable[Outcome]) -> None:
        self._trials = trials
        self._made = list(trials.all())
        if any(not self._helped(outcome) for outcome in late):
            self._made += trials.joint()

    def changes(self, outcome: Outcome) -> tuple[Change, ...]:
        """What keeps the promise, then what brings it sooner, then all else that was tried.

        Each the cheapest first. A change that contains one that keeps the promise is no more
        than that one.
        """
        kept = {trial.name for trial in self._of(outcome) if _keeps(trial, outcome)}
        tried = [trial for trial in self._of(outcome) if not kept & set(trial.over)]
        tried.sort(key=lambda one: (not _keeps(one, outcome), not _sooner(one, outcome)))
        return tuple(_change(one, outcome) for one in tried)

    def summary(self, ladder: Ladder, order: Order, changes: Sequence[Change]) -> Saying:
        """How many changes were tried, and whether one keeps the promise."""
        count = len(changes)
        if not any(change.keeps_promise for change in changes):
            none = saying(
                "late",
                "None of the {count} changes that were tried keeps the promise.",
                count=count,
            )
            return joined(none, self._soonest(ladder, order))
        text = (
            marked("late", "{count} change was tried.")
            if count == 1
            else marked("late", "{count} changes were tried.")
        )
        return saying("late", text, count=count)

    def _soonest(self, ladder: Ladder, order: Order) -> Saying:
        """What would come of an order with nothing in its way: no change brings it sooner."""
        fit = ladder.warm(order)
        if fit.late == 0:
            return saying(
                "late",
                "Only with nothing else to pour, hands day and night and a warm room would it "
                "be kept.",
            )
        when = leaves(ladder.studio, order, fit)
        if when is None:  # a room that is as warm as that is too warm for it
            return SILENT
        return saying(
            "late",
            "Even with nothing else to pour, hands day and night and a warm room it leaves "
            "{when} at the soonest.",
            when=moment_said(ladder.studio.time_zone, when.timestamp()),
        )

    def _helped(self, outcome: Outcome) -> bool:
        return any(_keeps(trial, outcome) for trial in self._of(outcome))

    def _of(self, outcome: Outcome) -> list[Trial]:
        return [one for one in self._made if one.order in {None, outcome.order}]


def _leaves(trial: Trial, outcome: Outcome) -> datetime | None:
    then = trial.outcome(outcome.order)
    return None if then is None else then.leaves


def _keeps(trial: Trial, outcome: Outcome) -> bool:
    then = trial.outcome(outcome.order)
    return then is not None and not is_late(then)


def _sooner(trial: Trial, outcome: Outcome) -> bool:
    leaves = _leaves(trial, outcome)
    return leaves is not None and (outcome.leaves is None or leaves < outcome.leaves)


def _change(trial: Trial, outcome: Outcome) -> Change:
    return Change(
        words=trial.words(outcome.order),
        leaves=_leaves(trial, outcome),
        keeps_promise=_keeps(trial, outcome),
    )
