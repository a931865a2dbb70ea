"""Draws a week of hours: nights as shade, blocks as green rules between two posts."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPen

from studio_planner.desktop import words
from studio_planner.desktop.tongue import whole_weekday
from studio_planner.services.editing.weeks import wall_time

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.settings import ClockForm
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.studio_pages.week_shape import WeekShape
    from studio_planner.services.editing.weeks import Block

_HOUR_STEP, _POST, _NAME_LEFT = 3, 3.0, 12.0
_HOUR = 60


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekLook:
    """How a week is drawn: where, by which clock, what is chosen, the day that has the focus.

    `asleep` are stretches of every day, in minutes from midnight.
    """

    shape: WeekShape
    form: ClockForm
    asleep: tuple[tuple[int, int], ...]
    chosen: Block | None
    day: int | None


def draw_week(
    painter: QPainter, canvas: Canvas, look: WeekLook, blocks: Sequence[Block]
) -> None:
    """Draw all rows, the hours over them, and the blocks."""
    for day in range(7):
        _draw_row(painter, canvas, look, day, whole_weekday(day))
    _draw_hours(painter, canvas, look)
    for block in blocks:
        _draw_block(painter, canvas, look, block)


def _draw_row(painter: QPainter, canvas: Canvas, look: WeekLook, day: int, name: str) -> None:
    theme, fonts = canvas.theme, canvas.fonts
    rect, focused = look.shape.row_rect(day), day == look.day
    for start, end in look.asleep:
        left, right = look.shape.x(start), look.shape.x(end)
        night = QRectF(left, rect.top(), right - left, rect.height())
        painter.fillRect(night, theme.colour("night"))
    painter.setPen(QPen(theme.colour("faint_rule"), 1.0))
    painter.drawLine(QLineF(0.0, rect.bottom(), rect.right(), rect.bottom()))
    painter.setFont(fonts.bold if focused else fonts.plain)
    painter.setPen(theme.colour("ink"))
    base = rect.center().y() + QFontMetricsF(fonts.plain).capHeight() / 2.0
    painter.drawText(QPointF(_NAME_LEFT, base), name)
    if focused:
        mark = QRectF(0.0, rect.top() + 4.0, _POST, rect.height() - 8.0)
        painter.fillRect(mark, theme.colour("ink"))
        painter.setPen(QPen(theme.colour("window"), 2.0))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(rect.adjusted(0.0, 1.0, 0.0, -2.0))


def _draw_hours(painter: QPainter, canvas: Canvas, look: WeekLook) -> None:
    theme, fonts, shape = canvas.theme, canvas.fonts, look.shape
    metrics = QFontMetricsF(fonts.small)
    painter.setFont(fonts.small)
    bottom = shape.top + 7 * shape.row
    for hour in range(0, 25, _HOUR_STEP):
        x, text = shape.x(hour * 60), words.hour_mark(hour, look.form)
        painter.setPen(theme.colour("quiet"))
        left = x - metrics.horizontalAdvance(text) / 2.0
        painter.drawText(QPointF(left, 2.0 + metrics.ascent()), text)
        painter.setPen(QPen(theme.colour("faint_rule"), 1.0, Qt.PenStyle.DotLine))
        painter.drawLine(QLineF(x, shape.top - 3.0, x, bottom))


def _draw_block(painter: QPainter, canvas: Canvas, look: WeekLook, block: Block) -> None:
    theme, rects = canvas.theme, look.shape.rects(block)
    for rect in rects:
        painter.fillRect(rect, theme.colour("hands"))
        if block == look.chosen:
            painter.setPen(QPen(theme.colour("ink"), 2.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(rect.adjusted(-1.0, -1.0, 1.0, 1.0))
    first, last = rects[0], rects[-1]
    for rect, left in ((first, first.left()), (last, last.right() - _POST)):
        post = QRectF(left, rect.top() - 2.0, _POST, rect.height() + 4.0)
        painter.fillRect(post, theme.colour("ink"))
    _write_times(painter, canvas, look, block)


def _hours_only(block: Block, form: ClockForm) -> str:
    """Both ends without their minutes, where they have none: 6 pm to 10 pm in fewer letters."""
    ends = (block.start, block.end)
    if any(minute % _HOUR for minute in ends):
        return ""
    day = 24 * _HOUR
    start, end = (words.hour_mark(minute % day // _HOUR, form) for minute in ends)
    return f"{start}{words.TO}{end}"


def _write_times(painter: QPainter, canvas: Canvas, look: WeekLook, block: Block) -> None:
    font = canvas.fonts.small_bold
    metrics = QFontMetricsF(font)
    widest = max(look.shape.rects(block), key=QRectF.width)
    ends = (block.start, block.end)
    start, end = (words.time_of_day(wall_time(minute), look.form) for minute in ends)
    painter.setFont(font)
    painter.setPen(canvas.theme.colour("paper"))
    for text in (f"{start}{words.TO}{end}", _hours_only(block, look.form), start):
        if text and metrics.horizontalAdvance(text) <= widest.width() - 12.0:
            base = widest.center().y() + metrics.capHeight() / 2.0
            painter.drawText(QPointF(widest.left() + 7.0, base), text)
            return
