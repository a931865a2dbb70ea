"""Hands are painted, typed into rows, and away; every step is undone."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, time
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtTest import QTest

from studio_planner.craft.hands import Absence, WorkHours
from studio_planner.desktop.page_keys import STUDIO
from studio_planner.desktop.pages.studio_page import (
    HANDS,
)
from studio_planner.desktop.studio_pages.hands_section import HandsSection
from studio_planner.desktop.studio_pages.hours_rows import HoursRow, SaidRow
from studio_planner.services.editing.changes import Change
from tests.desktop import scenes
from tests.desktop.studio_steps import click, person, pulled, section, studio_of, typed

if TYPE_CHECKING:
    from studio_planner.desktop.window import DeskWindow


pytestmark = pytest.mark.journey


def test_hours_are_painted_pulled_moved_and_removed_by_mouse(desk: DeskWindow) -> None:
    before = studio_of(desk)
    week = section(desk, HANDS, HandsSection).panel.week
    pulled(week, 6, 600, 720)  # Sunday 10 to 12
    assert [(b.start, b.end) for b in week.blocks if b.day == 6] == [(600, 720)]
    pulled(week, 6, 718, 840)  # its end to 14:00
    pulled(week, 6, 602, 540)  # its start to 9:00
    pulled(week, 6, 700, 760)  # its middle an hour later
    (sunday,) = [block for block in week.blocks if block.day == 6]
    assert (sunday.start, sunday.end) == (600, 900)
    assert week.chosen == sunday
    assert "Sunday 10:00 to 15:00" in week.accessibleDescription()
    panel = section(desk, HANDS, HandsSection).panel
    assert panel.chosen.text() == "Sunday 10:00 to 15:00"
    click(panel.remove_block)
    assert not any(block.day == 6 for block in week.blocks)
    assert not panel.remove_block.isEnabled()
    for _ in range(5):
        desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_one_evening_is_made_that_of_the_whole_working_week(desk: DeskWindow) -> None:
    panel = section(desk, HANDS, HandsSection).panel
    before = studio_of(desk)
    pulled(panel.week, 6, 600, 720)
    click(panel.same)
    mornings = {b.day for b in panel.week.blocks if (b.start, b.end) == (600, 720)}
    assert mornings == {0, 1, 2, 3, 4, 6}
    for _ in range(2):
        desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_a_block_is_pulled_over_midnight_on_the_row_below(desk: DeskWindow) -> None:
    week = section(desk, HANDS, HandsSection).panel.week
    shape = week.shape
    start = QPointF(shape.x(22 * 60 - 2), shape.row_rect(0).center().y()).toPoint()
    end = QPointF(shape.x(60), shape.row_rect(1).center().y()).toPoint()
    QTest.mousePress(week, Qt.MouseButton.LeftButton, pos=start)
    QTest.mouseMove(week, end)
    QTest.mouseRelease(week, Qt.MouseButton.LeftButton, pos=end)
    monday = next(block for block in week.blocks if block.day == 0)
    assert (monday.start, monday.end) == (18 * 60, 25 * 60)
    assert len(shape.rects(monday)) == 2


def test_a_click_on_a_free_hour_changes_nothing(desk: DeskWindow) -> None:
    before = studio_of(desk)
    week = section(desk, HANDS, HandsSection).panel.week
    pulled(week, 6, 600, 600)
    assert studio_of(desk) == before


def test_hours_are_painted_by_keys_alone(desk: DeskWindow) -> None:
    before = studio_of(desk)
    week = section(desk, HANDS, HandsSection).panel.week
    week.setFocus()
    for _ in range(6):
        QTest.keyClick(week, Qt.Key.Key_Down)
    QTest.keyClick(week, Qt.Key.Key_Return)
    assert week.chosen is not None
    assert (week.chosen.day, week.chosen.start, week.chosen.end) == (6, 1080, 1260)
    QTest.keyClick(week, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
    QTest.keyClick(week, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    QTest.keyClick(week, Qt.Key.Key_Left, Qt.KeyboardModifier.ControlModifier)
    assert (week.chosen.start, week.chosen.end) == (1050, 1260)
    QTest.keyClick(week, Qt.Key.Key_Insert)
    assert len([block for block in week.blocks if block.day == 6]) == 2
    QTest.keyClick(week, Qt.Key.Key_Right)
    assert week.chosen.start == 1050
    QTest.keyClick(week, Qt.Key.Key_Delete)
    QTest.keyClick(week, Qt.Key.Key_Up)
    QTest.keyClick(week, Qt.Key.Key_Down)
    QTest.keyClick(week, Qt.Key.Key_Delete)
    assert not any(block.day == 6 for block in week.blocks)
    while desk.verbs["undo"].isEnabled():
        desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_every_second_saturday_is_entered_in_a_row(desk: DeskWindow) -> None:
    before = studio_of(desk)
    hands = section(desk, HANDS, HandsSection)
    row = hands.panel.hours.rows[1]
    assert isinstance(row, HoursRow)
    assert not row.first.isVisibleTo(row)
    typed(row.every, "2")
    assert row.first.isVisibleTo(row)
    row.first.show_value(date(2026, 12, 12))
    row.first.edited.emit()
    assert person(desk).work[1] == WorkHours(
        rule="FREQ=WEEKLY;INTERVAL=2;BYDAY=SA",
        start=time(9),
        end=time(17),
        first=date(2026, 12, 12),
    )
    assert not any(block.day == 5 for block in hands.panel.week.blocks)
    typed(row.every, "1")
    assert person(desk) == before.people[0]


def test_hours_on_no_day_are_refused_beside_the_days(desk: DeskWindow) -> None:
    before = studio_of(desk)
    row = section(desk, HANDS, HandsSection).panel.hours.rows[1]
    assert isinstance(row, HoursRow)
    click(row.days.boxes[5])
    assert row.days.wrong == "tick at least one day."
    assert studio_of(desk) == before
    click(row.days.boxes[6])
    assert not row.days.wrong
    assert person(desk).work[1].rule == "FREQ=WEEKLY;BYDAY=SU"


def test_rows_of_hours_are_added_and_removed(desk: DeskWindow) -> None:
    before = studio_of(desk)
    rows = section(desk, HANDS, HandsSection).panel.hours
    click(rows.add_button)
    assert len(person(desk).work) == 3
    click(rows.rows[2].remove)
    assert studio_of(desk).people == before.people


def test_a_rule_that_no_row_says_is_kept_as_it_is_while_others_change(
    desk: DeskWindow,
) -> None:
    first = WorkHours(rule="FREQ=MONTHLY;BYDAY=1SU", start=time(9), end=time(12))
    desk.changes.plans_by_itself = False
    ada = replace(person(desk), work=(*person(desk).work, first))
    bo = person(desk, "bo")
    desk.changes.make(Change("Hours", lambda now: replace(now, people=(ada, bo))))
    hands = section(desk, HANDS, HandsSection)
    row = hands.panel.hours.rows[2]
    assert isinstance(row, SaidRow)
    assert row.said.text() == (
        "Every month on the first Sunday: 09:00 to 12:00. Kept as it is."
    )
    pulled(hands.panel.week, 6, 600, 720)
    assert person(desk).work[-1] == first
    click(hands.panel.hours.rows[-1].remove)
    assert first not in person(desk).work


def test_away_this_evening_is_one_tap_and_one_step_to_undo(desk: DeskWindow) -> None:
    before = studio_of(desk)
    away = section(desk, HANDS, HandsSection).panel.absences
    assert away.none.text() == "Ada is always there."
    click(away.evening)
    assert person(desk).absences == (
        Absence(start=scenes.at(0, "19:36"), end=scenes.at(0, "23:00")),
    )
    assert desk.verbs["undo"].text() == "&Undo: Ada, away this evening"
    typed(away.rows[0].why, "theatre")
    assert person(desk).absences[0].why == "theatre"
    click(away.rows[0].remove)
    assert studio_of(desk).people == before.people
    click(away.today)
    click(away.add_button)
    assert [row.start.value() for row in away.rows] == [
        scenes.at(0, "19:36"),
        scenes.at(1, "00:00"),
    ]


def test_an_absence_that_ends_before_it_begins_is_refused_at_its_end(
    desk: DeskWindow,
) -> None:
    away = section(desk, HANDS, HandsSection).panel.absences
    click(away.add_button)
    row = away.rows[0]
    row.end.day.setDate(row.end.day.date().addDays(-3))
    row.end.day.editingFinished.emit()
    assert row.end.wrong == "it has to end after it starts."
    assert person(desk).absences[0].end == scenes.at(2, "00:00")


def test_absences_that_have_gone_by_are_folded_away(desk: DeskWindow) -> None:
    desk.changes.plans_by_itself = False
    gone = Absence(start=scenes.at(-9, "08:00"), end=scenes.at(-8, "08:00"), why="fair")
    ada = replace(person(desk), absences=(gone,))
    bo = person(desk, "bo")
    desk.changes.make(Change("Away", lambda now: replace(now, people=(ada, bo))))
    away = section(desk, HANDS, HandsSection).panel.absences
    assert not away.rows
    assert away.fold.text() == "Gone by: 1"
    assert not away.past.isVisibleTo(away)
    click(away.fold)
    assert away.past.text() == "Sun 29 Nov 08:00 to Mon 30 Nov 08:00, fair"
    assert away.past.isVisibleTo(away)
    click(away.forget)
    assert person(desk).absences == ()
    assert not away.fold.isVisibleTo(away)


def test_people_are_copied_moved_and_removed(desk: DeskWindow) -> None:
    before = studio_of(desk)
    hands = section(desk, HANDS, HandsSection)
    click(hands.people.copy_button)
    assert [one.name for one in studio_of(desk).people] == ["Ada", "Bo", "Ada 2"]
    assert hands.panel.name.value() == "Ada 2"
    hands.people.list.setFocus()
    QTest.keyClick(hands.people.list, Qt.Key.Key_Up, Qt.KeyboardModifier.AltModifier)
    assert [one.name for one in studio_of(desk).people] == ["Ada", "Ada 2", "Bo"]
    click(hands.people.remove_button)
    assert studio_of(desk).people == before.people
    desk.go_to(STUDIO, "hands/bo")
    assert hands.panel.name.value() == "Bo"


def test_escape_lets_go_of_what_a_hand_holds(desk: DeskWindow) -> None:
    before = studio_of(desk)
    week = section(desk, HANDS, HandsSection).panel.week
    week.setFocus()
    shape, blocks = week.shape, week.blocks
    start = QPointF(shape.x(19 * 60), shape.row_rect(0).center().y()).toPoint()
    end = QPointF(shape.x(12 * 60), shape.row_rect(6).center().y()).toPoint()
    QTest.mousePress(week, Qt.MouseButton.LeftButton, pos=start)
    QTest.mouseMove(week, end)
    assert week.blocks != blocks
    QTest.keyClick(week, Qt.Key.Key_Escape)
    assert week.blocks == blocks
    QTest.mouseRelease(week, Qt.MouseButton.LeftButton, pos=end)
    assert studio_of(desk) == before


def test_a_block_is_moved_to_another_day_by_its_middle(desk: DeskWindow) -> None:
    week = section(desk, HANDS, HandsSection).panel.week
    shape = week.shape
    start = QPointF(shape.x(12 * 60), shape.row_rect(5).center().y()).toPoint()
    end = QPointF(shape.x(13 * 60), shape.row_rect(6).center().y()).toPoint()
    QTest.mousePress(week, Qt.MouseButton.LeftButton, pos=start)
    QTest.mouseMove(week, end)
    QTest.mouseRelease(week, Qt.MouseButton.LeftButton, pos=end)
    assert person(desk).work[-1].rule == "FREQ=WEEKLY;BYDAY=SU"
    assert (person(desk).work[-1].start, person(desk).work[-1].end) == (time(10), time(18))


def test_somebody_new_is_shown_anew_though_their_key_was_another_ones(
    desk: DeskWindow,
) -> None:
    hands = section(desk, HANDS, HandsSection)
    click(hands.people.remove_button)
    click(hands.people.remove_button)
    assert not hands.panel.isVisibleTo(hands)
    click(hands.people.add_button)
    typed(hands.panel.name, " ")
    assert hands.panel.name.wrong
    click(hands.people.remove_button)
    click(hands.people.add_button)
    assert not hands.panel.name.wrong
    assert hands.panel.name.value() == "Somebody"
