"""Tracing both ways: from a piece to mixes, lots, air and sisters, and back from a lot."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.log import EntryKind, GoneKind, LogEntry
from studio_planner.craft.log_legs import stays_along
from studio_planner.craft.log_rules import gone_of
from studio_planner.craft.mixes import MixedFor
from studio_planner.craft.standing import life_of, shipped_at
from studio_planner.services.log_book.entries import entry_for
from studio_planner.services.log_book.known import coat_name, order_name, piece_name
from studio_planner.services.log_book.lots import lots_of, mixes_of_lot

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import datetime

    from studio_planner.craft.mixes import WeighedMix
    from studio_planner.craft.places import Reading
    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True, kw_only=True)
class AirRead:
    """What was read of the air around a pour; no readings where nothing was read.

    `place` is where it was poured, the readings are those of wherever the piece was.
    """

    place: str
    readings: tuple[Reading, ...]

    @property
    def coldest(self) -> float | None:
        """The lowest temperature in °C; None without readings."""
        return min((one.celsius for one in self.readings), default=None)

    @property
    def warmest(self) -> float | None:
        """The highest temperature in °C; None without readings."""
        return max((one.celsius for one in self.readings), default=None)

    @property
    def dampest(self) -> float | None:
        """The highest humidity in %; None where none was read."""
        damp = (one.humidity_pct for one in self.readings if one.humidity_pct is not None)
        return max(damp, default=None)


@dataclass(frozen=True, slots=True, kw_only=True)
class TracedPour:
    """A pour with all that belongs to it.

    `former` says that the piece was stripped since. `air` is None where its spot is gone.
    """

    entry: LogEntry
    name: str
    former: bool
    mixes: tuple[WeighedMix, ...]
    air: AirRead | None
    touches: tuple[LogEntry, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Shared:
    """A coat of another piece from the same mix (`batch`) or only from a same lot."""

    piece: str
    name: str
    coat: str
    coat_name: str
    order: str
    order_name: str
    batch: int
    same_mix: bool
    shipped: datetime | None
    gone: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceTrace:
    """All that is known of a piece: its pours in order of time, and who shares with it.

    `entries` are all that stand and are no pour or touch test; `corrections` those that were
    corrected or withdrawn, to be read beside what stands.
    """

    piece: str
    name: str
    order: str
    order_name: str
    gone: bool
    pours: tuple[TracedPour, ...]
    entries: tuple[LogEntry, ...]
    corrections: tuple[LogEntry, ...]
    sisters: tuple[Shared, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Spread:
    """Where a mix or a lot went: the mixes, and every coat that was poured from them."""

    mixes: tuple[WeighedMix, ...]
    coats: tuple[Shared, ...]


def trace_piece(studio: Studio, piece: str) -> PieceTrace:
    """Trace a piece, whether it is there or gone, by its key."""
    standing = [entry for entry in studio.standing if entry.piece == piece]
    pours = _pours(studio, piece)
    gone = gone_of(studio, GoneKind.PIECE, piece)
    order = _order_of(studio, piece)
    told = {EntryKind.POURED, EntryKind.TOUCHED}
    mixes = {mix.entry: mix for pour in pours for mix in pour.mixes}
    return PieceTrace(
        piece=piece,
        name=piece_name(studio, piece),
        order=order,
        order_name=order_name(studio, order),
        gone=gone is not None,
        pours=pours,
        entries=tuple(entry for entry in standing if entry.kind not in told),
        corrections=tuple(
            one for one in studio.log if one.piece == piece and one not in standing
        ),
        sisters=_sisters(studio, piece, tuple(mixes.values())),
    )


def trace_batch(studio: Studio, batch: int) -> Spread:
    """Where the mix of that number went; no mixes where there is none."""
    mixes = tuple(mix for mix in studio.standing_mixes if mix.batch == batch)
    return Spread(mixes=mixes, coats=tuple(_coats_of(studio, mixes)))


def trace_lot(studio: Studio, lot: str) -> Spread:
    """Where a lot went, by its key or by what its label says; no mixes where nowhere."""
    mixes = mixes_of_lot(studio, lot)
    return Spread(mixes=mixes, coats=tuple(_coats_of(studio, mixes)))


def _pours(studio: Studio, piece: str) -> tuple[TracedPour, ...]:
    entries = [
        one for one in studio.standing if (one.kind, one.piece) == (EntryKind.POURED, piece)
    ]
    told = {entry.coat for entry in entries if entry in life_of(studio, piece)}
    # What is older than the log is traced as far as it is known.
    older = [p for p in studio.pours_of(piece) if p.coat not in told]
    entries += [entry_for(pour, pour.end) for pour in older]
    entries.sort(key=lambda entry: entry.at)
    current = life_of(studio, piece)
    seen = {entry.number for entry in current}
    return tuple(
        TracedPour(
            entry=entry,
            name=coat_name(studio, piece, entry.coat),
            former=entry.number not in seen and entry in studio.standing,
            mixes=_mixes_of(studio, entry, entries[:place]),
            air=_air_around(studio, entry),
            touches=_touches(studio, entry, entries[place + 1 :]),
        )
        for place, entry in enumerate(entries)
    )


def _mixes_of(
    studio: Studio, pour: LogEntry, before: Iterable[LogEntry]
) -> tuple[WeighedMix, ...]:
    """The mixes that name the coat, since it was last poured; and the one it names itself."""
    since = max((one.at for one in before if one.coat == pour.coat), default=None)
    coat, until = MixedFor(piece=pour.piece, coat=pour.coat), pour.end or pour.at
    return tuple(
        mix
        for mix in studio.standing_mixes
        if mix.batch == pour.batch
        or (coat in mix.coats and mix.at <= until and (since is None or mix.at > since))
    )


def _touches(studio: Studio, pour: LogEntry, later: Iterable[LogEntry]) -> tuple[LogEntry, ...]:
    again = min((one.at for one in later if one.coat == pour.coat), default=None)
    return tuple(
        one
        for one in studio.standing
        if (one.kind, one.piece, one.coat) == (EntryKind.TOUCHED, pour.piece, pour.coat)
        if one.at >= pour.at and (again is None or one.at < again)
    )


def _air_around(studio: Studio, pour: LogEntry) -> AirRead | None:
    """What was read from half a day before the pour until the dew-point hours are over."""
    spots = {spot.key: place for place in studio.places for spot in place.spots}
    if pour.spot not in spots:
        return None
    legs = [(pour.spot, pour.at - _BEFORE)]
    legs += [
        (one.spot, one.at)
        for one in studio.standing
        if one.kind in _PUT_DOWN and one.piece == pour.piece
        if one.at > pour.at and one.spot in spots
    ]
    # The last instant counts too.
    end = (pour.end or pour.at) + timedelta(hours=studio.settings.dew_hours, microseconds=1)
    readings = tuple(
        one
        for spot, since, left in stays_along(legs, end)
        for one in spots[spot].readings
        if since <= one.when < left
    )
    return AirRead(place=spots[pour.spot].key, readings=readings)


_BEFORE = timedelta(hours=12)
_PUT_DOWN = {EntryKind.MOVED, EntryKind.POURED}


def _sisters(studio: Studio, piece: str, mixes: tuple[WeighedMix, ...]) -> tuple[Shared, ...]:
    batches = {mix.batch for mix in mixes}
    lots = {lot for mix in mixes for lot in lots_of(studio, mix)}
    related = [
        mix
        for mix in studio.standing_mixes
        if mix.batch in batches or lots & lots_of(studio, mix)
    ]
    others = [one for one in _coats_of(studio, related, batches) if one.piece != piece]
    return tuple(sorted(others, key=lambda one: not one.same_mix))


def _coats_of(
    studio: Studio, mixes: Iterable[WeighedMix], batches: Iterable[int] | None = None
) -> Iterable[Shared]:
    same = None if batches is None else set(batches)
    for mix in mixes:
        named = dict.fromkeys((one.piece, one.coat) for one in mix.coats)
        named |= dict.fromkeys(
            (one.piece, one.coat)
            for one in studio.standing
            if one.kind is EntryKind.POURED and one.batch == mix.batch
        )
        for piece, coat in named:
            order = _order_of(studio, piece)
            yield Shared(
                piece=piece,
                name=piece_name(studio, piece),
                coat=coat,
                coat_name=coat_name(studio, piece, coat),
                order=order,
                order_name=order_name(studio, order),
                batch=mix.batch,
                same_mix=same is None or mix.batch in same,
                shipped=shipped_at(life_of(studio, piece)),
                gone=gone_of(studio, GoneKind.PIECE, piece) is not None,
            )


def _order_of(studio: Studio, piece: str) -> str:
    """The key of the order it left with, is promised to, or was; empty where there is none."""
    left = [e.order for e in life_of(studio, piece) if e.kind is EntryKind.SHIPPED and e.order]
    if left:
        return left[-1]
    order = studio.order_of(piece)
    if order is not None:
        return order.key
    gone = gone_of(studio, GoneKind.PIECE, piece)
    return "" if gone is None else gone.order
