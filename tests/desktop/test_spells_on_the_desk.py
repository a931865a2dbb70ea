"""Hours of a date besides the week are seen on the room's page, and taken out there."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from studio_planner.craft.spells import Spell
from studio_planner.desktop.measures import LANE_HEAD_WIDTH
from studio_planner.desktop.page_keys import PLAN
from studio_planner.services.editing.spells import coming_night, with_spells
from tests.desktop import scenes
from tests.desktop.room_hands import LEFT, change, section_of, studio_of, type_into

if TYPE_CHECKING:
    from pytestqt.qtbot import QtBot

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.window import DeskWindow

pytestmark = pytest.mark.gui
TONIGHT = Spell(start=scenes.at(0, "21:00"), end=scenes.at(1, "07:00"), celsius=22.0)
LAST_NIGHT = Spell(start=scenes.at(-1, "21:00"), end=scenes.at(0, "07:00"), celsius=22.0)


def heated(now: Studio) -> Studio:
    room = with_spells(now.places[0], (LAST_NIGHT, TONIGHT))
    return replace(now, places=(room, *now.places[1:]))


def test_a_warm_night_is_listed_until_it_is_over_and_taken_out_by_its_verb(
    desk: DeskWindow,
) -> None:
    section = section_of(desk)
    spells = section.air.spells
    assert not spells.verbs
    change(desk, heated)
    (verb,) = spells.verbs
    assert "22 °C" in verb.accessibleName()
    before = studio_of(desk)
    QTest.mouseClick(verb, LEFT)
    assert studio_of(desk).places[0].spells == (LAST_NIGHT,)
    assert not spells.verbs
    assert "as the week says" in desk.verbs["undo"].text()
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_another_temperature_is_typed_over_the_air_of_the_plan(desk: DeskWindow) -> None:
    desk.changes.plans_by_itself = False
    before = studio_of(desk)
    desk.verbs["temperature"].trigger()
    tonight = desk.parts.tonight
    form = tonight.spells.form
    assert form.isVisible()
    assert form.celsius.editor.hasFocus()
    assert (form.start.value(), form.end.value()) == (
        scenes.at(0, "19:36"),
        scenes.at(1, "07:00"),
    )
    assert form.otherwise.text().startswith("As things stand, ")
    QTest.keyClicks(form.celsius.editor, "22,5")
    QTest.mouseClick(form.done, LEFT)
    (spell,) = studio_of(desk).places[0].spells
    assert (spell.start, spell.celsius) == (scenes.at(0, "19:36"), 22.5)
    assert not tonight.isVisible()
    assert "22.5 °C" in desk.work_line.said
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_the_menu_over_the_air_asks_from_the_hour_that_is_pointed_at(desk: DeskWindow) -> None:
    room = desk.parts.room
    room.fill_menu(LANE_HEAD_WIDTH + desk.canvas.scale.x(scenes.at(2, "03:10").timestamp()))
    (action,) = room.menu.actions()
    assert "Thu 10 Dec 03:00" in action.text()
    action.trigger()
    form = desk.parts.tonight.spells.form
    assert (form.start.value(), form.end.value()) == (
        scenes.at(2, "03:00"),
        scenes.at(2, "07:00"),
    )
    QTest.keyClick(form.celsius.editor, Qt.Key.Key_Escape)
    assert not desk.parts.tonight.isVisible()


def test_a_small_window_asks_for_another_temperature_on_the_page_of_the_studio(
    desk: DeskWindow, qtbot: QtBot
) -> None:
    desk.resize(640, 400)
    qtbot.waitUntil(lambda: not desk.parts.room.isVisible())
    form = section_of(desk).air.spells.form
    desk.go_to(PLAN)
    desk.verbs["temperature"].trigger()
    qtbot.waitUntil(form.isVisible)
    qtbot.waitUntil(form.celsius.editor.hasFocus)


def test_what_is_typed_for_the_air_is_said_to_be_wrong_beside_it(desk: DeskWindow) -> None:
    before = studio_of(desk)
    QTest.mouseClick(desk.parts.room.another, LEFT)
    form = desk.parts.tonight.spells.form
    QTest.mouseClick(form.done, LEFT)
    assert form.celsius.wrong == "Write a number here."
    QTest.keyClicks(form.celsius.editor, "22")
    form.end.show_value(scenes.at(0, "19:00"))
    QTest.mouseClick(form.done, LEFT)
    assert form.end.wrong == "it ends before it begins."
    form.start.show_value(scenes.at(0, "12:00"))
    QTest.mouseClick(form.done, LEFT)
    assert "gone by" in form.end.wrong
    assert studio_of(desk) == before


def test_what_another_temperature_does_is_shown_before_it_is_expected(
    desk: DeskWindow, qtbot: QtBot
) -> None:
    section = section_of(desk)
    air, before = section.air, studio_of(desk)
    QTest.mouseClick(air.spells.add_button, LEFT)
    qtbot.waitUntil(lambda: bool(air.effects.lines.text()))
    usual = air.effects.lines.text()
    type_into(air.spells.form.celsius, "30")
    assert studio_of(desk).places[0].spells
    desk.verbs["undo"].trigger()
    QTest.mouseClick(air.spells.add_button, LEFT)
    QTest.keyClicks(air.spells.form.celsius.editor, "30")
    QTest.keyClick(air.spells.form.celsius.editor, Qt.Key.Key_Tab)
    qtbot.waitUntil(lambda: air.effects.lines.text() != usual)
    QTest.mouseClick(air.spells.form.leave, LEFT)
    qtbot.waitUntil(lambda: air.effects.lines.text() == usual)
    assert studio_of(desk) == before


def test_a_night_that_has_begun_lasts_until_its_morning() -> None:
    zone = ZoneInfo(scenes.ZONE)
    assert coming_night(scenes.at(0, "03:10"), zone) == (
        scenes.at(0, "03:10"),
        scenes.at(0, "07:00"),
    )
    assert coming_night(scenes.at(0, "12:00"), zone) == (
        scenes.at(0, "18:00"),
        scenes.at(1, "07:00"),
    )
    assert coming_night(scenes.at(0, "22:05"), zone) == (
        scenes.at(0, "22:05"),
        scenes.at(1, "07:00"),
    )


def test_older_spells_give_way_where_newer_ones_lie() -> None:
    room = with_spells(scenes.night_room(), (TONIGHT,))
    hour = timedelta(hours=1)
    colder = Spell(start=TONIGHT.start - hour, end=TONIGHT.start + hour, celsius=12.0)
    inside = Spell(start=TONIGHT.end - 3 * hour, end=TONIGHT.end - 2 * hour, celsius=25.0)
    spans = [
        ((s.start - TONIGHT.start) / hour, (s.end - TONIGHT.start) / hour, s.celsius)
        for s in with_spells(room, (inside, colder)).spells
    ]
    assert spans == [(-1, 1, 12.0), (1, 7, 22.0), (7, 8, 25.0), (8, 10, 22.0)]
