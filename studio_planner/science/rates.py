"""The rate of a stage over a room history, in pieces short enough for Simpson's rule.

Pieces are cut as far as questions go: most ask about the first days of a long record.

Within a piece the rate is the parabola through its start, middle and end, so that running
sums are cubics that join exactly. Pieces end at every sample, where the law changes slope,
where the minimum temperature is crossed, and wherever the rate or the room has changed by
more than a little. A share that is short by no more than rounding counts as reached;
backwards by twice as much, so that going there and back comes home.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from itertools import pairwise
from typing import TYPE_CHECKING

from studio_planner.science.stages import Edge

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from studio_planner.science.history import History
    from studio_planner.science.laws import StageLaw

_LARGEST_CHANGE = 0.06
_LARGEST_BEND = 1e-3
_SHORTEST_SHARE = 1e-4
_ROUNDING = 1e-10
_NEWTON_STEPS = 3
_SECONDS_PER_HOUR = 3600.0

_Room = tuple[float, float]
_Piece = tuple[float, tuple[float, float, float]]
_Cut = tuple[float, tuple[float, float, float]]


class RatePieces:
    """Pieces of a rate over time, with running sums of the share reached.

    Within a piece the three rates differ by a few percent at most, so that three steps of
    Newton's method from the straight line are at rounding. Answers do not depend on how far
    pieces are cut already: they are cut beyond whatever an answer looks at.

    Parameters
    ----------
    first
        Where they begin [s].
    pieces
        (end [s], (start, middle, end) rate [share/s]) of each piece, in order of time.
    """

    __slots__ = ("_more", "_rates", "_sums", "_times")

    def __init__(self, first: float, pieces: Iterable[_Cut]) -> None:
        """Take pieces from `pieces` as they are needed."""
        self._times = [first]
        self._rates: list[tuple[float, float, float]] = []
        self._sums = [0.0]
        self._more = iter(pieces)

    @property
    def sums(self) -> list[float]:
        """Share reached from the first end to each end [-], of all pieces."""
        self._cut_to(float("inf"))
        return list(self._sums)

    def _cut_to(self, instant: float) -> None:
        """Cut beyond an instant [s], or to the end."""
        while self._times[-1] <= instant and self._cut_one():
            pass

    def _cut_for(self, wanted: float) -> None:
        """Cut until that sum is there, or to the end."""
        while self._sums[-1] < wanted and self._cut_one():
            pass

    def _cut_one(self) -> bool:
        piece = next(self._more, None)
        if piece is None:
            return False
        end, (a, m, b) = piece
        length = end - self._times[-1]
        self._times.append(end)
        self._rates.append((a, m, b))
        self._sums.append(self._sums[-1] + length * (a + 4.0 * m + b) / 6.0)
        return True

    def sum_between(self, start: float, end: float) -> float:
        """Return the share from `start` to `end` [s], as far as the pieces go."""
        if max(start, end) >= self._times[-1]:
            self._cut_to(max(start, end))
        first, last = self._times[0], self._times[-1]
        start, end = (min(max(t, first), last) for t in (start, end))
        if first == last:
            return 0.0
        a, b = self._piece(start), self._piece(end)
        if a == b and self._steady(a):
            return (end - start) * self._rates[a][0]
        between = self._sums[b] - self._sums[a]
        return between + self._within(b, end) - self._within(a, start)

    def first_with(self, start: float, share: float) -> float | None:
        """Return the first instant [s] by which `share` is added to `start`, or None."""
        times = self._times
        if start >= times[-1]:
            self._cut_to(start)
        if not times[0] <= start <= times[-1] or len(times) == 1:
            return None
        if share <= 0.0:
            return start
        piece = self._piece(start)
        rate = self._rates[piece][0]
        if self._steady(piece) and rate > 0.0:
            when = start + share / rate
            if when <= times[piece + 1]:
                return when
        wanted = self._sums[piece] + self._within(piece, start) + share - _ROUNDING
        if wanted > self._sums[-1]:
            self._cut_for(wanted)
            if wanted > self._sums[-1]:
                return None
        found = max(bisect_left(self._sums, wanted, piece) - 1, piece)
        return max(start, times[found] + self._solve(found, wanted - self._sums[found]))

    def last_before(self, by: float, share: float) -> float | None:
        """Return the last start [s] from which `share` is added by `by`, or None."""
        times = self._times
        if by >= times[-1]:
            self._cut_to(by)
        if not times[0] <= by <= times[-1] or len(times) == 1:
            return None
        piece = self._piece(by)
        rate = self._rates[piece][0]
        if self._steady(piece) and rate > 0.0:
            when = by - share / rate
            if when >= times[piece]:
                return when
        wanted = self._sums[piece] + self._within(piece, by) - share + 2 * _ROUNDING
        if wanted < 0.0:
            return None
        found = min(bisect_right(self._sums, wanted, 0, piece + 1) - 1, piece)
        return min(by, times[found] + self._solve(found, wanted - self._sums[found]))

    def _piece(self, instant: float) -> int:
        return min(max(bisect_right(self._times, instant) - 1, 0), len(self._rates) - 1)

    def _steady(self, piece: int) -> bool:
        a, m, b = self._rates[piece]
        return a == m == b

    def _within(self, piece: int, instant: float) -> float:
        begun = self._times[piece]
        length = self._times[piece + 1] - begun
        return length * _cubic(self._rates[piece], (instant - begun) / length)

    def _solve(self, piece: int, share: float) -> float:
        """Return the seconds into a piece at which its own share is reached."""
        length = self._times[piece + 1] - self._times[piece]
        a, m, b = self._rates[piece]
        if a == m == b:
            return min(share / a, length) if a > 0.0 else length
        target = share / length
        u = target * 6.0 / (a + 4.0 * m + b)
        for _ in range(_NEWTON_STEPS):
            rate = a + u * ((4.0 * m - 3.0 * a - b) + u * (2.0 * a + 2.0 * b - 4.0 * m))
            u = min(max(u - (_cubic((a, m, b), u) - target) / rate, 0.0), 1.0)
        return u * length


def _cubic(rates: tuple[float, float, float], u: float) -> float:
    """Return the integral of the parabola through the rates at 0, 1/2 and 1, from 0 to u."""
    a, m, b = rates
    bend = 4.0 * m - 3.0 * a - b
    curl = 2.0 * a + 2.0 * b - 4.0 * m
    return u * (a + u * (bend / 2.0 + u * curl / 3.0))


def rate_pieces(
    law: StageLaw, history: History, edge: Edge, minimum_celsius: float | None
) -> RatePieces:
    """Return the pieces of a stage's rate over a history.

    Parameters
    ----------
    law, edge
        The stage's law and the edge of it [1/rate in h].
    history
        The room.
    minimum_celsius
        The product's minimum [°C] or None.

    Examples
    --------
    >>> from studio_planner.science.history import History
    >>> from studio_planner.science.laws import SheetFigure, stage_law
    >>> from studio_planner.science.stages import Stage
    >>> law = stage_law(Stage.COVER, [SheetFigure(20, 1)])
    >>> room = History((0.0, 1800.0), (20.0, 20.0), (0.0, 0.0), (None, None))
    >>> rate_pieces(law, room, Edge.LIKELY, None).sums
    [0.0, 0.5]
    """
    return RatePieces(history.seconds[0], _cuts(_Cutter(law, edge, minimum_celsius), history))


def _cuts(cutter: _Cutter, history: History) -> Iterator[_Cut]:
    """Yield every piece of a history, in order of time."""
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
