"""Two bands of time under each other: what the sheet says, and what touch tests found."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QPointF, QRectF, QSize
from PySide6.QtGui import QFontMetricsF, QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget
from typing_extensions import override

from studio_planner.desktop import words
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.teaching import Three

_GAP = 6.0
_BESIDE = 12.0
_FIRST = 0.7
"""Where the line of hours begins, as a share of the earliest: differences are small."""

_LONGEST_TIME = "00 h 00 min"


@dataclass(frozen=True, slots=True)
class Band:
    """One row: its name, and its early, likely and late hours."""

    name: str
    hours: Three

    @property
    def spoken(self) -> str:
        """The row as text."""
        early, likely, late = (words.length_of_time(hours) for hours in self.hours)
        return translate("teaching", "{name}: {early} to {late}, likely {likely}").format(
            name=self.name, early=early, late=late, likely=likely
        )


class TaughtBands(QWidget):
    """Rows of early to late on one line of hours; the safe edge is a post with its time."""

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Show no band yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._bands: tuple[Band, ...] = ()
        self.setMinimumWidth(240)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        canvas.redrawn.connect(self.update)

    def show_bands(self, name: str, bands: tuple[Band, ...]) -> None:
        """Show bands; `name` says what they are of."""
        self._bands = bands
        self.setAccessibleName(name)
        self.setAccessibleDescription("; ".join(band.spoken for band in bands))
        self.setFixedHeight(self.sizeHint().height())
        self.update()

    @property
    def _row(self) -> float:
        return self._canvas.fonts.small_height + _GAP

    @override
    def sizeHint(self) -> QSize:
        return QSize(480, round(len(self._bands) * self._row + _GAP))

    @property
    def _beside(self) -> tuple[float, float]:
        """What names and times take; the same for every stage, so that bands line up."""
        metrics = QFontMetricsF(self._canvas.fonts.small)
        names = max(map(metrics.horizontalAdvance, band_names())) + _BESIDE
        return names, metrics.horizontalAdvance(_LONGEST_TIME) + _BESIDE

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        if not self._bands:
            return
        names, times = self._beside
        first = min(band.hours[0] for band in self._bands) * _FIRST
        last = max(band.hours[2] for band in self._bands)
        scale = max(self.width() - names - times, 1.0) / (last - first)
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setFont(self._canvas.fonts.small)
            for place, band in enumerate(self._bands):
                xs = [names + (hours - first) * scale for hours in band.hours]
                self._draw(painter, band, place * self._row + _GAP / 2, xs)

    def _draw(self, painter: QPainter, band: Band, top: float, xs: list[float]) -> None:
        theme, metrics = self._canvas.theme, QFontMetricsF(painter.font())
        early, likely, late = xs
        painter.setPen(theme.colour("ink"))
        painter.drawText(QPointF(0.0, top + metrics.ascent()), band.name)
        time = words.length_of_time(band.hours[2])
        painter.drawText(QPointF(late + _BESIDE / 2, top + metrics.ascent()), time)
        area = QRectF(early, top + 2.0, max(late - early, 2.0), metrics.height() - 4.0)
        painter.setPen(QPen(theme.colour("faint_rule"), 1.0))
        painter.drawLine(QLineF(self._beside[0], area.center().y(), early, area.center().y()))
        painter.fillRect(area, theme.colour("window_wash"))
        painter.setPen(QPen(theme.colour("ink"), 1.4))
        painter.drawLine(QLineF(likely, area.top(), likely, area.bottom()))
        # The side on which it is safe to be wrong has the post.
        painter.setPen(QPen(theme.colour("window"), 2.0))
        painter.drawLine(QLineF(late, area.top() - 1.0, late, area.bottom() + 1.0))


def band_names() -> tuple[str, str, str]:
    """What the rows are called: the sheet, the tests, and those with newer ones."""
    return (
        translate("teaching", "data sheet"),
        translate("teaching", "your tests"),
        translate("teaching", "with newer ones"),
    )
