"""Journeys over the page of the studio: from an empty file to hands, units, rules, backups."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, time, timedelta
from typing import TYPE_CHECKING, TypeVar

import pytest
from PySide6.QtCore import QPointF, QRect, Qt
from PySide6.QtGui import QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QComboBox, QLabel, QWidget

from studio_planner.craft.hands import Absence, WorkHours
from studio_planner.craft.pieces import Material
from studio_planner.craft.settings import (
    ClockForm,
    FilmUnit,
    LengthUnit,
    MassUnit,
    TemperatureUnit,
    Units,
)
from studio_planner.desktop import bar_words
from studio_planner.desktop.forms.fields import ChoiceField
from studio_planner.desktop.pages.page_stack import PLAN, SET_UP, STUDIO
from studio_planner.desktop.pages.studio_page import (
    BACKUPS,
    HANDS,
    RULES,
    UNITS,
    StudioPage,
)
from studio_planner.desktop.studio_pages.backups_section import BackupsSection
from studio_planner.desktop.studio_pages.hands_section import HandsSection
from studio_planner.desktop.studio_pages.hours_rows import HoursRow, SaidRow
from studio_planner.desktop.studio_pages.rules_section import RulesSection
from studio_planner.desktop.studio_pages.set_up_section import SetUpSection
from studio_planner.desktop.studio_pages.units_section import UnitsSection
from studio_planner.services.editing.changes import Change
from studio_planner.services.setting_up import Need
from studio_planner.storage.studio_file import create_studio
from tests.desktop import scenes

if TYPE_CHECKING:
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.craft.hands import Person
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.forms.fields import Field
    from studio_planner.desktop.studio_pages.week_drawing import WeekDrawing
    from studio_planner.desktop.window import DeskWindow

pytestmark = pytest.mark.journey

_Section = TypeVar("_Section", bound=QWidget)


def studio_of(desk: DeskWindow) -> Studio:
    assert desk.session is not None
    return desk.session.studio


def section(desk: DeskWindow, key: str, kind: type[_Section]) -> _Section:
    desk.changes.plans_by_itself = False
    desk.go_to(STUDIO, key)
    page = desk.pages.page(STUDIO)
    assert isinstance(page, StudioPage)
    found = page.section(key)
    assert isinstance(found, kind)
    return found


def click(button: QAbstractButton) -> None:
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)


def typed(field: Field, text: str) -> None:
    editor = field.focusProxy()
    assert editor is not None
    line = editor.lineEdit() if isinstance(editor, QComboBox) else editor
    assert line is not None
    line.setFocus()
    line.selectAll()  # type: ignore[attr-defined]
    QTest.keyClicks(line, text)
    QTest.keyClick(line, Qt.Key.Key_Return)


def pulled(week: WeekDrawing, day: int, start: int, end: int) -> None:
    """Drag from one minute of a day to another, as a hand does."""
    shape = week.shape
    y = shape.row_rect(day).center().y()
    points = [
        QPointF(shape.x(minute), y).toPoint() for minute in (start, (start + end) // 2, end)
    ]
    QTest.mousePress(week, Qt.MouseButton.LeftButton, pos=points[0])
    for point in points[1:]:
        QTest.mouseMove(week, point)
    QTest.mouseRelease(week, Qt.MouseButton.LeftButton, pos=points[-1])


def person(desk: DeskWindow, key: str = "ada") -> Person:
    return next(one for one in studio_of(desk).people if one.key == key)


@pytest.fixture
def new(window: DeskWindow, answers: dict[str, Path | None], tmp_path: Path) -> DeskWindow:
    """A studio that was made a moment ago."""
    window.changes.plans_by_itself = False
    answers["new"] = tmp_path / "tern.studio"
    window.verbs["new"].trigger()
    return window


def test_a_new_studio_opens_on_what_it_lacks_and_hands_are_entered_from_there(
    new: DeskWindow,
) -> None:
    assert new.pages.current_key == STUDIO
    empty = studio_of(new)
    assert empty.zone == scenes.ZONE
    steps = section(new, SET_UP, SetUpSection)
    assert not steps.begin.isVisibleTo(steps)
    assert "0 of 5" in steps.summary.text()
    row = steps.rows[Need.HANDS]
    assert row.state.text() == "still lacks"
    click(row.verb)
    hands = section(new, HANDS, HandsSection)
    click(hands.people.add_button)
    typed(hands.panel.name, "Tove")
    pulled(hands.panel.week, 1, 18 * 60, 22 * 60)
    tove = studio_of(new).people[0]
    assert tove.name == "Tove"
    assert tove.work == (WorkHours(rule="FREQ=WEEKLY;BYDAY=TU", start=time(18), end=time(22)),)
    steps = section(new, SET_UP, SetUpSection)
    assert "1 of 5" in steps.summary.text()
    assert (row.state.text(), row.there.text(), row.sign.done) == ("there", "Tove", True)
    for _ in range(3):
        new.verbs["undo"].trigger()
    assert studio_of(new) == empty


def test_an_empty_timeline_points_to_the_set_up(new: DeskWindow) -> None:
    new.go_to(PLAN)
    button = new.timeline.set_up_button
    assert button.isVisibleTo(new)
    click(button)
    assert new.pages.current_key == STUDIO


def test_with_pieces_there_is_no_such_button(desk: DeskWindow) -> None:
    assert not desk.timeline.set_up_button.isVisibleTo(desk)


def test_when_everything_is_there_planning_begins_with_a_verb(
    desk: DeskWindow, qtbot: QtBot
) -> None:
    plan = desk.verbs["plan"]
    plan.triggered.disconnect()
    steps = section(desk, SET_UP, SetUpSection)
    assert "planning can begin" in steps.summary.text()
    with qtbot.waitSignal(plan.triggered):
        click(steps.begin)
    assert desk.pages.current_key == PLAN


def test_a_studio_that_is_being_set_up_is_not_planned_after_each_change(
    new: DeskWindow,
) -> None:
    new.changes.plans_by_itself = True
    hands = section(new, HANDS, HandsSection)
    new.changes.plans_by_itself = True
    click(hands.people.add_button)
    assert len(studio_of(new).people) == 1
    assert not new.planning.running
    assert new.notice.words == ""


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


AMERICAN = Units(
    temperature=TemperatureUnit.FAHRENHEIT,
    mass=MassUnit.OUNCE,
    length=LengthUnit.INCH,
    film=FilmUnit.MIL,
    clock=ClockForm.HOURS_12,
    week_starts=6,
)


def test_every_unit_is_chosen_and_everything_shown_follows(desk: DeskWindow) -> None:
    before = studio_of(desk)
    units = section(desk, UNITS, UnitsSection)
    for name in ("temperature", "mass", "length", "film", "clock", "week_starts"):
        field = units.form.fields[name]
        assert isinstance(field, ChoiceField)
        field.show_value(getattr(AMERICAN, name))
        field.editor.activated.emit(field.editor.currentIndex())
    assert studio_of(desk).units == AMERICAN
    assert studio_of(desk).plan == before.plan
    assert not studio_of(desk).plan_outdated
    assert "7:36 pm" in units.example.text()
    desk.go_to(PLAN)
    bar = desk.timeline.lanes.lanes[3].bars[0]
    told = bar_words.tooltip(bar)
    assert "7.87 mil" in told
    assert "6:00 pm" in told
    desk.timeline.choose_piece("m")
    assert "19.7 mil" in desk.parts.side.section.accessibleDescription()
    assert "°F" in desk.parts.room.reading_at(600)
    assert any("pm" in row.spoken for row in desk.parts.side.hands.rows.rows)
    hands = section(desk, HANDS, HandsSection)
    assert hands.panel.week.shape.first == 6
    assert hands.panel.wakes.editor.text() == "7:00 am"
    for _ in range(6):
        desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


@pytest.mark.qt_log_ignore("This plugin does not support", extend=True)
def test_a_zone_is_found_by_typing_and_a_wrong_one_is_said_beside_it(
    desk: DeskWindow,
) -> None:
    units = section(desk, UNITS, UnitsSection)
    typed(units.zone, "Nowhere/Atlantis")
    assert "no time zone called" in units.zone.wrong
    assert studio_of(desk).zone == scenes.ZONE
    assert units.zone.editor.currentText() == "Nowhere/Atlantis"
    typed(units.zone, "America/New_York")
    assert not units.zone.wrong
    assert studio_of(desk).zone == "America/New_York"


def test_name_and_currency_are_changed_and_a_wrong_currency_stays_typed(
    desk: DeskWindow,
) -> None:
    units = section(desk, UNITS, UnitsSection)
    typed(units.name, "Gorse Yard")
    assert desk.title_bar.name.words == "Gorse Yard"
    typed(units.currency, "gbp")
    assert studio_of(desk).currency == "GBP"
    typed(units.currency, "pounds")
    assert units.currency.wrong == "use three letters, such as EUR."
    assert units.currency.editor.text() == "pounds"
    assert studio_of(desk).currency == "GBP"


def test_a_rule_of_thumb_is_changed_and_set_back(desk: DeskWindow) -> None:
    before = studio_of(desk)
    rules = section(desk, RULES, RulesSection)
    row = rules.rows["dew_margin_celsius"]
    assert row.usual.text() == "By ISO 8502-4: 3 °C."
    assert not row.back.isVisibleTo(rules)
    typed(row.field, "4,5")
    assert studio_of(desk).settings.dew_margin_celsius == 4.5
    assert desk.verbs["undo"].text() == "&Undo: Rule of thumb, margin above the dew point"
    click(row.back)
    assert studio_of(desk).settings == before.settings
    assert row.field.editor.text() == "3"


def test_a_rule_outside_its_range_is_said_beside_its_field(desk: DeskWindow) -> None:
    before = studio_of(desk)
    row = section(desk, RULES, RulesSection).rows["sand_minutes"]
    typed(row.field, "0")
    assert "outside 1 to 600" in row.field.wrong
    assert studio_of(desk) == before


def test_the_lag_of_one_material_is_changed_alone(desk: DeskWindow) -> None:
    rules = section(desk, RULES, RulesSection)
    typed(rules.rows["surface_lag_hours, slate"].field, "2")
    lags = studio_of(desk).settings.surface_lag_hours
    expected = dict(scenes.studio().settings.surface_lag_hours)
    expected[Material.SLATE] = 2.0
    assert lags == expected


def test_every_field_of_the_settings_has_its_rule(desk: DeskWindow) -> None:
    rules = section(desk, RULES, RulesSection)
    named = {name.partition(",")[0] for name in rules.rows}
    assert named == set(studio_of(desk).settings.__dataclass_fields__)


def test_a_backup_is_made_by_key_and_brought_back_as_one_change(desk: DeskWindow) -> None:
    before = studio_of(desk)
    section(desk, BACKUPS, BackupsSection)
    QTest.keySequence(desk, QKeySequence("Ctrl+S"))
    desk.changes.make(
        Change("Emptied", lambda now: replace(now, pieces=(), orders=(), plan=None))
    )
    emptied = studio_of(desk)
    backups = section(desk, BACKUPS, BackupsSection)
    assert backups.list.count() == 1
    assert "6 pieces, 4 orders, planned Tue 8 Dec 07:40" in backups.holds.text()
    click(backups.look)
    assert "Fen clock" in backups.seen.text()
    assert "Pieces would come back: Harbour board 1" in backups.seen.text()
    assert studio_of(desk) == emptied
    click(backups.bring)
    assert studio_of(desk) == before
    assert backups.list.count() == 2
    assert "as it was on Tue 8 Dec 19:36" in desk.notice.words
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == emptied


def test_a_studio_is_backed_up_once_on_the_day_it_is_opened(
    desk: DeskWindow, clock: scenes.StillClock, studio_path: Path
) -> None:
    desk.backups.make_for_today()
    desk.backups.make_for_today()
    backups = section(desk, BACKUPS, BackupsSection)
    assert backups.list.count() == 1
    clock.when += timedelta(days=1)
    assert desk.open_path(studio_path)
    desk.backups.make_for_today()
    assert backups.list.count() == 2
    assert desk.notice.words == ""


def test_a_damaged_backup_is_said_to_be_so_and_cannot_be_brought_back(
    desk: DeskWindow, tmp_path: Path
) -> None:
    backups = section(desk, BACKUPS, BackupsSection)
    click(backups.make)
    (path,) = (tmp_path / "data" / "backups").iterdir()
    path.write_bytes(b"nothing of ours")
    desk.show_session_view()
    assert "cannot be read" in backups.list.item(0).text()
    assert "is not a studio file" in backups.holds.text()
    assert not backups.bring.isEnabled()


def test_a_backup_that_breaks_after_it_was_listed_is_refused_in_a_sentence(
    desk: DeskWindow, tmp_path: Path
) -> None:
    before = studio_of(desk)
    backups = section(desk, BACKUPS, BackupsSection)
    click(backups.make)
    (path,) = (tmp_path / "data" / "backups").iterdir()
    path.write_bytes(path.read_bytes()[:5000])
    click(backups.look)
    assert "damaged" in backups.seen.text()
    click(backups.bring)
    assert desk.notice.words.startswith("Not done: ")
    assert studio_of(desk) == before


def test_a_folder_that_cannot_be_written_is_said_and_nothing_changes(
    desk: DeskWindow, tmp_path: Path
) -> None:
    (tmp_path / "data").write_text("in the way")
    desk.verbs["back up"].trigger()
    assert desk.notice.words.startswith("Not done: ")
    desk.backups.make_for_today()
    assert desk.notice.words.startswith("Today's backup was not made. ")


def test_without_a_folder_or_a_studio_nothing_is_offered(window: DeskWindow) -> None:
    assert not window.verbs["back up"].isEnabled()
    assert not window.backups.make_now()
    for key in (SET_UP, HANDS, UNITS, RULES, BACKUPS):
        page = section(window, key, QWidget)
        assert not page.isEnabled()


@pytest.mark.parametrize("key", [SET_UP, HANDS, UNITS, RULES, BACKUPS])
@pytest.mark.parametrize("look", ["light", "dark"])
def test_every_section_is_named_and_no_word_of_it_is_clipped(
    qtbot: QtBot, desk: DeskWindow, key: str, look: str
) -> None:
    desk.verbs[look].trigger()
    desk.verbs["back up"].trigger()
    shown = section(desk, key, QWidget)
    qtbot.wait(20)
    focusable = [
        widget
        for widget in shown.findChildren(QWidget)
        if widget.focusPolicy() is not Qt.FocusPolicy.NoFocus and widget.isVisibleTo(desk)
    ]
    assert len(focusable) > 1
    assert not [one for one in focusable if not (one.accessibleName() or _text(one))]
    for label in shown.findChildren(QLabel):
        if label.isVisibleTo(desk) and label.text():
            flags = int(Qt.TextFlag.TextWordWrap) if label.wordWrap() else 0
            need = label.fontMetrics().boundingRect(
                QRect(0, 0, label.width(), 10_000), flags, label.text()
            )
            assert need.width() <= label.width() + 1, label.text()
            assert need.height() <= label.height() + 1, label.text()
    for button in shown.findChildren(QAbstractButton):
        if button.isVisibleTo(desk) and button.text():
            assert button.fontMetrics().horizontalAdvance(button.text()) < button.width()
            assert button.height() >= 20, button.text()


def _text(widget: QWidget) -> str:
    text = getattr(widget, "text", None)
    return str(text()) if callable(text) else ""


def test_the_window_may_still_be_small_on_every_section(desk: DeskWindow) -> None:
    for key in (SET_UP, HANDS, UNITS, RULES, BACKUPS):
        section(desk, key, QWidget)
        desk.resize(640, 400)
        assert (desk.width(), desk.height()) == (640, 400)


def test_a_studio_opened_in_place_of_another_is_shown_on_every_section(
    desk: DeskWindow, tmp_path: Path
) -> None:
    rules = section(desk, RULES, RulesSection)
    typed(rules.rows["sand_minutes"].field, "0")  # wrong, and of the other studio
    other = tmp_path / "other.studio"
    create_studio(other, replace(scenes.studio(), name="Other")).close()
    assert desk.open_path(other)
    rules = section(desk, RULES, RulesSection)
    assert rules.rows["sand_minutes"].field.editor.text() == "20"
    assert section(desk, UNITS, UnitsSection).name.value() == "Other"
