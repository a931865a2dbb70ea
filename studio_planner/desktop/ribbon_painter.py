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
from studio_planner.science.stages import Stage
from studio_planner.services.ribbons import Ribbon

if TYPE_CHECKING:
    from collections.abc import Iterable

    from PySide6.QtGui import QPainter

    from studio_planner.desktop.theme import Theme
    from studio_planner.desktop.time_scale import TimeView
    from studio_planner.services.ribbons import Lane, StepMark

_WET = (Stage.TACK_FREE, Stage.RECOAT_OPENS)
_CURED = (Stage.HANDLE, Stage.PRINT_FREE)
_EDGE = 40.0


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
    ) -> None:
        """Draw lanes, each with the y of its top, as far as they are in `view`."""
        strokes = Strokes()
        collector = _Collector(strokes, shape, view, self._brushes)
        for lane, top in lanes:
            collector.add(lane, top)
        draw_strokes(painter, strokes, self.theme, self._brushes)


class _Collector:
    """Puts the parts of lanes where they belong at one height and one stretch of time."""

    def __init__(
        self, strokes: Strokes, shape: LaneShape, view: TimeView, brushes: FilmBrushes
    ) -> None:
        self._strokes = strokes
        self._shape = shape
        self._view = view
        self._brushes = brushes

    def add(self, lane: Lane, top: float) -> None:
        """Collect what is in view of one lane."""
        start, end = self._view.second(-_EDGE), self._view.second(self._view.width + _EDGE)
        for bar in lane.bars:
            if _begins(bar) >= end:
                break
            if bar.hidden_after.timestamp() <= start:
                self._add_late_doorway(bar, top, start)
            elif isinstance(bar, Ribbon):
                self._add_ribbon(bar, top)
            else:
                self._add_step(bar, top)
        if self._shape.labelled:
            self._add_flags(lane, top)

    def _add_late_doorway(self, bar: Ribbon | StepMark, top: float, start: float) -> None:
        # A window may stay open behind the coat that covers its film.
        if isinstance(bar, Ribbon) and not self._shape.hairline:
            window = bar.covered_by.window if bar.covered_by else None
            if window and window.closes and window.closes.timestamp() > start:
                self._add_doorway(bar, top)

    def _add_ribbon(self, bar: Ribbon, top: float) -> None:
        block = block_rect(bar, top, self._shape, self._view)
        self._strokes.blocks.append(block)
        if self._shape.hairline:
            self._add_flat(bar, top)
            return
        self._add_film(bar, top)
        self._add_joint(bar, block)
        self._add_doorway(bar, top)

    def _film_rect(self, bar: Ribbon, start: float, end: float, top: float) -> QRectF:
        left, right = self._view.x(start), self._view.x(end)
        height = self._shape.film_height * (2.0 / 3.0 if bar.lifted else 1.0)
        return QRectF(left, top + self._shape.film, right - left, height)

    def _add_film(self, bar: Ribbon, top: float) -> None:
        spread, until = bar.planned.end.timestamp(), bar.until.timestamp()
        whole = self._film_rect(bar, spread, until, top)
        if whole.width() <= 0.0:
            return
        for start, end, brush in self._brushes.stretches(bar, whole.width()):
            rect = self._film_rect(bar, start, end, top)
            if rect.right() >= 0.0 and rect.left() <= self._view.width:
                self._strokes.films.append((rect, brush))
        wet = min(bar.film.first_of(_WET, spread), until)
        self._strokes.ripples.append(self._film_rect(bar, spread, wet, top))
        self._strokes.edges.append(self._film_rect(bar, spread, until, top))

    def _add_flat(self, bar: Ribbon, top: float) -> None:
        until = bar.until.timestamp()
        cuts = [bar.planned.end.timestamp()]
        for stages in (_WET, _CURED):
            cuts.append(min(max(bar.film.first_of(stages, until), cuts[-1]), until))
        for start, end, tone in zip(cuts, [*cuts[1:], until], (0.15, 0.5, 0.9), strict=True):
            if end > start:
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


def _begins(bar: Ribbon | StepMark) -> float:
    return bar.start.timestamp()
