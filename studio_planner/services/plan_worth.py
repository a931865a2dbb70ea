"""What a plan is worth and how sure it is, in the maker's words, for terminal and desk alike.

A goal is called proved only where its bound meets its value. A bound is never rounded up, and a
share of rehearsed weeks never to all or to none of them.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.plans import Goal
from studio_planner.craft.tongue import counted, figure, marked, translate

if TYPE_CHECKING:
    from studio_planner.craft.plans import GoalValue, Outcome, Plan, PlannedCoat
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
    Goal.SPARE: marked("worth", "Spare lacking"),
    Goal.MIXES: marked("worth", "Separate mixes"),
    Goal.ENDS: marked("worth", "Until done"),
}
_COUNTED = {
    Goal.LEFT_OUT: (marked("worth", "{count} piece"), marked("worth", "{count} pieces")),
    Goal.SCUFFED: (marked("worth", "{count} joint"), marked("worth", "{count} joints")),
    Goal.TESTED: (marked("worth", "{count} joint"), marked("worth", "{count} joints")),
    Goal.MOVED: (marked("worth", "{count} pour"), marked("worth", "{count} pours")),
    Goal.MIXES: (marked("worth", "{count} mix"), marked("worth", "{count} mixes")),
}
"""Goals that are whole numbers, and of what; the others are hours."""

_SUMMED = frozenset({Goal.SPARE, Goal.ENDS})

_CRUMB = 1e-6
_LEAST_HOURS = 0.05
_SECONDS_IN_MINUTE = 60


@dataclass(frozen=True, slots=True, kw_only=True)
class GoalLine:
    """One goal in words; `verdict` is empty where there is nothing left to gain."""

    title: str
    amount: str
    verdict: str

    @property
    def words(self) -> str:
        """The whole line, such as Late: 14.5 h in all; no plan can be below 6.0 h."""
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
            verdict=_verdict(one, plan.grid_minutes) if searched else "",
        )
        for one in shown
    )
    return Worth(goals=lines, effort=_effort(plan) if plan.goals else "")


def _matters(one: GoalValue, plan: Plan) -> bool:
    return one.value > _CRUMB or (one.goal is Goal.LATENESS and bool(plan.outcomes))


def _amount(studio: Studio, plan: Plan, one: GoalValue) -> str:
    figure = _figure(one.goal, one.value)
    if one.goal is Goal.LATENESS:
        if one.value <= _CRUMB:
            return translate("worth", "no order")
        if _weighted(studio, plan):
            return translate("worth", "{hours} in all, weighted").format(hours=figure)
        return translate("worth", "{hours} in all").format(hours=figure)
    if one.goal is Goal.MIXES:
        return figure.split()[0]
    if one.goal in _SUMMED:
        return translate("worth", "{hours} in all").format(hours=figure)
    return figure


def _weighted(studio: Studio, plan: Plan) -> bool:
    """Whether a late order counts for more or less than its own hours."""
    late = {outcome.order for outcome in plan.outcomes if outcome.late_hours}
    return any(order.key in late and order.weight != 1 for order in studio.orders)


def _figure(goal: Goal, value: float) -> str:
    texts = _COUNTED.get(goal)
    if texts is not None:
        text = translate("worth", texts[round(value) != 1])
        return text.format(count=figure(f"{round(value):,}"))
    return (
        figure(f"{value:,.1f} h")
        if value >= _LEAST_HOURS
        else translate("worth", "under 0.1 h")
    )


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
    tenths = math.floor(one.bound * 10.0 + _CRUMB) / 10.0
    return figure(f"{tenths:,.1f} h") if tenths > 0.0 else None


def _effort(plan: Plan) -> str:
    if plan.solved_seconds <= 0.0:
        return translate("worth", "This is the quick plan; no better one was looked for.")
    said = translate("worth", "A better plan was looked for, for {time}.")
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
    """A plan in one line: 2 orders late, 14.5 h, cannot be below 6.0 h; 41 mixes."""
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


def _orders_words(studio: Studio, plan: Plan, lateness: GoalValue | None) -> str:
    if not plan.outcomes:
        return translate("worth", "no orders")
    late = sum(1 for outcome in plan.outcomes if outcome.late_hours)
    if not late:
        return translate("worth", "no order late")
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


# How sure it is


def share_words(share: float) -> str:
    """A share of rehearsed weeks in whole per cent; all and none only when they are."""
    if 0.0 < share < 0.01:  # noqa: PLR2004 - one per cent
        return translate("worth", "under 1 %")
    if 0.99 < share < 1.0:  # noqa: PLR2004 - likewise
        return translate("worth", "over 99 %")
    return f"{round(share * 100.0)} %"


def weeks_words(rehearsals: int) -> str:
    """How many weeks were rehearsed, such as 1,000 rehearsed weeks."""
    text = (
        translate("worth", "{count} rehearsed week")
        if rehearsals == 1
        else translate("worth", "{count} rehearsed weeks")
    )
    return text.format(count=figure(f"{rehearsals:,}"))


def sure_words(outcome: Outcome | None, plan: Plan) -> str:
    """How sure an order's promise is; empty when that was not rehearsed."""
    if outcome is None or outcome.held is None or not plan.rehearsals:
        return ""
    return translate("worth", "kept in {share} of {weeks}").format(
        share=share_words(outcome.held), weeks=weeks_words(plan.rehearsals)
    )


def held_words(coat: PlannedCoat, plan: Plan) -> str:
    """How often a pour found its window; empty when it is poured or was not rehearsed."""
    if coat.held is None or coat.poured or not plan.rehearsals:
        return ""
    said = translate("worth", "held in {share} of rehearsed weeks")
    return said.format(share=share_words(coat.held))


def most_fragile(plan: Plan) -> PlannedCoat | None:
    """The pour to come that missed its window most often; None when none ever did."""
    fragile = [
        coat
        for coat in plan.coats
        if not coat.poured and coat.held is not None and coat.held < 1
    ]
    return min(fragile, key=lambda coat: (coat.held, coat.start), default=None)


@dataclass(frozen=True, slots=True, kw_only=True)
class Fragile:
    """The pour that needs most care, in words; `piece` is empty when none needs any."""

    title: str
    detail: str
    piece: str = ""

    @property
    def words(self) -> str:
        """The whole sentence."""
        return f"{self.title}: {self.detail}."


def fragile_of(studio: Studio, plan: Plan) -> Fragile | None:
    """Name the most fragile pour with its number and share; None when nothing was rehearsed."""
    if not plan.rehearsals or all(coat.held is None for coat in plan.coats):
        return None
    coat, weeks = most_fragile(plan), weeks_words(plan.rehearsals)
    if coat is None:
        said = translate("worth", "none, all were held in all of {weeks}")
        return Fragile(
            title=translate("worth", "Most fragile"), detail=said.format(weeks=weeks)
        )
    piece = studio.piece(coat.piece)
    share = share_words(coat.held or 0.0)
    return Fragile(
        title=translate("worth", "Most fragile: pour {number}").format(number=coat.number),
        detail=translate("worth", "{piece}, {coat}, held in {share} of {weeks}").format(
            piece=piece.name,
            coat=kind_word(piece.coat(coat.coat).kind),
            share=share,
            weeks=weeks,
        ),
        piece=coat.piece,
    )
