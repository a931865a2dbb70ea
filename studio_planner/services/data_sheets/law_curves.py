"""A stage's law to draw and to read: times over temperature, and what they rest on."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.science.stages import Basis, Edge, Stage
from studio_planner.services.data_sheets.stage_times import cup_grams, cup_masses, steady_times

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.craft.products import Product, SheetPoint
    from studio_planner.science.cups import CupLife
    from studio_planner.services.data_sheets.stage_times import StageTime

_COLDEST, _WARMEST = 10.0, 30.0
"""Rooms that a maker thinks of [°C]; a plot always shows them."""

_ROOM_AT_THE_ENDS = 3.0
_STEPS = 96
_CUP_STEPS = 48
_SMALLEST_CUP_GRAMS = 20.0


@dataclass(frozen=True, slots=True)
class LawPoint:
    """The three times [h] of a stage at a steady temperature [°C], and what they rest on."""

    celsius: float
    early: float
    likely: float
    late: float
    basis: Basis

    @property
    def guessed(self) -> bool:
        """Whether no two figures of the sheet lie around it."""
        return self.basis in {Basis.ASSUMED, Basis.OUTSIDE}


@dataclass(frozen=True, slots=True)
class LawCurve:
    """One stage of a product over a stretch of temperatures.

    `points` rise in temperature; `printed` are the figures of the sheet as entered. For cup
    life all is for the mass that `cup_grams` names.
    """

    stage: Stage
    points: tuple[LawPoint, ...]
    printed: tuple[SheetPoint, ...]


def span_of(product: Product) -> tuple[float, float]:
    """The temperatures [°C] that a plot of a product goes over.

    Examples
    --------
    >>> from studio_planner.craft.products import Product, ProductKind
    >>> span_of(Product(key="a", name="A", kind=ProductKind.PRIMER, sheet=()))
    (7.0, 33.0)
    """
    at = [point.celsius for point in product.sheet]
    low = min([_COLDEST, *at]) - _ROOM_AT_THE_ENDS
    return low, max([_WARMEST, *at]) + _ROOM_AT_THE_ENDS


def law_curve(product: Product, stage: Stage) -> LawCurve | None:
    """The law of a stage over the product's span; None when the sheet says nothing of it."""
    printed = product.figures(stage)
    if not printed:
        return None
    low, high = span_of(product)
    grid = {low + (high - low) * step / _STEPS for step in range(_STEPS + 1)}
    # The figures themselves are on the curve, so that it bends where they are.
    at = sorted(grid | {point.celsius for point in printed})
    points = tuple(map(_reader(product, stage), at))
    if stage is not Stage.CUP_LIFE:
        return LawCurve(stage, points, printed)
    grams = cup_grams(product)
    same = tuple(point for point in printed if (point.mass_g or grams) == grams)
    return LawCurve(stage, points, same)


def law_point(product: Product, stage: Stage, celsius: float) -> LawPoint:
    """The three times of a stage at a temperature, as its law says; LawError beyond -90 to 200.

    The product's lowest temperature is not looked at.
    """
    return _reader(product, stage)(celsius)


def _reader(product: Product, stage: Stage) -> Callable[[float], LawPoint]:
    """The law of a stage as a function of temperature, made once for many of them."""
    life = product.cup_life() if stage is Stage.CUP_LIFE else None
    law = life.law if life is not None else product.law(stage)
    assert law is not None  # noqa: S101 - asked only for stages that have figures
    grams = cup_grams(product)

    def read(celsius: float) -> LawPoint:
        if life is None:
            early, likely, late = (law.hours(celsius, edge) for edge in Edge)
        else:
            early, likely, late = (life.hours(celsius, grams, edge) for edge in Edge)
        return LawPoint(celsius, early, likely, late, law.basis(celsius))

    return read


def times_at(product: Product, celsius: float) -> dict[Stage, StageTime]:
    """Every stage of the sheet at a steady temperature, the lowest temperature kept in mind."""
    return {time.stage: time for time in steady_times(product, celsius)}


@dataclass(frozen=True, slots=True)
class CupPoint:
    """How long a mass of mix stays usable in its cup: early and likely, in hours."""

    grams: float
    early: float
    likely: float
    basis: Basis


def cup_curve(product: Product, celsius: float) -> tuple[CupPoint, ...]:
    """Cup life over mass at a temperature, up to the largest mix; empty when there is none."""
    life = product.cup_life()
    if life is None:
        return ()
    masses = cup_masses(product)
    low = min([_SMALLEST_CUP_GRAMS, *masses])
    high = max([product.mix_limit_g, 2 * low, *masses])
    steps = [low * (high / low) ** (step / _CUP_STEPS) for step in range(_CUP_STEPS + 1)]
    return tuple(_cup_point(life, celsius, grams) for grams in sorted({*steps, *masses}))


def cup_point(product: Product, celsius: float, grams: float) -> CupPoint | None:
    """Cup life of one mass at a temperature; None when the sheet says nothing of it."""
    life = product.cup_life()
    return None if life is None else _cup_point(life, celsius, grams)


def _cup_point(life: CupLife, celsius: float, grams: float) -> CupPoint:
    early, likely = life.hours(celsius, grams, Edge.EARLY), life.hours(celsius, grams)
    return CupPoint(grams, early, likely, life.basis(celsius, grams))
