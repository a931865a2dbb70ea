"""What a search works with, and the grounds that coats are put on at."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.log_legs import legs_of
from studio_planner.craft.pieces import CoatKind

if TYPE_CHECKING:
    from studio_planner.craft.log import Poured
    from studio_planner.craft.log_legs import CarriedPours
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.planning.clocks.air_times import AirTimes
    from studio_planner.planning.clocks.edges import Edges
    from studio_planner.planning.placing.workshop import Workshop
    from studio_planner.planning.problem import Chain, Task


@dataclass(frozen=True, slots=True)
class Ground:
    """Where a coat is put on: spots of one place, one for each of its chain's pieces."""

    place: str
    spots: tuple[str, ...]


def standing(chain: Chain, ground: Ground) -> tuple[Ground, ...]:
    """The grounds of a chain whose coats are all put on at the same one."""
    return (ground,) * len(chain.tasks)


@dataclass(frozen=True, slots=True)
class Means:
    """What a search works with."""

    shop: Workshop
    edges: Edges
    air: AirTimes
    place_of_spot: dict[str, str]
    carried: CarriedPours
    now: int
    until: int
    end: int
    sand_seconds: int
    tape_seconds: int
    dust_until: int = 0
    """Until when the dust of what was sanded already settles [s]."""

    def legs(self, coat: Poured | PlannedCoat) -> list[tuple[str, int]]:
        """The spots that a coat's piece was on before the next pour, each from when on [s]."""
        legs = legs_of(self.carried, coat)
        return [(spot, int(since.timestamp())) for spot, since in legs]

    def places(self, coat: Poured | PlannedCoat) -> list[tuple[str, int]]:
        """The places that a coat's piece was in before the next pour, each from when on [s]."""
        return [(self.place_of_spot[spot], since) for spot, since in self.legs(coat)]

    def place_of(self, coat: Poured | PlannedCoat) -> str:
        """What to ask clocks for as the place of a coat; a way where it was carried about."""
        return self.edges.way(self.places(coat), coat.end.timestamp())

    def settled(self, task: Task) -> int:
        """Before when a coat must not start: dust settles, from whatever was sanded."""
        dust = 0 if task.coat.kind is CoatKind.LEAF else self.dust_until
        return dust if task.sanded is None else max(dust, task.sanded + self.shop.settle)
