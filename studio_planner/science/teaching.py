"""What touch tests teach of a stage: the sheet's law as prior, each test an open interval.

A touch says only "already" or "not yet": the film's true time lies before or after it. The
truth is ln(hours) = ln(hours of the sheet) + s(T), and s is not known: at a figure of the sheet
it is an offset a, away from the figures a slope b joins in, s = a + b*g(T). Both are drawn from
the sheet's own bands, which hold 90 % in all [1]_, pours among themselves included. Their
distribution has wider tails than a normal one, so that tests which flatly disagree with a sheet
win. Every pour deviates from the studio's law by an own amount, which all its tests share;
every test has its scatter; and a small share of the tests is wild and says anything. How far
one of eight tests may move the likely time is limited besides (`teaching_limit`); the band is
the posterior's, stretched where the likely time would lie outside it.

References
----------
.. [1] A. Gelman et al., Bayesian Data Analysis, 3rd ed. (2013), chapters 8 (censored data) and
   17 (robust inference; Student's t), from memory. The deviations in `TeachingSettings` are
   assumed: no published figures were at hand.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from itertools import groupby
from statistics import fmean
from typing import TYPE_CHECKING

from studio_planner.science.curves import COLDEST_CELSIUS, WARMEST_CELSIUS, kelvin
from studio_planner.science.teaching_grid import TouchGrid
from studio_planner.science.teaching_limit import limited_likely
from studio_planner.science.teaching_pours import NORMAL_90, PourEvidence, TeachingSettings
from studio_planner.science.teaching_prior import TAIL_90, Prior

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.science.laws import StageLaw

_LEAST_SHARE = 1e-3
_BISECTIONS = 50
_EVERY = 2


@dataclass(frozen=True, slots=True)
class FilmTest:
    """One touch of a film, in the sheet's own measure.

    Attributes
    ----------
    pour
        Which pour the film is of; tests of one pour share its deviation.
    share
        Share of the stage reached by the sheet's likely law when the film was touched [-].
    celsius
        Steady temperature at which the film would have come as far [°C].
    already
        Whether the film had reached the stage.
    room_band
        How far the room may have been from what was recorded, either way at 90 % [°C].
    """

    pour: str
    share: float
    celsius: float
    already: bool
    room_band: float = 0.0


@dataclass(frozen=True, slots=True)
class Lesson:
    """What tests taught of a stage; factors are on the sheet's likely hours.

    Attributes
    ----------
    celsius
        The temperature the tests speak of [°C].
    factor
        The studio's likely hours over the sheet's, at that temperature [-].
    law_early, law_late
        The studio's law lies between these factors at 90 % [-].
    early, late
        The next pour's own time lies between these factors at 90 % [-].
    sheet_factor
        What the sheet's own figures have to be multiplied by [-].
    band_left
        Share of the bands of the sheet's figures that is left, 0 to 1 [-].
    tests, pours
        How many tests, of how many pours, it rests on.
    """

    celsius: float
    factor: float
    law_early: float
    law_late: float
    early: float
    late: float
    sheet_factor: float
    band_left: float
    tests: int
    pours: int


_DEFAULT_SETTINGS = TeachingSettings()


def taught_by(
    law: StageLaw, tests: Sequence[FilmTest], *, settings: TeachingSettings = _DEFAULT_SETTINGS
) -> Lesson | None:
    """Return what tests teach of a stage, None without a test.

    Parameters
    ----------
    law
        The data sheet's law of the stage.
    tests
        This studio's tests of films of that product, in any order.
    settings
        Scatter of tests and pours, and the share of wild tests.

    Examples
    --------
    >>> from studio_planner.science.laws import SheetFigure, stage_law
    >>> from studio_planner.science.stages import Stage
    >>> sheet = stage_law(Stage.RECOAT_OPENS, [SheetFigure(23, 4)])
    >>> later = [FilmTest(str(n), share, 15.0, share > 1.4) for n, share in
    ...          enumerate((0.9, 1.1, 1.25, 1.3, 1.5, 1.6, 1.3, 1.55))]
    >>> lesson = taught_by(sheet, later)
    >>> lesson.tests, 1.2 < lesson.factor < 1.5, lesson.late < 1.7
    (8, True, True)
    """
    if not tests:
        return None
    centre = _mean_celsius(tests)
    prior = Prior(law, centre, settings)
    evidence = [_evidence(own, law, prior) for own in _by_pour(tests)]
    found = TouchGrid(prior, evidence).posterior()
    likely = _likely(prior, evidence)
    early, late = found.next_pour(settings.pour_sd)
    return Lesson(
        celsius=centre,
        factor=math.exp(likely),
        law_early=math.exp(min(found.quantile(0.05), likely)),
        law_late=math.exp(max(found.quantile(0.95), likely)),
        early=math.exp(min(early, likely)),
        late=math.exp(max(late, likely)),
        sheet_factor=math.exp(found.offset_mean),
        band_left=prior.band_left(math.hypot(found.offset_sd, settings.pour_sd) * NORMAL_90),
        tests=len(tests),
        pours=len(evidence),
    )


def steady_celsius(law: StageLaw, hours: float) -> float:
    """Return the steady temperature [°C] at which a law's likely time is `hours`.

    Examples
    --------
    >>> from studio_planner.science.laws import SheetFigure, stage_law
    >>> from studio_planner.science.stages import Stage
    >>> law = stage_law(Stage.TACK_FREE, [SheetFigure(15, 8), SheetFigure(25, 4)])
    >>> round(steady_celsius(law, 8.0), 6)
    15.0
    """
    cold, warm = COLDEST_CELSIUS, WARMEST_CELSIUS
    for _ in range(_BISECTIONS):
        middle = (cold + warm) / 2
        if law.hours(middle) > hours:
            cold = middle
        else:
            warm = middle
    return (cold + warm) / 2


def _likely(prior: Prior, pours: Sequence[PourEvidence]) -> float:
    """Return the likely s at the tests' temperature, which no single test moves by much.

    It is found on s alone: what the slope leaves open between a pour's temperature and that
    of all tests counts as the pour's own deviation.
    """
    before = TouchGrid(prior, ()).posterior()
    opened = [
        replace(pour, sd=math.hypot(pour.sd, (pour.slope - prior.slope) * TAIL_90 / NORMAL_90))
        for pour in pours
    ]
    values, weights = before.values[::_EVERY], before.weights[::_EVERY]
    return limited_likely(values, weights, opened, prior.settings)


def _mean_celsius(tests: Sequence[FilmTest]) -> float:
    return 1 / fmean(1 / kelvin(test.celsius) for test in tests) - kelvin(0.0)


def _pour_of(test: FilmTest) -> str:
    return test.pour


def _by_pour(tests: Sequence[FilmTest]) -> list[list[FilmTest]]:
    return [list(own) for _, own in groupby(sorted(tests, key=_pour_of), key=_pour_of)]


def _evidence(tests: Sequence[FilmTest], law: StageLaw, prior: Prior) -> PourEvidence:
    celsius = _mean_celsius(tests)
    slope, beside = prior.slope_at(celsius)
    band = max(test.room_band for test in tests)
    room = law.likely.at(celsius - band) - law.likely.at(celsius)
    return PourEvidence(
        slope=slope,
        sd=math.hypot(prior.settings.pour_sd, beside, room / NORMAL_90),
        tests=tuple((math.log(max(test.share, _LEAST_SHARE)), test.already) for test in tests),
    )
