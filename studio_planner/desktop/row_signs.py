"""The signs before the rows at the side of the desk; each stands beside its word."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from studio_planner.desktop.side_rows import Standing

if TYPE_CHECKING:
    from studio_planner.desktop.theme import Theme


def draw_cup(painter: QPainter, theme: Theme, rect: QRectF, level: float) -> None:
    """Draw a cup, filled as far as there is time left: 1 full, 0 empty."""
    slope = max(2.5, 0.13 * rect.width())
    top = rect.bottom() - rect.height() * level
    inset = slope * (1.0 - level)
    shape = [
        QPointF(rect.left() + inset, top),
        QPointF(rect.right() - inset, top),
        QPointF(rect.right() - slope, rect.bottom()),
        QPointF(rect.left() + slope, rect.bottom()),
    ]
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(theme.film_colour(0.25))
    painter.drawPolygon(QPolygonF(shape))
    rim = QPen(theme.colour("ink"), max(1.4, 0.025 * rect.width()))
    rim.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    painter.setPen(rim)
    outline = [rect.topLeft(), shape[3], shape[2], rect.topRight()]
    painter.drawPolyline(QPolygonF(outline))


def draw_square(painter: QPainter, theme: Theme, rect: QRectF, standing: Standing) -> None:
    """Draw how a promise stands: a square that is full, half, broken or dotted."""
    square = QRectF(rect.left() + 0.5, rect.top() + 1.5, 13.0, 13.0)
    colour = theme.colour("now" if standing is Standing.BROKEN else "ink")
    painter.setPen(QPen(colour, 1.5))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if standing is Standing.BROKEN:
        _draw_broken(painter, square)
        return
    if standing is Standing.OPEN:
        painter.setPen(QPen(colour, 1.2, Qt.PenStyle.DotLine))
    painter.drawRect(square)
    if standing in {Standing.KEPT, Standing.TIGHT}:
        height = square.height() * (1.0 if standing is Standing.KEPT else 0.5)
        filled = QRectF(square.left(), square.bottom() - height, square.width(), height)
        painter.fillRect(filled, colour)


def _draw_broken(painter: QPainter, square: QRectF) -> None:
    left, right, top, bottom = square.left(), square.right(), square.top(), square.bottom()
    middle = square.center()
    one = [(middle.x() - 1, top), (left, top), (left, bottom), (middle.x() - 4, bottom)]
    other = [(middle.x() + 3, top), (right, top), (right, bottom), (middle.x(), bottom)]
    crack = [(middle.x() + 3, top), (middle.x() - 1, middle.y() - 1)]
    crack += [(middle.x() + 3, middle.y() + 2), (middle.x(), bottom)]
    for line in (one, other, crack):
        painter.drawPolyline(QPolygonF([QPointF(x, y) for x, y in line]))
