"""Studios that are measured and tested are none whose coats can never meet."""

from __future__ import annotations

import pytest
from hypothesis import given

from studio_planner.planning.cannot_meet import cannot_meet
from studio_planner.services.sample import sample_studio
from tests.planning.benchmark_studios import SIZES, benchmark_studio
from tests.planning.studios import Situation, studios
from tests.services.small_studios import DAY


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
