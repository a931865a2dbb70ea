"""Masses in whole steps of the studio's scale, which is what its display can show."""

from __future__ import annotations

import math

_CRUMB = 1e-9


def on_steps(grams: float, step: float) -> float:
    """Give a mass as the scale shows it: the nearest whole number of its steps, in grams."""
    return round(round(grams / step) * step, 6)


def steps_down(grams: float, step: float) -> float:
    """Give the largest mass of whole steps that is no more than so many grams."""
    return round(math.floor(grams / step + _CRUMB) * step, 6)


def steps_up(grams: float, step: float) -> float:
    """Give the smallest mass of whole steps that is no less than so many grams."""
    return round(math.ceil(grams / step - _CRUMB) * step, 6)
