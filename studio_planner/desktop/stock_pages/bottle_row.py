"""Bottles beside each other, drawn as they stand on the shelf."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QSizePolicy, QWidget
from typing_extensions import override

from studio_planner.desktop.stock_pages.bottle_drawing import Filled, draw_bottle

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtGui import QPaintEvent

    from studio_planner.desktop.canvas import Canvas

_SHAPE = 0.56
"""How wide a bottle is for its height."""

_GAP, _EDGE = 8.0, 1.5


class BottleRow(QWidget):
    """Some bottles in a row; what they show is also the widget's accessible description."""

    def __init__(self, canvas: Canvas, bottle_height: float, parent: QWidget) -> None:
        """Draw bottles of that height; there is room for at least `least`."""
        super().__init__(parent)
        self._canvas = canvas
        self._high = bottle_height
        self.least = 1
        self.shown: tuple[Filled, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        canvas.redrawn.connect(self.update)

    def show_bottles(self, bottles: Sequence[Filled], described: str) -> None:
        """Draw other bottles; `described` says the same in words."""
        self.shown = tuple(bottles)
        self.setAccessibleDescription(described)
        self.updateGeometry()
        self.update()

    @override
    def sizeHint(self) -> QSize:
        count = max(len(self.shown), self.least)
        wide = count * (self._high * _SHAPE + _GAP) + _EDGE
        return QSize(round(wide), round(self._high + 2.0 * _EDGE))

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            x = _EDGE
            for bottle in self.shown:
                rect = QRectF(x, _EDGE, self._high * _SHAPE, self._high)
                draw_bottle(painter, self._canvas.theme, rect, bottle, self._canvas.fonts.bold)
                x += self._high * _SHAPE + _GAP
