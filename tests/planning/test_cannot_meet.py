"""Coats that can never meet are left out of a plan, and no studio that is measured has any."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given

from studio_planner.craft.pieces import CoatKind, Joint
from studio_planner.planning.cannot_meet import cannot_meet
from studio_planner.planning.checker import check_plan
from studio_planner.planning.quick import quick_plan
from studio_planner.services.sample import sample_studio
from tests.planning.benchmark_studios import SIZES, benchmark_studio
from tests.planning.impossible_studios import START, beside, board, coat, small_studio
from tests.planning.studios import Situation, studios
from tests.services.small_studios import DAY

PRIME = coat("prime", CoatKind.PRIME, product="primer")
VEIL = coat("veil", CoatKind.COLOUR, joint=Joint.WET_IN_WET)
SEAL, DRY = coat("seal", CoatKind.SEAL), coat("flood", CoatKind.FLOOD, joint=Joint.ON_DRY)


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("seed", range(6))
def test_every_coat_of_a_benchmark_can_meet_the_one_below(size: str, seed: int) -> None:
    studio = benchmark_studio(size, seed)
    assert not [row for piece in studio.pieces for row in cannot_meet(studio, piece)]


def test_every_coat_of_the_sample_can_meet_the_one_below() -> None:
    studio = sample_studio(DAY)
    assert not [row for piece in studio.pieces for row in cannot_meet(studio, piece)]


@given(studios())
def test_every_coat_of_any_drawn_studio_can_meet_the_one_below(situation: Situation) -> None:
    studio = situation.studio
    assert not [row for piece in studio.pieces for row in cannot_meet(studio, piece)]


def test_what_can_never_meet_is_left_out_with_one_sentence_and_the_rest_is_planned() -> None:
    studio = beside(small_studio(board((PRIME, VEIL))))
    plan = quick_plan(studio, START)
    (row,) = plan.unplanned
    assert (row.piece, row.coat) == ("board", "veil")
    assert {planned.piece for planned in plan.coats} == {"easy"}
    assert not check_plan(studio, plan).broken


def test_what_a_kept_plan_still_has_is_left_out_once_it_can_never_be() -> None:
    before = beside(small_studio())
    kept = replace(
        before, plan=quick_plan(before, START), pieces=(board((SEAL, DRY)), before.pieces[1])
    )
    plan = quick_plan(kept, START)
    assert [row.piece for row in plan.unplanned] == ["board"]
    assert {planned.piece for planned in plan.coats} == {"easy"}
    assert not check_plan(kept, plan).broken
