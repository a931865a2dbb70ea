"""The plan by the shelf: what stands on each spot, from its pour until it can be handled."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.services.moving.held import Stay, stays_of

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import datetime

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.places import Place, Spot
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.services.desk import DeskView
    from studio_planner.services.ribbons import Lane


@dataclass(frozen=True, slots=True)
class Standing:
    """A piece on a spot over some coats; `end` None: not free within this record."""

    lane: Lane
    coats: tuple[PlannedCoat, ...]
    start: datetime
    end: datetime | None

    @property
    def piece(self) -> Piece:
        """What stands there."""
        return self.lane.piece


@dataclass(frozen=True, slots=True)
class SpotLane:
    """One spot, and what stands on it in order of time."""

    spot: Spot
    place: Place
    stands: tuple[Standing, ...]


def spot_lanes(view: DeskView, lanes: Iterable[Lane] | None = None) -> tuple[SpotLane, ...]:
    """One lane for each spot, in the studio's order; of all pieces, or of some lanes' only."""
    stays: dict[str, list[Stay]] = {}
    for lane in view.lanes if lanes is None else lanes:
        for stay in stays_of(lane):
            stays.setdefault(stay.spot, []).append(stay)
    return tuple(
        SpotLane(spot, place, _stands(stays.get(spot.key, ())))
        for place in view.studio.places
        for spot in place.spots
    )


def _stands(stays: Iterable[Stay]) -> tuple[Standing, ...]:
    """Stays in order; those of a piece that go over into one another are one."""
    found: list[Standing] = []
    for stay in sorted(stays, key=lambda stay: stay.start):
        last = found[-1] if found else None
        if last is not None and last.lane is stay.lane and last.end == stay.start:
            coats = (*last.coats, stay.coat)
            found[-1] = Standing(stay.lane, coats, last.start, stay.end)
        else:
            found.append(Standing(stay.lane, (stay.coat,), stay.start, stay.end))
    return tuple(found)
