"""Going from page to page by keys: the keyboard goes along, to the first list or field."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QListWidget

from studio_planner.desktop.page_keys import (
    LOG,
    ORDERS,
    PIECES,
    PLAN,
    PRODUCTS,
    QUESTIONS,
    STOCK,
    STUDIO,
)

if TYPE_CHECKING:
    from studio_planner.desktop.window import DeskWindow

KEYS = (PLAN, ORDERS, PIECES, PRODUCTS, STUDIO, QUESTIONS, LOG, STOCK)
LISTED = {ORDERS: "Orders", PIECES: "Pieces", PRODUCTS: "Products", QUESTIONS: "Questions"}


def go(desk: DeskWindow, key: str) -> None:
    digit = Qt.Key(Qt.Key.Key_1 + KEYS.index(key))
    QTest.keyClick(desk, digit, Qt.KeyboardModifier.ControlModifier)
    QApplication.processEvents()


@pytest.mark.parametrize("key", KEYS[1:])
def test_the_keyboard_goes_to_the_page(desk: DeskWindow, key: str) -> None:
    go(desk, key)
    assert desk.pages.current_key == key
    focused = QApplication.focusWidget()
    assert focused is not None
    assert desk.pages.page(key).isAncestorOf(focused)
    if key in LISTED:
        assert isinstance(focused, QListWidget)
        assert focused.accessibleName() == LISTED[key]


def test_back_on_the_plan_the_keyboard_is_in_the_plan(desk: DeskWindow) -> None:
    go(desk, PRODUCTS)
    go(desk, PLAN)
    assert QApplication.focusWidget() is desk.timeline


def test_arrows_choose_on_the_page_at_once(desk: DeskWindow) -> None:
    go(desk, PRODUCTS)
    before = desk.pages.page(PRODUCTS).chosen  # type: ignore[attr-defined]
    focused = QApplication.focusWidget()
    assert focused is not None
    QTest.keyClick(focused, Qt.Key.Key_Down)
    assert desk.pages.page(PRODUCTS).chosen != before  # type: ignore[attr-defined]
