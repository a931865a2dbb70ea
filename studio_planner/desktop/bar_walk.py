"""Where the arrows lead: from a bar to its neighbours in its own lane and in the others."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QAbstractItemView

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.services.ribbons import Lane

_Move = QAbstractItemView.CursorAction
_PAGE = 8

Place = tuple[int, int]
"""A bar's row and column."""

_ALONG = {
    _Move.MoveLeft: -1,
    _Move.MovePrevious: -1,
    _Move.MoveRight: 1,
    _Move.MoveNext: 1,
}
_ACROSS = {
    _Move.MoveUp: -1,
    _Move.MoveDown: 1,
    _Move.MovePageUp: -_PAGE,
    _Move.MovePageDown: _PAGE,
}


def first_bar(lanes: Sequence[Lane]) -> Place | None:
    """The first bar of the first lane that has one."""
    return next(((row, 0) for row, lane in enumerate(lanes) if lane.bar_count), None)


def next_bar_of(lane: Lane, now: float) -> int | None:
    """The column of the first bar whose hands end after `now` [s], else of the last bar."""
    if not lane.bars:
        return None
    ends = (bar.planned.end.timestamp() for bar in lane.bars)
    return next((i for i, end in enumerate(ends) if end > now), len(lane.bars) - 1)


def bar_of(lane: Lane, coat: str) -> int | None:
    """The column of a coat's bar; None where the lane has none."""
    return next((i for i, bar in enumerate(lane.bars) if bar.planned.coat == coat), None)


def neighbour(lanes: Sequence[Lane], place: Place, action: _Move) -> Place:
    """Where `action` leads from a bar; the bar itself where there is nothing further."""
    row, column = place
    if action in _ALONG:
        along = column + _ALONG[action]
        return (row, along) if 0 <= along < lanes[row].bar_count else place
    return _across(lanes, place, _ACROSS.get(action, 0))


def _across(lanes: Sequence[Lane], place: Place, step: int) -> Place:
    row, column = place
    begins = lanes[row].bars[column].start
    wanted = min(max(row + step, 0), len(lanes) - 1)
    rows = range(wanted, len(lanes)) if step > 0 else range(wanted, -1, -1)
    found = next((r for r in rows if lanes[r].bar_count), row) if step else row
    if found == row:
        return place
    bars = lanes[found].bars
    return found, min(range(len(bars)), key=lambda i: abs(bars[i].start - begins))
