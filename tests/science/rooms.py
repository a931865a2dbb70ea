"""Rooms that are worked out, for tests of clocks and surfaces."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from studio_planner.science.history import History
from studio_planner.science.samples import history_of

if TYPE_CHECKING:
    from collections.abc import Sequence


def stepped_room(changes: Sequence[tuple[float, float]], end: float) -> History:
    """Return a room that holds each (instant [s], °C) until the next one, the last to `end`."""
    ends = [*(instant for instant, _ in changes[1:]), end]
    return history_of(
        [
            (second, celsius, 0.0, None)
            for (instant, celsius), until in zip(changes, ends, strict=True)
            for second in (instant, until)
        ]
    )


def wavy_room(  # noqa: PLR0913 - a room has this many sides
    days: int,
    step_seconds: float,
    *,
    mean: float = 19.0,
    swing: float = 4.0,
    band: float = 1.5,
    start: float = 1.75e9,
) -> History:
    """Return a room that swings daily and a little weekly, rounded as a logger does."""
    count = int(days * 86400 / step_seconds) + 1
    seconds = tuple(start + index * step_seconds for index in range(count))

    def celsius(second: float) -> float:
        day = (second - start) / 86400
        return mean + swing * math.sin(math.tau * day) + math.sin(math.tau * day / 7)

    return History(
        seconds,
        tuple(round(celsius(second), 1) for second in seconds),
        (band,) * count,
        (None,) * count,
    )
