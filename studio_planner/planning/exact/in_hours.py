"""In which hours a slot lies: said by few flags, of which each settles many others at once.

A studio's slots come in stretches, an evening or a day each. A flag for the gap before each of
them lets the solver pass from the slots of one coat to those of the next in one step, long
before it knows in which part of a stretch either lies.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from studio_planner.planning.exact.grid import Grid
    from studio_planner.planning.exact.reaches import Part
    from studio_planner.planning.solver import Flag, Model, Quantity, Unknown
    from studio_planner.planning.spans import Stretches


@dataclass(frozen=True, slots=True)
class StretchUnknowns:
    """The first and last part of a stretch that a slot may lie in, and what is set then.

    `begun` is set when the slot lies in the stretch or after it, `not_over` when in it or
    before it; the first one has begun and the last one is not over in any case.
    """

    first: Part
    last: Part
    begun: tuple[Flag, ...]
    not_over: tuple[Flag, ...]


class InHours:
    """Says in which stretches slots of one model lie."""

    def __init__(self, model: Model, grid: Grid) -> None:
        """Add to a model whose slots are those of a grid."""
        self._model = model
        self._grid = grid
        self._flags: dict[tuple[int, int], Flag] = {}

    def stretches(self, slot: Unknown, parts: Sequence[Part]) -> list[StretchUnknowns]:
        """The stretches that the parts of a slot make up."""
        found = _joined(parts)
        flags = [self._from(slot, one[0].first) for one in found[1:]]
        begun = [(), *((flag,) for flag in flags)]
        not_over = [*((~flag,) for flag in flags), ()]
        return [
            StretchUnknowns(one[0], one[-1], *bounds)
            for one, *bounds in zip(found, begun, not_over, strict=True)
        ]

    def keep(
        self,
        start: Unknown,
        end: Quantity,
        starts: Mapping[int, Stretches],
        when: Sequence[Flag] = (),
        of_slot: int = 1,
    ) -> bool:
        """Let a block that starts in a stretch end there, when all flags are set.

        `end` counts parts of a slot, so many `of_slot`, and `starts` are those of each length
        in seconds. With it only the starts of the shortest block are still to be said. Where a
        longer one may not start all through a stretch, up to its end, nothing is said, and it
        tells so: bad air does that.
        """
        rows = [(self._grid.length(seconds), starts[seconds]) for seconds in sorted(starts)]
        ends = common_ends(rows)
        if not ends:
            return False
        for before, (first, _) in zip(ends[:-1], rows[0][1][1:], strict=True):
            self._model.at_least(of_slot * before, end, [*when, ~self._from(start, first)])
        self._model.at_least(of_slot * ends[-1], end, when)
        return True

    def _from(self, slot: Unknown, first: int) -> Flag:
        """A flag that is set when a slot is not before one: others' hours may lie between."""
        key = slot.index, first
        if key not in self._flags:
            flag = self._flags[key] = self._model.flag()
            self._model.at_least(slot, first, [flag])
            self._model.at_least(first - 1, slot, [~flag])
        return self._flags[key]


def _joined(parts: Sequence[Part]) -> list[list[Part]]:
    """Parts that follow each other without a gap, together."""
    found: list[list[Part]] = []
    for part in parts:
        if found and found[-1][-1].last + 1 == part.first:
            found[-1].append(part)
        else:
            found.append([part])
    return found


def common_ends(starts: Sequence[tuple[int, Stretches]]) -> list[int] | None:
    """The slots by which blocks of all lengths end, one for each stretch of the shortest.

    Given are lengths in slots, the shortest first, each with the slots in which it may start;
    None when these are not what is left of the same stretches before the same ends.
    """
    widest = starts[0][1]
    ends = [
        max(b + slots for slots, found in starts for a, b in found if first <= a <= last)
        for first, last in widest
    ]
    for slots, found in starts:
        left = [
            (first, min(last, end - slots))
            for (first, last), end in zip(widest, ends, strict=True)
            if first <= end - slots
        ]
        if left != found:
            return None
    return ends
