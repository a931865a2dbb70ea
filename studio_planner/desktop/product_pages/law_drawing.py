"""How the laws of a product are drawn: ground, thin lines, the one in front, the reader."""

from __future__ import annotations

from itertools import groupby, pairwise
from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPen, QPolygonF

from studio_planner.desktop import words
from studio_planner.desktop.patterns import pattern
from studio_planner.desktop.product_pages.law_words import reader_words, stage_name
from studio_planner.desktop.product_pages.plot_axes import round_marks
from studio_planner.desktop.quantities import Quantity, number_words, scale_of
from studio_planner.desktop.section_view import spread
from studio_planner.desktop.tongue import translate
from studio_planner.science.stages import Basis

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtGui import QColor, QPainter

    from studio_planner.craft.settings import Units
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.product_pages.plot_axes import PlotAxes
    from studio_planner.services.data_sheets.law_curves import LawCurve, LawPoint

_LEAST_TICK = 44.0
_DASH = [5.0, 4.0]
_WIDE_ENOUGH = 12.0
_NEARLY = 225
"""How opaque the ground under a word on the lines is, of 255."""

_AROUND = 14.0
"""What a text needs beside it within the plot."""


class LawDrawing:
    """Draws one frame of a plot of laws."""

    def __init__(self, painter: QPainter, axes: PlotAxes, canvas: Canvas, units: Units) -> None:
        """Draw with `painter` on `axes`, in the units that the studio reads."""
        self._painter = painter
        self._axes = axes
        self._theme = canvas.theme
        self._fonts = canvas.fonts
        self._units = units
        self._line = canvas.fonts.small_height
        painter.setFont(canvas.fonts.small)

    def _pen(self, name: str, width: float = 1.0) -> QPen:
        return QPen(self._colour(name), width)

    def _colour(self, name: str) -> QColor:
        return self._theme.colour(name)

    def ground(self, room: tuple[float, float] | None, minimum: float | None) -> None:
        """The field, the room's temperatures, what is too cold, and the marks of both axes."""
        area, axes, painter = self._axes.area, self._axes, self._painter
        painter.fillRect(area, self._colour("field"))
        if room is not None:
            left = max(axes.x(room[0]), area.left())
            right = min(axes.x(room[1]), area.right())
            band = QRectF(left, area.top(), max(right - left, 2.0), area.height())
            if left < area.right() and right > area.left():
                painter.fillRect(band, self._colour("warmth_band"))
                self._above(band.center().x(), translate("products", "your room today"))
        if minimum is not None and axes.x(minimum) > area.left():
            cold = QRectF(area.topLeft(), QPointF(axes.x(minimum), area.bottom()))
            brush = pattern(painter, self._colour("rule"), Qt.BrushStyle.BDiagPattern)
            painter.fillRect(cold, brush)
            painter.setPen(self._pen("quiet"))
            self._write(area.left() + 4, area.bottom() - self._line - 2, _too_cold())
        self._marks()

    def _above(self, middle: float, text: str) -> None:
        width = QFontMetricsF(self._fonts.small).horizontalAdvance(text)
        self._painter.setPen(self._pen("warmth"))
        left = max(middle - width / 2, self._axes.area.left())
        self._write(left, self._axes.area.top() - self._line - 2, text)

    def _marks(self) -> None:
        area, axes, painter = self._axes.area, self._axes, self._painter
        for hours in axes.hour_marks():
            y = axes.y(hours)
            painter.setPen(self._pen("faint_rule"))
            painter.drawLine(QLineF(area.left(), y, area.right(), y))
            painter.setPen(self._pen("quiet"))
            box = QRectF(0.0, y - self._line / 2, area.left() - 6.0, self._line)
            right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
            painter.drawText(box, right, words.length_of_time(hours))
        scale = scale_of(Quantity.TEMPERATURE, self._units)
        low, high = scale.shown(axes.low), scale.shown(axes.high)
        for shown in round_marks(low, high, area.width(), _LEAST_TICK):
            x = axes.x(scale.inside(shown))
            painter.setPen(self._pen("rule"))
            painter.drawLine(QLineF(x, area.bottom(), x, area.bottom() + 4))
            painter.setPen(self._pen("quiet"))
            text = f"{number_words(shown)} {scale.unit}"
            box = QRectF(x - 30.0, area.bottom() + 5.0, 60.0, self._line)
            painter.drawText(box, Qt.AlignmentFlag.AlignHCenter, text)
        painter.setPen(self._pen("rule"))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRect(area)

    def nothing(self, text: str) -> None:
        """Say why there is no line."""
        self._painter.setPen(self._pen("quiet"))
        self._painter.setFont(self._fonts.plain)
        flags = Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap
        self._painter.drawText(self._axes.area, flags, text)

    def others(self, curves: Sequence[LawCurve], front: LawCurve | None) -> None:
        """The likely times of all other stages as thin lines, and every name at its line."""
        painter, axes = self._painter, self._axes
        painter.setPen(self._pen("film_edge", 1.0))
        for curve in curves:
            painter.drawPolyline(
                QPolygonF([axes.point(p.celsius, p.likely) for p in curve.points])
            )
        named = [*curves, *([front] if front is not None else [])]
        named.sort(key=lambda curve: axes.y(curve.points[-1].likely))
        ends = [axes.y(curve.points[-1].likely) for curve in named]
        tops = _spread_within(ends, self._line, axes.area.bottom() + self._line / 2)
        for curve, top, end in zip(named, tops, ends, strict=True):
            self._name(curve, top, end, chosen=curve is front)

    def _name(self, curve: LawCurve, top: float, end: float, *, chosen: bool) -> None:
        painter, right = self._painter, self._axes.area.right()
        painter.setPen(self._pen("film_edge"))
        painter.drawLine(QLineF(right, end, right + 7.0, top + self._line / 2))
        painter.setFont(self._fonts.small_bold if chosen else self._fonts.small)
        painter.setPen(self._pen("ink" if chosen else "quiet"))
        self._write(right + 10.0, top, stage_name(curve.stage))
        painter.setFont(self._fonts.small)

    def front(self, curve: LawCurve) -> None:
        """The stage in front: its band, its line, dashed where it is assumed, its figures."""
        painter, axes = self._painter, self._axes
        upper = [axes.point(p.celsius, p.late) for p in curve.points]
        lower = [axes.point(p.celsius, p.early) for p in reversed(curve.points)]
        wash = self._colour("window_wash")
        wash.setAlpha(150)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(wash)
        painter.drawPolygon(QPolygonF([*upper, *lower]))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(self._pen("window", 1.0))
        painter.drawPolyline(QPolygonF(upper))
        painter.drawPolyline(QPolygonF(lower))
        for one, two in pairwise(curve.points):
            pen = self._pen("ink", 2.0)
            if one.guessed or two.guessed:
                pen.setDashPattern(_DASH)
                pen.setDashOffset(axes.x(one.celsius) / 2.0)
            painter.setPen(pen)
            painter.drawLine(
                axes.point(one.celsius, one.likely), axes.point(two.celsius, two.likely)
            )
        self._say_guesses(curve)
        self._figures(curve)

    def _say_guesses(self, curve: LawCurve) -> None:
        painter, axes = self._painter, self._axes
        metrics = QFontMetricsF(self._fonts.small)
        for guessed, run in groupby(curve.points, key=lambda point: point.guessed):
            points = list(run)
            if not guessed:
                continue
            middle = points[len(points) // 2]
            text = _guess_word(middle.basis)
            width = metrics.horizontalAdvance(text)
            if axes.x(points[-1].celsius) - axes.x(points[0].celsius) < _WIDE_ENOUGH:
                continue
            left = min(
                max(axes.x(middle.celsius) - width / 2, axes.area.left() + 3.0),
                axes.area.right() - width - 3.0,
            )
            top = max(axes.y(middle.late) - self._line - 6.0, axes.area.top() + 2.0)
            under = self._colour("field")
            under.setAlpha(_NEARLY)
            painter.fillRect(QRectF(left - 3.0, top, width + 6.0, self._line), under)
            painter.setPen(self._pen("ink"))
            self._write(left, top, text)

    def _figures(self, curve: LawCurve) -> None:
        painter, axes = self._painter, self._axes
        painter.setBrush(self._colour("ink"))
        for point in curve.printed:
            first = axes.point(point.celsius, point.from_hours)
            painter.setPen(self._pen("ink", 2.0))
            if point.to_hours is None:
                painter.drawEllipse(first, 3.5, 3.5)
                continue
            last = axes.point(point.celsius, point.to_hours)
            painter.drawLine(first, last)
            for end in (first, last):
                painter.drawLine(QPointF(end.x() - 5, end.y()), QPointF(end.x() + 5, end.y()))

    def reader(self, reading: LawPoint | None) -> None:
        """A line at the reader's temperature with the three times over it."""
        if reading is None:
            return
        painter, axes = self._painter, self._axes
        x = axes.x(reading.celsius)
        painter.setPen(self._pen("now", 1.2))
        painter.drawLine(QLineF(x, axes.area.top(), x, axes.area.bottom()))
        painter.setBrush(self._colour("now"))
        for hours in (reading.early, reading.likely, reading.late):
            painter.drawEllipse(QPointF(x, axes.y(hours)), 2.5, 2.5)
        text = reader_words(reading, self._units)
        painter.setFont(self._fonts.small_bold)
        metrics = QFontMetricsF(self._fonts.small_bold)
        lines = [text]
        if metrics.horizontalAdvance(text) + _AROUND > axes.area.width():
            lines = text.rsplit(", ", 1)  # what is likely stands below where that is narrow
        width = max(metrics.horizontalAdvance(line) for line in lines) + 10.0
        left = min(max(x + 8.0, axes.area.left() + 2.0), axes.area.right() - width - 2.0)
        high = self._line * len(lines) + 6.0
        box = QRectF(left, axes.area.top() + 4.0, width, high)
        painter.setBrush(self._colour("paper"))
        painter.setPen(self._pen("now"))
        painter.drawRect(box)
        painter.setPen(self._pen("ink"))
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, "\n".join(lines))

    def focus(self, whole: QRectF) -> None:
        """Show that the keys go here."""
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        self._painter.setPen(self._pen("window", 2.0))
        self._painter.drawRect(whole.adjusted(1.0, 1.0, -1.0, -1.0))

    def _write(self, left: float, top: float, text: str) -> None:
        ascent = QFontMetricsF(self._painter.font()).ascent()
        self._painter.drawText(QPointF(left, top + ascent), text)


def _too_cold() -> str:
    return translate("products", "too cold for it")


def _guess_word(basis: Basis) -> str:
    if basis is Basis.ASSUMED:
        return translate("products", "assumed")
    return translate("products", "outside the sheet")


def _spread_within(ends: Sequence[float], line: float, bottom: float) -> list[float]:
    """Tops of names, none on another, and the last one not under `bottom`."""
    tops = spread([end - line / 2 for end in ends], line)
    over = max(tops[-1] + line - bottom, 0.0) if tops else 0.0
    limit = bottom - line
    placed: list[float] = []
    for index in range(len(tops) - 1, -1, -1):
        limit = min(tops[index], limit) if over else tops[index]
        placed.append(limit)
        limit -= line
    return placed[::-1]
