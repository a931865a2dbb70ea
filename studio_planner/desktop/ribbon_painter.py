"""Draws cure ribbons: films, doorways, hands-on blocks, joints, steps and ready flags.

All lanes in view are collected first and drawn part by part, so that a frame changes pens and
brushes a few times and not for every bar.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QPolygonF

from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import StepKind, Trust
from studio_planner.desktop.film_brushes import FilmBrushes
from studio_planner.desktop.lane_shape import LaneShape, block_rect
from studio_planner.desktop.ribbon_strokes import Strokes, draw_strokes
from studio_planner.services.ribbons import Ribbon

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from PySide6.QtGui import QPainter

    from studio_planner.desktop.theme import Theme
    from studio_planner.desktop.time_scale import TimeView
    from studio_planner.services.ribbons import Bar, Lane, StepMark

_EDGE = 40.0
_SKETCHED = 0.55
"""The tone of a film whose clocks have not been asked yet."""


def bars_in_view(lane: Lane, view: TimeView) -> Iterator[Bar]:
    """The bars of a lane of which something may be drawn in a stretch of time."""
    start, end = view.second(-_EDGE), view.second(view.width + _EDGE)
    for bar in lane.bars:
        if bar.begins >= end:
            return
        if bar.shows_until > start:
            yield bar


class RibbonPainter:
    """Draws the lanes in view on one theme, scale and set of fonts."""

    def __init__(self, theme: Theme) -> None:
        """Keep the colours; brushes are made when first used."""
        self.theme = theme
        self._brushes = FilmBrushes(theme)

    def paint(
        self,
        painter: QPainter,
        lanes: Iterable[tuple[Lane, float]],
        shape: LaneShape,
        view: TimeView,
        *,
        rough: bool = False,
    ) -> None:
        """Draw lanes, each with the y of its top, as far as they are in `view`.

        Films whose clocks have not been asked are sketched; if `rough`, all are.
        """
        strokes = Strokes()
        collector = _Collector(strokes, shape, view, self._brushes, rough=rough)
        for lane, top in lanes:
            collector.add(lane, top)
        draw_strokes(painter, strokes, self.theme, self._brushes)


class _Collector:
    """Puts the parts of lanes where they belong at one height and one stretch of time."""

    def __init__(
        self,
        strokes: Strokes,
        shape: LaneShape,
        view: TimeView,
        brushes: FilmBrushes,
        *,
        rough: bool,
    ) -> None:
        self._rough = rough
        self._strokes = strokes
        self._shape = shape
        self._view = view
        self._brushes = brushes

    def add(self, lane: Lane, top: float) -> None:
        """Collect what is in view of one lane."""
        if self._shape.hairline and (self._rough or not lane.known):
            self._add_rough(lane, top)
            return
        for bar in bars_in_view(lane, self._view):
            if isinstance(bar, Ribbon):
                self._add_ribbon(bar, top)
            else:
                self._add_step(bar, top)
        if self._shape.labelled:
            self._add_flags(lane, top)

    def _add_ribbon(self, bar: Ribbon, top: float) -> None:
        block = block_rect(bar, top, self._shape, self._view)
        self._strokes.blocks.append(block)
        fine = not self._shape.hairline
        if fine:
            self._add_joint(bar, block)
        if self._rough or not bar.known(fine=fine):
            self._add_sketch(bar, top)
        elif fine:
            self._add_film(bar, top)
            self._add_doorway(bar, top)
        else:
            self._add_flat(bar, top)

    def _add_rough(self, lane: Lane, top: float) -> None:
        ribbons = lane.ribbons
        if ribbons:
            rect = self._film_rect(ribbons[-1], ribbons[0].begins, ribbons[-1].shows_until, top)
            self._strokes.flat.setdefault(_SKETCHED, []).append(rect)

    def _add_sketch(self, bar: Ribbon, top: float) -> None:
        start, end = bar.spread, bar.planned_until.timestamp()
        if end > start:
            rect = self._film_rect(bar, start, end, top)
            self._strokes.flat.setdefault(_SKETCHED, []).append(rect)

    def _film_rect(self, bar: Ribbon, start: float, end: float, top: float) -> QRectF:
        left, right = self._view.x(start), self._view.x(end)
        lifted = bar.known(fine=False) and bar.lifted
        height = self._shape.film_height * (2.0 / 3.0 if lifted else 1.0)
        return QRectF(left, top + self._shape.film, right - left, height)

    def _add_film(self, bar: Ribbon, top: float) -> None:
        spread, until = bar.spread, bar.until.timestamp()
        whole = self._film_rect(bar, spread, until, top)
        if whole.width() <= 0.0:
            return
        for start, end, brush in self._brushes.stretches(bar, whole.width()):
            rect = self._film_rect(bar, start, end, top)
            if rect.right() >= 0.0 and rect.left() <= self._view.width:
                self._strokes.films.append((rect, brush))
        self._strokes.ripples.append(self._film_rect(bar, spread, bar.wet_until, top))
        self._strokes.edges.append(self._film_rect(bar, spread, until, top))

    def _add_flat(self, bar: Ribbon, top: float) -> None:
        for start, end, tone in bar.phases:
            rect = self._film_rect(bar, start, end, top)
            self._strokes.flat.setdefault(tone, []).append(rect)

    def _add_doorway(self, bar: Ribbon, top: float) -> None:
        door, x = bar.doorway, self._view.x
        if door is None:
            return
        left = x(door.opens.timestamp())
        right = x((door.closes or bar.until).timestamp())
        if right <= left:
            return
        lintel, bottom = top + self._shape.lintel, top + self._shape.film_bottom
        band = QRectF(left, lintel, right - left, self._shape.film - self._shape.lintel)
        self._strokes.open.append(band)
        for start, end in door.nobody:
            begin, stop = x(start.timestamp()), x(end.timestamp())
            self._strokes.nobody.append(QRectF(begin, lintel, stop - begin, band.height()))
        frame = [QLineF(left, bottom, left, lintel), QLineF(left, lintel, right, lintel)]
        if door.closes is not None:
            frame.append(QLineF(right, lintel, right, bottom))
        (self._strokes.posts if door.used else self._strokes.missed).extend(frame)

    def _add_joint(self, bar: Ribbon, block: QRectF) -> None:
        if bar.planned.joint is Joint.SCUFFED:
            bottom = block.top() + self._shape.film_bottom - self._shape.lintel
            for step in range(3):
                x = block.left() - 3.0 - 3.0 * step
                self._strokes.scuffs.append(QLineF(x - 3.0, bottom, x, bottom - 7.0))
        if bar.pinned:
            film = QRectF(block)
            film.setTop(block.bottom() - self._shape.film_height)
            self._strokes.pins.append(film)
        window = bar.planned.window
        if window is not None and window.trust is Trust.TEST_FIRST:
            self._strokes.touches.append(QPointF(block.left() - 5.0, block.top() + 4.0))

    def _add_step(self, bar: StepMark, top: float) -> None:
        rect = block_rect(bar, top, self._shape, self._view)
        if self._shape.hairline:
            self._strokes.blocks.append(rect)
            return
        self._strokes.steps.append(rect)
        if bar.planned.kind is StepKind.SAND:
            self._strokes.sanded.append(rect)

    def _add_flags(self, lane: Lane, top: float) -> None:
        for flag in lane.flags:
            when = flag.safe or flag.likely
            x = None if when is None else self._view.x(when.timestamp())
            if x is None or not -_EDGE <= x <= self._view.width + _EDGE:
                continue
            lintel = top + self._shape.lintel
            self._strokes.poles.append(QLineF(x, lintel, x, top + self._shape.film_bottom))
            corners = [QPointF(x, lintel), QPointF(x + 7, lintel + 3), QPointF(x, lintel + 6)]
            self._strokes.pennants.append(QPolygonF(corners))
