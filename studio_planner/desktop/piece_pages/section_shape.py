"""Where everything in a section through a piece lies: strata, rim, joints and grips.

All films are to one scale (pixels per mm). The blank is cut short, and so is a rim that is
much higher than what it holds. Areas of the top lie side by side, each in a column of its own.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QPointF, QRectF
from PySide6.QtGui import QPainterPath

from studio_planner.craft.pieces import EDGE, TOP, UNDERSIDE

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Coat, Piece

BODY = 54.0
LEAST = 2.0
"""A thinner film is drawn as a line of so many pixels."""

LEFT = 30.0
ABOVE = 26.0
RIM_WIDTH = 11.0
_NARROWEST_BODY = 110.0
_RIM_OVER = 20.0
_LEVELS_FROM_MM = 0.5
"""From this film on a coat flows over what is under it until its face is level."""

_LEAST_SHARE, _MOST_SHARE, _USUAL_SHARE = 0.18, 0.6, 0.4
"""How much of the picture's width an area takes: as much as it has of the top, within these."""

Lines = tuple[QLineF, tuple[QLineF, ...], QPointF]
"""A stratum's grip, its seats, and the way outwards."""


@dataclass(frozen=True, slots=True)
class Stratum:
    """One coat as it lies: its outline, and the grip that its free face is dragged by.

    `outward` is the way that it grows, `seats` the lines where it meets what is
    below.
    """

    coat: Coat
    path: QPainterPath
    grip: QLineF
    seats: tuple[QLineF, ...]
    outward: QPointF

    @property
    def seat(self) -> QLineF:
        """The part of its seat that lies under the grip."""
        return self.seats[-1]

    @property
    def middle(self) -> QPointF:
        """The point in it that its label points to."""
        return (self.grip.p2() + self.seat.p2()) / 2.0


@dataclass(slots=True)
class SectionShape:
    """The whole section; strata are listed from the top of the picture down."""

    scale: float
    body: QRectF
    rims: list[QRectF] = field(default_factory=list)
    rim_cut: bool = False
    strata: list[Stratum] = field(default_factory=list)
    areas: list[tuple[str, float]] = field(default_factory=list)
    bottom: float = 0.0
    right: float = 0.0

    def stratum(self, key: str) -> Stratum | None:
        """The stratum of a coat."""
        return next((one for one in self.strata if one.coat.key == key), None)


def drawn_order(piece: Piece) -> list[Coat]:
    """The coats from the top of the picture down: top, edge alone, underside."""
    stack = piece.stack
    upper = [coat for coat in stack if coat.faces - {EDGE, UNDERSIDE}]
    edge = [coat for coat in stack if coat.faces == {EDGE}]
    lower = [coat for coat in stack if UNDERSIDE in coat.faces]
    return [*reversed(upper), *reversed(edge), *lower]


class _Builder:
    """Lays coat on coat from the blank outwards; the blank's top is at 0."""

    def __init__(self, piece: Piece, scale: float, width: float, edge_film_mm: float) -> None:
        self.piece = piece
        self.scale = scale
        self._edge_film = edge_film_mm
        edge = _edge_pixels(piece, scale, edge_film_mm)
        self._left = LEFT + edge
        self._right = self._left + max(width - 2.0 * edge, _NARROWEST_BODY)
        self.rimmed = piece.rim_mm > 0.0
        inset = RIM_WIDTH if self.rimmed else 0.0
        self.columns = _columns(piece, self._left + inset, self._right - inset)
        self.heights = [0.0] * len(self.columns)
        self._edge = 0.0
        self._under = 0.0
        self.strata: dict[str, Stratum] = {}

    def lay(self, coat: Coat) -> None:
        """Lay one more coat on what is there."""
        path = QPainterPath()
        thick = max(coat.film_mm * self.scale, LEAST)
        lines = None
        if EDGE in coat.faces:
            lines = self._lay_edge(coat, path)
        if UNDERSIDE in coat.faces:
            lines = self._lay_under(path, thick)
        covered = [i for i, (name, _, _) in enumerate(self.columns) if _covers(coat, name)]
        if covered:
            levels = coat.film_mm >= _LEVELS_FROM_MM
            lines = self._lay_top(path, thick, covered, levels=levels)
        if lines is not None:
            grip, seats, outward = lines
            path.setFillRule(path.fillRule().WindingFill)
            self.strata[coat.key] = Stratum(coat, path.simplified(), grip, seats, outward)

    def _lay_edge(self, coat: Coat, path: QPainterPath) -> Lines:
        thick = max(_edge_film(coat, self._edge_film) * self.scale, LEAST)
        inner, outer = self._edge, self._edge + thick
        # It reaches as far as what lies on the blank already; a rim stands in its way there.
        tops = (0.0, 0.0) if self.rimmed else (self.heights[0], self.heights[-1])
        for x, top in zip((self._left - outer, self._right + inner), tops, strict=True):
            path.addRect(QRectF(x, -top, thick, top + BODY + self._under))
        self._edge = outer
        right = self._right
        return (
            QLineF(right + outer, 0.0, right + outer, BODY),
            (QLineF(right + inner, 0.0, right + inner, BODY),),
            QPointF(1.0, 0.0),
        )

    def _lay_under(self, path: QPainterPath, thick: float) -> Lines:
        left, right = self._left - self._edge, self._right + self._edge
        top = BODY + self._under
        path.addRect(QRectF(left, top, right - left, thick))
        self._under += thick
        return (
            QLineF(left, top + thick, right, top + thick),
            (QLineF(left, top, right, top),),
            QPointF(0.0, 1.0),
        )

    def _lay_top(
        self, path: QPainterPath, thick: float, covered: list[int], *, levels: bool
    ) -> Lines:
        before = list(self.heights)
        over = 0.0 if self.rimmed else self._edge
        tops = self._tops(thick, covered, levels=levels)
        seats = []
        for index in covered:
            _, x0, x1 = self.columns[index]
            x0 -= over if index == 0 else 0.0
            x1 += over if index == len(self.columns) - 1 else 0.0
            path.addRect(QRectF(x0, -tops[index], x1 - x0, tops[index] - before[index]))
            if index - 1 in covered and not levels:
                _close_step(path, x0, (before[index - 1], before[index]), thick)
            seats.append(QLineF(x0, -before[index], x1, -before[index]))
            self.heights[index] = tops[index]
        # The grip lies at the right of what is covered, where the words point to.
        last = seats[-1]
        grip = QLineF(last.x1(), -tops[covered[-1]], last.x2(), -tops[covered[-1]])
        return grip, tuple(seats), QPointF(0.0, -1.0)

    def _tops(self, thick: float, covered: list[int], *, levels: bool) -> dict[int, float]:
        """How high a coat comes in each column; what flows evens out, with the same volume."""
        if not levels:
            return {index: self.heights[index] + thick for index in covered}
        wide = {index: self.columns[index][2] - self.columns[index][1] for index in covered}
        whole = sum(wide.values())
        level = sum((self.heights[i] + thick) * wide[i] for i in covered) / whole
        return {index: max(level, self.heights[index] + LEAST) for index in covered}

    @property
    def top(self) -> float:
        """How high the films stand over the blank."""
        return max(self.heights)

    @property
    def under(self) -> float:
        """How far the films hang below it."""
        return self._under

    @property
    def edge(self) -> float:
        """How far the films on the edge stand out."""
        return self._edge

    @property
    def sides(self) -> tuple[float, float]:
        """Where the blank's edges stand."""
        return self._left, self._right


def section_shape(
    piece: Piece, scale: float, width: float, edge_film_mm: float
) -> SectionShape:
    """Lay out a piece at `scale` pixels to a mm of film, its blank `width` pixels wide."""
    builder = _Builder(piece, scale, width, edge_film_mm)
    for coat in piece.stack:
        builder.lay(coat)
    rim = piece.rim_mm * scale
    shown = min(rim, builder.top + _RIM_OVER) if builder.rimmed else 0.0
    down = ABOVE + max(builder.top, shown)
    left, right = builder.sides
    shape = SectionShape(scale, QRectF(left, down, right - left, BODY))
    if builder.rimmed:
        shape.rim_cut = shown < rim
        shape.rims = [
            QRectF(x, down - shown, RIM_WIDTH, shown) for x in (left, right - RIM_WIDTH)
        ]
    shape.strata = [
        _moved(builder.strata[coat.key], down)
        for coat in drawn_order(piece)
        if coat.key in builder.strata
    ]
    shape.areas = [(name, (x0 + x1) / 2.0) for name, x0, x1 in builder.columns if name]
    shape.bottom = down + BODY + builder.under
    shape.right = right + builder.edge
    return shape


def fitting_scale(piece: Piece, room: float) -> float:
    """Pixels to a mm of film at which the whole stack takes about `room` pixels."""
    films = sum(coat.film_mm for coat in piece.stack if coat.faces != {EDGE})
    return min(max(room / max(films, 0.3), 6.0), 90.0)


def _moved(stratum: Stratum, down: float) -> Stratum:
    by = QPointF(0.0, down)
    return Stratum(
        stratum.coat,
        stratum.path.translated(by),
        stratum.grip.translated(by),
        tuple(seat.translated(by) for seat in stratum.seats),
        stratum.outward,
    )


def _edge_pixels(piece: Piece, scale: float, edge_film_mm: float) -> float:
    """How far all films on the edge stand out."""
    coats = [coat for coat in piece.stack if EDGE in coat.faces]
    return sum(max(_edge_film(coat, edge_film_mm) * scale, LEAST) for coat in coats)


def _edge_film(coat: Coat, edge_film_mm: float) -> float:
    """What an upright edge holds of a coat [mm]; one on the edge alone is as thick as said."""
    return coat.film_mm if coat.faces == {EDGE} else min(coat.film_mm, edge_film_mm)


def _covers(coat: Coat, area: str) -> bool:
    return TOP in coat.faces or (bool(area) and area in coat.faces)


def _columns(piece: Piece, left: float, right: float) -> list[tuple[str, float, float]]:
    named = sorted({f for coat in piece.stack for f in coat.faces} - {TOP, EDGE, UNDERSIDE})
    shares = {name: _share(piece, name) / max(len(named), 1) for name in named}
    beside = (1.0 - sum(shares.values())) / (len(named) + 1)
    parts = [("", beside)]
    for name in named:
        parts += [(name, shares[name]), ("", beside)]
    unit = (right - left) / sum(weight for _, weight in parts)
    columns, x = [], left
    for name, weight in parts:
        columns.append((name, x, x + weight * unit))
        x += weight * unit
    return columns


def _share(piece: Piece, area: str) -> float:
    """How much of the top an area is, as measured by the first coat on it."""
    own = next((c.area_cm2 for c in piece.stack if area in c.faces and c.area_cm2), None)
    share = _USUAL_SHARE if own is None else own / piece.shape.area_cm2
    return min(max(share, _LEAST_SHARE), _MOST_SHARE)


def _close_step(
    path: QPainterPath, x: float, heights: tuple[float, float], thick: float
) -> None:
    """Let a film go down the side of what it covers, where the column before is another."""
    before, here = heights
    if abs(before - here) <= thick:
        return
    wide = min(thick, 5.0)
    left = x if before > here else x - wide
    top = max(heights) + thick
    path.addRect(QRectF(left, -top, wide, top - min(heights)))
