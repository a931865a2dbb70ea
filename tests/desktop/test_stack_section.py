"""The stack in section under the hands of a maker, and the coat beside it."""

from __future__ import annotations

from dataclasses import replace
from random import Random
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from studio_planner.craft.pieces import CoatKind, Colour, Joint
from studio_planner.craft.pigments import Pigment
from studio_planner.craft.settings import FilmUnit, Units
from studio_planner.science.film_limits import Colourant
from studio_planner.services.editing.nouns import with_thing
from studio_planner.storage.studio_file import create_studio
from tests.desktop import scenes
from tests.desktop.piece_hands import (
    ALT,
    CONTROL,
    LEFT,
    add_coat,
    changed,
    drag,
    grip_of,
    middle_of,
    opened,
    picture_file,
    piece_of,
    studio_of,
    type_film,
    undo_until,
)

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.desktop.pages.pieces_page import PiecesPage
    from studio_planner.desktop.window import DeskWindow


@pytest.fixture
def page(desk: DeskWindow) -> PiecesPage:
    return opened(desk)


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
    assert page.stack.coat_form.film.editor.text() == "63"
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


def test_what_is_typed_wrong_is_there_when_its_coat_is_looked_at_again(
    desk: DeskWindow, page: PiecesPage
) -> None:
    page.choose("h1/flood")
    start = studio_of(desk)
    type_film(page, "4")
    page.choose("h1/clear")
    assert page.stack.coat_form.film.editor.text() == "0.6"
    assert not page.stack.coat_form.film.wrong
    page.choose("h1/flood")
    assert page.stack.coat_form.film.editor.text() == "4"
    assert "runs off" in page.stack.coat_form.film.wrong
    assert "runs off a piece" in page.stack.section.accessibleDescription()
    assert studio_of(desk) == start
    type_film(page, "1.5")
    assert piece_of(desk, "h1").coat("flood").film_mm == 1.5
    page.choose("h1/clear")
    page.choose("h1/flood")
    assert page.stack.coat_form.film.editor.text() == "1.5"


def test_colours_typed_wrong_are_there_again(page: PiecesPage) -> None:
    page.choose("h1/tide")
    colours = page.stack.coat_form.colours
    QTest.mouseClick(colours.add_button, LEFT)
    colours.rows[0].share.setFocus()
    colours.rows[0].share.selectAll()
    QTest.keyClicks(colours.rows[0].share, "70")
    QTest.keyClick(colours.rows[0].share, Qt.Key.Key_Return)
    page.choose("h1/clear")
    assert not colours.rows
    page.choose("h1/tide")
    assert [row.texts[1] for row in colours.rows] == ["70"]
    assert "add up to 70 %" in colours.wrong


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


def test_a_colour_is_made_of_a_pigment_of_the_studio_or_of_what_is_typed(
    desk: DeskWindow, page: PiecesPage
) -> None:
    pigment = Pigment(key="plum", name="Plum mica", kind=Colourant.MICA)
    changed(desk, replace(studio_of(desk), pigments=(pigment,)))
    page.choose("h1/tide")
    colours = page.stack.coat_form.colours
    QTest.mouseClick(colours.add_button, LEFT)
    choice = colours.rows[0].colourant
    assert [choice.itemText(index) for index in range(3)] == ["", "Plum mica", ""]
    assert choice.findText("metal powder") > 0
    choice.setCurrentIndex(1)
    choice.activated.emit(1)
    (colour,) = piece_of(desk, "h1").coat("tide").colours
    assert (colour.name, colour.colourant) == ("Plum mica", "Plum mica")
    for typed, kept in (("metal powder", "metal_powder"), ("brick dust", "brick dust")):
        line = choice.lineEdit()
        assert line is not None
        line.setFocus()
        line.selectAll()
        QTest.keyClicks(line, typed)
        QTest.keyClick(line, Qt.Key.Key_Return)
        (colour,) = piece_of(desk, "h1").coat("tide").colours
        assert colour.colourant == kept
        assert choice.currentText() == typed


def test_colours_say_their_grams_for_this_coat(desk: DeskWindow, page: PiecesPage) -> None:
    now = studio_of(desk)
    colours = (
        Colour(name="Blue", share_pct=75, colourant="paste", colourant_pct=2.0),
        Colour(name="Clear", share_pct=25),
    )
    piece = now.piece("h1")
    coats = tuple(
        replace(coat, colours=colours) if coat.key == "tide" else coat for coat in piece.stack
    )
    bare = replace(now.settings, reserve_pct=0, drip_loss_pct=0, cup_loss_g=0)
    changed(desk, replace(with_thing(now, replace(piece, stack=coats)), settings=bare))
    page.choose("h1/tide")
    # 800 cm² of 0.8 mm at 1.10 g/cm³: 70.4 g, three quarters of it blue, a fiftieth paste.
    assert set(page.stack.coat_form.in_cups.text().splitlines()) == {
        "Blue: 1.1 g of paste into 52.8 g of mix",
        "Clear: 17.6 g of mix as it is",
    }


def test_a_recipe_shows_the_last_photo_of_its_piece(
    desk: DeskWindow, page: PiecesPage, tmp_path: Path
) -> None:
    now = studio_of(desk)
    other = now.piece("h2")
    blue = Colour(name="Blue", colourant="paste", colourant_pct=2.5)
    coats = tuple(
        replace(coat, colours=(blue,)) if coat.key == "tide" else coat for coat in other.stack
    )
    changed(desk, with_thing(now, replace(other, stack=coats)))
    page.choose("h2")
    page.photos.show_piece(studio_of(desk), piece_of(desk, "h2"))
    page.photos.keep([picture_file(tmp_path)])
    page.choose("h1/tide")
    colours = page.stack.coat_form.colours
    QTest.mouseClick(colours.add_button, LEFT)
    colours.fill_menu(colours.rows[0])
    (action,) = colours.menu.actions()
    assert not action.icon().isNull()


def joint_choices(page: PiecesPage) -> list[str]:
    editor = page.stack.coat_form.joint.editor
    return [editor.itemText(index) for index in range(editor.count())]


def test_only_joints_that_can_be_are_offered_and_none_on_the_bare_piece(
    desk: DeskWindow, page: PiecesPage
) -> None:
    page.choose("h1/tide")
    first = piece_of(desk, "h1").stack[0]
    assert joint_choices(page) == ["in the window", "wet in wet"]
    page.choose(f"h1/{first.key}")
    assert joint_choices(page) == ["on bare"]
    type_film(page, "0.4")
    coat = piece_of(desk, "h1").coat(first.key)
    assert (coat.film_mm, coat.joint) == (0.4, first.joint)


def test_a_coat_moved_onto_another_kind_of_product_is_no_fault(
    desk: DeskWindow, page: PiecesPage
) -> None:
    page.choose("h1/flood")
    add_coat(page, CoatKind.PRIME)
    add_coat(page, CoatKind.FLOOD)
    flood = page.stack.section.chosen
    assert piece_of(desk, "h1").coat(flood).joint is Joint.ON_DRY
    at = piece_of(desk, "h1").position(flood)
    page.stack.section.move_asked.emit(flood, piece_of(desk, "h1").stack[at - 1].key)
    stack = piece_of(desk, "h1").stack
    assert stack[at - 1].key == flood
    assert stack[at - 1].joint is Joint.IN_WINDOW


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
