"""The time axis that the timeline and the room share: seconds inside, pixels outside."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Protocol

from PySide6.QtCore import QObject, Signal

DAY_SECONDS = 86_400.0
_NEAREST = 15.0
_FARTHEST = 6 * 3600.0


class TimeView(Protocol):
    """A stretch of time on pixels."""

    @property
    def width(self) -> int:
        """How many pixels there are."""
        ...

    @property
    def seconds_per_pixel(self) -> float:
        """How much time one pixel is."""
        ...

    def x(self, second: float) -> float:
        """Where an instant lies, in pixels from the left edge."""
        ...

    def second(self, x: float) -> float:
        """Which instant lies at a pixel."""
        ...


@dataclass(frozen=True, slots=True)
class FixedView:
    """A stretch of time that does not move: `origin` is the instant [s] at its left edge."""

    origin: float
    seconds_per_pixel: float
    width: int

    def x(self, second: float) -> float:
        """Where an instant lies, in pixels from the left edge."""
        return (second - self.origin) / self.seconds_per_pixel

    def second(self, x: float) -> float:
        """Which instant lies at a pixel."""
        return self.origin + x * self.seconds_per_pixel


class TimeScale(QObject):
    """Which stretch of time is in view; a day of 25 hours is 25 hours wide.

    Signals:
        changed: the stretch in view is another one.
    """

    changed = Signal()

    def __init__(self, first: float, last: float, parent: QObject | None = None) -> None:
        """Cover `first` to `last` [s since 1970 UTC], beginning at `first`."""
        super().__init__(parent)
        self.first = first
        self.last = last
        self.origin = first
        self.seconds_per_pixel = DAY_SECONDS / 160.0
        self.width = 1

    def x(self, second: float) -> float:
        """Where an instant lies, in pixels from the left edge."""
        return (second - self.origin) / self.seconds_per_pixel

    def second(self, x: float) -> float:
        """Which instant lies at a pixel."""
        return self.origin + x * self.seconds_per_pixel

    @property
    def end(self) -> float:
        """The instant at the right edge."""
        return self.second(self.width)

    @property
    def pixels_per_day(self) -> float:
        """How wide a day of 24 hours is."""
        return DAY_SECONDS / self.seconds_per_pixel

    def cover(self, first: float, last: float) -> None:
        """Let the axis reach from `first` to `last`; the view stays where it can."""
        self.first, self.last = first, last
        self.show(self.origin, self.seconds_per_pixel)

    def set_width(self, width: int) -> None:
        """Tell how many pixels there are."""
        self.width = max(width, 1)
        self.show(self.origin, self.seconds_per_pixel)

    def show(self, origin: float, seconds_per_pixel: float) -> None:
        """Show from `origin` on, within the record and the nearest and farthest zoom."""
        whole = max((self.last - self.first) / self.width, _NEAREST)
        self.seconds_per_pixel = min(max(seconds_per_pixel, _NEAREST), _FARTHEST, whole)
        latest = self.last - self.width * self.seconds_per_pixel
        self.origin = max(self.first, min(origin, latest))
        self.changed.emit()

    def show_span(self, start: float, end: float) -> None:
        """Fit a stretch of time into the view."""
        self.show(start, (end - start) / self.width)

    def zoom(self, factor: float, x: float) -> None:
        """Zoom in by `factor` (above 1) or out; the instant at pixel `x` stays there."""
        held = self.second(x)
        wanted = min(max(self.seconds_per_pixel / factor, _NEAREST), _FARTHEST)
        self.show(held - x * wanted, wanted)

    def pan(self, pixels: float) -> None:
        """Move the view to later by some pixels."""
        self.show(self.origin + pixels * self.seconds_per_pixel, self.seconds_per_pixel)
