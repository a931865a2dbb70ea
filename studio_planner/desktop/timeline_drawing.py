"""Draws the timeline from back to front: ground, ribbons, the now line, words, the choice."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPen

from studio_planner.desktop.ground_painter import draw_ground, draw_now
from studio_planner.desktop.labels import TextStore, draw_labels
from studio_planner.desktop.lane_labels import LaneLabels
from studio_planner.desktop.ribbon_tiles import RibbonTiles
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.lane_labels import SeenLabel
    from studio_planner.desktop.lane_shape import LaneShape
    from studio_planner.services.ribbons import Lane


@dataclass(frozen=True, slots=True, kw_only=True)
class Stand:
    """How the timeline stands: its size, the rows in view, and where the chosen bar is."""

    size: QSize
    rows: range
    first_top: float
    shape: LaneShape
    current: QRectF | None
    focused: bool

    def top_of(self, row: int) -> float:
        """The y of the upper edge of a row in view."""
        return self.first_top + (row - self.rows.start) * self.shape.height


class TimelineDrawing(QObject):
    """Draws lanes on a canvas and keeps what it has drawn.

    Signals:
        drawn: everything has been drawn or sketched.
        renewed: there is more to see than was drawn last; draw again.
    """

    drawn = Signal()
    renewed = Signal()

    def __init__(self, canvas: Canvas, parent: QObject) -> None:
        """Start without lanes."""
        super().__init__(parent)
        self._canvas = canvas
        self._lanes: tuple[Lane, ...] = ()
        self.nothing = ""
        self._store = TextStore()
        self._theme = canvas.theme
        self._tiles: RibbonTiles | None = None
        self._labels: LaneLabels | None = None

    @property
    def settled(self) -> bool:
        """Whether what was drawn last is more than a sketch everywhere."""
        return self._tiles is not None and self._tiles.settled

    @property
    def at_rest(self) -> bool:
        """Whether nothing is left to be asked or drawn ahead."""
        return self._tiles is not None and self._tiles.at_rest

    def show_lanes(self, lanes: tuple[Lane, ...]) -> None:
        """Draw other lanes from now on."""
        self._lanes = lanes
        self._forget()

    def _forget(self) -> None:
        if self._tiles is not None:
            self._tiles.deleteLater()
        self._tiles = None
        self._labels = None
        self._theme = self._canvas.theme

    def paint(self, painter: QPainter, stand: Stand) -> None:
        """Draw everything; what is not known yet is asked and drawn a little later."""
        canvas, height = self._canvas, float(stand.size.height())
        if self._theme is not canvas.theme:
            self._forget()
        painter.fillRect(
            QRect(0, 0, stand.size.width(), stand.size.height()), canvas.theme.colour("paper")
        )
        draw_ground(painter, height, canvas)
        self._draw_rules(painter, stand)
        tiles = self._ribbons()
        tiles.draw(painter, stand.rows, stand.first_top, stand.shape, canvas.scale)
        labels = self.labels(stand)
        draw_now(painter, height, canvas.theme, canvas.now_x)
        self._clear_for_labels(painter, labels)
        draw_labels(painter, labels)
        self._draw_current(painter, stand)
        if not self._lanes:
            self._draw_empty(painter, stand.size)
        self.drawn.emit()

    def _ribbons(self) -> RibbonTiles:
        if self._tiles is None:
            self._tiles = RibbonTiles(self._canvas.theme, self._lanes, self)
            self._tiles.renewed.connect(self.renewed)
        return self._tiles

    def labels(self, stand: Stand) -> list[SeenLabel]:
        """Every label in view, with its left and top edge; none of a lane that is sketched."""
        canvas, shape, tiles = self._canvas, stand.shape, self._ribbons()
        if not shape.named:
            return []
        if self._labels is None:
            self._labels = LaneLabels(canvas.theme, canvas.fonts, canvas.wall, self._store)
        in_view = self._labels.in_view
        return [
            seen
            for row in stand.rows
            if tiles.knows(row)
            for seen in in_view(self._lanes[row], stand.top_of(row), shape, canvas.scale)
        ]

    def _draw_rules(self, painter: QPainter, stand: Stand) -> None:
        if stand.shape.hairline:
            return
        painter.setPen(QPen(self._canvas.theme.colour("faint_rule"), 1.0))
        for row in stand.rows:
            y = round(stand.top_of(row + 1)) - 1
            painter.drawLine(0, y, stand.size.width(), y)

    def _clear_for_labels(self, painter: QPainter, labels: list[SeenLabel]) -> None:
        x, now = self._canvas.now_x, self._canvas.now
        at_night = any(start <= now < end for start, end in self._canvas.nights)
        ground = self._canvas.theme.colour("night" if at_night else "paper")
        height = self._canvas.fonts.small_height
        for left, top, label in labels:
            if left - 2.0 <= x <= left + label.width + 2.0:
                painter.fillRect(QRectF(x - 2.0, top, 4.0, height), ground)

    def _draw_current(self, painter: QPainter, stand: Stand) -> None:
        if stand.current is None:
            return
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(self._canvas.theme.colour("ink"), 2.0 if stand.focused else 1.0))
        # Its upper edge stays clear of the words above it.
        painter.drawRect(stand.current.adjusted(-2.0, 0.0, 2.0, 2.0))

    def _draw_empty(self, painter: QPainter, size: QSize) -> None:
        theme = self._canvas.theme
        painter.setFont(self._canvas.fonts.plain)
        painter.setPen(theme.colour("quiet"))
        words = translate("timeline", "Open a studio, or make a new one.")
        if self._canvas.view is not None:
            nothing = translate("timeline", "No pieces yet.")
            words = self.nothing if self._canvas.view.lanes else nothing
        whole = QRect(0, 0, size.width(), size.height())
        lines = painter.boundingRect(whole, Qt.AlignmentFlag.AlignCenter, words)
        painter.fillRect(lines.adjusted(-8, -4, 8, 4), theme.colour("paper"))
        painter.drawText(whole, Qt.AlignmentFlag.AlignCenter, words)
