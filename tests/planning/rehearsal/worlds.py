"""Worlds that are worked out instead of drawn, for tests of the rehearsal."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from studio_planner.planning.rehearsal.chances import NOTHING_HAPPENS
from studio_planner.planning.rehearsal.fates import World
from studio_planner.planning.rehearsal.films import Films
from studio_planner.planning.rehearsal.rehearsing import grid_of
from studio_planner.planning.rehearsal.rooms import forecast
from studio_planner.planning.rehearsal.work import work_of
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio


def likely_world(  # noqa: PLR0913 - a world has this many sides
    studio: Studio,
    plan: Plan,
    *,
    weeks: int = 1,
    late_minutes: float = 0.0,
    slower: float = 1.0,
    off: float = 0.0,
    tests: bool = True,
) -> World:
    """Weeks in which the air is as expected; every law is `off` standard deviations slow."""
    grid = grid_of(plan)
    air = {
        place.key: np.tile(
            forecast(place, studio.time_zone, grid, NOTHING_HAPPENS).celsius, (weeks, 1)
        )
        for place in studio.places
    }
    scatter = {
        (product.key, stage): np.full(weeks, off)
        for product in studio.products
        for stage in Stage
    }
    shape = weeks, len(work_of(studio, plan))
    return World(
        grid,
        Films(grid, air, scatter, studio.products),
        np.full(shape, 60.0 * late_minutes),
        np.full(shape, slower),
        tests,
    )
