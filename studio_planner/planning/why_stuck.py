"""Why a chain found no start: the coat, and the rule that stops it, in the maker's nouns."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.plans import Unplanned
from studio_planner.planning.chain_search import ChainSearch, Look
from studio_planner.planning.chain_times import Allow, Ground

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Piece
    from studio_planner.planning.placing import Placer, Stuck
    from studio_planner.planning.problem import Task
    from studio_planner.planning.spans import Stretches


DAYS_ASKED_FOR = "does not fit into the days that were asked for."


def why_stuck(placer: Placer, stuck: Stuck) -> list[Unplanned]:
    """One row for each piece of a stuck chain."""
    coat, reason = _reason(placer, stuck)
    return [
        Unplanned(piece=piece.key, coat=coat, reason=f"{piece.name}: {reason}")
        for piece in stuck.chain.pieces
    ]


def _reason(placer: Placer, stuck: Stuck) -> tuple[str | None, str]:
    piece = stuck.chain.pieces[0]
    if stuck.ground is None:
        return None, _no_spot(piece)
    if not stuck.cured:
        return None, "it never cures far enough to be packed in the time looked at."
    if stuck.dead is None:
        return None, "no order of its pours was found that keeps every rule."
    if stuck.dead.each_alone:
        return None, (
            "each coat alone could be poured, but no choice of pours meets every window; "
            "more waking hours, a warmer night or a coat that can be sanded would help."
        )
    task = stuck.chain.tasks[stuck.dead.index]
    words = _rule(placer, stuck, stuck.ground, task)
    return task.coat.key, f"the {piece.coat_name(task.coat.key)} {words}"


def _no_spot(piece: Piece) -> str:
    length, width = piece.footprint
    height = piece.body_mm + piece.cover_mm
    return (
        f"no spot is large enough; it needs {length:.0f} by {width:.0f} mm "
        f"and {height:.0f} mm of height with its cover."
    )


def _rule(placer: Placer, stuck: Stuck, ground: Ground, task: Task) -> str:
    dead = stuck.dead
    means = placer.means
    if means.until < means.end:
        return DAYS_ASKED_FOR
    if all(free.last_start is None for free in means.shop.hands.values()):
        return "needs hands, and nobody has working hours in the time looked at."
    if dead is None or not dead.ranges:
        return _window_words(task)
    hands = means.shop.starts(list(dead.ranges), task.lead, task.block, 400)
    if not hands:
        minutes = (task.lead + task.block) // 60
        return f"needs {minutes} min of hands in one go, and nobody has them in its window."
    return _other_rule(placer, stuck, ground, task, hands)


def _other_rule(
    placer: Placer, stuck: Stuck, ground: Ground, task: Task, hands: Stretches
) -> str:
    """What is left when somebody could pour: air, waking hours, spots."""
    search = ChainSearch(placer.means, stuck.chain, ground, Allow(), Look(400))
    if not search.in_good_air(task, hands):
        return (
            f"finds no time when the room is within the limits of {task.product.name} "
            "(temperature, humidity, dew point) and somebody can work."
        )
    if task.bare_porous:
        return "lies on bare porous work, and the room warms whenever somebody can work."
    if task.coat.taped or task.coat.trimmed:
        return "needs somebody awake to pull the tape or trim the drips, and nobody is."
    return "finds no spot free from its pour until it can be handled."


def _window_words(task: Task) -> str:
    if task.below is None:
        return "cannot start in the time looked at."
    minutes = task.block // 60
    return (
        f"takes {minutes} min, and the safe window of the coat below is shorter, "
        "never opens, or cannot be met; nothing else is allowed for this joint."
    )
