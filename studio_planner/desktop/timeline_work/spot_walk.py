"""Where the arrows lead on the shelf: along a spot, and to the nearest in time on another."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QAbstractItemView

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.services.moving.spot_lanes import SpotLane

_Move = QAbstractItemView.CursorAction
_ALONG = {_Move.MoveLeft: -1, _Move.MovePrevious: -1, _Move.MoveRight: 1, _Move.MoveNext: 1}
_ACROSS = {_Move.MoveUp: -1, _Move.MoveDown: 1, _Move.MovePageUp: -8, _Move.MovePageDown: 8}

Place = tuple[int, int]
"""Row and column of a stay."""


def first_stay(spots: Sequence[SpotLane]) -> Place | None:
    """The first stay of the first spot that has one."""
    return next(((row, 0) for row, spot in enumerate(spots) if spot.stands), None)


def neighbour(spots: Sequence[SpotLane], place: Place, action: _Move) -> Place:
    """Where `action` leads from a stay; the stay itself where there is nothing further."""
    row, column = place
    if action in _ALONG:
        last = len(spots[row].stands) - 1
        return row, min(max(column + _ALONG[action], 0), last)
    step = _ACROSS.get(action, 0)
    wanted = min(max(row + step, 0), len(spots) - 1)
    rows = range(wanted, len(spots)) if step > 0 else range(wanted, -1, -1)
    found = next((r for r in rows if spots[r].stands), row)
    if found == row:
        return place
    start = spots[row].stands[column].start
    near = [abs(stand.start - start) for stand in spots[found].stands]
    return found, near.index(min(near))
