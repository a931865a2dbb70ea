"""When a stage is reached in a room that changes: the integral of dt / t(T(t)) reaches one.

Additivity of the shares (the sum rule of equivalent age, ASTM C1074) is what is assumed; no
temperature is ever averaged. Hours colder than the product's minimum do not count for a
*not before* stage, and count at the rate at the minimum for a *not after* one.
"""

from __future__ import annotations

import math
from functools import cached_property
from itertools import pairwise
from typing import TYPE_CHECKING

from studio_planner.science.rates import RatePieces, rate_pieces
from studio_planner.science.stages import Edge

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from studio_planner.science.history import History
    from studio_planner.science.laws import StageLaw


class StageClock:
    """The clock of one stage, in one room, at one edge.

    Its running sums are built at the first question and kept. Answers are within a second
    of adaptive quadrature over a record of eight weeks.

    Parameters
    ----------
    law
        The stage's law.
    history
        The room; the law's room band is the history's band.
    edge
        Early, likely or late.
    minimum_celsius
        The product's minimum temperature [°C], None for none.

    Examples
    --------
    >>> from studio_planner.science.history import constant_history
    >>> from studio_planner.science.laws import SheetFigure, stage_law
    >>> from studio_planner.science.stages import Stage
    >>> law = stage_law(Stage.RECOAT_OPENS, [SheetFigure(15, 8), SheetFigure(25, 4)])
    >>> clock = StageClock(law, constant_history(25.0), Edge.LIKELY)
    >>> clock.reached(0.0), clock.start_for(0.0), clock.degree(0.0, 3600.0)
    (14400.0, -14400.0, 0.25)
    """

    def __init__(
        self,
        law: StageLaw,
        history: History,
        edge: Edge = Edge.LIKELY,
        minimum_celsius: float | None = None,
    ) -> None:
        """Keep what the clock runs on; nothing is computed yet."""
        self.law = law
        self.history = history
        self.edge = edge
        self.minimum_celsius = minimum_celsius

    @cached_property
    def _pieces(self) -> RatePieces:
        return rate_pieces(self.law, self.history, self.edge, self.minimum_celsius)

    def degree(self, start: float, end: float) -> float:
        """Return the share of the stage reached from `start` to `end` [s since 1970 UTC].

        One is the stage itself; the share goes on growing beyond. Only what the history
        covers counts; it is negative if `end` is before `start`.
        """
        return self._pieces.sum_between(start, end)

    def degrees(self, start: float, ends: Iterable[float]) -> list[float]:
        """Return `degree` from one start to each of many instants, in their order."""
        sum_between = self._pieces.sum_between
        return [sum_between(start, end) for end in ends]

    def reached(self, start: float) -> float | None:
        """Return when a film spread at `start` reaches the stage [s since 1970 UTC].

        None: never within this record, or the start is outside it.
        """
        return self.reaches_share(start, 1.0)

    def reaches_share(self, start: float, share: float) -> float | None:
        """Return the first instant by which a share (1 = the stage) is added to `start`."""
        return self._pieces.first_with(start, share)

    def start_for(self, by: float) -> float | None:
        """Return the latest start that has reached the stage by an instant [s].

        None: no start within this record has, or `by` is outside it.
        """
        return self._pieces.last_before(by, 1.0)


def reached_through(legs: Sequence[tuple[StageClock, float]]) -> float | None:
    """Return when a piece that moves from place to place reaches the stage [s].

    Parameters
    ----------
    legs
        (clock of the place, the instant [s] the piece comes there), in order of time; the
        first instant is when the film was spread.

    Returns
    -------
    float or None
        None: never within these records.

    Raises
    ------
    ValueError
        If there is no leg, or the legs are not in order of time.

    Examples
    --------
    >>> from studio_planner.science.history import constant_history
    >>> from studio_planner.science.laws import SheetFigure, stage_law
    >>> from studio_planner.science.stages import Stage
    >>> law = stage_law(Stage.HANDLE, [SheetFigure(20, 24), SheetFigure(30, 12)])
    >>> shelf, box = (StageClock(law, constant_history(c)) for c in (20.0, 30.0))
    >>> reached_through([(shelf, 0.0), (box, 12 * 3600.0)]) / 3600
    18.0
    """
    if not legs:
        msg = "A piece has to be somewhere: give at least one place and when it came there."
        raise ValueError(msg)
    left = 1.0
    for (clock, since), (_, until) in pairwise(legs):
        if until < since:
            msg = "The places of a piece are not in order of time."
            raise ValueError(msg)
        when = clock.reaches_share(since, left)
        if when is not None and when <= until:
            return when
        if not _covers(clock.history, since, until):
            return None
        left -= clock.degree(since, until)
    last, since = legs[-1]
    return last.reaches_share(since, max(left, 0.0))


def degree_over(stays: Iterable[tuple[StageClock, float, float]]) -> float:
    """Return the share reached over (clock of the place, from [s], to [s]) stays.

    Examples
    --------
    >>> from studio_planner.science.history import constant_history
    >>> from studio_planner.science.laws import SheetFigure, stage_law
    >>> from studio_planner.science.stages import Stage
    >>> law = stage_law(Stage.HANDLE, [SheetFigure(20, 24), SheetFigure(30, 12)])
    >>> shelf, box = (StageClock(law, constant_history(c)) for c in (20.0, 30.0))
    >>> degree_over([(shelf, 0.0, 6 * 3600.0), (box, 6 * 3600.0, 9 * 3600.0)])
    0.5
    """
    return math.fsum(clock.degree(start, end) for clock, start, end in stays)


def _covers(history: History, start: float, end: float) -> bool:
    first, last = history.extent
    return first <= start and end <= last
