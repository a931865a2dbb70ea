"""When orders leave in simulated weeks: all pieces packed, then the next pick-up."""

from __future__ import annotations

import math
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.orders import Promise

if TYPE_CHECKING:
    from zoneinfo import ZoneInfo

    from studio_planner.craft.orders import Courier, Order
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.rehearsal.arrays import Flags, Floats
    from studio_planner.planning.rehearsal.rooms import Grid


class Leaving:
    """What was packed so far, and what that means for the orders."""

    def __init__(self, studio: Studio, grid: Grid, weeks: int) -> None:
        """Begin with nothing packed."""
        self._studio = studio
        self._grid = grid
        self._weeks = weeks
        self._packed: dict[str, tuple[Floats, Flags]] = {}

    def packed(self, piece: str, end: Floats, raw: Flags) -> None:
        """Note when a piece was packed [s], and the weeks in which it had not cured enough."""
        self._packed[piece] = end, raw

    def of_orders(self) -> tuple[dict[str, Floats], dict[str, Flags]]:
        """When each order leaves [s], infinite for never, and the weeks it leaves raw."""
        leaves: dict[str, Floats] = {}
        raw: dict[str, Flags] = {}
        for order in self._studio.orders:
            leaves[order.key], raw[order.key] = self._of(order)
        return leaves, raw

    def _of(self, order: Order) -> tuple[Floats, Flags]:
        import numpy as np

        never = np.full(self._weeks, math.inf), np.zeros(self._weeks, dtype=np.bool_)
        rows = [self._packed.get(piece, never) for piece in order.pieces]
        last = np.max([end for end, _ in rows], axis=0)
        raw = np.any([flags for _, flags in rows], axis=0)
        if order.promise is Promise.MARKET:
            return last, raw
        pick_ups = np.array(_pick_ups(order.courier, self._studio.time_zone, self._grid))
        return pick_ups[np.searchsorted(pick_ups, last)], raw


def _pick_ups(courier: Courier, zone: ZoneInfo, grid: Grid) -> list[float]:
    """Every pick-up [s] within the grid and the first one after it, then never."""
    found: list[float] = []
    after = grid.span[0]
    while not found or found[-1] <= grid.end:
        pick_up = courier.next_pick_up(zone, after)
        found.append(pick_up.timestamp())
        after = pick_up + timedelta(minutes=1)
    return [*found, math.inf]
