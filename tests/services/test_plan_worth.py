from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.plans import Goal, GoalValue, Plan
from studio_planner.services.plan_worth import (
    NOT_KNOWN,
    better_words,
    seconds_words,
    summary_words,
    worth_of,
)
from tests.services.small_studios import kept, planned_once

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio

SEARCHED = 20.0


def with_goals(*goals: GoalValue, seconds: float = SEARCHED, grid: int = 10) -> Plan:
    plan = kept(planned_once())
    return replace(plan, goals=goals, solved_seconds=seconds, grid_minutes=grid)


def lines(*goals: GoalValue, seconds: float = SEARCHED) -> list[str]:
    studio = planned_once()
    return [line.words for line in worth_of(studio, with_goals(*goals, seconds=seconds)).goals]


def weighing(weight: float) -> Studio:
    """The sample, in which the order that is late counts so much."""
    studio = planned_once()
    late = {one.order for one in kept(studio).outcomes if one.late_hours}
    orders = (replace(o, weight=weight if o.key in late else 3.0) for o in studio.orders)
    return replace(studio, orders=tuple(orders))


@pytest.mark.parametrize(
    ("one", "words"),
    [
        (GoalValue(goal=Goal.LEFT_OUT, value=1), f"Left out: 1 piece; {NOT_KNOWN}."),
        (
            GoalValue(goal=Goal.SCUFFED, value=3, bound=1.2),
            "Scuffed: 3 joints; no plan can be below 2 joints.",
        ),
        (
            GoalValue(goal=Goal.TESTED, value=2, bound=2),
            "To test first: 2 joints; proved the best possible on starts every 10 minutes.",
        ),
        (GoalValue(goal=Goal.MOVED, value=1, bound=0), f"Moved: 1 pour; {NOT_KNOWN}."),
        (
            GoalValue(goal=Goal.SPARE, value=20, bound=6.09),
            "Spare missing before promises: 20 h in all; no plan can be below 6 h 5 min.",
        ),
        (GoalValue(goal=Goal.MIXES, value=47), f"Separate mixes: 47; {NOT_KNOWN}."),
        (
            GoalValue(goal=Goal.ENDS, value=3007.6, bound=0.01),
            f"Until each piece is done: 125 d 8 h in all; {NOT_KNOWN}.",
        ),
    ],
)
def test_each_goal_is_a_line_in_the_makers_words(one: GoalValue, words: str) -> None:
    assert lines(one) == [words]


def test_lateness_is_said_even_when_no_order_is_late() -> None:
    assert lines(GoalValue(goal=Goal.LATENESS, value=0, bound=0)) == ["Late: no order."]
    assert lines(GoalValue(goal=Goal.SCUFFED, value=0, bound=0)) == []


@pytest.mark.parametrize(("weight", "amount"), [(1, "in all"), (2, "in all, weighted")])
def test_lateness_says_so_where_a_late_order_counts_for_more_than_its_hours(
    weight: float, amount: str
) -> None:
    plan = with_goals(GoalValue(goal=Goal.LATENESS, value=14.5, bound=6.0))
    (line,) = worth_of(weighing(weight), plan).goals
    assert line.words == f"Late: 14 h 30 min {amount}; no plan can be below 6 h."
    summary = summary_words(weighing(weight), plan)
    assert (" weighted" in summary) == (weight != 1)


def test_a_plan_for_which_nothing_better_was_looked_for_says_it_once() -> None:
    plan = with_goals(GoalValue(goal=Goal.MIXES, value=47), seconds=0)
    worth = worth_of(planned_once(), plan)
    assert [line.words for line in worth.goals] == ["Separate mixes: 47."]
    assert worth.effort == "This is the quick plan; no better one was looked for."
    searched = replace(plan, solved_seconds=65.2, rehearsals=1000)
    looked = "A better plan was looked for, for 1 min 5 s."
    assert worth_of(planned_once(), searched).effort == looked


def test_a_plan_that_was_looked_for_and_could_not_be_rehearsed_says_so() -> None:
    plan = with_goals(GoalValue(goal=Goal.MIXES, value=47), seconds=51)
    assert worth_of(planned_once(), plan).effort == (
        "A better plan was looked for, for 51 s. "
        "It was not rehearsed, so how sure it is is not known."
    )


def without(plan: Plan, *orders: str) -> Plan:
    """The plan, which leaves out pieces of those orders."""
    outcomes = (replace(o, leaves=None) if o.order in orders else o for o in plan.outcomes)
    return replace(plan, outcomes=tuple(outcomes))


@pytest.mark.parametrize(
    ("count", "words", "summary"),
    [
        (
            1,
            "1 order has pieces left out and is not planned",
            "no planned order late, 1 order not planned",
        ),
        (
            3,
            "3 orders have pieces left out and are not planned",
            "no planned order late, 3 orders not planned",
        ),
    ],
)
def test_orders_with_pieces_left_out_are_never_counted_as_in_time(
    count: int, words: str, summary: str
) -> None:
    plan = with_goals(GoalValue(goal=Goal.LATENESS, value=0, bound=0))
    late = [one.order for one in plan.outcomes if one.late_hours]
    others = [one.order for one in plan.outcomes if not one.late_hours]
    assert len(late) == 1
    plan = without(plan, *late, *others[: count - 1])
    (line,) = worth_of(planned_once(), plan).goals
    assert line.words == f"Late: no order that is planned; {words}."
    assert summary_words(planned_once(), plan).startswith(summary)


def test_orders_that_are_not_planned_are_said_beside_those_that_are_late() -> None:
    plan = with_goals(GoalValue(goal=Goal.LATENESS, value=14.5, bound=6.0))
    in_time = next(one.order for one in plan.outcomes if not one.late_hours)
    plan = without(plan, in_time)
    (line,) = worth_of(weighing(1), plan).goals
    assert line.verdict == (
        "1 order has pieces left out and is not planned; no plan can be below 6 h"
    )
    assert "1 order late, " in summary_words(weighing(1), plan)
    assert ", 1 order not planned" in summary_words(weighing(1), plan)


def test_a_plan_without_goals_is_worth_no_words() -> None:
    worth = worth_of(planned_once(), with_goals(seconds=0))
    assert (worth.goals, worth.effort) == ((), "")


@given(
    st.sampled_from(Goal),
    st.floats(0.001, 1e5),
    st.none() | st.floats(-10, 1e5),
)
def test_only_what_is_proved_is_called_proved(
    goal: Goal, value: float, bound: float | None
) -> None:
    one = GoalValue(goal=goal, value=value, bound=bound)
    (line,) = worth_of(planned_once(), with_goals(one)).goals
    assert ("proved" in line.verdict) == one.proved
    plan = replace(with_goals(one), outcomes=kept(planned_once()).outcomes)
    assert "proved" not in summary_words(planned_once(), plan) or one.proved


@given(st.floats(0.0, 1e5))
def test_a_bound_is_never_rounded_up(bound: float) -> None:
    one = GoalValue(goal=Goal.SPARE, value=2e5, bound=bound)
    (line,) = worth_of(planned_once(), with_goals(one)).goals
    said = line.verdict.partition("below ")[2].split()
    hours = {"min": 1 / 60, "h": 1.0, "d": 24.0, "day": 24.0, "days": 24.0}
    told = sum(int(n) * hours[unit] for n, unit in zip(said[::2], said[1::2], strict=True))
    assert told <= bound + 1e-6


@pytest.mark.parametrize(
    ("value", "bound", "words"),
    [
        (14.5, 6.0, "1 order late, 14 h 30 min, cannot be below 6 h"),
        (14.5, 14.5, "1 order late, 14 h 30 min, proved the best"),
        (0.01, None, "1 order late, 1 min"),
    ],
)
def test_a_plan_is_summed_up_in_one_line(value: float, bound: float | None, words: str) -> None:
    plan = with_goals(GoalValue(goal=Goal.LATENESS, value=value, bound=bound))
    assert summary_words(weighing(1), plan) == words


def test_the_one_line_names_what_is_left_out_and_scuffed() -> None:
    plan = with_goals(
        GoalValue(goal=Goal.LEFT_OUT, value=1),
        GoalValue(goal=Goal.SCUFFED, value=2),
        GoalValue(goal=Goal.MIXES, value=47),
    )
    punctual = replace(plan, outcomes=tuple(one for one in plan.outcomes if not one.late_hours))
    words = "no order late; 1 piece left out; 2 joints scuffed; 47 mixes"
    assert summary_words(planned_once(), punctual) == words
    assert summary_words(planned_once(), with_goals()) == "1 order late"
    assert summary_words(planned_once(), replace(plan, outcomes=(), goals=())) == "no orders"
    twice = replace(plan, goals=(), outcomes=(*plan.outcomes, *plan.outcomes))
    assert summary_words(planned_once(), twice) == "2 orders late"


@pytest.mark.parametrize(
    ("seconds", "words"), [(0.42, "0.4 s"), (20.2, "20 s"), (60, "1 min"), (125, "2 min 5 s")]
)
def test_a_time_of_looking_is_said_in_seconds_and_minutes(seconds: float, words: str) -> None:
    assert seconds_words(seconds) == words


def test_a_better_plan_is_never_told_in_the_words_of_the_one_before() -> None:
    studio = planned_once()
    late = GoalValue(goal=Goal.LATENESS, value=14.5)
    before = with_goals(late, GoalValue(goal=Goal.ENDS, value=300))
    sooner = with_goals(late, GoalValue(goal=Goal.ENDS, value=250))
    words = "1 order late, 14 h 30 min"
    assert better_words(studio, None, before) == words
    assert better_words(studio, before, with_goals(replace(late, value=1))) == (
        "1 order late, 1 h"
    )
    assert better_words(studio, before, sooner) == (
        f"{words}. Until each piece is done: 10 d 10 h in all; {NOT_KNOWN}"
    )
    assert better_words(studio, before, before) == words
