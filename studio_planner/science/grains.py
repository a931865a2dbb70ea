"""How fast a grain or a flake sinks in a mix: Stokes' law with a stated shape.

A flake counts as a thin spheroid as wide as its diameter and thinner by its `aspect`, lying at
every angle alike (F. Perrin, J. Phys. Radium 7, 1936). Grains do not hinder each other: at the
few per cent of a coloured mix they do so by less than a tenth, and sink less for it.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from types import MappingProxyType
from typing import TYPE_CHECKING

from studio_planner.science.film_limits import Colourant

if TYPE_CHECKING:
    from collections.abc import Mapping

LARGEST_REYNOLDS = 0.1
"""Up to here Stokes' law is right within 2 % (Oseen: the drag is 1 + 3/16 Re times it)."""

_GRAVITY = 9.80665
_MM_PER_HOUR = 3.6e6


class GrainError(ValueError):
    """A grain or a mix that can't be; the text is for the maker."""


@dataclass(frozen=True, slots=True)
class Grain:
    """A grain of colourant: diameter or width [µm], density [g/cm³], width by thickness [-].

    Examples
    --------
    >>> Grain(20.0, 3.0), Grain(20.0, 3.0, aspect=20.0).shape_share < 0.1
    (Grain(diameter_um=20.0, density=3.0, aspect=1.0), True)
    """

    diameter_um: float
    density: float
    aspect: float = 1.0

    def __post_init__(self) -> None:
        """Refuse what is no grain."""
        if not (0.0 < self.diameter_um < math.inf and 0.0 < self.density < math.inf):
            msg = "A grain needs a diameter and a density of more than zero."
            raise GrainError(msg)
        if not 1.0 <= self.aspect < math.inf:
            msg = f"A flake of aspect {self.aspect:g} is thicker than wide; give 1 or more."
            raise GrainError(msg)

    @property
    def shape_share(self) -> float:
        """How fast it falls against a sphere as wide as it is [-]; 1 for a sphere.

        atan(q) / q with q = sqrt(aspect² - 1): a flake is lighter than the sphere by its aspect
        and is held by half the drag of it at most. Any aspect from 1.

        Examples
        --------
        >>> round(Grain(10.0, 3.0, aspect=20.0).shape_share, 4)
        0.0761
        """
        flat = math.sqrt(self.aspect**2 - 1.0)
        return math.atan(flat) / flat if flat > 0.0 else 1.0


@dataclass(frozen=True, slots=True)
class Liquid:
    """A fresh mix at the temperature of the pour: viscosity [Pa·s] and density [g/cm³]."""

    viscosity_pas: float
    density: float

    def __post_init__(self) -> None:
        """Refuse what does not flow."""
        if not (0.0 < self.viscosity_pas < math.inf and 0.0 < self.density < math.inf):
            msg = "A mix needs a viscosity and a density of more than zero."
            raise GrainError(msg)


GRAINS: Mapping[Colourant, Grain] = MappingProxyType(
    {
        Colourant.PASTE: Grain(0.5, 4.0),
        Colourant.MICA: Grain(40.0, 3.0, aspect=20.0),
        Colourant.METAL_POWDER: Grain(30.0, 8.5, aspect=10.0),
        Colourant.DRY_PIGMENT: Grain(1.0, 4.2),
        Colourant.GLITTER: Grain(400.0, 1.4, aspect=10.0),
    }
)
"""Usual grains by kind, from memory: titania paste, coated mica, bronze, oxide, PET flake.

Inks, tints and paint hold nothing that is coarse enough to sink and have no grain here.
"""


def fall_speed(grain: Grain, liquid: Liquid) -> float:
    """Return how fast a grain sinks in a fresh mix [mm/h]; less than zero when it rises.

    v = (rho_grain - rho_mix) g d² / (18 eta) times the shape's share (G. G. Stokes, 1851).

    Parameters
    ----------
    grain
        The grain or flake.
    liquid
        The mix; the law holds while `reynolds` is under `LARGEST_REYNOLDS`, and gives too much
        beyond.

    Examples
    --------
    A sphere of mica of 20 µm in a mix of 1 Pa·s:

    >>> round(fall_speed(Grain(20.0, 2.8), Liquid(1.0, 1.1)), 2)
    1.33
    """
    heavier = (grain.density - liquid.density) * 1e3
    diameter = grain.diameter_um * 1e-6
    sphere = heavier * _GRAVITY * diameter**2 / (18.0 * liquid.viscosity_pas)
    return sphere * grain.shape_share * _MM_PER_HOUR


def reynolds(grain: Grain, liquid: Liquid) -> float:
    """Return the Reynolds number of a grain that sinks in a fresh mix [-].

    Examples
    --------
    A glitter flake of 0.4 mm in the thinnest mix is far from the limit:

    >>> reynolds(GRAINS[Colourant.GLITTER], Liquid(0.15, 1.1)) < LARGEST_REYNOLDS
    True
    """
    speed = abs(fall_speed(grain, liquid)) / _MM_PER_HOUR
    return liquid.density * 1e3 * speed * grain.diameter_um * 1e-6 / liquid.viscosity_pas
