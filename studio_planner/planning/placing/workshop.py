"""What of the studio is still free while a plan grows: hands, spots, and air without dust."""

from __future__ import annotations

from bisect import bisect_left, insort
from collections import defaultdict
from dataclasses import dataclass
from datetime import UTC, datetime
from itertools import islice
from typing import TYPE_CHECKING

from studio_planner.planning.placing.free_time import FreeTime
from studio_planner.planning.spans import (
    GRID,
    Stretches,
    grid_down,
    grid_up,
    united,
)

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from studio_planner.craft.studio import Studio

_LONGEST_AWAKE = 60 * 86_400
_LONG_AGO = 400 * 86_400


@dataclass(frozen=True, slots=True)
class Taken:
    """What a placement takes: whose hands and which spots, from when until when [s]."""

    hands: tuple[tuple[str, int, int], ...]
    spots: tuple[tuple[str, int, int], ...]
    wet: tuple[tuple[int, int], ...]
    """Uncovered work."""
    sanding: tuple[tuple[int, int], ...]


class Workshop:
    """Free hours of each person, free time of each spot, wet work and sanding so far."""

    def __init__(self, studio: Studio, start: int, until: int, shortest_hold: int) -> None:
        """Start with all working hours and all spots free from `start` to `until` (seconds).

        Nothing needs a spot for less than `shortest_hold`.
        """
        # Crumbs of time that no pour fits into are kept apart: they pile up as a plan grows.
        shortest_block = _shortest_block(studio)
        zone = studio.time_zone
        span = datetime.fromtimestamp(start, UTC), datetime.fromtimestamp(until, UTC)
        self.hands = {
            person.key: FreeTime(
                (int(a.timestamp()), int(b.timestamp())) for a, b in person.working(zone, *span)
            )
            for person in studio.people
        }
        self._for_pours = {
            key: FreeTime(free.from_(start - 1), shortest_block)
            for key, free in self.hands.items()
        }
        self.awake = [
            (int(a.timestamp()), int(b.timestamp()), person.key)
            for person in studio.people
            for a, b in person.awake(zone, *span)
        ]
        self.awake.sort()
        always = start - _LONG_AGO, until
        self.spots = {spot.key: FreeTime([always], shortest_hold) for spot in studio.spots}
        self.lying: dict[str, list[tuple[str, int]]] = {}
        """Poured pieces on each spot, and until when."""
        self.settle = studio.settings.settle_minutes * 60
        self.wet: list[tuple[int, int]] = []
        self._longest_wet = 0
        self.sanding: list[tuple[int, int]] = []

    def copy(self) -> Workshop:
        """A second one that can be filled on its own."""
        twin = Workshop.__new__(Workshop)
        twin.hands = {key: free.copy() for key, free in self.hands.items()}
        twin._for_pours = {key: free.copy() for key, free in self._for_pours.items()}  # noqa: SLF001
        twin.spots = {key: free.copy() for key, free in self.spots.items()}
        twin.awake, twin.settle, twin.lying = self.awake, self.settle, self.lying
        twin.wet, twin.sanding = list(self.wet), list(self.sanding)
        twin._longest_wet = self._longest_wet  # noqa: SLF001 - a copy of itself
        return twin

    def starts(self, ranges: Stretches, lead: int, block: int, most: int) -> Stretches:
        """Grid starts within `ranges` at which somebody is free from `lead` before to the end.

        The earliest `most` stretches of every person.
        """
        found: Stretches = []
        for free in self._for_pours.values():
            found += free.starts_in(ranges, lead, block, most)
        return united(found)

    def somebody(self, start: int, end: int) -> str | None:
        """Who is free for all of [start, end); None when nobody is."""
        return next((key for key, free in self.hands.items() if free.holds(start, end)), None)

    def earliest(self, after: int, length: int) -> int | None:
        """The earliest grid start from `after` on at which somebody is free for `length`."""
        found = (free.earliest(after, length) for free in self.hands.values())
        return min((start for start in found if start is not None), default=None)

    def earliest_sanding(self, after: int, length: int) -> int | None:
        """The earliest start of sanding from `after` on, with hands and no wet work about."""
        while True:
            start = self.earliest(after, length)
            if start is None:
                return None
            after = self._dry(start, length)
            if after == start:
                return start

    def latest_sanding(self, not_before: int, until: int, length: int) -> int | None:
        """The latest start of sanding from `not_before` on that ends by `until`."""
        while until - length >= not_before:
            start = self._latest(not_before, until, length)
            if start is None:
                return None
            clash = self._clash(start, start + length)
            if clash is None:
                return start
            until = min(clash[0] - self.settle, start + length - GRID)
        return None

    def _latest(self, not_before: int, until: int, length: int) -> int | None:
        best: int | None = None
        for free in self.hands.values():
            for start, end in free.before(until):
                high = grid_down(min(end, until) - length)
                if best is not None and high <= best:
                    break
                if high >= max(start, not_before):
                    best = high
                    break
                if end <= not_before:
                    break
        return best

    def _dry(self, start: int, length: int) -> int:
        """From when on sanding meets none of the wet work that it meets from `start` on."""
        first = bisect_left(self.wet, (start - self._longest_wet, 0))
        for wet_start, wet_end in islice(self.wet, first, None):
            if wet_start >= start + length + self.settle:
                break
            if wet_start >= start or wet_end > start:
                start = max(wet_end, start + 1)
        return start

    def _clash(self, start: int, end: int) -> tuple[int, int] | None:
        """Wet work that sanding in [start, end) would dust, then or while it settles."""
        settled = end + self.settle
        first = bisect_left(self.wet, (start - self._longest_wet, 0))
        for index in range(first, len(self.wet)):
            wet_start, wet_end = self.wet[index]
            if wet_start >= settled:
                break
            if wet_start >= start or wet_end > start:
                return wet_start, max(wet_end, wet_start)
        return None

    def take(self, taken: Taken) -> None:
        """Book what one placement takes."""
        for hands in taken.hands:
            self.take_hands(*hands)
        for spot in taken.spots:
            self.take_spot(*spot)
        for wet in taken.wet:
            self.add_wet(*wet)
        for sanding in taken.sanding:
            self.add_sanding(*sanding)

    def take_all(self, takings: Iterable[Taken]) -> None:
        """As `take` for many placements at once, in a small part of the time."""
        hands: dict[str, list[tuple[int, int]]] = defaultdict(list)
        spots: dict[str, list[tuple[int, int]]] = defaultdict(list)
        for taken in takings:
            for person, start, end in taken.hands:
                hands[person].append((start, end))
            for spot, start, end in taken.spots:
                spots[spot].append((start, end))
            self.wet += taken.wet
            self.sanding += taken.sanding
        for free_of, spans_of in (
            (self.hands, hands),
            (self._for_pours, hands),
            (self.spots, spots),
        ):
            for key, spans in spans_of.items():
                free_of[key].take_all(sorted(spans))
        self.wet.sort()
        self.sanding.sort()
        self._longest_wet = max((end - start for start, end in self.wet), default=0)

    def take_hands(self, person: str, start: int, end: int) -> None:
        """Book somebody."""
        self.hands[person].take(start, end)
        self._for_pours[person].take(start, end)

    def take_spot(self, spot: str, start: int, end: int) -> None:
        """Put something on a spot from `start` to `end`."""
        self.spots[spot].take(start, end)

    def lies(self, piece: str, spot: str, start: int, end: int) -> None:
        """Note what is poured and on a spot from `start` to `end`, perhaps with others."""
        self.take_spot(spot, start, end)
        self.lying.setdefault(spot, []).append((piece, end))

    def add_wet(self, start: int, covered: int) -> None:
        """Note wet uncovered work."""
        insort(self.wet, (start, covered))
        self._longest_wet = max(self._longest_wet, covered - start)

    def add_sanding(self, start: int, end: int) -> None:
        """Note sanding."""
        insort(self.sanding, (start, end))

    def awake_within(self, opens: int, closes: int, length: int) -> tuple[int, str] | None:
        """The first time in [opens, closes] at which somebody is awake for `length`."""
        for start, end, key in self.awake_from(opens):
            if start >= closes:
                return None
            low = grid_up(max(start, opens))
            if low + length <= min(end, closes):
                return low, key
        return None

    def awake_from(self, second: int) -> Iterator[tuple[int, int, str]]:
        """Waking spans (start, end, person) that end after `second`, by their start."""
        # Somebody who never sleeps is one long span; longer than any record it need not be.
        first = bisect_left(self.awake, (second - _LONGEST_AWAKE, 0, ""))
        for span in self.awake[first:]:
            if span[1] > second:
                yield span


def _shortest_block(studio: Studio) -> int:
    """Seconds of the shortest hands-on block that any coat can have."""
    minutes = [
        coat.setup_minutes + coat.piece_minutes * piece.count
        for piece in studio.pieces
        for coat in piece.stack
    ]
    return 60 * min(minutes, default=1)
