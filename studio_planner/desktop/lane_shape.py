"""Where the parts of a lane lie: label rows, doorway, film, block; for each height of lane."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil, inf
from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF

from studio_planner.services.ribbons import Ribbon

if TYPE_CHECKING:
    from studio_planner.desktop.fonts import Fonts
    from studio_planner.desktop.time_scale import TimeView
    from studio_planner.services.ribbons import Bar

CLOSE_HEIGHT = 24
HAIRLINE_HEIGHT = 4
_MOST_NAMED = 200
"""Close lanes that are named at most; of more a maker sees the colours only."""

_NARROW = 520.0
"""Under this many pixels of time axis the lanes of a whole plan still have their names."""

_ROOMY_HEIGHT = 60
_ROOMY_FROM = 84.0
_CLOSE_FROM = 26.0
_LEAST_BLOCK = 4.0
_LEAST_HIT = 8.0


@dataclass(frozen=True, slots=True)
class LaneShape:
    """The parts of a lane, in pixels below its top edge.

    `upper_label` is for times and flags, `lower_label` for the names of coats; None: no room.
    """

    height: int
    lintel: float
    film: float
    film_height: float
    upper_label: float | None = None
    lower_label: float | None = None

    @property
    def labelled(self) -> bool:
        """Whether there is room for words of every kind."""
        return self.upper_label is not None

    @property
    def named(self) -> bool:
        """Whether there is room for the names of coats."""
        return self.lower_label is not None

    @property
    def film_bottom(self) -> float:
        """The lower edge of the film."""
        return self.film + self.film_height

    @property
    def hairline(self) -> bool:
        """Whether there is room for no more than colour."""
        return self.height <= HAIRLINE_HEIGHT


_CLOSE = LaneShape(CLOSE_HEIGHT, 4.0, 7.0, 13.0)


def shape_for(
    pixels_per_day: float, fonts: Fonts, lanes: int = 0, room: float = 0.0, wide: float = inf
) -> LaneShape:
    """The shape of a lane at a zoom: roomy, close or a hairline.

    Close ones have names of coats, unless all `lanes` fit into `room` pixels only without
    them. Where the time axis is no more than a little `wide` [px], none is a hairline: there
    a day is narrow however near, and lanes scroll.
    """
    if pixels_per_day >= _ROOMY_FROM:
        return _roomy(fonts.small_height)
    if pixels_per_day >= _CLOSE_FROM:
        named = _close_with_names(fonts.small_height)
        fit = lanes * CLOSE_HEIGHT <= room < lanes * named.height
        return _CLOSE if fit or lanes > _MOST_NAMED else named
    if wide < _NARROW and 0 < lanes <= _MOST_NAMED:
        return _CLOSE
    return LaneShape(HAIRLINE_HEIGHT, 0.0, 0.5, 3.0)


def _close_with_names(line: float) -> LaneShape:
    return LaneShape(ceil(line + 17), 3.0, 6.0, 9.0, None, 15.5)


def _roomy(line: float) -> LaneShape:
    height = max(_ROOMY_HEIGHT, ceil(2 * line + 36))
    lintel = 3.0 + line
    film = lintel + 7.0
    bottom = height - line - 5.0
    return LaneShape(height, lintel, film, bottom - film, 2.0, bottom + 2.0)


def block_rect(bar: Bar, top: float, shape: LaneShape, scale: TimeView) -> QRectF:
    """The hands-on block of a bar: as wide as its real minutes, never too thin to see."""
    left = scale.x(bar.begins)
    right = scale.x(bar.planned.end.timestamp())
    width = max(right - left, _LEAST_BLOCK if not shape.hairline else 1.5)
    if isinstance(bar, Ribbon) or shape.hairline:
        upper = shape.lintel if not shape.hairline else 0.0
        return QRectF(left, top + upper, width, shape.film_bottom + 1.0 - upper)
    return QRectF(left, top + shape.film + 3.0, max(width, 7.0), shape.film_height - 3.0)


def bar_rect(bar: Bar, top: float, shape: LaneShape, scale: TimeView) -> QRectF:
    """The whole of a bar: for a ribbon from its block to where its film ends."""
    block = block_rect(bar, top, shape, scale)
    end = scale.x(bar.hidden_after.timestamp()) if isinstance(bar, Ribbon) else block.right()
    block.setRight(max(end, block.right(), block.left() + _LEAST_HIT))
    return block
