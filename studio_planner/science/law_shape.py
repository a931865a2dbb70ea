"""The shape of a law: the likely curve through the figures and the width around it."""

from __future__ import annotations

import math
from itertools import pairwise
from typing import TYPE_CHECKING

from studio_planner.science.curves import Curve, Piece, kelvin, piece_through

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.science.figures import LawSettings, SheetFigure
    from studio_planner.science.stages import Stage

GAS_CONSTANT = 8.314462618e-3
"""Molar gas constant [kJ/(mol K)], exact in the SI since 2019."""


def likely_curve(stage: Stage, figures: Sequence[SheetFigure], settings: LawSettings) -> Curve:
    """Return ln(likely hours) through every figure, continued on the safe side.

    Examples
    --------
    >>> from studio_planner.science.figures import LawSettings, SheetFigure
    >>> from studio_planner.science.stages import Stage
    >>> curve = likely_curve(Stage.COVER, [SheetFigure(20, 1.0)], LawSettings())
    >>> round(math.exp(curve.at(10.0)), 3)
    1.919
    """
    slopes = [_slope(a, b) for a, b in pairwise(figures)]
    inner = [
        piece_through(f.celsius, math.log(f.middle_hours), b=b)
        for f, b in zip(figures, slopes, strict=False)
    ]
    assumed = settings.activation_energy_kj / GAS_CONSTANT
    ends = slopes or [assumed]
    cold_knots, cold = _colder(stage, figures[0], ends[0], settings)
    pick = min if stage.not_before else max
    last = figures[-1]
    warm = piece_through(last.celsius, math.log(last.middle_hours), b=pick(ends[-1], assumed))
    knots = (*cold_knots, *(f.celsius for f in figures))
    return Curve(knots, (*cold, *inner, warm))


def _slope(cold: SheetFigure, warm: SheetFigure) -> float:
    rise = math.log(cold.middle_hours / warm.middle_hours)
    return rise / (1 / kelvin(cold.celsius) - 1 / kelvin(warm.celsius))


def _colder(
    stage: Stage, figure: SheetFigure, end_slope: float, settings: LawSettings
) -> tuple[tuple[float, ...], tuple[Piece, ...]]:
    assumed = settings.activation_energy_kj / GAS_CONSTANT
    log_hours = math.log(figure.middle_hours)
    if stage.closes:
        return (), (piece_through(figure.celsius, log_hours),)
    slope = max(end_slope, assumed) if stage.not_before else min(end_slope, assumed)
    piece = piece_through(figure.celsius, log_hours, b=slope)
    if not stage.late_cure:
        return (), (piece,)
    return _late_cure(figure.celsius, piece, settings)


def _late_cure(
    celsius: float, piece: Piece, settings: LawSettings
) -> tuple[tuple[float, ...], tuple[Piece, ...]]:
    start = min(celsius, settings.late_cure_celsius)
    per_degree = math.log(settings.late_cure_factor) / 10
    a, b, _ = piece
    if b / kelvin(start) ** 2 >= per_degree:
        return (), (piece,)
    slowed = piece_through(start, a + b / kelvin(start), c=-per_degree)
    return ((), (slowed,)) if start == celsius else ((start,), (slowed, piece))


def width_curve(
    widths: Sequence[float], figures: Sequence[SheetFigure], settings: LawSettings
) -> Curve:
    """Return the half-width on ln(hours): `widths` at the figures, growing away from them.

    It grows with the distance in 1/T to the nearest figure, by the band in kJ/mol over the
    gas constant.

    Examples
    --------
    >>> from studio_planner.science.figures import LawSettings, SheetFigure
    >>> curve = width_curve([0.1], [SheetFigure(20, 5)], LawSettings(assumed_band_kj=20))
    >>> round(curve.at(20.0), 3), round(curve.at(10.0), 3)
    (0.1, 0.39)
    """
    inverse = [1 / kelvin(f.celsius) for f in figures]
    single = len(figures) == 1
    end_kj = settings.assumed_band_kj if single else settings.beyond_band_kj
    end = end_kj / GAS_CONSTANT
    tent = settings.between_band_kj / GAS_CONSTANT
    points = _tent_points(widths, inverse, tent)
    cold_inverse, cold_width = points[0]
    warm_inverse, warm_width = points[-1]
    pieces: list[Piece] = [(cold_width - end * cold_inverse, end, 0.0)]
    pieces += [_line(*pair) for pair in pairwise(points)]
    pieces.append((warm_width + end * warm_inverse, -end, 0.0))
    return Curve(_knots(figures), tuple(pieces))


def _middle_celsius(cold: SheetFigure, warm: SheetFigure) -> float:
    middle = (1 / kelvin(cold.celsius) + 1 / kelvin(warm.celsius)) / 2
    return 1 / middle - kelvin(0.0)


def _knots(figures: Sequence[SheetFigure]) -> tuple[float, ...]:
    knots = [figures[0].celsius]
    for cold, warm in pairwise(figures):
        knots += [_middle_celsius(cold, warm), warm.celsius]
    return tuple(knots)


def _tent_points(
    widths: Sequence[float], inverse: Sequence[float], slope: float
) -> list[tuple[float, float]]:
    points = [(inverse[0], widths[0])]
    for i in range(1, len(inverse)):
        middle = (inverse[i - 1] + inverse[i]) / 2
        rise = slope * (inverse[i - 1] - inverse[i]) / 2
        points.append((middle, (widths[i - 1] + widths[i]) / 2 + rise))
        points.append((inverse[i], widths[i]))
    return points


def _line(cold: tuple[float, float], warm: tuple[float, float]) -> Piece:
    slope = (cold[1] - warm[1]) / (cold[0] - warm[0])
    return (cold[1] - slope * cold[0], slope, 0.0)
