"""Cup life: how long a mix stays usable in its cup, by mass and temperature.

The cup is not the film: the mass heats itself. The exponent on mass comes from the sheet
where it has two masses; else hours fall as m^-0.3 up to the sheet's mass and m^-0.6 above it
(assumed: small published masses in ``resources/published/cup_life.csv`` give 0.26 to 0.32,
the workshop rule for deep cups 0.5 to 0.7).
"""

from __future__ import annotations

import math
from bisect import bisect_right
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import TYPE_CHECKING

from studio_planner.science.curves import kelvin
from studio_planner.science.law_shape import GAS_CONSTANT
from studio_planner.science.laws import (
    LawError,
    LawSettings,
    SheetFigure,
    StageLaw,
    stage_law,
)
from studio_planner.science.stages import Basis, Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Sequence

SHARE_TO_USE = 2 / 3
"""Be out of the cup by this share of its life (common practice)."""

_SMALL_EXPONENT = 0.3
_LARGE_EXPONENT = 0.6


@dataclass(frozen=True, slots=True)
class CupFigure:
    """One printed cup life: °C, mixed mass [g], hours or a range of hours."""

    celsius: float
    grams: float
    from_hours: float
    to_hours: float | None = None

    def sheet_figure(self, factor: float) -> SheetFigure:
        """Return the figure without its mass, its hours times a factor."""
        long = None if self.to_hours is None else self.to_hours * factor
        return SheetFigure(self.celsius, self.from_hours * factor, long)


@dataclass(frozen=True, slots=True, kw_only=True)
class CupLife:
    """Cup life of a product against mass and temperature; made by `cup_life`.

    Attributes
    ----------
    masses
        (ln of grams, ln of hours relative to the reference mass), rising in mass.
    law
        The hours at the reference mass against temperature.
    film
        The film's working time, never outlasted by the cup; None if the sheet has none.
    """

    masses: tuple[tuple[float, float], ...]
    law: StageLaw
    film: StageLaw | None

    def hours(
        self, celsius: float, grams: float, edge: Edge = Edge.LIKELY, room_band: float = 0.0
    ) -> float:
        """Return the cup life [h] of a mix, never longer than the film's working time.

        Parameters
        ----------
        celsius
            Temperature of the mix when A meets B [°C].
        grams
            Mixed mass in one cup [g], more than zero.
        edge, room_band
            As `StageLaw.hours`.

        Raises
        ------
        LawError
            If the mass is not more than zero.
        """
        cup = self.law.hours(celsius, edge, room_band) * self.mass_factor(grams)
        if self.film is None:
            return cup
        return min(cup, self.film.hours(celsius, edge, room_band))

    def out_of_cup_by(
        self, celsius: float, grams: float, edge: Edge = Edge.EARLY, room_band: float = 0.0
    ) -> float:
        """Return the hours after A meets B by which the mix has to be out of its cup."""
        return SHARE_TO_USE * self.hours(celsius, grams, edge, room_band)

    def mass_factor(self, grams: float) -> float:
        """Return the cup life as a share of that at the sheet's reference mass [-].

        LawError where the mass is not more than zero.
        """
        if not 0.0 < grams < math.inf:
            msg = f"A mix of {grams} g has no cup life; give a mass of more than zero."
            raise LawError(msg)
        return math.exp(_log_factor(self.masses, math.log(grams)))

    def basis(self, celsius: float, grams: float) -> Basis:
        """Return how well the sheet supports a cup life."""
        of_temperature = self.law.basis(celsius)
        of_mass = self._basis_of_mass(math.log(grams))
        order = (Basis.PUBLISHED, Basis.BETWEEN, Basis.OUTSIDE, Basis.ASSUMED)
        return max(of_temperature, of_mass, key=order.index)

    def _basis_of_mass(self, log_grams: float) -> Basis:
        logs = [log_mass for log_mass, _ in self.masses]
        if any(math.isclose(log_grams, known, abs_tol=1e-9) for known in logs):
            return Basis.PUBLISHED
        if len(logs) == 1:
            return Basis.ASSUMED
        return Basis.BETWEEN if logs[0] < log_grams < logs[-1] else Basis.OUTSIDE


def cup_life(
    figures: Sequence[CupFigure],
    *,
    film: StageLaw | None = None,
    settings: LawSettings | None = None,
) -> CupLife:
    """Return the cup life of a product from the figures of its data sheet.

    Masses are compared at the temperature that has the most of them; all figures are then
    brought to the mass nearest 100 g there, and make a law over temperature. With figures at
    a single temperature the film's working time lends its mean slope, marked assumed. Beyond
    two or more masses the end exponent goes on.

    Parameters
    ----------
    figures
        One or more printed cup lives.
    film
        The law of the film's working time, if the sheet has one.
    settings
        As `stage_law`.

    Raises
    ------
    LawError
        If there is no figure, a mass is not positive, a larger mass lasts longer, or the
        hours can't be read as a law.

    Examples
    --------
    >>> sheet = [CupFigure(23, 5, 1.5), CupFigure(23, 10, 1.25), CupFigure(23, 20, 1.0)]
    >>> life = cup_life(sheet)
    >>> life.hours(23, 10), round(life.hours(23, 40), 2), life.basis(23, 40)
    (1.25, 0.8, <Basis.OUTSIDE: 'outside'>)
    """
    chosen = settings or LawSettings()
    _check(figures)
    masses = _masses(figures)
    at_reference = _at_reference(figures, masses)
    borrowed = len(at_reference) == 1 and film is not None
    if film is not None and borrowed:
        chosen = replace(chosen, activation_energy_kj=_mean_energy(film, chosen))
    law = stage_law(Stage.CUP_LIFE, at_reference, settings=chosen)
    return CupLife(masses=masses, law=law, film=film)


def _check(figures: Sequence[CupFigure]) -> None:
    if not figures:
        msg = "The data sheet has no figure for cup_life; enter at least one."
        raise LawError(msg)
    for figure in figures:
        if not 0.0 < figure.grams < math.inf:
            msg = f"cup_life: {figure.grams} g is no mass of a mix; check the number."
            raise LawError(msg)
        if not (
            0.0 < figure.from_hours < math.inf and figure.sheet_figure(1.0).long_hours > 0.0
        ):
            msg = f"cup_life: {figure.from_hours} h is not a time; it has to be more than zero."
            raise LawError(msg)


def _masses(figures: Sequence[CupFigure]) -> tuple[tuple[float, float], ...]:
    """Return (ln grams, ln of hours) at one temperature, hours relative to the reference."""
    by_celsius: dict[float, list[CupFigure]] = {}
    for figure in figures:
        by_celsius.setdefault(figure.celsius, []).append(figure)
    most = max(by_celsius.values(), key=len)
    reference = min(most, key=_from_hundred_grams)
    base = math.log(reference.sheet_figure(1.0).middle_hours)
    ordered = sorted(most, key=lambda figure: figure.grams)
    for small, large in pairwise(ordered):
        _check_pair(small, large)
    return tuple(
        (math.log(f.grams), math.log(f.sheet_figure(1.0).middle_hours) - base) for f in ordered
    )


def _check_pair(small: CupFigure, large: CupFigure) -> None:
    if small.grams == large.grams:
        msg = (
            f"cup_life: there are two figures for {small.grams:g} g at {small.celsius:g} °C; "
            "keep one, or enter them as a range."
        )
        raise LawError(msg)
    if large.sheet_figure(1.0).middle_hours > small.sheet_figure(1.0).middle_hours:
        msg = (
            f"cup_life: {large.grams:g} g lasts longer than {small.grams:g} g at "
            f"{small.celsius:g} °C, but a larger mix heats itself; check the sheet."
        )
        raise LawError(msg)


def _at_reference(
    figures: Sequence[CupFigure], masses: tuple[tuple[float, float], ...]
) -> list[SheetFigure]:
    """Return one figure per temperature, brought to the reference mass."""
    reference = next(log_mass for log_mass, factor in masses if factor == 0.0)

    def distance(figure: CupFigure) -> float:
        return abs(math.log(figure.grams) - reference)

    nearest: dict[float, CupFigure] = {}
    for figure in sorted(figures, key=distance, reverse=True):
        nearest[figure.celsius] = figure
    return [
        figure.sheet_figure(math.exp(-_log_factor(masses, math.log(figure.grams))))
        for figure in nearest.values()
    ]


def _log_factor(masses: tuple[tuple[float, float], ...], log_grams: float) -> float:
    if len(masses) == 1:
        more = log_grams - masses[0][0]
        return -more * (_LARGE_EXPONENT if more > 0.0 else _SMALL_EXPONENT)
    logs = [log_mass for log_mass, _ in masses]
    upper = min(max(bisect_right(logs, log_grams), 1), len(masses) - 1)
    (m0, f0), (m1, f1) = masses[upper - 1], masses[upper]
    return f0 + (f1 - f0) * (log_grams - m0) / (m1 - m0)


def _from_hundred_grams(figure: CupFigure) -> float:
    return abs(math.log(figure.grams / 100.0))


def _mean_energy(film: StageLaw, settings: LawSettings) -> float:
    """Return the energy [kJ/mol] of the film's slope from its coldest to its warmest figure."""
    cold, warm = film.figures[0], film.figures[-1]
    if cold is warm:
        return settings.activation_energy_kj
    rise = math.log(cold.middle_hours / warm.middle_hours)
    return GAS_CONSTANT * rise / (1 / kelvin(cold.celsius) - 1 / kelvin(warm.celsius))
