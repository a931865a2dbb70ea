"""Studios so small that every plan of theirs can be listed.

One or two people work a few whole hours on three or four days and are away for good then. All
work takes whole hours, so that a plan on the hour has everything in it. Sheets have odd
figures: no edge falls on a full hour. All products and people are invented.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING

from hypothesis import strategies as st

from studio_planner.craft.hands import Absence, Person, WorkHours
from studio_planner.craft.log import EntryKind, LogEntry, Poured
from studio_planner.craft.orders import Courier, Gate, Order, Promise
from studio_planner.craft.pieces import TOP, UNDERSIDE, Coat, CoatKind, Joint, Material, Piece
from studio_planner.craft.places import PatternPoint, Place, PlaceKind, Spot
from studio_planner.craft.products import MixRatio, Product, ProductKind, SheetPoint
from studio_planner.craft.settings import Settings
from studio_planner.craft.shapes import Rectangle
from studio_planner.craft.studio import Studio
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from collections.abc import Sequence

    from hypothesis.strategies import DrawFn

DAY = date(2026, 3, 3)
NOW = datetime(2026, 3, 3, 8, tzinfo=UTC)
"""A Tuesday, an hour before work begins."""

BOX = "B0"

Before = dict[tuple[str, str], int]
"""Starts [s] by piece and coat, as a plan had them that was kept."""


@dataclass(frozen=True, slots=True)
class Tiny:
    """A studio, and where a plan kept before had its coats."""

    studio: Studio
    before: Before


@st.composite
def tiny_studios(draw: DrawFn, *, carried: bool = False, halves: bool = False) -> Tiny:
    """Studios as the module describes them; if `carried`, a first coat is on and was moved.

    With `halves` blocks may end between full hours.
    """
    days = draw(st.sampled_from((3, 3, 4)))
    shapes = [(1, 1), (2, 2), (1, 1, 1), (2, 1), (3,), (2,), (3, 1), (1, 1, 2)]
    counts = draw(st.sampled_from(shapes))
    products = tuple(_product(draw, f"resin{n}") for n in range(draw(st.sampled_from((1, 2)))))
    keys = [product.key for product in products]
    pieces = tuple(
        _piece(draw, n, count, keys, halves=halves) for n, count in enumerate(counts)
    )
    spots = tuple(_spot(n) for n in range(draw(st.sampled_from((1, 2, 2)))))
    room = Place(key="room", name="Room", pattern=_pattern(draw), band_celsius=0.5, spots=spots)
    poured = _poured(draw, pieces, spots) if carried or not draw(st.integers(0, 4)) else ()
    log = _carried(draw, poured[0], spots) if carried else ()
    studio = Studio(
        name="Tiny",
        zone="UTC",
        settings=Settings(
            settle_minutes=draw(st.sampled_from((60, 0, 120))),
            turn_minutes=60,
            sand_minutes=60,
            tape_minutes=60,
            spare_hours=draw(st.sampled_from((0.0, 6.0, 30.0))),
        ),
        places=(room, _box()) if carried else (room,),
        products=products,
        people=_people(draw, days, several=sum(counts) < 4),
        pieces=pieces,
        orders=_orders(draw, pieces),
        poured=poured,
        log=log,
    )
    return Tiny(studio, _before(draw, studio) if draw(st.booleans()) else {})


def _product(draw: DrawFn, key: str) -> Product:
    pace = draw(st.sampled_from((1.0, 0.7)))
    opens = 2.63 * pace
    hours = {
        Stage.WORKING_TIME: 4.37 * pace,
        Stage.COVER: 2.31 * pace,
        Stage.TAPE_OPENS: 1.23 * pace,
        Stage.TAPE_CLOSES: draw(st.sampled_from((9.1, 5.3))) * pace,
        Stage.RECOAT_OPENS: opens,
        Stage.RECOAT_CLOSES: opens + draw(st.sampled_from((44.3, 30.3, 24.7, 5.9, 3.1))),
        Stage.SANDABLE: draw(st.sampled_from((4.27, 15.3))) * pace,
        Stage.HANDLE: draw(st.sampled_from((3.37, 3.37, 16.1))) * pace,
        Stage.PRINT_FREE: 9.7 * pace,
        Stage.FULL_CURE: 23.9 * pace,
    }
    points = tuple(
        SheetPoint(stage=stage, celsius=20.0, from_hours=round(count, 4))
        for stage, count in hours.items()
    )
    return Product(
        key=key,
        name=key.title(),
        kind=ProductKind.TWO_PART,
        ratio=MixRatio(a=2, b=1),
        sheet=points,
        mix_limit_g=draw(st.sampled_from((600.0, 150.0))),
        invented=True,
    )


def _piece(
    draw: DrawFn, number: int, coats: int, products: Sequence[str], *, halves: bool
) -> Piece:
    stack = tuple(_coat(draw, position, products, halves=halves) for position in range(coats))
    large = draw(st.integers(0, 3)) == 0
    return Piece(
        key=f"P{number}",
        name=f"Piece {number}",
        shape=Rectangle(length_mm=500 if large else 250, width_mm=200),
        material=Material.METAL,
        body_mm=8.0,
        stack=stack,
    )


def _coat(draw: DrawFn, position: int, products: Sequence[str], *, halves: bool) -> Coat:
    under = position > 0 and draw(st.integers(0, 4)) == 0
    wet = position > 0 and draw(st.integers(0, 9)) == 0
    return Coat(
        key=f"c{position}",
        kind=CoatKind.FLOOD,
        product=draw(st.sampled_from(products)),
        film_mm=draw(st.sampled_from((0.4, 1.0))),
        faces=frozenset({UNDERSIDE if under else TOP}),
        joint=Joint.WET_IN_WET if wet else Joint.IN_WINDOW,
        sandable=draw(st.integers(0, 3)) > 0,
        test_first=draw(st.booleans()),
        taped=draw(st.integers(0, 6)) == 0,
        setup_minutes=draw(st.sampled_from((30, 0) if halves else (60, 0))),
        piece_minutes=draw(st.sampled_from((60, 30))) if halves else 60,
    )


def _spot(number: int) -> Spot:
    """The second one is too short for a large piece."""
    length = 400 if number else 700
    return Spot(
        key=f"S{number}",
        name=f"Spot {number}",
        length_mm=length,
        width_mm=400,
        height_mm=150,
    )


def _pattern(draw: DrawFn) -> tuple[PatternPoint, ...]:
    night = draw(st.sampled_from((20.0, 16.0)))
    if night == 20.0:
        return (PatternPoint(at=time(0), celsius=20.0),)
    return (
        PatternPoint(at=time(7), celsius=20.0),
        PatternPoint(at=time(18), celsius=20.0),
        PatternPoint(at=time(20), celsius=night),
        PatternPoint(at=time(5), celsius=night),
    )


def _people(draw: DrawFn, days: int, *, several: bool) -> tuple[Person, ...]:
    gone = NOW.replace(hour=0) + timedelta(days=days)
    away = (Absence(start=gone, end=gone + timedelta(days=700)),)
    spans = ((9, 14), (10, 16), (9, 13), (9, 16))
    first = draw(st.sampled_from(spans))
    others = draw(st.sampled_from(((), (), (first,), ((12, 16),)))) if several else ()
    return tuple(
        Person(
            key=f"H{number}",
            name=f"Hands {number}",
            work=(WorkHours(rule="FREQ=DAILY", start=time(begin), end=time(end)),),
            absences=away,
        )
        for number, (begin, end) in enumerate((first, *others))
    )


def _orders(draw: DrawFn, pieces: Sequence[Piece]) -> tuple[Order, ...]:
    keys = [piece.key for piece in pieces]
    cut = draw(st.integers(0, len(keys)))
    kept = keys[cut:] if draw(st.integers(0, 2)) else []
    return tuple(
        Order(
            key=f"O{number}",
            name=f"Order {number}",
            pieces=tuple(group),
            promised=DAY + timedelta(days=draw(st.sampled_from((0, 1, 2, 0)))),
            promise=draw(st.sampled_from((Promise.SHIP_BY, Promise.MARKET))),
            gate=draw(st.sampled_from((Gate.DISPLAY, Gate.DISPLAY, Gate.PACK))),
            courier=Courier(transit_days=0),
            packing_minutes=60,
            opens=time(draw(st.sampled_from((9, 14)))),
            weight=draw(st.sampled_from((1.0, 2.5))),
        )
        for number, group in enumerate((keys[:cut], kept))
        if group
    )


def _poured(draw: DrawFn, pieces: Sequence[Piece], spots: Sequence[Spot]) -> tuple[Poured, ...]:
    """The first coat of the first piece is on already, on the larger spot."""
    start = NOW - timedelta(hours=draw(st.sampled_from((2, 5, 14))))
    return (
        Poured(
            piece=pieces[0].key,
            coat=pieces[0].stack[0].key,
            start=start,
            end=start + timedelta(hours=1),
            spot=spots[0].key,
        ),
    )


def _box() -> Place:
    """A warm box whose spot holds nothing, so that no plan uses it; a log may all the same."""
    return Place(
        key="box",
        name="Warm box",
        kind=PlaceKind.WARM_BOX,
        pattern=(PatternPoint(at=time(0), celsius=30.0),),
        band_celsius=0.5,
        spots=(Spot(key=BOX, name="Box", length_mm=40, width_mm=40, height_mm=10),),
    )


def _carried(draw: DrawFn, pour: Poured, spots: Sequence[Spot]) -> tuple[LogEntry, ...]:
    """Moves at the end of a block and an hour later, before anything can be handled."""
    last = spots[-1].key
    ways = ((BOX,), (BOX, "S0"), (BOX, last), (last,), (last, BOX))
    return tuple(
        LogEntry(
            number=hours,
            kind=EntryKind.MOVED,
            at=pour.start + timedelta(hours=hours),
            written=NOW,
            piece=pour.piece,
            spot=spot,
        )
        for hours, spot in enumerate(draw(st.sampled_from(ways)), start=1)
    )


def _before(draw: DrawFn, studio: Studio) -> Before:
    poured = {(pour.piece, pour.coat) for pour in studio.poured}
    return {
        (piece.key, coat.key): int(NOW.timestamp()) + 3600 * draw(st.integers(1, 30))
        for piece in studio.pieces
        for coat in piece.stack
        if (piece.key, coat.key) not in poured
    }
