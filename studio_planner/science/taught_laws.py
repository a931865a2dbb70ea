"""A stage's law after touch tests: the sheet's figures, corrected, and one of the studio's own.

What the tests found at their own temperature stands beside the sheet's figures like a figure
of its own, so that the law goes through it, and between and beyond the figures as any other.
The sheet's figures are multiplied by what the tests say of the sheet as a whole; they are then
no longer returned exactly.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from typing_extensions import override

from studio_planner.science.figures import LawError, LawSettings, SheetFigure
from studio_planner.science.laws import stage_law

if TYPE_CHECKING:
    from studio_planner.science.laws import StageLaw

NEAR_CELSIUS = 1.0
"""Closer to a figure than this [°C] the tests speak of that figure, not of the slope."""


@dataclass(frozen=True, slots=True)
class TaughtFigure(SheetFigure):
    """Hours at a temperature as tests found them: early, late and likely (not the middle).

    Examples
    --------
    >>> own = TaughtFigure(17.0, 5.0, 8.0, 6.0)
    >>> own.middle_hours, round(own.width_up(LawSettings()), 3)
    (6.0, 0.288)
    """

    likely_hours: float = 0.0

    @property
    @override
    def middle_hours(self) -> float:
        """The likely hours."""
        return self.likely_hours

    @override
    def width_up(self, settings: LawSettings) -> float:
        """The half-width towards late on ln(hours)."""
        return math.log(self.long_hours / self.likely_hours)

    @override
    def width_down(self, settings: LawSettings) -> float:
        """The half-width towards early on ln(hours)."""
        return math.log(self.likely_hours / self.from_hours)


def taught_law(
    sheet: StageLaw,
    own: TaughtFigure,
    *,
    sheet_factor: float,
    band_left: float,
    tests: int,
) -> StageLaw:
    """Return the law through the corrected figures of a sheet and the studio's own figure.

    Within a degree of a figure of the sheet, or where the own figure does not fall in line
    with the others (warmth never slows a cure), the whole sheet is multiplied by what was
    found there.

    Parameters
    ----------
    sheet
        The law of the data sheet.
    own
        The hours that the tests found at their own temperature.
    sheet_factor
        What the sheet's figures are multiplied by [-].
    band_left
        Share of the bands of the sheet's figures that is left, 0 to 1 [-].
    tests
        How many touch tests all of it rests on.

    Examples
    --------
    >>> from studio_planner.science.laws import stage_law
    >>> from studio_planner.science.stages import Edge, Stage
    >>> sheet = stage_law(Stage.RECOAT_OPENS, [SheetFigure(23, 4.0)])
    >>> own = TaughtFigure(17.0, 6.0, 7.5, 6.7)
    >>> law = taught_law(sheet, own, sheet_factor=1.05, band_left=0.8, tests=7)
    >>> law.hours(17.0), round(law.hours(17.0, Edge.LATE), 2), round(law.hours(23.0), 2)
    (6.7, 7.5, 4.2)
    """
    nearest = min(abs(figure.celsius - own.celsius) for figure in sheet.figures)
    if nearest >= NEAR_CELSIUS:
        moved = [_moved(f, sheet_factor, band_left, sheet.settings) for f in sheet.figures]
        try:
            return _law(sheet, [*moved, own], tests)
        except LawError:
            pass
    return _law(sheet, _all_alike(sheet, own), tests)


def _law(sheet: StageLaw, figures: list[TaughtFigure], tests: int) -> StageLaw:
    return replace(stage_law(sheet.stage, figures, settings=sheet.settings), tests=tests)


def _moved(
    figure: SheetFigure, factor: float, left: float, settings: LawSettings
) -> TaughtFigure:
    likely = figure.middle_hours * factor
    early = likely * math.exp(-left * figure.width_down(settings))
    late = likely * math.exp(left * figure.width_up(settings))
    return TaughtFigure(figure.celsius, early, late, likely)


def _all_alike(sheet: StageLaw, own: TaughtFigure) -> list[TaughtFigure]:
    said = sheet.hours(own.celsius)
    return [
        TaughtFigure(f.celsius, *(f.middle_hours * hours / said for hours in _three(own)))
        for f in sheet.figures
    ]


def _three(own: TaughtFigure) -> tuple[float, float, float]:
    return own.from_hours, own.long_hours, own.likely_hours
