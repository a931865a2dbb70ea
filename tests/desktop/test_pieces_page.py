"""Journeys over the page of pieces: stacks are built, dragged, put on many, and undone."""

from __future__ import annotations

from dataclasses import replace
from random import Random
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDropEvent, QImage, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from studio_planner.craft.pieces import CoatKind, Colour, Joint
from studio_planner.craft.settings import FilmUnit, Units
from studio_planner.desktop.page_keys import PIECES, PRODUCTS
from studio_planner.desktop.pages.pieces_page import BLANK, PATTERNS, PHOTOS, STACK, PiecesPage
from studio_planner.desktop.piece_pages.picture_files import image_of
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.nouns import with_thing
from studio_planner.storage.studio_file import create_studio
from tests.desktop import scenes

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.piece_pages.stack_section import StackSection
    from studio_planner.desktop.window import DeskWindow

LEFT = Qt.MouseButton.LeftButton
ALT, CONTROL = Qt.KeyboardModifier.AltModifier, Qt.KeyboardModifier.ControlModifier


def opened(window: DeskWindow) -> PiecesPage:
    window.changes.plans_by_itself = False
    window.go_to(PIECES)
    found = window.pages.page(PIECES)
    assert isinstance(found, PiecesPage)
    QApplication.processEvents()
    return found


@pytest.fixture
def page(desk: DeskWindow) -> PiecesPage:
    return opened(desk)


def studio_of(desk: DeskWindow) -> Studio:
    assert desk.session is not None
    return desk.session.studio


def piece_of(desk: DeskWindow, key: str) -> Piece:
    return studio_of(desk).piece(key)


def kinds(piece: Piece) -> list[CoatKind]:
    return [coat.kind for coat in piece.stack]


def changed(desk: DeskWindow, studio: Studio) -> None:
    assert desk.changes.attempt(Change("Set the scene", lambda _now: studio))


def undo_until(desk: DeskWindow, start: Studio) -> int:
    steps = 0
    while studio_of(desk) != start:
        assert desk.verbs["undo"].isEnabled()
        desk.verbs["undo"].trigger()
        steps += 1
    return steps


def type_film(page: PiecesPage, text: str) -> None:
    editor = page.stack.coat_form.film.editor
    editor.setFocus()
    editor.selectAll()
    QTest.keyClicks(editor, text)
    QTest.keyClick(editor, Qt.Key.Key_Return)


def type_line(field: object, text: str) -> None:
    editor = field.editor  # type: ignore[attr-defined]
    editor.setFocus()
    editor.selectAll()
    QTest.keyClicks(editor, text)
    QTest.keyClick(editor, Qt.Key.Key_Return)


def add_coat(page: PiecesPage, kind: CoatKind) -> None:
    actions = page.stack.verbs.add_menu.actions()
    next(a for a in actions if a.text().endswith(f" {kind}")).trigger()


def grip_of(section: StackSection, key: str) -> QPoint:
    assert section.picture is not None
    stratum = section.picture.shape.stratum(key)
    assert stratum is not None
    return stratum.grip.pointAt(0.3).toPoint()


def middle_of(section: StackSection, key: str) -> QPoint:
    assert section.picture is not None
    stratum = section.picture.shape.stratum(key)
    assert stratum is not None
    return (stratum.grip.pointAt(0.4) + stratum.seat.pointAt(0.4)).toPoint() / 2


def drag(section: StackSection, start: QPoint, by: QPoint) -> None:
    QTest.mousePress(section, LEFT, pos=start)
    QTest.mouseMove(section, start + by / 2)
    QTest.mouseMove(section, start + by)
    QTest.mouseRelease(section, LEFT, pos=start + by)


def picture_file(folder: Path, name: str = "wet tide.png", width: int = 3000) -> Path:
    image = QImage(width, 900, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.darkCyan)
    path = folder / name
    assert image.save(str(path))
    return path


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
    QTest.mouseClick(page.patterns.save_button, LEFT)
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


# The section


def test_dragging_a_face_shows_film_and_grams_and_is_one_step(
    desk: DeskWindow, page: PiecesPage
) -> None:
    page.choose("h1/flood")
    start, section = studio_of(desk), page.stack.section
    QApplication.processEvents()
    at = grip_of(section, "flood")
    QTest.mousePress(section, LEFT, pos=at)
    for step in range(1, 6):
        QTest.mouseMove(section, at - QPoint(0, round(step * section.scale * 0.1)))
    assert section.film_words.startswith("2.1 mm, ")
    assert section.film_words.endswith(" g")
    assert studio_of(desk) == start
    QTest.mouseRelease(section, LEFT, pos=at)
    assert piece_of(desk, "h1").stack[1].film_mm == pytest.approx(2.1)
    assert undo_until(desk, start) == 1


def test_escape_lets_a_dragged_film_go(desk: DeskWindow, page: PiecesPage) -> None:
    page.choose("h1/flood")
    start, section = studio_of(desk), page.stack.section
    at = grip_of(section, "flood")
    QTest.mousePress(section, LEFT, pos=at)
    QTest.mouseMove(section, at - QPoint(0, 40))
    QTest.keyClick(section, Qt.Key.Key_Escape)
    QTest.mouseRelease(section, LEFT, pos=at - QPoint(0, 40))
    assert studio_of(desk) == start


def test_a_coat_is_dragged_to_another_place(desk: DeskWindow, page: PiecesPage) -> None:
    page.choose("h1")
    start, section = studio_of(desk), page.stack.section
    from_, to = middle_of(section, "clear"), middle_of(section, "flood")
    drag(section, from_, to - from_)
    assert [coat.key for coat in piece_of(desk, "h1").stack] == [
        "seal",
        "clear",
        "flood",
        "tide",
    ]
    assert undo_until(desk, start) == 1


def test_keys_choose_move_thicken_magnify_and_remove(
    desk: DeskWindow, page: PiecesPage
) -> None:
    page.choose("h1/clear")
    start, section = studio_of(desk), page.stack.section
    section.setFocus()
    QTest.keyClick(section, Qt.Key.Key_Down)
    assert section.chosen == "tide"
    QTest.keyClick(section, Qt.Key.Key_Right)
    assert piece_of(desk, "h1").coat("tide").film_mm == pytest.approx(0.9)
    QTest.keyClick(section, Qt.Key.Key_Up, ALT)
    assert [coat.key for coat in piece_of(desk, "h1").stack][-2:] == ["clear", "tide"]
    QTest.keyClick(section, Qt.Key.Key_Up, ALT)
    assert "no coat on that side" in desk.notice.words
    before = section.scale
    QTest.keyClick(section, Qt.Key.Key_Plus)
    assert section.scale > before
    QTest.mouseClick(page.stack.verbs.whole_button, LEFT)
    assert section.scale == pytest.approx(before)
    QTest.keyClick(section, Qt.Key.Key_Delete)
    assert "tide" not in [coat.key for coat in piece_of(desk, "h1").stack]
    assert undo_until(desk, start) == 3


@pytest.mark.parametrize("seed", range(4))
def test_any_keys_on_the_section_are_all_undone(
    desk: DeskWindow, page: PiecesPage, seed: int
) -> None:
    page.choose("h1")
    start, section = studio_of(desk), page.stack.section
    section.setFocus()
    chance = Random(seed)  # noqa: S311 - which keys
    keys = [Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_Left, Qt.Key.Key_Right]
    for _ in range(25):
        key, held = chance.choice(keys), chance.choice([ALT, Qt.KeyboardModifier.NoModifier])
        QTest.keyClick(section, key, held)
        if chance.random() < 0.2:
            add_coat(page, chance.choice([CoatKind.LOCK, CoatKind.FLOOD, CoatKind.GLITTER]))
        if chance.random() < 0.1:
            QTest.keyClick(section, Qt.Key.Key_Delete)
    assert undo_until(desk, start) > 0


def test_the_wheel_magnifies_with_control_only(page: PiecesPage) -> None:
    page.choose("h1")
    section = page.stack.section
    before = section.scale
    for held, grows in ((Qt.KeyboardModifier.NoModifier, False), (CONTROL, True)):
        at = QPointF(50, 50)
        turn = QWheelEvent(
            at,
            section.mapToGlobal(at),
            QPoint(),
            QPoint(0, 120),
            Qt.MouseButton.NoButton,
            held,
            Qt.ScrollPhase.NoScrollPhase,
            False,  # noqa: FBT003 - Qt's own
        )
        QApplication.sendEvent(section, turn)
        assert (section.scale > before) is grows


def test_a_click_on_a_coat_or_its_words_chooses_it(page: PiecesPage) -> None:
    page.choose("h1")
    section = page.stack.section
    assert section.picture is not None
    QTest.mouseClick(section, LEFT, pos=middle_of(section, "flood"))
    assert section.chosen == "flood"
    block = next(block for block in section.picture.blocks if block.key == "seal")
    QTest.mouseClick(section, LEFT, pos=block.rect.center().toPoint())
    assert section.chosen == "seal"
    assert page.stack.coat_form.name.text() == "Seal"


def test_films_are_drawn_to_one_scale(page: PiecesPage) -> None:
    page.choose("m")
    section = page.stack.section
    picture = section.picture
    assert picture is not None
    for stratum in picture.shape.strata:
        high = abs(stratum.grip.y1() - stratum.seat.y1())
        if stratum.coat.film_mm >= 0.2:
            assert high == pytest.approx(stratum.coat.film_mm * section.scale)


def test_the_section_is_told_in_words_with_joints_and_windows(page: PiecesPage) -> None:
    page.choose("m/lock")
    said = page.stack.section.accessibleDescription()
    assert said.startswith("Chosen: lock coat 0.4 mm, to come, Fri 11 Dec 08:05, ")
    for words in ("test first, opens", "scuffed", "on bare", "bare timber, 12 mm thick, rim 6"):
        assert words in said


def test_films_read_in_the_studios_unit(desk: DeskWindow, page: PiecesPage) -> None:
    changed(desk, replace(studio_of(desk), units=Units(film=FilmUnit.MIL)))
    page.choose("h1/flood")
    assert "flood 63 mil" in page.stack.section.accessibleDescription()
    assert page.stack.coat_form.film.editor.text().startswith("62.99")
    type_film(page, "160")
    assert "160 mil runs off a piece without a rim; 126 mil" in page.stack.coat_form.film.wrong


def test_no_words_of_the_section_meet(page: PiecesPage) -> None:
    for piece in scenes.PIECES:
        page.choose(piece.key)
        picture = page.stack.section.picture
        assert picture is not None
        rects = [block.rect for block in picture.blocks]
        assert all(not a.intersects(b) for a in rects for b in rects if a is not b)
        assert max(rect.bottom() for rect in rects) < picture.height


# Faults


def test_a_film_that_runs_off_stays_typed_and_is_said_at_its_coat(
    desk: DeskWindow, page: PiecesPage
) -> None:
    page.choose("h1/flood")
    start = studio_of(desk)
    type_film(page, "4")
    assert studio_of(desk) == start
    assert page.stack.coat_form.film.editor.text() == "4"
    assert "runs off" in page.stack.coat_form.film.wrong
    assert "runs off a piece" in page.stack.section.accessibleDescription()
    type_film(page, "2,8")
    assert piece_of(desk, "h1").coat("flood").film_mm == 2.8
    assert "runs off a piece" not in page.stack.section.accessibleDescription()
    near = "2.8 mm is near what an edge without a rim holds (3.2 mm)"
    assert near in page.stack.section.accessibleDescription()
    assert near in page.stack.coat_form.film.advice


def test_a_film_dragged_too_far_stays_in_the_form(desk: DeskWindow, page: PiecesPage) -> None:
    page.choose("h1/flood")
    start, section = studio_of(desk), page.stack.section
    drag(section, grip_of(section, "flood"), QPoint(0, -round(section.scale * 2.4)))
    assert studio_of(desk) == start
    assert page.stack.coat_form.film.editor.text() == "4"
    assert "runs off" in page.stack.coat_form.film.wrong


def test_top_and_underside_in_one_go_are_refused(desk: DeskWindow, page: PiecesPage) -> None:
    page.choose("h1/flood")
    start = studio_of(desk)
    faces = page.stack.coat_form.form.fields["faces"]
    faces.boxes["underside"].click()  # type: ignore[attr-defined]
    assert "cannot be coated in one go" in faces.wrong
    assert studio_of(desk) == start
    faces.boxes["underside"].click()  # type: ignore[attr-defined]
    assert not faces.wrong


def test_what_is_poured_is_not_changed(window: DeskWindow, tmp_path: Path) -> None:
    path = tmp_path / "poured.studio"
    create_studio(path, scenes.poured_studio()).close()
    assert window.open_path(path)
    page = opened(window)
    page.choose("k/clear")
    start = studio_of(window)
    assert "Top coat is poured already" in page.stack.coat_form.poured.text()
    type_film(page, "1")
    assert "poured already" in page.stack.coat_form.form.wrong
    QTest.mouseClick(page.stack.verbs.remove_button, LEFT)
    assert "poured already" in window.notice.words
    assert studio_of(window) == start


def test_leaf_is_refused_with_a_way_on_where_there_is_none(
    desk: DeskWindow, page: PiecesPage
) -> None:
    page.choose("h1")
    add_coat(page, CoatKind.LEAF)
    assert "add a leaf under Products first" in desk.notice.words


# Form, colours, recipes


def test_another_kind_takes_its_usual_figures(desk: DeskWindow, page: PiecesPage) -> None:
    page.choose("h1/tide")
    kind = page.stack.coat_form.form.fields["kind"]
    kind.show_value(CoatKind.GLITTER)
    kind.edited.emit()
    coat = piece_of(desk, "h1").coat("tide")
    assert (coat.kind, coat.film_mm, coat.sandable) == (CoatKind.GLITTER, 0.4, False)
    assert page.stack.coat_form.film.editor.text() == "0.4"


def test_grams_follow_what_is_typed(page: PiecesPage) -> None:
    page.choose("h1/flood")
    before = page.stack.coat_form.grams.text()
    editor = page.stack.coat_form.film.editor
    editor.setFocus()
    editor.selectAll()
    QTest.keyClicks(editor, "2")
    assert page.stack.coat_form.grams.text() != before
    QTest.keyClicks(editor, "x")
    assert "when the film is a number" in page.stack.coat_form.grams.text()
    editor.selectAll()
    QTest.keyClicks(editor, "1.6")


def test_colours_share_the_mix_and_a_recipe_is_used_again(
    desk: DeskWindow, page: PiecesPage
) -> None:
    now = studio_of(desk)
    blue = Colour(name="Blue", colourant="paste", colourant_pct=2.5)
    other = now.piece("h2")
    coats = tuple(
        replace(coat, colours=(blue,)) if coat.key == "tide" else coat for coat in other.stack
    )
    changed(desk, with_thing(now, replace(other, stack=coats)))
    page.choose("h1/tide")
    colours = page.stack.coat_form.colours
    QTest.mouseClick(colours.add_button, LEFT)
    QTest.mouseClick(colours.add_button, LEFT)
    stack = piece_of(desk, "h1")
    assert [colour.share_pct for colour in stack.coat("tide").colours] == [50.0, 50.0]
    colours.fill_menu(colours.rows[1])
    (action,) = colours.menu.actions()
    assert action.text() == "Blue: 2.5 % paste (Harbour board 2, colour pour)"
    action.trigger()
    assert piece_of(desk, "h1").coat("tide").colours[1] == replace(blue, share_pct=50.0)
    share = colours.rows[0].share
    share.setFocus()
    share.selectAll()
    QTest.keyClicks(share, "70")
    QTest.keyClick(share, Qt.Key.Key_Return)
    assert "add up to 120 %" in colours.wrong
    assert share.text() == "70"
    QTest.mouseClick(colours.rows[1].remove, LEFT)
    assert [c.share_pct for c in piece_of(desk, "h1").coat("tide").colours] == [100.0]


def test_areas_are_named_and_joints_chosen(desk: DeskWindow, page: PiecesPage) -> None:
    page.choose("h1/tide")
    faces = page.stack.coat_form.form.fields["faces"]
    faces.boxes["top"].setChecked(False)  # type: ignore[attr-defined]
    areas = faces.areas  # type: ignore[attr-defined]
    areas.setFocus()
    QTest.keyClicks(areas, "moon, river")
    QTest.keyClick(areas, Qt.Key.Key_Return)
    assert piece_of(desk, "h1").coat("tide").faces == {"moon", "river"}
    joint = page.stack.coat_form.form.fields["joint"]
    joint.show_value(Joint.WET_IN_WET)
    joint.edited.emit()
    assert piece_of(desk, "h1").coat("tide").joint is Joint.WET_IN_WET


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


# Patterns


def test_a_pattern_is_named_worked_on_and_removed(desk: DeskWindow, page: PiecesPage) -> None:
    start = studio_of(desk)
    page.choose("m")
    QTest.mouseClick(page.parts.names[PATTERNS], LEFT)
    QTest.mouseClick(page.patterns.save_button, LEFT)
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


def test_a_picture_is_dropped_on_the_photos(
    desk: DeskWindow, page: PiecesPage, tmp_path: Path
) -> None:
    page.choose("m")
    page.show_part(PHOTOS)
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(picture_file(tmp_path, "small.png", 40)))])
    event = QDropEvent(
        QPointF(20, 20), Qt.DropAction.CopyAction, data, LEFT, Qt.KeyboardModifier.NoModifier
    )
    page.photos.dropEvent(event)
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
