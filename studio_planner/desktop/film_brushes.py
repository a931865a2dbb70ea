"""The brushes of a film: its shades from wet to hard, and ripples while it is wet."""

from __future__ import annotations

from math import pi, sin
from typing import TYPE_CHECKING
from weakref import WeakKeyDictionary

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QBrush, QGradient, QLinearGradient, QPainter, QPen, QPixmap, QPolygonF

if TYPE_CHECKING:
    from studio_planner.desktop.theme import Theme
    from studio_planner.services.ribbons import Ribbon

_WIDE = 260.0
_CHUNK = 6
_RIPPLE = 12

Stretch = tuple[float, float, QBrush]
"""From and to [s since 1970 UTC], and the brush between them."""


class FilmBrushes:
    """Brushes of every film, made once; a wide film gets one for each stretch of its clock.

    A gradient has a limited number of steps, so one over a week would blur its first hours.
    """

    def __init__(self, theme: Theme) -> None:
        """Mix the colours of one theme."""
        self._theme = theme
        self._whole: WeakKeyDictionary[Ribbon, tuple[Stretch, ...]] = WeakKeyDictionary()
        self._parts: WeakKeyDictionary[Ribbon, tuple[Stretch, ...]] = WeakKeyDictionary()
        self._ripples: dict[float, QPixmap] = {}

    def stretches(self, ribbon: Ribbon, width: float) -> tuple[Stretch, ...]:
        """What to fill a film that is `width` pixels wide with."""
        wide = width > _WIDE
        kept, chunk = (self._parts, _CHUNK) if wide else (self._whole, len(ribbon.tones))
        found = kept.get(ribbon)
        if found is None:
            found = kept[ribbon] = self._made(ribbon.tones, max(chunk, 1))
        return found

    def _made(self, tones: tuple[tuple[float, float], ...], chunk: int) -> tuple[Stretch, ...]:
        starts = range(0, max(len(tones) - 1, 1), chunk)
        return tuple(self._stretch(tones[start : start + chunk + 1]) for start in starts)

    def _stretch(self, tones: tuple[tuple[float, float], ...]) -> Stretch:
        start, end = tones[0][0], tones[-1][0]
        gradient = QLinearGradient(0.0, 0.0, 1.0, 0.0)
        gradient.setCoordinateMode(QGradient.CoordinateMode.ObjectMode)
        length = max(end - start, 1.0)
        colour = self._theme.film_colour
        gradient.setStops(
            [(min((second - start) / length, 1.0), colour(tone)) for second, tone in tones]
        )
        return start, end, QBrush(gradient)

    def ripple(self, ratio: float) -> QPixmap:
        """A tile of ripples for a screen of a device pixel ratio."""
        if ratio not in self._ripples:
            self._ripples[ratio] = _ripples(self._theme, ratio)
        return self._ripples[ratio]


def _ripples(theme: Theme, ratio: float) -> QPixmap:
    tile = QPixmap(round(_RIPPLE * ratio), round(_RIPPLE * ratio))
    tile.setDevicePixelRatio(ratio)
    tile.fill(Qt.GlobalColor.transparent)
    with QPainter(tile) as painter:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colour = theme.colour("ripple")
        colour.setAlpha(150)
        painter.setPen(QPen(colour, 1.0))
        for middle in (2.5, 8.5):
            steps = range(-2, _RIPPLE + 3)
            wave = [QPointF(x, middle + 1.2 * sin(2 * pi * x / _RIPPLE)) for x in steps]
            painter.drawPolyline(QPolygonF(wave))
    return tile
