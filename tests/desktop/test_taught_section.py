"""Journeys over what touch tests say of a product: looked at, used, left, and undone."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from studio_planner.craft.settings import TemperatureUnit, Units
from studio_planner.desktop.page_keys import PRODUCTS
from studio_planner.desktop.pages.products_page import ProductsPage
from studio_planner.science.stages import Stage
from studio_planner.services.editing.changes import Change
from studio_planner.storage.studio_file import create_studio
from tests.services.touched_studio import OPENS, logged, poured, taught_studio

if TYPE_CHECKING:
    from pathlib import Path

    from PySide6.QtWidgets import QPushButton

    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.product_pages.taught_section import TaughtRow, TaughtSection
    from studio_planner.desktop.window import DeskWindow


def opened(window: DeskWindow, path: Path, studio: Studio) -> ProductsPage:
    create_studio(path, studio).close()
    window.changes.plans_by_itself = False
    assert window.open_path(path)
    window.go_to(PRODUCTS)
    page = window.pages.page(PRODUCTS)
    assert isinstance(page, ProductsPage)
    return page


@pytest.fixture
def page(window: DeskWindow, tmp_path: Path) -> ProductsPage:
    return opened(window, tmp_path / "touched.studio", taught_studio())


def section(page: ProductsPage) -> TaughtSection:
    page.panel.later.finish()
    return page.panel.taught


def row(page: ProductsPage) -> TaughtRow:
    return section(page).rows[OPENS]


def product(window: DeskWindow) -> Product:
    assert window.session is not None
    return window.session.studio.products[0]


def press(button: QPushButton) -> None:
    assert button.isVisibleTo(button.window())
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)


def test_the_page_says_what_the_tests_found_beside_the_sheet(page: ProductsPage) -> None:
    assert row(page).title.text().startswith("Recoat opens at 20 °C: safe after 4 h")
    assert "later than the sheet (4 h)" in row(page).found.text()
    assert "It rests on 10 tests of 10 pours." in row(page).found.text()
    assert row(page).state.text() == "Plans go by the data sheet."
    assert "data sheet: 3 h 38 min to 4 h 24 min" in row(page).bands.accessibleDescription()
    assert "your tests: 3 h 57 min to 4 h 41 min" in row(page).bands.accessibleDescription()
    assert section(page).empty.isHidden()


def test_stages_without_a_test_have_no_row(page: ProductsPage) -> None:
    shown = [stage for stage, one in section(page).rows.items() if not one.isHidden()]
    assert shown == [OPENS]


def test_using_the_tests_is_one_change_and_going_back_another(
    page: ProductsPage, window: DeskWindow
) -> None:
    before = product(window)
    press(row(page).use)
    assert [taught.stage for taught in product(window).taught] == [OPENS]
    assert row(page).state.text().startswith("Plans go by your tests")
    assert row(page).use.isHidden()
    assert row(page).back.hasFocus()
    assert "as your own touch tests found" in page.panel.sentence.text()
    press(row(page).back)
    assert product(window) == before
    assert row(page).use.hasFocus()
    window.verbs["undo"].trigger()
    assert product(window).taught
    window.verbs["undo"].trigger()
    assert product(window) == before


def test_a_sheet_changed_since_is_said_and_the_tests_are_offered_anew(
    page: ProductsPage, window: DeskWindow
) -> None:
    press(row(page).use)
    sheet = tuple(
        replace(point, from_hours=point.from_hours * 1.1) if point.stage is OPENS else point
        for point in product(window).sheet
    )
    changed = replace(product(window), sheet=sheet)
    window.changes.make(
        Change("change", lambda now: replace(now, products=(changed, *now.products[1:])))
    )
    assert "The sheet has changed" in row(page).state.text()
    assert row(page).use.text() == "Use them"
    press(row(page).use)
    assert row(page).state.text().startswith("Plans go by your tests")


def test_newer_tests_are_a_band_of_their_own_beside_those_in_use(
    page: ProductsPage, window: DeskWindow
) -> None:
    press(row(page).use)
    window.changes.make(Change("forget", lambda now: replace(now, log=now.log[:-3])))
    assert row(page).use.text() == "Use the newer tests too"
    assert "with newer ones" in row(page).bands.accessibleDescription()


def test_degrees_are_those_of_the_studio(page: ProductsPage, window: DeskWindow) -> None:
    units = Units(temperature=TemperatureUnit.FAHRENHEIT)
    window.changes.make(Change("units", lambda now: replace(now, units=units)))
    assert "at 68 °F" in row(page).title.text()


def test_without_a_test_it_says_where_they_come_from(
    window: DeskWindow, tmp_path: Path
) -> None:
    page = opened(window, tmp_path / "untouched.studio", logged(poured(10)))
    assert section(page).empty.isVisibleTo(page)
    assert section(page).foot.isHidden()
    assert all(one.isHidden() for one in section(page).rows.values())


def test_only_what_a_finger_can_feel_has_a_row(page: ProductsPage) -> None:
    assert all(stage.teachable for stage in section(page).rows)
    assert Stage.RECOAT_CLOSES not in section(page).rows
