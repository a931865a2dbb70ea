"""Draws what lies behind the lanes and the room: nights, days and hours, and the now line."""

from __future__ import annotations

from bisect import bisect_left
from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QRectF, Qt
from PySide6.QtGui import QPen

from studio_planner.desktop.axis_marks import day_marks, hour_marks

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtGui import QPainter

    from studio_planner.craft.local_time import Span
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.theme import Theme
    from studio_planner.desktop.time_scale import TimeScale

_LEAST_NIGHT = 3.0


def spans_in_view(spans: Sequence[Span], scale: TimeScale) -> list[tuple[float, float]]:
    """The (left, right) pixels of the spans that are in view."""
    first = bisect_left(spans, scale.origin, key=lambda span: span[1].timestamp())
    found = []
    for start, end in spans[first:]:
        left = scale.x(start.timestamp())
        if left > scale.width:
            break
        found.append((max(left, -2.0), min(scale.x(end.timestamp()), scale.width + 2.0)))
    return found


def draw_ground(painter: QPainter, height: float, canvas: Canvas) -> None:
    """Draw nights as shade, midnights as lines and hours as dots, over the whole height."""
    theme, scale, zone = canvas.theme, canvas.scale, canvas.zone
    shades = [
        QRectF(left, 0.0, right - left, height)
        for left, right in spans_in_view(canvas.nights, scale)
        if right - left >= _LEAST_NIGHT
    ]
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(theme.colour("night"))
    painter.drawRects(shades)
    days = day_marks(zone, scale.origin, scale.end, scale.pixels_per_day, canvas.week_starts)
    form = canvas.wall.form
    hours = hour_marks(zone, scale.origin, scale.end, scale.pixels_per_day, form)
    painter.setPen(QPen(theme.colour("faint_rule"), 1.0, Qt.PenStyle.DotLine))
    painter.drawLines(
        [_line(scale.x(mark.second), height) for mark in hours if mark.local.hour]
    )
    painter.setPen(QPen(theme.colour("rule"), 1.0))
    painter.drawLines([_line(scale.x(mark.second), height) for mark in days])


def draw_now(painter: QPainter, height: float, theme: Theme, x: float) -> None:
    """Draw the now line over the whole height, with a rim that parts it from any film."""
    painter.setPen(QPen(theme.colour("paper"), 4.0))
    painter.drawLine(_line(x, height))
    painter.setPen(QPen(theme.colour("now"), 1.6))
    painter.drawLine(_line(x, height))


def _line(x: float, height: float) -> QLineF:
    return QLineF(round(x) + 0.5, 0.0, round(x) + 0.5, height)
