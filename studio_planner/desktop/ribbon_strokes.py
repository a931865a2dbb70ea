"""What a frame of ribbons consists of, part by part, and how each part is drawn."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QPen, QPolygonF

from studio_planner.desktop.patterns import pattern

if TYPE_CHECKING:
    from PySide6.QtGui import QPainter

    from studio_planner.desktop.film_brushes import FilmBrushes
    from studio_planner.desktop.theme import Theme


@dataclass(slots=True)
class Strokes:
    """What a frame draws, part by part."""

    films: list[tuple[QRectF, QBrush]] = field(default_factory=list)
    flat: dict[float, list[QRectF]] = field(default_factory=dict)
    ripples: list[QRectF] = field(default_factory=list)
    edges: list[QRectF] = field(default_factory=list)
    open: list[QRectF] = field(default_factory=list)
    nobody: list[QRectF] = field(default_factory=list)
    posts: list[QLineF] = field(default_factory=list)
    missed: list[QLineF] = field(default_factory=list)
    blocks: list[QRectF] = field(default_factory=list)
    steps: list[QRectF] = field(default_factory=list)
    sanded: list[QRectF] = field(default_factory=list)
    scuffs: list[QLineF] = field(default_factory=list)
    touches: list[QPointF] = field(default_factory=list)
    pins: list[QRectF] = field(default_factory=list)
    poles: list[QLineF] = field(default_factory=list)
    pennants: list[QPolygonF] = field(default_factory=list)


def draw_strokes(
    painter: QPainter, strokes: Strokes, theme: Theme, brushes: FilmBrushes
) -> None:
    """Draw everything but the labels, from the films up to the hands-on blocks."""
    _draw_films(painter, strokes, theme, brushes)
    _draw_doorways(painter, strokes, theme)
    _draw_hands(painter, strokes, theme)


def _draw_films(
    painter: QPainter, strokes: Strokes, theme: Theme, brushes: FilmBrushes
) -> None:
    painter.setPen(Qt.PenStyle.NoPen)
    for tone, rects in strokes.flat.items():
        painter.setBrush(theme.film_colour(tone))
        painter.drawRects(rects)
    for rect, brush in strokes.films:
        painter.fillRect(rect, brush)
    tile = brushes.ripple(painter.device().devicePixelRatioF())
    for rect in strokes.ripples:
        if rect.width() > 1.0:
            painter.drawTiledPixmap(rect, tile)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(QPen(theme.colour("film_edge"), 1.0))
    painter.drawRects(strokes.edges)


def _draw_doorways(painter: QPainter, strokes: Strokes, theme: Theme) -> None:
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(theme.colour("window_wash"))
    painter.drawRects(strokes.open)
    painter.setBrush(pattern(painter, theme.colour("quiet"), Qt.BrushStyle.BDiagPattern))
    painter.drawRects(strokes.nobody)
    # A rim of paper keeps posts apart from whatever film they stand on.
    painter.setPen(QPen(theme.colour("paper"), 3.6))
    painter.drawLines(strokes.posts)
    painter.setPen(QPen(theme.colour("window"), 1.6))
    painter.drawLines(strokes.posts)
    painter.setPen(QPen(theme.colour("window"), 1.2, Qt.PenStyle.DotLine))
    painter.drawLines(strokes.missed)


def _draw_hands(painter: QPainter, strokes: Strokes, theme: Theme) -> None:
    painter.setPen(QPen(theme.colour("ink"), 1.2))
    painter.setBrush(theme.colour("paper"))
    painter.drawRects(strokes.steps)
    painter.setBrush(pattern(painter, theme.colour("ink"), Qt.BrushStyle.Dense5Pattern))
    painter.drawRects(strokes.sanded)
    painter.setPen(QPen(theme.colour("ink"), 1.3))
    painter.drawLines(strokes.scuffs)
    painter.drawLines(strokes.poles)
    painter.setBrush(theme.colour("paper"))
    for point in strokes.touches:
        painter.drawEllipse(point, 3.0, 3.0)
    painter.setBrush(theme.colour("ink"))
    painter.setPen(QPen(theme.colour("paper"), 1.0) if strokes.films else Qt.PenStyle.NoPen)
    painter.drawRects(strokes.blocks)
    for held in strokes.pins:
        draw_wedges(painter, theme, held)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(theme.colour("ink"))
    for pennant in strokes.pennants:
        painter.drawPolygon(pennant)


_WEDGE = 8.0
_HALF = 5.5


def draw_wedges(painter: QPainter, theme: Theme, held: QRectF) -> None:
    """Two wedges that hold a pinned block from both sides, at half its height."""
    painter.setPen(QPen(theme.colour("paper"), 1.4))
    painter.setBrush(theme.colour("ink"))
    y = held.center().y()
    for edge, side in ((held.left(), -1.0), (held.right(), 1.0)):
        back = edge + side * _WEDGE
        corners = [QPointF(edge, y), QPointF(back, y - _HALF), QPointF(back, y + _HALF)]
        painter.drawPolygon(QPolygonF(corners))
