"""When films reach their stages in simulated weeks.

The share of a stage that passes in a cell is its length over t(T), T the cell's mean
temperature; running sums over the cells of a week answer every question by bisection. All
weeks lie one after the other in one rising row, each starting above the end of the one
before, so that one search serves them all.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, NamedTuple

from studio_planner.planning.rehearsal.chances import NORMAL_90
from studio_planner.planning.rehearsal.rooms import CELL_SECONDS
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from numpy.random import Generator

    from studio_planner.craft.products import Product
    from studio_planner.planning.rehearsal.arrays import Floats, Whole
    from studio_planner.planning.rehearsal.chances import Chances
    from studio_planner.planning.rehearsal.rooms import Grid
    from studio_planner.science.laws import StageLaw

_STEPS_PER_DEGREE = 256
"""Laws are read off tables this fine; half a step is a film's minute in four days."""

_SECONDS_PER_HOUR = 3600.0

Scatter = dict[tuple[str, Stage], "Floats"]
"""By how many standard deviations ln t of a product's stage is off, (weeks,)."""


class Leg(NamedTuple):
    """A place, and the second from which a piece is there (weeks,)."""

    place: str
    since: Floats


def scattered(
    rng: Generator, weeks: int, products: Sequence[Product], chances: Chances
) -> Scatter:
    """Draw how far each law is off, once for every product, stage and week.

    Stages of one product err together: one draw for the product and a smaller one for the
    stage add up to variance 1.
    """
    shared, own = math.sqrt(chances.together), math.sqrt(1.0 - chances.together)
    drawn: Scatter = {}
    for product in products:
        common = rng.standard_normal(weeks)
        for stage in Stage:
            mixed = shared * common + own * rng.standard_normal(weeks)
            drawn[product.key, stage] = chances.laws * mixed
    return drawn


class Films:
    """The stages of every product in the air of simulated weeks."""

    def __init__(
        self,
        grid: Grid,
        celsius: Mapping[str, Floats],
        scatter: Scatter,
        products: Sequence[Product],
    ) -> None:
        """Take the temperatures [°C] of each place (weeks, cells) and the laws' scatter."""
        import numpy as np

        self._grid = grid
        self._scatter = scatter
        self._products = {product.key: product for product in products}
        lows = [float(air.min()) for air in celsius.values()]
        highs = [float(air.max()) for air in celsius.values()]
        self._coldest = math.floor(min(lows))
        steps = (math.ceil(max(highs)) - self._coldest) * _STEPS_PER_DEGREE + 1
        self._table = self._coldest + np.arange(steps) / _STEPS_PER_DEGREE
        self._steps: dict[str, Whole] = {
            place: ((air - self._coldest) * _STEPS_PER_DEGREE + 0.5).astype(np.intp)
            for place, air in celsius.items()
        }
        self._laws: dict[tuple[str, Stage], StageLaw | None] = {}
        self._sums: dict[tuple[str, Stage, str], _Sums] = {}

    def knows(self, product: Product, stage: Stage) -> bool:
        """Whether the product's sheet tells about the stage."""
        return self._law(product, stage) is not None

    def reached(self, product: Product, stage: Stage, legs: Sequence[Leg]) -> Floats:
        """When a film spread at the first leg's instant reaches a stage [s], (weeks,).

        Infinite where it does not before the grid ends, where it is never spread, or when the
        sheet lacks the stage.
        """
        import numpy as np

        if not self.knows(product, stage):
            return np.full_like(legs[0].since, math.inf)
        only = self._sums_of(product, stage, legs[0].place)
        if len(legs) == 1:
            return only.reached(legs[0].since, 1.0)
        missing = np.ones_like(legs[0].since)
        found = np.full_like(missing, math.inf)
        ends = [leg.since for leg in legs[1:]] + [np.full_like(missing, math.inf)]
        for (place, since), until in zip(legs, ends, strict=True):
            sums = self._sums_of(product, stage, place)
            when = sums.reached(since, missing)
            found = np.where((when <= until) & (found == math.inf), when, found)
            missing = np.maximum(missing - sums.passed(since, until), 0.0)
        return found

    def _law(self, product: Product, stage: Stage) -> StageLaw | None:
        key = product.key, stage
        if key not in self._laws:
            self._laws[key] = self._products[product.key].law(stage)
        return self._laws[key]

    def _sums_of(self, product: Product, stage: Stage, place: str) -> _Sums:
        key = product.key, stage, place
        if key not in self._sums:
            rates = self._rates(product, stage, self._steps[place])
            self._sums[key] = _Sums(rates * CELL_SECONDS, self._grid.start)
        return self._sums[key]

    def _rates(self, product: Product, stage: Stage, steps: Whole) -> Floats:
        """The share that passes in a second, (weeks, cells)."""
        import numpy as np

        law = self._law(product, stage)
        assert law is not None  # noqa: S101 - asked before
        celsius, minimum = self._table, product.minimum_celsius
        if minimum is not None and stage.not_after:
            celsius = np.maximum(celsius, minimum)
        likely, down, up = _log_hours(law, celsius)
        rates: Floats = np.exp(-likely) / _SECONDS_PER_HOUR
        if minimum is not None and stage.not_before:
            rates[celsius < minimum] = 0.0
        off = self._scatter[product.key, stage] / NORMAL_90
        if not off.any():
            known: Floats = rates[steps]
            return known
        widths = np.stack([down, up])
        side = (off > 0.0).astype(np.intp) * len(celsius)
        slowed: Floats = widths.ravel()[steps + side[:, None]]
        slowed *= -off[:, None]
        np.exp(slowed, out=slowed)
        slowed *= rates[steps]
        return slowed


def _log_hours(law: StageLaw, celsius: Floats) -> tuple[Floats, Floats, Floats]:
    """Likely ln(hours), and the widths to the early and the late edge, at temperatures.

    Worked out at the kinks of the law and eight times a degree, straight between two.
    """
    import numpy as np

    kinks = [k for k in law.kinks() if celsius[0] < k < celsius[-1]]
    knots = sorted({float(celsius[0]), float(celsius[-1]), *kinks, *_every_eighth(celsius)})
    likely = [math.log(law.hours(knot)) for knot in knots]
    early = [math.log(law.hours(knot, Edge.EARLY)) for knot in knots]
    late = [math.log(law.hours(knot, Edge.LATE)) for knot in knots]
    curves = [np.interp(celsius, knots, values) for values in (likely, early, late)]
    return curves[0], curves[0] - curves[1], curves[2] - curves[0]


def _every_eighth(celsius: Floats) -> list[float]:
    return [float(one) for one in celsius[:: _STEPS_PER_DEGREE // 8]]


class _Sums:
    """Running sums of one stage's shares in one place, all weeks in one rising row."""

    def __init__(self, shares: Floats, start: float) -> None:
        """Add up the shares (weeks, cells) from `start` [s] on."""
        import numpy as np

        weeks, self._cells = shares.shape
        sums = np.empty((weeks, self._cells + 1))
        sums[:, 0] = 0.0
        np.cumsum(shares, axis=1, out=sums[:, 1:])
        sums += np.arange(weeks)[:, None] * (math.ceil(float(sums[:, -1].max())) + 2.0)
        self._start = start
        self._row = sums.ravel()
        self._first = np.arange(weeks, dtype=np.intp) * (self._cells + 1)
        self._last = self._row[self._first + self._cells]

    def passed(self, start: Floats, end: Floats) -> Floats:
        """The share that passes between two instants, nothing where the end is earlier."""
        import numpy as np

        return np.maximum(self._at(end) - self._at(start), 0.0)

    def reached(self, start: Floats, share: Floats | float) -> Floats:
        """When `share` has passed since `start` [s]; infinite where it does not in the grid."""
        import numpy as np

        wanted = self._at(start) + share
        never = wanted > self._last
        found = np.searchsorted(self._row, np.minimum(wanted, self._last))
        found = np.maximum(found, self._first + 1)
        below = self._row[found - 1]
        rise = self._row[found] - below
        part = np.clip((wanted - below) / np.where(rise > 0.0, rise, 1.0), 0.0, 1.0)
        when = self._start + CELL_SECONDS * (found - 1 - self._first + part)
        return np.where(never, math.inf, np.maximum(when, start))

    def _at(self, when: Floats) -> Floats:
        import numpy as np

        cell = np.clip((when - self._start) / CELL_SECONDS, 0.0, self._cells)
        whole = np.minimum(cell.astype(np.intp), self._cells - 1)
        index = self._first + whole
        below = self._row[index]
        result: Floats = below + (cell - whole) * (self._row[index + 1] - below)
        return result
