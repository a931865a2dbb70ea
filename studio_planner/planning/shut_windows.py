"""How many windows of a plan would close in the night if the room were warmer."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.fitting import Fitter
from studio_planner.planning.problem import build_chains
from studio_planner.planning.spans import grid_down, grid_up

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.chain_times import Means
    from studio_planner.planning.clockwork import Clockworks
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
    if met is None or met.closes is None or task.below is None or task.sheet_opens is None:
        return False
    below = chain.tasks[task.below]
    window = _window(means, task, below, rows[below.coat.key])
    if window is None:
        return False
    wished = grid_up(window[0]), grid_down(window[1] - task.block)
    if wished[0] > wished[1]:
        return True
    return not means.shop.starts([wished], task.lead, task.block, 1)


def _window(
    means: Means, task: Task, below: Task, lower: PlannedCoat
) -> tuple[int, int] | None:
    if task.sheet_opens is None or task.sheet_closes is None:
        return None
    place = means.place_of_spot[lower.spot]
    opening = means.edges.not_before(below.product, place, task.sheet_opens)
    closing = means.edges.not_after(below.product, place, task.sheet_closes)
    opens = None if opening is None else opening.at(int(lower.end.timestamp()))
    if opens is None or closing is None:
        return None
    return opens, closing.at(int(lower.start.timestamp()))
