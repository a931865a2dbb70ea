"""An order in the exact model: when it can leave, how late that is, and what is spare."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.orders import Promise

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.orders import Order
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.exact.grid import Grid
    from studio_planner.planning.solver import Model, Quantity

HOUR = 3600
"""Weighted lateness and lacking spare are counted in seconds."""

_WEIGHT_PARTS = 1000
"""An order's weight is taken to so many parts of one."""


@dataclass(frozen=True, slots=True)
class Leaving:
    """One way to leave: packing begins by a slot, it is so late and lacks so much spare."""

    begins_by: int
    late: int
    lacking: int


class Promised:
    """What an order's packing means for its promise.

    All is said by the slot in which the packing of the last piece begins: how long that lasts
    need not be whole slots.
    """

    def __init__(self, studio: Studio, order: Order, grid: Grid) -> None:
        """Look at one order."""
        self._order = order
        self._grid = grid
        self._zone = studio.time_zone
        self._due = order.due(self._zone)
        self._packing = order.packing_minutes * 60
        self._spare = round(studio.settings.spare_hours * HOUR)

    def leaving(self, begins: int) -> Leaving:
        """What it means when the packing of the last piece begins with a slot."""
        leaves = self._order.leaves(self._zone, self._packed(begins))
        ahead = (self._due - leaves).total_seconds()
        late = round(self._order.weight * max(0.0, -ahead))
        return Leaving(begins, late, round(max(0.0, self._spare - max(0.0, ahead))))

    def begins_by(self, most_late: int) -> int:
        """The last slot in which the last packing may begin to be so late at the most."""
        late = self._due + timedelta(seconds=most_late / self._order.weight)
        if self._order.promise is Promise.MARKET:
            return self._last_begin(late)
        last = self._due
        while True:
            after = self._order.courier.next_pick_up(self._zone, last + timedelta(seconds=1))
            if after > late:
                return self._last_begin(last)
            last = after

    def bind(
        self, model: Model, begins: Quantity, first: int, last: int
    ) -> tuple[Quantity, Quantity]:
        """Lateness and lacking spare when the last packing begins in the slots first..last."""
        if self._order.promise is Promise.MARKET:
            return self._to_the_market(model, begins, last)
        leavings = list(self._leavings(first, last))
        if len(leavings) == 1:
            return leavings[0].late, leavings[0].lacking
        flags = [model.flag() for _ in leavings]
        model.exactly_one(flags)
        both = list(zip(leavings, flags, strict=True))
        model.at_least(sum(one.begins_by * flag for one, flag in both), begins)
        late = sum(one.late * flag for one, flag in both)
        return late, sum(one.lacking * flag for one, flag in both)

    def _leavings(self, first: int, last: int) -> Iterator[Leaving]:
        """One way for each pick-up from `first` on until `last` is met; alike ones are one."""
        found: Leaving | None = None
        after = self._packed(first)
        while True:
            pick_up = self._order.courier.next_pick_up(self._zone, after)
            now = self.leaving(min(self._last_begin(pick_up), max(first, last)))
            if found is not None and (found.late, found.lacking) != (now.late, now.lacking):
                yield found
            found = now
            if found.begins_by >= last:
                yield found
                return
            after = pick_up + timedelta(seconds=1)

    def _to_the_market(
        self, model: Model, begins: Quantity, last: int
    ) -> tuple[Quantity, Quantity]:
        due = round(self._due.timestamp()) - self._grid.origin - self._packing
        ahead = due - self._grid.step * begins
        most = self.leaving(last).late
        late: Quantity = 0
        if most:
            late = model.between(0, most)
            # Rounded to the second, as everywhere; halves either way.
            parts = round(_WEIGHT_PARTS * self._order.weight)
            model.at_least(2 * _WEIGHT_PARTS * late + _WEIGHT_PARTS, -2 * parts * ahead)
        # Only what a slot can lack: else the search comes down second by second.
        odd = (self._spare - due) % self._grid.step
        slots = range(odd, self._spare, self._grid.step)
        lacking = model.among((one, one) for one in {0, *slots, self._spare})
        over = model.flag()
        model.at_least(lacking, self._spare - ahead, [~over])
        model.at_least(lacking, self._spare, [over])
        return late, lacking

    def _packed(self, begins: int) -> datetime:
        return datetime.fromtimestamp(self._grid.second(begins) + self._packing, UTC)

    def _last_begin(self, packed: datetime) -> int:
        return self._grid.down(packed.timestamp() - self._packing)
