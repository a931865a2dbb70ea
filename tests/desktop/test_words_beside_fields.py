"""What wants a second look is said beside its field: names given twice, days that are past."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING, Any

import pytest

from studio_planner.desktop.page_keys import ORDERS, PIECES, PRODUCTS
from studio_planner.desktop.pages.orders_page import OrdersPage
from studio_planner.desktop.pages.pieces_page import PiecesPage
from studio_planner.desktop.pages.products_page import ProductsPage
from studio_planner.desktop.pages.room_section import RoomSection
from studio_planner.desktop.pages.studio_page import HANDS, ROOM
from studio_planner.desktop.piece_pages.part_names import BLANK
from studio_planner.desktop.studio_pages.hands_section import HandsSection
from studio_planner.services.editing.changes import Change
from tests.desktop.studio_steps import section, studio_of

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.forms.field import Field
    from studio_planner.desktop.window import DeskWindow

pytestmark = pytest.mark.gui


def _twice(things: tuple[Any, ...], name: str) -> tuple[Any, ...]:
    copy = replace(things[0], key="another-one", name=name)
    return (*things, copy)


def _two_pieces(studio: Studio, name: str) -> Studio:
    return replace(studio, pieces=_twice(studio.pieces, name))


def _two_orders(studio: Studio, name: str) -> Studio:
    first, second, *rest = studio.orders
    return replace(studio, orders=(first, replace(second, name=name), *rest))


def _two_products(studio: Studio, name: str) -> Studio:
    return replace(studio, products=_twice(studio.products, name))


def _two_people(studio: Studio, name: str) -> Studio:
    return replace(studio, people=_twice(studio.people, name))


def _two_places(studio: Studio, name: str) -> Studio:
    other = replace(studio.places[0], key="another-one", name=name, spots=())
    return replace(studio, places=(*studio.places, other))


def _two_spots(studio: Studio, name: str) -> Studio:
    place = replace(studio.places[0], spots=_twice(studio.places[0].spots, name))
    return replace(studio, places=(place, *studio.places[1:]))


def _piece_name(desk: DeskWindow) -> Field:
    desk.go_to(PIECES, studio_of(desk).pieces[0].key)
    page = desk.pages.page(PIECES)
    assert isinstance(page, PiecesPage)
    page.show_part(BLANK)
    return page.blank.form.fields["name"]


def _order_form(desk: DeskWindow) -> OrdersPage:
    desk.go_to(ORDERS, studio_of(desk).orders[0].key)
    page = desk.pages.page(ORDERS)
    assert isinstance(page, OrdersPage)
    return page


def _order_name(desk: DeskWindow) -> Field:
    return _order_form(desk).form.form.fields["name"]


def _product_name(desk: DeskWindow) -> Field:
    desk.go_to(PRODUCTS, studio_of(desk).products[0].key)
    page = desk.pages.page(PRODUCTS)
    assert isinstance(page, ProductsPage)
    return page.panel.form.form.fields["name"]


def _person_name(desk: DeskWindow) -> Field:
    return section(desk, HANDS, HandsSection).panel.name


def _place_name(desk: DeskWindow) -> Field:
    return section(desk, ROOM, RoomSection).form.form.fields["name"]


def _spot_name(desk: DeskWindow) -> Field:
    return section(desk, ROOM, RoomSection).shelf.form.fields["name"]


@pytest.mark.parametrize(
    ("two", "first", "field_of"),
    [
        (_two_pieces, lambda studio: studio.pieces[0], _piece_name),
        (_two_orders, lambda studio: studio.orders[0], _order_name),
        (_two_products, lambda studio: studio.products[0], _product_name),
        (_two_people, lambda studio: studio.people[0], _person_name),
        (_two_places, lambda studio: studio.places[0], _place_name),
        (_two_spots, lambda studio: studio.places[0].spots[0], _spot_name),
    ],
    ids=["pieces", "orders", "products", "people", "places", "spots"],
)
def test_a_name_that_is_given_twice_is_kept_and_said(
    desk: DeskWindow,
    two: Callable[[Studio, str], Studio],
    first: Callable[[Studio], Any],
    field_of: Callable[[DeskWindow], Field],
) -> None:
    desk.changes.plans_by_itself = False
    name = first(studio_of(desk)).name
    assert not field_of(desk).advice
    assert desk.changes.attempt(Change("Twice", lambda studio: two(studio, name.upper())))
    assert "Another one has this name" in field_of(desk).advice
    desk.verbs["undo"].trigger()
    assert not field_of(desk).advice


def test_a_day_that_is_past_is_said_beside_it(desk: DeskWindow) -> None:
    desk.changes.plans_by_itself = False
    today = desk.clock.now().date()
    field = _order_form(desk).form.form.fields["promised"]

    def advice_on(day: int) -> str:
        def make(studio: Studio) -> Studio:
            first, *rest = studio.orders
            late = replace(first, promised=today + timedelta(days=day))
            return replace(studio, orders=(late, *rest))

        assert desk.changes.attempt(Change("Date", make))
        return field.advice

    assert advice_on(1) == ""
    assert advice_on(-1) == "This day is past already."
    assert advice_on(0) == ""
