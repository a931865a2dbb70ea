"""A pour that the maker has put at a time starts then, or its piece says why it cannot."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from studio_planner.craft.errors import InvalidEntry, NoPlanPossible
from studio_planner.craft.pins import Pin
from studio_planner.planning.best import best_plan
from studio_planner.planning.checker import check_plan
from studio_planner.planning.checking.findings import Rule
from studio_planner.planning.quick import quick_plan
from tests.planning.benchmark_studios import START, make_studio
from tests.planning.studios import Situation, studios

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio


def pinned(studio: Studio, coat: PlannedCoat, minutes: int) -> tuple[Studio, Pin]:
    """The studio with a coat put some minutes from where its plan has it."""
    start = coat.start + timedelta(minutes=minutes)
    pin = Pin(piece=coat.piece, coat=coat.coat, start=start)
    return replace(studio, pins=(pin,)), pin


def start_of(plan: Plan, pin: Pin) -> object:
    found = (c.start for c in plan.coats if (c.piece, c.coat) == (pin.piece, pin.coat))
    return next(found, None)


def test_a_pinned_pour_starts_then_or_its_piece_is_not_planned() -> None:
    seen: Counter[str] = Counter()

    @settings(suppress_health_check=list(HealthCheck))
    @given(studios(), st.integers(0, 20), st.integers(-60, 60), st.booleans())
    def judge(situation: Situation, which: int, steps: int, keep: bool) -> None:
        try:
            plan = quick_plan(situation.studio, situation.start)
        except NoPlanPossible:
            return
        coming = [coat for coat in plan.coats if not coat.poured]
        if not coming:
            return
        kept = replace(situation.studio, plan=plan if keep else None)
        studio, pin = pinned(kept, coming[which % len(coming)], steps * 5)
        try:
            again = quick_plan(studio, situation.start)
        except NoPlanPossible:
            seen["none"] += 1
            return
        report = check_plan(studio, again)
        assert not report.broken, "\n".join(finding.words for finding in report.broken)
        at = start_of(again, pin)
        if at is None:
            assert any(row.piece == pin.piece for row in again.unplanned)
            seen["unplanned"] += 1
        elif pin.start >= again.start:
            assert at == pin.start
            seen["kept"] += 1

    judge()
    assert seen["kept"] > seen["none"], seen


def test_a_pin_at_the_planned_time_moves_nothing() -> None:
    studio = make_studio(3, 8, 4, 1)
    plan = quick_plan(studio, START)
    held, pin = pinned(replace(studio, plan=plan), plan.coats[5], 0)
    again = quick_plan(held, START)
    assert start_of(again, pin) == pin.start
    assert {(c.piece, c.coat, c.start) for c in again.coats} == {
        (c.piece, c.coat, c.start) for c in plan.coats
    }


def test_the_best_plan_keeps_pins_too() -> None:
    studio = make_studio(3, 4, 3, 1)
    plan = quick_plan(studio, START)
    first = next(c for c in plan.coats if studio.piece(c.piece).position(c.coat) == 0)
    held, pin = pinned(studio, first, 0)
    best = best_plan(held, START, seconds=3)
    assert start_of(best, pin) == pin.start
    assert not check_plan(held, best).broken


def test_a_pin_in_the_past_binds_nobody() -> None:
    studio = make_studio(3, 4, 3, 1)
    coat = quick_plan(studio, START).coats[0]
    past = Pin(piece=coat.piece, coat=coat.coat, start=START - timedelta(days=1))
    held = replace(studio, pins=(past,))
    plan = quick_plan(held, START)
    assert not plan.unplanned
    assert not check_plan(held, plan).broken


def test_a_pin_where_nobody_works_is_named_as_the_reason() -> None:
    studio = make_studio(3, 4, 3, 1)
    coat = quick_plan(studio, START).coats[0]
    night = START.replace(hour=3, minute=0) + timedelta(days=1)
    held = replace(studio, pins=(Pin(piece=coat.piece, coat=coat.coat, start=night),))
    plan = quick_plan(held, START)
    row = next(row for row in plan.unplanned if row.piece == coat.piece)
    assert row.coat == coat.coat
    assert "is pinned to" in str(row.reason)


def test_the_checker_finds_a_pour_off_its_pin() -> None:
    studio = make_studio(3, 4, 3, 1)
    plan = quick_plan(studio, START)
    held, _ = pinned(studio, plan.coats[0], 5)
    assert [f.rule for f in check_plan(held, plan).broken] == [Rule.PINNED]


def test_pins_stand_on_whole_five_minutes() -> None:
    with pytest.raises(InvalidEntry, match="whole five minutes"):
        Pin(piece="p", coat="c", start=START + timedelta(minutes=2))
