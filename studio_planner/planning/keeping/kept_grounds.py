"""Where the chains of a kept plan may stand: on their old spots, or on others free as long."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.placing.placements import Laid

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.planning.keeping.kept_plan import KeptPlan
    from studio_planner.planning.placing.chain_times import Ground
    from studio_planner.planning.placing.placer import Placer
    from studio_planner.planning.problem import Chain

_SPOTS_TRIED = 3


def kept_grounds(kept: KeptPlan, chain: Chain) -> tuple[Ground, ...]:
    """The old grounds, coat by coat; what had none stands where the coat beside it does.

    Empty when the chain had none at all.
    """
    old = kept.grounds(chain)
    fallback = next(iter(old.values()), None)
    if fallback is None:
        return ()
    grounds = []
    for index in range(len(chain.tasks)):
        fallback = old.get(index, fallback)
        grounds.append(fallback)
    return tuple(grounds)


def other_grounds(
    kept: KeptPlan, placer: Placer, chain: Chain, old: tuple[Ground, ...]
) -> Iterator[tuple[Ground, ...]]:
    """Other spots that are free all the while, for all pours that are still to come.

    None where the chain has no `old` grounds.
    """
    if not old:
        return
    starts = kept.starts_in(chain)
    last = max(starts)
    times = placer.finisher.times(Laid(chain, old, (), ()))
    begin = min(starts.values())
    until = times.handled(last, starts[last]) or placer.means.end
    spots = placer.means.shop.spots
    found = (
        ground
        for place in placer.grounds(chain)
        for ground in place
        if ground != old[-1] and all(spots[spot].holds(begin, until) for spot in ground.spots)
    )
    for _, ground in zip(range(_SPOTS_TRIED), found, strict=False):
        yield (ground,) * len(old)
