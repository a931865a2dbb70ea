"""Ctrl+Z in a field: what is being typed first, then the last change of the studio."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit

from studio_planner.desktop.page_keys import ORDERS, PIECES, PLAN, PRODUCTS, STUDIO
from studio_planner.desktop.pages.pieces_page import PiecesPage
from studio_planner.desktop.pages.products_page import ProductsPage
from studio_planner.desktop.pages.studio_page import UNITS
from studio_planner.desktop.studio_pages.units_section import UnitsSection
from tests.desktop.studio_steps import click, section, studio_of, typed

if TYPE_CHECKING:
    from studio_planner.desktop.window import DeskWindow

pytestmark = pytest.mark.journey


def undo_by_keys() -> None:
    focused = QApplication.focusWidget()
    assert focused is not None
    QTest.keyClick(focused, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)


def test_right_after_return_ctrl_z_takes_the_change_back_and_the_field_shows_it(
    desk: DeskWindow,
) -> None:
    units = section(desk, UNITS, UnitsSection)
    before = studio_of(desk)
    typed(units.name, "Gull Loft")
    assert studio_of(desk).name == "Gull Loft"
    undo_by_keys()
    assert studio_of(desk) == before
    assert units.name.value() == before.name


def test_ctrl_z_takes_back_what_is_being_typed_before_it_takes_back_a_change(
    desk: DeskWindow,
) -> None:
    units = section(desk, UNITS, UnitsSection)
    before = studio_of(desk)
    typed(units.name, "Gull Loft")
    editor = units.name.editor
    QTest.keyClicks(editor, " East")
    undo_by_keys()
    assert editor.text() == "Gull Loft"
    assert studio_of(desk).name == "Gull Loft"
    undo_by_keys()
    assert studio_of(desk) == before


def test_in_a_cell_of_the_sheet_ctrl_z_takes_the_last_figure_back(desk: DeskWindow) -> None:
    desk.changes.plans_by_itself = False
    desk.go_to(PRODUCTS)
    page = desk.pages.page(PRODUCTS)
    assert isinstance(page, ProductsPage)
    before = studio_of(desk)
    cell = page.panel.sheet.grid.edits[1, 1]
    cell.setFocus()
    cell.selectAll()
    QTest.keyClicks(cell, "0.9")
    QTest.keyClick(cell, Qt.Key.Key_Return)
    assert studio_of(desk) != before
    undo_by_keys()
    assert studio_of(desk) == before


def test_what_is_new_is_named_by_typing_over_the_name_that_it_came_with(
    desk: DeskWindow,
) -> None:
    desk.changes.plans_by_itself = False
    desk.go_to(PIECES)
    page = desk.pages.page(PIECES)
    assert isinstance(page, PiecesPage)
    before = studio_of(desk)
    click(page.pieces.add_button)
    named = QApplication.focusWidget()
    assert isinstance(named, QLineEdit)
    QTest.keyClicks(named, "Moon board")
    QTest.keyClick(named, Qt.Key.Key_Return)
    assert studio_of(desk).pieces[-1].name == "Moon board"
    undo_by_keys()
    undo_by_keys()
    assert studio_of(desk) == before


def test_undo_goes_on_over_pages_and_the_bench_and_ends_with_the_studio(
    desk: DeskWindow,
) -> None:
    before = studio_of(desk)
    typed(section(desk, UNITS, UnitsSection).name, "Gull Loft")
    changed = studio_of(desk)
    for page in (PLAN, PIECES, ORDERS, STUDIO, PLAN):
        desk.go_to(page)
    desk.verbs["bench"].trigger()
    bench = desk.others.bench
    assert bench.isVisible()
    bench.close()
    assert desk.verbs["undo"].isEnabled()
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before
    desk.go_to(PIECES)
    desk.verbs["redo"].trigger()
    assert studio_of(desk) == changed
    assert desk.session is not None
    assert desk.open_path(desk.session.path)
    assert not desk.verbs["undo"].isEnabled()
