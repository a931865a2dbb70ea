"""The rate of a stage over a room history, in pieces short enough for Simpson's rule.

Pieces are cut as far as questions go: most ask about the first days of a long record.

Within a piece the rate is the parabola through its start, middle and end, so that running
sums are cubics that join exactly; `rate_cuts.py` says where pieces end. A share that is short
by no more than rounding counts as reached; backwards by twice as much, so that going there and
back comes home.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from itertools import islice
from threading import Lock
from typing import TYPE_CHECKING

from studio_planner.science.rate_cuts import cuts

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.science.history import History
    from studio_planner.science.laws import StageLaw
    from studio_planner.science.rate_cuts import Cut, Rates
    from studio_planner.science.stages import Edge

_ROUNDING = 1e-10
_NEWTON_STEPS = 3
_AT_ONCE = 16
"""Pieces that are cut together: most questions need some more than the last did."""


class RatePieces:
    """Pieces of a rate over time, with running sums of the share reached.

    Within a piece the three rates differ by a few percent at most, so that three steps of
    Newton's method from the straight line are at rounding. Answers do not depend on how far
    pieces are cut already: they are cut beyond whatever an answer looks at. Several threads
    may ask.

    Parameters
    ----------
    first
        Where they begin [s].
    pieces
        (end [s], (start, middle, end) rate [share/s]) of each piece, in order of time.
    """

    __slots__ = ("_cutting", "_more", "_rates", "_sums", "_times")

    def __init__(self, first: float, pieces: Iterable[Cut]) -> None:
        """Take pieces from `pieces` as they are needed."""
        self._times = [first]
        self._rates: list[Rates] = []
        self._sums = [0.0]
        self._more = iter(pieces)
        self._cutting = Lock()

    @property
    def sums(self) -> list[float]:
        """Share reached from the first end to each end [-], of all pieces."""
        self._cut_to(float("inf"))
        return list(self._sums)

    def _cut_to(self, instant: float) -> None:
        """Cut beyond an instant [s], or to the end."""
        while self._times[-1] <= instant and self._cut_on():
            pass

    def _cut_for(self, wanted: float) -> None:
        """Cut until that sum is there, or to the end."""
        while self._sums[-1] < wanted and self._cut_on():
            pass

    def _cut_on(self) -> bool:
        """Cut some pieces; others may read meanwhile: what one begins with is there first."""
        with self._cutting:
            cut = list(islice(self._more, _AT_ONCE))
            begun, total = self._times[-1], self._sums[-1]
            for end, rates in cut:
                a, m, b = rates
                total += (end - begun) * (a + 4.0 * m + b) / 6.0
                begun = end
                self._rates.append(rates)
                self._times.append(end)
                self._sums.append(total)
        return bool(cut)

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


def _cubic(rates: Rates, u: float) -> float:
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
    >>> from studio_planner.science.stages import Edge, Stage
    >>> law = stage_law(Stage.COVER, [SheetFigure(20, 1)])
    >>> room = History((0.0, 1800.0), (20.0, 20.0), (0.0, 0.0), (None, None))
    >>> rate_pieces(law, room, Edge.LIKELY, None).sums
    [0.0, 0.5]
    """
    return RatePieces(history.seconds[0], cuts(law, history, edge, minimum_celsius))
