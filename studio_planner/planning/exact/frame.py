"""What all exact models of one plan have in common: the studio, its clocks, the grid."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.planning.exact.asked import Asked
from studio_planner.planning.exact.beginnings import AllBeginnings
from studio_planner.planning.exact.choices import Choices
from studio_planner.planning.exact.grid import Grid
from studio_planner.planning.exact.promised import Promised
from studio_planner.planning.exact.reaches import Reaches
from studio_planner.planning.placing.chain_times import Allow
from studio_planner.planning.spans import GRID

if TYPE_CHECKING:
    from studio_planner.craft.orders import Order
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.placing.chain_times import Means
    from studio_planner.planning.placing.placements import Finisher
    from studio_planner.planning.problem import Chain
    from studio_planner.planning.worth import Starts


@dataclass(frozen=True, slots=True)
class Frame:
    """One studio at one moment, as exact models see it.

    `before` are the starts of the plan that was kept, which new plans should not move.
    """

    studio: Studio
    means: Means
    finisher: Finisher
    grid: Grid
    choices: Choices
    reaches: Reaches
    before: Starts

    def asked(self, chain: Chain, allow: Allow) -> Asked:
        """What is asked of a chain's coats when such joints are allowed."""
        return Asked(self.studio, chain, allow, self.means.tape_seconds)

    def promised(self, order: Order) -> Promised:
        """What packing means for an order's promise."""
        return Promised(self.studio, order, self.grid)


ALL_JOINTS = Allow(test_first=True, scuff=True)
"""Every joint that the coats themselves allow."""


def frame_of(
    studio: Studio, finisher: Finisher, means: Means, before: Starts, step: int = GRID
) -> Frame:
    """The frame of one plan, on a grid of `step` seconds (a multiple of five minutes)."""
    grid = Grid(origin=means.now // step * step, step=step)
    # What is carried to a second place is moved at any time.
    beginnings = AllBeginnings(means, grid) if len(studio.places) == 1 else None
    return Frame(
        studio=studio,
        means=means,
        finisher=finisher,
        grid=grid,
        choices=Choices(studio, means, grid),
        reaches=Reaches(means.edges, grid, means.end, beginnings),
        before=before,
    )
