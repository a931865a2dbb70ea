"""Shared mixes as pairs: one coat leads, the others of its mix follow it.

Cheap where few coats may share, so parts of a studio are looked at this way.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.exact.draft import Busy
from studio_planner.planning.exact.sharing import A_GRAIN

if TYPE_CHECKING:
    from studio_planner.planning.exact.coat_unknowns import CoatUnknowns
    from studio_planner.planning.exact.draft import Draft
    from studio_planner.planning.exact.sharing import Coat, Sharing
    from studio_planner.planning.solver import Flag, Quantity


def led_mixes(draft: Draft, sharing: Sharing) -> Quantity:
    """Let coats lead or follow, put all blocks into hours, and count the mixes."""
    follows = _share(draft, sharing)
    for at, lane in enumerate(draft.lanes):
        for index, coat in enumerate(lane.coats):
            if coat.known_start is None:
                block(draft, coat, follows.get((at, index), []))
    count = sum(coat.known_start is None for lane in draft.lanes for coat in lane.coats)
    return count - sum(flag for flags in follows.values() for flag in flags)


def block(draft: Draft, coat: CoatUnknowns, follows: list[Flag]) -> None:
    """Put a block, with turning before it, into somebody's hours; what follows is led."""
    lead = draft.grid.length(coat.task.lead)
    slots = coat.slots(draft.grid.step) + lead
    first, last = coat.window
    until = last + draft.grid.length(max(seconds for seconds, _ in coat.lasting))
    for hands, flag in coat.by:
        there = [*draft.flags(flag), *(~one for one in follows)]
        span = draft.span(coat.start - lead, slots, *there)
        draft.busy[hands].append(Busy(span, first - lead, until))


def _share(draft: Draft, sharing: Sharing) -> dict[Coat, list[Flag]]:
    """Say what it means that coats share a mix; the flags with which each coat follows."""
    follows: dict[Coat, list[Flag]] = {}
    for leader, follower in sharing.pairs:
        one, other = draft.coat(leader), draft.coat(follower)
        if one.known_start is None and other.known_start is None:
            flag = draft.model.flag()
            draft.together[leader, follower] = flag
            follows.setdefault(follower, []).append(flag)
    for flags in follows.values():
        draft.model.at_most_one(flags)
    for (leader, follower), shared in draft.together.items():
        _bind_block(draft, draft.coat(leader), draft.coat(follower), shared)
        for led in follows.get(leader, []):
            draft.model.at_most_one([shared, led])
    for coat in sharing.portions:
        _lengthen(draft, sharing, coat, follows.get(coat, []))
    return follows


def _bind_block(draft: Draft, one: CoatUnknowns, other: CoatUnknowns, shared: Flag) -> None:
    """Coats of one mix are one block of one person."""
    draft.model.equal(one.start, other.start, [shared])
    draft.model.equal(one.minutes, other.minutes, [shared])
    if len(one.by) > 1:
        for (_, mine), (_, theirs) in zip(one.by, other.by, strict=True):
            draft.model.equal(mine, theirs, [shared])


def _lengthen(draft: Draft, sharing: Sharing, coat: Coat, follows: list[Flag]) -> None:
    """A block that leads is as long as all that follow; one alone as long as its own work."""
    mine = draft.coat(coat)
    if mine.known_start is not None:
        return
    led = [
        (sharing.portions[one], draft.together[coat, one])
        for one in sharing.led_by(coat)
        if (coat, one) in draft.together
    ]
    own = sharing.portions[coat]
    minutes: Quantity = own.alone // 60
    for other, flag in led:
        minutes += other.own // 60 * flag
    draft.model.equal(mine.minutes, minutes, [~flag for flag in follows])
    if led:
        draft.model.at_least(sharing.most_together(coat), sum(flag for _, flag in led))
        grams = sum(in_parts(other.grams) * flag for other, flag in led)
        draft.model.at_least(in_parts(own.limit + A_GRAIN) - in_parts(own.grams), grams)


def in_parts(grams: float) -> int:
    """Grams counted so finely that rounding is less than a grain."""
    return round(grams * 10 / A_GRAIN)
