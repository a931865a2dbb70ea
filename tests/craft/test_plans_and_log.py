"""What a plan says about an order, and pours that have happened."""

from __future__ import annotations

from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.log import Poured
from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import Goal, GoalValue, Outcome, Plan, PlannedCoat
from tests.craft.nouns import broken, utc

DUE = utc(2026, 11, 13, 15)


def planned(number: int) -> PlannedCoat:
    return PlannedCoat(
        number=number,
        piece="coaster",
        coat=f"coat {number}",
        start=DUE,
        end=DUE + timedelta(hours=1),
        spot="shelf 1",
        joint=Joint.BARE,
        mix=number,
        person="ada",
    )


@pytest.mark.parametrize(("hours", "late", "spare"), [(36, 36, 0), (-12, 0, 12), (0, 0, 0)])
def test_an_order_is_late_or_has_time_to_spare(hours: int, late: int, spare: int) -> None:
    outcome = Outcome(order="o1", due=DUE, leaves=DUE + timedelta(hours=hours))
    assert (outcome.late_hours, outcome.spare_hours) == (late, spare)


@given(st.timedeltas(timedelta(days=-99), timedelta(days=99)))
def test_spare_less_late_is_the_time_to_the_due_instant(ahead: timedelta) -> None:
    outcome = Outcome(order="o1", due=DUE, leaves=DUE - ahead)
    assert outcome.late_hours is not None
    assert outcome.spare_hours is not None
    assert timedelta(hours=outcome.spare_hours - outcome.late_hours) == ahead


def test_an_order_that_is_not_planned_is_neither_late_nor_early() -> None:
    outcome = Outcome(order="o1", due=DUE, leaves=None)
    assert outcome.late_hours is None
    assert outcome.spare_hours is None


def test_a_coat_is_found_by_the_number_the_maker_types() -> None:
    plan = Plan(made=DUE, start=DUE, coats=(planned(1), planned(3)))
    assert plan.coat(3) is plan.coats[1]
    assert plan.coat(2) is None


@pytest.mark.parametrize(
    ("value", "bound", "gap", "proved"),
    [
        (14.5, None, None, False),
        (14.5, 6.0, 8.5, False),
        (14.5, 14.5, 0.0, True),
        (14.5, 15.0, 0.0, True),
        (0.1 + 0.2, 0.3, pytest.approx(0.0, abs=1e-9), True),
    ],
)
def test_a_goal_is_proved_once_no_plan_can_get_below_its_value(
    value: float, bound: float | None, gap: float | None, proved: bool
) -> None:
    reached = GoalValue(goal=Goal.LATENESS, value=value, bound=bound)
    assert (reached.gap, reached.proved) == (gap, proved)


def test_a_pour_without_a_zone_or_backwards_is_refused_by_name() -> None:
    facts = {"piece": "coaster", "coat": "flood", "spot": "shelf 1"}
    naive = DUE.replace(tzinfo=None)
    assert broken(Poured, start=naive, end=naive, **facts).keys() == {"start", "end"}
    assert broken(Poured, start=DUE, end=DUE, **facts).keys() == {"end"}


def test_a_pour_may_begin_in_the_first_and_end_in_the_second_passing_of_an_hour() -> None:
    first = datetime(2026, 10, 25, 2, 40, tzinfo=ZoneInfo("Europe/Berlin"))
    pour = Poured(
        piece="coaster",
        coat="flood",
        spot="shelf 1",
        start=first,
        end=first.replace(minute=20, fold=1),
    )
    assert pour.end.timestamp() - pour.start.timestamp() == 40 * 60
