"""Pieces carried about between pours: what the exact model plans then keeps every rule.

A sample; `python -m tests.benchmarks.carried` judges as many studios as one likes.
"""

from __future__ import annotations

import pytest

from tests.planning.carried_studios import carried_about
from tests.planning.exact.carried_plans import judged

_FOUND = (6, 86)
"""Two were carried onto one spot; two of which one goes on there."""


@pytest.mark.parametrize("seed", [*_FOUND, *range(10, 16)])
def test_plans_for_pieces_that_were_carried_about_keep_every_rule(seed: int) -> None:
    found = judged(seed)
    assert not found.broken
    assert found.box or not found.refused


def test_the_same_seed_carries_the_same_pieces() -> None:
    assert carried_about(10) == carried_about(10)
    assert judged(10).carried
