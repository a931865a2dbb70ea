"""Why a coat finds no start: the first rule that leaves it none, in the maker's nouns."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.degree_words import degree_step_said
from studio_planner.craft.saying import Saying, saying
from studio_planner.craft.tongue import marked
from studio_planner.planning.saying import length_said
from studio_planner.planning.spans import grid_down, grid_up
from studio_planner.planning.stuck.good_air import in_good_air, within_limits
from studio_planner.planning.stuck.why_air import Asked, why_air
from studio_planner.planning.stuck.why_awake import why_nobody_is_awake
from studio_planner.planning.stuck.why_window import WindowJudge

if TYPE_CHECKING:
    from studio_planner.planning.placing.chain_search import Dead
    from studio_planner.planning.placing.chain_times import Ground, Means
    from studio_planner.planning.placing.placer import Placer
    from studio_planner.planning.problem import Chain, Task
    from studio_planner.planning.spans import Stretches

_MANY = 400
"""Starts that are looked at, at most: more tell no more."""


def why_coat(placer: Placer, chain: Chain, ground: Ground, dead: Dead) -> Saying:
    """The first rule that leaves a coat no start, to follow the coat's name."""
    means, task = placer.means, chain.tasks[dead.index]
    needed, longest = task.lead + task.block, longest_hands(means)
    if needed > longest:
        text = (
            marked(
                "stuck",
                "takes {needed} of hands on end, turning it first, and nobody works longer "
                "than {longest} in one go; give somebody longer hours on one day, or divide "
                "the set.",
            )
            if task.lead
            else marked(
                "stuck",
                "takes {needed} of hands on end, and nobody works longer than {longest} in "
                "one go; give somebody longer hours on one day, or divide the set.",
            )
        )
        return saying("stuck", text, needed=length_said(needed), longest=length_said(longest))
    material = chain.pieces[0].material
    handy = starts_with_hands(means, task, ground.place)
    if not within_limits(means, task, material, ground.place, handy):
        asked = Asked(task, material, ground.place, handy)
        return why_air(placer.studio, means, asked)
    if not in_good_air(means, task, material, ground.place, handy):
        return saying(
            "stuck",
            "lies on bare porous work, and whenever somebody can work the room warms by more "
            "than {steady} meanwhile: the air in the pores would blow bubbles; add hours in "
            "which the room cools, or keep it at one temperature.",
            steady=degree_step_said(placer.studio.settings.steady_celsius, placer.studio.units),
        )
    asleep = why_nobody_is_awake(means, task, ground.place, handy)
    return asleep or _on_the_way(placer, chain, ground, dead)


def starts_with_hands(means: Means, task: Task, place: str) -> Stretches:
    """Starts with hands for a coat, if possible such that it can be handled in the record."""
    latest = means.edges.handle(task.product, place).latest(means.end)
    last = means.until if latest is None else min(means.until, latest - task.block)
    first = grid_up(means.now + task.lead)
    last = means.until if first > last else last
    return means.shop.starts([(first, grid_down(last))], task.lead, task.block, _MANY)


def _on_the_way(placer: Placer, chain: Chain, ground: Ground, dead: Dead) -> Saying:
    """What is left when the coat alone could be poured: the coat below, the faces, the spot."""
    task = chain.tasks[dead.index]
    handle = placer.means.edges.handle(task.product, ground.place)
    if handle.at(placer.means.now + task.block) is None:
        return saying(
            "stuck",
            "never gets so hard in the time looked at that it can be handled; a warmer room "
            "or another product would help.",
        )
    for other in task.rests_on:
        below = chain.tasks[other]
        clock = placer.means.edges.handle(below.product, ground.place)
        if clock.at(placer.means.now + below.block) is None:
            name = chain.pieces[0].coat_name_said(below.coat.key)
            return saying(
                "stuck",
                "waits until the {name} on the other face can be handled, and it never can; a "
                "warmer room or another product would help.",
                name=name,
            )
    if task.below is not None:
        zone = placer.studio.time_zone
        return WindowJudge(zone, placer.means, chain, dead.index, ground.place).words()
    return saying(
        "stuck",
        "finds no spot free from its pour until it can be handled; add a spot, or clear one.",
    )


def longest_hands(means: Means) -> int:
    """The longest stretch of anybody's free hours, in seconds."""
    return max(
        (
            end - max(start, means.now)
            for free in means.shop.hands.values()
            for start, end in free.from_(means.now)
        ),
        default=0,
    )
