"""When a film reaches each stage of its data sheet: at a steady temperature, or in a room."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.craft.errors import BrokenRule, InvalidEntry
from studio_planner.craft.products import (
    CUP_SHEET_GRAMS,
    Product,
    ProductKind,
)
from studio_planner.craft.tongue import counted
from studio_planner.science.clocks import StageClock
from studio_planner.science.laws import LawError
from studio_planner.science.stages import Basis, Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Sequence
    from datetime import datetime

    from studio_planner.craft.products import SheetPoint
    from studio_planner.craft.taught import TaughtStage
    from studio_planner.science.history import History
    from studio_planner.science.laws import StageLaw

_FROM_BEST_TO_WORST = (
    Basis.TAUGHT,
    Basis.PUBLISHED,
    Basis.BETWEEN,
    Basis.OUTSIDE,
    Basis.ASSUMED,
)
_GUESSED_MASS = (
    f"the sheet does not say for which mass it holds; {CUP_SHEET_GRAMS:g} g is assumed"
)

BEYOND_RECORD = "not reached within this record"
"""Why a stage has no hours in a room whose record ends before it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class StageTime:
    """Hours from the pour to a stage at its three times; None where it is not reached.

    `reason` says why one of them is None, and is empty otherwise; `beyond_record` is true when
    the only cause is that the room's record ends. `note` says what else the hours rest on, or
    is empty. `grams` is the mass that a cup life holds for.
    """

    stage: Stage
    early_hours: float | None
    likely_hours: float | None
    late_hours: float | None
    basis: Basis
    reason: str = ""
    beyond_record: bool = False
    note: str = ""
    grams: float | None = None


def sheet_product(name: str, points: Sequence[SheetPoint], minimum: float | None) -> Product:
    """Take the figures of a sheet alone as a product, so that they are checked like one.

    Raises InvalidEntry when they make no laws or a window opens after it closes.
    """
    # Only the figures matter here, and a one-part product is the one that needs no ratio.
    return Product(
        key="sheet", name=name, kind=ProductKind.PRIMER, sheet=tuple(points),
        minimum_celsius=minimum,
    )  # fmt: skip


def steady_times(
    product: Product, celsius: float, grams: float | None = None
) -> tuple[StageTime, ...]:
    """Give every stage of a product's sheet at a steady temperature in °C.

    `grams` is the mixed mass in one cup; without it cup life is for a mass of the sheet.
    Raises InvalidEntry when the temperature or the mass is outside what laws cover.
    """

    def one(law: StageLaw) -> StageTime:
        return _steady(law, celsius, product.minimum_celsius)

    return _table(product, one, celsius, grams)


def room_times(
    product: Product, room: History, poured: datetime, grams: float | None = None
) -> tuple[StageTime, ...]:
    """Give every stage of a film spread at `poured` (aware) in a room that was recorded.

    Raises InvalidEntry when the pour lies outside the record.
    """
    start = poured.timestamp()
    celsius = room.celsius_at(start)
    if celsius is None:
        sentence = "it is outside the room's record; choose a time inside it."
        raise InvalidEntry("the pour", [BrokenRule("time", sentence)])

    def one(law: StageLaw) -> StageTime:
        return _in_room(law, room, start, product.minimum_celsius)

    return _table(product, one, celsius, grams)


def _table(
    product: Product,
    one: Callable[[StageLaw], StageTime],
    celsius: float,
    grams: float | None,
) -> tuple[StageTime, ...]:
    rows = []
    for stage in Stage:
        if not product.figures(stage):
            continue
        try:
            rows.append(
                _cup(product, celsius, grams)
                if stage is Stage.CUP_LIFE
                else _film(product, stage, one)
            )
        except LawError as error:
            sentence = str(error).removeprefix(f"{stage}: ")
            raise InvalidEntry(product.name, [BrokenRule(stage, sentence)]) from error
    return tuple(rows)


def _film(product: Product, stage: Stage, one: Callable[[StageLaw], StageTime]) -> StageTime:
    law = product.law(stage)
    assert law is not None  # noqa: S101 - asked only for stages that have figures
    row, taught = one(law), product.taught_stage(stage)
    if taught is None:
        return row
    notes = (row.note, _taught_note(taught, used=law.tests > 0))
    return replace(row, note="; ".join(note for note in notes if note))


def _taught_note(taught: TaughtStage, *, used: bool) -> str:
    if not used:
        return "the sheet has changed since touch tests taught it, so they are left out"
    return (
        f"learned from {counted(taught.tests, '{count} touch test', '{count} touch tests')} of "
        f"{counted(taught.pours, '{count} pour', '{count} pours')}, which found "
        f"{taught.likely_hours:.1f} h at {taught.celsius:.1f} °C, where the sheet says "
        f"{taught.sheet_hours:.1f} h"
    )


def _steady(law: StageLaw, celsius: float, minimum: float | None) -> StageTime:
    cold = minimum is not None and celsius < minimum
    if cold and law.stage.not_before:
        reason = f"colder than the product's minimum of {minimum:g} °C its hours do not count"
        return _never(law.stage, _basis(law, celsius, minimum), reason)
    at = minimum if cold and minimum is not None else celsius
    early, likely, late = (law.hours(at, edge) for edge in Edge)
    return StageTime(
        stage=law.stage,
        early_hours=early,
        likely_hours=likely,
        late_hours=late,
        basis=_basis(law, celsius, minimum),
        note=_cold_note(celsius, minimum),
    )


def _basis(law: StageLaw, celsius: float, minimum: float | None) -> Basis:
    """Colder than the minimum no figure of the sheet is meant to hold."""
    if minimum is None or celsius >= minimum:
        return law.basis(celsius)
    return _worst([law.basis(minimum), Basis.OUTSIDE])


def _worst(found: Iterable[Basis]) -> Basis:
    return max(found, key=_FROM_BEST_TO_WORST.index)


def _cold_note(celsius: float, minimum: float | None) -> str:
    if minimum is None or celsius >= minimum:
        return ""
    return f"colder than the product's minimum of {minimum:g} °C it has the hours it has there"


def _never(stage: Stage, basis: Basis, reason: str) -> StageTime:
    return StageTime(
        stage=stage,
        early_hours=None,
        likely_hours=None,
        late_hours=None,
        basis=basis,
        reason=reason,
    )


def _cup(product: Product, celsius: float, grams: float | None) -> StageTime:
    life = product.cup_life()
    assert life is not None  # noqa: S101 - asked only when the sheet has a cup life
    mass = grams or cup_grams(product)
    guessed = any(point.mass_g is None for point in product.figures(Stage.CUP_LIFE))
    minimum = product.minimum_celsius
    at = celsius if minimum is None else max(celsius, minimum)
    early, likely, late = (life.hours(at, mass, edge) for edge in Edge)
    found = [life.basis(at, mass)]
    found += [Basis.OUTSIDE] if at > celsius else []
    found += [Basis.ASSUMED] if guessed else []
    notes = [_cold_note(celsius, minimum), _GUESSED_MASS if guessed else ""]
    return StageTime(
        stage=Stage.CUP_LIFE,
        early_hours=early,
        likely_hours=likely,
        late_hours=late,
        basis=_worst(found),
        note="; ".join(note for note in notes if note),
        grams=mass,
    )


def cup_masses(product: Product) -> list[float]:
    """The masses [g] that a sheet prints cup life for; one without a mass counts as 100 g."""
    figures = product.figures(Stage.CUP_LIFE)
    return [CUP_SHEET_GRAMS if one.mass_g is None else one.mass_g for one in figures]


def cup_grams(product: Product) -> float:
    """The mass [g] that a sheet's cup life is shown for: the printed one nearest 100 g."""
    masses = cup_masses(product)
    return min(masses, key=lambda grams: abs(grams - CUP_SHEET_GRAMS), default=CUP_SHEET_GRAMS)


def _in_room(law: StageLaw, room: History, start: float, minimum: float | None) -> StageTime:
    reached = {edge: StageClock(law, room, edge, minimum).reached(start) for edge in Edge}
    hours = {edge: None if r is None else (r - start) / 3600.0 for edge, r in reached.items()}
    end = reached[Edge.LIKELY] or room.extent[1]
    return StageTime(
        stage=law.stage,
        early_hours=hours[Edge.EARLY],
        likely_hours=hours[Edge.LIKELY],
        late_hours=hours[Edge.LATE],
        basis=_worst(_basis(law, c, minimum) for c in _felt(law, room, start, end, minimum)),
        reason=BEYOND_RECORD if None in hours.values() else "",
        beyond_record=None in hours.values(),
    )


def _felt(
    law: StageLaw, room: History, start: float, end: float, minimum: float | None
) -> list[float]:
    """Temperatures that the stage's share was made at, from the pour to the stage."""
    inner = [
        celsius
        for second, celsius in zip(room.seconds, room.celsius, strict=True)
        if start < second < end
    ]
    ends = [room.celsius_at(start), room.celsius_at(end)]
    felt = [*inner, *(celsius for celsius in ends if celsius is not None)]
    if minimum is None:
        return felt
    warm = [celsius for celsius in felt if celsius >= minimum]
    return warm if law.stage.not_before and warm else felt
