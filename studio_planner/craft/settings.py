"""Settings of a studio: rules of thumb that every maker can change.

All defaults are common practice unless the comment names a source.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import timedelta
from enum import StrEnum
from typing import TYPE_CHECKING

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.pieces import Material
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from datetime import date

_SURFACE_LAG_HOURS = {
    Material.MDF: 0.8,
    Material.TIMBER: 0.8,
    Material.PLYWOOD: 0.7,
    Material.SLATE: 1.2,
    Material.STONE: 1.5,
    Material.METAL: 0.5,
    Material.GLASS: 0.7,
    Material.PLASTIC: 0.6,
}


class TemperatureUnit(StrEnum):
    """How temperatures are shown."""

    CELSIUS = "C"
    FAHRENHEIT = "F"


class MassUnit(StrEnum):
    """How masses are shown."""

    GRAM = "g"
    OUNCE = "oz"


class LengthUnit(StrEnum):
    """How the sizes of pieces and spots are shown."""

    MILLIMETRE = "mm"
    CENTIMETRE = "cm"
    INCH = "in"


class FilmUnit(StrEnum):
    """How the thickness of a film is shown; a mil is a thousandth of an inch."""

    MILLIMETRE = "mm"
    MIL = "mil"
    INCH = "in"


class VolumeUnit(StrEnum):
    """How volumes are shown."""

    MILLILITRE = "ml"
    FLUID_OUNCE_US = "fl oz US"
    FLUID_OUNCE_IMPERIAL = "fl oz imperial"


class ClockForm(StrEnum):
    """How times of day are written."""

    HOURS_24 = "24 h"
    HOURS_12 = "12 h"


@dataclass(frozen=True, slots=True, kw_only=True)
class Units:
    """The units a maker reads; inside everything is °C, grams and millimetres.

    `week_starts` is 0 for Monday to 6 for Sunday.
    """

    temperature: TemperatureUnit = TemperatureUnit.CELSIUS
    mass: MassUnit = MassUnit.GRAM
    length: LengthUnit = LengthUnit.MILLIMETRE
    film: FilmUnit = FilmUnit.MILLIMETRE
    volume: VolumeUnit = VolumeUnit.MILLILITRE
    clock: ClockForm = ClockForm.HOURS_24
    week_starts: int = 0

    def __post_init__(self) -> None:
        """Check the day that the week starts on."""
        rules = Rulebook(translate("nouns", "units"))
        rules.between(self.week_starts, 0, 6, "week_starts")
        rules.close()

    def first_of_week(self, day: date) -> date:
        """The first day of the week that a day lies in.

        Examples
        --------
        >>> from datetime import date
        >>> str(Units(week_starts=6).first_of_week(date(2026, 11, 26)))
        '2026-11-22'
        """
        return day - timedelta(days=(day.weekday() - self.week_starts) % 7)


@dataclass(frozen=True, slots=True, kw_only=True)
class Settings:
    """A studio's rules of thumb; minutes, hours, °C, grams, millimetres and per cent.

    `dew_margin_celsius` is the ISO 8502-4 practice of 3 °C, held for `dew_hours` after a pour.
    `steady_celsius` is how much the room may warm during a coat on bare porous work and still
    count as steady. `spare_hours` is one recoat cycle kept free before each promise.
    `tariff_per_kwh` is what heating costs, in the studio's currency; 0 where nobody asked.
    """

    settle_minutes: int = 120
    dew_margin_celsius: float = 3.0
    dew_hours: float = 12.0
    steady_celsius: float = 0.3
    spare_hours: float = 48.0
    turn_minutes: int = 5
    sand_minutes: int = 20
    tape_minutes: int = 10
    scale_step_g: float = 0.1
    ratio_tolerance_pct: float = 2.0
    film_warn_mm: float = 2.5
    film_refuse_mm: float = 3.2
    edge_film_mm: float = 0.4
    wall_film_mm: float = 0.3
    drip_loss_pct: float = 18.0
    rim_drip_loss_pct: float = 3.0
    cup_loss_g: float = 4.0
    absorption_face_pct: float = 75.0
    reserve_pct: float = 5.0
    tariff_per_kwh: float = 0.0
    surface_lag_hours: dict[Material, float] = field(
        default_factory=lambda: dict(_SURFACE_LAG_HOURS)
    )

    def __post_init__(self) -> None:
        """Check every figure's range."""
        rules = Rulebook(translate("nouns", "settings"))
        ranges = {
            "settle_minutes": (0, 24 * 60),
            "dew_margin_celsius": (0, 20),
            "dew_hours": (0, 72),
            "steady_celsius": (0, 10),
            "spare_hours": (0, 24 * 30),
            "turn_minutes": (0, 600),
            "sand_minutes": (1, 600),
            "tape_minutes": (1, 600),
            "scale_step_g": (0.001, 100),
            "ratio_tolerance_pct": (0.1, 20),
            "film_warn_mm": (0.1, 50),
            "film_refuse_mm": (0.1, 50),
            "edge_film_mm": (0, 5),
            "wall_film_mm": (0, 5),
            "drip_loss_pct": (0, 100),
            "rim_drip_loss_pct": (0, 100),
            "cup_loss_g": (0, 100),
            "absorption_face_pct": (0, 1000),
            "reserve_pct": (0, 100),
            "tariff_per_kwh": (0, 1000),
        }
        for name, (low, high) in ranges.items():
            rules.between(getattr(self, name), low, high, name)
        for material, hours in self.surface_lag_hours.items():
            rules.between(hours, 0, 72, f"surface_lag_hours, {material}")
        rules.close()
