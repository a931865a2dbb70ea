"""A late order is tried before all others where a plan is made thoroughly."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.planning.quick import quick_plan, quick_start
from tests.planning.benchmark_studios import START, make_studio

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.worth import Worth


def hurried(seed: int, pieces: int, days: int) -> Studio:
    """A small studio whose dates are so many days sooner than it can well keep."""
    studio = make_studio(seed, pieces, 4, 2)
    sooner = (replace(o, promised=o.promised - timedelta(days=days)) for o in studio.orders)
    return replace(studio, orders=tuple(sooner))


def worth(studio: Studio, *first: str, thorough: bool = False) -> Worth:
    return quick_start(studio, START, first=first, thorough=thorough).found.worth


@pytest.mark.parametrize(("seed", "pieces"), [(1, 8), (4, 10)])
def test_a_thorough_plan_is_less_late_where_a_late_order_has_to_go_first(
    seed: int, pieces: int
) -> None:
    studio = hurried(seed, pieces, 5)
    assert worth(studio, thorough=True).late < worth(studio).late


@pytest.mark.parametrize("seed", range(4))
def test_no_plan_with_its_latest_order_first_is_worth_more_than_a_thorough_one(
    seed: int,
) -> None:
    studio = hurried(seed, 8, 5)
    weights = {order.key: order.weight for order in studio.orders}
    outcomes = quick_plan(studio, START).outcomes
    late = max(outcomes, key=lambda one: weights[one.order] * (one.late_hours or 0.0))
    assert worth(studio, thorough=True) <= worth(studio, late.order)


def test_the_kept_plan_gives_way_to_a_late_order_that_goes_first() -> None:
    studio = hurried(1, 8, 5)
    kept = replace(studio, plan=quick_plan(studio, START))
    assert worth(kept).late == worth(studio).late
    assert worth(kept, thorough=True).late < worth(kept).late
