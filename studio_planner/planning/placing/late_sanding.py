"""Moves what is washed and sanded to as late before its coat as can be; no pour moves.

A search sands as soon as it can, since that leaves most starts open. A maker sands on the day
of the pour: what lies about for days gathers dust and grease (common practice).
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from studio_planner.planning.placing.placements import Placement
    from studio_planner.planning.placing.placer import Placer

_Joint = tuple[int, int]
"""A placement by its position, and one of its coats."""


def sanded_late(placer: Placer, placed: Sequence[Placement]) -> tuple[Placement, ...]:
    """The same placements, in which no sanding by itself could lie later.

    Parameters
    ----------
    placer
        On a workshop that holds nothing but what is poured; the placements are booked in it.
    placed
        All that is placed; each sanding keeps every rule where it is.
    """
    found = list(placed)
    for one in found if _sandings(found) else ():
        placer.finisher.book(replace(one, sanders=(None,) * len(one.sanders)))
    moved = True
    while moved:
        # What is sanded later may leave room to what is sanded before it.
        joints = sorted(_sandings(found), key=lambda joint: -found[joint[0]].starts[joint[1]])
        moved = sum(_later(placer, found, joint) for joint in joints) > 0
    return tuple(found)


def _sandings(placed: Iterable[Placement]) -> dict[_Joint, tuple[str, int, int]]:
    """Who sands each joint, from when until when."""
    return {
        (at, index): (sander, *joint.sand)
        for at, one in enumerate(placed)
        for index, (joint, sander) in enumerate(zip(one.laid.joints, one.sanders, strict=True))
        if joint.sand is not None and sander is not None
    }


def _later(placer: Placer, placed: list[Placement], joint: _Joint) -> bool:
    """Put one sanding as late as all others leave room; tell whether that is later."""
    at, index = joint
    one, shop = placed[at], placer.means.shop.copy()
    sandings = _sandings(placed)
    sander, begins, ends = sandings.pop(joint)
    for taken in sandings.values():
        shop.take_hands(*taken)
    until = one.starts[index] - placer.finisher.times(one.laid).settling(index)
    start = shop.latest_sanding(begins, until, ends - begins)
    if start is None or start <= begins:
        return False
    sand = (start, start + ends - begins)
    by = sander if shop.hands[sander].holds(*sand) else shop.somebody(*sand)
    placed[at] = _sanded(one, index, sand, by)
    return True


def _sanded(one: Placement, index: int, sand: tuple[int, int], sander: str | None) -> Placement:
    joints = list(one.laid.joints)
    joints[index] = replace(joints[index], sand=sand)
    sanders = list(one.sanders)
    sanders[index] = sander
    laid = replace(one.laid, joints=tuple(joints))
    return replace(one, laid=laid, sanders=tuple(sanders))
