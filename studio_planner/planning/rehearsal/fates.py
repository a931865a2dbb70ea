"""Simulated weeks for a maker to go through, and what becomes of a plan in them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from studio_planner.planning.rehearsal.arrays import Flags, Floats
    from studio_planner.planning.rehearsal.films import Films
    from studio_planner.planning.rehearsal.rooms import Grid


@dataclass(frozen=True, slots=True)
class World:
    """Simulated weeks: their films, by how much the maker is late [s] and slower [times].

    Both are (weeks, works), works as `work_of` lists them. `tests` says whether the maker
    touch-tests: who does, knows when a window is open, has closed, and when a piece may go.
    """

    grid: Grid
    films: Films
    late: Floats
    slower: Floats
    tests: bool = True

    @property
    def weeks(self) -> int:
        """How many weeks there are."""
        return len(self.late)


@dataclass(frozen=True, slots=True)
class Fate:
    """What became of a coat, a flag for each week (weeks,).

    `held`: its whole block lay in its window (a coat without a window: it was poured);
    `early`: it began before its window; `scuffed`: sanded because the window had closed;
    `slipped`: it began so much later than planned that other hands had to do it.
    """

    poured: Flags
    held: Flags
    early: Flags
    scuffed: Flags
    slipped: Flags


@dataclass(frozen=True, slots=True)
class Followed:
    """What became of a plan: of its coats by number, of its orders by key.

    `leaves` [s] is infinite where an order never leaves; `raw` are the weeks in which one of
    its pieces was packed before it had cured to the gate.
    """

    coats: dict[int, Fate]
    leaves: dict[str, Floats]
    raw: dict[str, Flags]
