"""Drawing in millimetres, with black ink alone."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from studio_planner.desktop.paper.paper_type import (
    DOTS_PER_MM,
    Face,
    ascent,
    font_of,
    line_height,
    width_of,
    wrapped,
    writable,
)

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

HAIR, FINE, FIRM = 0.18, 0.3, 0.6
"""The widths of lines [mm]."""

BLACK = QColor(0, 0, 0)


class Ink:
    """A painter that takes millimetres from the top left of a page."""

    def __init__(self, painter: QPainter) -> None:
        """Draw with `painter`, whose units are dots of a page."""
        self.painter = painter

    def text(
        self, x: float, y: float, words: str, face: Face, *, right_of: float | None = None
    ) -> None:
        """Write one line whose top is at `y`; it ends at `right_of` where that is given."""
        if right_of is not None:
            x = right_of - width_of(words, face)
        self.painter.setPen(BLACK)
        self.painter.setFont(font_of(face))
        self.painter.drawText(_point(x, y + ascent(face)), writable(words))

    def lines(self, x: float, y: float, lines: Iterable[str], face: Face) -> float:
        """Write lines under one another; gives where the next would begin."""
        for line in lines:
            self.text(x, y, line, face)
            y += line_height(face)
        return y

    def paragraph(self, x: float, y: float, words: str, face: Face, width: float) -> float:
        """Write a text in as many lines as it takes; gives where the next would begin."""
        return self.lines(x, y, wrapped(words, face, width), face)

    def rule(
        self, start: tuple[float, float], end: tuple[float, float], width: float = HAIR
    ) -> None:
        """A straight line."""
        self._pen(width)
        self.painter.drawLine(_point(*start), _point(*end))

    def box(self, x: float, y: float, width: float, height: float, pen: float = HAIR) -> None:
        """An empty box."""
        self._pen(pen)
        self.painter.setBrush(Qt.BrushStyle.NoBrush)
        dots = (value * DOTS_PER_MM for value in (x, y, width, height))
        self.painter.drawRect(QRectF(*dots))

    def outline(
        self, points: Sequence[tuple[float, float]], pen: float = FINE, *, filled: bool = False
    ) -> None:
        """A closed line through points, black inside where it is `filled`."""
        self._pen(pen)
        self.painter.setBrush(BLACK if filled else Qt.BrushStyle.NoBrush)
        self.painter.drawPolygon(QPolygonF([_point(*point) for point in points]))

    def _pen(self, width: float) -> None:
        pen = QPen(BLACK, width * DOTS_PER_MM)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        self.painter.setPen(pen)


def _point(x: float, y: float) -> QPointF:
    return QPointF(x * DOTS_PER_MM, y * DOTS_PER_MM)
