"""Which time zone this computer is set to."""

from __future__ import annotations

from PySide6.QtCore import QTimeZone


def system_zone() -> str:
    """The IANA name of the system's time zone; UTC where it has none."""
    return bytes(QTimeZone.systemTimeZoneId().data()).decode("ascii", "replace") or "UTC"
