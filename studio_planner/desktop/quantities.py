"""What a number stands for: how it is shown in the maker's unit, and read back from it."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import TYPE_CHECKING

from studio_planner.craft.settings import (
    FilmUnit,
    LengthUnit,
    MassUnit,
    TemperatureUnit,
    VolumeUnit,
)
from studio_planner.craft.tongue import figure
from studio_planner.desktop.tongue import quoted, translate

if TYPE_CHECKING:
    from studio_planner.craft.settings import Units

_MM_PER_INCH = 25.4
_GRAMS_PER_OUNCE = 28.349523125  # the international avoirdupois ounce, exact
_LENGTHS = {LengthUnit.MILLIMETRE: 1.0, LengthUnit.CENTIMETRE: 10.0, LengthUnit.INCH: 25.4}
_FILMS = {
    FilmUnit.MILLIMETRE: 1.0,
    FilmUnit.MIL: _MM_PER_INCH / 1000.0,
    FilmUnit.INCH: _MM_PER_INCH,
}
_VOLUMES = {  # exact: the US gallon is 231 in³, the imperial one 4.54609 l
    VolumeUnit.MILLILITRE: 1.0,
    VolumeUnit.FLUID_OUNCE_US: 231 * 2.54**3 / 128,
    VolumeUnit.FLUID_OUNCE_IMPERIAL: 4546.09 / 160,
}


_DECIMALS = {  # to a micrometre of film, a hundredth of a size, a tenth of a gram
    "film": {"mm": 3, "mil": 1, "in": 4},
    "length": {"mm": 2, "cm": 2, "in": 2},
    "mass": {"g": 1, "oz": 3},
    "area": {"cm²": 1, "in²": 1},
    "heat loss": {"W/°C": 1, "W/°F": 1},
}
_ANY_DECIMALS, _DIGITS = 2, 4


class Quantity(Enum):
    """Kinds of numbers.

    Inside they are °C, grams, ml, mm, cm², hours, minutes, watts per °C and per cent.
    """

    TEMPERATURE = "temperature"
    DEGREES = "difference of temperatures"
    MASS = "mass"
    VOLUME = "volume"
    LENGTH = "length"
    FILM = "film"
    AREA = "area"
    HOURS = "hours"
    MINUTES = "minutes"
    HEAT_LOSS = "heat loss"
    PER_CENT = "per cent"
    COUNT = "count"
    PLAIN = "number"


@dataclass(frozen=True, slots=True)
class Scale:
    """How a number is shown: `shown = inside / factor + offset`, with a unit behind it."""

    unit: str
    factor: float = 1.0
    offset: float = 0.0

    def shown(self, inside: float) -> float:
        """The number as the maker reads it."""
        return inside / self.factor + self.offset

    def inside(self, shown: float) -> float:
        """The number as it is kept."""
        return (shown - self.offset) * self.factor


def scale_of(quantity: Quantity, units: Units) -> Scale:
    """How a quantity is shown in a studio's units."""
    fahrenheit = units.temperature is TemperatureUnit.FAHRENHEIT
    degree = "°F" if fahrenheit else "°C"
    per_degree = 1.0 / 1.8 if fahrenheit else 1.0
    length = _LENGTHS[units.length]
    inches = units.length is LengthUnit.INCH
    scales = {
        Quantity.TEMPERATURE: Scale(degree, per_degree, 32.0 if fahrenheit else 0.0),
        Quantity.DEGREES: Scale(degree, per_degree),
        Quantity.MASS: Scale(
            str(units.mass), _GRAMS_PER_OUNCE if units.mass is MassUnit.OUNCE else 1.0
        ),
        Quantity.VOLUME: Scale(str(units.volume), _VOLUMES[units.volume]),
        Quantity.LENGTH: Scale(str(units.length), length),
        Quantity.FILM: Scale(str(units.film), _FILMS[units.film]),
        Quantity.AREA: Scale("in²", 2.54**2) if inches else Scale("cm²"),
        Quantity.HOURS: Scale("h"),
        Quantity.MINUTES: Scale("min"),
        Quantity.HEAT_LOSS: Scale(f"W/{degree}", 1.0 / per_degree),
        Quantity.PER_CENT: Scale("%"),
        Quantity.COUNT: Scale(""),
        Quantity.PLAIN: Scale(""),
    }
    return scales[quantity]


def number_words(shown: float, *, digits: int = 6) -> str:
    """A number as short as it can be written: 0.3, 21, 1250."""
    text = f"{shown:.{digits}g}"
    return figure(f"{shown:.0f}" if "e" in text else text)


def shown_number(inside: float, quantity: Quantity, units: Units) -> str:
    """A number in the studio's unit, rounded the same wherever it is read.

    In another unit than the kept one a number has figures that nobody measured.

    Examples
    --------
    >>> from studio_planner.craft.settings import Units
    >>> shown_number(2.0, Quantity.FILM, Units(film=FilmUnit.INCH))
    '0.0787'
    """
    scale = scale_of(quantity, units)
    if quantity is Quantity.VOLUME:
        return number_words(round(scale.shown(inside), _ANY_DECIMALS))
    decimals = _DECIMALS.get(quantity.value, {}).get(scale.unit)
    if decimals is None:
        return number_words(scale.shown(inside), digits=_DIGITS)
    return number_words(round(scale.shown(inside), decimals))


def number_of(text: str) -> float:
    """Read what a maker types: 1.5 and 1,5 alike; ValueError in a sentence when it is none.

    With both signs the last one is taken as the decimal sign: 1.250,5 and 1,250.5.
    """
    bare = text.strip().replace("\N{NO-BREAK SPACE}", "").replace(" ", "")
    last = max(bare.rfind(","), bare.rfind("."))
    if "," in bare and "." in bare:
        whole = bare[:last].replace(",", "").replace(".", "")
        bare = f"{whole}.{bare[last + 1 :]}"
    try:
        number = float(bare.replace(",", "."))
    except ValueError:
        number = float("nan")
    if not abs(number) < float("inf"):
        raise ValueError(
            translate("forms", "{text} is not a number; write for example 1.5.").format(
                text=quoted(text)
            )
        )
    return number
