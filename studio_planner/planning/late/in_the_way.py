"""Which other orders stand on the shelf and take the hands when an order would be made."""

from __future__ import annotations

from collections import Counter
from typing import TYPE_CHECKING

from studio_planner.craft.log_legs import stays_along
from studio_planner.craft.plans import StepKind
from studio_planner.planning.late.booked import Takes, spot_freed
from studio_planner.planning.late.ladder import Rung
from studio_planner.planning.saying import owner_said

if TYPE_CHECKING:
    from studio_planner.craft.orders import Order
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.planning.late.fitting import Fit
    from studio_planner.planning.late.ladder import Ladder
    from studio_planner.planning.problem import Chain

_MOST_ASKED = 6
"""Others without whom an order is placed once more, to see whether it is they."""

_STEPS_WITH_HANDS = {StepKind.SAND, StepKind.TURN, StepKind.PACK}


def span_of(ladder: Ladder, order: Order, fit: Fit | None) -> tuple[int, int]:
    """The last days, in seconds, in which an order could be made in time as it was fitted.

    As long as from its first new pour to its packing, up to its date.
    """
    due = int(order.due(ladder.studio.time_zone).timestamp())
    begin = int(ladder.plan.start.timestamp())
    if fit is None or fit.packed is None:
        return begin, max(begin, due)
    starts = (one.starts[one.chain.first] for one in fit.placed if _pours(one.chain))
    length = fit.packed - min(starts, default=fit.packed)
    return max(begin, due - length), max(due, fit.packed)


def _pours(chain: Chain) -> bool:
    return chain.first < len(chain.tasks)


def fitting_spots(ladder: Ladder, order: Order) -> set[str]:
    """The spots that can hold any piece of an order."""
    pieces = [ladder.studio.piece(key) for key in order.pieces]
    return {
        spot.key for spot in ladder.studio.spots if any(piece.fits(spot) for piece in pieces)
    }


def standing(ladder: Ladder, order: Order, fit: Fit | None) -> Counter[str]:
    """Seconds that other orders stand on the spots that an order could use, by name."""
    low, high = span_of(ladder, order, fit)
    usable = fitting_spots(ladder, order)
    means = ladder.fitter(Rung.SPOTS).empty()
    following: dict[str, PlannedCoat] = {}
    taken: Counter[str] = Counter()
    for coat in sorted(ladder.plan.coats, key=lambda one: one.start, reverse=True):
        after, following[coat.piece] = following.get(coat.piece), coat
        if coat.piece in order.pieces:
            continue
        product = ladder.studio.product(ladder.studio.piece(coat.piece).coat(coat.coat).product)
        until = min(spot_freed(means, product, coat, after), high)
        for spot, since, left in stays_along(means.legs(coat), until):
            if spot in usable and left > low:
                taken[owner_said(ladder.studio, coat.piece)] += left - max(since, low)
    return taken


def without_whom(ladder: Ladder, order: Order) -> list[str]:
    """Those without whose pieces an order would find its spots in time, by name.

    Each of them alone where there is such a one, who stands longest first; else as many as it
    takes together. None where not even all of them would be enough.
    """
    names = [name for name, _ in standing(ladder, order, None).most_common(_MOST_ASKED)]
    pieces: dict[str, set[str]] = {}
    for coat in ladder.plan.coats:
        pieces.setdefault(owner_said(ladder.studio, coat.piece), set()).add(coat.piece)

    def in_time(*away: str) -> bool:
        left = {key for name in away for key in pieces[name]}
        return ladder.fitter(Rung.SPOTS).fit(order, Takes.SPOTS, left).late == 0

    alone = [name for name in names if in_time(name)]
    together = (names[: count + 1] for count in range(len(names)))
    return alone or next((some for some in together if in_time(*some)), [])


def working(ladder: Ladder, order: Order, fit: Fit | None) -> Counter[str]:
    """Seconds of hands that other orders take while an order would be made, by name."""
    low, high = span_of(ladder, order, fit)
    spans: dict[tuple[str, float, float], str] = {}
    for coat in ladder.plan.coats:
        if not coat.poured and coat.piece not in order.pieces:
            # Coats of one mix are one block of hands.
            span = coat.person, coat.start.timestamp(), coat.end.timestamp()
            spans.setdefault(span, owner_said(ladder.studio, coat.piece))
    for step in ladder.plan.steps:
        if step.kind in _STEPS_WITH_HANDS and step.piece not in order.pieces:
            span = step.person, step.start.timestamp(), step.end.timestamp()
            spans.setdefault(span, owner_said(ladder.studio, step.piece))
    taken: Counter[str] = Counter()
    for (_, start, end), name in spans.items():
        seconds = min(end, high) - max(start, low)
        if seconds > 0:
            taken[name] += int(seconds)
    return taken
