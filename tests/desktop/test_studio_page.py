"""Journeys over the page of the studio: from an empty file to planning."""

from __future__ import annotations

from dataclasses import replace
from datetime import time
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QPoint, QPointF, QRect, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QAbstractButton, QComboBox, QLabel, QWidget

from studio_planner.craft.hands import WorkHours
from studio_planner.desktop.page_keys import PLAN, SET_UP, STUDIO
from studio_planner.desktop.pages.studio_page import (
    BACKUPS,
    HANDS,
    RULES,
    UNITS,
)
from studio_planner.desktop.studio_pages.hands_section import HandsSection
from studio_planner.desktop.studio_pages.rules_section import RulesSection
from studio_planner.desktop.studio_pages.set_up_section import SetUpSection
from studio_planner.desktop.studio_pages.units_section import UnitsSection
from studio_planner.services.needs import Need
from studio_planner.storage.studio_file import create_studio
from tests.desktop import scenes
from tests.desktop.studio_steps import click, pulled, section, studio_of, typed

if TYPE_CHECKING:
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.window import DeskWindow


pytestmark = pytest.mark.journey


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
    assert steps.summary.text() == "Everything that a plan needs is there."
    assert steps.begin.text() == "Plan again"
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


@pytest.mark.parametrize("key", [SET_UP, HANDS, UNITS, RULES, BACKUPS])
@pytest.mark.parametrize("look", ["light", "dark"])
def test_every_section_is_named_and_no_word_of_it_is_clipped(
    qtbot: QtBot, desk: DeskWindow, key: str, look: str
) -> None:
    desk.verbs[look].trigger()
    desk.verbs["back up"].trigger()
    desk.backups.work.finish()
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


def test_planning_a_studio_that_lacks_something_shows_what_it_lacks(new: DeskWindow) -> None:
    new.go_to(PLAN)
    click(new.title_bar.plan_button)
    assert not new.planning.running
    assert new.pages.current_key == STUDIO
    assert "Here is what lacks." in new.notice.words


def test_the_wheel_scrolls_over_fields_and_changes_none_that_is_not_in_hand(
    desk: DeskWindow,
) -> None:
    before = studio_of(desk)
    units = section(desk, UNITS, UnitsSection)
    choice = units.form.fields["length"].focusProxy()
    assert isinstance(choice, QComboBox)
    hands = section(desk, HANDS, HandsSection)
    away = hands.panel.absences
    click(away.add_button)
    row = away.rows[0]
    shown = [choice, hands.panel.wakes.editor, row.start.day, row.start.at]
    for editor in shown:
        assert not turned(editor)
    assert studio_of(desk).units == before.units
    assert row.start.value() == scenes.at(1, "00:00")
    hands.panel.wakes.editor.setFocus()
    assert turned(hands.panel.wakes.editor)


def turned(editor: QWidget) -> bool:
    """Turn the wheel over an editor; tell whether it has taken the turn for itself."""
    at = QPointF(10.0, 10.0)
    event = QWheelEvent(
        at,
        editor.mapToGlobal(at),
        QPoint(0, 0),
        QPoint(0, -120),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier,
        Qt.ScrollPhase.NoScrollPhase,
        False,  # noqa: FBT003 - Qt takes it by place
    )
    editor.event(event)
    return event.isAccepted()
