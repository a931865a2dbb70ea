"""Stage times as the solver sees them: whole slots that follow from a coat's start."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.planning.clocks.stage_times import ALWAYS
from studio_planner.planning.exact.lines import Line, pieces_of
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Sequence

    from studio_planner.craft.products import Product
    from studio_planner.planning.clocks.edges import Edges
    from studio_planner.planning.exact.grid import Grid

MINUTE = 60


@dataclass(frozen=True, slots=True)
class Reach:
    """A stage of a coat that something waits for, or that ends something.

    With `opens` it counts from the end of the coat's block and is rounded up to a slot after
    `extra` seconds more; else it counts from the start and is rounded down, `extra` seconds
    before. The stage *handle* means: can leave its spot. A `mixed` one is for blocks that are
    longer because a mix is shared; they are taken to end on whole slots.
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

    def __init__(self, edges: Edges, grid: Grid, end: int) -> None:
        """Use the clocks of one plan, whose record ends at the second `end`."""
        self._edges = edges
        self.grid = grid
        self.far = grid.up(end) + 10
        """A slot beyond everything: what never happens happens then."""
        self._parts: dict[tuple[object, ...], list[Part]] = {}
        self._readers: dict[tuple[str, str, Reach], Callable[[int, int], int]] = {}
        self._pieces_known: dict[tuple[object, ...], list[_Piece]] = {}

    def slot(self, product: Product, place: str, reach: Reach, start: int, length: int) -> int:
        """The slot of a reach for a block that starts at a second and lasts so long."""
        return self._reader(product, place, reach)(start, length)

    def _reader(self, product: Product, place: str, reach: Reach) -> Callable[[int, int], int]:
        """What reads the slot of a reach for a start and a length in seconds."""
        key = (product.key, place, reach)
        if key not in self._readers:
            made = self._opening if reach.opens else self._closing
            self._readers[key] = made(product, place, reach)
        return self._readers[key]

    def _closing(self, product: Product, place: str, reach: Reach) -> Callable[[int, int], int]:
        clock = self._edges.not_after(product, place, reach.stage, reach.edge)

        def slot(start: int, _: int) -> int:
            passes = ALWAYS if clock is None else clock.at(start)
            return self.far if passes >= ALWAYS else self.grid.down(passes - reach.extra)

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
    ) -> list[Part]:
        """Cut a stretch of start slots so that lines hold for all that is asked.

        The lines of *not before* reaches run over the minutes of the end of a block of the
        first length, the others over the minutes of the start; mixed ones are asked for a
        stretch of ends and run over its slots. All count from the grid's origin.
        """
        key = (product.key, tuple(asked), tuple(lengths), stretch)
        if key not in self._parts:
            rows = [self._pieces(product, one, tuple(lengths), stretch) for one in asked]
            self._parts[key] = list(_merged(stretch, asked, rows))
        return self._parts[key]

    def _pieces(
        self,
        product: Product,
        asked: tuple[str, Reach],
        lengths: tuple[int, ...],
        stretch: tuple[int, int],
    ) -> list[_Piece]:
        """The lines of one reach over a stretch, each with its slots (first, last)."""
        place, reach = asked
        # A mixed reach is asked for where a block ends, the others where it starts.
        length = lengths[0] if reach.opens and not reach.mixed else 0
        key = (product.key, asked, length, stretch)
        if key not in self._pieces_known:
            first, step, origin = stretch[0], self.grid.step, self.grid.origin
            unit = step if reach.mixed else MINUTE
            read = self._reader(product, place, reach)
            points = [
                ((slot * step + length) // unit, read(origin + slot * step, length))
                for slot in range(first, stretch[1] + 1)
            ]
            self._pieces_known[key] = [
                (first + low, first + last, line)
                for low, last, line in pieces_of(points, up=reach.opens)
            ]
        return self._pieces_known[key]


_Piece = tuple[int, int, Line]


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
