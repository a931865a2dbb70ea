"""How thick a film can stand without a rim, and how much colour a mix can carry."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum
from types import MappingProxyType
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Mapping

WARN_ABOVE_MM = 2.5
"""Film without a rim above which to warn [mm] (setting, common practice)."""

REFUSE_ABOVE_MM = 3.2
"""Film without a rim that runs off [mm]: 1/8 in, the trade's flood limit (setting)."""

ALL_COLOURANTS_CEILING = 0.06
"""Ceiling of all colourants together, as a share of the mixed mass (common practice)."""

_GRAVITY = 9.80665


class FilmVerdict(StrEnum):
    """Whether a film stays on its face."""

    HOLDS = "holds"
    NEAR_LIMIT = "near_limit"
    RUNS_OFF = "runs_off"


class Colourant(StrEnum):
    """Kinds of colour that go into a mix."""

    PASTE = "paste"
    MICA = "mica"
    METAL_POWDER = "metal_powder"
    DRY_PIGMENT = "dry_pigment"
    ALCOHOL_INK = "alcohol_ink"
    ACRYLIC_PAINT = "acrylic_paint"
    GLITTER = "glitter"
    SOLVENT_TINT = "solvent_tint"


@dataclass(frozen=True, slots=True, kw_only=True)
class ColourantLimit:
    """Working range and ceiling of a colourant, as shares of the mixed mass [-]."""

    working_from: float
    working_to: float
    ceiling: float
    reason: str
    source: str


def _limit(low: float, high: float, ceiling: float, reason: str, source: str) -> ColourantLimit:
    return ColourantLimit(
        working_from=low, working_to=high, ceiling=ceiling, reason=reason, source=source
    )


_PRACTICE = "common practice"

COLOURANT_LIMITS: Mapping[Colourant, ColourantLimit] = MappingProxyType(
    {
        Colourant.PASTE: _limit(0.01, 0.03, 0.06, "the carrier does not react", _PRACTICE),
        Colourant.MICA: _limit(0.01, 0.05, 0.06, "thickens, settles, dulls gloss", _PRACTICE),
        Colourant.METAL_POWDER: _limit(0.02, 0.06, 0.10, "sinks; its dust", "from memory"),
        Colourant.DRY_PIGMENT: _limit(0.01, 0.04, 0.05, "wets poorly, lumps", _PRACTICE),
        Colourant.ALCOHOL_INK: _limit(0.002, 0.01, 0.02, "traps solvent: soft film", _PRACTICE),
        Colourant.ACRYLIC_PAINT: _limit(0.0, 0.05, 0.10, "water: soft, cloudy", _PRACTICE),
        Colourant.GLITTER: _limit(0.05, 0.15, 0.20, "stands out of a thin film", _PRACTICE),
        Colourant.SOLVENT_TINT: _limit(0.0, 0.0, 0.02, "traps solvent", _PRACTICE),
    }
)
"""Colourants by kind: working range, ceiling to warn at, reason, where it is from."""


def film_verdict(
    film_mm: float,
    rim_mm: float = 0.0,
    warn_above_mm: float = WARN_ABOVE_MM,
    refuse_above_mm: float = REFUSE_ABOVE_MM,
) -> FilmVerdict:
    """Return whether a film stays on a face.

    Parameters
    ----------
    film_mm
        The film [mm].
    rim_mm
        Height of the rim around it [mm], zero for none. A rim holds a film up to its own
        height; above it the film is judged like one without a rim, from the rim's height.
    warn_above_mm, refuse_above_mm
        Limits without a rim [mm].

    Examples
    --------
    >>> film_verdict(2.0), film_verdict(3.0), film_verdict(5.0), film_verdict(5.0, rim_mm=10)
    (<FilmVerdict.HOLDS: 'holds'>, <FilmVerdict.NEAR_LIMIT: 'near_limit'>, \
<FilmVerdict.RUNS_OFF: 'runs_off'>, <FilmVerdict.HOLDS: 'holds'>)
    """
    above = film_mm if rim_mm <= 0.0 else film_mm - rim_mm
    if above > refuse_above_mm:
        return FilmVerdict.RUNS_OFF
    return FilmVerdict.NEAR_LIMIT if above > warn_above_mm else FilmVerdict.HOLDS


def puddle_height(surface_tension_mn_m: float, density: float, contact_degrees: float) -> float:
    """Return the height [mm] at which a puddle stands on a sharp edge.

    h = 2 sqrt(gamma / (rho g)) sin(theta / 2), for a puddle much wider than high
    (P.-G. de Gennes, Capillarity and Wetting Phenomena, 2004, eq. 2.8; from memory).

    Parameters
    ----------
    surface_tension_mn_m
        Surface tension [mN/m], 35 to 43 for a mix.
    density
        Of the mix [g/cm³].
    contact_degrees
        Contact angle [°], above 0 to 180.

    Examples
    --------
    >>> round(puddle_height(39.0, 1.10, 45.0), 1), round(puddle_height(39.0, 1.10, 90.0), 1)
    (1.5, 2.7)
    """
    length = math.sqrt(surface_tension_mn_m * 1e-3 / (density * 1e3 * _GRAVITY))
    return 2e3 * length * math.sin(math.radians(contact_degrees) / 2)
