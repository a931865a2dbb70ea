"""The chosen piece in section: its blank and every coat at its true thickness."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QWidget
from typing_extensions import override

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.pieces import EDGE, UNDERSIDE, Coat
from studio_planner.desktop import words
from studio_planner.desktop.patterns import pattern
from studio_planner.desktop.quantities import Quantity, scale_of
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.ribbons import Lane

_BODY = 40.0
_LEFT = 4.0
_WIDTH = 104.0
_LEAST_LINE = 1.5
_NEAR_SCALE = 32.0
_BAR_PIXELS = 26.0
_STEPS = tuple(one * 10.0**power for power in range(-3, 3) for one in (1.0, 2.0, 5.0))
"""How much film the scale below the section may stand for, in the maker's unit."""


@dataclass(frozen=True, slots=True)
class Slice:
    """One thing in the section from top to bottom: words, height in pixels, and its coat."""

    words: str
    top: float
    height: float
    coat: Coat | None


class SectionView(QWidget):
    """Coats above and below the blank, to one scale; the blank itself is cut short."""

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Show nothing yet."""
        super().__init__(parent)
        self._canvas = canvas
        self.lane: Lane | None = None
        self.setFixedHeight(160)
        self.setAccessibleName(translate("section", "Piece in section"))
        canvas.redrawn.connect(self.update)

    def show_lane(self, lane: Lane | None) -> None:
        """Show the piece of a lane."""
        self.lane = lane
        self.setAccessibleDescription(self.summary())
        self.update()

    def summary(self) -> str:
        """The section in words, from the top down."""
        if self.lane is None:
            return translate("section", "No piece is chosen.")
        return "; ".join(part.words for part in self.slices())

    @override
    def sizeHint(self) -> QSize:
        return QSize(280, 160)

    def slices(self) -> list[Slice]:
        """What is drawn, from the top down."""
        lane = self.lane
        if lane is None:
            return []
        units = lane.studio.units
        stack = lane.piece.stack
        upper = [c for c in reversed(stack) if UNDERSIDE not in c.faces and c.faces != {EDGE}]
        lower = [c for c in stack if UNDERSIDE in c.faces]
        scale = self._pixels_per_mm()
        found, y = [], 8.0
        for coat in [*upper, None, *lower]:
            height = _BODY if coat is None else max(coat.film_mm * scale, _LEAST_LINE)
            text = (
                self._body_words()
                if coat is None
                else f"{kind_word(coat.kind)} {words.film(coat.film_mm, units)}"
            )
            found.append(Slice(text, y, height, coat))
            y += height
        return found

    def _body_words(self) -> str:
        lane = self.lane
        if lane is None:
            return ""
        return translate("section", "{material} {thickness}, cut short").format(
            material=words.material(lane.piece),
            thickness=words.length(lane.piece.body_mm, lane.studio.units),
        )

    def _pixels_per_mm(self) -> float:
        lane = self.lane
        if lane is None:
            return _NEAR_SCALE
        films = sum(coat.film_mm for coat in lane.piece.stack if coat.faces != {EDGE})
        room = max(self.height() - _BODY - 44.0, 40.0)
        return min(room / max(films, 0.05), 60.0)

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        with QPainter(self) as painter:
            theme = self._canvas.theme
            painter.fillRect(self.rect(), theme.colour("panel"))
            if self.lane is None:
                painter.setPen(theme.colour("quiet"))
                painter.setFont(self._canvas.fonts.small)
                said = translate("section", "Choose a bar on the timeline.")
                painter.drawText(self.rect(), Qt.AlignmentFlag.AlignTop, said)
            else:
                slices = self.slices()
                for part in slices:
                    self._draw_slice(painter, part)
                self._draw_rim(painter, slices)
                self._draw_names(painter, slices)
                self._draw_scale(painter, slices[-1].top + slices[-1].height)

    def _draw_slice(self, painter: QPainter, part: Slice) -> None:
        theme = self._canvas.theme
        rect = QRectF(_LEFT, part.top, _WIDTH, part.height)
        if part.coat is None:
            self._draw_body(painter, rect)
            return
        painter.setBrush(theme.film_colour(0.45 + 0.35 * (self._order(part.coat) % 2)))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.drawRect(rect)
        if not self._poured(part.coat):
            painter.setBrush(
                pattern(painter, theme.colour("paper"), Qt.BrushStyle.Dense4Pattern)
            )
            painter.drawRect(rect)
        painter.setPen(QPen(theme.colour("film_edge"), 1.0))
        painter.drawLine(QLineF(rect.topLeft(), rect.topRight()))
        painter.drawLine(QLineF(rect.bottomLeft(), rect.bottomRight()))
        painter.drawLine(QLineF(rect.topRight(), rect.bottomRight()))

    def _draw_body(self, painter: QPainter, rect: QRectF) -> None:
        theme = self._canvas.theme
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(theme.colour("wood"))
        painter.drawRect(rect)
        painter.setPen(QPen(theme.colour("film_edge"), 1.2))
        painter.drawLine(QLineF(rect.topLeft(), rect.topRight()))
        painter.drawLine(QLineF(rect.topRight(), rect.bottomRight()))
        painter.drawLine(QLineF(rect.bottomLeft(), rect.bottomRight()))
        self._draw_break(painter, rect)

    def _draw_break(self, painter: QPainter, rect: QRectF) -> None:
        middle = rect.center().y()
        steps = range(int(_WIDTH // 8) + 1)
        for offset in (-2.5, 2.5):
            wave = [
                QPointF(rect.left() + 8.0 * step, middle + offset + (2.0 if step % 2 else -2.0))
                for step in steps
            ]
            painter.setPen(QPen(self._canvas.theme.colour("panel"), 2.0))
            painter.drawPolyline(QPolygonF(wave))

    def _draw_rim(self, painter: QPainter, slices: list[Slice]) -> None:
        lane = self.lane
        body = next(part for part in slices if part.coat is None)
        if lane is None or lane.piece.rim_mm <= 0.0:
            return
        height = min(lane.piece.rim_mm * self._pixels_per_mm(), body.top - 2.0)
        rect = QRectF(_LEFT + _WIDTH - 7.0, body.top - height, 7.0, height)
        painter.setPen(QPen(self._canvas.theme.colour("film_edge"), 1.0))
        painter.setBrush(self._canvas.theme.colour("wood"))
        painter.drawRect(rect)

    def _draw_names(self, painter: QPainter, slices: list[Slice]) -> None:
        theme, font = self._canvas.theme, self._canvas.fonts.small
        metrics = QFontMetricsF(font)
        line = metrics.height() + 1.0
        tops = spread([part.top + part.height / 2.0 - line / 2.0 for part in slices], line)
        painter.setFont(font)
        left = _LEFT + _WIDTH + 22.0
        for part, top in zip(slices, tops, strict=True):
            painter.setPen(QPen(theme.colour("quiet"), 1.0))
            middle = part.top + part.height / 2.0
            painter.drawLine(QLineF(_LEFT + _WIDTH + 3.0, middle, left - 4.0, top + line / 2.0))
            painter.setPen(theme.colour("ink"))
            waits = part.coat is not None and not self._poured(part.coat)
            said = translate("section", "{coat}, to come") if waits else "{coat}"
            text = metrics.elidedText(
                said.format(coat=part.words), Qt.TextElideMode.ElideRight, self.width() - left
            )
            painter.drawText(QPointF(left, top + metrics.ascent()), text)

    def _draw_scale(self, painter: QPainter, bottom: float) -> None:
        lane = self.lane
        if lane is None:
            return
        scale = self._pixels_per_mm()
        unit = scale_of(Quantity.FILM, lane.studio.units)
        steps = [unit.inside(step) for step in _STEPS]
        mm = next((mm for mm in steps if mm * scale >= _BAR_PIXELS), steps[-1])
        font = self._canvas.fonts.small
        y = bottom + 16.0
        painter.setPen(QPen(self._canvas.theme.colour("quiet"), 1.0))
        for x in (_LEFT, _LEFT + mm * scale):
            painter.drawLine(QLineF(x, y - 3.0, x, y + 3.0))
        painter.drawLine(QLineF(_LEFT, y, _LEFT + mm * scale, y))
        painter.setFont(font)
        text = translate("section", "{length} of film").format(
            length=words.film(mm, lane.studio.units)
        )
        painter.drawText(
            QPointF(_LEFT + mm * scale + 8.0, y + QFontMetricsF(font).capHeight() / 2.0), text
        )

    def _poured(self, coat: Coat) -> bool:
        lane = self.lane
        coats = lane.coats if lane else ()
        return any(c.coat == coat.key and c.end <= self._canvas.now for c in coats)

    def _order(self, coat: Coat) -> int:
        return self.lane.piece.position(coat.key) if self.lane else 0


def spread(tops: list[float], line: float) -> list[float]:
    """Move labels apart, downwards and then up again, so that none covers another."""
    placed: list[float] = []
    for top in tops:
        placed.append(max(top, placed[-1] + line) if placed else max(top, 0.0))
    return placed
