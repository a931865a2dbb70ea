"""A place's spots from above: their sizes, what stands on them today, what fits nowhere."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.log_legs import stays_along
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import date, datetime

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.places import Place, Spot
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView
    from studio_planner.services.ribbons import Ribbon


@dataclass(frozen=True, slots=True, kw_only=True)
class Standing:
    """A piece on a spot, and its first instant there.

    `length_mm` and `width_mm` are its footprint, turned so that it fits where it can.
    """

    piece: Piece
    start: datetime
    length_mm: float
    width_mm: float


@dataclass(frozen=True, slots=True, kw_only=True)
class SpotToday:
    """A spot, and who stands on it today, one after the other."""

    spot: Spot
    standing: tuple[Standing, ...]

    @property
    def free_mm(self) -> tuple[float, float]:
        """The larger strip that the largest piece leaves free: length and width."""
        spot = self.spot
        if not self.standing:
            return (spot.length_mm, spot.width_mm)
        long = max(one.length_mm for one in self.standing)
        wide = max(one.width_mm for one in self.standing)
        beside = (max(spot.length_mm - long, 0.0), spot.width_mm)
        behind = (spot.length_mm, max(spot.width_mm - wide, 0.0))
        return max(beside, behind, key=lambda strip: strip[0] * strip[1])


@dataclass(frozen=True, slots=True, kw_only=True)
class TooLarge:
    """A piece that fits on no spot: what it needs at least."""

    piece: Piece
    length_mm: float
    width_mm: float
    height_mm: float


def spots_today(view: DeskView, place: Place, now: datetime) -> tuple[SpotToday, ...]:
    """The spots of a place in order, with the pieces that stand there on the day of `now`."""
    zone = view.studio.time_zone
    today = now.astimezone(zone).date()
    found: dict[str, list[Standing]] = {spot.key: [] for spot in place.spots}
    spots = {spot.key: spot for spot in place.spots}
    for lane in view.lanes:
        begun = [bar for bar in lane.ribbons if bar.start.astimezone(zone).date() <= today]
        for key, start, until in _stays(begun):
            if key in spots and _on(today, start, until, view.studio):
                found[key].append(_standing(lane.piece, spots[key], start))
    return tuple(
        SpotToday(spot=spot, standing=tuple(sorted(found[spot.key], key=lambda s: s.start)))
        for spot in place.spots
    )


def _stays(bars: Sequence[Ribbon]) -> list[tuple[str, datetime, datetime | None]]:
    """The stays of a piece: from a coat's start until it can be handled, joined on one spot."""
    stays: list[tuple[str, datetime, datetime | None]] = []
    for bar in bars:
        stands, until = bar.lane.stands(bar.planned), bar.film.safe(Stage.HANDLE)
        for spot, since, left in stays_along(stands, until):
            last = stays[-1] if stays else None
            if last and last[0] == spot and (last[2] is None or last[2] >= since):
                stays[-1] = (spot, last[1], left)
            else:
                stays.append((spot, since, left))
    return stays


def _on(today: date, start: datetime, until: datetime | None, studio: Studio) -> bool:
    zone = studio.time_zone
    begins = start.astimezone(zone).date()
    # Midnight itself is the end of the day before.
    ends = None if until is None else (until - timedelta(seconds=1)).astimezone(zone).date()
    return begins <= today and (ends is None or ends >= today)


def _standing(piece: Piece, spot: Spot, start: datetime) -> Standing:
    long, short = max(piece.footprint), min(piece.footprint)
    along = spot.length_mm >= spot.width_mm
    length, width = (long, short) if along else (short, long)
    return Standing(piece=piece, start=start, length_mm=length, width_mm=width)


def too_large(studio: Studio) -> tuple[TooLarge, ...]:
    """The pieces that fit on no spot of any place, and the size that they need."""
    return tuple(
        TooLarge(
            piece=piece,
            length_mm=max(piece.footprint),
            width_mm=min(piece.footprint),
            height_mm=piece.covered_mm,
        )
        for piece in studio.pieces
        if not any(map(piece.fits, studio.spots))
    )
