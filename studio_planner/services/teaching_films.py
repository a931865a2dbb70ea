"""The touch tests of a studio's log as tests of a stage: in which film, after how much cure."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from functools import cached_property, lru_cache
from typing import TYPE_CHECKING

from studio_planner.craft.log import EntryKind
from studio_planner.craft.touches import Verdict
from studio_planner.science.clocks import StageClock, degree_over
from studio_planner.science.laws import SheetFigure, stage_law
from studio_planner.science.stages import Edge, Stage
from studio_planner.science.teaching import FilmTest, steady_celsius

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from studio_planner.craft.log import LogEntry
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio
    from studio_planner.science.history import History

MOST_TESTS = 60
"""So many of the latest tests of a stage are used: bottles change, and so do fingers."""

_LEAST_SHARE = 0.02
"""A film that by the sheet has not come so far is as good as just poured: it says nothing."""

_LOOKS_AT_BAND = 8
_HOUR = 3600.0
_SECOND = timedelta(seconds=1)

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


class TouchedFilms:
    """The touched films of a studio and the air they stood in, which is looked up once."""

    def __init__(self, studio: Studio) -> None:
        """Read the log; airs are looked up when first asked for."""
        self._studio = studio
        self._films = touched_films(studio)

    @cached_property
    def _airs(self) -> dict[str, History]:
        spans: dict[str, tuple[float, float]] = {}
        for film in self._films:
            for place, start, end in film.stays:
                first, last = spans.get(place, (start, end))
                spans[place] = min(first, start), max(last, end)
        return {place: _air(self._studio, place, *span) for place, span in spans.items()}

    def tests(self, product: Product, stage: Stage) -> tuple[FilmTest, ...]:
        """The latest touches of a product's films that tell of a stage of its sheet."""
        law = product.sheet_law(stage)
        if law is None:
            return ()
        told = [
            (film, verdict)
            for film in self._films
            if film.product == product.key
            for about, verdict in _told(film.entry)
            if about is stage
        ]
        sheet = _Sheet(stage, law.figures, product.minimum_celsius)
        found = (self._test(film, verdict, sheet) for film, verdict in told[-MOST_TESTS:])
        return tuple(test for test in found if test is not None)

    def _test(self, film: TouchedFilm, verdict: Verdict, sheet: _Sheet) -> FilmTest | None:
        airs = tuple(self._airs[place].part(start, end) for place, start, end in film.stays)
        share, celsius = _reached(sheet, airs)
        if share < _LEAST_SHARE:
            return None
        return FilmTest(
            pour=film.pour,
            share=share,
            celsius=celsius,
            already=verdict is Verdict.ALREADY,
            room_band=_band(airs),
        )


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


def _air(studio: Studio, place: str, start: float, end: float) -> History:
    here = next(one for one in studio.places if one.key == place)
    # A second more on either side keeps both ends inside.
    first = datetime.fromtimestamp(start, UTC) - _SECOND
    return here.history(studio.time_zone, first, datetime.fromtimestamp(end, UTC) + _SECOND)


@dataclass(frozen=True, slots=True)
class _Sheet:
    """What a share is measured by: the sheet's figures of a stage, and the lowest °C."""

    stage: Stage
    figures: tuple[SheetFigure, ...]
    minimum: float | None


@lru_cache(maxsize=1024)
def _reached(sheet: _Sheet, airs: tuple[History, ...]) -> tuple[float, float]:
    """The share reached in these airs, and the steady °C in which it takes as long.

    It is remembered, since pages ask after every change and mostly nothing was touched.
    """
    law = stage_law(sheet.stage, sheet.figures)
    share = degree_over(
        (StageClock(law, air, Edge.LIKELY, sheet.minimum), *air.extent) for air in airs
    )
    hours = sum(_length(air) for air in airs) / _HOUR
    return share, steady_celsius(law, hours / max(share, _LEAST_SHARE))


def _length(air: History) -> float:
    start, end = air.extent
    return end - start


def _band(airs: Sequence[History]) -> float:
    """How far the room may have been off as a whole [°C]: the mean of its band."""
    whole = sum(map(_length, airs))
    return sum(_length(air) / whole * _mean_band(air) for air in airs)


def _mean_band(air: History) -> float:
    start, _ = air.extent
    looks = [start + _length(air) * (n + 0.5) / _LOOKS_AT_BAND for n in range(_LOOKS_AT_BAND)]
    return sum(air.band_at(look) or 0.0 for look in looks) / _LOOKS_AT_BAND
