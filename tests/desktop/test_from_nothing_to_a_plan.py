"""From an empty file to a studio that can be planned, through the real pages."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from studio_planner.craft.products import ProductKind
from studio_planner.desktop.page_keys import PIECES, PLAN, PRODUCTS, SET_UP
from studio_planner.desktop.pages.pieces_page import PiecesPage
from studio_planner.desktop.pages.products_page import ProductsPage
from studio_planner.desktop.pages.room_section import RoomSection
from studio_planner.desktop.pages.studio_page import HANDS, ROOM
from studio_planner.desktop.studio_pages.hands_section import HandsSection
from studio_planner.desktop.studio_pages.set_up_section import SetUpSection
from studio_planner.planning.quick import quick_plan
from studio_planner.science.stages import Stage
from studio_planner.services.needs import Need
from tests.desktop.studio_steps import click, pulled, section, studio_of, typed

if TYPE_CHECKING:
    from pathlib import Path

    from PySide6.QtWidgets import QLineEdit

    from studio_planner.desktop.window import DeskWindow

pytestmark = pytest.mark.journey

_SHEET = (
    (Stage.WORKING_TIME, "0.6"),
    (Stage.RECOAT_OPENS, "4"),
    (Stage.RECOAT_CLOSES, "24"),
    (Stage.HANDLE, "24"),
    (Stage.PRINT_FREE, "48"),
)


def enter_hands(desk: DeskWindow) -> None:
    hands = section(desk, HANDS, HandsSection)
    click(hands.people.add_button)
    typed(hands.panel.name, "Tove")
    for day in range(5):
        pulled(hands.panel.week, day, 17 * 60, 21 * 60)


def enter_room(desk: DeskWindow) -> None:
    room = section(desk, ROOM, RoomSection)
    click(room.places.add_button)
    click(room.shelf.spots.add_button)


def enter_product(desk: DeskWindow) -> None:
    page = desk.pages.page(PRODUCTS)
    assert isinstance(page, ProductsPage)
    page.kinds.actions()[list(ProductKind).index(ProductKind.TWO_PART)].trigger()
    sheet = page.panel.sheet
    write(sheet.grid.edits[0, len(sheet.columns()) + 1], "20")
    for stage, hours in _SHEET:
        write(sheet.grid.edits[sheet.place_of(stage, 20, None)], hours)


def write(edit: QLineEdit, text: str) -> None:
    edit.setFocus()
    edit.selectAll()
    QTest.keyClicks(edit, text)
    QTest.keyClick(edit, Qt.Key.Key_Return)


def enter_piece(desk: DeskWindow) -> None:
    page = desk.pages.page(PIECES)
    assert isinstance(page, PiecesPage)
    click(page.pieces.add_button)


def test_each_need_is_met_on_the_page_that_the_set_up_leads_to_until_planning_can_begin(
    window: DeskWindow, answers: dict[str, Path | None], tmp_path: Path
) -> None:
    answers["new"] = tmp_path / "tern.studio"
    window.verbs["new"].trigger()
    window.changes.plans_by_itself = False
    empty = studio_of(window)
    meets = {
        Need.HANDS: enter_hands,
        Need.ROOM: enter_room,
        Need.PRODUCT: enter_product,
        Need.PIECE: enter_piece,
    }
    for need, meet in meets.items():
        steps = section(window, SET_UP, SetUpSection)
        assert not steps.rows[need].sign.done
        click(steps.rows[need].verb)
        meet(window)
    steps = section(window, SET_UP, SetUpSection)
    lacking = {need: row.lacking.text() for need, row in steps.rows.items()}
    assert "planning can begin" in steps.summary.text(), lacking
    assert steps.begin.isVisibleTo(window)
    assert len(quick_plan(studio_of(window), window.clock.now()).coats) >= 1
    window.go_to(PLAN)
    assert not window.timeline.set_up_button.isVisibleTo(window)
    while window.verbs["undo"].isEnabled():
        window.verbs["undo"].trigger()
    assert studio_of(window) == empty
