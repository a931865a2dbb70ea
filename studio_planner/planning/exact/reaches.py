"""Stage times as the solver sees them: whole slots that follow from a coat's start."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.planning.clocks.stage_times import ALWAYS
from studio_planner.planning.exact.lines import SCALE, Line, Point, pieces_of
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Sequence

    from studio_planner.craft.products import Product
    from studio_planner.planning.clocks.edges import Edges
    from studio_planner.planning.exact.beginnings import AllBeginnings
    from studio_planner.planning.exact.grid import Grid

MINUTE = 60


@dataclass(frozen=True, slots=True)
class Reach:
    """A stage of a coat that something waits for, or that ends something.

    With `opens` it counts from the end of the coat's block and is rounded up to a slot after
    `extra` seconds more; else it counts from the start and is rounded down, `extra` seconds
    before. The stage *handle* means: can leave its spot. A `mixed` one is for blocks that are
    longer because a mix is shared: it counts from the unit of time in which such a block ends,
    or is what that has to be over in, in those units.
    """

    stage: Stage
    edge: Edge
    opens: bool
    extra: int = 0
    mixed: bool = False


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

    def __init__(
        self, edges: Edges, grid: Grid, end: int, beginnings: AllBeginnings | None = None
    ) -> None:
        """Use the clocks of one plan, whose record ends at the second `end`.

        Where it is known when things can begin, lines need only say what that makes of a slot.
        """
        self._edges = edges
        self._beginnings = beginnings
        self.grid = grid
        self.far = grid.up(end) + 10
        """A slot beyond everything: what never happens happens then."""
        self._parts: dict[tuple[object, ...], list[Part]] = {}
        self._readers: dict[tuple[str, str, Reach, int], Callable[[int, int], int]] = {}
        self._pieces_known: dict[tuple[object, ...], list[_Piece]] = {}

    def slot(
        self,
        product: Product,
        place: str,
        reach: Reach,
        block: tuple[int, int],
        unit: int | None = None,
    ) -> int:
        """The slot of a reach for a block that starts at a second and lasts so long.

        `unit` [s] is what ends of longer blocks are counted in, whole slots if nothing is said.
        """
        return self._reader(product, place, reach, unit or self.grid.step)(*block)

    def _reader(
        self, product: Product, place: str, reach: Reach, unit: int
    ) -> Callable[[int, int], int]:
        """What reads the slot of a reach for a start and a length in seconds."""
        key = (product.key, place, reach, unit)
        if key not in self._readers:
            self._readers[key] = (
                self._opening(product, place, reach)
                if reach.opens
                else self._closing(product, place, reach, unit)
            )
        return self._readers[key]

    def _closing(
        self, product: Product, place: str, reach: Reach, unit: int
    ) -> Callable[[int, int], int]:
        clock = self._edges.not_after(product, place, reach.stage, reach.edge)
        grid = replace(self.grid, step=unit) if reach.mixed else self.grid
        far = self.far * (self.grid.step // grid.step)

        def slot(start: int, _: int) -> int:
            passes = ALWAYS if clock is None else clock.at(start)
            return far if passes >= ALWAYS else grid.down(passes - reach.extra)

        return slot

    def _opening(self, product: Product, place: str, reach: Reach) -> Callable[[int, int], int]:
        clock = (
            self._edges.handle(product, place)
            if reach.stage is Stage.HANDLE
            else self._edges.not_before(product, place, reach.stage, reach.edge)
        )

        def slot(start: int, length: int) -> int:
            reached = None if clock is None else clock.at(start + length)
            return self.far if reached is None else self.grid.up(reached + reach.extra)

        return slot

    def parts(
        self,
        product: Product,
        asked: Sequence[tuple[str, Reach]],
        lengths: Sequence[int],
        stretch: tuple[int, int],
        unit: int | None = None,
    ) -> list[Part]:
        """Cut a stretch of start slots so that lines hold for all that is asked.

        The lines of *not before* reaches run over the minutes of the end of a block of the
        first length, the others over the minutes of the start; mixed *not before* ones are
        asked for a stretch of ends and run over the units [s] that it is counted in, whole
        slots if nothing is said. All count from the grid's origin.
        """
        unit = unit or self.grid.step
        key = (product.key, tuple(asked), tuple(lengths), stretch, unit)
        if key not in self._parts:
            rows = [self._pieces(product, one, tuple(lengths), stretch, unit) for one in asked]
            self._parts[key] = list(_merged(stretch, asked, rows))
        return self._parts[key]

    def _pieces(
        self,
        product: Product,
        asked: tuple[str, Reach],
        lengths: tuple[int, ...],
        stretch: tuple[int, int],
        unit: int,
    ) -> list[_Piece]:
        """The lines of one reach over a stretch, each with its slots or units (first, last)."""
        place, reach = asked
        # What opens for a longer block is asked for where that ends, all else where it starts.
        at_end = reach.opens and reach.mixed
        length = lengths[0] if reach.opens and not reach.mixed else 0
        key = (product.key, asked, length, stretch, unit)
        if key not in self._pieces_known:
            step, of_line = (unit, unit) if at_end else (self.grid.step, MINUTE)
            read = self._reader(product, place, reach, unit)
            will_do = self._what_will_do(reach, unit)

            def point(slot: int) -> Point:
                value = read(self.grid.origin + slot * step, length)
                return Point((slot * step + length) // of_line, value, *will_do(value))

            self._pieces_known[key] = _over(stretch, point, up=reach.opens)
        return self._pieces_known[key]

    def _what_will_do(self, reach: Reach, unit: int) -> Callable[[int], tuple[int, int]]:
        """What tells the lowest and highest value that mean the same as one."""
        if self._beginnings is None:
            return lambda value: (value, value)
        found = self._beginnings.of(reach.stage)
        if reach.opens:
            return found.not_before
        return found.finer(self.grid.step // unit if reach.mixed else 1).not_after


_Piece = tuple[int, int, Line]


def _over(stretch: tuple[int, int], point: Callable[[int], Point], *, up: bool) -> list[_Piece]:
    """The lines over a stretch; one, and hardly a look, where it is all the same."""
    first, last = stretch
    one, other = point(first), point(last)
    if (one.low, one.high) == (other.low, other.high):
        return [(first, last, Line(0, SCALE * (one.high if up else one.low)))]
    points = [point(slot) for slot in range(first, last + 1)]
    return [(first + a, first + b, line) for a, b, line in pieces_of(points, up=up)]


def _merged(
    stretch: tuple[int, int], asked: Sequence[tuple[str, Reach]], rows: Sequence[list[_Piece]]
) -> Iterator[Part]:
    """Parts that end wherever one of the lines does."""
    at = [0] * len(rows)
    low = stretch[0]
    while low <= stretch[1]:
        now = [row[k] for row, k in zip(rows, at, strict=True)]
        last = min(piece[1] for piece in now)
        yield Part(low, last, dict(zip(asked, (piece[2] for piece in now), strict=True)))
        at = [k + (piece[1] == last) for k, piece in zip(at, now, strict=True)]
        low = last + 1
