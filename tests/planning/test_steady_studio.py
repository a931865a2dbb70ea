"""A studio at one temperature, said in plain lags: the planner's plans fit it, faults don't."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studio_planner.craft.plans import Goal
from studio_planner.planning.quick import quick_plan
from tests.benchmarks.plain_studio import PlainStudio, Starts, broken, lateness
from tests.benchmarks.steady_studio import plain, starts_of_plan, steady
from tests.planning.benchmark_studios import START, make_studio

SLOTS_OF_AN_HOUR = 12


def planned(seed: int, size: tuple[int, int, int]) -> tuple[PlainStudio, Starts, float]:
    studio = steady(make_studio(seed, *size))
    plan = quick_plan(studio, START)
    late = next(row.value for row in plan.goals if row.goal is Goal.LATENESS)
    assert not plan.unplanned
    return plain(studio, START), starts_of_plan(plan, START), late


@pytest.mark.parametrize(("seed", "size"), [(0, (20, 5, 2)), (1, (8, 4, 1)), (2, (20, 5, 2))])
def test_a_plan_keeps_the_plain_lags_and_is_as_late_there(
    seed: int, size: tuple[int, int, int]
) -> None:
    whole, starts, late = planned(seed, size)
    assert broken(whole, starts) == []
    assert lateness(whole, starts) / SLOTS_OF_AN_HOUR == pytest.approx(late, abs=1e-6)


def test_a_coat_outside_its_window_is_found() -> None:
    whole, starts, _ = planned(1, (8, 4, 1))
    piece = whole.pieces[0]
    coat = piece.coats[1]
    early = starts | {(piece.key, coat.key): starts[piece.key, piece.coats[0].key] + 1}
    assert any(fault.startswith(f"{piece.key} {coat.key}") for fault in broken(whole, early))


def test_packing_before_the_gate_is_found() -> None:
    whole, starts, _ = planned(1, (8, 4, 1))
    piece = whole.pieces[0]
    early = starts | {(piece.key, ""): starts[piece.key, piece.coats[-1].key]}
    assert any("packed at" in fault for fault in broken(whole, early))


def test_too_few_hands_and_spots_and_work_at_night_are_found() -> None:
    whole, starts, _ = planned(1, (8, 4, 1))
    assert any("hands" in fault for fault in broken(replace(whole, people=0), starts))
    assert any("spots" in fault for fault in broken(replace(whole, spots=1), starts))
    assert any("outside" in fault for fault in broken(replace(whole, hours=()), starts))


def test_a_studio_with_what_lags_cannot_say_is_refused() -> None:
    studio = steady(make_studio(1, 8, 4, 1))
    first = studio.pieces[0]
    taped = replace(first, stack=(replace(first.stack[0], taped=True), *first.stack[1:]))
    with pytest.raises(ValueError, match="can't be said in plain lags"):
        plain(replace(studio, pieces=(taped, *studio.pieces[1:])), START)
