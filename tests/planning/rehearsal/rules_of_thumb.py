"""Sheets as a maker reads them who goes by a rule of thumb instead of the air.

The planner keeps 10 % away from every figure of a sheet; a figure is written here so that
what is left is the rule's own time.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.products import SheetPoint
from studio_planner.science.figures import LawSettings

if TYPE_CHECKING:
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio

REFERENCE_CELSIUS = 20.0
"""The temperature that a label's times hold for; sheets print 20 to 23 °C."""

DOUBLING_CELSIUS = 10.0
"""A cure takes twice as long for every so many degrees: the workshop's rule of thumb."""

_KEPT = 1.0 + LawSettings().published_share
_EVERYWHERE = [float(celsius) for celsius in range(-4, 49, 2)]


def by_the_label(studio: Studio) -> Studio:
    """The studio of a maker who takes the label's times in any weather."""
    return with_times(studio, 1.0)


def by_doubling(studio: Studio, mean_celsius: float) -> Studio:
    """The studio of a maker who lets times double every 10 °C, at the average temperature."""
    return with_times(studio, 2.0 ** ((REFERENCE_CELSIUS - mean_celsius) / DOUBLING_CELSIUS))


def with_times(studio: Studio, factor: float) -> Studio:
    """The studio with every stage after `factor` times its label's hours, at any temperature.

    The room is the same, for the rules of the air; nobody doubts it.
    """
    return replace(
        studio,
        products=tuple(_steady(product, factor) for product in studio.products),
        places=tuple(replace(place, band_celsius=0.0) for place in studio.places),
    )


def _steady(product: Product, factor: float) -> Product:
    sheet: list[SheetPoint] = []
    for stage in sorted({point.stage for point in product.sheet}):
        law = product.law(stage)
        assert law is not None
        hours = factor * law.hours(REFERENCE_CELSIUS)
        written = hours / _KEPT if stage.not_before else hours * _KEPT
        sheet += [
            SheetPoint(stage=stage, celsius=celsius, from_hours=written)
            for celsius in _EVERYWHERE
        ]
    return replace(product, sheet=tuple(sheet))
