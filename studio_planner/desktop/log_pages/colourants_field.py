"""Colourants with their masses on one line: 1.2 teal; 0.4 white."""

from __future__ import annotations

from typing import TYPE_CHECKING

from typing_extensions import override

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.mixes import WeighedColour
from studio_planner.craft.settings import Units
from studio_planner.craft.tongue import quoted
from studio_planner.desktop.forms.fields import TextField
from studio_planner.desktop.quantities import Quantity, number_of, number_words, scale_of
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.canvas import Canvas


class ColourantsField(TextField):
    """A mass and a name for each, with semicolons between, in the studio's unit of mass."""

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Start empty."""
        label = translate("weights", "Colourants, such as: 1.2 teal; 0.4 white")
        super().__init__(canvas, label, parent)
        self._units = Units()

    def set_units(self, units: Units) -> None:
        """Read masses in the studio's unit from now on."""
        self._units = units

    @override
    def value(self) -> tuple[WeighedColour, ...]:  # type: ignore[override]
        parts = (part.strip() for part in self.editor.text().split(";"))
        return tuple(self._colour(part) for part in parts if part)

    @override
    def show_value(self, value: tuple[WeighedColour, ...]) -> None:  # type: ignore[override]
        scale = scale_of(Quantity.MASS, self._units)
        said = (f"{number_words(scale.shown(one.grams))} {one.name}" for one in value)
        super().show_value("; ".join(said))

    def _colour(self, part: str) -> WeighedColour:
        amount, _, name = part.partition(" ")
        unit = scale_of(Quantity.MASS, self._units).unit
        name = name.strip().removeprefix(f"{unit} ").strip()
        if not name or not amount:
            raise ValueError(self._how(part))
        try:
            grams = scale_of(Quantity.MASS, self._units).inside(number_of(amount))
            return WeighedColour(name=name, grams=grams)
        except (ValueError, InvalidEntry) as error:
            raise ValueError(self._how(part)) from error

    @staticmethod
    def _how(part: str) -> str:
        text = translate("weights", "{part} is no mass and name; write it as 1.2 teal.")
        return text.format(part=quoted(part))
