"""One coat in the exact model: its start, block, spot and hands, and the parts they lie in."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from studio_planner.planning.exact.choices import AlikeHands, AlikeSpots
    from studio_planner.planning.exact.in_hours import StretchUnknowns
    from studio_planner.planning.exact.reaches import Part
    from studio_planner.planning.problem import Task
    from studio_planner.planning.solver import Flag, Quantity


@dataclass(slots=True)
class CoatUnknowns:
    """What the solver has to find for one coat; of a poured or settled one all is known.

    `start` in slots, `minutes` of the block; `on`, `by` and `lasting` are its spots, hands and
    lengths with the flag that chooses each (always set where there is but one).
    """

    task: Task
    start: Quantity
    minutes: Quantity
    on: list[tuple[AlikeSpots, Flag]]
    by: list[tuple[AlikeHands, Flag]] = field(default_factory=list)
    lasting: list[tuple[int, Flag]] = field(default_factory=list)
    parts: list[tuple[Part, Flag]] = field(default_factory=list)
    end: Quantity = 0
    end_parts: list[tuple[Part, Flag]] = field(default_factory=list)
    """When a block of several lengths is over, in the units that the model counts ends in, and
    the parts that it may lie in."""
    stretches: list[StretchUnknowns] = field(default_factory=list)
    end_stretches: list[StretchUnknowns] = field(default_factory=list)
    """The stretches of working hours that those parts make up."""
    window: tuple[int, int] = (0, 0)
    """The slots in which it may start."""
    known_start: int | None = None
    """The second at which a coat of which all is known is started."""
    place: str = ""
    """What clocks are asked for as the place of such a coat."""
    since: Quantity = 0
    """The slot from which it is on its spot."""

    @property
    def alone(self) -> Flag:
        """Set when its block is as long as it is by itself."""
        return self.lasting[0][1]

    def slots(self, step: int, more: int = 0) -> Quantity:
        """The slots that its block, and some seconds more, reach into."""
        if len(self.lasting) == 1:
            return -(-(self.lasting[0][0] + more) // step)
        total: Quantity = 0
        for seconds, flag in self.lasting:
            total += -(-(seconds + more) // step) * flag
        return total
