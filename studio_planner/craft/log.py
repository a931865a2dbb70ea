"""What really happened: pours that cannot be planned any more."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime  # noqa: TC003 - read by the exchange format at run time

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.pieces import Joint
from studio_planner.craft.tongue import translate


@dataclass(frozen=True, slots=True, kw_only=True)
class Poured:
    """A coat that has been poured: its hands-on block, its spot, and the joint it was given."""

    piece: str
    coat: str
    start: datetime
    end: datetime
    spot: str
    joint: Joint = Joint.BARE

    def __post_init__(self) -> None:
        """Check that the times carry a zone and run forward."""
        rules = Rulebook(
            translate("nouns", "pour of {piece}, {coat}").format(
                piece=self.piece, coat=self.coat
            )
        )
        rules.forward(self.start, self.end)
        rules.close()
