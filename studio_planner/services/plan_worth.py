"""What a plan is worth in the maker's words, for terminal and desk alike.

A goal is called proved only where its bound meets its value; a bound is never rounded up.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.length_words import lateness, length_of_time
from studio_planner.craft.plans import Goal
from studio_planner.craft.tongue import counted, figure, marked, translate

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.plans import GoalValue, Plan
    from studio_planner.craft.studio import Studio

NOT_KNOWN = marked("worth", "not known whether a better plan exists")
IN_ORDER = marked(
    "worth",
    "The goals stand in their order: each line compares plans as good in those above it.",
)

_TITLES = {
    Goal.LEFT_OUT: marked("worth", "Left out"),
    Goal.LATENESS: marked("worth", "Late"),
    Goal.SCUFFED: marked("worth", "Scuffed"),
    Goal.TESTED: marked("worth", "To test first"),
    Goal.MOVED: marked("worth", "Moved"),
    Goal.SPARE: marked("worth", "Spare missing before promises"),
    Goal.MIXES: marked("worth", "Separate mixes"),
    Goal.ENDS: marked("worth", "Until each piece is done"),
}
_COUNTED = {
    Goal.LEFT_OUT: (marked("worth", "{count} piece"), marked("worth", "{count} pieces")),
    Goal.SCUFFED: (marked("worth", "{count} joint"), marked("worth", "{count} joints")),
    Goal.TESTED: (marked("worth", "{count} joint"), marked("worth", "{count} joints")),
    Goal.MOVED: (marked("worth", "{count} pour"), marked("worth", "{count} pours")),
    Goal.MIXES: (marked("worth", "{count} mix"), marked("worth", "{count} mixes")),
}
"""Goals that are whole numbers, and of what; the others are hours."""

_CRUMB = 1e-6
_LEAST_HOURS = 1.0 / 60.0
_SECONDS_IN_MINUTE = 60


@dataclass(frozen=True, slots=True, kw_only=True)
class GoalLine:
    """One goal in words; `verdict` is empty where there is nothing left to gain."""

    title: str
    amount: str
    verdict: str

    @property
    def words(self) -> str:
        """The whole line, such as Late: 14 h 30 min in all; no plan can be below 6 h."""
        return f"{self.title}: {self.amount}{'; ' if self.verdict else ''}{self.verdict}."


@dataclass(frozen=True, slots=True, kw_only=True)
class Worth:
    """What a plan is worth: a line for each goal that matters, and what was done to get it."""

    goals: tuple[GoalLine, ...]
    effort: str


def worth_of(studio: Studio, plan: Plan) -> Worth:
    """Say what a plan is worth; no goals when it is from before they were written down."""
    shown = [one for one in plan.goals if _matters(one, plan)]
    searched = plan.solved_seconds > 0 or any(one.bound and one.value > 0 for one in shown)
    lines = tuple(
        GoalLine(
            title=translate("worth", _TITLES[one.goal]),
            amount=_amount(studio, plan, one),
            verdict="; ".join(_verdicts(plan, one, searched=searched)),
        )
        for one in shown
    )
    return Worth(goals=lines, effort=_effort(plan) if plan.goals else "")


def _verdicts(plan: Plan, one: GoalValue, *, searched: bool) -> Iterator[str]:
    left = not_planned(plan) if one.goal is Goal.LATENESS else 0
    if left:
        yield counted(
            left,
            translate("worth", "{count} order has pieces left out and is not planned"),
            translate("worth", "{count} orders have pieces left out and are not planned"),
        )
    proof = _verdict(one, plan.grid_minutes) if searched else ""
    if proof:
        yield proof


def not_planned(plan: Plan) -> int:
    """How many orders have pieces that are left out: nobody knows when they leave."""
    return sum(outcome.leaves is None for outcome in plan.outcomes)


def _matters(one: GoalValue, plan: Plan) -> bool:
    return one.value > _CRUMB or (one.goal is Goal.LATENESS and bool(plan.outcomes))


def _amount(studio: Studio, plan: Plan, one: GoalValue) -> str:
    if one.goal is Goal.LATENESS and one.value <= _CRUMB:
        planned = translate("worth", "no order that is planned")
        return planned if not_planned(plan) else translate("worth", "no order")
    if one.goal is Goal.MIXES:
        return figure(f"{round(one.value):,}")
    amount = _figure(one.goal, one.value)
    if one.goal in _COUNTED:
        return amount
    if one.goal is Goal.LATENESS and _weighted(studio, plan):
        return translate("worth", "{hours} in all, weighted").format(hours=amount)
    return translate("worth", "{hours} in all").format(hours=amount)


def _weighted(studio: Studio, plan: Plan) -> bool:
    """Whether a late order counts for more or less than its own hours."""
    late = {outcome.order for outcome in plan.outcomes if outcome.late_hours}
    return any(order.key in late and order.weight != 1 for order in studio.orders)


def _figure(goal: Goal, value: float) -> str:
    texts = _COUNTED.get(goal)
    if texts is not None:
        text = translate("worth", texts[round(value) != 1])
        return text.format(count=figure(f"{round(value):,}"))
    return lateness(value)


def _verdict(one: GoalValue, grid_minutes: int) -> str:
    if one.value <= _CRUMB:
        return ""
    if one.proved:
        said = translate("worth", "proved the best possible on starts every {minutes} minutes")
        return said.format(minutes=grid_minutes)
    least = _least(one)
    if least is None:
        return translate("worth", NOT_KNOWN)
    return translate("worth", "no plan can be below {least}").format(least=least)


def _least(one: GoalValue) -> str | None:
    """What no plan gets below, never rounded up; None when that is nothing."""
    if one.bound is None:
        return None
    if one.goal in _COUNTED:
        whole = math.ceil(one.bound - _CRUMB)
        return _figure(one.goal, whole) if whole > 0 else None
    return length_of_time(one.bound) if one.bound >= _LEAST_HOURS else None


def _effort(plan: Plan) -> str:
    if plan.solved_seconds <= 0.0:
        return translate("worth", "This is the quick plan; no better one was looked for.")
    said = translate("worth", "A better plan was looked for, for {time}.")
    if not plan.rehearsals:
        said = translate(
            "worth",
            "A better plan was looked for, for {time}. It was not rehearsed, so how sure it is "
            "is not known.",
        )
    return said.format(time=seconds_words(plan.solved_seconds))


def seconds_words(seconds: float) -> str:
    """A time of looking, such as 0.4 s, 20 s or 2 min 5 s."""
    if seconds < 1.0:
        return figure(f"{seconds:.1f} s")
    minutes, rest = divmod(round(seconds), _SECONDS_IN_MINUTE)
    if not minutes:
        return f"{rest} s"
    return f"{minutes} min {rest} s" if rest else f"{minutes} min"


def summary_words(studio: Studio, plan: Plan) -> str:
    """A plan in one line: 2 orders late, 14 h 30 min, cannot be below 6 h; 41 mixes."""
    values = {one.goal: one for one in plan.goals}
    found = [_orders_words(studio, plan, values.get(Goal.LATENESS))]
    for goal, said in (
        (Goal.LEFT_OUT, translate("worth", "{pieces} left out")),
        (Goal.SCUFFED, translate("worth", "{pieces} scuffed")),
    ):
        if goal in values and values[goal].value > _CRUMB:
            found.append(said.format(pieces=_figure(goal, values[goal].value)))
    if Goal.MIXES in values:
        found.append(_figure(Goal.MIXES, values[Goal.MIXES].value))
    return "; ".join(found)


def better_words(studio: Studio, before: Plan | None, plan: Plan) -> str:
    """A plan in one line, and the first goal that tells it from the one before if none does."""
    words = summary_words(studio, plan)
    if before is None or words != summary_words(studio, before):
        return words
    known = {line.words for line in worth_of(studio, before).goals}
    news = (line.words for line in worth_of(studio, plan).goals if line.words not in known)
    return next((f"{words}. {line}".removesuffix(".") for line in news), words)


def _orders_words(studio: Studio, plan: Plan, lateness: GoalValue | None) -> str:
    if not plan.outcomes:
        return translate("worth", "no orders")
    words = _late_words(studio, plan, lateness)
    left = not_planned(plan)
    if not left:
        return words
    return f"{words}, " + counted(
        left,
        translate("worth", "{count} order not planned"),
        translate("worth", "{count} orders not planned"),
    )


def _late_words(studio: Studio, plan: Plan, lateness: GoalValue | None) -> str:
    late = sum(1 for outcome in plan.outcomes if outcome.late_hours)
    if not late:
        planned = translate("worth", "no planned order late")
        return planned if not_planned(plan) else translate("worth", "no order late")
    orders = counted(
        late,
        translate("worth", "{count} order late"),
        translate("worth", "{count} orders late"),
    )
    if lateness is None:
        return orders
    hours = _figure(lateness.goal, lateness.value)
    if _weighted(studio, plan):
        hours = translate("worth", "{hours} weighted").format(hours=hours)
    return f"{orders}, {hours}{_short(lateness)}"


def _short(one: GoalValue) -> str:
    if one.proved:
        return ", " + translate("worth", "proved the best")
    least = _least(one)
    if least is None:
        return ""
    return ", " + translate("worth", "cannot be below {least}").format(least=least)
