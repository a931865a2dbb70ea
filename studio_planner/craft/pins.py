"""Pins: pours that the maker wants to do at a time of their own choosing."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime  # noqa: TC003 - read by the exchange format at run time

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.grid import GRID_SECONDS
from studio_planner.craft.tongue import translate


@dataclass(frozen=True, slots=True, kw_only=True)
class Pin:
    """A coat of a piece that starts at `start` (aware) and nowhen else."""

    piece: str
    coat: str
    start: datetime

    def __post_init__(self) -> None:
        """Check that the time carries a zone."""
        rules = Rulebook(
            translate("nouns", "pin of {piece}, {coat}").format(
                piece=self.piece, coat=self.coat
            )
        )
        rules.require(
            self.start.utcoffset() is not None,
            "start",
            translate("rules", "give a time with a zone."),
        )
        rules.require(
            self.start.timestamp() % GRID_SECONDS == 0,
            "start",
            translate("rules", "use whole five minutes."),
        )
        rules.close()
