"""From an area and a film to the grams to mix: edges, drips, cups, absorption, reserve."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.science.mix_ratio import MassError

if TYPE_CHECKING:
    from collections.abc import Iterable

DEFAULT_DENSITY = 1.10
"""Density of a typical mix [g/cm³]; range 1.08 to 1.15, from memory."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CoatArea:
    """One coat on one piece, as geometry.

    Attributes
    ----------
    area_cm2
        Area coated [cm²].
    film_mm
        Film on it [mm].
    perimeter_cm, edge_height_mm, edge_film_mm
        Edge or rim wall that is wetted too: its length [cm], height [mm] and film [mm].
    drip_share
        Share lost over an edge without a rim [-]: 0.12 to 0.25 of the flood is common.
    face_absorption, edge_absorption
        What a bare blank drinks, as a share of the film [-]: MDF faces 0.5 to 1.0, edges 2
        (common practice); zero once sealed.
    """

    area_cm2: float
    film_mm: float
    perimeter_cm: float = 0.0
    edge_height_mm: float = 0.0
    edge_film_mm: float = 0.4
    drip_share: float = 0.0
    face_absorption: float = 0.0
    edge_absorption: float = 0.0

    def __post_init__(self) -> None:
        """Refuse what can't be coated."""
        values = (self.perimeter_cm, self.edge_height_mm, self.edge_film_mm, self.drip_share)
        more = (self.face_absorption, self.edge_absorption)
        if not (0 < self.area_cm2 < math.inf and 0 < self.film_mm < math.inf):
            msg = "A coat needs an area and a film of more than zero."
            raise MassError(msg)
        if not all(0.0 <= value < math.inf for value in (*values, *more)):
            msg = "An edge, a drip loss or an absorption can't be negative; give zero or more."
            raise MassError(msg)


@dataclass(frozen=True, slots=True, kw_only=True)
class CoatMass:
    """Grams of one coat on one piece, by where they go."""

    face: float
    edge: float
    absorbed: float
    drips: float

    @property
    def total(self) -> float:
        """All of it [g]."""
        return self.face + self.edge + self.absorbed + self.drips


@dataclass(frozen=True, slots=True, kw_only=True)
class MixMass:
    """Grams of one mix, by where they go."""

    coats: float
    cups: float
    reserve: float

    @property
    def total(self) -> float:
        """All of it [g]."""
        return self.coats + self.cups + self.reserve


def film_grams(area_cm2: float, film_mm: float, density: float = DEFAULT_DENSITY) -> float:
    """Return the mass of a film [g].

    Parameters
    ----------
    area_cm2
        Area [cm²].
    film_mm
        Film thickness [mm].
    density
        Of the mix [g/cm³].

    Examples
    --------
    One millimetre over 100 cm² at 1.10 g/cm³:

    >>> round(film_grams(100.0, 1.0, 1.10), 6)
    11.0
    """
    return area_cm2 * film_mm / 10.0 * density


def edge_grams(
    perimeter_cm: float, height_mm: float, film_mm: float, density: float = DEFAULT_DENSITY
) -> float:
    """Return the mass [g] of a film on an edge or a wall.

    Parameters
    ----------
    perimeter_cm
        Length of the edge [cm].
    height_mm
        Its height [mm].
    film_mm
        Film on it [mm], 0.3 to 0.5 in common practice.
    density
        Of the mix [g/cm³].

    Examples
    --------
    A round coaster of 10 cm with an edge of 8 mm:

    >>> round(edge_grams(31.416, 8.0, 0.4, 1.10), 1)
    1.1
    """
    return film_grams(perimeter_cm * height_mm / 10.0, film_mm, density)


def coat_grams(coat: CoatArea, density: float = DEFAULT_DENSITY) -> CoatMass:
    """Return the grams of one coat on one piece.

    Drips are a share of face, edge and absorption together.

    Parameters
    ----------
    coat
        The geometry and the losses.
    density
        Of the mix [g/cm³], more than zero.

    Raises
    ------
    MassError
        If the density is not more than zero.

    Examples
    --------
    A board of 20 x 30 cm, 2 mm, edge 18 mm with 0.4 mm, 18 % drips:

    >>> board = CoatArea(area_cm2=600, film_mm=2.0, perimeter_cm=100, edge_height_mm=18,
    ...                  edge_film_mm=0.4, drip_share=0.18)
    >>> round(coat_grams(board, 1.10).total, 1)
    165.1
    """
    if not 0.0 < density < math.inf:
        msg = f"A density of {density} g/cm³ can't be; it has to be more than zero."
        raise MassError(msg)
    face = film_grams(coat.area_cm2, coat.film_mm, density)
    edge = edge_grams(coat.perimeter_cm, coat.edge_height_mm, coat.edge_film_mm, density)
    absorbed = face * coat.face_absorption + edge * coat.edge_absorption
    drips = (face + edge + absorbed) * coat.drip_share
    return CoatMass(face=face, edge=edge, absorbed=absorbed, drips=drips)


def mix_grams(
    coats: Iterable[CoatMass],
    *,
    cups: int = 0,
    cup_loss_grams: float = 4.0,
    reserve_share: float = 0.0,
) -> MixMass:
    """Return the grams of one mix for several coats.

    Parameters
    ----------
    coats
        The coats poured from it.
    cups
        How many cups it is split into.
    cup_loss_grams
        What stays in each cup [g], 3 to 5 in common practice.
    reserve_share
        Reserve on all of it [-], 0.05 in common practice.

    Raises
    ------
    MassError
        If a number is negative.

    Examples
    --------
    >>> coat = CoatMass(face=17.28, edge=1.1, absorbed=0.0, drips=3.68)
    >>> round(mix_grams([coat] * 6, cups=3).total, 1)
    144.4
    """
    if min(cups, cup_loss_grams, reserve_share) < 0:
        msg = "Cups, cup loss and reserve can't be negative; give zero or more."
        raise MassError(msg)
    on_pieces = math.fsum(coat.total for coat in coats)
    in_cups = cups * cup_loss_grams
    return MixMass(coats=on_pieces, cups=in_cups, reserve=(on_pieces + in_cups) * reserve_share)
