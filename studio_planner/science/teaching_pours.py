"""How likely the touch tests of one pour are, for every deviation from the sheet."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence

NORMAL_90 = 1.6448536270
"""The 95 % quantile of the normal distribution (90 % lie within)."""

STEP = 0.012
"""Between two values of s in a table [ln(hours)]."""

_LOGISTIC = math.sqrt(3) / math.pi
_POUR_REACH = 3.0
_POUR_STEP = 0.7
_LARGEST_EXPONENT = 700.0


@dataclass(frozen=True, slots=True, kw_only=True)
class TeachingSettings:
    """What is assumed of tests and pours; a deviation is one of ln(hours).

    Attributes
    ----------
    pour_sd
        Deviation among pours of one product in one studio: film, bottles, weighing. 90 % of
        them are within 5 %, half of what a sheet's figure is given.
    test_sd
        Deviation of one touch: the finger, the place, the clock on the wall.
    wild_share
        Share of tests that say anything: another piece, the other verdict tapped.
    most_moved
        By what share one test may move the likely time (`teaching_limit`); a little less than
        a tenth, for a touch also changes the temperature that its pour speaks of.
    """

    pour_sd: float = 0.03
    test_sd: float = 0.08
    wild_share: float = 0.1
    most_moved: float = 0.099


@dataclass(frozen=True, slots=True)
class PourEvidence:
    """The tests of one pour: (ln of the share reached, whether already) of each.

    `slope` is how much of the slope its temperature feels, `sd` how far this pour may be
    from the studio's law on ln(hours).
    """

    slope: float
    sd: float
    tests: tuple[tuple[float, bool], ...]


def likeliness(pour: PourEvidence, reach: int, settings: TeachingSettings) -> list[float]:
    """Return ln of how likely a pour's tests are for s at -reach to reach steps.

    The pour's own deviation is summed over in whole steps; each touch is a step of logistic
    form, with a floor and a ceiling for wild ones.

    Examples
    --------
    >>> pour = PourEvidence(0.0, 0.03, ((0.0, True),))
    >>> table = likeliness(pour, 100, TeachingSettings())
    >>> [round(math.exp(table[n]), 2) for n in (0, 100, 200)]
    [0.95, 0.5, 0.05]
    """
    leap = max(1, round(_POUR_STEP * pour.sd / STEP))
    leaps = math.ceil(_POUR_REACH * pour.sd / (leap * STEP))
    pad = leap * leaps
    whole = [
        _all_of(pour.tests, n * STEP, settings) for n in range(-reach - pad, reach + pad + 1)
    ]
    shifts = range(-leaps, leaps + 1)
    weights = [math.exp(-((k * leap * STEP / pour.sd) ** 2) / 2) for k in shifts]
    total = math.fsum(weights)
    nodes = [(pad + k * leap, w / total) for k, w in zip(shifts, weights, strict=True)]
    return [math.log(sum(w * whole[n + at] for at, w in nodes)) for n in range(2 * reach + 1)]


def chance(test: tuple[float, bool], s: float, settings: TeachingSettings) -> float:
    """Return how likely one touch is where its film's time is exp(s) times the sheet's.

    Examples
    --------
    >>> round(chance((0.0, True), -0.2, TeachingSettings()), 2)
    0.94
    """
    log_share, already = test
    short = (s - log_share if already else log_share - s) / (settings.test_sd * _LOGISTIC)
    rest = 1 - settings.wild_share
    return settings.wild_share / 2 + rest / (1 + math.exp(min(short, _LARGEST_EXPONENT)))


def _all_of(tests: Sequence[tuple[float, bool]], s: float, settings: TeachingSettings) -> float:
    return math.prod(chance(test, s, settings) for test in tests)
