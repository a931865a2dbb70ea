"""Invented studios for the tests of this room: one that uses everything, and any others."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING, Any, TypeVar

import pytest
from hypothesis import strategies as st

from studio_planner.craft.hands import Absence, Person, WorkHours
from studio_planner.craft.log import Poured
from studio_planner.craft.orders import Courier, Gate, Order, Promise
from studio_planner.craft.pieces import Coat, CoatKind, Colour, Joint, Material, Piece
from studio_planner.craft.places import PatternPoint, Place, PlaceKind, Reading, Spot
from studio_planner.craft.plans import (
    Air,
    Change,
    Outcome,
    Plan,
    PlannedCoat,
    PlannedStep,
    Readiness,
    StepKind,
    Trust,
    Unplanned,
    Window,
)
from studio_planner.craft.products import MixRatio, Product, ProductKind, RatioBy, SheetPoint
from studio_planner.craft.settings import LengthUnit, MassUnit, Settings, TemperatureUnit, Units
from studio_planner.craft.shapes import FreeArea, Oval, Rectangle, Round, Shape
from studio_planner.craft.studio import Studio
from studio_planner.science.stages import Stage
from studio_planner.storage.studio_file import create_studio

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

_Thing = TypeVar("_Thing")
NOON = datetime(2031, 3, 4, 12, tzinfo=UTC)


_SHAPES_BUT_ROUND: tuple[Shape, ...] = (
    Rectangle(length_mm=300, width_mm=200),
    Oval(length_mm=300, width_mm=200),
    FreeArea(area_cm2=100, perimeter_mm=500, length_mm=200, width_mm=100),
)


def _full_plan() -> Plan:
    return Plan(
        made=NOON,
        start=NOON + timedelta(minutes=5),
        coats=(
            PlannedCoat(
                number=1,
                piece="p1",
                coat="a",
                start=NOON,
                end=NOON + timedelta(microseconds=1),
                spot="s1",
                joint=Joint.BARE,
                mix=1,
                person="me",
                poured=True,
            ),
            PlannedCoat(
                number=2,
                piece="p1",
                coat="b",
                start=NOON + timedelta(days=1),
                end=NOON + timedelta(days=1, hours=1),
                spot="s1",
                joint=Joint.IN_WINDOW,
                mix=2,
                person="me",
                window=Window(opens=NOON, closes=None, trust=Trust.TEST_FIRST),
                air=Air.UNKNOWN,
            ),
        ),
        steps=(
            PlannedStep(kind=StepKind.PACK, piece="p1", start=NOON, end=NOON, person="me"),
            PlannedStep(
                kind=StepKind.TAPE,
                piece="p1",
                start=NOON,
                end=NOON,
                person="me",
                coat="b",
                opens=NOON,
                closes=NOON,
            ),
        ),
        ready=(
            Readiness(piece="p1", stage=Stage.HANDLE, likely=NOON, safe=None),
            Readiness(piece="p1", stage=Stage.FULL_CURE, likely=None, safe=None),
        ),
        outcomes=(
            Outcome(
                order="o1",
                due=NOON,
                leaves=None,
                reason="The night closes the window.",
                changes=(
                    Change(words="a warm box", leaves=NOON, keeps_promise=True),
                    Change(words="another pair of hands", leaves=None, keeps_promise=False),
                ),
            ),
            Outcome(order="gone since", due=NOON, leaves=NOON),
        ),
        unplanned=(
            Unplanned(piece="p2", coat="x", reason="No spot is long enough."),
            Unplanned(piece="gone since", coat=None, reason="Too cold."),
        ),
    )


def _full_studio() -> Studio:
    return Studio(
        name="Zwei Möwen \u2013 \u201cSüd\u201d",
        zone="Europe/Berlin",
        currency="EUR",
        units=Units(
            temperature=TemperatureUnit.FAHRENHEIT, mass=MassUnit.OUNCE, length=LengthUnit.INCH
        ),
        settings=Settings(settle_minutes=90, surface_lag_hours={Material.SLATE: 1.25}),
        places=(
            Place(
                key="room",
                name="Room",
                pattern=(
                    PatternPoint(at=time(7), celsius=21.5, humidity_pct=48.0),
                    PatternPoint(at=time(22, 30, 15), celsius=16.25, day=6),
                ),
                spots=(Spot(key="s1", name="1", length_mm=600, width_mm=400, height_mm=300),),
                readings=(
                    Reading(when=NOON, celsius=20.1, humidity_pct=51.0),
                    Reading(when=NOON + timedelta(microseconds=1), celsius=20.2),
                ),
            ),
            Place(
                key="box",
                name="Box",
                kind=PlaceKind.WARM_BOX,
                pattern=(PatternPoint(at=time(0), celsius=30.0),),
            ),
        ),
        products=(
            Product(
                key="clear",
                name="Clear (invented)",
                kind=ProductKind.TWO_PART,
                sheet=(
                    SheetPoint(stage=Stage.CUP_LIFE, celsius=22, from_hours=0.5, mass_g=100),
                    SheetPoint(stage=Stage.RECOAT_OPENS, celsius=20, from_hours=4, to_hours=6),
                    SheetPoint(stage=Stage.RECOAT_CLOSES, celsius=20, from_hours=24),
                ),
                ratio=MixRatio(a=2, b=1, by=RatioBy.VOLUME),
                density_a=1.12,
                density_b=0.98,
                minimum_celsius=16,
                maximum_celsius=30,
                humidity_limit_pct=75,
                depth_limit_mm=6,
                invented=True,
            ),
            Product(key="leaf", name="Leaf", kind=ProductKind.LEAF, sheet=()),
        ),
        people=(
            Person(
                key="me",
                name="Me",
                work=(
                    WorkHours(rule="FREQ=WEEKLY;BYDAY=TU,TH", start=time(18), end=time(22)),
                    WorkHours(
                        rule="FREQ=WEEKLY;INTERVAL=2;BYDAY=SA",
                        start=time(22),
                        end=time(2),
                        first=date(2031, 3, 1),
                    ),
                ),
                absences=(Absence(start=NOON, end=NOON + timedelta(days=2), why="market"),),
            ),
        ),
        pieces=(
            Piece(
                key="p1",
                name="Moon tray",
                shape=Round(diameter_mm=300),
                material=Material.TIMBER,
                body_mm=18,
                rim_mm=6,
                footprint_mm=(350.0, 340.5),
                stack=(
                    Coat(key="a", kind=CoatKind.SEAL, product="clear", film_mm=0.3),
                    Coat(
                        key="b",
                        kind=CoatKind.COLOUR,
                        product="clear",
                        film_mm=1.5,
                        faces=frozenset({"top", "edge"}),
                        colours=(
                            Colour(name="sea", share_pct=60, colourant="blue", colourant_pct=3),
                            Colour(name="sand", share_pct=40),
                        ),
                        sandable=False,
                        test_first=True,
                        taped=True,
                        trimmed=True,
                        area_cm2=650.5,
                    ),
                    Coat(key="c", kind=CoatKind.LEAF, product="leaf", film_mm=0),
                ),
            ),
            *(
                Piece(
                    key=f"p{number}",
                    name="Board",
                    shape=shape,
                    material=Material.SLATE,
                    body_mm=10,
                    count=number,
                    stack=(Coat(key="x", kind=CoatKind.FLOOD, product="clear", film_mm=1.0),),
                )
                for number, shape in enumerate(
                    _SHAPES_BUT_ROUND,
                    start=2,
                )
            ),
        ),
        orders=(
            Order(
                key="o1",
                name="Ines",
                pieces=("p3", "p1"),
                promised=date(2031, 4, 1),
                promise=Promise.ARRIVE_BY,
                gate=Gate.FULL,
                courier=Courier(days=frozenset({1, 4}), cut_off=time(15, 30), transit_days=3),
                weight=2.5,
            ),
            Order(
                key="m1",
                name="Spring market",
                pieces=("p2",),
                promised=date(2031, 4, 5),
                promise=Promise.MARKET,
                opens=time(8, 15),
            ),
        ),
        poured=(
            Poured(
                piece="p1",
                coat="a",
                start=NOON - timedelta(hours=1),
                end=NOON,
                spot="s1",
            ),
        ),
        plan=_full_plan(),
    )


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


_WINDOWS = st.builds(
    Window, opens=_INSTANTS, closes=_maybe(_INSTANTS), trust=st.sampled_from(Trust)
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
        )
    ),
    outcomes=_tuples(
        st.builds(
            Outcome,
            order=_TEXTS,
            due=_INSTANTS,
            leaves=_maybe(_INSTANTS),
            reason=_TEXTS,
            changes=_tuples(
                st.builds(
                    Change,
                    words=_TEXTS,
                    leaves=_maybe(_INSTANTS),
                    keeps_promise=st.booleans(),
                )
            ),
        )
    ),
)


@st.composite
def _studios(draw: st.DrawFn) -> Studio:
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
        pattern=_tuples(_PATTERN, least=1),
        readings=_READINGS,
    )
    places = draw(_tuples(place, most=2, by=_key))
    if places:
        first = draw(
            st.builds(
                Place,
                key=st.just(places[0].key),
                name=_WORDS,
                pattern=_tuples(_PATTERN, least=1),
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


@pytest.fixture(scope="session")
def studios() -> st.SearchStrategy[Studio]:
    """A strategy for studios of every kind."""
    return _studios()


@pytest.fixture(scope="session")
def full_studio() -> Studio:
    """A studio in which every field of every noun is used."""
    return _full_studio()


@pytest.fixture
def studio_path(tmp_path: Path, full_studio: Studio) -> Path:
    """A studio file on disk that nobody has open."""
    path = tmp_path / "full.studio"
    create_studio(path, full_studio).close()
    return path
