"""How far one touch test may move the likely time, whatever it says.

A posterior's median has no such limit: where the other tests leave much open, one that is
wrong by less than what is left open cannot be told from an honest one, and moves it by as much
as the posterior is wide. So the likely time is not the median f of all tests D, but what lies
nearest to it that no test can move by more than a limit c, made from below:

    L(nothing) = f(nothing);  L(D) = f(D), cut to max L(D - i) - c ... min L(D - i) + c

over every test i in D [1]_. The cut always leaves something: L(D - i) and L(D - j) are both
within c of L(D - i - j), so the highest is at most 2c above the lowest. Hence L(D) and L(D - i)
differ by no more than c, for all tests and any of them; where tests bear each other out, L is
the median. The price is paid where a single honest test decides: it waits for a second one.

References
----------
.. [1] F. Hampel et al., Robust Statistics: The Approach Based on Influence Functions (1986),
   section 2.1 (the worst that one value can do), and E. McShane, Extension of range of
   functions, Bull. Amer. Math. Soc. 40 (1934) (keeping a slope's limit), both from memory;
   the rule above is our own.
"""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.science.quantiles import quantile
from studio_planner.science.teaching_pours import chance

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from studio_planner.science.teaching_pours import PourEvidence, TeachingSettings

    Table = list[float]
    """How likely something is for each value of s."""

LIMITED = 8
"""So many tests are held to the limit; of more, those that move the median most."""

_NODES = tuple(0.8 * k for k in range(-3, 4))


def limited_likely(
    values: Sequence[float],
    weights: Sequence[float],
    pours: Sequence[PourEvidence],
    settings: TeachingSettings,
) -> float:
    """Return the likely s after all tests, within the limit of each of them [ln(hours)].

    Parameters
    ----------
    values, weights
        What is believed of s before the tests [ln(hours)], rising; its weights.
    pours
        The tests by pour. `slope` is not looked at: `sd` holds what it leaves open.
    settings
        Scatter of tests, the share of wild ones, and the limit.

    Examples
    --------
    One touch would have moved the likely time by a third; it moves it by a tenth.

    >>> from studio_planner.science.teaching_pours import PourEvidence, TeachingSettings
    >>> values = [n / 50 for n in range(-50, 51)]
    >>> weights = [math.exp(-((v / 0.25) ** 2) / 2) for v in values]
    >>> late = PourEvidence(0.0, 0.03, ((0.25, False),))
    >>> likely = limited_likely(values, weights, [late], TeachingSettings())
    >>> round(math.exp(likely), 2)
    1.1
    """
    believed = [list(weights)]
    for pour, loose in zip(pours, _loose(values, weights, pours, settings), strict=True):
        own = _subsets(pour, loose, values, settings)
        believed = [_both(known, table) for table in own for known in believed]
    medians = [_median(values, table) for table in believed]
    return _limited(medians, math.log1p(settings.most_moved))[-1]


def _limited(medians: Sequence[float], limit: float) -> list[float]:
    """Cut the median of each subset; the bits of its place say which tests are in it."""
    found: list[float] = []
    for place, median in enumerate(medians):
        smaller = [found[place ^ bit] for bit in _bits(place)] or [median]
        found.append(min(max(median, max(smaller) - limit), min(smaller) + limit))
    return found


def _bits(place: int) -> Iterator[int]:
    while place:
        yield place & -place
        place &= place - 1


def _subsets(
    pour: PourEvidence,
    loose: Sequence[bool],
    values: Sequence[float],
    settings: TeachingSettings,
) -> list[Table]:
    """Return how likely each subset of a pour's loose tests is, together with the others."""
    summed: list[Table] = []
    for node in _NODES:
        weight = math.exp(-(node**2) / 2)
        tables = [[weight] * len(values)]
        for test, free in zip(pour.tests, loose, strict=True):
            own = [chance(test, s + node * pour.sd, settings) for s in values]
            more = [_both(known, own) for known in tables]
            tables = [*tables, *more] if free else more
        summed = (
            [_sum(known, own) for known, own in zip(summed, tables, strict=True)]
            if summed
            else tables
        )
    return summed


def _loose(
    values: Sequence[float],
    weights: Sequence[float],
    pours: Sequence[PourEvidence],
    settings: TeachingSettings,
) -> list[list[bool]]:
    """Tell which tests are held to the limit: where there are many, what moves most alone."""
    if sum(len(pour.tests) for pour in pours) <= LIMITED:
        return [[True] * len(pour.tests) for pour in pours]
    tables = [[_of_one(pour, test, values, settings) for test in pour.tests] for pour in pours]
    every = list(weights)
    for table in (one for own in tables for one in own):
        every = _both(every, table)
    middle = _median(values, every)
    moves = [
        [abs(_median(values, _without(every, table)) - middle) for table in own]
        for own in tables
    ]
    ranked = sorted(
        ((move, n, m) for n, own in enumerate(moves) for m, move in enumerate(own)),
        reverse=True,
    )
    chosen = {(n, m) for _, n, m in ranked[:LIMITED]}
    return [[(n, m) in chosen for m in range(len(own))] for n, own in enumerate(moves)]


def _of_one(
    pour: PourEvidence,
    test: tuple[float, bool],
    values: Sequence[float],
    settings: TeachingSettings,
) -> Table:
    return _subsets(replace(pour, tests=(test,)), (False,), values, settings)[0]


def _both(one: Table, other: Table) -> Table:
    return [a * b for a, b in zip(one, other, strict=True)]


def _without(every: Table, one: Table) -> Table:
    return [a / b if b else 0.0 for a, b in zip(every, one, strict=True)]


def _sum(one: Table, other: Table) -> Table:
    return [a + b for a, b in zip(one, other, strict=True)]


def _median(values: Sequence[float], weights: Table) -> float:
    return quantile(values, weights, 0.5)
