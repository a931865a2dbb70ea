"""The sign of one step of the set-up."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, QSize
from PySide6.QtGui import QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QWidget
from typing_extensions import override

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from studio_planner.desktop.canvas import Canvas

_SIGN = 22


class StepSign(QWidget):
    """A mould that is empty while something lacks, and full with a tick when it is there."""

    def __init__(self, canvas: Canvas, parent: QWidget) -> None:
        """Start empty."""
        super().__init__(parent)
        self._canvas = canvas
        self.done = False
        self.setFixedSize(QSize(_SIGN, _SIGN))
        canvas.redrawn.connect(self.update)

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        theme = self._canvas.theme
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            mould = QRectF(2.0, 4.0, 18.0, 15.0)
            if self.done:
                painter.fillRect(mould.adjusted(0, 3, 0, 0), theme.film_colour(0.55))
            painter.setPen(QPen(theme.colour("ink"), 1.6))
            sides = [mould.topLeft(), mould.bottomLeft(), mould.bottomRight(), mould.topRight()]
            painter.drawPolyline(QPolygonF(sides))
            if self.done:
                tick = [QPointF(6.0, 11.0), QPointF(9.5, 15.0), QPointF(17.5, 3.0)]
                painter.setPen(QPen(theme.colour("ink"), 2.2))
                painter.drawPolyline(QPolygonF(tick))
