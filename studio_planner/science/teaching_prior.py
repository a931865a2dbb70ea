"""What is believed of a stage before any touch test: the sheet's law and its own bands."""

from __future__ import annotations

import math
from bisect import bisect_left
from typing import TYPE_CHECKING

from studio_planner.science.teaching_pours import NORMAL_90

if TYPE_CHECKING:
    from studio_planner.science.laws import StageLaw
    from studio_planner.science.teaching_pours import TeachingSettings

TAIL_90 = 1.8595480375
"""The 95 % quantile of Student's t with eight degrees of freedom (90 % lie within)."""

_LEAST_OF_A_WIDTH = 0.5


class Prior:
    """The sheet's bands as an offset `a` and a slope `b`: s(T) = a + b*g(T).

    `a` has the width of the figure nearest to the tests, less what pours deviate; g(T) is
    what the band has grown to at T beyond that width. `b` belongs to the stretch between two
    figures, or beyond the last, in which the tests are; elsewhere another slope holds, which
    is as wide but unknown.

    Parameters
    ----------
    law
        The data sheet's law.
    celsius
        The temperature the tests speak of [°C].
    settings
        What is assumed of tests and pours.

    Examples
    --------
    >>> from studio_planner.science.laws import SheetFigure, stage_law
    >>> from studio_planner.science.stages import Stage
    >>> law = stage_law(Stage.RECOAT_OPENS, [SheetFigure(23, 4)])
    >>> from studio_planner.science.teaching_pours import TeachingSettings
    >>> prior = Prior(law, 23.0, TeachingSettings())
    >>> round(prior.slope, 3), round(prior.scale_up, 3), round(prior.slope_at(13.0)[0], 3)
    (0.0, 0.044, 0.268)
    """

    def __init__(self, law: StageLaw, celsius: float, settings: TeachingSettings) -> None:
        """Read the bands off the law."""
        self._law = law
        self.settings = settings
        nearest = min(law.figures, key=lambda figure: abs(figure.celsius - celsius))
        self._down = nearest.width_down(law.settings)
        self._up = nearest.width_up(law.settings)
        self.scale_down = _without_pours(self._down, settings) / TAIL_90
        self.scale_up = _without_pours(self._up, settings) / TAIL_90
        self._stretch = self._stretch_of(celsius)
        self.slope = self._grown(celsius)

    @property
    def scale(self) -> float:
        """The scale of the offset on ln(hours), the mean of both sides."""
        return (self.scale_down + self.scale_up) / 2

    def slope_at(self, celsius: float) -> tuple[float, float]:
        """Return how much of the slope a temperature feels, and what deviates beside it."""
        grown = self._grown(celsius)
        if self._stretch_of(celsius) == self._stretch:
            return grown, 0.0
        return 0.0, grown * TAIL_90 / NORMAL_90

    def band_left(self, half_width: float) -> float:
        """Return the share of the figure's band that a half-width at 90 % is; at most 1."""
        return min(1.0, 2 * half_width / (self._down + self._up))

    def _stretch_of(self, celsius: float) -> int:
        return bisect_left([figure.celsius for figure in self._law.figures], celsius)

    def _grown(self, celsius: float) -> float:
        here = (self._law.late.at(celsius) - self._law.early.at(celsius)) / 2
        at_figure = (self._down + self._up) / 2
        return math.sqrt(max(here**2 - at_figure**2, 0.0)) / TAIL_90


def _without_pours(width: float, settings: TeachingSettings) -> float:
    """Take what pours deviate out of a half-width at 90 %, which holds both."""
    left = math.sqrt(max(width**2 - (NORMAL_90 * settings.pour_sd) ** 2, 0.0))
    return max(left, _LEAST_OF_A_WIDTH * width)
