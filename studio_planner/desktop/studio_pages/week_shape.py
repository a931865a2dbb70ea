"""Where a week of hours lies on the page: seven rows of a day each, from midnight on."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from PySide6.QtCore import QPointF, QRectF

from studio_planner.services.editing.weeks import DAY_MINUTES, WEEKDAYS, Block

STEP = 15
"""Minutes that hours are painted in; fields take any minute."""

_WEEK = len(WEEKDAYS)
_GRIP = 7.0
_PAD = 5.0


class Part(Enum):
    """What of a block a hand has hold of."""

    START = "start"
    END = "end"
    WHOLE = "whole"


@dataclass(frozen=True, slots=True)
class WeekShape:
    """Rows from `top` on, each `row` pixels high, days from `left` for `width` pixels.

    `first` is the weekday of the first row, 0 for Monday.
    """

    left: float
    top: float
    width: float
    row: float
    first: int = 0

    def row_of(self, day: int) -> int:
        """The row of a weekday."""
        return (day - self.first) % _WEEK

    def day_of(self, row: int) -> int:
        """The weekday of a row."""
        return (row + self.first) % _WEEK

    def day_at(self, y: float) -> int:
        """The weekday at a height; above and below, the first and the last one."""
        row = int((y - self.top) // self.row)
        return self.day_of(min(max(row, 0), _WEEK - 1))

    def x(self, minute: float) -> float:
        """Where a minute of a day lies."""
        return self.left + self.width * minute / DAY_MINUTES

    def minute_at(self, x: float) -> int:
        """The painted minute nearest to a pixel, from 0 to a day."""
        steps = round((x - self.left) / self.width * DAY_MINUTES / STEP)
        return min(max(steps * STEP, 0), DAY_MINUTES)

    def row_rect(self, day: int) -> QRectF:
        """The row of a weekday."""
        return QRectF(self.left, self.top + self.row * self.row_of(day), self.width, self.row)

    def rects(self, block: Block) -> list[QRectF]:
        """The parts of a block: one, or two where it goes on after midnight."""
        spans = [(block.day, block.start, min(block.end, DAY_MINUTES))]
        if block.end > DAY_MINUTES:
            spans.append(((block.day + 1) % _WEEK, 0, block.end - DAY_MINUTES))
        return [self._rect(day, start, end) for day, start, end in spans]

    def _rect(self, day: int, start: int, end: int) -> QRectF:
        top = self.row_rect(day).top() + _PAD
        left = self.x(start)
        return QRectF(left, top, self.x(end) - left, self.row - 2.0 * _PAD)

    def grip(self, blocks: tuple[Block, ...], at: QPointF) -> tuple[int, Part] | None:
        """Which block a hand takes hold of at a point, and where; ends before middles."""
        whole = None
        for index, block in enumerate(blocks):
            rects = self.rects(block)
            if _near(rects[-1].right(), rects[-1], at):
                return (index, Part.END)
            if _near(rects[0].left(), rects[0], at):
                return (index, Part.START)
            if any(rect.contains(at) for rect in rects):
                whole = (index, Part.WHOLE)
        return whole

    def end_at(self, block: Block, at: QPointF) -> int:
        """The end of a block that is pulled to a point; on the next row it is the next day."""
        minute = self.minute_at(at.x())
        following = self.day_at(at.y()) == (block.day + 1) % _WEEK
        if following and minute <= block.start:
            return minute + DAY_MINUTES
        return max(minute, block.start + STEP)


def _near(edge: float, rect: QRectF, at: QPointF) -> bool:
    reach = min(_GRIP, rect.width() / 3.0)  # a short block can still be taken by its middle
    inside = edge - at.x() if edge == rect.right() else at.x() - edge
    return rect.top() <= at.y() <= rect.bottom() and -_GRIP <= inside <= reach
