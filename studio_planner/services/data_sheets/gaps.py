"""What a product's sheet leaves open, and what that means for plans."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import TYPE_CHECKING

from studio_planner.craft.products import ProductKind, RatioBy
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from studio_planner.craft.products import Product

_FAR_CELSIUS = 3.0
"""So far beyond its figures a law rests on assumptions that a maker should know of (ours)."""

_GATES = (Stage.HANDLE, Stage.PRINT_FREE, Stage.FULL_CURE)


class Gap(StrEnum):
    """One thing that a sheet leaves open."""

    NO_FIGURES = "no figures"
    ASSUMED_RATIO = "ratio not read yet"
    NO_OPENING = "no opening"
    NO_CLOSING = "no closing"
    SHUT = "window shut"
    NO_STAGE = "stage missing"
    NO_CUP_LIFE = "no cup life"
    CUP_MASS = "cup life without its mass"
    ROOM_COLDER = "room colder than the sheet"
    ROOM_WARMER = "room warmer than the sheet"
    UNDER_MINIMUM = "room under the lowest temperature"


@dataclass(frozen=True, slots=True)
class SheetGap:
    """A gap with what it is about.

    `stage` is missing and `instead` used for it (None: nothing can be); `celsius` is the
    room's temperature or that of the sheet's nearest figure, `hours` opens (late) and closes
    (early) of a window that is shut.
    """

    gap: Gap
    stage: Stage | None = None
    instead: Stage | None = None
    celsius: float | None = None
    hours: tuple[float, float] | None = None


def gaps_of(product: Product, coldest: float, warmest: float) -> tuple[SheetGap, ...]:
    """What a sheet leaves open for a room that is likely between two temperatures [°C]."""
    if product.kind is ProductKind.LEAF:
        return ()
    assumed = product.ratio is not None and product.ratio.by is RatioBy.ASSUMED
    ratio = (SheetGap(Gap.ASSUMED_RATIO),) if assumed else ()
    if not product.sheet:
        return (*ratio, SheetGap(Gap.NO_FIGURES))
    return (
        *ratio,
        *_window_gaps(product, (coldest + warmest) / 2),
        *_gate_gaps(product),
        *_mix_gaps(product),
        *_room_gaps(product, coldest, warmest),
    )


def _window_gaps(product: Product, celsius: float) -> list[SheetGap]:
    opens, closes = product.law(Stage.RECOAT_OPENS), product.law(Stage.RECOAT_CLOSES)
    found = []
    dry = product.kind is not ProductKind.TWO_PART and product.figures(Stage.TACK_FREE)
    if opens is None and not dry:
        found.append(SheetGap(Gap.NO_OPENING))
    if closes is None and product.kind is ProductKind.TWO_PART:
        found.append(SheetGap(Gap.NO_CLOSING))
    if opens is not None and closes is not None:
        hours = opens.hours(celsius, Edge.LATE), closes.hours(celsius, Edge.EARLY)
        if hours[0] >= hours[1]:
            found.append(SheetGap(Gap.SHUT, celsius=celsius, hours=hours))
    return found


def _gate_gaps(product: Product) -> list[SheetGap]:
    if product.kind is ProductKind.SIZE:
        return []
    found = []
    for index, stage in enumerate(_GATES):
        if not product.figures(stage):
            later = (one for one in _GATES[index + 1 :] if product.figures(one))
            found.append(SheetGap(Gap.NO_STAGE, stage=stage, instead=next(later, None)))
    return found


def _mix_gaps(product: Product) -> list[SheetGap]:
    if product.kind is not ProductKind.TWO_PART:
        return []
    found = []
    figures = product.figures(Stage.CUP_LIFE)
    if not figures:
        found.append(SheetGap(Gap.NO_CUP_LIFE))
    elif any(point.mass_g is None for point in figures):
        found.append(SheetGap(Gap.CUP_MASS))
    return found


def _room_gaps(product: Product, coldest: float, warmest: float) -> list[SheetGap]:
    at = [point.celsius for point in product.sheet]
    found = []
    if coldest < min(at) - _FAR_CELSIUS:
        found.append(SheetGap(Gap.ROOM_COLDER, celsius=min(at)))
    if warmest > max(at) + _FAR_CELSIUS:
        found.append(SheetGap(Gap.ROOM_WARMER, celsius=max(at)))
    low = product.minimum_celsius
    if low is not None and coldest < low:
        found.append(SheetGap(Gap.UNDER_MINIMUM, celsius=low))
    return found
