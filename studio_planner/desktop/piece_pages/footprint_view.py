"""A piece or set from above, as it lies on its spot, to scale."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter, QPen
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from studio_planner.craft.shapes import Oval, Round
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from studio_planner.craft.pieces import Piece
    from studio_planner.desktop.canvas import Canvas

_HEIGHT = 240
_NARROWEST, _WIDEST = 160, 400
_PAD = 6.0


class FootprintView(QWidget):
    """The footprint as a dashed frame, the pieces in it as they are set in rows."""

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Show nothing yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._piece: Piece | None = None
        self.setFixedHeight(_HEIGHT)
        self.setMinimumWidth(_NARROWEST)
        self.setMaximumWidth(_WIDEST)
        self.setAccessibleName(translate("pieces", "Seen from above on its spot"))
        canvas.redrawn.connect(self.update)

    def show_piece(self, piece: Piece) -> None:
        """Show a piece."""
        self._piece = piece
        self.update()

    def rects(self) -> tuple[QRectF, list[QRectF]]:
        """The footprint, and every piece of the set in it, in pixels."""
        piece = self._piece
        if piece is None:
            return QRectF(), []
        length, width = piece.footprint
        room = self.width() - 2 * _PAD, self.height() - 2 * _PAD
        scale = min(room[0] / length, room[1] / width)
        frame = QRectF(_PAD, _PAD, length * scale, width * scale)
        columns = math.ceil(math.sqrt(piece.count))
        rows = math.ceil(piece.count / columns)
        cell = frame.width() / columns, frame.height() / rows
        size = piece.shape.length_mm * scale, piece.shape.width_mm * scale
        found = []
        for number in range(piece.count):
            left = frame.left() + (number % columns + 0.5) * cell[0] - size[0] / 2.0
            top = frame.top() + (number // columns + 0.5) * cell[1] - size[1] / 2.0
            found.append(QRectF(left, top, *size))
        return frame, found

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        piece, theme = self._piece, self._canvas.theme
        if piece is None:
            return
        frame, pieces = self.rects()
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            pen = QPen(theme.colour("quiet"), 1.0, Qt.PenStyle.DashLine)
            painter.setPen(pen)
            painter.drawRect(frame)
            painter.setPen(QPen(theme.colour("film_edge"), 1.2))
            painter.setBrush(theme.colour("wood"))
            for rect in pieces:
                if isinstance(piece.shape, Round | Oval):
                    painter.drawEllipse(rect)
                else:
                    painter.drawRect(rect)
