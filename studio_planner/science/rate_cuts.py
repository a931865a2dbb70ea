"""Cuts the rate of a stage over a room history into pieces short enough for Simpson's rule.

Pieces end at every sample, where the law changes slope, where the minimum temperature is
crossed, and wherever the rate or the room has changed by more than a little.
"""

from __future__ import annotations

from bisect import bisect_right
from itertools import pairwise
from typing import TYPE_CHECKING

from studio_planner.science.stages import Edge

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.science.history import History
    from studio_planner.science.laws import StageLaw

_LARGEST_CHANGE = 0.06
_LARGEST_BEND = 1e-3
_SHORTEST_SHARE = 1e-4
_SECONDS_PER_HOUR = 3600.0

Rates = tuple[float, float, float]
"""At the start, the middle and the end of a piece [share/s]."""

Cut = tuple[float, Rates]
"""Where a piece ends [s], and its rates."""

_Room = tuple[float, float]
_Piece = tuple[float, Rates]


def cuts(
    law: StageLaw, history: History, edge: Edge, minimum_celsius: float | None
) -> Iterator[Cut]:
    """Yield every piece of a stage's rate over a history, in order of time.

    Each is its end [s] and the rates at its start, middle and end [share/s]; the product's
    minimum in °C or None.

    Examples
    --------
    >>> from studio_planner.science.history import History
    >>> from studio_planner.science.laws import SheetFigure, stage_law
    >>> from studio_planner.science.stages import Edge, Stage
    >>> law = stage_law(Stage.COVER, [SheetFigure(20, 1)])
    >>> room = History((0.0, 1800.0), (20.0, 20.0), (0.0, 0.0), (None, None))
    >>> [(end, round(3600 * rates[0], 2)) for end, rates in cuts(law, room, Edge.LIKELY, None)]
    [(1800.0, 1.0)]
    """
    cutter = _Cutter(law, edge, minimum_celsius)
    last = history.seconds[0]
    samples = zip(history.seconds, history.celsius, history.band, strict=True)
    for (begun, *before), (ended, *after) in pairwise(samples):
        if ended == begun:
            continue
        for share, rate in cutter.pieces((before[0], before[1]), (after[0], after[1])):
            until = ended if share == 1.0 else begun + share * (ended - begun)
            if until > last:
                last = until
                yield until, rate


class _Cutter:
    """Cuts the straight line between two samples into pieces and remembers each pair."""

    def __init__(self, law: StageLaw, edge: Edge, minimum: float | None) -> None:
        self._law = law
        self._edge = edge
        self._sign = {Edge.EARLY: 1.0, Edge.LIKELY: 0.0, Edge.LATE: -1.0}[edge]
        self._gate = minimum if law.stage.not_before else None
        self._floor = minimum if law.stage.not_after else None
        self._kinks = law.kinks(edge)
        self._known: dict[tuple[_Room, _Room], list[_Piece]] = {}
        self._rates: dict[_Room, float] = {}

    def pieces(self, before: _Room, after: _Room) -> list[_Piece]:
        """Return (share of the way at its end, rates) for each piece between two samples."""
        pair = (before, after)
        if pair not in self._known:
            self._known[pair] = list(self._cut(before, after))
        return self._known[pair]

    def _cut(self, before: _Room, after: _Room) -> Iterator[_Piece]:
        cuts = [0.0, *sorted(self._crossings(before, after)), 1.0]
        for start, end in pairwise(cuts):
            if self._counts(_between(before, after, (start + end) / 2)):
                yield from self._counted(before, after, start, end)
            else:
                yield end, (0.0, 0.0, 0.0)

    def _crossings(self, before: _Room, after: _Room) -> set[float]:
        """Return the shares of the way at which the rate changes slope or stops."""
        likely = (before[0], after[0])
        edge = (self._judged(before), self._judged(after))
        levels = [(likely, self._kinks), (edge, self._law.likely.knots)]
        levels += [(edge, (level,)) for level in (self._gate,) if level is not None]
        levels += [(likely, (level,)) for level in (self._floor,) if level is not None]
        return {
            (knot - start) / (end - start)
            for (start, end), knots in levels
            for knot in knots[bisect_right(knots, min(start, end)) :]
            if knot < max(start, end)
        }

    def _judged(self, room: _Room) -> float:
        return room[0] + self._sign * room[1]

    def _counts(self, room: _Room) -> bool:
        return self._gate is None or self._judged(room) >= self._gate

    def _counted(
        self, before: _Room, after: _Room, start: float, end: float
    ) -> Iterator[_Piece]:
        first, middle, last = (
            self._rate(_between(before, after, share))
            for share in (start, (start + end) / 2, end)
        )
        if _gentle(first, middle, last) or end - start < _SHORTEST_SHARE:
            yield end, (first, middle, last)
            return
        yield from self._counted(before, after, start, (start + end) / 2)
        yield from self._counted(before, after, (start + end) / 2, end)

    def _rate(self, room: _Room) -> float:
        if room not in self._rates:
            celsius, band = room
            if self._floor is not None:
                celsius = max(celsius, self._floor)
            hours = self._law.hours(celsius, self._edge, band)
            self._rates[room] = 1.0 / (_SECONDS_PER_HOUR * hours)
        return self._rates[room]


def _gentle(first: float, middle: float, last: float) -> bool:
    """Return whether a parabola through three rates is as good as the rate itself."""
    change = max(first, middle, last) / min(first, middle, last) - 1.0
    return (
        change <= _LARGEST_CHANGE and abs(first + last - 2 * middle) <= _LARGEST_BEND * middle
    )


def _between(before: _Room, after: _Room, share: float) -> _Room:
    """Return the room at a share of the way; exactly its ends at 0 and 1."""
    if share in (0.0, 1.0) or before == after:
        return after if share == 1.0 else before
    (c0, b0), (c1, b1) = before, after
    return c0 + (c1 - c0) * share, b0 + (b1 - b0) * share
