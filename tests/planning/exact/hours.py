"""Hours of a tiny studio as bits of whole numbers, and the craft's clocks in full hours."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from math import ceil
from typing import TYPE_CHECKING

from studio_planner.craft.timing import Timing
from studio_planner.science.stages import Edge, Stage
from tests.planning.exact.tiny_studios import NOW

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from studio_planner.craft.pieces import Coat
    from studio_planner.craft.studio import Studio

HOUR = 3600
ORIGIN = NOW.replace(hour=0) - timedelta(days=2)
LAST = 24 * 7
"""Hours from the origin that bits are kept for."""


def span(first: int, end: int) -> int:
    """Bits of the hours from `first` up to `end`, not inside."""
    low, high = max(first, 0), min(end, LAST)
    return ((1 << high) - (1 << low)) if high > low else 0


def second_of(hour: float) -> int:
    return int(ORIGIN.timestamp()) + round(hour * HOUR)


def up(second: float) -> int:
    return -int(-(second - ORIGIN.timestamp()) // HOUR)


def down(second: float) -> int:
    return int((second - ORIGIN.timestamp()) // HOUR)


def _cut(legs: list[tuple[str, datetime]], since: datetime) -> list[tuple[str, datetime]]:
    """Legs from an instant on."""
    ends = [*(at for _, at in legs[1:]), datetime.max.replace(tzinfo=UTC)]
    rows = zip(legs, ends, strict=True)
    return [(place, max(at, since)) for (place, at), end in rows if end > since]


class Hours:
    """Who works and wakes when, and when stages are reached."""

    def __init__(self, studio: Studio) -> None:
        """Look at one studio whose plans use its first place only."""
        self.studio = studio
        self._timing = Timing(studio, ORIGIN - timedelta(days=2), NOW + timedelta(days=60))
        zone, until = studio.time_zone, NOW + timedelta(days=5)
        self.work = [self._bits(one.working(zone, NOW, until)) for one in studio.people]
        self._awake = [span for one in studio.people for span in one.awake(zone, NOW, until)]
        self._known: dict[tuple[str, Stage, Edge, float], float | None] = {}
        self._fits: dict[tuple[int, int, float], list[tuple[int, int]]] = {}

    def _bits(self, spans: Sequence[tuple[datetime, datetime]]) -> int:
        found = 0
        for start, end in spans:
            found |= span(up(start.timestamp()), down(end.timestamp()))
        return found

    def reached(self, coat: Coat, stage: Stage, edge: Edge, since: float) -> float | None:
        """A second or two on the safe side, as plans have it."""
        key = (coat.product, stage, edge, since)
        if key not in self._known:
            self._known[key] = self._exactly(coat, stage, edge, since)
        return self._known[key]

    def _exactly(self, coat: Coat, stage: Stage, edge: Edge, since: float) -> float | None:
        legs = self._legs(coat, datetime.fromtimestamp(since, UTC))
        found = self._timing.reached(self.studio.product(coat.product), stage, edge, legs)
        if found is None:
            return None
        return int(found.timestamp()) + (2 if stage.not_before else -2)

    def _legs(self, coat: Coat, since: datetime) -> list[tuple[str, datetime]]:
        """In the room; but what began before now is poured, and may have been in the box.

        From there it goes to rest in the room once it can be handled.
        """
        room, place_of = self.studio.places[0].key, self.studio.place_of_spot
        if since >= NOW:
            return [(room, since)]
        (pour,), product = self.studio.poured, self.studio.product(coat.product)
        legs = [(room, pour.start)]
        legs += [(place_of(entry.spot).key, entry.at) for entry in self.studio.log]
        since_spread = _cut(legs, pour.end)
        handled = self._timing.reached(product, Stage.HANDLE, Edge.LATE, since_spread)
        assert handled is not None
        return _cut([*legs, (room, handled)], since)

    def first_from(self, coat: Coat, stage: Stage, end: float, edge: Edge = Edge.LATE) -> int:
        """The first full hour at which a stage is reached."""
        found = self.reached(coat, stage, edge, end)
        return LAST if found is None else up(found)

    def blocks(self, person: int, lead: int, block: float) -> list[tuple[int, int]]:
        """Starts in somebody's hours, with the hours of the work as bits."""
        key = (person, lead, block)
        if key not in self._fits:
            rows = (
                (start, span(start - lead, ceil(start + block)))
                for start in range(up(NOW.timestamp()) + lead, LAST)
            )
            away = ~self.work[person]
            self._fits[key] = [row for row in rows if not row[1] & away]
        return self._fits[key]

    def awake(self, first: int, last: int) -> Iterator[int]:
        """The hours from one to another, both inside, in which somebody is awake throughout."""
        for hour in range(max(first, 0), last + 1):
            begin, end = second_of(hour), second_of(hour + 1)
            if any(a.timestamp() <= begin and end <= b.timestamp() for a, b in self._awake):
                yield hour
