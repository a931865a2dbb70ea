"""Whether a coat would have to be sanded because its window is over before hands are there."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import clipped
from studio_planner.craft.pieces import Joint
from studio_planner.craft.sheet_stages import window_stages
from studio_planner.science.stages import Edge, safe_edge
from studio_planner.services.hands_on import block_of

if TYPE_CHECKING:
    from studio_planner.craft.local_time import Span
    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.studio import Studio
    from studio_planner.craft.timing import Timing
    from studio_planner.science.stages import Stage

_WEEK = timedelta(days=7)
_AFTER = timedelta(days=4)
"""A window that opens later than this after the week is not looked for."""

_STEP = timedelta(hours=1)
"""A coat may start at every full hour that hands have been there."""


def would_be_sanded(piece: Piece, index: int, over: int, timing: Timing, now: datetime) -> bool:
    """Tell whether no start in the coming week leaves hands time in the window.

    The coat at `index` lies in the first room; `over` is the coat that goes on it. A coat that
    allows a touch test has its likely window. False where the sheet has no such window, where
    there are no hands, and where the coat below is not poured in the window.
    """
    studio = timing.studio
    place = studio.resting_place
    opens, closes = window_stages(studio, piece, over)
    if place is None or opens is None or closes is None:
        return False
    if piece.stack[over].joint is Joint.WET_IN_WET:
        return False
    end = min(now + _WEEK + _AFTER, timing.end)
    spans = _working(studio, now, end)
    look = _Look(piece, timing, place.key, (opens, closes), spans)
    starts = [start for start in _starts(spans) if start < now + _WEEK]
    return bool(starts) and not any(look.serves(start, index, over) for start in starts)


def _working(studio: Studio, start: datetime, end: datetime) -> tuple[Span, ...]:
    zone = studio.time_zone
    return clipped(
        (span for person in studio.people for span in person.working(zone, start, end)),
        start,
        end,
    )


def _starts(spans: tuple[Span, ...]) -> list[datetime]:
    starts = []
    for begin, end in spans:
        start = begin
        while start < end:
            starts.append(start)
            start += _STEP
    return starts


class _Look:
    """What every start is judged by."""

    def __init__(
        self,
        piece: Piece,
        timing: Timing,
        place: str,
        stages: tuple[Stage, Stage],
        spans: tuple[Span, ...],
    ) -> None:
        self._piece = piece
        self._timing = timing
        self._place = place
        self._stages = stages
        self._spans = spans

    def serves(self, start: datetime, index: int, over: int) -> bool:
        """Tell whether the window of a coat started then has hands for the one over it."""
        coat = self._piece.stack[index]
        poured = start + block_of(self._timing.studio, self._piece, coat)
        opens, closes = self._stages
        opened = self._reached(coat, opens, poured)
        closed = self._reached(coat, closes, start)
        if closed is None:
            return True  # it does not close as far as the record goes
        if opened is None:
            return False
        wanted = block_of(self._timing.studio, self._piece, self._piece.stack[over])
        return any(
            min(end, closed) - max(begin, opened) >= wanted for begin, end in self._spans
        )

    def _reached(self, coat: Coat, stage: Stage, since: datetime) -> datetime | None:
        edge = Edge.LIKELY if coat.test_first else safe_edge(stage)
        product = self._timing.studio.product(coat.product)
        return self._timing.reached(product, stage, edge, [(self._place, since)])
