"""Journeys over the page of the stock: bottles, counts, pigments, prices, and what lasts."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from itertools import pairwise
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QFont, QImage, QPainter
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QScrollArea

from studio_planner.craft.pieces import Colour, StackPattern
from studio_planner.craft.pigments import Pigment
from studio_planner.craft.prices import PriceRule
from studio_planner.craft.stock import LotPart
from studio_planner.desktop.forms.noun_list import NounList
from studio_planner.desktop.page_keys import STOCK
from studio_planner.desktop.pages.stock_page import BOTTLES, ENOUGH, PIGMENTS, PRICES, StockPage
from studio_planner.desktop.stock_pages.bottle_drawing import Filled, draw_bottle
from studio_planner.desktop.stock_pages.level_steps import LevelSteps
from studio_planner.desktop.stock_pages.pigments_section import PigmentsSection
from studio_planner.desktop.stock_pages.prices_section import PricesSection
from studio_planner.desktop.theme import LIGHT
from studio_planner.science.film_limits import Colourant
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.nouns import with_thing

if TYPE_CHECKING:
    from PySide6.QtWidgets import QLineEdit, QWidget

    from studio_planner.craft.stock import Lot
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.forms.field import Field
    from studio_planner.desktop.stock_pages.bottles_section import BottlesSection
    from studio_planner.desktop.stock_pages.day_or_none import DayOrNoneField
    from studio_planner.desktop.window import DeskWindow


@pytest.fixture
def page(desk: DeskWindow) -> StockPage:
    desk.changes.plans_by_itself = False
    desk.go_to(STOCK)
    found = desk.pages.page(STOCK)
    assert isinstance(found, StockPage)
    return found


@pytest.fixture
def bottles(page: StockPage) -> BottlesSection:
    page.choose(BOTTLES)
    return page.bottles


def studio_of(desk: DeskWindow) -> Studio:
    assert desk.session is not None
    return desk.session.studio


def last_lot(desk: DeskWindow) -> Lot:
    return studio_of(desk).lots[-1]


def spoken(widget: QWidget) -> str:
    """All words that are seen in a widget, once what was just put there is shown."""
    QApplication.processEvents()
    shown = (one for one in widget.findChildren(QLabel) if one.isVisibleTo(widget))
    return "\n".join(one.text() for one in shown)


def type_into(field: Field, text: str) -> None:
    editor: QLineEdit = field.editor  # type: ignore[attr-defined]
    editor.setFocus()
    editor.selectAll()
    QTest.keyClick(editor, Qt.Key.Key_Delete)
    QTest.keyClicks(editor, text)
    QTest.keyClick(editor, Qt.Key.Key_Return)


def press(inside: QWidget, words: str) -> None:
    QApplication.processEvents()
    button = next(
        one
        for one in inside.findChildren(QPushButton)
        if one.text() == words and one.isVisibleTo(inside)
    )
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)


def add_bottle(desk: DeskWindow, bottles: BottlesSection, number: int, grams: str) -> Lot:
    """Add a bottle of the numbered choice of the menu, and type how much is in it."""
    bottles.bottles.add_button.menu().actions()[number].trigger()
    type_into(bottles.form.form.fields["new_g"], grams)
    return last_lot(desk)


def undo_all(desk: DeskWindow) -> None:
    while desk.verbs["undo"].isEnabled():
        desk.verbs["undo"].trigger()


def test_a_bottle_is_entered_from_nothing_and_undone(
    desk: DeskWindow, bottles: BottlesSection
) -> None:
    before = studio_of(desk)
    menu = [action.text() for action in bottles.bottles.add_button.menu().actions()]
    assert menu[0].endswith(", part A")
    assert menu[1].endswith(", part B")
    lot = add_bottle(desk, bottles, 1, "750,5")
    type_into(bottles.form.form.fields["label"], "SL-77")
    type_into(bottles.form.form.fields["price"], "31.20")
    lot = last_lot(desk)
    assert (lot.label, lot.part, lot.new_g, lot.price) == ("SL-77", LotPart.B, 750.5, 31.2)
    assert lot.received == date(2026, 12, 8)
    assert "SL-77" in bottles.bottles.list.currentItem().text()
    undo_all(desk)
    assert studio_of(desk) == before


def test_what_is_wrong_with_a_bottle_is_said_beside_its_field_and_stays_typed(
    desk: DeskWindow, bottles: BottlesSection
) -> None:
    add_bottle(desk, bottles, 0, "1000")
    before = studio_of(desk)
    field = bottles.form.form.fields["new_g"]
    type_into(field, "0")
    assert field.wrong
    assert studio_of(desk) == before
    desk.show_session_view()
    assert field.editor.text() == "0"  # type: ignore[attr-defined]
    type_into(field, "900")
    assert not field.wrong
    assert last_lot(desk).new_g == 900.0


def test_a_bottle_is_opened_today_by_a_tick_and_closed_again(
    desk: DeskWindow, bottles: BottlesSection
) -> None:
    add_bottle(desk, bottles, 0, "1000")
    field: DayOrNoneField = bottles.form.form.fields["opened"]  # type: ignore[assignment]
    assert field.day.isHidden()
    field.known.click()
    assert last_lot(desk).opened == date(2026, 12, 8)
    assert "is its last day" in spoken(bottles)
    field.known.click()
    assert last_lot(desk).opened is None
    assert "is its last day" not in spoken(bottles)


def test_a_count_replaces_what_was_reckoned_and_can_be_taken_back(
    desk: DeskWindow, bottles: BottlesSection
) -> None:
    add_bottle(desk, bottles, 0, "1000")
    before = studio_of(desk)
    type_into(bottles.counting.mass, "412,5")
    QTest.mouseClick(bottles.counting.button, Qt.MouseButton.LeftButton)
    assert [count.left_g for count in last_lot(desk).counts] == [412.5]
    assert "412.5 g\nleft" in spoken(bottles)
    assert bottles.counting.mass.editor.text() == ""
    press(bottles.counting, "Take back")
    assert last_lot(desk).counts == ()
    desk.verbs["undo"].trigger()
    assert "Tue 8 Dec 19:36: 412.5 g left" in spoken(bottles.counting)
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


@pytest.mark.parametrize(("typed", "said"), [("1200", "more cannot be left"), ("", "Write")])
def test_a_count_that_cannot_be_is_said_beside_it_and_not_kept(
    desk: DeskWindow, bottles: BottlesSection, typed: str, said: str
) -> None:
    add_bottle(desk, bottles, 0, "1000")
    bottles.counting.mass.editor.setText(typed)
    QTest.mouseClick(bottles.counting.button, Qt.MouseButton.LeftButton)
    assert said in bottles.counting.mass.wrong
    assert last_lot(desk).counts == ()
    assert bottles.counting.mass.editor.text() == typed


def test_what_is_reserved_and_free_adds_up_to_what_is_left(
    desk: DeskWindow, bottles: BottlesSection
) -> None:
    add_bottle(desk, bottles, 0, "5000")
    text = spoken(bottles)
    assert "reserved for " in text
    lines = text.split("\n")
    grams = {
        about: float(figure.removesuffix(" g").replace(",", ""))
        for figure, about in pairwise(lines)
        if figure.endswith(" g") and figure[0].isdigit()
    }
    reserved = sum(mass for about, mass in grams.items() if about.startswith("reserved"))
    assert reserved > 0.0
    assert reserved + grams["free"] == pytest.approx(grams["left"])
    (drawn,) = bottles.picture.shown
    assert drawn.reserved == pytest.approx(reserved / 5000, abs=1e-3)


def test_a_bottle_kept_for_another_order_serves_no_pour_of_others(
    desk: DeskWindow, bottles: BottlesSection
) -> None:
    add_bottle(desk, bottles, 0, "5000")
    kept = bottles.form.form.fields["kept_for"]
    order = studio_of(desk).orders[-1]
    kept.show_value(order.key)
    kept.edited.emit()
    assert last_lot(desk).kept_for == order.key
    others = [one.name for one in studio_of(desk).orders if one.key != order.key]
    assert not any(f"reserved for {name}" in spoken(bottles) for name in others)


def test_bottles_are_copied_moved_and_removed(
    desk: DeskWindow, bottles: BottlesSection
) -> None:
    add_bottle(desk, bottles, 0, "1000")
    type_into(bottles.form.form.fields["label"], "SL-77")
    before = studio_of(desk)
    QTest.mouseClick(bottles.bottles.copy_button, Qt.MouseButton.LeftButton)
    assert [lot.label for lot in studio_of(desk).lots] == ["SL-77", "SL-77 2"]
    bottles.bottles.list.setFocus()
    QTest.keyClick(bottles.bottles.list, Qt.Key.Key_Up, Qt.KeyboardModifier.AltModifier)
    assert [lot.label for lot in studio_of(desk).lots] == ["SL-77 2", "SL-77"]
    QTest.keyClick(bottles.bottles.list, Qt.Key.Key_Delete)
    assert [lot.label for lot in studio_of(desk).lots] == ["SL-77"]
    assert studio_of(desk) == before


def test_what_lasts_offers_to_enter_the_bottle_that_nobody_entered(
    desk: DeskWindow, page: StockPage
) -> None:
    page.choose(ENOUGH)
    section = page.section(ENOUGH)
    assert "No bottle is entered. The plan takes" in spoken(section)
    press(section, "Enter a bottle")
    assert page.key == BOTTLES
    assert last_lot(desk).label == "New bottle"
    assert page.bottles.form.form.fields["label"].focusProxy().hasFocus()  # type: ignore[union-attr]


def test_what_runs_out_says_the_pour_and_the_day_to_order_by(
    desk: DeskWindow, page: StockPage, bottles: BottlesSection
) -> None:
    add_bottle(desk, bottles, 0, "10")
    page.choose(ENOUGH)
    section = page.section(ENOUGH)
    text = spoken(section)
    assert "Runs out at pour " in text
    assert "Order at once; it may come too late." in text
    stairs = [one.stair for one in section.findChildren(LevelSteps) if one.stair is not None]
    (short,) = (stair for stair in stairs if stair.short is not None)
    assert short.levels[-1][1] == 0.0
    page.choose(BOTTLES)
    type_into(bottles.form.form.fields["new_g"], "9000")
    page.choose(ENOUGH)
    assert "Runs out" not in spoken(section)
    assert "stay when all is poured." in spoken(section)
    press(section, "Its bottles")
    assert page.key == BOTTLES


def test_a_pigment_is_entered_changed_and_undone(desk: DeskWindow, page: StockPage) -> None:
    before = studio_of(desk)
    page.choose(PIGMENTS)
    section = page.section(PIGMENTS)
    assert isinstance(section, PigmentsSection)
    QTest.mouseClick(section.pigments.add_button, Qt.MouseButton.LeftButton)
    type_into(section.form.fields["name"], "Moonlight")
    type_into(section.form.fields["density"], "3,1")
    type_into(section.form.fields["price_per_100g"], "12")
    pigment = studio_of(desk).pigments[-1]
    found = (pigment.name, pigment.density, pigment.diameter_um, pigment.price_per_100g)
    assert found == ("Moonlight", 3.1, None, 12.0)
    assert "No colour of a coat is called so." in spoken(section)
    assert "common practice" in spoken(section)
    type_into(section.form.fields["density"], "300")
    assert section.form.fields["density"].wrong
    type_into(section.form.fields["density"], "")
    assert studio_of(desk).pigments[-1].density is None
    QTest.mouseClick(section.pigments.copy_button, Qt.MouseButton.LeftButton)
    assert [one.name for one in studio_of(desk).pigments] == ["Moonlight", "Moonlight 2"]
    QTest.mouseClick(section.pigments.remove_button, Qt.MouseButton.LeftButton)
    undo_all(desk)
    assert studio_of(desk) == before


def test_a_pigment_is_counted_from_its_first_bottle_on(
    desk: DeskWindow, page: StockPage
) -> None:
    studio = studio_of(desk)
    piece = next(one for one in studio.pieces if len(one.stack) > 1)
    sea = Pigment(key="sea", name="Sea", kind=Colourant.PASTE)
    blue = Colour(name="tide", colourant="Sea", colourant_pct=2)
    coats = tuple(replace(coat, colours=(blue,)) for coat in piece.stack)
    painted = with_thing(replace(studio, pigments=(sea,)), replace(piece, stack=coats))
    desk.changes.make(Change("Paint", lambda _now: painted))
    page.choose(f"{PIGMENTS}/sea")
    section = page.section(PIGMENTS)
    assert isinstance(section, PigmentsSection)
    assert section.stock.isHidden()
    press(section, "Count it: enter a bottle")
    assert page.key == BOTTLES
    lot = last_lot(desk)
    assert (lot.product, lot.part, lot.new_g) == ("sea", LotPart.COLOURANT, 50.0)
    assert "New bottle, Sea" in spoken(page.bottles)
    page.choose(f"{PIGMENTS}/sea")
    assert "50.0 g left; the plan takes" in spoken(section)
    QTest.mouseClick(section.pigments.remove_button, Qt.MouseButton.LeftButton)
    assert "bottles of it are entered (New bottle)" in desk.notice.words
    press(section, "Its bottles")
    assert page.key == BOTTLES
    assert page.bottles.chosen == lot.key
    without = replace(painted, lots=())
    desk.changes.make(Change("Empty the shelf", lambda _now: without))
    page.choose(f"{PIGMENTS}/sea")
    assert section.enter.isVisibleTo(section)
    QTest.mouseClick(section.pigments.remove_button, Qt.MouseButton.LeftButton)
    assert studio_of(desk).pigments == ()
    undo_all(desk)
    assert studio_of(desk) == studio


def test_a_pigment_that_is_renamed_is_renamed_in_every_coat_in_one_step(
    desk: DeskWindow, page: StockPage
) -> None:
    studio = studio_of(desk)
    piece = next(one for one in studio.pieces if len(one.stack) > 1)
    colour = Colour(name="tide", colourant="moonlight ", colourant_pct=2)
    coats = tuple(replace(coat, colours=(colour,)) for coat in piece.stack[:2])
    painted = replace(piece, stack=coats + piece.stack[2:])
    pattern = StackPattern(key="tide", name="Tide", stack=coats[:1])
    page.choose(PIGMENTS)
    section = page.section(PIGMENTS)
    assert isinstance(section, PigmentsSection)
    QTest.mouseClick(section.pigments.add_button, Qt.MouseButton.LeftButton)
    type_into(section.form.fields["name"], "Moonlight")
    desk.changes.make(
        Change(
            "Paint",
            lambda now: replace(with_thing(now, painted), patterns=(*now.patterns, pattern)),
        )
    )
    before = studio_of(desk)
    type_into(section.form.fields["name"], "Dusk")
    after = studio_of(desk)
    stacks = (after.piece(piece.key).stack[:2], after.patterns[-1].stack)
    names = [one.colourant for stack in stacks for coat in stack for one in coat.colours]
    assert names == ["Dusk"] * 3
    assert desk.notice.words == "3 coats have the new name, too."
    assert piece.name in section.used.text()
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_prices_and_rules_are_typed_checked_and_undone(
    desk: DeskWindow, page: StockPage
) -> None:
    before = studio_of(desk)
    page.choose(PRICES)
    section = page.section(PRICES)
    assert isinstance(section, PricesSection)
    assert "So what costs 40.00 EUR is offered for 60.00 EUR." in spoken(section)
    type_into(section.prices.fields["margin_pct"], "25")
    assert "is offered for 50.00 EUR." in spoken(section)
    rule = section.prices.fields["rule"]
    rule.show_value(PriceRule.OF_PRICE)
    rule.edited.emit()
    assert studio_of(desk).prices.rule is PriceRule.OF_PRICE
    type_into(section.prices.fields["margin_pct"], "96")
    assert "leave nothing of the price" in section.prices.fields["margin_pct"].wrong
    type_into(section.prices.fields["margin_pct"], "20")
    type_into(section.prices.fields["hourly_wage"], "22,5")
    assert studio_of(desk).prices.hourly_wage == 22.5
    type_into(section.stock.fields["lead_days"], "9")
    assert studio_of(desk).stock.lead_days == 9
    undo_all(desk)
    assert studio_of(desk) == before


def test_without_a_studio_the_page_says_what_to_do(window: DeskWindow) -> None:
    window.go_to(STOCK)
    page = window.pages.page(STOCK)
    assert isinstance(page, StockPage)
    assert "Open a studio first." in spoken(page)
    for key in (BOTTLES, PIGMENTS, PRICES):
        page.choose(key)


def _inks(shown: Filled) -> set[int]:
    """How dark the pixels of a bottle's inside are just above its bottom, without colour."""
    image = QImage(60, 106, QImage.Format.Format_Grayscale8)
    image.fill(QColor("white"))
    with QPainter(image) as painter:
        draw_bottle(painter, LIGHT, QRectF(2, 2, 56, 100), shown, QFont())
    return {image.pixelColor(x, 92).lightness() for x in range(16, 44)}


def test_what_is_reserved_is_told_from_what_is_free_without_colour() -> None:
    free = _inks(Filled(left=0.9, reserved=0.0, opened=True))
    reserved = _inks(Filled(left=0.9, reserved=0.9, opened=True))
    nothing = _inks(Filled(left=0.0, reserved=0.0, opened=True))
    assert len(free) == len(nothing) == 1
    assert free != nothing
    assert len(reserved) > 1
    assert max(reserved) - min(reserved) > 60


@pytest.mark.parametrize("key", [BOTTLES, PIGMENTS])
def test_in_a_narrow_window_the_list_is_over_the_form_and_nothing_scrolls_sideways(
    desk: DeskWindow, page: StockPage, key: str
) -> None:
    desk.resize(640, 480)
    desk.go_to(STOCK, key)
    QApplication.processEvents()
    section = page.section(key)
    for scroll in section.findChildren(QScrollArea):
        assert scroll.horizontalScrollBar().maximum() == 0
    desk.resize(1280, 800)
    QApplication.processEvents()
    (things,) = section.findChildren(NounList)
    assert things.height() > section.height() / 2
    buttons = (things.add_button, things.copy_button, things.remove_button)
    ends = [(one.x(), one.x() + one.width()) for one in buttons]
    assert all(end <= begin for (_, end), (begin, _) in pairwise(ends))
