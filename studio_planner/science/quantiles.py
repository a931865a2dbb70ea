"""Quantiles of a belief that is known as weights of some values."""

from __future__ import annotations

import math
from bisect import bisect_left
from itertools import accumulate
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence


def quantile(values: Sequence[float], weights: Sequence[float], share: float) -> float:
    """Return the value below which a share of all the weight lies.

    The weight of each value lies half below and half above it, and evenly in between; the
    first two and the last two values are continued beyond them.

    Parameters
    ----------
    values
        Two or more, rising; in any unit.
    weights
        One for each value, not negative and not all zero; their sum does not matter.
    share
        From 0 to 1; 0.5 gives the median.

    Examples
    --------
    >>> quantile([1.0, 2.0, 3.0], [1.0, 2.0, 1.0], 0.5)
    2.0
    >>> round(quantile([1.0, 2.0, 3.0], [1.0, 2.0, 1.0], 0.25), 2)
    1.33
    """
    middles = [
        reached - weight / 2
        for reached, weight in zip(accumulate(weights), weights, strict=True)
    ]
    wanted = share * math.fsum(weights)
    after = min(max(bisect_left(middles, wanted), 1), len(middles) - 1)
    part = (wanted - middles[after - 1]) / (middles[after] - middles[after - 1])
    return values[after - 1] * (1 - part) + values[after] * part
