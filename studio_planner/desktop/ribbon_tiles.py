"""Keeps drawn ribbons as tiles, so that scrolling moves pictures and draws only what is new."""

from __future__ import annotations

from math import ceil, floor
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QPainter, QPixmap

from studio_planner.desktop.ribbon_painter import RibbonPainter
from studio_planner.desktop.time_scale import FixedView

if TYPE_CHECKING:
    from studio_planner.desktop.lane_shape import LaneShape
    from studio_planner.desktop.theme import Theme
    from studio_planner.desktop.time_scale import TimeScale
    from studio_planner.services.ribbons import Lane

_TILE_WIDTH = 512
_TILE_HEIGHT = 128
_MOST_TILES = 160

_Zoom = tuple[float, float, int]


class RibbonTiles:
    """Ribbons of some lanes on one theme.

    While the zoom changes they are drawn straight; once it stands still, tile by tile.
    """

    def __init__(self, theme: Theme, lanes: tuple[Lane, ...]) -> None:
        """Draw `lanes`; nothing is drawn yet."""
        self._painter = RibbonPainter(theme)
        self._lanes = lanes
        self._zoom: _Zoom | None = None
        self._tiles: dict[tuple[int, int], QPixmap] = {}

    def draw(
        self,
        painter: QPainter,
        rows: range,
        first_top: float,
        shape: LaneShape,
        scale: TimeScale,
    ) -> None:
        """Draw the rows in view; `first_top` is the y of the first of them."""
        ratio = painter.device().devicePixelRatioF()
        zoom = (scale.seconds_per_pixel, ratio, shape.height)
        if zoom != self._zoom:
            self._zoom = zoom
            self._tiles.clear()
            tops = (
                (self._lanes[row], first_top + i * shape.height) for i, row in enumerate(rows)
            )
            self._painter.paint(painter, tops, shape, scale)
            return
        self._draw_tiles(painter, rows, first_top, shape, scale)

    def _draw_tiles(
        self,
        painter: QPainter,
        rows: range,
        first_top: float,
        shape: LaneShape,
        scale: TimeScale,
    ) -> None:
        if not rows:
            return
        deep = max(1, _TILE_HEIGHT // shape.height)
        long = _TILE_WIDTH * scale.seconds_per_pixel
        ratio = painter.device().devicePixelRatioF()
        for row in range(rows.start // deep, ceil(rows.stop / deep)):
            y = first_top + (row * deep - rows.start) * shape.height
            for column in range(floor(scale.origin / long), floor(scale.end / long) + 1):
                tile = self._tile(row, column, shape, ratio)
                # Whole device pixels keep a tile as sharp as it was drawn.
                x = round(scale.x(column * long) * ratio) / ratio
                painter.drawPixmap(QPointF(x, y), tile)

    def _tile(self, row: int, column: int, shape: LaneShape, ratio: float) -> QPixmap:
        key = (row, column)
        if key not in self._tiles:
            while len(self._tiles) >= _MOST_TILES:
                self._tiles.pop(next(iter(self._tiles)))
            self._tiles[key] = self._drawn(row, column, shape, ratio)
        return self._tiles[key]

    def _drawn(self, row: int, column: int, shape: LaneShape, ratio: float) -> QPixmap:
        deep = max(1, _TILE_HEIGHT // shape.height)
        seconds_per_pixel = self._zoom[0] if self._zoom else 1.0
        tile = QPixmap(ceil(_TILE_WIDTH * ratio), ceil(deep * shape.height * ratio))
        tile.setDevicePixelRatio(ratio)
        tile.fill(Qt.GlobalColor.transparent)
        origin = column * _TILE_WIDTH * seconds_per_pixel
        view = FixedView(origin, seconds_per_pixel, _TILE_WIDTH)
        lanes = self._lanes[row * deep : (row + 1) * deep]
        tops = ((lane, float(index * shape.height)) for index, lane in enumerate(lanes))
        with QPainter(tile) as painter:
            self._painter.paint(painter, tops, shape, view)
        return tile
