"""Journeys over Room and shelf: rooms, air that is drawn, spots, and the page as a whole."""

from __future__ import annotations

from dataclasses import replace
from datetime import time
from typing import TYPE_CHECKING

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QPoint, QPointF, QRect, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel, QLineEdit, QWidget

from studio_planner.craft.places import PatternPoint, PlaceKind
from studio_planner.craft.settings import LengthUnit, TemperatureUnit, Units
from studio_planner.services.editing.air_weeks import differs
from tests.desktop import scenes
from tests.desktop.room_hands import (
    LEFT,
    change,
    drag,
    point_at,
    room_of,
    section_of,
    studio_of,
    type_into,
)

if TYPE_CHECKING:
    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.pages.room_section import RoomSection
    from studio_planner.desktop.window import DeskWindow


@pytest.fixture
def section(desk: DeskWindow) -> RoomSection:
    return section_of(desk)


# Places


def test_a_warm_box_is_added_named_warmed_and_undone(
    desk: DeskWindow, section: RoomSection
) -> None:
    before, fields = studio_of(desk), section.form.form.fields
    QTest.mouseClick(section.places.add_button, LEFT)
    assert section.form.warmth.isVisibleTo(desk)
    type_into(fields["name"], "Drying cupboard")
    kind = fields["kind"].focusProxy()
    assert kind is not None
    kind.setFocus()
    QTest.keyClick(kind, Qt.Key.Key_Down)
    type_into(section.form.warmth, "31,5")
    added = studio_of(desk).places[-1]
    assert (added.name, added.kind) == ("Drying cupboard", PlaceKind.WARM_BOX)
    assert [point.celsius for point in added.pattern] == [31.5]
    line = section.places.list.item(section.places.list.count() - 1).text()
    assert "31.5 °C" in line
    type_into(section.form.warmth, "95")
    assert "80" in section.form.warmth.wrong
    type_into(section.form.warmth, "31,5")
    for _ in range(4):
        desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_a_room_whose_hours_differ_has_no_one_warmth(
    desk: DeskWindow, section: RoomSection
) -> None:
    assert len({point.celsius for point in room_of(desk).pattern}) > 1
    assert not section.form.warmth.isVisibleTo(desk)
    type_into(section.form.form.fields["name"], "Loft")
    assert room_of(desk).name == "Loft"


def test_further_figures_are_folded_away_until_asked_for_or_wrong(
    desk: DeskWindow, section: RoomSection
) -> None:
    form = section.form
    assert not form.loss.isVisibleTo(desk)
    QTest.mouseClick(form.figures.button, LEFT)
    assert form.loss.isVisibleTo(desk)
    QTest.mouseClick(form.figures.button, LEFT)
    form.loss.editor.setText("-3")
    form.form.enter("heat_loss_w_per_k")
    assert form.loss.wrong
    assert form.loss.isVisibleTo(desk)


def test_the_list_and_add_stay_in_view_while_the_place_is_scrolled(
    desk: DeskWindow, section: RoomSection
) -> None:
    add = section.places.add_button
    where = add.mapTo(desk, QPoint())
    section.form.figures.unfold()
    section.form.loss.take_up()
    assert section.form.loss.visibleRegion().boundingRect().height() > 20
    assert add.mapTo(desk, QPoint()) == where
    desk.resize(700, 600)
    desk.resize(1280, 800)
    assert add.mapTo(desk, QPoint()) == where


def test_spots_come_before_the_air_that_is_drawn(
    desk: DeskWindow, section: RoomSection
) -> None:
    tops = [
        panel.mapTo(section, QPoint()).y()
        for panel in (section.form, section.shelf, section.air, section.readings)
    ]
    assert tops == sorted(tops)
    assert section.shelf.spots.add_button.visibleRegion().boundingRect().height() > 20
    assert desk.isVisible()


def test_a_room_with_pours_says_why_it_stays(desk: DeskWindow, section: RoomSection) -> None:
    pour = scenes.poured_studio().poured
    change(desk, lambda now: replace(now, poured=pour))
    assert "Market board 7" in section.kept.text()
    assert not section.places.remove_button.isEnabled()
    section.places.list.setFocus()
    before = studio_of(desk)
    QTest.keyClick(section.places.list, Qt.Key.Key_Delete)
    assert studio_of(desk) == before
    assert "Market board 7" in desk.notice.words


def test_the_order_of_rooms_says_where_pieces_rest(
    desk: DeskWindow, section: RoomSection
) -> None:
    assert "rest in Workshop" in section.rests.text()
    QTest.mouseClick(section.places.copy_button, LEFT)
    copy = studio_of(desk).places[-1]
    section.places.list.setFocus()
    for _ in range(2):
        QTest.keyClick(section.places.list, Qt.Key.Key_Up, Qt.KeyboardModifier.AltModifier)
    assert studio_of(desk).places[0] == copy
    assert f"rest in {copy.name}" in section.rests.text()


def test_heat_loss_is_estimated_from_a_cold_day(desk: DeskWindow, section: RoomSection) -> None:
    aid = section.form.aid
    section.form.figures.unfold()
    QTest.mouseClick(aid.use, LEFT)
    assert "Write a number" in aid.kwh.wrong
    type_into(aid.kwh, "0")
    type_into(aid.degrees, "20")
    QTest.mouseClick(aid.use, LEFT)
    assert "more than nothing" in aid.kwh.wrong
    type_into(aid.kwh, "12")
    QTest.mouseClick(aid.use, LEFT)
    assert room_of(desk).heat_loss_w_per_k == 25.0
    assert "25 W/°C" in aid.said.text()


# The expected air


def test_a_drag_is_one_change_and_shows_its_figures(
    desk: DeskWindow, section: RoomSection
) -> None:
    before, curve = studio_of(desk), section.air.curve
    start = point_at(curve, 2)
    drag(curve, start, 40, 30, drop=False)
    held = curve.pattern[2]
    assert held.at > time(9)
    assert held.celsius > 17.5
    assert f"{held.celsius:.1f} °C" in curve.accessibleDescription()
    curve.grab()  # draws the figures at the pointer
    assert studio_of(desk) == before
    QTest.mouseRelease(curve, LEFT, pos=start + QPoint(40, -30))
    assert room_of(desk).pattern[2] == held
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


@settings(
    max_examples=25, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
@given(st.integers(0, 4), st.integers(-900, 900), st.integers(-300, 300))
def test_any_drag_is_taken_back_whole(
    desk: DeskWindow, section: RoomSection, index: int, along: int, up: int
) -> None:
    before, curve = studio_of(desk), section.air.curve
    drag(curve, point_at(curve, index), along, up)
    if studio_of(desk) != before:
        desk.verbs["undo"].trigger()
    assert studio_of(desk) == before
    assert curve.pattern == room_of(desk).pattern


def test_escape_gives_a_drag_up(desk: DeskWindow, section: RoomSection) -> None:
    before, curve = studio_of(desk), section.air.curve
    curve.setFocus()
    drag(curve, point_at(curve, 1), 0, 40, drop=False)
    QTest.keyClick(curve, Qt.Key.Key_Escape)
    QTest.mouseRelease(curve, LEFT, pos=point_at(curve, 1))
    assert studio_of(desk) == before
    assert curve.pattern == room_of(desk).pattern


def test_humidity_is_dragged_by_itself(desk: DeskWindow, section: RoomSection) -> None:
    curve = section.air.curve
    spot = next(s for s in curve.axes.spots(curve.pattern) if s.damp and s.index == 2)
    drag(curve, QPointF(spot.x, spot.y).toPoint(), 0, 15)
    was, now = scenes.night_room().pattern[2], room_of(desk).pattern[2]
    assert now.celsius == was.celsius
    assert now.humidity_pct is not None
    assert now.humidity_pct > 70


def test_a_double_click_adds_a_point_and_delete_takes_it(
    desk: DeskWindow, section: RoomSection
) -> None:
    before, curve = studio_of(desk), section.air.curve
    middle = QPoint(round(curve.axes.x(12 * 60)), round(curve.axes.y(19.2)))
    QTest.mouseDClick(curve, LEFT, pos=middle)
    assert len(room_of(desk).pattern) == 6
    assert room_of(desk).pattern[curve.index].at == time(12)
    QTest.keyClick(curve, Qt.Key.Key_Delete)
    assert room_of(desk).pattern == before.places[0].pattern


def test_keys_choose_warm_and_move_a_point(desk: DeskWindow, section: RoomSection) -> None:
    curve = section.air.curve
    curve.setFocus()
    QTest.keyClick(curve, Qt.Key.Key_Right)
    QTest.keyClick(curve, Qt.Key.Key_Up)
    assert room_of(desk).pattern[1].celsius == pytest.approx(16.9)
    QTest.keyClick(curve, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
    assert room_of(desk).pattern[1].at == time(6, 5)
    assert section.air.table.currentRow() == 1


def test_nights_are_set_back_in_one_verb(desk: DeskWindow, section: RoomSection) -> None:
    before = studio_of(desk)
    QTest.mouseClick(section.air.verbs.set_back, LEFT)
    pattern = room_of(desk).pattern
    assert [p.celsius for p in pattern if p.at == time(22)][-1] == 16.0
    assert next(p.celsius for p in pattern if p.at == time(7)) == 16.0
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_days_can_differ_and_be_made_alike(desk: DeskWindow, section: RoomSection) -> None:
    verbs, curve = section.air.verbs, section.air.curve
    QTest.mouseClick(verbs.part, LEFT)
    assert differs(room_of(desk).pattern)
    assert curve.axes.days == 7
    verbs.source.show_value(5)
    drag(curve, point_at(curve, 26), 0, 30)
    QTest.mouseClick(verbs.to_free, LEFT)
    by_day = [[p.celsius for p in room_of(desk).pattern if p.day == day] for day in range(7)]
    assert by_day[5] == by_day[6] != by_day[4]
    QTest.mouseClick(verbs.to_all, LEFT)
    assert not differs(room_of(desk).pattern)
    assert [p.celsius for p in room_of(desk).pattern] == by_day[5]


def test_humidity_is_left_out_and_expected_again(
    desk: DeskWindow, section: RoomSection
) -> None:
    verbs = section.air.verbs
    QTest.mouseClick(verbs.dry, LEFT)
    assert {p.humidity_pct for p in room_of(desk).pattern} == {None}
    assert not section.air.curve.axes.has_damp
    assert verbs.humidity.editor.text() == ""
    assert verbs.humidity.editor.placeholderText() == "unknown"
    type_into(verbs.humidity, "45")
    QTest.mouseClick(verbs.damp, LEFT)
    assert {p.humidity_pct for p in room_of(desk).pattern} == {45.0}


def test_a_cell_is_typed_into_and_nonsense_stays_typed(
    desk: DeskWindow, section: RoomSection
) -> None:
    table = section.air.table

    def put(column: int, text: str) -> None:
        table.setFocus()
        table.setCurrentCell(0, column)
        QTest.keyClick(table, Qt.Key.Key_F2)
        editor = table.findChildren(QLineEdit)[-1]
        QTest.keyClick(editor, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
        QTest.keyClicks(editor, text)
        QTest.keyClick(editor, Qt.Key.Key_Return)
        QApplication.processEvents()  # a table takes what was typed a moment later

    put(2, "18,7")
    assert room_of(desk).pattern[0].celsius == 18.7
    put(1, "half past")
    assert "is no time" in section.air.wrong.text()
    item = table.item(0, 1)
    assert item is not None
    assert item.text() == "half past"
    put(1, "0:45")
    assert room_of(desk).pattern[0].at == time(0, 45)
    assert not section.air.wrong.text()
    put(3, "180")
    assert "outside 1 to 100" in section.air.wrong.text()


def test_the_last_point_cannot_go(desk: DeskWindow, section: RoomSection) -> None:
    section.choose("box")
    QTest.mouseClick(section.air.remove, LEFT)
    assert "needs one expected temperature" in section.air.wrong.text()
    QTest.mouseClick(section.air.step, LEFT)
    assert len(studio_of(desk).places[1].pattern) == 3


def test_the_windows_of_tonight_follow_the_line(
    qtbot: QtBot, desk: DeskWindow, section: RoomSection
) -> None:
    lines = section.air.effects.lines
    qtbot.waitUntil(lambda: "Slow flood (invented): recoat" in lines.text())
    before = lines.text()
    drag(section.air.curve, point_at(section.air.curve, 3), 0, 60, drop=False)
    qtbot.waitUntil(lambda: lines.text() != before)
    QTest.mouseRelease(section.air.curve, LEFT, pos=QPoint(0, 0))
    assert room_of(desk).pattern[3].celsius > 20.8


# Spots


def test_a_spot_is_added_sized_moved_and_removed(
    desk: DeskWindow, section: RoomSection
) -> None:
    before, shelf = studio_of(desk), section.shelf
    QTest.mouseClick(shelf.spots.add_button, LEFT)
    type_into(shelf.form.fields["name"], "Trolley")
    type_into(shelf.form.fields["length_mm"], "450")
    added = room_of(desk).spots[-1]
    assert (added.name, added.length_mm) == ("Trolley", 450)
    shelf.spots.list.setFocus()
    QTest.keyClick(shelf.spots.list, Qt.Key.Key_Up, Qt.KeyboardModifier.AltModifier)
    assert room_of(desk).spots[-2] == added
    QTest.keyClick(shelf.spots.list, Qt.Key.Key_Delete)
    assert added not in room_of(desk).spots
    for _ in range(5):
        desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_a_spot_is_chosen_in_the_picture(section: RoomSection) -> None:
    picture = section.shelf.picture
    row, rect = picture.places()[3]
    QTest.mouseClick(picture, LEFT, pos=rect.center().toPoint())
    assert section.shelf.spots.current_key == row.spot.key
    assert row.spot.name in section.shelf.free.text()


def test_what_fits_nowhere_is_said_with_its_size(
    desk: DeskWindow, section: RoomSection
) -> None:
    door = scenes.crowded().pieces[-1]
    change(desk, lambda now: replace(now, pieces=(*now.pieces, door)))
    assert "Barn door fits on no spot: it needs 2040 mm by 940 mm" in section.shelf.large.text()


# The whole page


def test_everything_follows_the_studios_units(desk: DeskWindow, section: RoomSection) -> None:
    units = Units(temperature=TemperatureUnit.FAHRENHEIT, length=LengthUnit.INCH)
    change(desk, lambda now: replace(now, units=units))
    assert "°F" in section.air.curve.accessibleDescription()
    header = section.air.table.horizontalHeaderItem(2)
    assert header is not None
    assert "°F" in header.text()
    type_into(section.shelf.form.fields["width_mm"], "10")
    assert room_of(desk).spots[0].width_mm == pytest.approx(254)
    curve = section.air.curve
    curve.setFocus()
    QTest.keyClick(curve, Qt.Key.Key_Up)
    assert room_of(desk).pattern[0].celsius == pytest.approx(18.2 + 0.5 / 1.8)


def test_an_empty_studio_says_what_to_do(desk: DeskWindow, section: RoomSection) -> None:
    bare = replace(studio_of(desk), places=(), plan=None)
    change(desk, lambda _now: bare)
    assert section.places._empty.isVisibleTo(section)
    QTest.mouseClick(section.places.add_button, LEFT)
    assert studio_of(desk).places[0].pattern == (PatternPoint(at=time(0), celsius=20.0),)
    assert "Nothing was read yet" in section.readings.said.text()
    assert section.shelf.spots._empty.isVisibleTo(section)


def test_everything_that_takes_the_focus_has_a_name(section: RoomSection) -> None:
    nameless = [
        widget
        for widget in section.findChildren(QWidget)
        if widget.focusPolicy() is not Qt.FocusPolicy.NoFocus
        and widget.isVisibleTo(section)
        and not (widget.accessibleName() or getattr(widget, "text", str)())
    ]
    assert not nameless


@pytest.mark.parametrize("size", [(1280, 800), (640, 400)])
def test_no_label_or_button_is_clipped(
    desk: DeskWindow, section: RoomSection, size: tuple[int, int]
) -> None:
    desk.resize(*size)
    QApplication.processEvents()
    for label in section.findChildren(QLabel):
        if label.isVisibleTo(section) and label.text():
            flags = int(Qt.TextFlag.TextWordWrap) if label.wordWrap() else 0
            room = QRect(0, 0, label.width(), 10_000)
            need = label.fontMetrics().boundingRect(room, flags, label.text())
            assert need.width() <= label.width() + 1, label.text()
            assert need.height() <= label.height() + 1, label.text()
    for button in section.findChildren(QAbstractButton):
        if button.isVisibleTo(section) and button.text():
            assert button.fontMetrics().horizontalAdvance(button.text()) < button.width()
