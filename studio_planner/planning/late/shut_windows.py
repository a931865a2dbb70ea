"""How many windows of a plan would close in the night if the room were warmer."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.late.fitting import Fitter
from studio_planner.planning.problem import build_chains
from studio_planner.planning.spans import grid_down, grid_up
from studio_planner.planning.stuck.joint_windows import window_of

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.clocks.clockwork import Clockworks
    from studio_planner.planning.placing.chain_times import Means
    from studio_planner.planning.problem import Chain, Task


def shut_at_night(warmer: Studio, plan: Plan, clockworks: Clockworks) -> int:
    """Count the windows that a plan meets and that nobody could meet in a warmer studio.

    Each window opens and closes for the pour below it as the plan has that; nobody means: with
    all working hours free.
    """
    means = Fitter(warmer, plan, clockworks).empty()
    chains = build_chains(warmer, twins=False)[0]
    return sum(
        _shuts(means, chain, task, {c.coat: c for c in plan.coats if c.piece == piece.key})
        for chain in chains
        for piece in chain.pieces
        for task in chain.tasks[chain.first :]
    )


def _shuts(means: Means, chain: Chain, task: Task, rows: Mapping[str, PlannedCoat]) -> bool:
    planned = rows.get(task.coat.key)
    met = None if planned is None else planned.window
    if met is None or met.closes is None or task.below is None:
        return False
    below, lower = chain.tasks[task.below], rows[chain.tasks[task.below].coat.key]
    start, end = int(lower.start.timestamp()), int(lower.end.timestamp())
    opens, closes = window_of(means.edges, task, below, means.place_of(lower), (start, end))
    if opens is None:
        return True
    wished = grid_up(opens), grid_down(closes - task.block)
    if wished[0] > wished[1]:
        return True
    return not means.shop.starts([wished], task.lead, task.block, 1)
