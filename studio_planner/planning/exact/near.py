"""A model of the lanes that a foreseen plan wants elsewhere, each coat near where it is wanted.

Each gives way a little, so that the mixes can be shared which the plan foresees.
"""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal
from studio_planner.planning.exact.all_lanes import MOST_COATS, all_placed
from studio_planner.planning.exact.hints import Hints
from studio_planner.planning.exact.part import Freedom
from studio_planner.planning.exact.promised import HOUR
from studio_planner.planning.exact.standing_plan import same_place
from studio_planner.planning.exact.tries import MUCH, Try, aimed

if TYPE_CHECKING:
    from collections.abc import Collection, Sequence

    from studio_planner.planning.exact.draft import Draft
    from studio_planner.planning.exact.foreseen import Wish
    from studio_planner.planning.exact.lanes import Lane, Pour
    from studio_planner.planning.exact.part import Parts, Standing

_NEAR = 1800
"""Seconds by which a plan may be later than was foreseen: parts make it better sooner."""

_IN_DAYS = 2 * 86_400
"""As `_NEAR`, for a rough plan: some pieces may miss the pick-up that they should make."""

_NEARLY = 3
"""How many more pours may move than was foreseen."""

_ALL, _SOME, _WHOLE_DAYS = 2.5, 2.0, 5.0
"""How much more than a part it may cost: with all lanes freed, with some, and with all freed
through whole days."""

_BY_COATS = 1.5
"""By which power of the number of coats all lanes cost more, where they are many: three hundred
take 1 to 5 seconds."""

_MOST_LANES = 28
"""Lanes that are freed for a plan beside the one that stands: with more of them hardly anything
is found in time."""

_GIVE_WAY = (0.1, 0.25)
"""Days by which those of them give way that are not wanted on other days."""

_PARTNERS = 8640
"""Seconds within which a coat may come to share a mix with one that is wanted elsewhere."""


def near(parts: Parts, standing: Standing, wish: Wish, seed: int) -> Try | None:
    """The lanes of a plan near a foreseen one; None when there is no room for it."""
    if wish.beside is None:
        return _all(parts, standing, wish)
    return _some(parts, wish.beside, wish, seed)


def _all(parts: Parts, standing: Standing, wish: Wish) -> Try | None:
    """All lanes; as soon as what was foreseen, or `loosely` just sooner than what stands.

    The first is found soonest if nothing else is asked for; but where a kept plan draws, it is
    asked for with few moves.
    """
    lanes, again = all_placed(standing), bool(parts.frame.before)
    little = lanes if wish.days is None else frozenset()
    draft = _draft(parts, standing, wish, Freedom(lanes, beside=little))
    if draft is None:
        return None
    now = round(standing.worth.late * HOUR)
    later, effort = (_NEAR, _ALL) if wish.days is None else (_IN_DAYS, _WHOLE_DAYS)
    most = min(round(wish.plan.worth.late * HOUR) + later, now - 1)
    draft.model.at_least(now - 1 if wish.loosely else most, draft.goals.late)
    hoped = None
    if wish.loosely:
        draft.model.aim(aimed(draft, Goal.LATENESS))
        hoped = (most + 1) * (MUCH // draft.grid.step)
    elif again:
        draft.model.halves = True
        draft.model.aim(aimed(draft, Goal.MOVED))
        hoped = (wish.plan.worth.moved + _NEARLY) * MUCH
    return Try(
        goal=Goal.LATENESS,
        standing=standing,
        lanes=lanes,
        draft=draft,
        effort=_by_size(standing) * (1.0 if again else effort),
        replaces=True,
        hoped=hoped,
        wish=wish,
    )


def _some(parts: Parts, standing: Standing, wish: Wish, seed: int) -> Try | None:
    """The lanes that are wanted elsewhere, and those that may share mixes with them.

    Anything sooner than what stands will do, and what was foreseen is enough.
    """
    moved = _moved(standing, wish.plan)
    lanes = moved | _bound(standing, wish.plan, moved)
    freed = Freedom(lanes, beside=lanes)
    if wish.days is not None:
        around = _GIVE_WAY[seed % len(_GIVE_WAY)]
        freed = Freedom(lanes, beside=lanes - moved, beside_days=around)
    draft = _draft(parts, standing, wish, freed)
    if draft is None:
        return None
    now = _late(parts, standing, lanes)
    most = min(_late(parts, wish.plan, lanes) + _NEAR, now - 1)
    draft.model.at_least(now - 1, draft.goals.late)
    draft.model.aim(aimed(draft, Goal.LATENESS))
    return Try(
        goal=Goal.LATENESS,
        standing=standing,
        lanes=lanes,
        draft=draft,
        seed=seed,
        effort=_SOME,
        hoped=(most + 1) * (MUCH // draft.grid.step),
        wish=wish,
    )


def _draft(parts: Parts, standing: Standing, wish: Wish, freed: Freedom) -> Draft | None:
    freedom = replace(freed, all_mixes=True, as_placed=not wish.loosely, whole_days=wish.days)
    draft = parts.draft(standing, freedom, wish.plan)
    if draft is not None and wish.days is None:
        draft.model.as_it_is = True
        draft.model.hint(Hints(draft).values.values())
    return draft


def _late(parts: Parts, standing: Standing, lanes: Collection[int]) -> int:
    return parts.values([standing.lanes[at] for at in sorted(lanes)])[Goal.LATENESS]


def _by_size(standing: Standing) -> float:
    return math.pow(max(1.0, standing.new_coats / MOST_COATS), _BY_COATS)


# Which lanes


def _moved(standing: Standing, wanted: Standing) -> frozenset[int]:
    """Lanes that are wanted elsewhere."""
    pairs = enumerate(zip(standing.lanes, wanted.lanes, strict=True))
    return frozenset(at for at, (one, other) in pairs if not same_place(one, other))


def _bound(standing: Standing, wanted: Standing, moved: frozenset[int]) -> frozenset[int]:
    """What lanes that are wanted elsewhere are bound to, and the nearest to share with.

    They are bound to the other pieces of their orders, and to whom they share a mix with now.
    """
    orders = {_order(standing.lanes[at]) for at in moved} - {None}
    mixes = {mix for at in moved for mix in _mixes(standing.lanes[at])}
    bound = {
        at
        for at, lane in enumerate(standing.lanes)
        if lane.placed is not None and (_order(lane) in orders or mixes & _mixes(lane))
    }
    points = [pour for at in moved for pour in wanted.lanes[at].pours]
    free = moved | bound
    partners = sorted(
        (apart, at)
        for at, lane in enumerate(standing.lanes)
        if at not in free and (apart := _apart(lane.pours, points)) < _PARTNERS
    )
    more = max(0, _MOST_LANES - len(free))
    return frozenset(bound | {at for _, at in partners[:more]})


def _order(lane: Lane) -> str | None:
    return None if lane.chain.order is None else lane.chain.order.key


def _mixes(lane: Lane) -> set[str]:
    """The mixes that a lane shares."""
    return set() if lane.placed is None else set(lane.placed.laid.mixes) - {""}


def _apart(ones: Sequence[Pour], others: Sequence[Pour]) -> int:
    """How many seconds two of the same kind are apart, at least."""
    return min(
        (abs(when - then) for kind, when in ones for other, then in others if kind == other),
        default=_PARTNERS,
    )
