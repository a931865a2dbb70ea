"""How the kinds of coats look in section: each its amber, its pattern and its letter."""

from __future__ import annotations

from math import sin
from random import Random
from types import MappingProxyType
from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPen, QPolygonF

from studio_planner.craft.pieces import CoatKind
from studio_planner.desktop.patterns import pattern

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from PySide6.QtGui import QColor, QPainter

    from studio_planner.craft.pieces import Coat
    from studio_planner.desktop.piece_pages.section_shape import Stratum
    from studio_planner.desktop.theme import Theme

LETTERS: Mapping[CoatKind, str] = MappingProxyType(
    {
        CoatKind.PRIME: "P",
        CoatKind.SEAL: "S",
        CoatKind.FLOOD: "F",
        CoatKind.COLOUR: "C",
        CoatKind.GLITTER: "G",
        CoatKind.SIZE: "Z",
        CoatKind.LEAF: "L",
        CoatKind.LOCK: "K",
        CoatKind.TOP_COAT: "T",
    }
)
"""The letter of every kind, so that none is told by its colour alone."""

_TONES = {
    CoatKind.PRIME: 1.0,
    CoatKind.SEAL: 0.75,
    CoatKind.FLOOD: 0.5,
    CoatKind.COLOUR: 0.12,
    CoatKind.GLITTER: 0.62,
    CoatKind.SIZE: 0.9,
    CoatKind.LEAF: 0.3,
    CoatKind.LOCK: 0.68,
    CoatKind.TOP_COAT: 0.4,
}
_SEEN_FROM = 6.0
"""A pattern needs so many pixels of film to be told."""

_MOST_FLECKS = 140
_HATCH = 9.0


def fill_stratum(painter: QPainter, stratum: Stratum, theme: Theme, *, coming: bool) -> None:
    """Fill a stratum; what is still to come is hatched with the paper."""
    coat, bounds = stratum.coat, stratum.path.boundingRect()
    painter.save()
    painter.setClipPath(stratum.path, Qt.ClipOperation.IntersectClip)
    painter.fillRect(bounds, theme.film_colour(_TONES[coat.kind]))
    if bounds.height() >= _SEEN_FROM:
        marks = _ink_blots if _of_ink(coat) else _MARKS.get(coat.kind)
        if marks is not None:
            marks(painter, stratum, _mark_colour(theme, coat))
    if coat.kind is CoatKind.LEAF:
        _sheen(painter, bounds, theme)
    if coming:
        _hatch(painter, bounds, theme.colour("paper"))
    painter.restore()
    painter.setPen(QPen(theme.colour("film_edge"), 1.0))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPath(stratum.path)


def _hatch(painter: QPainter, bounds: QRectF, paper: QColor) -> None:
    """Slanting lines as far apart at every scale of the screen."""
    painter.setPen(QPen(paper, 1.3))
    high = bounds.height()
    x = bounds.left() - high
    while x < bounds.right():
        painter.drawLine(QLineF(x, bounds.bottom(), x + high, bounds.top()))
        x += _HATCH
    painter.setPen(Qt.PenStyle.NoPen)


def _of_ink(coat: Coat) -> bool:
    return any("ink" in colour.colourant.casefold() for colour in coat.colours)


def _mark_colour(theme: Theme, coat: Coat) -> QColor:
    dark = coat.kind is CoatKind.COLOUR
    return theme.colour("paper" if dark else "film_edge")


def _waves(painter: QPainter, stratum: Stratum, colour: QColor) -> None:
    bounds = stratum.path.boundingRect()
    colour.setAlpha(150)
    painter.setPen(QPen(colour, 1.2))
    y = bounds.top() + 4.0
    while y < bounds.bottom():
        steps = range(int(bounds.width() // 6) + 2)
        line = [
            QPointF(bounds.left() + 6.0 * i, y + 2.2 * sin(0.55 * i + y / 5.0)) for i in steps
        ]
        painter.drawPolyline(QPolygonF(line))
        y += 9.0


def _flecks(painter: QPainter, stratum: Stratum, colour: QColor) -> None:
    bounds, chance = stratum.path.boundingRect(), Random(stratum.coat.key)  # noqa: S311 - a look
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colour)
    for _ in range(min(int(bounds.width() * bounds.height() / 70.0) + 12, _MOST_FLECKS)):
        x = bounds.left() + chance.random() * bounds.width()
        y = bounds.top() + chance.random() * bounds.height()
        wide, high = 1.6 + 2.2 * chance.random(), 1.0 + 1.4 * chance.random()
        painter.drawPolygon(
            QPolygonF(
                [
                    QPointF(x - wide, y),
                    QPointF(x, y - high),
                    QPointF(x + wide, y),
                    QPointF(x, y + high),
                ]
            )
        )


def _ink_blots(painter: QPainter, stratum: Stratum, colour: QColor) -> None:
    bounds, chance = stratum.path.boundingRect(), Random(stratum.coat.key)  # noqa: S311 - a look
    painter.setPen(QPen(colour, 1.2))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for _ in range(int(bounds.width() / 16.0)):
        x = bounds.left() + chance.random() * bounds.width()
        y = bounds.top() + chance.random() * bounds.height()
        size = 3.0 + 5.0 * chance.random()
        painter.drawEllipse(QPointF(x, y), size, size * 0.7)


def _dots(painter: QPainter, stratum: Stratum, colour: QColor) -> None:
    bounds = stratum.path.boundingRect()
    painter.fillRect(bounds, pattern(painter, colour, Qt.BrushStyle.Dense6Pattern))


def _dashes(painter: QPainter, stratum: Stratum, colour: QColor) -> None:
    bounds = stratum.path.boundingRect()
    pen = QPen(colour, 1.0)
    pen.setDashPattern([4.0, 4.0])
    painter.setPen(pen)
    y = bounds.top() + 3.0
    while y < bounds.bottom():
        painter.drawLine(QLineF(bounds.left(), y, bounds.right(), y))
        y += 5.0


def _verticals(painter: QPainter, stratum: Stratum, colour: QColor) -> None:
    bounds = stratum.path.boundingRect()
    painter.setPen(QPen(colour, 1.0))
    x = bounds.left() + 4.0
    while x < bounds.right():
        painter.drawLine(QLineF(x, bounds.top(), x, bounds.bottom()))
        x += 8.0


def _shine(painter: QPainter, stratum: Stratum, colour: QColor) -> None:
    """A gloss line near the free face."""
    line = stratum.grip.translated(stratum.outward * -3.0)
    painter.setPen(QPen(colour, 1.0))
    painter.drawLine(line)


def _sheen(painter: QPainter, bounds: QRectF, theme: Theme) -> None:
    painter.fillRect(bounds, theme.colour("warmth"))
    painter.setPen(QPen(theme.colour("warmth_band"), 2.0))
    x = bounds.left()
    while x < bounds.right():
        painter.drawLine(QLineF(x, bounds.bottom() + 1.0, x + 5.0, bounds.top() - 1.0))
        x += 12.0


_MARKS: dict[CoatKind, Callable[[QPainter, Stratum, QColor], None]] = {
    CoatKind.PRIME: _dots,
    CoatKind.COLOUR: _waves,
    CoatKind.GLITTER: _flecks,
    CoatKind.SIZE: _dashes,
    CoatKind.LOCK: _verticals,
    CoatKind.TOP_COAT: _shine,
}
