"""A shelf from above, every spot to one scale, with the footprints that stand there today."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QFontMetricsF, QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget
from typing_extensions import override

from studio_planner.craft.settings import Units
from studio_planner.craft.shapes import Round
from studio_planner.desktop import words
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtGui import QMouseEvent, QPaintEvent, QResizeEvent

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.shelf_plans import SpotToday, Standing

_GAP = 14.0
_WORDS = 3
_TALLEST = 150.0
_WIDEST_SHARE = 0.42
_LEAST_HEIGHT = 90
_INSET = 4.0


class ShelfPicture(QWidget):
    """Spots in rows, as wide as they are; a press chooses one.

    Signals:
        chosen: the key of the spot that was pressed.
    """

    chosen = Signal(str)

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Show no shelf yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._rows: tuple[SpotToday, ...] = ()
        self._units = Units()
        self.current = ""
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(translate("room", "Shelf from above"))
        canvas.redrawn.connect(self.update)

    def show_spots(self, rows: Sequence[SpotToday], units: Units, current: str) -> None:
        """Show spots; `current` is the key of the chosen one."""
        self._rows, self._units, self.current = tuple(rows), units, current
        self.setAccessibleDescription(". ".join(self.spot_words(row) for row in self._rows))
        self._fit()
        self.update()

    def spot_words(self, row: SpotToday) -> str:
        """A spot, who stands there today, and what is free."""
        names = ", ".join(one.piece.name for one in row.standing)
        free = " \N{MULTIPLICATION SIGN} ".join(
            words.length(side, self._units) for side in row.free_mm
        )
        if not names:
            return translate("room", "{spot}: free today, {free}").format(
                spot=row.spot.name, free=free
            )
        return translate("room", "{spot}: {pieces}; free beside {free}").format(
            spot=row.spot.name, pieces=names, free=free
        )

    @property
    def scale(self) -> float:
        """Pixels for each mm, one for all spots."""
        if not self._rows:
            return 0.1
        longest = max(row.spot.length_mm for row in self._rows)
        widest = max(row.spot.width_mm for row in self._rows)
        return min(self.width() * _WIDEST_SHARE / longest, _TALLEST / widest)

    def places(self) -> list[tuple[SpotToday, QRectF]]:
        """Every spot and where it is drawn, in rows from the left."""
        found = []
        left, top, high = 0.0, _GAP / 2.0, 0.0
        text = self._canvas.fonts.small_height * _WORDS + 4.0
        for row in self._rows:
            wide, tall = row.spot.length_mm * self.scale, row.spot.width_mm * self.scale
            taken = max(wide, self._words_width(row))
            if left and left + taken > self.width():
                left, top, high = 0.0, top + high + text + _GAP, 0.0
            found.append((row, QRectF(left + 1.0, top, wide, tall)))
            left += taken + _GAP
            high = max(high, tall)
        return found

    def _words_width(self, row: SpotToday) -> float:
        metrics = QFontMetricsF(self._canvas.fonts.small)
        return max(metrics.horizontalAdvance(line) for line in self._lines(row)[:2])

    def _lines(self, row: SpotToday) -> tuple[str, str, str]:
        spot = row.spot
        size = (
            f"{_bare(spot.length_mm, self._units)} \N{MULTIPLICATION SIGN} "
            f"{words.length(spot.width_mm, self._units)}"
        )
        high = translate("room", "{height} high").format(
            height=words.length(spot.height_mm, self._units)
        )
        names = ", ".join(one.piece.name for one in row.standing)
        return spot.name, f"{size}, {high}", names or translate("room", "free today")

    def _fit(self) -> None:
        places = self.places()
        text = self._canvas.fonts.small_height * _WORDS + 10.0
        bottom = max((rect.bottom() for _, rect in places), default=0.0)
        self.setFixedHeight(max(round(bottom + text), _LEAST_HEIGHT) if places else 0)

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    @override
    def sizeHint(self) -> QSize:
        return QSize(640, self.height())

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        with QPainter(self) as painter:
            painter.fillRect(self.rect(), self._canvas.theme.colour("paper"))
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            for row, rect in self.places():
                self._draw_spot(painter, row, rect)

    def _draw_spot(self, painter: QPainter, row: SpotToday, rect: QRectF) -> None:
        theme, fonts = self._canvas.theme, self._canvas.fonts
        mine = row.spot.key == self.current
        painter.setBrush(theme.colour("panel"))
        painter.setPen(QPen(theme.colour("ink" if mine else "rule"), 2.6 if mine else 1.4))
        painter.drawRect(rect)
        for one in row.standing:  # the last one of today lies on top
            self._draw_piece(painter, one, rect)
        metrics = QFontMetricsF(fonts.small)
        names = self._lines(row)
        wide = max(rect.width(), self._words_width(row))
        top = rect.bottom() + 4.0 + metrics.ascent()
        for number, text in enumerate(names):
            painter.setFont(fonts.small if number else fonts.small_bold)
            painter.setPen(theme.colour("quiet" if number else "ink"))
            shown = metrics.elidedText(text, Qt.TextElideMode.ElideRight, wide)
            painter.drawText(QPointF(rect.left(), top + number * metrics.height()), shown)

    def _draw_piece(self, painter: QPainter, one: Standing, rect: QRectF) -> None:
        theme = self._canvas.theme
        foot = QRectF(
            rect.left(), rect.top(), one.length_mm * self.scale, one.width_mm * self.scale
        )
        painter.setPen(QPen(theme.colour("film_edge"), 1.2, Qt.PenStyle.DashLine))
        painter.setBrush(theme.colour("warmth_band"))
        painter.drawRect(foot)
        if one.piece.count == 1:
            gap = one.piece.clearance_mm * self.scale
            body = foot.adjusted(gap, gap, -gap, -gap)
            painter.setPen(QPen(theme.colour("film_edge"), 1.2))
            painter.setBrush(theme.film_colour(0.5))
            round_one = isinstance(one.piece.shape, Round)
            (painter.drawEllipse if round_one else painter.drawRect)(body)

    @override
    def mousePressEvent(self, event: QMouseEvent) -> None:
        for row, rect in self.places():
            if rect.adjusted(-_INSET, -_INSET, _INSET, _INSET).contains(event.position()):
                self.chosen.emit(row.spot.key)


def _bare(mm: float, units: Units) -> str:
    return words.length(mm, units).rpartition(" ")[0]
