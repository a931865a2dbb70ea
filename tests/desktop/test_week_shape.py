"""Where hours lie on a drawn week, and what hands and keys make of them."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QPointF

from studio_planner.desktop.studio_pages.week_keys import moved_by, new_block
from studio_planner.desktop.studio_pages.week_shape import STEP, Part, WeekShape
from studio_planner.services.editing.weeks import DAY_MINUTES, Block, joined

STEPS = DAY_MINUTES // STEP


@st.composite
def blocks(draw: st.DrawFn) -> Block:
    start = draw(st.integers(0, STEPS - 1)) * STEP
    return Block(draw(st.integers(0, 6)), start, start + draw(st.integers(1, STEPS)) * STEP)


shapes = st.builds(
    WeekShape,
    left=st.floats(50, 150),
    top=st.floats(0, 40),
    width=st.floats(300, 1200),
    row=st.floats(24, 60),
    first=st.integers(0, 6),
)


@given(shape=shapes, block=blocks())
def test_a_drawn_block_is_read_back_from_its_ends(shape: WeekShape, block: Block) -> None:
    rects = shape.rects(block)
    assert shape.minute_at(rects[0].left()) == block.start
    last = shape.minute_at(rects[-1].right())
    assert last == (block.end if len(rects) == 1 else block.end - DAY_MINUTES)
    assert shape.day_at(rects[0].center().y()) == block.day
    days = {shape.day_at(rect.center().y()) for rect in rects}
    assert days == {block.day, (block.day + (len(rects) == 2)) % 7}


@given(shape=shapes, day=st.integers(0, 6))
def test_rows_begin_with_the_day_on_which_weeks_begin(shape: WeekShape, day: int) -> None:
    assert shape.day_of(shape.row_of(day)) == day
    assert shape.row_of(shape.first) == 0
    assert shape.day_at(-1000.0) == shape.first
    assert shape.day_at(10_000.0) == (shape.first + 6) % 7


@given(shape=shapes, block=blocks())
def test_a_hand_finds_both_ends_and_the_middle_of_every_block(
    shape: WeekShape, block: Block
) -> None:
    rects = shape.rects(block)
    y, end_y = rects[0].center().y(), rects[-1].center().y()
    found = shape.grip((block,), QPointF(rects[0].left() - 1.0, y))
    assert found == (0, Part.START)
    assert shape.grip((block,), QPointF(rects[-1].right() + 1.0, end_y)) == (0, Part.END)
    longest = max(rects, key=lambda rect: rect.width())
    middle = shape.grip((block,), longest.center())
    assert middle == (0, Part.WHOLE)
    assert shape.grip((block,), QPointF(shape.left - 40.0, y)) is None


@given(block=blocks(), part=st.sampled_from(Part), by=st.sampled_from([-STEP, STEP]))
def test_keys_move_an_end_by_a_step_or_stop_where_a_day_ends(
    block: Block, part: Part, by: int
) -> None:
    moved = moved_by(block, part, by)
    assert moved.day == block.day
    if part is Part.WHOLE:
        assert moved.end - moved.start == block.end - block.start
    elif part is Part.END:
        assert moved.start == block.start
    else:
        assert moved.end == block.end
    assert abs(moved.start - block.start) in {0, STEP}
    assert abs(moved.end - block.end) in {0, STEP}


@given(week=st.lists(blocks(), max_size=6), day=st.integers(0, 6))
def test_a_new_block_lies_beside_those_of_its_day(week: list[Block], day: int) -> None:
    there = joined(week)
    added = new_block(there, day)
    if added is not None:
        assert added.day == day
        assert set(joined([*there, added])) == {*there, added}


def test_a_day_without_room_takes_no_block() -> None:
    assert new_block([Block(2, 0, DAY_MINUTES)], 2) is None
    assert new_block([], 2) == Block(2, 18 * 60, 21 * 60)


@pytest.mark.parametrize(
    ("day", "start", "end"), [(7, 0, 60), (0, -15, 60), (0, 60, 60), (0, 60, 61 + DAY_MINUTES)]
)
def test_what_is_no_stretch_of_a_day_is_no_block(day: int, start: int, end: int) -> None:
    with pytest.raises(ValueError, match="no stretch"):
        Block(day, start, end)
