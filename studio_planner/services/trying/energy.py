"""What warmth takes: kWh from a place's heat loss and the degree-hours, and what that costs."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.services.trying.trial import Warmth

_WATTS_PER_KILOWATT = 1000.0


@dataclass(frozen=True, slots=True)
class Energy:
    """The energy of a trial [kWh] and its cost in the studio's currency; None: not known."""

    kilowatt_hours: float | None
    cost: float | None
    currency: str


def energy_of(studio: Studio, warmth: Warmth, heat_loss: float | None) -> Energy:
    """The energy of some warmth in a place that loses `heat_loss` [W for each °C].

    Kept up for h hours at d °C above what it would be, a place takes loss x d x h watt-hours;
    the heat that its walls take up first is not counted.
    """
    if heat_loss is None:
        return Energy(None, None, studio.currency)
    energy = heat_loss * warmth.degree_hours / _WATTS_PER_KILOWATT
    tariff = studio.settings.tariff_per_kwh
    return Energy(energy, energy * tariff if tariff > 0.0 else None, studio.currency)


def heat_loss_of(studio: Studio, warmth: Warmth) -> float | None:
    """What is entered for the place that is warmed; None where nothing is."""
    places = (one for one in studio.places if one.key == warmth.place)
    return next((one.heat_loss_w_per_k for one in places), None)
