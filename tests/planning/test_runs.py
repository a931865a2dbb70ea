"""The highest of so many values in a row."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from studio_planner.planning.clocks.runs import Runs


@given(
    values=st.lists(st.floats(-40.0, 60.0), min_size=1, max_size=40),
    lengths=st.lists(st.integers(1, 40), min_size=1, max_size=5),
    count=st.integers(1, 40),
)
def test_the_highest_of_a_run_is_the_highest_of_its_values(
    values: list[float], lengths: list[int], count: int
) -> None:
    runs = Runs(values)
    for length in lengths:
        begins = range(min(count, len(values) - length + 1))
        assert runs.highest(length, count) == [max(values[at : at + length]) for at in begins]
