"""The parts of a coat's grams: shown ones add up to the sum that is shown."""

from __future__ import annotations

import doctest

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.amounts import CoatParts
from studio_planner.services.editing import grams
from studio_planner.services.editing.grams import PUT_ON, adding_up, together

STEP = 0.1


@given(st.lists(st.floats(0.0, 5000.0), min_size=len(PUT_ON), max_size=len(PUT_ON)))
def test_shown_parts_add_up_and_none_is_off_by_more_than_a_step(parts: list[float]) -> None:
    given_ = dict(zip(PUT_ON, parts, strict=True))
    shown = adding_up(given_, STEP)
    assert sum(shown.values()) == pytest.approx(round(sum(parts) / STEP) * STEP)
    assert all(abs(shown[name] - part) <= STEP * 1.001 for name, part in given_.items())


def test_a_portion_has_its_share_of_every_coat() -> None:
    wet, dry = CoatParts(film=30.0, drips=3.0, cups=4.0), CoatParts(film=10.0, absorbed=5.0)
    assert together([wet, dry], portions=2) == {
        "film": 20.0, "edges": 0.0, "drips": 1.5, "absorbed": 2.5, "reserve": 0.0,
    }  # fmt: skip


def test_the_examples_in_the_documentation_are_true() -> None:
    failed, tried = doctest.testmod(grams)
    assert tried
    assert not failed
