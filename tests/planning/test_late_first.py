"""A late order is tried before all others where a plan is made thoroughly."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest

from studio_planner.planning.quick import quick_plan, quick_start
from tests.planning.benchmark_studios import START, hurried, make_studio

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.worth import Worth


def tight(seed: int, pieces: int = 8) -> Studio:
    """A small studio whose dates are sooner than it can well keep."""
    return hurried(make_studio(seed, pieces, 4, 2), 5)


def worth(studio: Studio, *first: str, thorough: bool = False) -> Worth:
    return quick_start(studio, START, first=first, thorough=thorough).found.worth


@pytest.mark.parametrize(("seed", "pieces"), [(1, 8), (4, 10)])
def test_a_thorough_plan_is_less_late_where_a_late_order_has_to_go_first(
    seed: int, pieces: int
) -> None:
    studio = tight(seed, pieces)
    assert worth(studio, thorough=True).late < worth(studio).late


@pytest.mark.parametrize("seed", range(4))
def test_no_plan_with_its_latest_order_first_is_less_late_than_a_thorough_one(
    seed: int,
) -> None:
    studio = tight(seed)
    weights = {order.key: order.weight for order in studio.orders}
    outcomes = quick_plan(studio, START).outcomes
    late = max(outcomes, key=lambda one: weights[one.order] * (one.late_hours or 0.0))
    assert worth(studio, thorough=True).late <= worth(studio, late.order).late


@pytest.mark.parametrize("seed", range(4))
def test_where_nothing_less_comes_late_a_thorough_plan_is_the_quick_one(seed: int) -> None:
    studio = tight(seed)
    quick, thorough = worth(studio), worth(studio, thorough=True)
    assert thorough == quick or thorough.late < quick.late


def test_the_kept_plan_gives_way_to_a_late_order_that_goes_first() -> None:
    studio = tight(1)
    kept = replace(studio, plan=quick_plan(studio, START))
    assert worth(kept).late == worth(studio).late
    assert worth(kept, thorough=True).late < worth(kept).late
