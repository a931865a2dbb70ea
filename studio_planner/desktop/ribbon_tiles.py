"""Keeps drawn ribbons as tiles, so that scrolling moves pictures.

At a new zoom everything in view is drawn straight, apart from what the clocks have not been
asked about yet, which is sketched; what scrolling brings in is sketched, too. Clocks are asked
and tiles drawn in small bites, while there is nothing else to do.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QElapsedTimer, QObject, QTimer, Signal
from PySide6.QtGui import QPainter, QPixmap, QRegion

from studio_planner.desktop.ribbon_painter import RibbonPainter
from studio_planner.desktop.tile_grid import TileGrid
from studio_planner.desktop.time_scale import FixedView

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from studio_planner.desktop.lane_shape import LaneShape
    from studio_planner.desktop.theme import Theme
    from studio_planner.desktop.tile_grid import Place
    from studio_planner.desktop.time_scale import TimeScale
    from studio_planner.services.ribbons import Lane

_FEWEST_KEPT = 24
_KEPT_SCREENS = 3
_BITE_MILLISECONDS = 2
_RENEWAL_MILLISECONDS = 20
_STILL_MILLISECONDS = 80


class RibbonTiles(QObject):
    """Ribbons of some lanes on one theme; `settled` once all in view is more than a sketch.

    Signals:
        renewed: there is more to see than was drawn last; draw again.
    """

    renewed = Signal()

    def __init__(
        self, theme: Theme, lanes: tuple[Lane, ...], parent: QObject | None = None
    ) -> None:
        """Draw `lanes`; nothing is drawn yet."""
        super().__init__(parent)
        self.settled = False
        self._straight = False
        self._painter = RibbonPainter(theme)
        self._lanes = lanes
        self._known: set[int] = set()
        self._grid: TileGrid | None = None
        self._tiles: dict[Place, QPixmap] = {}
        self._in_view: list[Place] = []
        self._job: Iterator[None] = iter(())
        self._idle = QTimer(self)
        self._idle.setSingleShot(True)
        self._idle.timeout.connect(self._bite)
        # Whoever scrolls draws anyway, and needs no second drawing in between.
        self._renewal = QTimer(self)
        self._renewal.setSingleShot(True)
        self._renewal.setInterval(_RENEWAL_MILLISECONDS)
        self._renewal.timeout.connect(self.renewed)

    def knows(self, row: int) -> bool:
        """Whether the clocks have been asked for everything that is drawn of a lane."""
        return row in self._known

    @property
    def at_rest(self) -> bool:
        """Whether nothing is left to do ahead."""
        return not (self._idle.isActive() or self._renewal.isActive())

    # Drawing

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
        grid = TileGrid(shape, scale.seconds_per_pixel, ratio)
        zoomed = self._zoom_to(grid)
        in_view = grid.in_view(rows, scale)
        top = first_top - rows.start * shape.height
        missing = QRegion()
        for place in in_view:
            if place in self._tiles:
                painter.drawPixmap(grid.corner(place, top, scale), self._tiles[place])
            else:
                missing += grid.rect(place, top, scale)
        moved = in_view != self._in_view
        self._straight = zoomed or (self._straight and not moved)
        if not missing.isEmpty():
            self._draw_missing(painter, rows, top, scale, missing)
        self._renewal.stop()
        known = all(row in self._known for row in rows)
        self.settled = known and (self._straight or missing.isEmpty())
        if zoomed or moved:
            self._in_view = in_view
            self._job = self._to_do(grid, rows)
            # While the zoom still changes, tiles would be drawn in vain.
            self._idle.start(_STILL_MILLISECONDS if zoomed and self.settled else 0)

    def _zoom_to(self, grid: TileGrid) -> bool:
        before, self._grid = self._grid, grid
        if grid == before:
            return False
        self._tiles.clear()
        if before is not None and before.shape.hairline != grid.shape.hairline:
            self._known.clear()
        return True

    def _draw_missing(
        self, painter: QPainter, rows: range, top: float, scale: TimeScale, where: QRegion
    ) -> None:
        grid, box = self._grid, where.boundingRect() & painter.window()
        if grid is None:
            return
        height = grid.shape.height
        tops = ((self._lanes[row], top + row * height) for row in rows)
        touched = ((lane, y) for lane, y in tops if y + height > box.top() and y < box.bottom())
        left = box.left()
        view = FixedView(scale.second(left), scale.seconds_per_pixel, box.width())
        painter.save()
        painter.setClipRegion(where)
        painter.translate(left, 0)
        self._painter.paint(painter, touched, grid.shape, view, rough=not self._straight)
        painter.restore()

    # What is done in small bites

    def _bite(self) -> None:
        clock = QElapsedTimer()
        clock.start()
        for _ in self._job:
            if clock.elapsed() >= _BITE_MILLISECONDS:
                self._idle.start(0)
                return

    def _to_do(self, grid: TileGrid, rows: range) -> Iterator[None]:
        """Ask and draw what is in view, then what is around it."""
        in_view = self._in_view
        unknown = [row for row in rows if row not in self._known]
        yield from self._ask(unknown, fine=not grid.shape.hairline)
        if unknown:
            self._renewal.start()
        for _ in self._make(grid, in_view):
            if not self._straight:
                self._renewal.start()
            yield
        around = grid.around(in_view, len(self._lanes))
        self._forget_all_but({*in_view, *around})
        yield from self._make(grid, around)

    def _make(self, grid: TileGrid, places: Iterable[Place]) -> Iterator[None]:
        for place in places:
            if place not in self._tiles:
                rows = grid.lanes_of(place, len(self._lanes))
                yield from self._ask(rows, fine=not grid.shape.hairline)
                tile = grid.blank()
                yield from self._draw_on(tile, grid, place, rows)
                self._tiles[place] = tile

    def _ask(self, rows: Iterable[int], *, fine: bool) -> Iterator[None]:
        for row in rows:
            if row in self._known:
                continue
            for bar in self._lanes[row].ribbons:
                if not bar.known(fine=fine):
                    yield from bar.asking(fine=fine)
            self._known.add(row)

    def _draw_on(
        self, tile: QPixmap, grid: TileGrid, place: Place, rows: range
    ) -> Iterator[None]:
        height, view = grid.shape.height, grid.stretch(place)
        lanes = [(self._lanes[row], float(i * height)) for i, row in enumerate(rows)]
        for first in range(0, len(lanes), grid.lanes_at_once):
            with QPainter(tile) as painter:
                some = lanes[first : first + grid.lanes_at_once]
                self._painter.paint(painter, some, grid.shape, view)
            yield

    def _forget_all_but(self, near: set[Place]) -> None:
        if len(self._tiles) > max(_FEWEST_KEPT, _KEPT_SCREENS * len(self._in_view)):
            self._tiles = {place: tile for place, tile in self._tiles.items() if place in near}
