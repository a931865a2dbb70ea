"""The posterior of touch tests on a fixed grid, in plain Python.

Two axes: the first is what the tests feel at their own temperature, the second what turns
about it (an offset that a slope makes up for). A pour's tests depend on the truth only through
s at that pour's temperature, so that each pour is one table over s.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from statistics import NormalDist
from typing import TYPE_CHECKING

from studio_planner.science.quantiles import quantile
from studio_planner.science.teaching_pours import STEP, likeliness

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from studio_planner.science.teaching_pours import PourEvidence
    from studio_planner.science.teaching_prior import Prior

DEGREES_OF_FREEDOM = 8
"""Of Student's t, the prior's form."""

_REACH = 1.2
_TAIL = 7.0
_WIDEST_TURN = 0.5
_FINEST_TURN = 0.02
_NEGLIGIBLE = 1e-9
_BISECTIONS = 40
_SAME_SLOPE = 2


@dataclass(frozen=True, slots=True)
class Posterior:
    """What is believed after the tests.

    Attributes
    ----------
    values, weights
        s at the tests' own temperature [ln(hours)], rising, and its weights, which sum to 1.
    offset_mean, offset_sd
        The offset of the sheet's figures [ln(hours)].
    """

    values: tuple[float, ...]
    weights: tuple[float, ...]
    offset_mean: float
    offset_sd: float

    def quantile(self, share: float) -> float:
        """Return the s below which a share of the belief lies."""
        return quantile(self.values, self.weights, share)

    def next_pour(self, pour_sd: float) -> tuple[float, float]:
        """Return the 5 % and the 95 % quantile of s and a new pour's deviation together."""
        return self._mixed(0.05, pour_sd), self._mixed(0.95, pour_sd)

    def _mixed(self, share: float, pour_sd: float) -> float:
        cdf = NormalDist(0.0, pour_sd).cdf
        pairs = list(zip(self.values, self.weights, strict=True))
        low, high = self.values[0] - _REACH, self.values[-1] + _REACH
        for _ in range(_BISECTIONS):
            middle = (low + high) / 2
            if sum(w * cdf(middle - v) for v, w in pairs) < share:
                low = middle
            else:
                high = middle
        return (low + high) / 2


class TouchGrid:
    """The two axes, turned so that the first is s at the tests' own temperature.

    Parameters
    ----------
    prior
        What the sheet says.
    pours
        The tests by pour.
    """

    def __init__(self, prior: Prior, pours: Sequence[PourEvidence]) -> None:
        """Lay the axes out and look up how likely each pour's tests are."""
        self._prior = prior
        self._pours = pours
        slopes = [pour.slope for pour in pours]
        scale = math.hypot(prior.scale, prior.slope)
        self._along = prior.scale / scale, prior.slope / scale
        spread = max((abs(prior.slope - slope) for slope in slopes), default=0.0)
        felt = prior.scale * spread / scale
        turn = min(_WIDEST_TURN, _FINEST_TURN / felt) if felt else _WIDEST_TURN
        self._step = STEP / scale
        self._first = math.ceil(max(_REACH, _TAIL * scale) / STEP)
        self._turns = [n * turn for n in range(-int(_TAIL / turn), int(_TAIL / turn) + 1)]
        self.reach = self._farthest(max([prior.slope, *slopes]))
        self._sums = self._summed()

    def _farthest(self, widest: float) -> int:
        """Return how many steps any s of the grid is from the sheet's law at most."""
        across, up = self._along
        first, turn = self._first * self._step, self._turns[-1]
        offset = max(self._prior.scale_up, self._prior.scale_down) * (
            first * across + turn * up
        )
        return math.ceil((offset + widest * (first * up + turn * across)) / STEP) + 1

    def _cells(self, n: int) -> Iterator[tuple[float, float, float]]:
        """Yield (offset, slope, ln of the prior) of one row."""
        first = n * self._step
        across, up = self._along
        half = (DEGREES_OF_FREEDOM + 2) / 2
        prior = self._prior
        for turn in self._turns:
            a, b = first * across + turn * up, first * up - turn * across
            offset = a * (prior.scale_up if a > 0 else prior.scale_down)
            weight = -half * math.log1p((a * a + b * b) / DEGREES_OF_FREEDOM)
            yield offset, b, weight

    def posterior(self) -> Posterior:
        """Return what is believed after the tests; without any the prior comes back."""
        return self._believed(self._sums)

    def _summed(self) -> dict[float, list[float]]:
        sums: dict[float, list[float]] = {}
        for pour in self._pours:
            slope = round(pour.slope, _SAME_SLOPE)
            own = likeliness(pour, self.reach, self._prior.settings)
            known = sums.get(slope, [0.0] * len(own))
            sums[slope] = [a + b for a, b in zip(known, own, strict=True)]
        return sums

    def _believed(self, tables: dict[float, list[float]]) -> Posterior:
        rows = [self._row(n, tables) for n in range(-self._first, self._first + 1)]
        top = max(weight for row in rows for _, _, weight in row)
        values, weights = [], []
        total = first = second = 0.0
        for row in rows:
            own = [(s, a, math.exp(weight - top)) for s, a, weight in row]
            mass = math.fsum(w for _, _, w in own)
            if mass < _NEGLIGIBLE:
                continue
            values.append(math.fsum(w * s for s, _, w in own) / mass)
            weights.append(mass)
            total += mass
            first += math.fsum(w * a for _, a, w in own)
            second += math.fsum(w * a * a for _, a, w in own)
        mean = first / total
        return Posterior(
            values=tuple(values),
            weights=tuple(weight / total for weight in weights),
            offset_mean=mean,
            offset_sd=math.sqrt(max(second / total - mean * mean, 0.0)),
        )

    def _row(
        self, n: int, tables: dict[float, list[float]]
    ) -> list[tuple[float, float, float]]:
        """Return (s at the tests' temperature, offset, ln of its weight) of each cell."""
        felt = self._prior.slope
        cells = []
        for offset, slope, weight in self._cells(n):
            for own, table in tables.items():
                place = (offset + slope * own) / STEP + self.reach
                whole = int(place)
                part = place - whole
                weight += table[whole] * (1 - part) + table[whole + 1] * part  # noqa: PLW2901
            cells.append((offset + slope * felt, offset, weight))
        return cells
