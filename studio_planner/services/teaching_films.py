"""The touch tests of a studio's log as tests of a stage: in which film, after how much cure."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.log import EntryKind
from studio_planner.craft.touches import Verdict
from studio_planner.science.clocks import StageClock, degree_over
from studio_planner.science.stages import Edge, Stage
from studio_planner.science.teaching import FilmTest, steady_celsius

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from studio_planner.craft.log import LogEntry
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio
    from studio_planner.science.history import History
    from studio_planner.science.laws import StageLaw

MOST_TESTS = 60
"""So many of the latest tests of a stage are used: bottles change, and so do fingers."""

_LEAST_SHARE = 0.02
"""A film that by the sheet has not come so far is as good as just poured: it says nothing."""

_LOOKS_AT_BAND = 8
_HOUR = 3600.0

Stay = tuple[str, float, float]
"""A place's key, and from and to which second a film was there."""


@dataclass(frozen=True, slots=True)
class TouchedFilm:
    """A touch of the log with the film it was of: its product, its pour, where it had been."""

    entry: LogEntry
    product: str
    pour: str
    stays: tuple[Stay, ...]


def touched_films(studio: Studio) -> tuple[TouchedFilm, ...]:
    """Every touch that stands in the log and of which it is known what was touched.

    A film counts from the end of its hands-on block. A touch of a coat that nobody wrote down
    as poured, or of a piece that is gone and whose mix was not weighed, is left out.
    """
    pours = _pours(studio)
    found = []
    for entry in studio.standing:
        if entry.kind is EntryKind.TOUCHED:
            before = [one for one in pours if _is_of(entry, one) and one.end <= entry.at]
            found += [_touched(studio, entry, max(before, key=_end))] if before else []
    return tuple(film for film in found if film.product)


def film_tests(
    studio: Studio, films: Iterable[TouchedFilm], product: Product, stage: Stage
) -> tuple[FilmTest, ...]:
    """The latest touches of a product's films that tell of a stage; none without a figure."""
    law = product.sheet_law(stage)
    if law is None:
        return ()
    told = [
        (film, verdict)
        for film in films
        if film.product == product.key
        for about, verdict in _told(film.entry)
        if about is stage
    ]
    found = (
        _film_test(studio, film, verdict, law, product.minimum_celsius)
        for film, verdict in told[-MOST_TESTS:]
    )
    return tuple(test for test in found if test is not None)


@dataclass(frozen=True, slots=True)
class _Pour:
    piece: str
    coat: str
    end: datetime
    spot: str
    batch: int | None


def _pours(studio: Studio) -> list[_Pour]:
    """What was poured by the log, and by the pieces where the log is younger than they are."""
    written = [
        _Pour(e.piece, e.coat, e.end, e.spot, e.batch)
        for e in studio.standing
        if e.kind is EntryKind.POURED and e.end is not None
    ]
    known = {(pour.piece, pour.coat, pour.end.timestamp()) for pour in written}
    return written + [
        _Pour(p.piece, p.coat, p.end, p.spot, p.batch)
        for p in studio.poured
        if (p.piece, p.coat, p.end.timestamp()) not in known
    ]


def _end(pour: _Pour) -> float:
    return pour.end.timestamp()


def _is_of(entry: LogEntry, pour: _Pour) -> bool:
    return (entry.piece, entry.coat) == (pour.piece, pour.coat)


def _touched(studio: Studio, entry: LogEntry, pour: _Pour) -> TouchedFilm:
    # One mix is one pour, however many pieces it went to.
    own = f"{pour.piece} {pour.coat} {pour.end.astimezone(UTC).isoformat()}"
    return TouchedFilm(
        entry=entry,
        product=_product(studio, pour),
        pour=own if pour.batch is None else f"batch {pour.batch}",
        stays=_stays(studio, pour, entry.at),
    )


def _product(studio: Studio, pour: _Pour) -> str:
    """The key of what was poured, by its mix, else by the stack; "" if neither knows."""
    mixes = (mix.product for mix in studio.standing_mixes if mix.batch == pour.batch)
    stacks = (piece.stack for piece in studio.pieces if piece.key == pour.piece)
    coats = (coat.product for stack in stacks for coat in stack if coat.key == pour.coat)
    return next(mixes, None) or next(coats, "")


def _stays(studio: Studio, pour: _Pour, until: datetime) -> tuple[Stay, ...]:
    moves = [(pour.end, pour.spot)]
    moves += [
        (entry.at, entry.spot)
        for entry in studio.standing
        if entry.kind in {EntryKind.MOVED, EntryKind.POURED}
        and entry.piece == pour.piece
        and pour.end < entry.at < until
    ]
    seconds = [when.timestamp() for when, _ in moves] + [until.timestamp()]
    return tuple(
        (_place(studio, spot), start, end)
        for (_, spot), start, end in zip(moves, seconds, seconds[1:], strict=False)
        if end > start
    )


def _place(studio: Studio, spot: str) -> str:
    """The place of a spot; of one that is gone nothing is known: the first place is taken."""
    known = (place.key for place in studio.places for one in place.spots if one.key == spot)
    return next(known, studio.places[0].key)


def _told(entry: LogEntry) -> Iterable[tuple[Stage, Verdict]]:
    if entry.touch is None or entry.verdict is None:
        return ()
    return entry.touch.tells(entry.verdict)


def _film_test(
    studio: Studio,
    film: TouchedFilm,
    verdict: Verdict,
    law: StageLaw,
    minimum: float | None,
) -> FilmTest | None:
    airs = [(_air(studio, place, start, end), start, end) for place, start, end in film.stays]
    stays = [
        (StageClock(law, air, Edge.LIKELY, minimum), start, end) for air, start, end in airs
    ]
    share = degree_over(stays)
    if share < _LEAST_SHARE:
        return None
    hours = sum(end - start for _, start, end in stays) / _HOUR
    return FilmTest(
        pour=film.pour,
        share=share,
        celsius=steady_celsius(law, hours / share),
        already=verdict is Verdict.ALREADY,
        room_band=_band(airs),
    )


def _air(studio: Studio, place: str, start: float, end: float) -> History:
    here = next(one for one in studio.places if one.key == place)
    first = datetime.fromtimestamp(start, UTC)
    # A history covers whole stretches; a second more keeps its end inside.
    last = datetime.fromtimestamp(end, UTC) + timedelta(seconds=1)
    return here.history(studio.time_zone, first, last)


def _band(airs: Sequence[tuple[History, float, float]]) -> float:
    """How far the room may have been off as a whole: the mean of its band over the stays."""
    whole = sum(end - start for _, start, end in airs)
    return sum((end - start) / whole * _mean_band(air, start, end) for air, start, end in airs)


def _mean_band(air: History, start: float, end: float) -> float:
    looks = [start + (end - start) * (n + 0.5) / _LOOKS_AT_BAND for n in range(_LOOKS_AT_BAND)]
    return sum(air.band_at(look) or 0.0 for look in looks) / _LOOKS_AT_BAND
