"""Studios that a planner has to cope with, made by hypothesis.

`studios()` gives situations: a studio and the instant from which it is to be planned. What it
may hold:

- 1 to `most_pieces` pieces with 1 to `most_coats` coats each: seal and flood, glitter that
  can't be sanded (with and without a touch test allowed), one-part primer, size and leaf and
  lock coat, wet in wet, taped and trimmed coats, an underside, sets of several pieces;
- two-part products with one to three published temperatures, printed ranges, wide and tight
  windows, stages left out, small mixes, minimum temperatures;
- a constant room, a nightly set-back as a step or a ramp, a cold weekend, a cold room, damp or
  unknown air, an hourly log up to the start, and sometimes a warm box;
- one spot, several, or a box; one person in the evenings, one by day, or two; absences;
- a first coat that is poured already, and perhaps sanded or rid of its tape and drips since;
- orders with every promise and every gate;
- starts close to both clock changes of the year in Europe, America and on Lord Howe Island
  (where the clock moves by half an hour), and in UTC.

All products and people are invented.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING, TypeVar
from zoneinfo import ZoneInfo

from hypothesis import strategies as st
from typing_extensions import override

from studio_planner.craft.hands import Absence, Person, WorkHours
from studio_planner.craft.local_time import instant
from studio_planner.craft.log import Poured
from studio_planner.craft.orders import Courier, Gate, Order, Promise
from studio_planner.craft.places import PatternPoint, Place, PlaceKind, Reading, Spot
from studio_planner.craft.products import MixRatio, Product, ProductKind, SheetPoint
from studio_planner.craft.settings import Settings, TemperatureUnit, Units
from studio_planner.craft.studio import Studio
from studio_planner.science.stages import Stage
from tests.planning.done_since import done_since
from tests.planning.drawn_pieces import drawn_piece
from tests.planning.picking import Pick

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from hypothesis.strategies import DrawFn

    from studio_planner.craft.pieces import Piece

_T = TypeVar("_T")

ZONES: dict[str, tuple[date, ...]] = {
    "Europe/Berlin": (date(2026, 3, 27), date(2026, 10, 23), date(2026, 6, 10)),
    "America/New_York": (date(2026, 3, 6), date(2026, 10, 30)),
    "Australia/Lord_Howe": (date(2026, 4, 3), date(2026, 10, 2)),
    "UTC": (date(2026, 2, 10),),
}
"""For each zone the days from which a plan may start, a day or two before a clock change."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Situation:
    """A studio, and the instant (UTC) from which it is to be planned."""

    studio: Studio
    start: datetime


class _Draw(Pick):
    """Drawn by hypothesis."""

    def __init__(self, draw: DrawFn) -> None:
        self._draw = draw

    @override
    def one_of(self, *values: _T) -> _T:
        return self._draw(st.sampled_from(values))

    @override
    def number(self, low: int, high: int) -> int:
        return self._draw(st.integers(low, high))


@st.composite
def studios(
    draw: DrawFn,
    *,
    most_pieces: int = 6,
    most_coats: int = 4,
    zones: Sequence[str] = tuple(ZONES),
) -> Situation:
    """Situations as the module describes them.

    Parameters
    ----------
    draw
        Given by hypothesis.
    most_pieces, most_coats
        Largest number of pieces, and of coats on each.
    zones
        Time zones to draw from; keys of `ZONES`.
    """
    return situation_of(_Draw(draw), most_pieces, most_coats, zones)


def situation_of(
    pick: Pick, most_pieces: int, most_coats: int, zones: Sequence[str] = tuple(ZONES)
) -> Situation:
    """A situation of `studios`, by whoever draws."""
    name = pick.one_of(*zones)
    zone = ZoneInfo(name)
    day = pick.one_of(*ZONES[name])
    clock = time(pick.one_of(8, 6, 12, 17, 21), pick.one_of(0, 30, 7))
    start = instant(zone, day, clock)
    places = _places(pick, start)
    products = (*_resins(pick), _primer(pick), _size(pick), _leaf(pick))
    pieces = tuple(
        drawn_piece(pick, number, products, most_coats)
        for number in range(1, pick.number(1, most_pieces) + 1)
    )
    studio = Studio(
        name="Any studio",
        zone=name,
        units=Units(temperature=pick.one_of(*TemperatureUnit)),
        settings=Settings(
            settle_minutes=pick.one_of(120, 0, 30), turn_minutes=pick.one_of(5, 5, 0)
        ),
        places=places,
        products=products,
        people=_people(pick, start),
        pieces=pieces,
        orders=_orders(pick, pieces, day),
        poured=_poured(pick, pieces, places, start),
    )
    return Situation(studio=replace(studio, log=done_since(pick, studio, start)), start=start)


def _places(pick: Pick, start: datetime) -> tuple[Place, ...]:
    humidity = pick.one_of(45.0, 55.0, 45.0, None, 78.0)
    pattern = _pattern(pick, humidity)
    band = pick.one_of(0.5, 1.0, 2.0, 0.0)
    count = pick.one_of(3, 1, 2, 6)
    spots = tuple(_spot(pick, f"S{number}") for number in range(1, count + 1))
    room = Place(
        key="room",
        name="Room",
        pattern=pattern,
        band_celsius=band,
        spots=spots,
        readings=_readings(pick, start, humidity) if pick.sometimes() else (),
    )
    if not pick.sometimes():
        return (room,)
    return (room, warm_box(pick, humidity))


def warm_box(pick: Pick, humidity: float | None) -> Place:
    """A box with one spot."""
    warm = PatternPoint(at=time(0, 0), celsius=pick.one_of(28.0, 24.0), humidity_pct=humidity)
    return Place(
        key="box",
        name="Warm box",
        kind=PlaceKind.WARM_BOX,
        pattern=(warm,),
        band_celsius=0.5,
        spots=(_spot(pick, "B1"),),
    )


def _spot(pick: Pick, key: str) -> Spot:
    long = 200 if pick.rarely() else pick.one_of(500, 700)
    return Spot(key=key, name=f"Spot {key}", length_mm=long, width_mm=400, height_mm=150)


def _pattern(pick: Pick, humidity: float | None) -> tuple[PatternPoint, ...]:
    def point(hour: int, minute: int, celsius: float, day: int | None = None) -> PatternPoint:
        damp = None if humidity is None else humidity + 0.25 * (day or 0)
        return PatternPoint(at=time(hour, minute), celsius=celsius, humidity_pct=damp, day=day)

    warm = pick.one_of(21.0, 20.0, 22.5, 24.0)
    cold = warm - pick.one_of(3.0, 1.5, 6.0)
    kinds: dict[str, Callable[[], tuple[PatternPoint, ...]]] = {
        "constant": lambda: (point(0, 0, warm),),
        "ramps": lambda: (
            point(6, 0, cold),
            point(8, 30, warm),
            point(22, 0, warm),
            point(23, 30, cold),
        ),
        "steps": lambda: (
            point(7, 0, cold),
            point(7, 0, warm),
            point(2, 30, warm),
            point(2, 30, cold),
        ),
        "cold weekend": lambda: (
            *(point(9, 0, warm, day) for day in range(5)),
            *(point(19, 0, cold, day) for day in range(7)),
        ),
        "cold": lambda: (point(5, 0, 9.0), point(15, 0, 15.0)),
    }
    return kinds[pick.one_of("constant", "ramps", "steps", "cold weekend", "ramps", "cold")]()


def _readings(pick: Pick, start: datetime, humidity: float | None) -> tuple[Reading, ...]:
    first = pick.number(3, 40)
    base = pick.one_of(20.0, 18.0, 23.0)
    noise = [0.0, 0.4, 0.9, 0.2, -0.6, -0.9, -0.1]
    return tuple(
        Reading(
            when=start - timedelta(hours=hour, minutes=13),
            celsius=base + noise[hour % len(noise)],
            humidity_pct=humidity,
        )
        for hour in range(first, -1, -1)
    )


def _points(pick: Pick, hours: dict[Stage, float], slope: float) -> tuple[SheetPoint, ...]:
    """Hours at 20 °C, published at one to three temperatures, sometimes as ranges."""
    celsius = pick.one_of((20.0,), (15.0, 25.0), (10.0, 20.0, 30.0))
    wide = 1.25 if pick.sometimes() else None
    return tuple(
        SheetPoint(
            stage=stage,
            celsius=warm,
            from_hours=(short := round(count * slope ** ((20.0 - warm) / 10.0), 4)),
            to_hours=None if wide is None else round(short * wide, 4),
        )
        for stage, count in hours.items()
        for warm in celsius
    )


def _resins(pick: Pick) -> tuple[Product, ...]:
    return tuple(_resin(pick, f"resin{number}") for number in range(1, pick.one_of(2, 1) + 1))


def _resin(pick: Pick, key: str) -> Product:
    pace = pick.one_of(1.0, 0.6, 1.6)
    opens = 4.0 * pace
    hours = {
        Stage.WORKING_TIME: 1.6 * pace + 0.9,
        Stage.COVER: 3.0 * pace,
        Stage.TAPE_OPENS: 1.5 * pace,
        Stage.TAPE_CLOSES: 6.0 * pace,
        Stage.TRIM_OPENS: 5.0 * pace,
        Stage.TRIM_CLOSES: 16.0 * pace,
        Stage.RECOAT_OPENS: opens,
        Stage.TACK_FREE: 7.0 * pace,
        Stage.RECOAT_CLOSES: opens + pick.one_of(40.0, 20.0, 7.0, 3.0),
        Stage.SANDABLE: 18.0 * pace,
        Stage.HANDLE: 20.0 * pace,
        Stage.PRINT_FREE: 36.0 * pace,
        Stage.FULL_CURE: 96.0 * pace,
    }
    silent = pick.one_of(None, None, None, Stage.COVER, Stage.PRINT_FREE, Stage.SANDABLE)
    hours.pop(silent or Stage.CUP_LIFE, None)
    return Product(
        key=key,
        name=key.title(),
        kind=ProductKind.TWO_PART,
        ratio=MixRatio(a=3, b=1),
        sheet=_points(pick, hours, pick.one_of(1.8, 2.2)),
        minimum_celsius=pick.one_of(None, 10.0, 15.0),
        maximum_celsius=pick.one_of(None, 32.0),
        humidity_limit_pct=pick.one_of(None, 85.0),
        mix_limit_g=pick.one_of(600.0, 150.0),
        invented=True,
    )


def _primer(pick: Pick) -> Product:
    hours = {
        Stage.TACK_FREE: 0.7,
        Stage.RECOAT_OPENS: 2.0,
        Stage.HANDLE: 3.0,
        Stage.PRINT_FREE: 5.0,
        Stage.FULL_CURE: 24.0,
    }
    if pick.sometimes():
        hours[Stage.RECOAT_CLOSES] = 30.0
    return Product(
        key="primer",
        name="Primer",
        kind=ProductKind.PRIMER,
        sheet=_points(pick, hours, 1.5),
        minimum_celsius=8.0,
        invented=True,
    )


def _size(pick: Pick) -> Product:
    hours = {Stage.TACK_FREE: 0.5, Stage.RECOAT_OPENS: 1.0, Stage.RECOAT_CLOSES: 18.0}
    if not pick.sometimes():
        hours |= {Stage.HANDLE: 20.0, Stage.PRINT_FREE: 40.0, Stage.FULL_CURE: 90.0}
    return Product(
        key="size",
        name="Size",
        kind=ProductKind.SIZE,
        sheet=_points(pick, hours, 1.5),
        invented=True,
    )


def _leaf(pick: Pick) -> Product:
    """Leaf has no film; some sheets say all the same when it can be touched and coated."""
    hours = {Stage.RECOAT_OPENS: 0.5, Stage.HANDLE: 0.6, Stage.PRINT_FREE: 1.0}
    sheet = () if pick.sometimes() else _points(pick, hours, 1.5)
    return Product(key="leaf", name="Leaf", kind=ProductKind.LEAF, sheet=sheet, invented=True)


def _people(pick: Pick, start: datetime) -> tuple[Person, ...]:
    week = "FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR"
    evenings = WorkHours(rule=week, start=time(17, 30), end=time(22, 30))
    weekends = WorkHours(rule="FREQ=WEEKLY;BYDAY=SA,SU", start=time(9), end=time(19))
    by_day = WorkHours(rule=week, start=time(8), end=time(17))
    late = WorkHours(rule="FREQ=WEEKLY;BYDAY=FR,SA", start=time(20), end=time(3))
    away = start + timedelta(hours=pick.one_of(30, 7, 100))
    absences = (Absence(start=away, end=away + timedelta(hours=pick.one_of(20, 70))),)
    one = Person(
        key="ada",
        name="Ada",
        work=pick.one_of((evenings, weekends), (by_day, evenings, weekends), (by_day, late)),
        absences=absences if pick.sometimes() else (),
    )
    other = Person(
        key="ben", name="Ben", work=(by_day, weekends), wakes=time(6), sleeps=time(0)
    )
    return (one, other) if pick.sometimes() else (one,)


def _orders(pick: Pick, pieces: Sequence[Piece], day: date) -> tuple[Order, ...]:
    keys = [piece.key for piece in pieces if not pick.rarely()]
    cut = pick.number(0, len(keys))
    groups = [group for group in (keys[:cut], keys[cut:]) if group]
    return tuple(
        Order(
            key=f"O{number}",
            name=f"Order {number}",
            pieces=tuple(group),
            promised=day + timedelta(days=pick.one_of(12, 5, 20, 2)),
            promise=pick.one_of(*Promise),
            gate=pick.one_of(*Gate),
            courier=Courier(transit_days=pick.one_of(2, 0)),
            packing_minutes=pick.one_of(15, 40),
        )
        for number, group in enumerate(groups, start=1)
    )


def _poured(
    pick: Pick, pieces: Sequence[Piece], places: Sequence[Place], start: datetime
) -> tuple[Poured, ...]:
    """First coats that are on already, each on a spot of its own."""
    spots = [spot for place in places for spot in place.spots]
    whole = datetime.fromtimestamp(start.timestamp() // 60 * 60, UTC)
    poured = []
    for piece, spot in zip(pieces, spots, strict=False):
        if pick.rarely():
            began = whole - timedelta(minutes=pick.one_of(8 * 60, 90, 20 * 60, 100 * 60))
            poured.append(
                Poured(
                    piece=piece.key,
                    coat=piece.stack[0].key,
                    start=began,
                    end=began + timedelta(minutes=47),
                    spot=spot.key,
                )
            )
    return tuple(poured)
