"""The cup clock: minutes since A met B, and the cup that tells by its shape how it stands."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFont, QLinearGradient, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from studio_planner.desktop import words
from studio_planner.desktop.big_screen import fitting
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.weigh.cup_times import CupState, CupTimes

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from studio_planner.desktop.canvas import Canvas

_LEAST_MINUTES = 20.0
"""The axis is never shorter than this."""

_LEAST_PIXELS = 12
"""No letter is smaller."""


class CupClock(QWidget):
    """Draws it: a cup, the time counted up, words, and a film that hardens to its end."""

    def __init__(self, canvas: Canvas, parent: QWidget) -> None:
        """Start with a cup that rests."""
        super().__init__(parent)
        self._canvas = canvas
        self.times = CupTimes()
        self.setAccessibleName(translate("weigh", "Cup clock"))
        canvas.redrawn.connect(self.update)

    def show_times(self, times: CupTimes) -> None:
        """Show other times."""
        self.times = times
        self.setAccessibleDescription(times.spoken)
        self.update()

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        width, height = float(self.width()), float(self.height())
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            unit = min(width / 8.6, height / 8.6)
            cup = QRectF(0.0, 0.0, 2.6 * unit, 3.0 * unit)
            self._draw_cup(painter, cup.adjusted(unit * 0.35, unit * 0.2, -unit * 0.15, 0.0))
            beside = QRectF(cup.right() + 0.3 * unit, 0.0, width - cup.right(), 1.9 * unit)
            self._write(painter, beside, self._counted, 1.7 * unit, self._ink)
            word = QRectF(0.0, 3.2 * unit, width, 1.9 * unit)
            self._write(painter, word, self.times.word, 0.95 * unit, self._ink)
            if self.times.pour_by is not None and self.times.gone is not None:
                band = QRectF(0.0, 6.1 * unit, width, 0.8 * unit)
                self._draw_film(painter, band, unit)
                ends = QRectF(0.0, band.bottom() + 0.25 * unit, width, 1.2 * unit)
                self._write(painter, ends, self.times.ends, 0.6 * unit, "quiet")

    @property
    def _counted(self) -> str:
        return words.TO if self.times.minute is None else self.times.counted

    @property
    def _ink(self) -> str:
        return "now" if self.times.state in {CupState.DUE, CupState.GONE} else "ink"

    def _write(
        self, painter: QPainter, rect: QRectF, text: str, pixels: float, colour: str
    ) -> None:
        font = QFont(self._canvas.fonts.bold)
        font.setPixelSize(max(_LEAST_PIXELS, round(pixels)))
        flags = int(Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignVCenter)
        painter.setFont(fitting(font, rect, text, flags, _LEAST_PIXELS))
        painter.setPen(self._canvas.theme.colour(colour))
        painter.drawText(rect, flags, text)

    # Three shapes: a cup that stands, one that is tipped, one that is broken across

    def _draw_cup(self, painter: QPainter, rect: QRectF) -> None:
        state, theme = self.times.state, self._canvas.theme
        painter.save()
        if state is CupState.DUE:
            painter.translate(rect.center())
            painter.rotate(52.0)
            painter.translate(-rect.center())
            rect = rect.adjusted(
                rect.width() * 0.16,
                rect.height() * 0.1,
                -rect.width() * 0.16,
                -rect.height() * 0.1,
            )
        slope = 0.14 * rect.width()
        wall = QPolygonF(
            [
                rect.topLeft(),
                QPointF(rect.left() + slope, rect.bottom()),
                QPointF(rect.right() - slope, rect.bottom()),
                rect.topRight(),
            ]
        )
        if state in {CupState.GOOD, CupState.DUE}:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(theme.film_colour(0.1 if state is CupState.GOOD else 0.3))
            painter.drawPolygon(self._filled(rect, slope))
        pen = QPen(theme.colour(self._ink), max(3.0, 0.05 * rect.width()))
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        painter.setPen(pen)
        painter.setBrush(
            theme.film_colour(1.0) if state is CupState.GONE else Qt.BrushStyle.NoBrush
        )
        if state is CupState.GONE:
            painter.drawPolygon(wall)
            self._crack(painter, rect)
        else:
            painter.drawPolyline(wall)
        painter.restore()
        if state is CupState.DUE:
            self._drop(painter, rect)

    def _filled(self, rect: QRectF, slope: float) -> QPolygonF:
        top = rect.top() + 0.3 * rect.height()
        inset = slope * 0.3
        return QPolygonF(
            [
                QPointF(rect.left() + inset, top),
                QPointF(rect.left() + slope, rect.bottom()),
                QPointF(rect.right() - slope, rect.bottom()),
                QPointF(rect.right() - inset, top),
            ]
        )

    def _crack(self, painter: QPainter, rect: QRectF) -> None:
        middle, step = rect.center().x(), 0.16 * rect.width()
        points = [
            QPointF(middle + (step if row % 2 else -step), rect.top() + row * rect.height() / 5)
            for row in range(6)
        ]
        painter.drawPolyline(QPolygonF(points))
        painter.drawLine(rect.topLeft(), rect.bottomRight())
        painter.drawLine(rect.topRight(), rect.bottomLeft())

    def _drop(self, painter: QPainter, rect: QRectF) -> None:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._canvas.theme.film_colour(0.1))
        size = 0.2 * rect.width()
        painter.drawEllipse(
            QPointF(rect.right() + 0.1 * size, rect.bottom() - size), size, size
        )

    def _draw_film(self, painter: QPainter, band: QRectF, unit: float) -> None:
        theme, times = self._canvas.theme, self.times
        gone, by = times.gone or 0.0, times.pour_by or 0.0
        whole = max(1.15 * gone, _LEAST_MINUTES)
        film = QLinearGradient(band.topLeft(), band.topRight())
        for share in (0.0, 0.34, 0.7, 1.0):
            film.setColorAt(share * min(gone / whole, 1.0), theme.film_colour(share))
        painter.setPen(QPen(theme.colour("film_edge"), 1.5))
        painter.setBrush(film)
        painter.drawRoundedRect(band, 3.0, 3.0)
        painter.setPen(QPen(theme.colour("ink"), max(3.0, unit * 0.07)))
        for minute, high in ((by, 0.35), (gone, 0.7)):
            x = band.left() + band.width() * minute / whole
            painter.drawLine(
                QPointF(x, band.top() - high * unit), QPointF(x, band.bottom() + 0.1 * unit)
            )
        if times.minute is not None:
            self._draw_now(painter, band, min(times.minute / whole, 1.0), unit)

    def _draw_now(self, painter: QPainter, band: QRectF, share: float, unit: float) -> None:
        x, half = band.left() + band.width() * share, 0.22 * unit
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._canvas.theme.colour("now"))
        top = band.top() - 0.1 * unit
        painter.drawPolygon(
            QPolygonF(
                [QPointF(x, top + 2 * half), QPointF(x - half, top), QPointF(x + half, top)]
            )
        )
        painter.drawRect(QRectF(x - 1.5, top, 3.0, band.height() + 0.2 * unit))
