"""The readings of a place against what is expected, in no more columns than pixels."""

from __future__ import annotations

from itertools import pairwise
from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget
from typing_extensions import override

from studio_planner.desktop import words
from studio_planner.desktop.tongue import translate
from studio_planner.services.reading_plots import ReadingPlot

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from studio_planner.craft.places import Place
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.reading_plots import Column

_LEFT, _RIGHT, _TOP, _FOOT, _HEIGHT = 66.0, 14.0, 22.0, 24.0, 190
_FORTNIGHT = 14 * 86_400.0
_HOUR = 3600.0
_COLUMN_PIXELS = 2
_MARGIN = 1.5
_MARKS = 6
_JOINED_SECONDS = 3 * _HOUR
"""Readings further apart are not joined: nobody knows what was between them."""


class ReadingsPicture(QWidget):
    """Bars from the lowest to the highest reading of each column; the pattern as dashes."""

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Show nothing yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._studio: Studio | None = None
        self._place: Place | None = None
        self._plot: ReadingPlot | None = None
        self._known: tuple[int, float, list[Column], list[tuple[float, float]]] | None = None
        self.everything = False
        self.setFixedHeight(_HEIGHT)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(translate("room", "Readings"))
        canvas.redrawn.connect(self.update)

    def show_place(self, studio: Studio, place: Place) -> None:
        """Show the readings of a place."""
        before = self._place
        same = (
            before is not None
            and before.readings is place.readings
            and before.pattern == place.pattern
        )
        self._studio, self._place = studio, place
        if not same:
            self._plot = ReadingPlot(place, studio.time_zone)
            self._known = None
        self.setVisible(bool(place.readings))
        self._say()
        self.update()

    def show_everything(self, everything: bool) -> None:  # noqa: FBT001 - a fact
        """Show all readings, or the last two weeks."""
        self.everything = everything
        self._known = None
        self._say()
        self.update()

    @property
    def span(self) -> tuple[float, float]:
        """The first and the last instant that are shown [s]."""
        first, last = self._plot.extent if self._plot else (0.0, 0.0)
        begin = first if self.everything else max(first, last - _FORTNIGHT)
        return (min(begin, last - _HOUR), last)

    def _say(self) -> None:
        if self._studio is None or self._place is None or not self._place.readings:
            return
        wall = words.wall_of(self._studio)
        first, last = (words.local(second, wall.zone) for second in self.span)
        self.setAccessibleDescription(
            translate("room", "{first} to {last}, against what is expected.").format(
                first=words.moment(first, wall), last=words.moment(last, wall)
            )
        )

    @override
    def sizeHint(self) -> QSize:
        return QSize(720, _HEIGHT)

    def _looked_up(self) -> tuple[list[Column], list[tuple[float, float]]]:
        wide = max(round(self.width() - _LEFT - _RIGHT), 10)
        end = self.span[1]
        if self._known is None or self._known[:2] != (wide, end):
            assert self._plot is not None  # noqa: S101 - drawn only with one
            count = wide // _COLUMN_PIXELS
            columns = self._plot.columns(self.span[0], end + 1.0, count)
            expected = self._plot.expected(*self.span, count)
            self._known = (wide, end, columns, expected)
        return self._known[2:]

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        theme = self._canvas.theme
        with QPainter(self) as painter:
            painter.fillRect(self.rect(), theme.colour("paper"))
            if self._plot is None or self._studio is None or not self._plot.readings:
                return
            columns, expected = self._looked_up()
            if columns:
                self._draw(painter, columns, expected, self._studio)

    def _draw(
        self,
        painter: QPainter,
        columns: list[Column],
        expected: list[tuple[float, float]],
        studio: Studio,
    ) -> None:
        theme, (start, end) = self._canvas.theme, self.span
        warmths = [c.low for c in columns] + [c.high for c in columns]
        warmths += [celsius for _, celsius in expected]
        low, high = min(warmths) - _MARGIN, max(warmths) + _MARGIN
        wide, tall = self.width() - _LEFT - _RIGHT, _HEIGHT - _TOP - _FOOT

        def x(second: float) -> float:
            return _LEFT + wide * (second - start) / max(end - start, 1.0)

        def y(celsius: float) -> float:
            return _TOP + tall * (high - celsius) / (high - low)

        painter.fillRect(QRectF(_LEFT, _TOP, wide, tall), theme.colour("panel"))
        self._draw_axes(painter, (low, high), studio)
        painter.setPen(QPen(theme.colour("warmth"), float(_COLUMN_PIXELS)))
        for column in columns:
            top, bottom = y(column.high), y(column.low)
            painter.drawLine(
                QLineF(x(column.second), top - 0.8, x(column.second), bottom + 0.8)
            )
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(theme.colour("warmth"), 1.2))
        for one, other in pairwise(columns):
            if other.second - one.second <= _JOINED_SECONDS:
                here, there = (one.low + one.high) / 2.0, (other.low + other.high) / 2.0
                ends = QPointF(x(one.second), y(here)), QPointF(x(other.second), y(there))
                painter.drawLine(QLineF(*ends))
        painter.setPen(QPen(theme.colour("ink"), 1.4, Qt.PenStyle.DashLine))
        painter.drawPolyline(QPolygonF([QPointF(x(s), y(c)) for s, c in expected]))

    def _draw_axes(
        self, painter: QPainter, between: tuple[float, float], studio: Studio
    ) -> None:
        theme, fonts = self._canvas.theme, self._canvas.fonts
        metrics = QFontMetricsF(fonts.small)
        wall, (low, high) = words.wall_of(studio), between
        painter.setFont(fonts.small)
        painter.setPen(theme.colour("quiet"))
        for celsius, share in ((high - _MARGIN, 0), (low + _MARGIN, 1)):
            text = words.degrees(celsius, studio.units, decimals=1)
            left = _LEFT - 14.0 - metrics.horizontalAdvance(text)
            tall = _HEIGHT - _TOP - _FOOT
            drop = tall * _MARGIN / (high - low)
            y = _TOP + drop + share * (tall - 2 * drop) + metrics.capHeight() / 2.0
            painter.drawText(QPointF(left, y), text)
        start, end = self.span
        wide = self.width() - _LEFT - _RIGHT
        for mark in range(_MARKS):
            second = start + (end - start) * (mark + 0.5) / _MARKS
            text = words.day_name(words.local(second, wall.zone), wall)
            x = _LEFT + wide * (mark + 0.5) / _MARKS - metrics.horizontalAdvance(text) / 2.0
            painter.drawText(QPointF(x, _HEIGHT - _FOOT + metrics.height()), text)
        painter.drawText(
            QPointF(_LEFT, _TOP - 6.0),
            translate("room", "solid: what was read; dashes: what is expected"),
        )
