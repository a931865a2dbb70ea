"""Rehearses a plan: the same plan, followed through many weeks that might come.

Each week has its own room (the forecast and an error that fades), its own cure (how far the
laws of a product are off) and its own maker (late, and slower than planned). Weeks are
simulated some hundreds at a time, which keeps the memory small; the same seed gives the same
weeks.
"""

from __future__ import annotations

import math
from datetime import time, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import instant
from studio_planner.planning.rehearsal.causes import first_wrong
from studio_planner.planning.rehearsal.chances import Chances
from studio_planner.planning.rehearsal.fates import World
from studio_planner.planning.rehearsal.films import Films, scattered
from studio_planner.planning.rehearsal.following import follow
from studio_planner.planning.rehearsal.rehearsed import CoatHeld, OrderHeld, Rehearsed
from studio_planner.planning.rehearsal.rooms import forecast, grid_over, simulated
from studio_planner.planning.rehearsal.work import work_of

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence
    from datetime import datetime
    from zoneinfo import ZoneInfo

    from numpy.random import Generator, SeedSequence

    from studio_planner.craft.orders import Order
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.rehearsal.arrays import Flags, Floats
    from studio_planner.planning.rehearsal.fates import Followed
    from studio_planner.planning.rehearsal.rooms import Forecast, Grid

_AT_ONCE = 250
"""Weeks that are simulated together."""

_LOOK_BACK = timedelta(days=60)
"""A film poured longer ago counts from then on."""

_LOOK_AHEAD = timedelta(days=14)
"""What is not done so long after the plan's end counts as never done."""

_LATEST = 0.10
"""The share of weeks in which less spare may be left than is told."""

_SECONDS_PER_MINUTE = 60.0
_SECONDS_PER_HOUR = 3600.0

_AS_STATED = Chances()


def rehearse(
    studio: Studio,
    plan: Plan,
    *,
    weeks: int = 1000,
    seed: int = 0,
    chances: Chances = _AS_STATED,
) -> Rehearsed:
    """Follow a plan through simulated weeks.

    Parameters
    ----------
    studio, plan
        The studio the plan was made for.
    weeks
        How many weeks are simulated, one or more.
    seed
        Chooses the weeks.
    chances
        What may turn out otherwise, and by how much.

    Raises
    ------
    ValueError
        When no week is asked for.
    """
    if weeks < 1:
        raise ValueError(f"A plan is rehearsed in one week or more, not in {weeks}.")
    from numpy.random import SeedSequence

    grid = grid_of(plan)
    zone = studio.time_zone
    forecasts = {one.key: forecast(one, zone, grid, chances) for one in studio.places}
    parts = []
    counts = [min(_AT_ONCE, weeks - done) for done in range(0, weeks, _AT_ONCE)]
    for count, child in zip(counts, SeedSequence(seed).spawn(len(counts)), strict=True):
        world = _world(studio, plan, grid, forecasts, count, child, chances)
        parts.append(follow(studio, plan, world))
    return Rehearsed(
        weeks=weeks,
        coats=tuple(_coats(studio, plan, parts)),
        orders=tuple(_order(studio, plan, order, parts) for order in studio.orders),
    )


def grid_of(plan: Plan) -> Grid:
    """From the oldest film that still counts to some time after everything is planned."""
    starts = [coat.start for coat in plan.coats if coat.poured]
    ends = [coat.end for coat in plan.coats] + [step.end for step in plan.steps]
    start = max(min([plan.start, *starts]), plan.start - _LOOK_BACK)
    return grid_over(start, max([plan.start, *ends]) + _LOOK_AHEAD)


def _world(  # noqa: PLR0913, PLR0917 - a world has this many sides
    studio: Studio,
    plan: Plan,
    grid: Grid,
    forecasts: dict[str, Forecast],
    weeks: int,
    seed: SeedSequence,
    chances: Chances,
) -> World:
    from numpy.random import default_rng

    # Each kind of chance has numbers of its own, so that more of one leaves the others alone.
    rooms, laws, maker = map(default_rng, seed.spawn(3))
    air = {place: simulated(rooms, weeks, expected) for place, expected in forecasts.items()}
    films = Films(grid, air, scattered(laws, weeks, studio.products, chances), studio.products)
    late, slower = delays(maker, (weeks, len(work_of(studio, plan))), chances)
    return World(grid, films, late, slower)


def delays(rng: Generator, shape: tuple[int, int], chances: Chances) -> tuple[Floats, Floats]:
    """By how much each work of each week starts late [s], and how many times as long it is."""
    import numpy as np

    middle = math.log(chances.late_middle_minutes * _SECONDS_PER_MINUTE)
    late = np.exp(middle + chances.late_spread * rng.standard_normal(shape))
    slower = rng.uniform(0.0, chances.slowest - 1.0, shape)
    return chances.maker * late, 1.0 + chances.maker * slower


def _coats(studio: Studio, plan: Plan, parts: Sequence[Followed]) -> Iterator[CoatHeld]:
    firsts = [first_wrong(studio, plan, part) for part in parts]
    for coat in plan.coats:
        if not coat.poured:
            yield CoatHeld(
                number=coat.number,
                held=_share([part.coats[coat.number].held for part in parts]),
                wrong_first=_share([first[coat.number] for first in firsts]),
            )


def _order(studio: Studio, plan: Plan, order: Order, parts: Sequence[Followed]) -> OrderHeld:
    import numpy as np

    zone = studio.time_zone
    due = order.due(zone).timestamp()
    planned = next((one.leaves for one in plan.outcomes if one.order == order.key), None)
    leaves = np.concatenate([part.leaves[order.key] for part in parts])
    cured = ~np.concatenate([part.raw[order.key] for part in parts])
    spare = float(np.quantile((due - leaves) / _SECONDS_PER_HOUR, _LATEST, method="lower"))
    return OrderHeld(
        order=order.key,
        held=_share([(leaves <= due) & cured]),
        day_held=None
        if planned is None
        else _share([(leaves < _day_after(planned, zone)) & cured]),
        spare_hours=spare if math.isfinite(spare) else None,
    )


def _day_after(when: datetime, zone: ZoneInfo) -> float:
    """When the local day of an instant is over [s]."""
    return instant(zone, when.astimezone(zone).date() + timedelta(days=1), time(0)).timestamp()


def _share(flags: Sequence[Flags]) -> float:
    return float(sum(int(part.sum()) for part in flags) / sum(len(part) for part in flags))
