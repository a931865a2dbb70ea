"""Draws a pour in the hand: its lanes as they would be, the time, and what it would break."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from studio_planner.desktop.ground_painter import draw_ground, draw_now
from studio_planner.desktop.labels import TextStore, draw_labels
from studio_planner.desktop.lane_labels import LaneLabels
from studio_planner.desktop.lane_shape import block_rect
from studio_planner.desktop.ribbon_painter import RibbonPainter, bars_in_view
from studio_planner.desktop.timeline_work.slip import beside, draw_slip, laid_out
from studio_planner.services.moving.held import ribbon_of
from studio_planner.services.ribbons import Ribbon

if TYPE_CHECKING:
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.theme import Theme
    from studio_planner.desktop.timeline import Timeline
    from studio_planner.desktop.timeline_work.drag import Drag
    from studio_planner.desktop.timeline_work.slip import Slip
    from studio_planner.services.ribbons import Lane


class DragPainter:
    """Draws over a timeline while a pour is in the hand."""

    def __init__(self, timeline: Timeline) -> None:
        """Draw with the timeline's canvas."""
        self._timeline = timeline
        self._canvas: Canvas = timeline.canvas
        self._theme: Theme = self._canvas.theme
        self._ribbons = RibbonPainter(self._theme)
        self._store = TextStore()

    def paint(self, painter: QPainter, drag: Drag) -> None:
        """Draw the lanes of its mix anew, and the words about it at its bar."""
        if self._theme is not self._canvas.theme:
            self._theme = self._canvas.theme
            self._ribbons = RibbonPainter(self._theme)
        rows = {lane.piece.key: row for row, lane in enumerate(self._timeline.lanes.lanes)}
        for lane in drag.lanes:
            row = rows.get(lane.piece.key)
            if row is not None:
                self._draw_lane(painter, lane, row, drag)
        key = drag.bar.lane.piece.key
        self.draw_words(painter, drag.slip, key, drag.wanted.timestamp())

    def _draw_lane(self, painter: QPainter, lane: Lane, row: int, drag: Drag) -> None:
        canvas, shape, scale = self._canvas, self._timeline.shape, self._canvas.scale
        top, width = float(self._timeline.top_of(row)), float(scale.width)
        area = QRectF(0.0, top, width, float(shape.height) - (0.0 if shape.hairline else 1.0))
        painter.save()
        painter.setClipRect(area)
        painter.fillRect(area, self._theme.colour("paper"))
        draw_ground(painter, top + shape.height, canvas)
        for bar in bars_in_view(lane, scale):
            if isinstance(bar, Ribbon):
                bar.ask_clocks(fine=not shape.hairline)
        self._draw_left_behind(painter, drag, lane, top)
        self._ribbons.paint(painter, [(lane, top)], shape, scale)
        if shape.named:
            labels = LaneLabels(self._theme, canvas.fonts, canvas.wall, self._store)
            draw_labels(painter, list(labels.in_view(lane, top, shape, scale)))
        draw_now(painter, top + shape.height, self._theme, canvas.now_x)
        coat = next(c.coat for c in drag.judge.mix if c.piece == lane.piece.key)
        self._draw_frame(painter, ribbon_of(lane, coat), top, allowed=drag.verdict.allowed)
        painter.restore()

    def _draw_left_behind(self, painter: QPainter, drag: Drag, lane: Lane, top: float) -> None:
        """Where the pour was taken from, as a dotted block."""
        if not drag.moved:
            return
        shape, scale = self._timeline.shape, self._canvas.scale
        before = next(c for c in drag.judge.mix if c.piece == lane.piece.key)
        left, right = scale.x(before.start.timestamp()), scale.x(before.end.timestamp())
        rect = QRectF(left, top + shape.lintel, max(right - left, 4.0), shape.film_height + 6.0)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(self._theme.colour("quiet"), 1.2, Qt.PenStyle.DotLine))
        painter.drawRect(rect)

    def _draw_frame(self, painter: QPainter, bar: Ribbon, top: float, *, allowed: bool) -> None:
        block = block_rect(bar, top, self._timeline.shape, self._canvas.scale)
        frame = block.adjusted(-3.0, -2.0, 3.0, 2.0)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(self._theme.colour("paper"), 4.0))
        painter.drawRect(frame)
        painter.setPen(QPen(self._theme.colour("ink" if allowed else "now"), 2.0))
        painter.drawRect(frame)
        if not allowed:
            # Struck out as well, so that nobody needs the colour to see it.
            painter.drawLine(frame.bottomLeft(), frame.topRight())

    def draw_words(self, painter: QPainter, slip: Slip, piece: str, second: float) -> None:
        """A slip of paper beside the lane of a piece (a key), at an instant [s]."""
        rows = (
            row for row, ln in enumerate(self._timeline.lanes.lanes) if ln.piece.key == piece
        )
        row = next(rows, None)
        if row is None:
            return
        fonts, scale, shape = self._canvas.fonts, self._canvas.scale, self._timeline.shape
        laid = laid_out(slip, fonts, float(scale.width) - 4.0)
        lane = QRectF(0.0, float(self._timeline.top_of(row)), 1.0, float(shape.height))
        size = self._timeline.viewport().size().toSizeF()
        at = beside(laid, lane, scale.x(second) - 5.0, size)
        draw_slip(painter, laid, at, self._canvas.theme, fonts)
