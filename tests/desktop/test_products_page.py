"""Journeys over the page of products: a sheet typed, pasted, read as a law, and undone."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest

from studio_planner.craft.products import MixRatio, ProductKind, RatioBy
from studio_planner.craft.settings import TemperatureUnit, Units
from studio_planner.desktop.page_keys import PRODUCTS
from studio_planner.desktop.pages.products_page import ProductsPage
from studio_planner.desktop.product_pages.product_panel import ProductPanel
from studio_planner.science.stages import Stage
from studio_planner.services.caution import DEFERRAL
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.products import EVEN_RATIO

if TYPE_CHECKING:
    from PySide6.QtWidgets import QLineEdit

    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.window import DeskWindow


@pytest.fixture
def page(desk: DeskWindow) -> ProductsPage:
    desk.changes.plans_by_itself = False
    desk.go_to(PRODUCTS)
    found = desk.pages.page(PRODUCTS)
    assert isinstance(found, ProductsPage)
    found.panel.later.finish()
    return found


def studio_of(desk: DeskWindow) -> Studio:
    assert desk.session is not None
    return desk.session.studio


def last(desk: DeskWindow) -> Product:
    return studio_of(desk).products[-1]


def steps(desk: DeskWindow) -> int:
    assert desk.session is not None
    return len(desk.session.history._done)


def undo_all(desk: DeskWindow) -> None:
    while desk.verbs["undo"].isEnabled():
        desk.verbs["undo"].trigger()


def write(edit: QLineEdit, text: str) -> None:
    edit.setFocus()
    edit.selectAll()
    above = edit.parentWidget()
    while above is not None and not isinstance(above, ProductPanel):
        above = above.parentWidget()
    QTest.keyClicks(edit, text)
    QTest.keyClick(edit, Qt.Key.Key_Return)
    if above is not None:
        above.later.finish()


def type_into(page: ProductsPage, name: str, text: str) -> None:
    write(page.panel.form.form.fields[name].editor, text)  # type: ignore[attr-defined]


def cell(
    page: ProductsPage, stage: Stage, celsius: float, grams: float | None = None
) -> QLineEdit:
    return page.panel.sheet.grid.edits[page.panel.sheet.place_of(stage, celsius, grams)]


def add_temperature(page: ProductsPage, text: str) -> None:
    write(page.panel.sheet.grid.edits[0, len(page.panel.sheet.columns()) + 1], text)


def add(page: ProductsPage, kind: ProductKind = ProductKind.TWO_PART) -> None:
    """Choose a kind from the menu of the verb to add."""
    page.kinds.actions()[list(ProductKind).index(kind)].trigger()
    page.panel.later.finish()


def test_a_sheet_is_typed_from_nothing_and_all_of_it_undone(
    desk: DeskWindow, page: ProductsPage
) -> None:
    before = studio_of(desk)
    add(page)
    assert "The ratio is only a start" in page.panel.gaps.text()
    type_into(page, "name", "Harbour flood")
    type_into(page, "ratio_a", "2")
    write(cell(page, Stage.WORKING_TIME, 20), "45 min")
    write(cell(page, Stage.RECOAT_OPENS, 20), "4-6 h")
    write(cell(page, Stage.RECOAT_CLOSES, 20), "24 hours")
    write(cell(page, Stage.FULL_CURE, 20), "7 days")
    write(cell(page, Stage.CUP_LIFE, 20, 100.0), "30 min")
    add_temperature(page, "25")
    write(cell(page, Stage.RECOAT_OPENS, 25), "3,5 h")
    product = last(desk)
    assert product.name == "Harbour flood"
    assert product.ratio is not None
    assert product.ratio.a == 2
    rows = [(p.stage, p.celsius, p.from_hours, p.to_hours, p.mass_g) for p in product.sheet]
    assert rows == [
        (Stage.WORKING_TIME, 20, 0.75, None, None),
        (Stage.RECOAT_OPENS, 20, 4, 6, None),
        (Stage.RECOAT_CLOSES, 20, 24, None, None),
        (Stage.FULL_CURE, 20, 168, None, None),
        (Stage.CUP_LIFE, 20, 0.5, None, 100),
        (Stage.RECOAT_OPENS, 25, 3.5, None, None),
    ]
    undo_all(desk)
    assert studio_of(desk) == before


def test_a_pasted_sheet_is_looked_over_and_taken_as_one_step(
    desk: DeskWindow, page: ProductsPage
) -> None:
    add(page)
    count, before = steps(desk), studio_of(desk)
    QTest.mouseClick(page.panel.paste_button, Qt.MouseButton.LeftButton)
    paste = page.panel.paste
    paste.text.setPlainText(
        "Recoat window 4-6 h to 24 h at 20 °C\nFull cure 7 days\nGloss: high\n"
        "Tack free 8 h at 20 °C"
    )
    assert "Recoat opens: 4-6 h at 20 °C" in paste.found.text()
    assert "Line 2" in paste.unread.text()
    assert "Line 3" in paste.unread.text()
    assert studio_of(desk) == before
    write(paste.celsius.editor, "20")
    assert "Line 2" not in paste.unread.text()
    QTest.mouseClick(paste.take_button, Qt.MouseButton.LeftButton)
    assert {point.stage for point in last(desk).sheet} == {
        Stage.RECOAT_OPENS,
        Stage.RECOAT_CLOSES,
        Stage.FULL_CURE,
        Stage.TACK_FREE,
    }
    assert not paste.isVisibleTo(page)
    assert steps(desk) == count + 1
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_a_table_pasted_into_a_cell_is_looked_over_first(
    desk: DeskWindow, page: ProductsPage
) -> None:
    before = studio_of(desk)
    QGuiApplication.clipboard().setText("Stage\t15 °C\t25 °C\nTack free\t12 h\t6 h")
    edit = cell(page, Stage.TACK_FREE, 15)
    edit.setFocus()
    QTest.keyClick(edit, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)
    assert studio_of(desk) == before
    assert "Tack-free: 12 h at 15 °C" in page.panel.paste.found.text()
    QTest.mouseClick(page.panel.paste.take_button, Qt.MouseButton.LeftButton)
    assert cell(page, Stage.TACK_FREE, 25).text() == "6 h"


def test_a_pasted_sheet_that_makes_no_law_is_refused_and_stays(
    desk: DeskWindow, page: ProductsPage
) -> None:
    add(page)
    page.panel.open_paste()
    paste = page.panel.paste
    paste.text.setPlainText("Recoat opens 30 h at 20 °C\nRecoat closes 24 h at 20 °C")
    before = studio_of(desk)
    QTest.mouseClick(paste.take_button, Qt.MouseButton.LeftButton)
    assert "opens after it closes" in paste.wrong.text()
    assert studio_of(desk) == before
    assert "30 h" in paste.text.toPlainText()


def test_what_is_no_time_is_said_under_its_row_and_stays_typed(
    desk: DeskWindow, page: ProductsPage
) -> None:
    before = studio_of(desk)
    edit = cell(page, Stage.HANDLE, 25)
    row, _ = page.panel.sheet.place_of(Stage.HANDLE, 25)
    write(edit, ">24 h")
    assert "only one side" in page.panel.sheet.grid.wrong_in(row)
    assert edit.text() == ">24 h"
    desk.show_session_view()
    assert cell(page, Stage.HANDLE, 25).text() == ">24 h"
    assert studio_of(desk) == before
    write(cell(page, Stage.HANDLE, 25), "18 h")
    assert not page.panel.sheet.grid.wrong_in(row)
    assert studio_of(desk) != before


def test_opening_after_closing_is_refused_beside_the_cell(
    desk: DeskWindow, page: ProductsPage
) -> None:
    before = studio_of(desk)
    row, _ = page.panel.sheet.place_of(Stage.RECOAT_OPENS, 25)
    write(cell(page, Stage.RECOAT_OPENS, 25), "20 h")
    assert "At 25 °C it opens after it closes." in page.panel.sheet.grid.wrong_in(row)
    assert studio_of(desk) == before


def test_a_wrong_cell_stays_wrong_while_another_column_is_added(
    desk: DeskWindow, page: ProductsPage
) -> None:
    write(cell(page, Stage.HANDLE, 25), "soon")
    add_temperature(page, "20")
    assert cell(page, Stage.HANDLE, 25).text() == "soon"
    row, _ = page.panel.sheet.place_of(Stage.HANDLE, 25)
    assert "not a time" in page.panel.sheet.grid.wrong_in(row)
    assert page.panel.sheet.columns() == [15, 20, 25]
    assert not desk.session or not desk.verbs["undo"].isEnabled()


def test_a_temperature_moves_its_figures_and_an_empty_one_takes_them_out(
    desk: DeskWindow, page: ProductsPage
) -> None:
    before = studio_of(desk)
    write(page.panel.sheet.grid.edits[0, 2], "26")
    assert {p.celsius for p in studio_of(desk).products[0].sheet} == {15, 26}
    edit = page.panel.sheet.grid.edits[0, 2]
    edit.setFocus()
    edit.clear()
    QTest.keyClick(edit, Qt.Key.Key_Return)
    assert {p.celsius for p in studio_of(desk).products[0].sheet} == {15}
    undo_all(desk)
    assert studio_of(desk) == before


def test_a_mass_of_the_cup_gets_a_row_of_its_own(desk: DeskWindow, page: ProductsPage) -> None:
    rows = len(page.panel.sheet.rows())
    write(page.panel.sheet.grid.edits[rows + 1, 0], "300")
    write(cell(page, Stage.CUP_LIFE, 25, 300.0), "20 min")
    write(cell(page, Stage.CUP_LIFE, 25, 100.0), "30 min")
    masses = {p.mass_g for p in studio_of(desk).products[0].figures(Stage.CUP_LIFE)}
    assert masses == {100, 300}
    page.panel.later.finish()
    assert page.panel.cup.isVisibleTo(page)
    assert "be out of it" in page.panel.cup.sentence


def test_arrows_walk_the_table_and_bring_the_stage_to_the_front(page: ProductsPage) -> None:
    first, chosen = cell(page, Stage.TACK_FREE, 15), []
    page.panel.plot.moved.connect(lambda: chosen.append(page.panel.plot.stage))
    first.setFocus()
    QTest.keyClick(first, Qt.Key.Key_Down)
    assert cell(page, Stage.RECOAT_OPENS, 15).hasFocus()
    assert chosen == [Stage.TACK_FREE, Stage.RECOAT_OPENS]


def test_the_reader_follows_pointer_and_arrows(page: ProductsPage) -> None:
    plot = page.panel.plot
    plot.setFocus()
    plot.choose_stage(Stage.RECOAT_OPENS)
    plot.read_at(25.0)
    reading = plot.reading
    assert reading is not None
    assert reading.likely == 3.5
    QTest.keyClick(plot, Qt.Key.Key_Left)
    assert plot.celsius == 24.0
    assert "At 24 °C: opens after" in page.panel.sentence.text()
    assert "closes after" in page.panel.sentence.text()
    assert "outside the sheet below 15 °C and above 25 °C" in page.panel.sentence.text()
    axes = plot.axes
    assert axes is not None
    QTest.mouseMove(plot, QPoint(round(axes.x(17.0)), plot.height() // 2))
    assert plot.celsius == pytest.approx(17.0, abs=0.1)
    QTest.keyClick(plot, Qt.Key.Key_Up)
    assert plot.stage is not Stage.RECOAT_OPENS
    assert plot.accessibleDescription()


def test_a_single_temperature_is_called_assumed(page: ProductsPage) -> None:
    add(page)
    write(cell(page, Stage.HANDLE, 20), "24 h")
    page.panel.plot.read_at(15.0)
    assert "assumed everywhere but at 20 °C" in page.panel.sentence.text()


def test_a_pour_tonight_has_its_clock_times_with_the_band(page: ProductsPage) -> None:
    page.panel.later.finish()
    spoken = page.panel.pour.accessibleDescription()
    assert "Recoat opens from Wed 9 03:" in spoken
    assert "Recoat closes until" in spoken
    assert "likely" in spoken


def test_the_fields_are_there_before_what_asks_many_clocks(page: ProductsPage) -> None:
    other = page.panel.form.form.fields["name"].value()
    page.choose("fast")
    assert page.panel.form.form.fields["name"].value() != other
    assert page.panel.later.going_on
    assert page.panel.pour.isHidden()
    page.panel.later.finish()
    assert not page.panel.pour.isHidden()


def test_what_the_sheet_leaves_open_is_said(desk: DeskWindow, page: ProductsPage) -> None:
    add(page)
    write(cell(page, Stage.RECOAT_OPENS, 20), "4 h")
    write(cell(page, Stage.FULL_CURE, 20), "7 d")
    said = page.panel.gaps.text()
    for part in (
        "No figure for recoat closes: no window can be planned",
        "No figure for handle: full cure is used instead",
        "No cup life",
    ):
        assert part in said
    assert last(desk).sheet


def test_a_ratio_by_volume_asks_for_densities_beside_the_field(
    desk: DeskWindow, page: ProductsPage
) -> None:
    fields = page.panel.form.form.fields
    fields["ratio_by"].show_value(RatioBy.VOLUME)
    fields["ratio_by"].edited.emit()
    assert "densities of A and of B" in fields["density_a"].wrong
    type_into(page, "density_a", "1.15")
    type_into(page, "density_b", "0,98")
    product = studio_of(desk).products[0]
    assert product.ratio is not None
    assert product.ratio.by is RatioBy.VOLUME
    assert product.density_b == 0.98


def test_a_product_in_use_is_not_removed_and_its_pieces_are_named(
    desk: DeskWindow, page: ProductsPage
) -> None:
    before = studio_of(desk)
    QTest.mouseClick(page.products.remove_button, Qt.MouseButton.LeftButton)
    assert "it is in the stack of" in page.refusal.text()
    assert before.pieces[0].name in page.refusal.text()
    assert studio_of(desk) == before
    QTest.mouseClick(page.products.copy_button, Qt.MouseButton.LeftButton)
    assert page.refusal.isHidden()
    assert last(desk).name == "Slow flood (invented) 2"
    QTest.mouseClick(page.products.remove_button, Qt.MouseButton.LeftButton)
    assert studio_of(desk).products == before.products


@pytest.mark.parametrize("kind", list(ProductKind))
def test_every_kind_is_valid_from_the_start(
    desk: DeskWindow, page: ProductsPage, kind: ProductKind
) -> None:
    add(page, kind)
    assert last(desk).kind is kind
    assert page.products.current_key == last(desk).key
    assert page.panel.form.form.fields["name"].editor.hasFocus()  # type: ignore[attr-defined]
    mixed = kind is ProductKind.TWO_PART
    assert page.panel.form.form.fields["ratio_a"].isVisibleTo(page) == mixed


def test_another_kind_drops_the_ratio(desk: DeskWindow, page: ProductsPage) -> None:
    add(page)
    fields = page.panel.form.form.fields
    fields["kind"].show_value(ProductKind.PRIMER)
    fields["kind"].edited.emit()
    assert last(desk).kind is ProductKind.PRIMER
    assert last(desk).ratio is None
    fields["kind"].show_value(ProductKind.TWO_PART)
    fields["kind"].edited.emit()
    assert last(desk).ratio == EVEN_RATIO


@pytest.mark.parametrize(
    ("kind", "shown"),
    [
        (ProductKind.TWO_PART, {"ratio_by", "density", "cup_limit_g", "mix_limit_g"}),
        (ProductKind.PRIMER, {"density", "mix_limit_g"}),
        (ProductKind.SIZE, {"density", "mix_limit_g"}),
        (ProductKind.LEAF, {"leaf_mm", "leaf_price"}),
    ],
)
def test_only_what_applies_to_a_kind_is_asked(
    page: ProductsPage, kind: ProductKind, shown: set[str]
) -> None:
    add(page, kind)
    fields = page.panel.form.form.fields
    asked = {"ratio_by", "density", "cup_limit_g", "mix_limit_g", "leaf_mm", "leaf_price"}
    assert {name for name in asked if fields[name].isVisibleTo(page)} == shown
    mixed = kind is ProductKind.TWO_PART
    assert fields["mix_limit_g"].words == ("Largest mix" if mixed else "Most at once")


def test_a_studio_in_fahrenheit_reads_and_types_in_it(
    desk: DeskWindow, page: ProductsPage
) -> None:
    units = Units(temperature=TemperatureUnit.FAHRENHEIT)
    desk.changes.attempt(Change("Units", lambda now: replace(now, units=units)))
    assert page.panel.sheet.grid.edits[0, 1].text() == "59 °F"
    row, _ = page.panel.sheet.place_of(Stage.RECOAT_OPENS, 25)
    write(cell(page, Stage.RECOAT_OPENS, 25), "20 h")
    assert "At 77 °F it opens after it closes." in page.panel.sheet.grid.wrong_in(row)
    write(cell(page, Stage.RECOAT_OPENS, 25), "3.5 h")
    add_temperature(page, "68")
    assert page.panel.sheet.columns() == [15, 20, 25]
    page.panel.plot.read_at(20.0)
    QTest.keyClick(page.panel.plot, Qt.Key.Key_Right)
    assert "At 69 °F" in page.panel.sentence.text()


def test_the_page_ends_with_who_decides(page: ProductsPage) -> None:
    from PySide6.QtWidgets import QLabel  # noqa: PLC0415

    assert DEFERRAL in [label.text() for label in page.panel.findChildren(QLabel)]


def test_a_pasted_ratio_is_shown_and_taken(desk: DeskWindow, page: ProductsPage) -> None:
    add(page)
    QTest.mouseClick(page.panel.paste_button, Qt.MouseButton.LeftButton)
    paste = page.panel.paste
    assert paste.take_button.text() == "Take what was read"
    paste.text.setPlainText("Mix ratio 100:45 by weight.")
    assert paste.take_button.isEnabled()
    assert paste.take_button.text() == "Take what was read"
    paste.text.setPlainText("Mix ratio 100:45 by weight. Sandable 24 h at 20 C.")
    assert "Mix ratio 100 to 45 by weight" in paste.found.text()
    assert paste.take_button.text() == "Take 1 figure"
    QTest.mouseClick(paste.take_button, Qt.MouseButton.LeftButton)
    ratio = studio_of(desk).products[-1].ratio
    assert ratio is not None
    assert (ratio.a, ratio.b) == (100, 45)


def test_the_even_ratio_is_warned_of_while_figures_alone_are_taken(
    desk: DeskWindow, page: ProductsPage
) -> None:
    add(page)
    QTest.mouseClick(page.panel.paste_button, Qt.MouseButton.LeftButton)
    page.panel.paste.text.setPlainText("Sandable 24 h at 20 C.")
    QTest.mouseClick(page.panel.paste.take_button, Qt.MouseButton.LeftButton)
    assert studio_of(desk).products[-1].sheet
    assert "The ratio is only a start" in page.panel.gaps.text()


def test_an_even_ratio_is_confirmed_by_saying_what_it_counts(
    desk: DeskWindow, page: ProductsPage
) -> None:
    add(page)
    by = page.panel.form.ratio_by
    assert [by.editor.itemText(row) for row in range(3)] == [
        "not said yet", "by weight", "by volume",
    ]  # fmt: skip
    by.show_value(RatioBy.WEIGHT)
    by.edited.emit()
    page.panel.later.finish()
    assert last(desk).ratio == MixRatio(a=1, b=1)
    assert "only a start" not in page.panel.gaps.text()
    assert by.editor.count() == 2


def test_a_pasted_sheet_names_a_new_product(desk: DeskWindow, page: ProductsPage) -> None:
    add(page)
    QTest.mouseClick(page.panel.paste_button, Qt.MouseButton.LeftButton)
    paste = page.panel.paste
    paste.text.setPlainText("Slow & clear 40\nSandable 24 h at 20 C.")
    assert paste.named.isVisibleTo(page)
    assert paste.named.isChecked()
    QTest.mouseClick(paste.take_button, Qt.MouseButton.LeftButton)
    assert last(desk).name == "Slow & clear 40"


def test_a_known_product_keeps_its_name_unless_the_maker_wants_the_sheets(
    desk: DeskWindow, page: ProductsPage
) -> None:
    before = studio_of(desk).products[0].name
    QTest.mouseClick(page.panel.paste_button, Qt.MouseButton.LeftButton)
    paste = page.panel.paste
    paste.text.setPlainText("Slow mix 40\nSandable 24 h at 20 C.")
    assert not paste.named.isChecked()
    paste.named.click()
    paste.named.click()
    QTest.mouseClick(paste.take_button, Qt.MouseButton.LeftButton)
    assert studio_of(desk).products[0].name == before


def test_a_pasted_ratio_by_volume_waits_for_the_densities(
    desk: DeskWindow, page: ProductsPage
) -> None:
    add(page)
    QTest.mouseClick(page.panel.paste_button, Qt.MouseButton.LeftButton)
    paste = page.panel.paste
    paste.text.setPlainText("2 parts A : 1 part B by volume\nSandable 24 h at 20 C.")
    assert "only with the densities of A and of B" in paste.found.text()
    QTest.mouseClick(paste.take_button, Qt.MouseButton.LeftButton)
    assert last(desk).figures(Stage.SANDABLE)
    assert last(desk).ratio == EVEN_RATIO
    assert "The ratio waits here" in paste.wrong.text()
    type_into(page, "density_a", "1.15")
    type_into(page, "density_b", "0.98")
    QTest.mouseClick(paste.take_button, Qt.MouseButton.LeftButton)
    assert last(desk).ratio == MixRatio(a=2, b=1, by=RatioBy.VOLUME)
    assert paste.isHidden()
