"""What services ask of the world outside; assembly passes the real ones in."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

if TYPE_CHECKING:
    from datetime import datetime


class WallClock(Protocol):
    """Tells what time it is; nothing else in the program may ask the system."""

    def now(self) -> datetime:
        """Give the current instant, aware, in UTC."""
        ...
