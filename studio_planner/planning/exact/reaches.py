"""Stage times as the solver sees them: whole slots that follow from a coat's start."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.planning.exact.lines import (
    Line,
    line_from_above,
    line_from_below,
    longest_fits,
)
from studio_planner.planning.stage_times import ALWAYS
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.products import Product
    from studio_planner.planning.edges import Edges
    from studio_planner.planning.exact.grid import Grid

MINUTE = 60


@dataclass(frozen=True, slots=True)
class Reach:
    """A stage of a coat that something waits for, or that ends something.

    With `opens` it counts from the end of the coat's block and is rounded up to a slot after
    `extra` seconds more; else it counts from the start and is rounded down, `extra` seconds
    before. The stage *handle* means: can leave its spot.
    """

    stage: Stage
    edge: Edge
    opens: bool
    extra: int = 0


def not_before(stage: Stage, edge: Edge = Edge.LATE, extra: int = 0) -> Reach:
    """What waits for a stage starts `extra` seconds after it."""
    return Reach(stage, edge, opens=True, extra=extra)


def not_after(stage: Stage, edge: Edge = Edge.EARLY, extra: int = 0) -> Reach:
    """What starts `extra` seconds before a stage is over in time."""
    return Reach(stage, edge, opens=False, extra=extra)


@dataclass(frozen=True, slots=True)
class Part:
    """Slots first..last of starts, with a line for each reach in each place."""

    first: int
    last: int
    lines: dict[tuple[str, Reach], Line]


class Reaches:
    """Values and lines of every reach, found once for all models of one plan."""

    def __init__(self, edges: Edges, grid: Grid, end: int) -> None:
        """Use the clocks of one plan, whose record ends at the second `end`."""
        self._edges = edges
        self.grid = grid
        self.far = grid.up(end) + 10
        """A slot beyond everything: what never happens happens then."""
        self._parts: dict[tuple[object, ...], list[Part]] = {}

    def slot(self, product: Product, place: str, reach: Reach, start: int, length: int) -> int:
        """The slot of a reach for a block that starts at a second and lasts so long."""
        if not reach.opens:
            after = self._edges.not_after(product, place, reach.stage, reach.edge)
            passes = ALWAYS if after is None else after.at(start)
            return self.far if passes >= ALWAYS else self.grid.down(passes - reach.extra)
        if reach.stage is Stage.HANDLE:
            clock = self._edges.handle(product, place)
        else:
            found = self._edges.not_before(product, place, reach.stage, reach.edge)
            if found is None:
                return self.far
            clock = found
        reached = clock.at(start + length)
        return self.far if reached is None else self.grid.up(reached + reach.extra)

    def parts(
        self,
        product: Product,
        asked: Sequence[tuple[str, Reach]],
        lengths: Sequence[int],
        stretch: tuple[int, int],
    ) -> list[Part]:
        """Cut a stretch of start slots so that lines hold for all that is asked.

        The lines of *not before* reaches run over the minutes of the block's end, the others
        over those of its start, both from the grid's origin.
        """
        key = (product.key, tuple(asked), tuple(lengths), stretch)
        if key not in self._parts:
            values = _Values(self, product, asked, lengths)
            self._parts[key] = [
                Part(low, high, dict(zip(asked, lines, strict=True)))
                for low, high, lines in longest_fits(*stretch, values.fit)
            ]
        return self._parts[key]


class _Values:
    """The values of several reaches over a stretch of starts, looked up once each."""

    def __init__(
        self,
        reaches: Reaches,
        product: Product,
        asked: Sequence[tuple[str, Reach]],
        lengths: Sequence[int],
    ) -> None:
        self._reaches = reaches
        self._product = product
        self._asked = asked
        self._lengths = lengths
        self._known: dict[tuple[int, int], list[tuple[int, int]]] = {}

    def fit(self, first: int, last: int) -> list[Line] | None:
        lines: list[Line] = []
        for which, (_, reach) in enumerate(self._asked):
            points = sorted(
                {
                    point
                    for slot in range(first, last + 1)
                    for point in self._points(which, slot)
                }
            )
            line = (line_from_below if reach.opens else line_from_above)(points)
            if line is None:
                return None
            lines.append(line)
        return lines

    def _points(self, which: int, slot: int) -> list[tuple[int, int]]:
        if (which, slot) not in self._known:
            place, reach = self._asked[which]
            start = self._reaches.grid.second(slot)
            lengths = self._lengths if reach.opens else (0,)
            self._known[which, slot] = [
                (
                    (start - self._reaches.grid.origin + length) // MINUTE,
                    self._reaches.slot(self._product, place, reach, start, length),
                )
                for length in lengths
            ]
        return self._known[which, slot]
