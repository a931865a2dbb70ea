"""Making an empty studio that begins with the zone, units and currency of this computer."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QLocale

from studio_planner.desktop.system_units import currency_of, units_of
from studio_planner.desktop.system_zone import system_zone
from studio_planner.services.desk import new_studio

if TYPE_CHECKING:
    from pathlib import Path


def make_studio(path: Path, zone: str | None) -> None:
    """Make the file of an empty studio; without `zone` it is in the system's.

    StudioFileError when the name is taken.
    """
    system = QLocale.system()
    new_studio(
        path, zone=zone or system_zone(), units=units_of(system), currency=currency_of(system)
    )
