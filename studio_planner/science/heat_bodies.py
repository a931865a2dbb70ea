"""The shapes that a mix heats up in: a full cup, and a pour much wider than deep."""

from __future__ import annotations

import math
from dataclasses import dataclass

from studio_planner.science.heat_figures import (
    AIR_W_PER_M2K,
    BENEATH_W_PER_M2K,
    CONDUCTIVITY_W_PER_MK,
)


class HeatError(ValueError):
    """A cup, a pour or a cup life that can't be; the text is for the maker."""


@dataclass(frozen=True, slots=True)
class Body:
    """A lump of mix: the loss of a gram of it, and how much hotter than its mean it gets.

    Attributes
    ----------
    loss_w_per_gk
        Heat that leaves a gram [W/(g K)], by its mean temperature above the room's.
    hot_share
        By what share of that difference the hottest place is hotter than the mean [-].
    """

    loss_w_per_gk: float
    hot_share: float


def cup_body(grams: float, density: float = 1.10) -> Body:
    """Return a full cup as high as it is wide, in still air on every side.

    A tall narrow cup has a little more surface, a wide shallow one much more: this is the
    careful one. Inside, the profile of a long cylinder: mean R / (4 k), middle R / (2 k).

    Parameters
    ----------
    grams
        Mix in it [g], 10 to 2000.
    density
        Of the mix [g/cm³].

    Raises
    ------
    HeatError
        If mass or density are not more than zero.

    Examples
    --------
    A cup of 100 g is 4.9 cm wide and loses 0.086 W for every degree:

    >>> round(cup_body(100.0).loss_w_per_gk * 100.0, 3)
    0.086
    """
    _positive("A cup needs grams and a density of more than zero.", grams, density)
    width = (4.0 * grams / density * 1e-6 / math.pi) ** (1.0 / 3.0)
    surface = 1.5 * math.pi * width**2
    inside = width / 2.0 / (4.0 * CONDUCTIVITY_W_PER_MK)
    outside = 1.0 / AIR_W_PER_M2K
    return Body(surface / (inside + outside) / grams, inside / (inside + outside))


def pour_body(
    depth_mm: float, density: float = 1.10, beneath_w_per_m2k: float = BENEATH_W_PER_M2K
) -> Body:
    """Return a pour much wider than deep: air above it, its blank beneath.

    Parameters
    ----------
    depth_mm
        Depth [mm], 1 to 50.
    density
        Of the mix [g/cm³].
    beneath_w_per_m2k
        Loss through the blank [W/(m² K)].

    Raises
    ------
    HeatError
        If a number is not more than zero.

    Examples
    --------
    Two millimetres lose twenty times as much for each gram as forty do, and more:

    >>> pour_body(2.0).loss_w_per_gk > 20 * pour_body(40.0).loss_w_per_gk
    True
    """
    _positive(
        "A pour needs depth, density and loss of more than zero.",
        depth_mm,
        density,
        beneath_w_per_m2k,
    )
    depth = depth_mm * 1e-3
    inside = depth / (3.0 * CONDUCTIVITY_W_PER_MK)
    above, beneath = 1.0 / AIR_W_PER_M2K, 1.0 / beneath_w_per_m2k
    loss = 1.0 / (inside + above) + 1.0 / (inside + beneath)
    return Body(loss / (density * 1e6 * depth), 0.5 * inside / (inside + above))


def _positive(sentence: str, *values: float) -> None:
    if not all(0.0 < value < math.inf for value in values):
        raise HeatError(sentence)
