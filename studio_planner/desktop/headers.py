"""The two heads of the timeline: the ruler of days and hours, and the names of the pieces."""

from __future__ import annotations

from math import ceil
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QFontMetrics, QFontMetricsF, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QHeaderView
from typing_extensions import override

from studio_planner.desktop import bar_words, words
from studio_planner.desktop.axis_marks import day_marks, hour_marks
from studio_planner.desktop.ground_painter import spans_in_view
from studio_planner.desktop.measures import LANE_HEAD_WIDTH
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.lane_model import LaneModel
    from studio_planner.services.ribbons import Lane

_LEAST_NAMED = 14
_LEAST_SHOWN = 0.6
_LEAST_ROOMY = 44
_HANDS = 4.0
_NOTCH = 5.0


class Ruler(QHeaderView):
    """Days and hours of the wall clock, a rule where hands can work, a notch for now."""

    def __init__(self, canvas: Canvas, parent: QWidget) -> None:
        """Draw from `canvas`, which knows scale, theme and backdrop."""
        super().__init__(Qt.Orientation.Horizontal, parent)
        self._canvas = canvas
        self.setAccessibleName(translate("timeline", "Days and hours"))
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setSectionsClickable(False)

    @override
    def sizeHint(self) -> QSize:
        fonts = self._canvas.fonts
        return QSize(0, ceil(fonts.plain_height + fonts.small_height + 16))

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        canvas = self._canvas
        with QPainter(self.viewport()) as painter:
            painter.fillRect(self.viewport().rect(), canvas.theme.colour("paper"))
            height = float(self.height())
            now_x = canvas.now_x
            self._draw_days(painter, height)
            self._draw_hours(painter, now_x)
            self._draw_hands(painter, height)
            if -1.0 <= now_x <= canvas.scale.width:
                self._draw_now(painter, now_x, height)

    def _draw_days(self, painter: QPainter, height: float) -> None:
        canvas, scale = self._canvas, self._canvas.scale
        marks = day_marks(
            canvas.zone, scale.origin, scale.end, scale.pixels_per_day, canvas.week_starts
        )
        painter.setFont(canvas.fonts.bold)
        metrics = QFontMetricsF(canvas.fonts.bold)
        for index, mark in enumerate(marks):
            x = scale.x(mark.second)
            following = (
                scale.x(marks[index + 1].second) if index + 1 < len(marks) else scale.width
            )
            painter.setPen(QPen(canvas.theme.colour("outline"), 1.0))
            painter.drawLine(QPointF(round(x) + 0.5, 4.0), QPointF(round(x) + 0.5, height))
            left = max(x + 6.0, 6.0)
            text = _fitting(mark.second, canvas, metrics, following - left - 8.0)
            painter.setPen(canvas.theme.colour("ink"))
            painter.drawText(QPointF(left, 4.0 + metrics.ascent()), text)

    def _draw_hours(self, painter: QPainter, now_x: float) -> None:
        canvas, scale = self._canvas, self._canvas.scale
        metrics = QFontMetricsF(canvas.fonts.small)
        painter.setFont(canvas.fonts.small)
        painter.setPen(canvas.theme.colour("quiet"))
        base = 5.0 + canvas.fonts.plain_height + metrics.ascent()
        wall = canvas.wall
        keep = 3.0 + metrics.horizontalAdvance(words.clock_time(canvas.now, wall))
        marks = hour_marks(wall.zone, scale.origin, scale.end, scale.pixels_per_day, wall.form)
        for mark in marks:
            x, text = scale.x(mark.second), words.hour_mark(mark.local.hour, wall.form)
            half = metrics.horizontalAdvance(text) / 2.0
            clear = not now_x - half - 6.0 < x < now_x + keep + half + 8.0
            if mark.local.hour and clear and half <= x <= scale.width - half:
                painter.drawText(QPointF(x - half, base), text)

    def _draw_hands(self, painter: QPainter, height: float) -> None:
        canvas = self._canvas
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(canvas.theme.colour("hands"))
        painter.drawRects(
            [
                QRectF(left, height - _HANDS - 1.0, max(right - left, 1.0), _HANDS)
                for left, right in spans_in_view(canvas.working, canvas.scale)
            ]
        )
        painter.setPen(QPen(canvas.theme.colour("rule"), 1.0))
        painter.drawLine(QPointF(0.0, height - 0.5), QPointF(self.width(), height - 0.5))

    def _draw_now(self, painter: QPainter, x: float, height: float) -> None:
        canvas = self._canvas
        colour = canvas.theme.colour("now")
        x = round(x) + 0.5
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour)
        top = height - _HANDS - 2.0 - _NOTCH
        notch = [QPointF(x - _NOTCH, top), QPointF(x + _NOTCH, top), QPointF(x, top + _NOTCH)]
        painter.drawPolygon(QPolygonF(notch))
        painter.setPen(QPen(colour, 1.6))
        painter.drawLine(QPointF(x, top), QPointF(x, height))
        metrics = QFontMetricsF(canvas.fonts.small_bold)
        text = words.clock_time(canvas.now, canvas.wall)
        left = x + 4.0
        if left + metrics.horizontalAdvance(text) > canvas.scale.width:
            left = x - 4.0 - metrics.horizontalAdvance(text)
        painter.setFont(canvas.fonts.small_bold)
        painter.drawText(
            QPointF(left, 5.0 + canvas.fonts.plain_height + metrics.ascent()), text
        )


def _fitting(second: float, canvas: Canvas, metrics: QFontMetricsF, room: float) -> str:
    day = words.local(second, canvas.zone)
    choices = (words.day_name(day, canvas.zone), words.day_name(day, canvas.zone, month=False))
    return next((text for text in choices if metrics.horizontalAdvance(text) <= room), "")


class LaneHead(QHeaderView):
    """The pieces by name, each with its blank and its spot."""

    def __init__(self, canvas: Canvas, model: LaneModel, parent: QWidget) -> None:
        """Draw from `canvas` and `model`."""
        super().__init__(Qt.Orientation.Vertical, parent)
        self._canvas = canvas
        self._lanes = model
        self.setAccessibleName(translate("timeline", "Pieces"))
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        self.setMinimumSectionSize(2)
        self.setSectionsClickable(True)
        self.setHighlightSections(True)

    @override
    def sizeHint(self) -> QSize:
        return QSize(LANE_HEAD_WIDTH, 0)

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        with QPainter(self.viewport()) as painter:
            painter.fillRect(self.viewport().rect(), self._canvas.theme.colour("paper"))
        super().paintEvent(event)
        row = self._canvas.current_row
        if 0 <= row < len(self._lanes.lanes) and self.sectionSize(row) < _LEAST_NAMED:
            self._draw_only_name(row)

    def _draw_only_name(self, row: int) -> None:
        """Name the chosen lane where lanes are too thin to be named all."""
        theme, font = self._canvas.theme, self._canvas.fonts.bold
        metrics = QFontMetrics(font)
        top = self.sectionViewportPosition(row) + self.sectionSize(row) // 2
        area = QRect(14, top - metrics.height() // 2, self.width() - 20, metrics.height())
        name = words.piece_name(self._lanes.lanes[row].piece)
        with QPainter(self.viewport()) as painter:
            painter.setFont(font)
            painter.setPen(theme.colour("ink"))
            text = metrics.elidedText(name, Qt.TextElideMode.ElideRight, area.width())
            painter.drawText(area, 0, text)

    @override
    def paintSection(self, painter: QPainter, rect: QRect, logicalIndex: int) -> None:
        theme, fonts = self._canvas.theme, self._canvas.fonts
        lane = self._lanes.lanes[logicalIndex]
        painter.save()
        painter.fillRect(rect, theme.colour("paper"))
        shown = self.viewport().height() - rect.top() >= rect.height() * _LEAST_SHOWN
        if rect.height() >= _LEAST_NAMED and shown:
            painter.setPen(QPen(theme.colour("faint_rule"), 1.0))
            painter.drawLine(rect.bottomLeft(), rect.bottomRight())
            self._draw_words(
                painter, rect, lane_head_lines(lane), roomy=rect.height() >= _LEAST_ROOMY
            )
        if logicalIndex == self._canvas.current_row:
            width = 3
            painter.fillRect(
                QRect(rect.left(), rect.top(), width, rect.height()), theme.colour("ink")
            )
        painter.setFont(fonts.plain)
        painter.restore()

    def _draw_words(
        self, painter: QPainter, rect: QRect, lines: list[str], *, roomy: bool
    ) -> None:
        theme, fonts = self._canvas.theme, self._canvas.fonts
        left, room = rect.left() + 14, rect.width() - 20
        bold, small = QFontMetrics(fonts.bold), QFontMetrics(fonts.small)
        below = lines[1 : 1 + (rect.height() - bold.height() - 6) // small.height()]
        total = bold.height() + (len(below) * small.height() if roomy else 0)
        top = rect.top() + (rect.height() - total) // 2
        painter.setPen(theme.colour("ink"))
        painter.setFont(fonts.bold)
        name = bold.elidedText(lines[0], Qt.TextElideMode.ElideRight, room)
        painter.drawText(QRect(left, top, room, bold.height()), 0, name)
        painter.setPen(theme.colour("quiet"))
        painter.setFont(fonts.small)
        top += bold.height()
        for line in below if roomy else ():
            text = small.elidedText(line, Qt.TextElideMode.ElideRight, room)
            # Heights are whole pixels, letters at other scales are not: leave room below.
            painter.drawText(QRect(left, top, room, small.height() + 3), 0, text)
            top += small.height()


def lane_head_lines(lane: Lane) -> list[str]:
    """The lines at the head of a lane, most needed first."""
    name, *rest = words.piece_name(lane.piece), *bar_words.lane_lines(lane)
    return [name, rest[-1], *rest[:-1]] if lane.reason else [name, *rest]
