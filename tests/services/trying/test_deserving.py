"""A plan that holds with and without a change is nobody's merit."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.hands import WorkHours
from studio_planner.planning.late.written_worth import plan_worth
from studio_planner.planning.quick import quick_plan
from studio_planner.services.trying.deserving import deserved
from tests.services.small_studios import kept, morning, two_trays

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio


def _planned(studio: Studio) -> Studio:
    return replace(studio, plan=quick_plan(studio, morning(studio)))


def _later(studio: Studio) -> Plan:
    """A plan of the same studio that begins with it, and does everything some days later."""
    now = morning(studio)
    plan = quick_plan(studio, now + timedelta(days=5))
    return replace(plan, made=now, start=now)


def _all_day(studio: Studio) -> Studio:
    """The studio whose first person works around the clock."""
    first, *others = studio.people
    by_night = [replace(kept_hours, rule="FREQ=DAILY") for kept_hours in first.work]
    night = WorkHours(rule="FREQ=DAILY", start=by_night[0].end, end=by_night[0].start)
    return replace(studio, people=(replace(first, work=(*by_night, night)), *others))


def test_more_hours_get_no_worse_plan_than_the_one_without_them() -> None:
    plain = _planned(two_trays())
    more = _all_day(plain)
    planned = replace(more, plan=_later(plain))
    assert plan_worth(plain, kept(plain)) < plan_worth(more, kept(planned))
    assert deserved(planned, plain) == (replace(more, plan=plain.plan), plain)


def test_a_better_plan_that_needs_no_more_hours_counts_without_them_too() -> None:
    plain = _planned(two_trays())
    planned = replace(_all_day(plain), plan=plain.plan)
    worse = replace(plain, plan=_later(plain))
    assert deserved(planned, worse) == (planned, plain)


def test_a_better_plan_that_needs_the_hours_is_the_merit_of_having_them() -> None:
    plain = _planned(two_trays())
    planned = _planned(replace(_all_day(plain), plan=None))
    assert plan_worth(planned, kept(planned)) < plan_worth(plain, kept(plain))
    assert deserved(planned, plain) == (planned, plain)


def test_a_plan_that_breaks_a_rule_with_the_change_is_no_merit_of_its_own() -> None:
    plain = _planned(two_trays())
    fewer = replace(plain, people=plain.people[1:])
    planned = _planned(replace(fewer, plan=None))
    assert plan_worth(plain, kept(plain)) < plan_worth(planned, kept(planned))
    assert deserved(planned, plain) == (planned, plain)


def test_without_a_plan_there_is_nothing_to_weigh() -> None:
    plain = _planned(two_trays())
    bare = replace(plain, plan=None)
    assert deserved(plain, bare) == (plain, bare)
    assert deserved(bare, plain) == (bare, plain)
