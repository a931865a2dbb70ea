"""What keys do to a block of hours, and where a new one goes."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.desktop.studio_pages.week_shape import STEP, Part
from studio_planner.services.editing.weeks import DAY_MINUTES, Block

if TYPE_CHECKING:
    from collections.abc import Sequence

_EVENING, _LONG = 18 * 60, 3 * 60
"""Where a new block begins on a day without one, and how long it is."""


def moved_by(block: Block, part: Part, by: int) -> Block:
    """A block with one end, or all of it, later by some minutes; never shorter than a step."""
    start, end = block.start, block.end
    if part is Part.END:
        end = min(max(end + by, start + STEP), start + DAY_MINUTES)
    elif part is Part.START:
        start = min(max(start + by, 0, end - DAY_MINUTES), end - STEP, DAY_MINUTES - STEP)
    else:
        start = min(max(start + by, 0), DAY_MINUTES - STEP)
        end = start + block.end - block.start
    return Block(block.day, start, end)


def new_block(blocks: Sequence[Block], day: int) -> Block | None:
    """A new block on a day: in the evening, else in the longest stretch that is free."""
    today = sorted(block for block in blocks if block.day == day)
    evening = Block(day, _EVENING, _EVENING + _LONG)
    if not any(one.start <= evening.end and evening.start <= one.end for one in today):
        return evening
    edges = [0, *(edge for one in today for edge in (one.start, one.end)), DAY_MINUTES]
    free = [(edges[i], edges[i + 1]) for i in range(0, len(edges), 2)]
    start, end = max(free, key=lambda gap: gap[1] - gap[0])
    # A step apart on either side, or the two would be one.
    start += STEP if start else 0
    end -= STEP if end < DAY_MINUTES else 0
    return Block(day, start, min(end, start + _LONG)) if end - start >= STEP else None
