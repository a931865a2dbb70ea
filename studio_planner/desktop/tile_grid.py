"""Where the tiles of drawn ribbons lie: in rows of whole lanes, in columns of equal time."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil, floor
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRect, QRectF, Qt
from PySide6.QtGui import QPixmap

from studio_planner.desktop.time_scale import FixedView

if TYPE_CHECKING:
    from studio_planner.desktop.lane_shape import LaneShape
    from studio_planner.desktop.time_scale import TimeScale

_WIDTH = 512
_HEIGHT = 128
_BITE = 32

Place = tuple[int, int]
"""Row and column of a tile."""


@dataclass(frozen=True, slots=True)
class TileGrid:
    """Tiles at one zoom; `ratio` is that of device pixels to pixels."""

    shape: LaneShape
    seconds_per_pixel: float
    ratio: float

    @property
    def deep(self) -> int:
        """How many lanes a tile holds."""
        return max(1, _HEIGHT // self.shape.height)

    @property
    def lanes_at_once(self) -> int:
        """How many lanes are drawn in one bite."""
        return max(1, _BITE // self.shape.height)

    @property
    def _long(self) -> float:
        return _WIDTH * self.seconds_per_pixel

    def in_view(self, rows: range, scale: TimeScale) -> list[Place]:
        """The tiles of some lanes, over the stretch of time that is in view."""
        if not rows:
            return []
        columns = range(floor(scale.origin / self._long), floor(scale.end / self._long) + 1)
        across = range(rows.start // self.deep, ceil(rows.stop / self.deep))
        return [(row, column) for row in across for column in columns]

    def around(self, places: list[Place], lanes: int) -> list[Place]:
        """The ring of tiles around those in view, as far as there are lanes."""
        if not places:
            return []
        (top, left), (bottom, right) = places[0], places[-1]
        last = ceil(lanes / self.deep) - 1
        rows = range(max(top - 1, 0), min(bottom + 1, last) + 1)
        ring = ((row, column) for row in rows for column in range(left - 1, right + 2))
        return [place for place in ring if place not in set(places)]

    def lanes_of(self, place: Place, lanes: int) -> range:
        """The lanes of a tile."""
        return range(place[0] * self.deep, min((place[0] + 1) * self.deep, lanes))

    def corner(self, place: Place, top: float, scale: TimeScale) -> QPointF:
        """The upper left corner of a tile; `top` is the y of the first of all lanes."""
        # Whole device pixels keep a tile as sharp as it was drawn.
        x = round(scale.x(place[1] * self._long) * self.ratio) / self.ratio
        return QPointF(x, top + place[0] * self.deep * self.shape.height)

    def rect(self, place: Place, top: float, scale: TimeScale) -> QRect:
        """The pixels that a tile covers."""
        height = float(self.deep * self.shape.height)
        corner = self.corner(place, top, scale)
        return QRectF(corner.x(), corner.y(), float(_WIDTH), height).toAlignedRect()

    def stretch(self, place: Place) -> FixedView:
        """The stretch of time of a tile."""
        return FixedView(place[1] * self._long, self.seconds_per_pixel, _WIDTH)

    def blank(self) -> QPixmap:
        """A tile on which nothing is drawn."""
        height = self.deep * self.shape.height
        tile = QPixmap(ceil(_WIDTH * self.ratio), ceil(height * self.ratio))
        tile.setDevicePixelRatio(self.ratio)
        tile.fill(Qt.GlobalColor.transparent)
        return tile
