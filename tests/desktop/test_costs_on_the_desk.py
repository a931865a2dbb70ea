"""What orders and pieces cost, on their pages."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from studio_planner.desktop.page_keys import ORDERS, PIECES
from studio_planner.desktop.pages.orders_page import OrdersPage
from studio_planner.desktop.pages.pieces_page import PiecesPage
from studio_planner.services.amount_words import money_said
from studio_planner.services.costs.order_cost import order_cost
from studio_planner.services.costs.piece_cost import piece_cost
from studio_planner.services.editing.changes import Change
from tests.desktop.test_stock_page import spoken, studio_of, type_into, undo_all

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.window import DeskWindow


def _paid(studio: Studio) -> Studio:
    return replace(studio, prices=replace(studio.prices, hourly_wage=30.0))


@pytest.fixture
def orders(desk: DeskWindow) -> OrdersPage:
    desk.changes.plans_by_itself = False
    assert desk.changes.attempt(Change("Wage", _paid))
    desk.go_to(ORDERS)
    found = desk.pages.page(ORDERS)
    assert isinstance(found, OrdersPage)
    return found


def test_the_costs_of_an_order_are_shown_when_asked_for(
    desk: DeskWindow, orders: OrdersPage
) -> None:
    assert "in all" not in spoken(orders.cost)
    QTest.mouseClick(orders.cost.fold.button, Qt.MouseButton.LeftButton)
    studio = studio_of(desk)
    order = next(one for one in studio.orders if one.key == orders.chosen)
    cost = order_cost(studio, studio.plan, order)
    text = spoken(orders.cost)
    assert f"{money_said(cost.total, 'EUR')}\nin all" in text
    assert f"By your rule you ask {money_said(cost.price.asked, 'EUR')}" in text
    assert "As a rush" in text
    assert "enter a bottle with its price" in text


def test_an_agreed_price_is_typed_judged_and_undone(
    desk: DeskWindow, orders: OrdersPage
) -> None:
    before = studio_of(desk)
    orders.cost.fold.unfold()
    price = orders.cost.form.fields["price"]
    type_into(price, "1")
    order = next(one for one in studio_of(desk).orders if one.key == orders.chosen)
    assert order.price == 1.0
    assert "less than what the order costs" in spoken(orders.cost)
    assert "of which -" not in spoken(orders.cost)
    type_into(price, "5000")
    assert "5,000.00 EUR were agreed on, of which " in spoken(orders.cost)
    type_into(price, "a lot")
    assert "is not a number" in price.wrong
    type_into(price, "")
    assert "were agreed on" not in spoken(orders.cost)
    for _ in range(3):
        desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_another_order_shows_its_own_costs(desk: DeskWindow, orders: OrdersPage) -> None:
    orders.cost.fold.unfold()
    studio = studio_of(desk)
    for order in studio.orders:
        orders.choose(order.key)
        cost = order_cost(studio, studio.plan, order)
        assert f"{money_said(cost.total, 'EUR')}\nin all" in spoken(orders.cost)


def test_a_piece_shows_its_cost_with_the_price_of_its_blank(desk: DeskWindow) -> None:
    desk.changes.plans_by_itself = False
    before = studio_of(desk)
    desk.go_to(PIECES)
    page = desk.pages.page(PIECES)
    assert isinstance(page, PiecesPage)
    page.show_part("blank")
    page.blank.cost.fold.unfold()
    type_into(page.blank.form.fields["blank_price"], "12,5")
    studio = studio_of(desk)
    piece = studio.piece(page.chosen)
    assert piece.blank_price == 12.5
    cost = piece_cost(studio, studio.plan, piece)
    text = spoken(page.blank.cost)
    assert f"{money_said(12.5 * piece.count, 'EUR')}\nblank" in text
    assert f"{money_said(cost.total, 'EUR')}\nin all" in text
    assert "Attended time is not in it: enter what an hour costs." in text
    undo_all(desk)
    assert studio_of(desk) == before
