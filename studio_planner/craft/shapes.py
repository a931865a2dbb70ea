"""Shapes of blanks: area to coat, length of edge, and the room they take on a shelf."""

from __future__ import annotations

import math
from dataclasses import dataclass

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.tongue import translate

_LONGEST_MM = 5000.0


def _check_sides(noun: str, **sides: float) -> None:
    rules = Rulebook(noun)
    for field, value in sides.items():
        rules.between(value, 1.0, _LONGEST_MM, field)
    rules.close()


@dataclass(frozen=True, slots=True, kw_only=True)
class Rectangle:
    """A blank with four straight sides; lengths in mm."""

    length_mm: float
    width_mm: float

    def __post_init__(self) -> None:
        """Check the sides (1 to 5000 mm)."""
        _check_sides("rectangle", length_mm=self.length_mm, width_mm=self.width_mm)

    @property
    def area_cm2(self) -> float:
        """The top's area in cm²."""
        return self.length_mm * self.width_mm / 100.0

    @property
    def perimeter_mm(self) -> float:
        """The length of the edge in mm."""
        return 2.0 * (self.length_mm + self.width_mm)


@dataclass(frozen=True, slots=True, kw_only=True)
class Round:
    """A round blank; diameter in mm."""

    diameter_mm: float

    def __post_init__(self) -> None:
        """Check the diameter (1 to 5000 mm)."""
        _check_sides("round", diameter_mm=self.diameter_mm)

    @property
    def length_mm(self) -> float:
        """The room it takes along the shelf in mm."""
        return self.diameter_mm

    @property
    def width_mm(self) -> float:
        """The room it takes across the shelf in mm."""
        return self.diameter_mm

    @property
    def area_cm2(self) -> float:
        """The top's area in cm²."""
        return math.pi * self.diameter_mm**2 / 400.0

    @property
    def perimeter_mm(self) -> float:
        """The length of the edge in mm."""
        return math.pi * self.diameter_mm


@dataclass(frozen=True, slots=True, kw_only=True)
class Oval:
    """An elliptical blank; both axes in mm."""

    length_mm: float
    width_mm: float

    def __post_init__(self) -> None:
        """Check the axes (1 to 5000 mm)."""
        _check_sides("oval", length_mm=self.length_mm, width_mm=self.width_mm)

    @property
    def area_cm2(self) -> float:
        """The top's area in cm²."""
        return math.pi * self.length_mm * self.width_mm / 400.0

    @property
    def perimeter_mm(self) -> float:
        """The length of the edge in mm.

        Ramanujan's second approximation (NIST DLMF 19.9), at most 0.05 % short for the
        flattest oval.
        """
        a, b = self.length_mm / 2.0, self.width_mm / 2.0
        flat = 3.0 * ((a - b) / (a + b)) ** 2
        return math.pi * (a + b) * (1.0 + flat / (10.0 + math.sqrt(4.0 - flat)))


@dataclass(frozen=True, slots=True, kw_only=True)
class FreeArea:
    """A blank of any outline: measured area and edge, and the rectangle around it."""

    area_cm2: float
    perimeter_mm: float
    length_mm: float
    width_mm: float

    def __post_init__(self) -> None:
        """Check that the area fits into the rectangle and inside the edge."""
        rules = Rulebook(translate("nouns", "free area"))
        for field in ("length_mm", "width_mm"):
            rules.between(getattr(self, field), 1.0, _LONGEST_MM, field)
        rules.between(self.perimeter_mm, 1.0, 4 * _LONGEST_MM, "perimeter_mm")
        largest = self.length_mm * self.width_mm / 100.0
        rules.between(self.area_cm2, 0.01, largest * 1.001, "area_cm2")
        circle = 4.0 * math.pi * self.area_cm2 * 100.0
        rules.require(
            self.perimeter_mm >= math.sqrt(max(circle, 0.0)) * 0.9995,
            "perimeter_mm",
            translate(
                "rules", "{perimeter_mm:g} mm of edge cannot enclose {area_cm2:g} cm²."
            ).format(perimeter_mm=self.perimeter_mm, area_cm2=self.area_cm2),
        )
        rules.close()


Shape = Rectangle | Round | Oval | FreeArea
