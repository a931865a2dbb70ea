"""Figures as a data sheet prints them, and whether they can be read as a law."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING

from studio_planner.science.curves import COLDEST_CELSIUS, WARMEST_CELSIUS

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.science.stages import Stage

# Keeps the printed ends themselves inside the edges, whatever the last digit does.
_ROUNDING = 1e-12


class LawError(ValueError):
    """Figures or a temperature that can't be read as a law; the text is for the maker."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LawSettings:
    """What is assumed where a sheet is silent, and how wide 90 % is.

    The three bands in kJ/mol are the uncertainty of the activation energy away from the
    figures: 90 % of the left-out points of ``resources/published/cure_times.csv`` lie inside
    (see `studio_planner.science.bands.calibrated_settings`, which gave these numbers).

    Attributes
    ----------
    activation_energy_kj
        Slope of a stage with one figure [kJ/mol].
    published_share
        Width at a published figure, as a share of its hours (0.10, common practice).
    between_band_kj, beyond_band_kj, assumed_band_kj
        Band between figures, beyond the ends, and away from one single figure [kJ/mol].
    late_cure_factor
        Factor on the late cure per 10 °C colder [-].
    late_cure_celsius
        Where the late cure starts to slow by that factor at the latest [°C].
    """

    activation_energy_kj: float = 45.0
    published_share: float = 0.10
    between_band_kj: float = 14.0
    beyond_band_kj: float = 27.5
    assumed_band_kj: float = 29.0
    late_cure_factor: float = 3.0
    late_cure_celsius: float = 20.0

    @property
    def published_width(self) -> float:
        """The half-width at a published figure on ln(hours)."""
        return math.log1p(self.published_share)


@dataclass(frozen=True, slots=True)
class SheetFigure:
    """One printed figure: hours, or a range of hours, at a temperature in °C.

    Examples
    --------
    >>> SheetFigure(23, 4, 6).middle_hours
    5.0
    """

    celsius: float
    from_hours: float
    to_hours: float | None = None

    @property
    def long_hours(self) -> float:
        """The long end of the range [h]."""
        return self.from_hours if self.to_hours is None else self.to_hours

    @property
    def middle_hours(self) -> float:
        """The middle of the range [h]."""
        return (self.from_hours + self.long_hours) / 2

    def width_up(self, settings: LawSettings) -> float:
        """The half-width towards late: the long end or the default, whichever is wider."""
        printed = math.log(self.long_hours / self.middle_hours)
        return max(settings.published_width, printed) + _ROUNDING

    def width_down(self, settings: LawSettings) -> float:
        """The half-width towards early: the short end or the default, the wider one."""
        printed = math.log(self.middle_hours / self.from_hours)
        return max(settings.published_width, printed) + _ROUNDING

    @property
    def spoken(self) -> str:
        """The figure as it would be read aloud."""
        span = "" if self.to_hours is None else f" to {self.to_hours:g}"
        return f"{self.from_hours:g}{span} h at {self.celsius:g} °C"


def accepted_figures(
    stage: Stage, figures: Sequence[SheetFigure]
) -> tuple[bool, tuple[SheetFigure, ...]]:
    """Return (whether the less safe end rises with warmth, the figures from cold to warm).

    Raises
    ------
    LawError
        One sentence on the first thing that can't be read.

    Examples
    --------
    >>> from studio_planner.science.stages import Stage
    >>> accepted_figures(Stage.HANDLE, [SheetFigure(25, 20), SheetFigure(15, 40)])[1][0]
    SheetFigure(celsius=15, from_hours=40, to_hours=None)
    """
    if not figures:
        msg = f"The data sheet has no figure for {stage.value}; enter at least one."
        raise LawError(msg)
    for figure in figures:
        _check_figure(stage, figure)
    ordered = tuple(sorted(figures, key=lambda figure: figure.celsius))
    rising = [_rises(stage, cold, warm) for cold, warm in pairwise(ordered)]
    return any(rising), ordered


def _check_figure(stage: Stage, figure: SheetFigure) -> None:
    if not COLDEST_CELSIUS < figure.celsius < WARMEST_CELSIUS:
        msg = (
            f"{stage.value}: {figure.celsius} °C is no temperature for a coat; "
            "check the number and its unit."
        )
        raise LawError(msg)
    if not (0 < figure.from_hours < math.inf and figure.long_hours < math.inf):
        msg = f"{stage.value}: {figure.spoken} is not a time; hours have to be more than zero."
        raise LawError(msg)
    if not figure.from_hours <= figure.long_hours:
        msg = (
            f"{stage.value}: {figure.spoken} ends before it starts; enter the short end first."
        )
        raise LawError(msg)


def _rises(stage: Stage, cold: SheetFigure, warm: SheetFigure) -> bool:
    if cold.celsius == warm.celsius:
        msg = (
            f"{stage.value}: there are two figures at {cold.celsius:g} °C; "
            "keep one, or enter them as a range."
        )
        raise LawError(msg)
    short, long = warm.from_hours > cold.from_hours, warm.long_hours > cold.long_hours
    safe_end_rises = long if stage.not_before else short
    if safe_end_rises or warm.middle_hours > cold.middle_hours:
        msg = (
            f"{stage.value}: {warm.spoken} is longer than {cold.spoken}, but warmth does not "
            "slow a cure; check the temperatures and the times on the sheet."
        )
        raise LawError(msg)
    return short or long
