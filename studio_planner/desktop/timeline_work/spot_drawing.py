"""Draws the plan by the shelf: boards, what stands on them, pours, pins, ghosts, the hand."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from PySide6.QtCore import QLineF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPen

from studio_planner.desktop import words
from studio_planner.desktop.ribbon_strokes import draw_wedges
from studio_planner.desktop.timeline_work.slip import beside, draw_slip, laid_out
from studio_planner.desktop.timeline_work.spot_model import coats_of

if TYPE_CHECKING:
    from collections.abc import Iterable

    from PySide6.QtCore import QSizeF

    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.timeline_work.slip import Slip
    from studio_planner.services.moving.comparing import MovedPour
    from studio_planner.services.moving.spot_lanes import Standing

HEIGHT = 64
_BOX, _BOARD, _POURS = 44.0, 4.0, 9.0
_PAD = 6.0
_LEAST = 4.0


class BoxLook(NamedTuple):
    """How a box stands out: chosen itself or its piece, with the keys, in the hand."""

    chosen: bool = False
    same_piece: bool = False
    focused: bool = False


class SpotDrawing:
    """Draws on a canvas; rows are given by the y of their upper edge."""

    def __init__(self, canvas: Canvas) -> None:
        """Draw with the theme, fonts and scale of `canvas`."""
        self._canvas = canvas

    def box(self, one: Standing, top: float) -> QRectF:
        """Where a stay lies in the row that begins at `top`."""
        scale = self._canvas.scale
        left = scale.x(one.start.timestamp())
        right = scale.x(scale.last if one.end is None else one.end.timestamp())
        y = top + (HEIGHT - _BOX - _BOARD) / 2.0
        return QRectF(left, y, max(right - left, _LEAST), _BOX)

    def draw_board(self, painter: QPainter, top: float, width: float) -> None:
        """The board of a spot, under what stands on it."""
        y = top + (HEIGHT - _BOX - _BOARD) / 2.0 + _BOX
        board = QRectF(0.0, y, width, _BOARD)
        painter.fillRect(board, self._canvas.theme.colour("wood"))

    def draw_box(self, painter: QPainter, one: Standing, top: float, look: BoxLook) -> None:
        """What stands there: its name, its coats, and below them a block for each pour."""
        theme, fonts, box = self._canvas.theme, self._canvas.fonts, self.box(one, top)
        if box.right() < 0.0 or box.left() > self._canvas.scale.width:
            return
        strong = look.same_piece or look.chosen
        width = (3.0 if look.focused else 2.0) if look.chosen else 1.6 if strong else 1.0
        painter.setBrush(theme.colour("panel"))
        painter.setPen(QPen(theme.colour("ink" if strong else "quiet"), width))
        painter.drawRect(box)
        inner = box.adjusted(_PAD, 1.0, -_PAD, -_POURS - 1.0)
        inner.setLeft(max(inner.left(), 2.0))
        name = _cut(QFontMetricsF(fonts.bold), words.piece_name(one.piece), inner)
        coats = _cut(QFontMetricsF(fonts.small), coats_of(one), inner) if name else ""
        painter.setPen(theme.colour("ink"))
        painter.setFont(fonts.bold)
        painter.drawText(inner, Qt.AlignmentFlag.AlignTop, name)
        painter.setFont(fonts.small)
        painter.setPen(theme.colour("quiet"))
        painter.drawText(inner, Qt.AlignmentFlag.AlignBottom, coats)
        self._draw_pours(painter, one, box)

    def _draw_pours(self, painter: QPainter, one: Standing, box: QRectF) -> None:
        theme = self._canvas.theme
        for coat in one.coats:
            if coat.start < one.start:
                continue  # it was poured on another spot, and carried here
            block = self._block(coat, box)
            if coat.poured:
                painter.setPen(QPen(theme.colour("ink"), 1.0))
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawRect(block.adjusted(0.5, 0.5, -0.5, -0.5))
            else:
                painter.fillRect(block, theme.colour("ink"))
            if coat.coat in one.lane.pinned and not coat.poured:
                draw_wedges(painter, theme, block)

    def _block(self, coat: PlannedCoat, box: QRectF) -> QRectF:
        scale = self._canvas.scale
        left, right = scale.x(coat.start.timestamp()), scale.x(coat.end.timestamp())
        y = box.bottom() - _POURS
        return QRectF(left, y, max(right - left, _LEAST), _POURS)

    # Ghosts

    def draw_ghosts(
        self, painter: QPainter, moved: Iterable[tuple[MovedPour, float | None, float | None]]
    ) -> None:
        """Outline where pours were, with a thread to where they are; with old and new top."""
        boxes: list[QRectF] = []
        threads: list[QLineF] = []
        for pour, before, after in moved:
            if before is None:
                continue
            old = self._block(pour.before, self._row_box(before))
            boxes.append(old)
            if after is not None:
                new = self._block(pour.after, self._row_box(after))
                threads.append(QLineF(old.center(), new.center()))
        theme = self._canvas.theme
        painter.save()
        painter.setBrush(Qt.BrushStyle.NoBrush)
        # A rim of paper parts the outline from whatever it lies on.
        painter.setPen(QPen(theme.colour("paper"), 4.0))
        painter.drawRects(boxes)
        painter.setPen(QPen(theme.colour("ink"), 1.6, Qt.PenStyle.DotLine))
        painter.drawRects(boxes)
        painter.drawLines(threads)
        painter.restore()

    @staticmethod
    def _row_box(top: float) -> QRectF:
        return QRectF(0.0, top + (HEIGHT - _BOX - _BOARD) / 2.0, 1.0, _BOX)

    # In the hand

    def draw_left_behind(self, painter: QPainter, one: Standing, top: float) -> None:
        """Where a piece stood before it was taken, as a dotted outline."""
        box, theme = self.box(one, top), self._canvas.theme
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(theme.colour("quiet"), 1.4, Qt.PenStyle.DotLine))
        painter.drawRect(box)

    def draw_frame(
        self, painter: QPainter, one: Standing, top: float, *, allowed: bool
    ) -> None:
        """The frame of a piece in the hand; struck out where it may not be dropped."""
        frame, theme = self.box(one, top).adjusted(-3.0, -3.0, 3.0, 3.0), self._canvas.theme
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(theme.colour("paper"), 4.0))
        painter.drawRect(frame)
        painter.setPen(QPen(theme.colour("ink" if allowed else "now"), 2.0))
        painter.drawRect(frame)
        if not allowed:
            # Struck out as well, so that nobody needs the colour to see it.
            left = max(frame.left(), 0.0)
            painter.drawLine(QLineF(left, frame.bottom(), left + _BOX, frame.top()))

    def draw_slip(
        self, painter: QPainter, slip: Slip, top: float, second: float, view: QSizeF
    ) -> None:
        """A slip of paper beside the row that begins at `top`, at an instant [s]."""
        laid = laid_out(slip, self._canvas.fonts, view.width() - 4.0)
        row = QRectF(0.0, top, 1.0, float(HEIGHT))
        at = beside(laid, row, self._canvas.scale.x(second) - 5.0, view)
        draw_slip(painter, laid, at, self._canvas.theme, self._canvas.fonts)


def _cut(metrics: QFontMetricsF, text: str, room: QRectF) -> str:
    least = metrics.horizontalAdvance("MM\N{HORIZONTAL ELLIPSIS}")
    if room.width() < least:
        return ""
    return metrics.elidedText(text, Qt.TextElideMode.ElideRight, room.width())
