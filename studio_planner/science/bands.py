"""How wide the bands of the laws have to be, learned from published tables.

Every figure of a published table is left out in turn and foretold from the others of that
table: an inner figure *between*, an end figure *beyond* the ends, and every figure from each
single one between 15 and 30 °C (where a sheet with one figure gives it). The band of a kind
is the one that 90 % of its left-out figures need.
"""

from __future__ import annotations

import math
import statistics
from dataclasses import dataclass, replace
from enum import StrEnum
from typing import TYPE_CHECKING

from studio_planner.science.curves import kelvin
from studio_planner.science.law_shape import GAS_CONSTANT
from studio_planner.science.laws import LawSettings, SheetFigure, stage_law
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping, Sequence

INSIDE_SHARE = 0.90
"""Share of the left-out figures that the band has to hold."""

_WIDEST_KJ = 200.0
_NARROWEST_KJ = 0.01
_SINGLE_FROM_CELSIUS = 15.0
_SINGLE_TO_CELSIUS = 30.0
_FEWEST_FOR_BETWEEN = 3


class Kind(StrEnum):
    """Where a left-out figure lies from those that are left."""

    BETWEEN = "between"
    BEYOND = "beyond"
    ASSUMED = "assumed"


@dataclass(frozen=True, slots=True)
class PublishedTable:
    """One stage of one product (record) as a publisher tabulated it."""

    record: str
    stage: Stage
    figures: tuple[SheetFigure, ...]


@dataclass(frozen=True, slots=True)
class LeftOut:
    """A published figure and the ones it is foretold from."""

    record: str
    stage: Stage
    kind: Kind
    known: tuple[SheetFigure, ...]
    figure: SheetFigure


@dataclass(frozen=True, slots=True)
class Coverage:
    """How a band did on left-out figures: how many, how many inside, median half-width.

    The half-width is a factor: 1.2 means from t/1.2 to t*1.2.
    """

    points: int
    inside: int
    median_half_width: float


def left_out_figures(tables: Iterable[PublishedTable]) -> Iterator[LeftOut]:
    """Yield every figure of every table with the figures it is foretold from.

    Examples
    --------
    >>> figures = tuple(SheetFigure(c, h) for c, h in ((10, 8), (20, 4), (30, 2)))
    >>> cases = list(left_out_figures([PublishedTable("X", Stage.COVER, figures)]))
    >>> [case.kind.value for case in cases]
    ['beyond', 'between', 'beyond', 'assumed', 'assumed', 'assumed', 'assumed']
    """
    for table in tables:
        figures = sorted(table.figures, key=lambda figure: figure.celsius)
        yield from _from_the_others(table, figures)
        yield from _from_a_single_one(table, figures)


def _from_the_others(
    table: PublishedTable, figures: Sequence[SheetFigure]
) -> Iterator[LeftOut]:
    if len(figures) < _FEWEST_FOR_BETWEEN:
        return
    for index, figure in enumerate(figures):
        kind = Kind.BETWEEN if 0 < index < len(figures) - 1 else Kind.BEYOND
        known = (*figures[:index], *figures[index + 1 :])
        yield LeftOut(table.record, table.stage, kind, known, figure)


def _from_a_single_one(
    table: PublishedTable, figures: Sequence[SheetFigure]
) -> Iterator[LeftOut]:
    for single in figures:
        if _SINGLE_FROM_CELSIUS <= single.celsius <= _SINGLE_TO_CELSIUS:
            for figure in figures:
                if figure is not single:
                    yield LeftOut(table.record, table.stage, Kind.ASSUMED, (single,), figure)


def with_band(settings: LawSettings, kind: Kind, band_kj: float) -> LawSettings:
    """Return settings with the band of one kind [kJ/mol] changed.

    Examples
    --------
    >>> with_band(LawSettings(), Kind.BEYOND, 30.0).beyond_band_kj
    30.0
    """
    if kind is Kind.BETWEEN:
        return replace(settings, between_band_kj=band_kj)
    if kind is Kind.BEYOND:
        return replace(settings, beyond_band_kj=band_kj)
    return replace(settings, assumed_band_kj=band_kj)


def log_edges(case: LeftOut, settings: LawSettings) -> tuple[float, float]:
    """Return how far the early and the late edge are from the left-out figure on ln(hours).

    The figure is inside if the first is not above zero and the second not below.

    Examples
    --------
    >>> known = (SheetFigure(20, 4),)
    >>> case = LeftOut("X", Stage.COVER, Kind.ASSUMED, known, SheetFigure(20, 4))
    >>> [round(math.exp(edge), 3) for edge in log_edges(case, LawSettings())]
    [0.909, 1.1]
    """
    law = stage_law(case.stage, case.known, settings=settings)
    celsius, hours = case.figure.celsius, case.figure.middle_hours
    return (
        math.log(law.hours(celsius, Edge.EARLY) / hours),
        math.log(law.hours(celsius, Edge.LATE) / hours),
    )


def is_inside(case: LeftOut, settings: LawSettings) -> bool:
    """Return whether a left-out figure lies between the early and the late edge.

    Examples
    --------
    >>> known = (SheetFigure(20, 4),)
    >>> case = LeftOut("X", Stage.COVER, Kind.ASSUMED, known, SheetFigure(10, 8))
    >>> is_inside(case, LawSettings())
    True
    """
    early, late = log_edges(case, settings)
    rounding = 1e-9
    return early <= rounding and late >= -rounding


def needed_band(case: LeftOut, settings: LawSettings) -> float:
    """Return the narrowest band [kJ/mol] with which a left-out figure is inside, to 0.01.

    Examples
    --------
    >>> known = (SheetFigure(20, 4),)
    >>> case = LeftOut("X", Stage.COVER, Kind.ASSUMED, known, SheetFigure(10, 9))
    >>> round(needed_band(case, LawSettings()), 1)
    4.4
    """
    narrow, wide = 0.0, _WIDEST_KJ
    if is_inside(case, with_band(settings, case.kind, narrow)):
        return narrow
    while wide - narrow > _NARROWEST_KJ:
        middle = (narrow + wide) / 2
        if is_inside(case, with_band(settings, case.kind, middle)):
            wide = middle
        else:
            narrow = middle
    return wide


def fitted_energy(tables: Iterable[PublishedTable]) -> float:
    """Return the median activation energy [kJ/mol] of tables of early and middle stages.

    Each table's slope is the least-squares line of ln(hours) over 1/T. Stages that close a
    window and the late cure are left out: they have rules of their own.

    Examples
    --------
    >>> figures = (SheetFigure(20, 4), SheetFigure(30, 2))
    >>> round(fitted_energy([PublishedTable("X", Stage.COVER, figures)]), 1)
    51.2
    """
    return statistics.median(
        _slope_energy(table.figures)
        for table in tables
        if not (table.stage.closes or table.stage.late_cure)
    )


def _slope_energy(figures: Sequence[SheetFigure]) -> float:
    inverse = [1 / kelvin(figure.celsius) for figure in figures]
    log_hours = [math.log(figure.middle_hours) for figure in figures]
    return GAS_CONSTANT * statistics.linear_regression(inverse, log_hours).slope


def calibrated_settings(
    tables: Sequence[PublishedTable], settings: LawSettings | None = None
) -> LawSettings:
    """Return settings whose bands hold 90 % of the left-out figures of each kind.

    Parameters
    ----------
    tables
        Published tables.
    settings
        Everything but the bands; the default settings if not given.

    Examples
    --------
    >>> figures = tuple(SheetFigure(c, h) for c, h in ((10, 9), (20, 5), (30, 2)))
    >>> found = calibrated_settings([PublishedTable("X", Stage.COVER, figures)])
    >>> round(found.between_band_kj, 1)
    7.0
    """
    chosen = settings or LawSettings()
    needed: dict[Kind, list[float]] = {kind: [] for kind in Kind}
    for case in left_out_figures(tables):
        needed[case.kind].append(needed_band(case, chosen))
    for kind, bands in needed.items():
        chosen = with_band(chosen, kind, _quantile(bands))
    return chosen


def _quantile(values: Sequence[float]) -> float:
    ordered = sorted(values)
    return ordered[math.ceil(INSIDE_SHARE * len(ordered)) - 1]


def coverage(cases: Iterable[tuple[LeftOut, LawSettings]]) -> Mapping[Kind, Coverage]:
    """Return how settings did on left-out figures, by kind.

    Examples
    --------
    >>> known = (SheetFigure(20, 4),)
    >>> case = LeftOut("X", Stage.COVER, Kind.ASSUMED, known, SheetFigure(10, 8))
    >>> coverage([(case, LawSettings())])[Kind.ASSUMED].inside
    1
    """
    results: dict[Kind, list[tuple[bool, float]]] = {}
    for case, settings in cases:
        early, late = log_edges(case, settings)
        result = (is_inside(case, settings), (late - early) / 2)
        results.setdefault(case.kind, []).append(result)
    return {
        kind: Coverage(
            points=len(found),
            inside=sum(inside for inside, _ in found),
            median_half_width=math.exp(statistics.median(width for _, width in found)),
        )
        for kind, found in results.items()
    }


def leave_products_out(tables: Sequence[PublishedTable]) -> Mapping[Kind, Coverage]:
    """Return the coverage on each product of energy and bands learned from all others.

    The default slope and the bands never see the product they are judged on.

    Examples
    --------
    >>> figures = tuple(SheetFigure(c, h) for c, h in ((10, 8), (20, 4), (30, 2)))
    >>> same = [PublishedTable(record, Stage.COVER, figures) for record in "XYZ"]
    >>> leave_products_out(same)[Kind.BETWEEN].inside
    3
    """
    judged: list[tuple[LeftOut, LawSettings]] = []
    for record in sorted({table.record for table in tables}):
        others = [table for table in tables if table.record != record]
        own = [table for table in tables if table.record == record]
        settings = LawSettings(activation_energy_kj=fitted_energy(others))
        learned = calibrated_settings(others, settings)
        judged += [(case, learned) for case in left_out_figures(own)]
    return coverage(judged)
