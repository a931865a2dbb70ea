"""What the cells of a log's row say: a room's temperature, or why it is none; and humidity."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.tongue import translate
from studio_planner.science.units import celsius_from
from studio_planner.storage.log_columns import cell_at, figure_in

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.storage.log_preview import LogUnit

_POWER_ON_CELSIUS = 85.0
"""What a common digital probe holds until its first measurement (data sheet of the DS18B20)."""

_COLDEST_CELSIUS, _WARMEST_CELSIUS = -40.0, 90.0
"""What a reading of a room may be: what loggers write for an error lies outside (ours)."""


class RoomCells:
    """The cells of temperature and humidity in the rows of one log."""

    def __init__(self, temperature: int | None, humidity: int | None, unit: LogUnit) -> None:
        """Read these columns; `unit` is that of a temperature which names none."""
        self._temperature = temperature
        self._humidity = humidity
        self._unit = unit
        self._known: dict[str, float | str] = {}

    def celsius(self, cells: Sequence[str]) -> float | str:
        """The temperature of a row in °C, or the sentence that says why it has none."""
        cell = cell_at(cells, self._temperature)
        # Read once: a log says the same warmth again and again.
        known = self._known.get(cell)
        if known is None:
            known = self._known[cell] = _celsius_in(cell, self._unit)
        return known

    def humidity_pct(self, cells: Sequence[str]) -> float | None:
        """The relative humidity of a row; None where it has none that can be one."""
        figure = figure_in(cell_at(cells, self._humidity))
        return figure.value if figure and 0 < figure.value <= 100 else None  # noqa: PLR2004


def _celsius_in(cell: str, unit: LogUnit) -> float | str:
    figure = figure_in(cell)
    if figure is None:
        return (
            translate("log", "it has no temperature (“{cell}”)").format(cell=cell)
            if cell
            else translate("log", "it has no temperature")
        )
    celsius = celsius_from(figure.value, figure.unit or unit)
    if abs(celsius - _POWER_ON_CELSIUS) < 1e-9:  # noqa: PLR2004 - rounding of °F only
        return translate("log", "85 °C is what a probe sends when it has just been switched on")
    if not _COLDEST_CELSIUS <= celsius <= _WARMEST_CELSIUS:
        return translate("log", "{cell} is an error value or not a room's temperature").format(
            cell=cell
        )
    return celsius
