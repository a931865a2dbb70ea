"""The quick plan, judged by the checker, which shares no code with it."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest
from hypothesis import HealthCheck, given, settings

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import Goal, StepKind, Trust
from studio_planner.craft.products import Product, ProductKind, SheetPoint
from studio_planner.planning.checker import check_plan
from studio_planner.planning.quick import quick_plan
from studio_planner.science.stages import Stage
from tests.planning.benchmark_studios import START, benchmark_studio, make_studio
from tests.planning.earliest_promise_first import earliest_promise_first
from tests.planning.studios import Situation, studios

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio


def test_every_plan_keeps_every_rule_and_most_studios_get_one() -> None:
    seen: Counter[str] = Counter()

    @settings(suppress_health_check=list(HealthCheck))
    @given(studios())
    def judge(situation: Situation) -> None:
        try:
            plan = quick_plan(situation.studio, situation.start)
        except NoPlanPossible:
            seen["none"] += 1
            return
        report = check_plan(situation.studio, plan)
        assert not report.broken, "\n".join(finding.words for finding in report.broken)
        seen["three" if sum(not coat.poured for coat in plan.coats) >= 3 else "few"] += 1

    judge()
    assert seen["three"] * 2 >= sum(seen.values()), seen


@pytest.mark.parametrize(("pieces", "coats", "weeks"), [(8, 4, 1), (20, 5, 2), (40, 5, 4)])
def test_realistic_studios_are_planned_whole(pieces: int, coats: int, weeks: int) -> None:
    studio = make_studio(3, pieces, coats, weeks)
    plan = quick_plan(studio, START)
    assert not plan.unplanned
    assert len(plan.coats) == pieces * coats
    assert not check_plan(studio, plan).broken


def test_a_late_order_is_moved_on_until_another_is_in_front() -> None:
    # By dates alone one order is late, and moving it forward by as much changes no order.
    studio = benchmark_studio("X", 4)
    plan = quick_plan(studio, START)
    late = sum(goal.value for goal in plan.goals if goal.goal is Goal.LATENESS)
    assert late < earliest_promise_first(studio, START).late


def test_the_same_studio_gets_the_same_plan() -> None:
    studio = make_studio(5, 12, 4, 2)
    assert quick_plan(studio, START) == quick_plan(studio, START)


def test_twins_of_one_order_share_their_mixes() -> None:
    studio = _small()
    plan = quick_plan(studio, START)
    mixes = Counter(coat.mix for coat in plan.coats)
    assert max(mixes.values()) == 2
    assert not check_plan(studio, plan).broken


def test_pieces_that_nobody_ordered_are_planned_but_not_packed() -> None:
    studio = replace(_small(), orders=())
    plan = quick_plan(studio, START)
    assert not plan.unplanned
    assert not [step for step in plan.steps if step.kind is StepKind.PACK]


def test_pours_asked_for_until_a_day_start_before_it() -> None:
    studio = make_studio(3, 8, 4, 1)
    until = START + timedelta(days=3)
    plan = quick_plan(studio, START, until)
    assert plan.unplanned
    assert all(coat.start < until for coat in plan.coats)
    assert all("days that were asked for" in str(row.reason) for row in plan.unplanned)


def test_an_order_asked_for_first_is_never_later_for_it() -> None:
    studio = make_studio(0, 20, 5, 2)
    plan = quick_plan(studio, START, passes=1)
    late = [outcome for outcome in plan.outcomes if outcome.late_hours]
    assert late
    for outcome in late:
        first = quick_plan(studio, START, first=(outcome.order,), passes=1)
        moved = next(one for one in first.outcomes if one.order == outcome.order)
        assert moved.leaves is not None
        assert outcome.leaves is not None
        assert moved.leaves <= outcome.leaves


def test_an_empty_studio_says_all_that_is_missing() -> None:
    bare = replace(_small(), people=(), pieces=(), orders=(), places=())
    with pytest.raises(NoPlanPossible) as refusal:
        quick_plan(bare, START)
    words = " ".join(refusal.value.reasons)
    for missing in ("piece", "hands", "spot", "room"):
        assert missing in words


def test_a_coat_that_cannot_be_sanded_is_never_scuffed() -> None:
    for seed in range(4):
        studio = make_studio(seed, 12, 5, 2)
        plan = quick_plan(studio, START)
        for coat in plan.coats:
            piece = studio.piece(coat.piece)
            below = piece.below(piece.position(coat.coat))
            if coat.joint is Joint.SCUFFED:
                assert below is not None
                assert piece.stack[below].sandable


def test_a_wide_window_by_day_is_met_in_its_safe_part() -> None:
    plan = quick_plan(_small(), START)
    trusts = {coat.window.trust for coat in plan.coats if coat.window is not None}
    assert trusts == {Trust.SAFE}


def test_a_missing_figure_is_named_with_its_piece_and_product() -> None:
    studio = _small()
    cured = {Stage.HANDLE, Stage.PRINT_FREE, Stage.FULL_CURE}
    silent = tuple(
        replace(p, sheet=tuple(point for point in p.sheet if point.stage not in cured))
        for p in studio.products
    )
    studio = replace(studio, products=silent)
    plan = _plan_or_reasons(studio)
    assert any("when it can be handled" in reason for reason in plan)


def _plan_or_reasons(studio: Studio) -> tuple[str, ...]:
    try:
        plan: Plan = quick_plan(studio, START)
    except NoPlanPossible as refusal:
        return refusal.reasons
    return tuple(str(row.reason) for row in plan.unplanned)


def _small() -> Studio:
    """Two twins of one order: the smallest studio with something to share."""
    studio = make_studio(3, 8, 4, 1)
    first = studio.pieces[0]
    twin = replace(first, key="twin", name="Twin")
    order = replace(studio.orders[0], pieces=(first.key, twin.key))
    return replace(studio, pieces=(first, twin), orders=(order,))


def test_a_primer_under_other_coats_needs_no_print_free() -> None:
    # Its sheet ends with handle, as those of most one-part primers do (common practice).
    studio = make_studio(3, 6, 4, 1)
    thin = Product(
        key="thin",
        name="Thin primer (invented)",
        kind=ProductKind.PRIMER,
        sheet=tuple(
            SheetPoint(stage=stage, celsius=20, from_hours=hours)
            for stage, hours in (
                (Stage.TACK_FREE, 1),
                (Stage.RECOAT_OPENS, 2),
                (Stage.HANDLE, 2),
            )
        ),
    )
    piece = studio.pieces[0]
    first, second, *rest = piece.stack
    stack = (
        replace(first, product="thin", film_mm=0.1),
        replace(second, joint=Joint.ON_DRY),
        *rest,
    )
    primed = replace(
        studio,
        products=(*studio.products, thin),
        pieces=(replace(piece, stack=stack), *studio.pieces[1:]),
    )
    plan = quick_plan(primed, START)
    assert not plan.unplanned
    assert not check_plan(primed, plan).broken
