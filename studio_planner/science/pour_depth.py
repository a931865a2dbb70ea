"""How deep a mix may be poured: what an edge or a rim holds, the sheet, and the heat."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum

from studio_planner.science.exotherm import HeatVerdict, exotherm
from studio_planner.science.film_limits import REFUSE_ABOVE_MM, puddle_height
from studio_planner.science.heat_bodies import HeatError, pour_body

SURFACE_TENSION_MN_M = 39.0
"""Surface tension of a mix [mN/m]: 35 to 43 (from memory)."""

WETTING_DEGREES = 30.0
"""Angle at which a mix stands on what it wets well [°]: 0 to 45 (from memory)."""

DEEPEST_MM = 50.0
"""Deeper than this no pour is reckoned [mm]."""

_SHALLOWEST_MM = 0.5
_STEP_MM = 0.05


class DepthReason(StrEnum):
    """What limits how deep a pour may be."""

    EDGE = "edge"
    RIM = "rim"
    SHEET = "sheet"
    HEAT = "heat"


@dataclass(frozen=True, slots=True)
class DepthLimit:
    """The deepest film [mm] and what limits it."""

    film_mm: float
    reason: DepthReason


def edge_film_mm(
    density: float,
    surface_tension_mn_m: float = SURFACE_TENSION_MN_M,
    wetting_degrees: float = WETTING_DEGREES,
    falls_degrees: float = 90.0,
) -> float:
    """Return the film [mm] that stands on a face without a rim before it runs over the edge.

    At a sharp edge the mix stops until it would wet the side as it wets the face: the angle to
    the face may grow to the wetting angle and the fall of the side together (Gibbs; Oliver,
    Huh, Mason, J. Colloid Interface Sci. 59, 1977; from memory), 180° at most. The height is
    that of `puddle_height` at that angle. A rounded or tilted edge holds less.

    Parameters
    ----------
    density
        Of the mix [g/cm³], 1.0 to 1.2.
    surface_tension_mn_m
        Surface tension [mN/m], 35 to 43.
    wetting_degrees
        Angle on the face [°], 0 to 45.
    falls_degrees
        How far the side falls away [°]: 90 upright, 45 chamfered, 0 no edge at all.

    Examples
    --------
    An upright edge holds 2.7 mm of what wets it wholly and 3.3 mm at 30°: the trade's limits.

    >>> round(edge_film_mm(1.10, wetting_degrees=0.0), 2), round(edge_film_mm(1.10), 2)
    (2.69, 3.29)
    """
    angle = min(wetting_degrees + falls_degrees, 180.0)
    return puddle_height(surface_tension_mn_m, density, angle)


def deepest_film(
    *, rim_mm: float = 0.0, sheet_mm: float | None = None, edge_mm: float = REFUSE_ABOVE_MM
) -> DepthLimit:
    """Return the deepest film that a face can take, whatever its heat.

    Parameters
    ----------
    rim_mm
        Height of the rim around the face [mm], 0 for none.
    sheet_mm
        The product's own limit for one pour [mm], None for none.
    edge_mm
        What stands without a rim [mm]: the studio's setting, or `edge_film_mm`.

    Examples
    --------
    >>> deepest_film(), deepest_film(rim_mm=10.0, sheet_mm=6.0)
    (DepthLimit(film_mm=3.2, reason=<DepthReason.EDGE: 'edge'>), \
DepthLimit(film_mm=6.0, reason=<DepthReason.SHEET: 'sheet'>))
    """
    held = (
        DepthLimit(rim_mm, DepthReason.RIM)
        if rim_mm > edge_mm
        else DepthLimit(edge_mm, DepthReason.EDGE)
    )
    if sheet_mm is not None and sheet_mm < held.film_mm:
        return DepthLimit(sheet_mm, DepthReason.SHEET)
    return held


def deepest_cool_mm(rate: float, celsius: float, density: float = 1.10) -> float:
    """Return the deepest pour [mm] that stays cool, to 0.05 mm and `DEEPEST_MM` at most.

    Parameters
    ----------
    rate
        Rate of the cure at 25 °C [1/h], of `studio_planner.science.exotherm.rate_of`.
    celsius
        The room [°C].
    density
        Of the mix [g/cm³].

    Raises
    ------
    HeatError
        If even the thinnest film would get warm: the cup life can't be right.

    Examples
    --------
    Half an hour in a cup of 100 g: a flood mix; six hours: one for deep pours.

    >>> from studio_planner.science.exotherm import rate_of
    >>> from studio_planner.science.heat_bodies import cup_body
    >>> [round(deepest_cool_mm(rate_of(h, cup_body(100.0), 23.0), 23.0)) for h in (0.5, 6.0)]
    [4, 15]
    """

    def cool(depth_mm: float) -> bool:
        found = exotherm(rate, pour_body(depth_mm, density), celsius)
        return found.verdict is HeatVerdict.COOL

    if cool(DEEPEST_MM):
        return DEEPEST_MM
    low, high = _SHALLOWEST_MM, DEEPEST_MM
    if not cool(low):
        msg = f"Even {low:g} mm would get hot; check the cup life on the sheet."
        raise HeatError(msg)
    while high - low > _STEP_MM:
        middle = math.sqrt(low * high)
        low, high = (middle, high) if cool(middle) else (low, middle)
    return low


def deepest_pour(held: DepthLimit, cool_mm: float | None) -> DepthLimit:
    """Return the deepest pour, by what holds it and by its heat where that is known.

    Examples
    --------
    >>> deepest_pour(DepthLimit(10.0, DepthReason.RIM), 4.0)
    DepthLimit(film_mm=4.0, reason=<DepthReason.HEAT: 'heat'>)
    """
    if cool_mm is None or held.film_mm <= cool_mm:
        return held
    return DepthLimit(cool_mm, DepthReason.HEAT)
