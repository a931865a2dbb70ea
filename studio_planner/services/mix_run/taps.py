"""What a maker has tapped while a mix is weighed and poured; all else follows from it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import StrEnum
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.plans import PlannedCoat


class TapKind(StrEnum):
    """What a tap says.

    READS: the display reads so many grams. MET: A meets B now. DONE: the step is done.
    LEAVE: the ratio stays as it is. LEFT: so many grams are left in this cup.
    """

    READS = "reads"
    MET = "met"
    DONE = "done"
    LEAVE = "leave"
    LEFT = "left"


@dataclass(frozen=True, slots=True, kw_only=True)
class Tap:
    """One tap at an instant (aware); `grams` as the display reads or as are left, else 0."""

    kind: TapKind
    at: datetime
    grams: float = 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class RunningMix:
    """A mix that is being weighed and poured.

    `coats` are those of the plan as they were when it began: a new plan changes nothing that
    is in a cup. `lot_a` and `lot_b` are keys of bottles, or empty. `batches` are the numbers
    under which portions are in the log, in their order.
    """

    coats: tuple[PlannedCoat, ...]
    begun: datetime
    lot_a: str = ""
    lot_b: str = ""
    taps: tuple[Tap, ...] = ()
    batches: tuple[int, ...] = ()

    def tapped(self, tap: Tap) -> RunningMix:
        """The same after one tap more."""
        return replace(self, taps=(*self.taps, tap))

    @property
    def before_last(self) -> RunningMix:
        """The same without its last tap."""
        return replace(self, taps=self.taps[:-1])
