"""The axes of a plot of times: hours on a log axis up, a linear one across."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil, log
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF

if TYPE_CHECKING:
    from collections.abc import Iterable

_MARKS = (
    1 / 60, 2 / 60, 5 / 60, 10 / 60, 20 / 60, 0.5, 1.0, 2.0, 4.0, 8.0, 12.0, 24.0, 48.0, 96.0,
    168.0, 336.0, 672.0, 1344.0,
)  # fmt: skip
_LEAST_PIXELS = 17.0
_STEPS = (1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000)
_ROOM = 1.25
_HEADROOM = 2.0
"""Times the longest: the reader's words stand over the lines."""


@dataclass(frozen=True, slots=True)
class PlotAxes:
    """A rectangle of pixels with `low` to `high` across and `shortest` to `longest` hours up.

    With `log_across` the axis across is logarithmic too.
    """

    area: QRectF
    low: float
    high: float
    shortest: float
    longest: float
    log_across: bool = False

    def x(self, value: float) -> float:
        """Where a value lies across."""
        low, high = self._scaled(self.low), self._scaled(self.high)
        share = (self._scaled(value) - low) / (high - low)
        return self.area.left() + share * self.area.width()

    def value(self, x: float) -> float:
        """Which value lies at a pixel of a linear axis, within its ends."""
        share = (x - self.area.left()) / max(self.area.width(), 1.0)
        return self.low + min(max(share, 0.0), 1.0) * (self.high - self.low)

    def y(self, hours: float) -> float:
        """How high a time lies, within the plot."""
        whole = log(self.longest / self.shortest)
        share = log(max(hours, 1e-9) / self.shortest) / whole
        return self.area.bottom() - min(max(share, 0.0), 1.0) * self.area.height()

    def point(self, value: float, hours: float) -> QPointF:
        """A point of a line."""
        return QPointF(self.x(value), self.y(hours))

    def _scaled(self, value: float) -> float:
        return log(value) if self.log_across else value

    def hour_marks(self) -> list[float]:
        """Times to be named on the left, as many as have room."""
        marks: list[float] = []
        for hours in _MARKS:
            if not self.shortest <= hours <= self.longest:
                continue
            if not marks or self.y(marks[-1]) - self.y(hours) >= _LEAST_PIXELS:
                marks.append(hours)
        return marks


def axes_for(
    area: QRectF, span: tuple[float, float], hours: Iterable[float], *, log_across: bool = False
) -> PlotAxes:
    """Axes that hold all `hours` with some room above and below."""
    known = list(hours) or [1.0, 24.0]
    return PlotAxes(
        area, *span, min(known) / _ROOM, max(known) * _HEADROOM, log_across=log_across
    )


def round_marks(low: float, high: float, pixels: float, least: float) -> list[float]:
    """Round numbers from `low` to `high`, at least `least` pixels apart on `pixels`.

    Examples
    --------
    >>> round_marks(7.0, 33.0, 260.0, 40.0)
    [10, 15, 20, 25, 30]
    """
    wanted = (high - low) * least / max(pixels, 1.0)
    step = next((step for step in _STEPS if step >= wanted), _STEPS[-1])
    return list(range(ceil(low / step) * step, int(high // 1) + 1, step))
