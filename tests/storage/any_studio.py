"""Strategies for studios of every kind, invented by chance."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING, Any, TypeVar

from hypothesis import strategies as st

from studio_planner.craft.hands import Absence, Person, WorkHours
from studio_planner.craft.orders import Courier, Order
from studio_planner.craft.pieces import Coat, CoatKind, Colour, Joint, Material, Piece
from studio_planner.craft.places import PatternPoint, Place, PlaceKind, Reading, Spot
from studio_planner.craft.plans import (
    Change,
    Goal,
    GoalValue,
    Outcome,
    Plan,
    PlannedCoat,
    Trust,
    Window,
)
from studio_planner.craft.products import MixRatio, Product, ProductKind, RatioBy, SheetPoint
from studio_planner.craft.saying import Saying, saying
from studio_planner.craft.settings import Settings
from studio_planner.craft.shapes import FreeArea, Oval, Rectangle, Round
from studio_planner.craft.studio import Studio
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from collections.abc import Callable

_Thing = TypeVar("_Thing")
_INSTANTS = st.datetimes(
    min_value=datetime(1971, 1, 1),  # noqa: DTZ001 - the strategy wants it naive
    max_value=datetime(2199, 1, 1),  # noqa: DTZ001 - likewise
    timezones=st.sampled_from([UTC]),
)
_TEXTS = st.text(st.characters(codec="utf-8"), max_size=12)
_WORDS = _TEXTS.filter(lambda text: bool(text.strip()))
_TIMES = st.times()
_DATES = st.dates(date(1990, 1, 1), date(2190, 1, 1))


def _maybe(strategy: st.SearchStrategy[_Thing]) -> st.SearchStrategy[_Thing | None]:
    return st.none() | strategy


def _tuples(
    strategy: st.SearchStrategy[_Thing],
    most: int = 3,
    least: int = 0,
    by: Callable[[_Thing], object] | None = None,
) -> st.SearchStrategy[tuple[_Thing, ...]]:
    return st.lists(strategy, min_size=least, max_size=most, unique_by=by).map(tuple)


def _numbers(low: float, high: float) -> st.SearchStrategy[float]:
    return st.floats(low, high, allow_nan=False)


def _key(thing: Any) -> str:  # noqa: ANN401 - anything with a key
    return str(thing.key)


_READINGS = st.lists(
    st.builds(
        Reading,
        when=_INSTANTS,
        celsius=_numbers(-40, 90),
        humidity_pct=_maybe(_numbers(0, 100)),
    ),
    max_size=5,
    unique_by=lambda reading: reading.when,
).map(lambda readings: tuple(sorted(readings, key=lambda reading: reading.when)))
_PATTERN = st.builds(
    PatternPoint,
    at=_TIMES,
    celsius=_numbers(-30, 80),
    humidity_pct=_maybe(_numbers(1, 100)),
    day=_maybe(st.integers(0, 6)),
)
_SIDES = _numbers(10, 10_000)
_WORK = st.builds(
    WorkHours,
    rule=st.sampled_from(["FREQ=DAILY", "FREQ=WEEKLY;BYDAY=MO", "FREQ=MONTHLY;BYMONTHDAY=1"]),
    start=st.just(time(9)),
    end=_TIMES.filter(lambda at: at != time(9)),
    first=_maybe(_DATES),
)
_SPANS = st.tuples(_INSTANTS, st.timedeltas(timedelta(microseconds=1), timedelta(days=90)))
_ABSENCES = st.builds(
    lambda span, why: Absence(start=span[0], end=span[0] + span[1], why=why), _SPANS, _TEXTS
)
_SHAPES = st.one_of(
    st.builds(Rectangle, length_mm=_numbers(1, 5000), width_mm=_numbers(1, 5000)),
    st.builds(Round, diameter_mm=_numbers(1, 5000)),
    st.builds(Oval, length_mm=_numbers(1, 5000), width_mm=_numbers(1, 5000)),
    st.just(FreeArea(area_cm2=100, perimeter_mm=500, length_mm=200, width_mm=100)),
)


@st.composite
def _products(draw: st.DrawFn) -> Product:
    hours, celsius = draw(_numbers(0.1, 50)), draw(_numbers(5, 30))
    stages = draw(st.lists(st.sampled_from([Stage.HANDLE, Stage.SANDABLE]), unique=True))
    by = draw(st.sampled_from(RatioBy))
    return Product(
        key=draw(_WORDS),
        name=draw(_WORDS),
        kind=ProductKind.TWO_PART,
        sheet=tuple(
            SheetPoint(
                stage=s,
                celsius=celsius,
                from_hours=hours,
                to_hours=draw(_maybe(_numbers(hours, hours * 2))),
            )
            for s in stages
        ),
        ratio=MixRatio(a=draw(_numbers(0.01, 1e4)), b=draw(_numbers(0.01, 1e4)), by=by),
        density_a=draw(_numbers(0.5, 5)),
        density_b=draw(_numbers(0.5, 5)),
        humidity_limit_pct=draw(_maybe(_numbers(1, 100))),
        invented=draw(st.booleans()),
    )


@st.composite
def _pieces(draw: st.DrawFn, products: tuple[Product, ...]) -> Piece:
    coats = st.builds(
        Coat,
        key=_WORDS,
        kind=st.sampled_from([kind for kind in CoatKind if kind is not CoatKind.LEAF]),
        product=st.sampled_from([product.key for product in products]),
        film_mm=_numbers(0.01, 3),
        faces=st.sets(
            _WORDS.filter(lambda name: name != "underside"), min_size=1, max_size=3
        ).map(frozenset),
        joint=st.sampled_from([Joint.WET_IN_WET, Joint.IN_WINDOW, Joint.ON_DRY]),
        colours=st.just(())
        | st.just((Colour(name="one", share_pct=50), Colour(name="two", share_pct=50))),
        sandable=st.booleans(),
        area_cm2=_maybe(_numbers(0.01, 250_000)),
    )
    return Piece(
        key=draw(_WORDS),
        name=draw(_WORDS),
        shape=draw(_SHAPES),
        material=draw(st.sampled_from(Material)),
        body_mm=draw(_numbers(0.1, 500)),
        stack=draw(_tuples(coats, least=1, by=_key)),
        count=draw(st.integers(1, 500)),
        footprint_mm=draw(_maybe(st.tuples(_numbers(1, 1e4), _numbers(1, 1e4)))),
    )


_SHARES = _numbers(0, 1)
_WINDOWS = st.builds(
    Window, opens=_INSTANTS, closes=_maybe(_INSTANTS), trust=st.sampled_from(Trust)
)
_SAYINGS: st.SearchStrategy[Saying] = st.recursive(
    st.builds(Saying, _TEXTS, _TEXTS),
    lambda inner: st.builds(
        lambda context, facts: saying(context, " ".join(f"{{{f}}}" for f in facts), **facts),
        _TEXTS,
        st.dictionaries(
            st.sampled_from("abc"),
            inner | _TEXTS | st.integers() | _numbers(-1e6, 1e6),
            min_size=1,
        ),
    ),
    max_leaves=6,
)
_PLANS = st.builds(
    Plan,
    made=_INSTANTS,
    start=_INSTANTS,
    coats=_tuples(
        st.builds(
            PlannedCoat,
            number=st.integers(1, 2**40),
            piece=_TEXTS,
            coat=_TEXTS,
            start=_INSTANTS,
            end=_INSTANTS,
            spot=_TEXTS,
            joint=st.sampled_from(Joint),
            mix=st.integers(1, 9),
            person=_TEXTS,
            window=_maybe(_WINDOWS),
            poured=st.booleans(),
            held=_maybe(_SHARES),
            wrong_first=_maybe(_SHARES),
        )
    ),
    outcomes=_tuples(
        st.builds(
            Outcome,
            order=_TEXTS,
            due=_INSTANTS,
            leaves=_maybe(_INSTANTS),
            reason=_SAYINGS,
            changes=_tuples(
                st.builds(
                    Change,
                    words=_SAYINGS,
                    leaves=_maybe(_INSTANTS),
                    keeps_promise=st.booleans(),
                )
            ),
            held=_maybe(_SHARES),
            day_held=_maybe(_SHARES),
            rehearsed_spare_hours=_maybe(_numbers(-1e4, 1e4)),
        )
    ),
    goals=_tuples(
        st.builds(
            GoalValue,
            goal=st.sampled_from(Goal),
            value=_numbers(0, 1e6),
            bound=_maybe(_numbers(-10, 1e6)),
        )
    ),
    grid_minutes=st.integers(1, 60),
    solved_seconds=_numbers(0, 1e6),
    rehearsals=st.integers(0, 2**40),
)


@st.composite
def any_studio(draw: st.DrawFn) -> Studio:
    products = draw(_tuples(_products(), by=_key))
    pieces = draw(_tuples(_pieces(products), most=2, by=_key)) if products else ()
    spots = st.builds(
        Spot, key=_WORDS, name=_WORDS, length_mm=_SIDES, width_mm=_SIDES, height_mm=_SIDES
    )
    place = st.builds(
        Place,
        key=_WORDS,
        name=_WORDS,
        kind=st.sampled_from(PlaceKind),
        pattern=_tuples(_PATTERN, most=2, least=1),
        readings=_READINGS,
    )
    places = draw(_tuples(place, most=2, by=_key))
    if places:
        first = draw(
            st.builds(
                Place,
                key=st.just(places[0].key),
                name=_WORDS,
                pattern=_tuples(_PATTERN, most=2, least=1),
                spots=_tuples(spots, by=_key),
            )
        )
        places = (first, *places[1:])
    person = st.builds(
        Person, key=_WORDS, name=_WORDS, work=_tuples(_WORK), absences=_tuples(_ABSENCES)
    )
    orders = (
        (
            Order(
                key=draw(_WORDS),
                name=draw(_WORDS),
                pieces=tuple(p.key for p in pieces),
                promised=draw(_DATES),
                courier=Courier(
                    days=draw(st.sets(st.integers(0, 6), min_size=1).map(frozenset))
                ),
            ),
        )
        if pieces
        else ()
    )
    return Studio(
        name=draw(_WORDS),
        zone=draw(st.sampled_from(["UTC", "Europe/Berlin", "Pacific/Chatham"])),
        settings=Settings(
            dew_hours=draw(_numbers(0, 72)),
            surface_lag_hours=draw(st.dictionaries(st.sampled_from(Material), _numbers(0, 72))),
        ),
        places=places,
        products=products,
        people=draw(_tuples(person, most=2, by=_key)),
        pieces=pieces,
        orders=orders,
        plan=draw(_maybe(_PLANS)),
    )
