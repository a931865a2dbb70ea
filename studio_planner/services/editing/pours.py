"""Writing down what was poured: the coats of one mix, and what was poured before them."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.log import Poured

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import datetime

    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio


def mix_of(plan: Plan, coat: PlannedCoat) -> tuple[PlannedCoat, ...]:
    """All coats that are poured from the same mix as a coat, itself among them."""
    return tuple(one for one in plan.coats if one.mix == coat.mix)


def with_pour(
    studio: Studio, coats: Iterable[PlannedCoat], start: datetime, end: datetime
) -> Studio:
    """Write down that planned coats were poured from `start` to a later `end` (aware).

    Coats below them that the plan had before and that nobody has written down count as poured
    at their planned times, since nothing can lie on a coat that is not there. Pins of what is
    poured are let go.
    """
    plan = studio.plan
    done = {(pour.piece, pour.coat) for pour in studio.poured}
    rows = list(studio.poured)
    for coat in coats:
        if (coat.piece, coat.coat) in done:
            continue
        for earlier in _before(plan, coat):
            if (earlier.piece, earlier.coat) not in done:
                rows.append(_row(earlier, earlier.start, min(earlier.end, start)))
                done.add((earlier.piece, earlier.coat))
        rows.append(_row(coat, start, end))
        done.add((coat.piece, coat.coat))
    pins = tuple(pin for pin in studio.pins if (pin.piece, pin.coat) not in done)
    return replace(studio, poured=tuple(rows), pins=pins)


def _before(plan: Plan | None, coat: PlannedCoat) -> list[PlannedCoat]:
    coats = plan.coats if plan else ()
    rows = [one for one in coats if one.piece == coat.piece and one.start < coat.start]
    return sorted(rows, key=lambda one: one.start)


def _row(coat: PlannedCoat, start: datetime, end: datetime) -> Poured:
    return Poured(
        piece=coat.piece,
        coat=coat.coat,
        start=start,
        end=end,
        spot=coat.spot,
        joint=coat.joint,
    )
