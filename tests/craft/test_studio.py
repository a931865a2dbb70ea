"""The studio as a whole: every reference leads somewhere, and each that does not is told."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from studio_planner.craft.hands import Person
from studio_planner.craft.log import Poured
from studio_planner.craft.pieces import EDGE, TOP, UNDERSIDE, CoatKind
from studio_planner.craft.places import PatternPoint, PlaceKind
from studio_planner.craft.products import ProductKind
from studio_planner.craft.settings import Settings
from studio_planner.craft.shapes import Rectangle
from studio_planner.craft.studio import Studio
from tests.craft.nouns import broken, coat, order, piece, place, resin, spot, utc

NINE = utc(2026, 1, 12, 9)
WARM = PatternPoint(at=NINE.time(), celsius=20)
LEAF = resin(key="leaf", name="Leaf", kind=ProductKind.LEAF, ratio=None)


def pour(key: str, hour: int = 0, **entries: str) -> Poured:
    start = NINE + timedelta(hours=hour)
    facts: dict[str, Any] = {"piece": "coaster", "spot": "shelf 1"} | entries
    return Poured(coat=key, start=start, end=start + timedelta(hours=1), **facts)


def studio(**entries: object) -> Studio:
    given: dict[str, object] = {
        "name": "Invented studio",
        "places": (place(WARM),),
        "products": (resin(), LEAF),
        "pieces": (piece(coat("seal", film_mm=0.2), coat("flood")),),
        "orders": (order(),),
        "people": (Person(key="ada", name="Ada", work=()),),
    }
    return Studio(**(given | entries))  # type: ignore[arg-type]


def test_everything_is_found_by_its_key() -> None:
    whole = studio(poured=(pour("seal"),))
    assert whole.piece("coaster") is whole.pieces[0]
    assert whole.product("leaf") is whole.products[1]
    assert whole.spot("shelf 1") is whole.places[0].spots[0]
    assert whole.place_of_spot("shelf 1") is whole.places[0]
    assert whole.order_of("coaster") is whole.orders[0]
    assert whole.order_of("nobody's") is None
    assert whole.time_zone.key == "UTC"


@pytest.mark.parametrize("find", ["piece", "product", "spot", "place_of_spot"])
def test_what_is_not_there_is_a_key_error(find: str) -> None:
    with pytest.raises(KeyError, match="ghost"):
        getattr(studio(), find)("ghost")


def test_an_empty_studio_can_be_opened() -> None:
    empty = Studio(name="New")
    assert empty.resting_place is None
    assert empty.spots == ()


def test_pieces_rest_in_the_first_room() -> None:
    box = place(WARM, key="box", kind=PlaceKind.WARM_BOX, spots=(spot("box 1"),))
    rooms = [place(WARM, key=key, spots=(spot(key),)) for key in ("studio", "cellar")]
    whole = studio(places=(box, *rooms))
    assert whole.resting_place is rooms[0]
    assert [level.key for level in whole.spots] == ["box 1", "studio", "cellar"]
    assert studio(places=(box,)).resting_place is None


def test_pours_come_in_the_order_in_which_they_happened() -> None:
    later, first = pour("flood", hour=30), pour("seal")
    whole = studio(poured=(later, first))
    assert whole.pours_of("coaster") == (first, later)
    assert whole.pours_of("other") == ()


def test_everything_wrong_with_a_studio_is_told_at_once() -> None:
    double = piece(key="coaster")
    told = broken(
        studio,
        name=" ",
        zone="Mars/Olympus",
        currency="EURO",
        pieces=(double, double),
        places=(place(WARM), place(WARM)),
        products=(resin(), resin()),
        people=(Person(key="ada", name="Ada", work=()), Person(key="ada", name="Al", work=())),
        orders=(order(pieces=("moon",)), order()),
        poured=(pour("gold", spot="roof"),),
    )
    assert told.keys() == {
        "name",
        "zone",
        "currency",
        "pieces",
        "places",
        "products",
        "people",
        "orders",
        "spots",
        "order First order, pieces",
        "pour of coaster, gold",
        "pours of coaster",
    }
    assert "“coaster”" in told["pieces"]
    assert "“moon”" in told["order First order, pieces"]


@pytest.mark.parametrize("currency", ["EU", "EURO", "E1R", "ÄÖÜ", ""])
def test_money_has_three_latin_letters(currency: str) -> None:
    # ISO 4217 codes are three letters of the basic Latin alphabet.
    assert broken(studio, currency=currency).keys() == {"currency"}


def test_a_coat_of_a_product_that_is_not_there_is_refused_once() -> None:
    told = broken(studio, pieces=(piece(coat(product="gold", film_mm=90)),))
    assert told == {"piece Coaster, coat flood, product": "there is no product “gold”."}


def test_a_film_deeper_than_its_product_allows_is_refused() -> None:
    thin = resin(depth_limit_mm=1.5)
    told = broken(studio, products=(thin, LEAF))
    assert told.keys() == {"piece Coaster, coat flood, film_mm"}
    assert (
        "deeper than the 1.5 mm of Invented resin" in told["piece Coaster, coat flood, film_mm"]
    )
    assert studio(products=(resin(depth_limit_mm=2.0), LEAF)).products[0].depth_limit_mm == 2.0


@pytest.mark.parametrize(
    ("film", "rim", "faces", "fits"),
    [
        (3.2, 0, {TOP}, True),
        (3.3, 0, {TOP}, False),
        (3.3, 3.0, {TOP}, False),
        (6.0, 6.0, {TOP}, True),
        (6.1, 6.0, {TOP}, False),
        (3.0, 1.0, {TOP}, True),
        (6.0, 6.0, {"moon"}, True),
        (6.0, 6.0, {UNDERSIDE}, False),
        (6.0, 6.0, {EDGE}, False),
    ],
)
def test_a_deep_film_needs_a_rim_as_high_around_the_top(
    film: float, rim: float, faces: set[str], *, fits: bool
) -> None:
    # Common practice: refused above 3.2 mm without a rim (a setting).
    tray = piece(coat(film_mm=film, faces=frozenset(faces)), rim_mm=rim)
    settings = Settings(film_refuse_mm=3.2)
    if fits:
        assert studio(pieces=(tray,), settings=settings).pieces == (tray,)
    else:
        told = broken(studio, pieces=(tray,), settings=settings)
        assert "3.2 mm is most" in told["piece Coaster, coat flood, film_mm"]


def test_leaf_is_laid_from_a_leaf_product_and_nothing_else_is() -> None:
    size = coat("size", kind=CoatKind.SIZE)
    gilded = piece(size, coat("gold", kind=CoatKind.LEAF, film_mm=0.0, product="leaf"))
    assert studio(pieces=(gilded,)).pieces == (gilded,)
    wrong = piece(size, coat("gold", kind=CoatKind.LEAF, film_mm=0.0), coat(product="leaf"))
    told = broken(studio, pieces=(wrong,))
    assert told.keys() == {
        "piece Coaster, coat gold, product",
        "piece Coaster, coat flood, product",
    }


def test_a_piece_is_promised_once_even_between_orders_of_one_name() -> None:
    told = broken(studio, orders=(order(key="o1"), order(key="o2")))
    assert told == {
        "order First order, pieces": "piece “coaster” is already promised to First order."
    }


@pytest.mark.parametrize(
    ("poured", "words"),
    [
        ((pour("flood"),), "poured flood, but the stack is seal."),
        (
            (pour("flood"), pour("seal", hour=9)),
            "poured flood, seal, but the stack is seal, flood.",
        ),
        (
            (pour("seal"), pour("seal", hour=9)),
            "poured seal, seal, but the stack is seal, flood.",
        ),
    ],
)
def test_pours_follow_the_stack(poured: tuple[Poured, ...], words: str) -> None:
    assert broken(studio, poured=poured) == {"pours of coaster": words}


def test_a_pour_of_a_piece_that_is_not_there_is_refused() -> None:
    told = broken(studio, poured=(pour("seal", piece="ghost"),))
    assert told == {"pours of ghost": "poured seal, but the stack is -."}


def test_a_piece_that_is_larger_than_every_spot_may_still_be_kept() -> None:
    # Planning says why it cannot be planned; the studio file can be opened.
    door = piece(shape=Rectangle(length_mm=2000, width_mm=900))
    assert studio(pieces=(door,)).pieces == (door,)
