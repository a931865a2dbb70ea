"""Draws cure ribbons: films, doorways, hands-on blocks, joints, steps and ready flags.

All lanes in view are collected first and drawn part by part, so that a frame changes pens and
brushes a few times and not for every bar.
"""

from __future__ import annotations

from itertools import zip_longest
from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QPolygonF

from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import StepKind, Trust
from studio_planner.desktop import words
from studio_planner.desktop.film_brushes import FilmBrushes
from studio_planner.desktop.labels import LabelRow, PlacedLabel, TextStore
from studio_planner.desktop.lane_shape import LaneShape, block_rect
from studio_planner.desktop.ribbon_strokes import Strokes, draw_strokes
from studio_planner.science.stages import Stage
from studio_planner.services.ribbons import Ribbon, StepMark

if TYPE_CHECKING:
    from collections.abc import Iterable
    from zoneinfo import ZoneInfo

    from PySide6.QtGui import QPainter

    from studio_planner.desktop.fonts import Fonts
    from studio_planner.desktop.theme import Theme
    from studio_planner.desktop.time_scale import TimeScale
    from studio_planner.services.ribbons import Doorway, Flag, Lane

_WET = (Stage.TACK_FREE, Stage.RECOAT_OPENS)
_CURED = (Stage.HANDLE, Stage.PRINT_FREE)
_LEAST_LABEL = 24.0
_EDGE = 40.0


class RibbonPainter:
    """Draws the lanes in view on one theme, scale and set of fonts."""

    def __init__(
        self, theme: Theme, fonts: Fonts, scale: TimeScale, zone: ZoneInfo, store: TextStore
    ) -> None:
        """Keep what every frame needs; brushes are made when first used."""
        self.theme = theme
        self._fonts = fonts
        self._scale = scale
        self._zone = zone
        self._store = store
        self._brushes = FilmBrushes(theme)
        self._ink = theme.colour("ink")
        self._quiet = theme.colour("quiet")
        self._blue = theme.colour("window")

    def paint(
        self, painter: QPainter, lanes: Iterable[tuple[Lane, float]], shape: LaneShape
    ) -> list[PlacedLabel]:
        """Draw lanes, each with the y of its top; give their labels, which are drawn last."""
        strokes = Strokes()
        for lane, top in lanes:
            self._collect(strokes, lane, top, shape)
        draw_strokes(painter, strokes, self.theme, self._brushes)
        return strokes.labels

    # What is where

    def _collect(self, strokes: Strokes, lane: Lane, top: float, shape: LaneShape) -> None:
        start, end = self._scale.second(-_EDGE), self._scale.second(self._scale.width + _EDGE)
        upper = LabelRow(
            self._store, top + (shape.upper_label or 0.0), self._fonts.small_height
        )
        lower = LabelRow(self._store, top + shape.lower_label, self._fonts.small_height)
        bars = [b for b in lane.bars if _begins(b) < end and b.hidden_after.timestamp() > start]
        for bar in bars:
            if isinstance(bar, Ribbon):
                self._collect_ribbon(strokes, bar, top, shape, upper)
            else:
                self._collect_step(strokes, bar, top, shape)
        if shape.labelled:
            self._collect_flags(strokes, lane, top, shape, upper)
            self._collect_names(bars, lower)
            strokes.labels += upper.labels + lower.labels

    def _collect_ribbon(
        self, strokes: Strokes, bar: Ribbon, top: float, shape: LaneShape, upper: LabelRow
    ) -> None:
        block = block_rect(bar, top, shape, self._scale)
        strokes.blocks.append(block)
        if shape.hairline:
            self._collect_flat(strokes, bar, top, shape)
            return
        self._collect_film(strokes, bar, top, shape)
        self._collect_joint(strokes, bar, block, shape)
        self._collect_doorway(strokes, bar, top, shape, upper)

    def _film_rect(
        self, bar: Ribbon, start: float, end: float, top: float, shape: LaneShape
    ) -> QRectF:
        left, right = self._scale.x(start), self._scale.x(end)
        height = shape.film_height * (2.0 / 3.0 if bar.lifted else 1.0)
        return QRectF(left, top + shape.film, right - left, height)

    def _collect_film(
        self, strokes: Strokes, bar: Ribbon, top: float, shape: LaneShape
    ) -> None:
        spread, until = bar.planned.end.timestamp(), bar.until.timestamp()
        whole = self._film_rect(bar, spread, until, top, shape)
        if whole.width() <= 0.0:
            return
        for start, end, brush in self._brushes.stretches(bar, whole.width()):
            rect = self._film_rect(bar, start, end, top, shape)
            if rect.right() >= 0.0 and rect.left() <= self._scale.width:
                strokes.films.append((rect, brush))
        wet = min((m.at for m in bar.film.marks if m.stage in _WET and m.at), default=spread)
        strokes.ripples.append(self._film_rect(bar, spread, min(wet, until), top, shape))
        strokes.edges.append(self._film_rect(bar, spread, until, top, shape))

    def _collect_flat(
        self, strokes: Strokes, bar: Ribbon, top: float, shape: LaneShape
    ) -> None:
        until = bar.until.timestamp()
        cuts = [bar.planned.end.timestamp()]
        for stages in (_WET, _CURED):
            found = (m.at for m in bar.film.marks if m.stage in stages and m.at is not None)
            cuts.append(min(max(min(found, default=until), cuts[-1]), until))
        for start, end, tone in zip(cuts, [*cuts[1:], until], (0.15, 0.5, 0.9), strict=True):
            if end > start:
                step = self.theme.film_step(tone)
                rect = self._film_rect(bar, start, end, top, shape)
                strokes.flat.setdefault(step, []).append(rect)

    def _collect_doorway(
        self,
        strokes: Strokes,
        bar: Ribbon,
        top: float,
        shape: LaneShape,
        upper: LabelRow,
    ) -> None:
        door, x = bar.doorway, self._scale.x
        if door is None:
            return
        left = x(door.opens.timestamp())
        right = x((door.closes or bar.until).timestamp())
        if right <= left:
            return
        lintel, bottom = top + shape.lintel, top + shape.film_bottom
        band = QRectF(left, lintel, right - left, shape.film - shape.lintel)
        strokes.open.append(band)
        for start, end in door.nobody:
            begin, stop = x(start.timestamp()), x(end.timestamp())
            strokes.nobody.append(QRectF(begin, lintel, stop - begin, band.height()))
        frame = [QLineF(left, bottom, left, lintel), QLineF(left, lintel, right, lintel)]
        if door.closes is not None:
            frame.append(QLineF(right, lintel, right, bottom))
        (strokes.posts if door.used else strokes.missed).extend(frame)
        if shape.labelled:
            self._label_doorway(door, left, right, upper)

    def _label_doorway(self, door: Doorway, left: float, right: float, upper: LabelRow) -> None:
        opens = words.clock_time(door.opens, self._zone)
        font = self._fonts.small
        if door.closes is None:
            upper.place(left, f"{opens}, stays open", font, self._blue) or upper.place(
                left, opens, font, self._blue
            )
            return
        closes = words.clock_time(door.closes, self._zone)
        both = self._store.width(opens, font) + self._store.width(closes, font) + 8.0
        if right - left >= both:
            upper.place(left, opens, font, self._blue)
            upper.place_before(right, closes, font, self._blue)
        else:
            upper.place(left, f"{opens}{words.TO}{closes}", font, self._blue)

    def _collect_joint(
        self, strokes: Strokes, bar: Ribbon, block: QRectF, shape: LaneShape
    ) -> None:
        if bar.planned.joint is Joint.SCUFFED:
            bottom = block.top() + shape.film_bottom - shape.lintel
            for step in range(3):
                x = block.left() - 3.0 - 3.0 * step
                strokes.scuffs.append(QLineF(x - 3.0, bottom, x, bottom - 7.0))
        window = bar.planned.window
        if window is not None and window.trust is Trust.TEST_FIRST:
            strokes.touches.append(QPointF(block.left() - 5.0, block.top() + 4.0))

    def _collect_step(
        self, strokes: Strokes, bar: StepMark, top: float, shape: LaneShape
    ) -> None:
        rect = block_rect(bar, top, shape, self._scale)
        if shape.hairline:
            strokes.blocks.append(rect)
            return
        strokes.steps.append(rect)
        if bar.planned.kind is StepKind.SAND:
            strokes.sanded.append(rect)

    def _collect_flags(
        self, strokes: Strokes, lane: Lane, top: float, shape: LaneShape, upper: LabelRow
    ) -> None:
        for flag in lane.flags:
            when = flag.safe or flag.likely
            x = None if when is None else self._scale.x(when.timestamp())
            if x is None or not -_EDGE <= x <= self._scale.width + _EDGE:
                continue
            lintel = top + shape.lintel
            strokes.poles.append(QLineF(x, lintel, x, top + shape.film_bottom))
            corners = [QPointF(x, lintel), QPointF(x + 7, lintel + 3), QPointF(x, lintel + 6)]
            strokes.pennants.append(QPolygonF(corners))
            self._label_flag(flag, x, upper)

    def _label_flag(self, flag: Flag, x: float, upper: LabelRow) -> None:
        text, font = words.FLAG_WORDS[flag.stage], self._fonts.small
        upper.place(x, text, font, self._ink) or upper.place_before(x, text, font, self._ink)

    def _collect_names(self, bars: list[Ribbon | StepMark], lower: LabelRow) -> None:
        ribbons = [bar for bar in bars if isinstance(bar, Ribbon)]
        for bar, following in zip_longest(ribbons, ribbons[1:]):
            limit = float("inf") if following is None else self._scale.x(_begins(following))
            left = max(self._scale.x(_begins(bar)), 2.0)
            self._name_coat(bar, left, limit - left - 6.0, lower)
        for step in bars:
            if isinstance(step, StepMark):
                self._name_step(step, self._scale.x(_begins(step)), lower)

    def _name_step(self, step: StepMark, left: float, lower: LabelRow) -> None:
        text, font = words.STEP_WORDS[step.planned.kind], self._fonts.small
        lower.place(left, text, font, self._quiet) or lower.place_before(
            left + 7.0, text, font, self._quiet
        )

    def _name_coat(self, bar: Ribbon, left: float, room: float, lower: LabelRow) -> None:
        if room < _LEAST_LABEL:
            return
        window = bar.planned.window
        tested = window is not None and window.trust is Trust.TEST_FIRST
        scuffed = bar.planned.joint is Joint.SCUFFED
        suffix = ", test first" if tested else ", scuffed" if scuffed else ""
        font = self._fonts.small_bold
        full = f"{bar.coat.kind}{suffix}"
        if self._store.width(full, font) > room:
            full = self._store.elided(str(bar.coat.kind), font, room)
        lower.place(left, full, font, self._ink)


def _begins(bar: Ribbon | StepMark) -> float:
    return bar.start.timestamp()
