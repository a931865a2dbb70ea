"""Where placements stand and from when until when; and where else they could."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.planning.placing.means import Ground

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from studio_planner.planning.placing.placements import Finisher, Laid, Placement
    from studio_planner.planning.placing.placer import Placer

Taken = tuple[str, int, int]
"""Hands or a spot (its key), from when until when [s]."""


def stays(finisher: Finisher, laid: Laid) -> list[Taken]:
    """The spots that new coats take."""
    return [
        (spot, laid.starts[index], finisher.freed(laid, index))
        for index in range(laid.chain.first, len(laid.starts))
        for spot in laid.grounds[index].spots
    ]


def clash(ones: Iterable[Taken], others: Sequence[Taken]) -> bool:
    """Tell whether anything is taken twice at a time."""
    return any(
        what == other and start < until and since < end
        for what, start, end in ones
        for other, since, until in others
    )


def nowhere(one: Placement) -> Placement:
    """A placement that takes hands and makes dust, but stands on no spot."""
    grounds = tuple(Ground(ground.place, ()) for ground in one.laid.grounds)
    return replace(one, laid=replace(one.laid, grounds=grounds))


def on_each_spot(placer: Placer, placement: Placement) -> Iterator[Placement]:
    """A placement at its very times on each spot of its place that is free for it."""
    laid, shop = placement.laid, placer.means.shop
    first, last = laid.chain.first, laid.grounds[-1]
    for places in placer.grounds(laid.chain) if _may_go(placer.finisher, laid) else ():
        for ground in places if places[0].place == last.place else ():
            grounds = (*laid.grounds[:first], *[ground] * (len(laid.grounds) - first))
            there = replace(laid, grounds=grounds)
            if all(
                shop.spots[spot].holds(*stay) for spot, *stay in stays(placer.finisher, there)
            ):
                yield replace(placement, laid=there)


def _may_go(finisher: Finisher, laid: Laid) -> bool:
    """Tell whether what is poured of a laid chain can be handled before its next coat."""
    first = laid.chain.first
    if not first:
        return True
    handled = finisher.times(laid).handled(first - 1, laid.starts[first - 1])
    return handled is not None and handled <= laid.starts[first] - laid.chain.tasks[first].lead
