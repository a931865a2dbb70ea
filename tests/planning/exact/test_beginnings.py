"""What may be said instead of a slot that lies between the hours in which things begin."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from studio_planner.planning.exact.beginnings import AllBeginnings, Beginnings
from studio_planner.planning.exact.search import PlanSearch
from studio_planner.planning.quick import quick_start
from studio_planner.science.stages import Stage
from tests.planning.benchmark_studios import START, make_studio

_HOURS = [(10, 20), (30, 30), (40, 55)]
_ALL = {slot for first, last in _HOURS for slot in range(first, last + 1)}


@given(st.integers(0, 70))
def test_any_of_the_slots_lets_the_same_things_begin(slot: int) -> None:
    low, high = Beginnings(_HOURS).not_before(slot)
    assert low <= slot <= high
    for said in (low, high):
        assert {one for one in _ALL if one >= said} == {one for one in _ALL if one >= slot}


@given(st.integers(0, 70))
def test_any_of_the_slots_lets_the_same_things_be_over(slot: int) -> None:
    low, high = Beginnings(_HOURS).not_after(slot)
    assert low <= slot <= high
    for said in (low, high):
        assert {one for one in _ALL if one <= said} == {one for one in _ALL if one <= slot}


def test_between_two_evenings_all_is_the_next_one() -> None:
    beginnings = Beginnings(_HOURS)
    assert beginnings.not_before(25) == (21, 30)
    assert beginnings.not_after(25) == (20, 29)
    assert beginnings.not_before(15) == beginnings.not_after(15) == (15, 15)


def test_in_parts_of_a_slot_it_is_the_same() -> None:
    finer = Beginnings(_HOURS).finer(5)
    assert finer.not_after(5 * 20 + 3) == (100, 149)
    assert finer.not_after(5 * 12 + 3) == (63, 63)


def test_tape_is_pulled_and_drips_are_cut_while_somebody_is_awake() -> None:
    frame = PlanSearch(quick_start(make_studio(1, 1, 2, 1), START)).best.parts.frame
    everything = AllBeginnings(frame.means, frame.grid)
    for stage in (Stage.TAPE_OPENS, Stage.TRIM_CLOSES):
        assert everything.of(stage) is everything.of(Stage.TAPE_CLOSES)
    assert everything.of(Stage.HANDLE) is not everything.of(Stage.TAPE_OPENS)
