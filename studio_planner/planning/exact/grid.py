"""The grid on which the exact model looks at time: whole slots counted from one instant."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.planning.spans import Stretches


@dataclass(frozen=True, slots=True)
class Grid:
    """Slots of `step` seconds from `origin` (a multiple of the step, seconds since 1970)."""

    origin: int
    step: int

    def up(self, second: float) -> int:
        """The first slot that does not begin before an instant."""
        return -int(-(second - self.origin) // self.step)

    def down(self, second: float) -> int:
        """The last slot that does not begin after an instant."""
        return int((second - self.origin) // self.step)

    def second(self, slot: int) -> int:
        """When a slot begins."""
        return self.origin + slot * self.step

    def length(self, seconds: int) -> int:
        """How many slots a length of time reaches into."""
        return -(-seconds // self.step)

    def slots(self, stretches: Iterable[tuple[int, int]]) -> Stretches:
        """Stretches of instants (first, last) as stretches of slots."""
        found = ((self.up(first), self.down(last)) for first, last in stretches)
        return [(first, last) for first, last in found if first <= last]


def joined_slots(stretches: Iterable[tuple[int, int]]) -> Stretches:
    """Sort and join stretches of slots that overlap or follow each other."""
    found: Stretches = []
    for first, last in sorted(stretches):
        if found and first <= found[-1][1] + 1:
            found[-1] = (found[-1][0], max(found[-1][1], last))
        else:
            found.append((first, last))
    return found
