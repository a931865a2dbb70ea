"""From an empty file to a studio that can be planned, through the real pages."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from studio_planner.craft.products import ProductKind
from studio_planner.desktop.page_keys import ORDERS, PIECES, PLAN, PRODUCTS, QUESTIONS, SET_UP
from studio_planner.desktop.pages.pieces_page import PiecesPage
from studio_planner.desktop.pages.products_page import ProductsPage
from studio_planner.desktop.pages.room_section import RoomSection
from studio_planner.desktop.pages.studio_page import HANDS, ROOM
from studio_planner.desktop.studio_pages.hands_section import HandsSection
from studio_planner.desktop.studio_pages.set_up_section import SetUpSection
from studio_planner.planning.quick import quick_plan
from studio_planner.science.stages import Stage
from studio_planner.services.needs import Need
from tests.desktop.first_evening import Maker, play
from tests.desktop.studio_steps import click, pulled, section, studio_of, typed

if TYPE_CHECKING:
    from pathlib import Path

    from PySide6.QtWidgets import QLineEdit
    from pytestqt.qtbot import QtBot

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
    assert steps.begin.text() == window.title_bar.plan_button.text() == "Plan"
    assert window.verbs["plan"].text() == "Plan &now"
    assert len(quick_plan(studio_of(window), window.clock.now()).coats) >= 1
    window.go_to(PLAN)
    assert not window.timeline.set_up_button.isVisibleTo(window)
    while window.verbs["undo"].isEnabled():
        window.verbs["undo"].trigger()
    assert studio_of(window) == empty


def planned(window: DeskWindow) -> bool:
    """Whether a plan is on the screen, which is a moment after it is in the session."""
    return window.canvas.view is not None and window.canvas.view.plan is not None


MOST_CLICKS, MOST_KEYS = 27, 110
"""What the first evening takes at most, with two products, three coats and an order."""


@pytest.mark.slow
def test_the_first_evening_leads_to_a_plan_in_few_clicks_and_nothing_has_to_be_looked_for(
    qtbot: QtBot, window: DeskWindow, answers: dict[str, Path | None], tmp_path: Path
) -> None:
    answers["new"] = tmp_path / "tern.studio"
    seen: list[str] = []
    maker = Maker(window, seen.append)
    play(maker)
    qtbot.waitUntil(lambda: planned(window), timeout=60_000)
    window.stop_planning()
    assert not window.guide.isVisibleTo(window)
    plan, scale = studio_of(window).plan, window.canvas.scale
    assert plan is not None
    first = min(coat.start for coat in plan.coats).timestamp()
    assert scale.second(0) <= first <= scale.end  # not somewhere to the right of the week
    assert [len(piece.stack) for piece in studio_of(window).pieces] == [3]
    assert len(studio_of(window).products) == 2
    assert (maker.clicks <= MOST_CLICKS, maker.keys <= MOST_KEYS) == (True, True), (
        maker.clicks,
        maker.keys,
    )
    assert len(seen) >= 10


def test_on_every_page_the_guide_says_what_lacks_next_and_why_and_leads_there(
    window: DeskWindow, answers: dict[str, Path | None], tmp_path: Path
) -> None:
    answers["new"] = tmp_path / "tern.studio"
    window.verbs["new"].trigger()
    window.changes.plans_by_itself = False
    guide = window.guide
    assert not guide.isVisibleTo(window)  # the page of the set-up says it itself
    for page in (ORDERS, PIECES, PRODUCTS, QUESTIONS):
        window.go_to(page)
        assert guide.isVisibleTo(window)
        assert "add yourself" in guide.said.text()
        assert "somebody's hands" in guide.why.text()
        assert "add yourself" in guide.go.accessibleDescription()
    window.go_to(PLAN)
    assert not guide.isVisibleTo(window)
    window.go_to(PIECES)
    click(guide.go)
    add = section(window, HANDS, HandsSection).people.add_button
    window.go_to(PIECES)
    click(guide.go)
    assert add.hasFocus()
    QTest.keyClick(add, Qt.Key.Key_Space)
    assert len(studio_of(window).people) == 1
    assert "Nobody has working hours" in guide.said.text()


def test_a_studio_that_has_a_plan_has_no_guide(desk: DeskWindow) -> None:
    desk.go_to(PIECES)
    assert "guide" not in vars(desk)


@pytest.mark.parametrize("size", [(1280, 800), (640, 400)])
def test_no_word_of_the_guide_is_clipped(
    window: DeskWindow,
    answers: dict[str, Path | None],
    tmp_path: Path,
    size: tuple[int, int],
) -> None:
    answers["new"] = tmp_path / "tern.studio"
    window.verbs["new"].trigger()
    window.go_to(PIECES)
    window.resize(*size)
    QApplication.processEvents()
    assert (window.width(), window.height()) == size
    guide = window.guide
    for line in (guide.said, guide.why):
        need = line.heightForWidth(line.width())
        assert line.height() >= need, line.text()
    assert guide.rect().contains(guide.go.geometry())
