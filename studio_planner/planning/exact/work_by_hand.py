"""Work by hand in the exact model, sanding or packing: in whose hours, and when."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.exact.choices import clipped
from studio_planner.planning.exact.draft import Busy, HoursUnknowns, WorkUnknowns
from studio_planner.planning.exact.grid import joined_slots

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.planning.exact.choices import AlikeHands
    from studio_planner.planning.exact.draft import Draft
    from studio_planner.planning.solver import Flag
    from studio_planner.planning.spans import Stretches

_APART = 4
"""Up to so many stretches of somebody's hours each is chosen by itself: then what is done in
one of them never meets what is done in another."""


def work_by_hand(
    draft: Draft, seconds: int, within: tuple[int, int], when: Flag | None = None
) -> WorkUnknowns:
    """Work in somebody's hours that begins within two slots, always or when a flag is set."""
    found = list(_hours(draft, seconds, within))
    there = draft.yes if when is None else when
    slots = draft.grid.length(seconds)
    if not found:
        draft.model.some([~there])
        return WorkUnknowns(start=within[0], slots=slots, hours=[])
    starts = joined_slots(stretch for _, stretches in found for stretch in stretches)
    start = draft.model.among(starts)
    hours = []
    for (hands, stretches), flag in draft.maker.one_of(found):
        if stretches != starts:
            draft.model.inside(start, stretches, draft.flags(flag))
        first, last = stretches[0][0], stretches[-1][1]
        hours.append(HoursUnknowns(hands, first, last, flag))
        span = draft.span(start, slots, *draft.flags(flag, there))
        draft.busy[hands].append(Busy(span, first, last + slots))
    return WorkUnknowns(start=start, slots=slots, hours=hours)


def _hours(
    draft: Draft, seconds: int, within: tuple[int, int]
) -> Iterator[tuple[AlikeHands, Stretches]]:
    """Whose hours they may be, stretch by stretch where there are few."""
    for hands in draft.frame.choices.hands:
        stretches = clipped(draft.frame.choices.for_steps(hands, seconds), *within)
        if len(stretches) > _APART:
            yield hands, stretches
        else:
            yield from ((hands, [stretch]) for stretch in stretches)
