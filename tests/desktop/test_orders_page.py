"""Journeys over the page of orders: an order is entered, answered for and undone."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QDate, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest

from studio_planner.craft.orders import Promise
from studio_planner.desktop.page_keys import ORDERS, PLAN
from studio_planner.desktop.pages.orders_page import OrdersPage

if TYPE_CHECKING:
    from pytestqt.qtbot import QtBot

    from studio_planner.craft.orders import Order
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.forms.fields import TextField
    from studio_planner.desktop.forms.time_fields import DateField
    from studio_planner.desktop.window import DeskWindow


@pytest.fixture
def page(desk: DeskWindow) -> OrdersPage:
    desk.changes.plans_by_itself = False
    desk.go_to(ORDERS)
    found = desk.pages.page(ORDERS)
    assert isinstance(found, OrdersPage)
    return found


def studio_of(desk: DeskWindow) -> Studio:
    assert desk.session is not None
    return desk.session.studio


def last_order(desk: DeskWindow) -> Order:
    return studio_of(desk).orders[-1]


def type_into(page: OrdersPage, name: str, text: str) -> None:
    field: TextField = page.form.form.fields[name]  # type: ignore[assignment]
    field.editor.setFocus()
    field.editor.selectAll()
    QTest.keyClicks(field.editor, text)
    QTest.keyClick(field.editor, Qt.Key.Key_Return)


def _says(page: OrdersPage, words: str) -> bool:
    return words in page.answer.spoken


def free_one(desk: DeskWindow) -> None:
    """Take an order out, so that its pieces are free."""
    from studio_planner.craft.orders import Order as Kind  # noqa: PLC0415
    from studio_planner.services.editing.changes import Change  # noqa: PLC0415
    from studio_planner.services.editing.nouns import without_thing  # noqa: PLC0415

    key = studio_of(desk).orders[0].key
    assert desk.changes.attempt(Change("Free", lambda s: without_thing(s, Kind, key)))


def test_an_order_is_entered_from_nothing_and_undone(
    desk: DeskWindow, page: OrdersPage
) -> None:
    free_one(desk)
    before = studio_of(desk)
    QTest.mouseClick(page.orders.add_button, Qt.MouseButton.LeftButton)
    type_into(page, "name", "Ida's tray")
    assert last_order(desk).name == "Ida's tray"
    date: DateField = page.form.form.fields["promised"]  # type: ignore[assignment]
    date.editor.setDate(QDate(2027, 1, 15))
    QTest.keyClick(date.editor, Qt.Key.Key_Return)
    assert last_order(desk).promised.isoformat() == "2027-01-15"
    type_into(page, "packing_minutes", "25")
    assert last_order(desk).packing_minutes == 25
    for _ in range(4):
        desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_what_is_wrong_is_said_beside_its_field_and_stays_typed(
    desk: DeskWindow, page: OrdersPage
) -> None:
    before = studio_of(desk)
    type_into(page, "packing_minutes", "0")
    field = page.form.form.fields["packing_minutes"]
    assert "outside 1 to 1440" in field.wrong
    assert studio_of(desk) == before
    type_into(page, "packing_minutes", "many")
    assert "is not a number" in field.wrong
    desk.show_session_view()
    assert field.editor.text() == "many"  # type: ignore[attr-defined]
    type_into(page, "packing_minutes", "20")
    assert not field.wrong


def test_a_market_asks_for_its_opening_and_no_courier(
    desk: DeskWindow, page: OrdersPage
) -> None:
    fields = page.form.form.fields
    fields["promise"].show_value(Promise.MARKET)
    fields["promise"].edited.emit()
    key = page.orders.current_key
    order = next(order for order in studio_of(desk).orders if order.key == key)
    assert order.promise is Promise.MARKET
    assert fields["opens"].isVisibleTo(page)
    assert not fields["cut_off"].isVisibleTo(page)


def test_the_answer_names_dates_gates_and_the_reason(
    qtbot: QtBot, desk: DeskWindow, page: OrdersPage
) -> None:
    late = next(
        outcome
        for outcome in studio_of(desk).plan.outcomes  # type: ignore[union-attr]
        if outcome.late_hours
    )
    page.choose(late.order)
    for words in ("Leaves, safe date", "Why it is late", "Pack", "Full cure", "late"):
        qtbot.waitUntil(partial(_says, page, words))


def test_the_sentence_for_the_customer_can_be_copied(
    desk: DeskWindow, page: OrdersPage
) -> None:
    page.choose(studio_of(desk).orders[0].key)
    QTest.mouseClick(page.answer.copy_button, Qt.MouseButton.LeftButton)
    assert studio_of(desk).orders[0].name in QGuiApplication.clipboard().text()


def test_a_piece_of_an_order_is_shown_on_the_plan(desk: DeskWindow, page: OrdersPage) -> None:
    piece = studio_of(desk).orders[0].pieces[0]
    page.answer.piece_asked.emit(piece)
    assert desk.pages.current_key == PLAN
    row = desk.canvas.current_row
    assert desk.timeline.lanes.lanes[row].piece.key == piece


def test_when_every_piece_is_promised_the_line_says_so(
    desk: DeskWindow, page: OrdersPage
) -> None:
    for _ in range(40):
        before = len(studio_of(desk).orders)
        QTest.mouseClick(page.orders.add_button, Qt.MouseButton.LeftButton)
        if len(studio_of(desk).orders) == before:
            break
    assert "every piece is promised already" in desk.notice.words


def test_orders_are_copied_moved_and_removed_by_keys(
    desk: DeskWindow, page: OrdersPage
) -> None:
    before = studio_of(desk)
    first = before.orders[0]
    page.choose(first.key)
    page.orders.list.setFocus()
    QTest.keyClick(page.orders.list, Qt.Key.Key_Delete)
    assert first not in studio_of(desk).orders
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before
    if len(before.orders) > 1:
        page.choose(first.key)
        QTest.keyClick(page.orders.list, Qt.Key.Key_Down, Qt.KeyboardModifier.AltModifier)
        assert studio_of(desk).orders[1] == first


def test_late_orders_stand_first_in_the_list_and_are_moved_within_it(
    desk: DeskWindow, page: OrdersPage
) -> None:
    plan = studio_of(desk).plan
    assert plan is not None
    late = [one.order for one in plan.outcomes if one.late_hours]
    others = [order.key for order in studio_of(desk).orders if order.key not in late]
    rows = page.orders.list
    shown = [rows.item(row).data(Qt.ItemDataRole.UserRole) for row in range(rows.count())]
    assert late
    assert shown == [*late, *others]
    page.choose(others[0])
    rows.setFocus()
    QTest.keyClick(rows, Qt.Key.Key_Down, Qt.KeyboardModifier.AltModifier)
    after = [order.key for order in studio_of(desk).orders if order.key not in late]
    assert after == [others[1], others[0], *others[2:]]
