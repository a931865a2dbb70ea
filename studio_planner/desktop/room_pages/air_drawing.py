"""Draws the expected air: temperature with its band, humidity below, points to be dragged."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPen, QPolygonF

from studio_planner.desktop import words
from studio_planner.desktop.quantities import Quantity, scale_of
from studio_planner.desktop.room_pages.air_axes import LEFT, TOP
from studio_planner.desktop.tongue import translate, weekday
from studio_planner.services.editing.air_weeks import DAY_MINUTES, WeekLine, minute_of

if TYPE_CHECKING:
    from studio_planner.craft.settings import ClockForm
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.room_pages.air_axes import AirAxes, Spotted
    from studio_planner.services.editing.air_weeks import Pattern

_TICKS = 4
_SIZES = {False: (4.5, 7.5), True: (3.5, 6.5)}
"""Half of a point and of the chosen one: of temperatures, and of humidities (True)."""

_TICK_GAP = 14.0
_HOURS = {1: 3, 7: 12}


class AirDrawing:
    """One picture of a pattern on its axes."""

    def __init__(self, canvas: Canvas, axes: AirAxes, pattern: Pattern, band: float) -> None:
        """Draw `pattern`, whose temperature may be off by `band` [K] either way."""
        self._canvas = canvas
        self._axes = axes
        self._pattern = pattern
        self._band = band
        self._line = WeekLine(pattern)

    def draw(self, painter: QPainter, form: ClockForm) -> None:
        """Draw ground, axes and lines."""
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._draw_ground(painter, form)
        self._draw_degrees(painter)
        corners = self._corners()
        self._draw_band(painter, corners)
        self._draw_line(painter, [QPointF(x, self._axes.y(c)) for x, c, _ in corners], "warmth")
        if self._axes.has_damp:
            self._draw_damp(painter, corners)

    def _corners(self) -> list[tuple[float, float, float | None]]:
        """Both ends of the picture and every point between them: x, °C, humidity."""
        axes, end = self._axes, self._axes.minutes
        inner = [
            (axes.x(minute), point.celsius, point.humidity_pct)
            for minute, point in self._line.corners
            if minute <= end and (minute < end or axes.days > 1)
        ]
        first, last = self._line.at(0, after=False), self._line.at(end, after=False)
        return [(axes.x(0), *first), *inner, (axes.x(end), *last)]

    def _draw_ground(self, painter: QPainter, form: ClockForm) -> None:
        axes, theme, fonts = self._axes, self._canvas.theme, self._canvas.fonts
        painter.fillRect(
            QRectF(LEFT, TOP, axes.width, axes.bottom - TOP), theme.colour("panel")
        )
        painter.setFont(fonts.small)
        metrics = QFontMetricsF(fonts.small)
        every = _HOURS[axes.days]
        for hour in range(0, 24 * axes.days + 1, every):
            x = axes.x(hour * 60)
            whole = hour % 24 == 0
            painter.setPen(QPen(theme.colour("rule" if whole else "faint_rule"), 1.0))
            painter.drawLine(QLineF(x, TOP, x, axes.bottom))
            if axes.days > 1 and not whole:
                continue
            text = words.hour_mark(hour, form) if axes.days == 1 else ""
            painter.setPen(theme.colour("quiet"))
            wide = metrics.horizontalAdvance(text)
            painter.drawText(
                QPointF(x - wide / 2.0, axes.bottom + metrics.height() + 4.0), text
            )
        if axes.days > 1:
            self._draw_days(painter, metrics)

    def _draw_days(self, painter: QPainter, metrics: QFontMetricsF) -> None:
        for day in range(self._axes.days):
            name = weekday(day)
            x = self._axes.x((day + 0.5) * DAY_MINUTES) - metrics.horizontalAdvance(name) / 2.0
            painter.drawText(QPointF(x, self._axes.bottom + metrics.height() + 4.0), name)

    def _draw_degrees(self, painter: QPainter) -> None:
        axes, theme = self._axes, self._canvas.theme
        scale = scale_of(Quantity.TEMPERATURE, axes.units)
        low, high = round(scale.shown(axes.low)), round(scale.shown(axes.high))
        step = max((high - low) // _TICKS, 1)
        for shown in range(low, high + 1, step):
            y = axes.y(scale.inside(shown))
            painter.setPen(QPen(theme.colour("faint_rule"), 1.0))
            painter.drawLine(QLineF(LEFT, y, LEFT + axes.width, y))
            self._tick(painter, y, f"{shown} {scale.unit}")
        self._caption(painter, TOP, translate("room", "temperature, and how far it may be off"))

    def _draw_band(
        self, painter: QPainter, corners: list[tuple[float, float, float | None]]
    ) -> None:
        axes = self._axes
        upper = [QPointF(x, axes.y(c + self._band)) for x, c, _ in corners]
        lower = [QPointF(x, axes.y(c - self._band)) for x, c, _ in corners]
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._canvas.theme.colour("warmth_band"))
        painter.drawPolygon(QPolygonF(upper + lower[::-1]))

    def _draw_damp(
        self, painter: QPainter, corners: list[tuple[float, float, float | None]]
    ) -> None:
        axes, theme = self._axes, self._canvas.theme
        painter.fillRect(
            QRectF(LEFT, axes.warm_bottom, axes.width, axes.damp_top - axes.warm_bottom),
            theme.colour("paper"),
        )
        for mark in (0, 50, 100):
            y = axes.damp_y(mark)
            painter.setPen(QPen(theme.colour("faint_rule"), 1.0))
            painter.drawLine(QLineF(LEFT, y, LEFT + axes.width, y))
            self._tick(painter, y, f"{mark} %")
        self._caption(painter, axes.damp_top, translate("room", "humidity"))
        part: list[QPointF] = []
        for x, _, humidity in corners:
            if humidity is None:
                self._draw_line(painter, part, "dew")
                part = []
            else:
                part.append(QPointF(x, axes.damp_y(humidity)))
        self._draw_line(painter, part, "dew")

    def _draw_line(self, painter: QPainter, points: list[QPointF], colour: str) -> None:
        if len(points) > 1:
            painter.setPen(QPen(self._canvas.theme.colour(colour), 2.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawPolyline(QPolygonF(points))

    def draw_points(
        self, painter: QPainter, spots: list[Spotted], chosen: int, *, focus: bool
    ) -> None:
        """Draw the points: round for warmth, square for humidity, the chosen one larger."""
        theme = self._canvas.theme
        for spot in spots:
            mine = spot.index == chosen
            reach = _SIZES[spot.damp][mine]
            rect = QRectF(spot.x - reach, spot.y - reach, 2 * reach, 2 * reach)
            painter.setBrush(theme.colour("paper"))
            painter.setPen(QPen(theme.colour("ink"), 2.4 if mine else 1.6))
            (painter.drawRect if spot.damp else painter.drawEllipse)(rect)
            if mine and focus:
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.setPen(QPen(theme.colour("window"), 1.6, Qt.PenStyle.DashLine))
                painter.drawRect(rect.adjusted(-4, -4, 4, 4))

    def draw_figures(self, painter: QPainter, spot: Spotted, text: str) -> None:
        """Write what a dragged point says beside it, on paper, inside the picture."""
        theme, fonts, axes = self._canvas.theme, self._canvas.fonts, self._axes
        metrics = QFontMetricsF(fonts.bold)
        wide, high = metrics.horizontalAdvance(text) + 14.0, metrics.height() + 6.0
        left = spot.x + 14.0
        if left + wide > LEFT + axes.width:
            left = spot.x - 14.0 - wide
        top = min(max(spot.y - high - 10.0, 0.0), axes.height - high)
        box = QRectF(left, top, wide, high)
        painter.setPen(QPen(theme.colour("ink"), 1.0))
        painter.setBrush(theme.colour("paper"))
        painter.drawRect(box)
        painter.setFont(fonts.bold)
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)

    def _tick(self, painter: QPainter, y: float, text: str) -> None:
        fonts = self._canvas.fonts
        metrics = QFontMetricsF(fonts.small)
        painter.setFont(fonts.small)
        painter.setPen(self._canvas.theme.colour("quiet"))
        left = LEFT - _TICK_GAP - metrics.horizontalAdvance(text)
        painter.drawText(QPointF(left, y + metrics.capHeight() / 2.0), text)

    def _caption(self, painter: QPainter, top: float, text: str) -> None:
        painter.setFont(self._canvas.fonts.small)
        painter.setPen(self._canvas.theme.colour("quiet"))
        painter.drawText(QPointF(LEFT, top - 5.0), text)


def point_words(pattern: Pattern, index: int, axes: AirAxes, form: ClockForm) -> str:
    """What a point says: Mon 07:00, 19.5 °C, 55 %."""
    point = pattern[index]
    day = "" if point.day is None else f"{weekday(point.day)} "
    warmth = words.degrees(point.celsius, axes.units, decimals=1)
    text = f"{day}{words.time_of_day(point.at, form)}, {warmth}"
    damp = point.humidity_pct
    return text if damp is None else f"{text}, {damp:.0f} %"


def minutes_of(pattern: Pattern, index: int) -> int:
    """The minute of the day of a point."""
    return minute_of(pattern[index].at)
