"""What the air of a place leaves of some starts of a coat."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.spans import outside

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Material
    from studio_planner.planning.placing.chain_times import Means
    from studio_planner.planning.problem import Task
    from studio_planner.planning.spans import Stretches


def within_limits(
    means: Means, task: Task, material: Material, place: str, wished: Stretches
) -> Stretches:
    """Starts whose block keeps the product's limits and the dew-point margin."""
    lows, highs = means.air.holes(place, task.product, material, task.block)
    return outside(wished, list(zip(lows, highs, strict=True)))


def in_good_air(
    means: Means, task: Task, material: Material, place: str, wished: Stretches
) -> Stretches:
    """The same, and on bare porous work no start from which the place warms."""
    left = within_limits(means, task, material, place, wished)
    if task.bare_porous and left:
        rising = means.air.rising(place, task.block, left[0][0], left[-1][1])
        left = outside(left, rising)
    return left
