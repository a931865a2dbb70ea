"""Realistic studios of any size for benchmarks: the same seed always makes the same studio.

`make_studio` makes one of any size with generous dates; `benchmark_studio` one of the sizes
that plans are judged by, whose first dates come sooner than some coats can cure, or all soon
after each other in the smallest: one rule for each size, no seed has its own.

Hands are loaded to 60-85 % when no mix is shared (sharing mixes lowers it): one person in the
evenings and at weekends up to 20 pieces, two people by day above. All people are
invented.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from datetime import UTC, datetime, time, timedelta
from random import Random
from typing import TYPE_CHECKING

from studio_planner.craft.hands import Person, WorkHours
from studio_planner.craft.orders import Gate, Order, Promise
from studio_planner.craft.pieces import (
    UNDERSIDE,
    Coat,
    CoatKind,
    Colour,
    Joint,
    Material,
    Piece,
)
from studio_planner.craft.places import PatternPoint, Place, Spot
from studio_planner.craft.shapes import Rectangle, Round
from studio_planner.craft.studio import Studio
from tests.planning.benchmark_sheets import fast, primer, slow

if TYPE_CHECKING:
    from collections.abc import Sequence

START = datetime(2026, 3, 2, 7, 0, tzinfo=UTC)
"""A Monday, 8 o'clock in the studio; the clock changes four weeks later."""

MOST_FOR_ONE_PERSON = 20
_WEEK = "FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR"
_SETUP_SHARE = 0.4
_DAYS_ON_A_SPOT = 1.3
"""How many days of a spot a coat takes, with some air between."""

_UNDER_WAY = 2
"""Days that a parcel is under way, as couriers are if nothing else is said."""


@dataclass(frozen=True, slots=True)
class Dates:
    """How dates are promised: the first after `lead` days, the others spread over the weeks.

    `pace` is the share of the weeks over which they are spread. `cure` days more are given for
    full cure; with `transit` those that a parcel is under way are given too.
    """

    lead: float
    pace: float = 1.0
    cure: int = 0
    transit: int = 0


GENEROUS = Dates(7.0)
_LATE = Dates(4.0, 0.7, 7, _UNDER_WAY)


@dataclass(frozen=True, slots=True)
class Size:
    """A size of the benchmark: pieces with coats each, in so many weeks, and its dates."""

    pieces: int
    coats: int
    weeks: int
    dates: Dates


SIZES = {
    "S": Size(8, 4, 1, Dates(4.7, 0.5, 7, _UNDER_WAY)),
    "M": Size(20, 5, 2, Dates(2.0, 1.1, 7, _UNDER_WAY)),
    "L": Size(60, 5, 4, Dates(1.5, 1.06, 7, _UNDER_WAY)),
    "X": Size(150, 5, 8, Dates(2.5, 1.05, 7, _UNDER_WAY)),
}


def benchmark_studio(size: str, seed: int) -> Studio:
    """Make the studio of one size of the benchmark; plan it from `START`."""
    one = SIZES[size]
    return make_studio(seed, one.pieces, one.coats, one.weeks, one.dates)


def late_studio(seed: int) -> Studio:
    """A studio of twenty pieces that comes late by chains placed one after another.

    No benchmark has its dates: tests that need lateness need not care for those.
    """
    return make_studio(seed, 20, 5, 2, _LATE)


def make_studio(
    seed: int, pieces: int, coats: int, weeks: int, dates: Dates = GENEROUS
) -> Studio:
    """Make a studio of so many pieces with so many coats each, to be done in so many weeks.

    Plan it from `START`.
    """
    rng = Random(seed)  # noqa: S311 - the same studio every time
    products = (slow(), fast(), primer())
    made = tuple(_piece(rng, number, coats) for number in range(1, pieces + 1))
    people = _people(pieces)
    load = rng.uniform(0.60, 0.85)
    share = load * _weekly_minutes(people) * weeks / (pieces * coats)
    made = tuple(_with_minutes(piece, share) for piece in made)
    return Studio(
        name=f"Benchmark {seed}",
        zone="Europe/Berlin",
        places=(_room(math.ceil(pieces * coats * _DAYS_ON_A_SPOT / (weeks * 7.0))),),
        products=products,
        people=people,
        pieces=made,
        orders=_orders(rng, made, weeks, dates),
    )


def hurried(studio: Studio, days: int) -> Studio:
    """The studio with all its dates so many days sooner."""
    orders = tuple(
        replace(order, promised=order.promised - timedelta(days=days))
        for order in studio.orders
    )
    return replace(studio, orders=orders)


def attended_share(studio: Studio, weeks: int) -> float:
    """The share of everybody's working minutes that the coats take, when no mix is shared."""
    minutes = sum(
        coat.setup_minutes + coat.piece_minutes * piece.count
        for piece in studio.pieces
        for coat in piece.stack
    )
    return minutes / (_weekly_minutes(studio.people) * weeks)


def _people(pieces: int) -> tuple[Person, ...]:
    evenings = WorkHours(rule=_WEEK, start=time(18), end=time(22))
    weekend = WorkHours(rule="FREQ=WEEKLY;BYDAY=SA,SU", start=time(9), end=time(18))
    by_day = WorkHours(rule=_WEEK, start=time(8), end=time(17))
    if pieces <= MOST_FOR_ONE_PERSON:
        return (Person(key="ada", name="Ada", work=(evenings, weekend)),)
    return tuple(Person(key=name.lower(), name=name, work=(by_day,)) for name in ("Ada", "Ben"))


def _weekly_minutes(people: Sequence[Person]) -> float:
    days = {_WEEK: 5}
    return sum(
        days.get(hours.rule, 2) * 60.0 * (hours.end.hour - hours.start.hour)
        for person in people
        for hours in person.work
    )


def _with_minutes(piece: Piece, share: float) -> Piece:
    """The piece with attended minutes that make up its share for each coat."""
    setup = round(share * _SETUP_SHARE)
    each = max(1, round((share - setup) / piece.count))
    stack = tuple(replace(c, setup_minutes=setup, piece_minutes=each) for c in piece.stack)
    return replace(piece, stack=stack)


def _room(spots: int) -> Place:
    def point(at: time, celsius: float, humidity: float) -> PatternPoint:
        return PatternPoint(at=at, celsius=celsius, humidity_pct=humidity)

    return Place(
        key="room",
        name="Workshop",
        pattern=(
            point(time(6, 0), 18.0, 50.0),
            point(time(8, 0), 21.0, 45.0),
            point(time(22, 0), 21.0, 45.0),
            point(time(23, 30), 18.5, 50.0),
        ),
        spots=tuple(
            Spot(key=f"S{n}", name=f"Spot {n}", length_mm=600, width_mm=450, height_mm=200)
            for n in range(1, spots + 1)
        ),
    )


def _piece(rng: Random, number: int, coats: int) -> Piece:
    round_ones = rng.random() < 0.3
    shape = Round(diameter_mm=95) if round_ones else Rectangle(length_mm=350, width_mm=220)
    return Piece(
        key=f"P{number:03}",
        name=f"Piece {number}",
        shape=shape,
        material=rng.choice(tuple(Material)),
        body_mm=18.0,
        stack=_stack(rng, coats),
        count=4 if round_ones else 1,
        rim_mm=3.0,
    )


def _stack(rng: Random, coats: int) -> tuple[Coat, ...]:
    primed = rng.random() < 0.5
    blue = Colour(name=rng.choice(("Blue", "Green", "Smoke")))
    stack = [
        _coat("c1", CoatKind.PRIME, "primer")
        if primed
        else _coat("c1", CoatKind.SEAL, rng.choice(("slow", "fast")))
    ]
    for position in range(2, coats + 1):
        kind = (CoatKind.FLOOD, CoatKind.COLOUR, CoatKind.GLITTER, CoatKind.LOCK)[position % 4]
        stack.append(
            _coat(
                f"c{position}",
                kind,
                rng.choice(("slow", "fast")),
                joint=Joint.ON_DRY if primed and position == 2 else Joint.IN_WINDOW,
                colours=(blue,) if kind is CoatKind.COLOUR else (),
                sandable=kind is not CoatKind.GLITTER,
            )
        )
    if coats > 3 and rng.random() < 0.15:
        stack[-1] = _coat(f"c{coats}", CoatKind.SEAL, "fast", faces=frozenset({UNDERSIDE}))
    return tuple(stack[:coats])


def _coat(key: str, kind: CoatKind, product: str, **fields: object) -> Coat:
    film = 0.3 if kind in {CoatKind.PRIME, CoatKind.SEAL} else 1.2
    return Coat(key=key, kind=kind, product=product, film_mm=film, **fields)  # type: ignore[arg-type]


def _orders(
    rng: Random, pieces: Sequence[Piece], weeks: int, dates: Dates
) -> tuple[Order, ...]:
    """Orders of one to four pieces with dates spread over the weeks and one beyond."""
    orders: list[Order] = []
    index = 0
    while index < len(pieces):
        size = rng.randint(1, 4)
        keys = tuple(piece.key for piece in pieces[index : index + size])
        part = (index + size) / len(pieces)
        days = dates.lead + dates.pace * weeks * 7 * part + rng.randint(0, 5)
        orders.append(_order(rng, len(orders) + 1, keys, days, dates))
        index += size
    return tuple(orders)


def _order(rng: Random, number: int, keys: tuple[str, ...], days: float, dates: Dates) -> Order:
    promise = rng.choice(tuple(Promise))
    gate = rng.choice((Gate.PACK, Gate.PACK, Gate.FULL, Gate.DISPLAY))
    days += dates.cure * (gate is Gate.FULL)
    days += dates.transit * (promise is Promise.ARRIVE_BY)
    return Order(
        key=f"O{number:03}",
        name=f"Order {number}",
        pieces=keys,
        promised=START.date() + timedelta(days=round(days)),
        promise=promise,
        gate=gate,
    )
