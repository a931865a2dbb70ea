"""Sheets of the benchmark studios, in the usual shape of slow and fast two-part mixes.

Recoat after 4-8 h, window of two to three days, full cure 3-7 days; all products are invented.
"""

from __future__ import annotations

from studio_planner.craft.products import MixRatio, Product, ProductKind, SheetPoint
from studio_planner.science.stages import Stage


def slow() -> Product:
    """A mix that takes its time and cures fully in a week."""
    return _two_part("slow", 1.6, 72.0, 7.0)


def fast() -> Product:
    """A mix for more than one coat a day."""
    return _two_part("fast", 1.0, 48.0, 3.0)


def primer() -> Product:
    """A one-part primer."""
    hours = {
        Stage.TACK_FREE: 0.5,
        Stage.RECOAT_OPENS: 1.5,
        Stage.HANDLE: 2.0,
        Stage.PRINT_FREE: 4.0,
        Stage.FULL_CURE: 24.0,
    }
    return Product(
        key="primer",
        name="Primer",
        kind=ProductKind.PRIMER,
        sheet=_sheet(hours),
        invented=True,
    )


def _sheet(hours: dict[Stage, float]) -> tuple[SheetPoint, ...]:
    at = {15.0: 1.55, 20.0: 1.0, 25.0: 0.68}
    return tuple(
        SheetPoint(stage=stage, celsius=celsius, from_hours=round(count * factor, 3))
        for stage, count in hours.items()
        for celsius, factor in at.items()
    )


def _two_part(key: str, pace: float, closes: float, cure_days: float) -> Product:
    hours = {
        Stage.WORKING_TIME: 1.3 * pace,
        Stage.COVER: 2.5 * pace,
        Stage.TAPE_OPENS: 2.0 * pace,
        Stage.TAPE_CLOSES: 10.0 * pace,
        Stage.RECOAT_OPENS: 4.0 * pace,
        Stage.TACK_FREE: 6.0 * pace,
        Stage.RECOAT_CLOSES: closes,
        Stage.SANDABLE: 16.0 * pace,
        Stage.HANDLE: 14.0 * pace,
        Stage.PRINT_FREE: 30.0 * pace,
        Stage.FULL_CURE: cure_days * 24.0,
    }
    return Product(
        key=key,
        name=key.title(),
        kind=ProductKind.TWO_PART,
        ratio=MixRatio(a=2, b=1),
        sheet=_sheet(hours),
        minimum_celsius=12.0,
        maximum_celsius=32.0,
        humidity_limit_pct=85.0,
        cup_limit_g=1000.0,
        mix_limit_g=800.0,
        invented=True,
    )
