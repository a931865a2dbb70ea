"""Journeys over the page of pieces: stacks are built, dragged, put on many, and undone."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from studio_planner.craft.pieces import CoatKind
from studio_planner.desktop.page_keys import PRODUCTS
from studio_planner.desktop.piece_pages.part_names import BLANK, PATTERNS, PHOTOS, STACK
from studio_planner.desktop.piece_pages.picture_files import image_of
from studio_planner.storage.studio_file import create_studio
from tests.desktop import scenes
from tests.desktop.piece_hands import (
    ALT,
    CONTROL,
    LEFT,
    add_coat,
    drag,
    grip_of,
    kinds,
    opened,
    picture_file,
    piece_of,
    studio_of,
    type_line,
    undo_until,
)

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.desktop.pages.pieces_page import PiecesPage
    from studio_planner.desktop.window import DeskWindow


@pytest.fixture
def page(desk: DeskWindow) -> PiecesPage:
    return opened(desk)


# The journey from nothing


def test_a_stack_of_five_is_built_dragged_put_on_many_and_all_of_it_undone(
    desk: DeskWindow, page: PiecesPage
) -> None:
    start = studio_of(desk)
    QTest.mouseClick(page.pieces.add_button, LEFT)
    assert page.key == BLANK
    type_line(page.blank.form.fields["name"], "Tern panel")
    key = studio_of(desk).pieces[-1].key
    QTest.mouseClick(page.parts.names[STACK], LEFT)
    for kind in (CoatKind.COLOUR, CoatKind.GLITTER, CoatKind.LOCK, CoatKind.TOP_COAT):
        add_coat(page, kind)
    five = [CoatKind.SEAL, CoatKind.COLOUR, CoatKind.GLITTER, CoatKind.LOCK, CoatKind.TOP_COAT]
    assert kinds(piece_of(desk, key)) == five
    section = page.stack.section
    QApplication.processEvents()
    pixels = round(section.scale * 0.5)
    drag(section, grip_of(section, "top-coat"), QPoint(0, -pixels))
    assert piece_of(desk, key).stack[-1].film_mm == pytest.approx(2.0, abs=0.11)
    section.setFocus()
    QTest.keyClick(section, Qt.Key.Key_Down, ALT)
    assert kinds(piece_of(desk, key))[-2:] == [CoatKind.TOP_COAT, CoatKind.LOCK]
    QTest.mouseClick(page.parts.names[PATTERNS], LEFT)
    QTest.mouseClick(page.patterns.list.add_button, LEFT)
    rows = page.pieces.list
    page.choose("h1")
    for row in range(rows.count()):
        if rows.item(row).data(Qt.ItemDataRole.UserRole) in {"h2", "c", "f"}:
            QTest.mouseClick(
                rows.viewport(), LEFT, CONTROL, rows.visualItemRect(rows.item(row)).center()
            )
    assert page.chosen_keys == ("h1", "h2", "c", "f")
    assert page.patterns.put_button.text() == "Put on 4 pieces"
    QTest.mouseClick(page.patterns.put_button, LEFT)
    for other in ("h1", "h2", "c", "f"):
        assert kinds(piece_of(desk, other)) == kinds(piece_of(desk, key))
    assert undo_until(desk, start) == 10


# The list, the blank


def test_pieces_are_looked_for_copied_and_removed(desk: DeskWindow, page: PiecesPage) -> None:
    start = studio_of(desk)
    QTest.keyClicks(page.search, "harbour")
    assert page.pieces.list.count() == 2
    page.pieces.list.selectAll()
    QTest.mouseClick(page.pieces.copy_button, LEFT)
    assert len(studio_of(desk).pieces) == len(start.pieces) + 2
    page.search.clear()
    page.choose("m")
    page.pieces.list.setFocus()
    QTest.keyClick(page.pieces.list, Qt.Key.Key_Delete)
    assert all(piece.key != "m" for piece in studio_of(desk).pieces)
    assert undo_until(desk, start) == 2


def test_an_order_that_goes_with_its_piece_is_said_and_comes_back_with_it(
    desk: DeskWindow, page: PiecesPage
) -> None:
    start = studio_of(desk)
    piece = piece_of(desk, "m")
    order = start.order_of("m")
    assert order is not None
    page.choose("m")
    QTest.mouseClick(page.pieces.remove_button, LEFT)
    assert order not in studio_of(desk).orders
    assert f"Order {order.name} has no piece left and goes too." in desk.notice.words
    said = f"Undo: Remove {piece.name} and order {order.name}"
    assert desk.verbs["undo"].text().replace("&", "") == said
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == start


def test_several_orders_that_go_with_their_pieces_are_all_named(
    desk: DeskWindow, page: PiecesPage
) -> None:
    start = studio_of(desk)
    page.pieces.list.selectAll()
    QTest.mouseClick(page.pieces.remove_button, LEFT)
    names = ", ".join(order.name for order in start.orders)
    assert f"go too: {names}." in desk.notice.words
    said = desk.verbs["undo"].text()
    assert f"and {len(start.orders)} orders" in said
    page.pieces.remove_asked.emit()
    assert desk.verbs["undo"].text() == said


def test_an_order_that_keeps_a_piece_is_not_spoken_of(
    desk: DeskWindow, page: PiecesPage
) -> None:
    page.choose("h1")
    QTest.mouseClick(page.pieces.remove_button, LEFT)
    assert all(piece.key != "h1" for piece in studio_of(desk).pieces)
    assert not desk.notice.words


def test_a_blank_is_entered_with_its_order_and_outline(
    desk: DeskWindow, page: PiecesPage
) -> None:
    start = studio_of(desk)
    page.choose("f")
    QTest.mouseClick(page.parts.names[BLANK], LEFT)
    fields = page.blank.form.fields
    assert fields["diameter_mm"].isVisibleTo(page)
    assert not fields["length_mm"].isVisibleTo(page)
    type_line(fields["diameter_mm"], "300")
    type_line(fields["rim_mm"], "4")
    fields["order"].show_value("31")
    fields["order"].edited.emit()
    piece = piece_of(desk, "f")
    assert (piece.shape.length_mm, piece.rim_mm) == (300, 4)
    assert studio_of(desk).order_of("f") is not None
    type_line(fields["body_mm"], "900")
    assert "outside 0.1 to 500" in fields["body_mm"].wrong
    assert undo_until(desk, start) == 3


def test_without_a_product_the_page_points_to_products(
    window: DeskWindow, tmp_path: Path
) -> None:
    path = tmp_path / "bare.studio"
    bare = replace(scenes.studio(pieces=()), products=())
    create_studio(path, bare).close()
    assert window.open_path(path)
    page = opened(window)
    assert not page.pieces.add_button.isEnabled()
    assert "add a product first" in page.name.text()
    QTest.mouseClick(page.products_button, LEFT)
    assert window.pages.current_key == PRODUCTS


# Grams


def test_the_grams_of_a_coat_say_how_they_come_about(
    desk: DeskWindow, page: PiecesPage
) -> None:
    page.choose("m/lock")
    fold = page.stack.coat_form.fold
    QTest.mouseClick(fold.fold.button, LEFT)
    *parts, whole, cups = fold.rows
    assert parts[0] == ("35.2 g", "on its faces: area times film times density")
    assert whole[0] in page.stack.coat_form.grams.text()
    shown = [float(grams.removesuffix(" g")) for grams, _ in parts]
    assert sum(shown) == pytest.approx(float(whole[0].removesuffix(" g")))
    assert cups[0] == f"{studio_of(desk).settings.cup_loss_g:.1f} g"


# Patterns


def test_a_pattern_is_drawn_on_the_blank_of_the_chosen_piece(
    desk: DeskWindow, page: PiecesPage
) -> None:
    page.choose("m")
    page.show_part(PATTERNS)
    QTest.mouseClick(page.patterns.list.add_button, LEFT)
    picture = page.patterns.stack.section.picture
    assert picture is not None
    assert picture.piece.rim_mm == piece_of(desk, "m").rim_mm > 0.0
    assert page.patterns.stack.coat_form.grams.text().endswith("were it on Moon tray")


@pytest.mark.parametrize("width", [1024, 1280, 1600])
def test_the_form_of_a_pattern_lies_in_the_window(
    desk: DeskWindow, page: PiecesPage, width: int
) -> None:
    page.show_part(PATTERNS)
    QTest.mouseClick(page.patterns.list.add_button, LEFT)
    desk.resize(width, 800)
    QApplication.processEvents()
    form = page.patterns.stack.form_scroll
    right = form.mapTo(desk, QPoint(form.width(), 0)).x()
    assert right <= desk.width()


def test_a_pattern_is_named_worked_on_and_removed(desk: DeskWindow, page: PiecesPage) -> None:
    start = studio_of(desk)
    page.choose("m")
    QTest.mouseClick(page.parts.names[PATTERNS], LEFT)
    QTest.mouseClick(page.patterns.list.add_button, LEFT)
    type_line(page.patterns.form.fields["name"], "Moonlight")
    assert studio_of(desk).patterns[0].name == "Moonlight"
    page.patterns.stack.choose_coat("lock")
    page.patterns.stack.copy_coat()
    assert len(studio_of(desk).patterns[0].stack) == 4
    assert len(piece_of(desk, "m").stack) == 3
    QTest.mouseClick(page.patterns.put_button, LEFT)
    assert len(piece_of(desk, "m").stack) == 4
    QTest.mouseClick(page.patterns.list.remove_button, LEFT)
    assert not studio_of(desk).patterns
    assert undo_until(desk, start) == 5


# Photos


def test_photos_are_kept_small_worded_opened_and_removed(
    desk: DeskWindow, page: PiecesPage, tmp_path: Path
) -> None:
    start = studio_of(desk)
    page.choose("m")
    QTest.mouseClick(page.parts.names[PHOTOS], LEFT)
    broken = tmp_path / "broken.jpg"
    broken.write_bytes(b"no picture at all")
    page.photos.ask = lambda _parent: [picture_file(tmp_path), broken]
    QTest.mouseClick(page.photos.choose_button, LEFT)
    assert "broken.jpg is no picture" in page.photos.wrong.text()
    (photo,) = piece_of(desk, "m").photos
    assert photo.words == "wet tide"
    assert desk.session is not None
    kept = image_of(desk.session.photo(photo.key))
    assert (kept.width(), kept.height()) == (1600, 480)
    card = page.photos.cards[0]
    type_line(type("Line", (), {"editor": card.words})(), "wet, first night")
    assert piece_of(desk, "m").photos[0].words == "wet, first night"
    QTest.mouseClick(page.photos.cards[0].open_button, LEFT)
    large = page.photos.large
    assert large is not None
    assert large.isVisible()
    large.close()
    QTest.mouseClick(page.photos.cards[0].remove_button, LEFT)
    assert studio_of(desk) == start
    for _ in range(3):
        desk.verbs["undo"].trigger()
    assert studio_of(desk) == start
    assert not desk.verbs["undo"].isEnabled()


def drop(page: PiecesPage, *paths: Path) -> bool:
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
    copy, free = Qt.DropAction.CopyAction, Qt.KeyboardModifier.NoModifier
    enter = QDragEnterEvent(QPoint(20, 20), copy, data, LEFT, free)
    enter.ignore()
    QApplication.sendEvent(page, enter)
    if enter.isAccepted():
        QApplication.sendEvent(page, QDropEvent(QPointF(20, 20), copy, data, LEFT, free))
    return enter.isAccepted()


def test_a_picture_may_be_dropped_anywhere_on_the_page(
    desk: DeskWindow, page: PiecesPage, tmp_path: Path
) -> None:
    page.choose("m")
    assert page.key == STACK
    other = tmp_path / "orders.odt"
    other.write_text("no picture")
    assert not drop(page, other)
    assert drop(page, picture_file(tmp_path, "small.png", 40))
    assert page.key == PHOTOS
    assert [photo.words for photo in piece_of(desk, "m").photos] == ["small"]


# Readable


@pytest.mark.parametrize("part", [STACK, BLANK, PHOTOS, PATTERNS])
@pytest.mark.parametrize("look", ["light", "dark"])
def test_everything_has_a_name_and_no_button_is_clipped(
    desk: DeskWindow, page: PiecesPage, part: str, look: str, tmp_path: Path
) -> None:
    desk.verbs[look].trigger()
    page.choose("m/glitter")
    page.show_part(PHOTOS)
    page.photos.keep([picture_file(tmp_path)])
    page.show_part(PATTERNS)
    page.patterns.add()
    page.show_part(part)
    QApplication.processEvents()
    for widget in page.findChildren(QWidget):
        if not widget.isVisibleTo(page):
            continue
        text = getattr(widget, "text", str)()
        if widget.focusPolicy() is not Qt.FocusPolicy.NoFocus:
            assert widget.accessibleName() or text
        if text and widget.metaObject().className() == "QPushButton":
            assert widget.fontMetrics().horizontalAdvance(text) < widget.width(), text
