"""The starts that a coat leaves to the one on it: when the joint between them is open."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.clocks.stage_times import ALWAYS
from studio_planner.planning.spans import GRID, grid_down, grid_up

if TYPE_CHECKING:
    from studio_planner.planning.clocks.stage_times import NotAfter, NotBefore
    from studio_planner.planning.spans import Stretch, Stretches

_HOUR = 3600
_NEVER = (ALWAYS, 0)


class WindowTimes:
    """One joint in one place, for every start of the coat below.

    Answers are remembered: searches ask for the same starts over and over.
    """

    def __init__(
        self, opening: NotBefore | None, closing: NotAfter | None, blocks: tuple[int, int]
    ) -> None:
        """Take the clocks of both edges and the blocks [s] of the coat below and of this one.

        Without an opening clock the joint never opens, without a closing one it never closes.
        """
        self._opening = opening
        self._closing = closing
        self._below, self._block = blocks
        self._at: dict[int, Stretch] = {}
        self._over: dict[Stretch, Stretches] = {}

    def at(self, below_start: int) -> Stretch:
        """The first and the last start that one start of the coat below leaves.

        There is none when the first comes after the last.
        """
        found = self._at.get(below_start)
        if found is None:
            found = self._at[below_start] = self._looked_up(below_start)
        return found

    def over(self, below: Stretch) -> Stretches:
        """What all starts of the coat below in a stretch leave, in order; not to be changed.

        Windows change slowly with the start: where both ends of a stretch open one that is long
        enough, so does what lies between; else it is looked at hour by hour.
        """
        found = self._over.get(below)
        if found is None:
            found = self._over[below] = self._looked_over(below)
        return found

    def _looked_up(self, below_start: int) -> Stretch:
        opening, closing = self._opening, self._closing
        opens = None if opening is None else opening.at(below_start + self._below)
        if opens is None:
            return _NEVER
        closes = ALWAYS if closing is None else closing.at(below_start)
        return (grid_up(opens), grid_down(closes - self._block))

    def _looked_over(self, below: Stretch) -> Stretches:
        (first, first_ends), (last, last_ends) = self.at(below[0]), self.at(below[1])
        if first <= first_ends and last <= last_ends:
            return [(first, last_ends)]
        middle, middle_ends = self.at(grid_down(sum(below) / 2))
        if first > first_ends and middle > middle_ends and last > last_ends:
            return []
        found: Stretches = []
        for low in range(below[0], below[1] + 1, _HOUR):
            one, one_ends = self.at(low)
            other, other_ends = self.at(min(low + _HOUR - GRID, below[1]))
            if one <= one_ends or other <= other_ends:
                found.append((one, other_ends))
        return found
