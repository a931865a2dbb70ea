"""Draws where pours were before a plan moved them, as dotted outlines with a thread between."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QRectF, Qt
from PySide6.QtGui import QPen

if TYPE_CHECKING:
    from collections.abc import Iterable

    from PySide6.QtGui import QPainter

    from studio_planner.desktop.timeline import Timeline
    from studio_planner.services.moving.comparing import MovedPour

_LEAST = 5.0


def draw_ghosts(painter: QPainter, timeline: Timeline, moved: Iterable[MovedPour]) -> None:
    """Outline the old place of every moved pour in view, with a thread to the new one."""
    shape, scale, theme = timeline.shape, timeline.canvas.scale, timeline.canvas.theme
    rows = {lane.piece.key: row for row, lane in enumerate(timeline.lanes.lanes)}
    boxes: list[QRectF] = []
    threads: list[QLineF] = []
    for pour in moved:
        row = rows.get(pour.piece)
        if row is None:
            continue
        left = scale.x(pour.before.start.timestamp())
        right = scale.x(pour.before.end.timestamp())
        goes = scale.x(pour.after.start.timestamp())
        upper = timeline.top_of(row) + shape.lintel
        lower = timeline.top_of(row) + shape.film_bottom + 1.0
        boxes.append(QRectF(left, upper, max(right - left, _LEAST), lower - upper))
        threads.append(QLineF(left, lower, goes, lower))
    painter.save()
    painter.setBrush(Qt.BrushStyle.NoBrush)
    # A rim of paper parts the outline from whatever film it lies on.
    painter.setPen(QPen(theme.colour("paper"), 4.0))
    painter.drawRects(boxes)
    painter.setPen(QPen(theme.colour("ink"), 1.6, Qt.PenStyle.DotLine))
    painter.drawRects(boxes)
    painter.drawLines(threads)
    painter.restore()
