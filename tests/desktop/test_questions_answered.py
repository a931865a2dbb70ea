"""Questions on the desk that are answered at once."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from studio_planner.craft.settings import ClockForm, TemperatureUnit, Units
from studio_planner.desktop.forms.fields import ChoiceField, NumberField
from studio_planner.desktop.pages.questions_page import QuestionsPage
from studio_planner.services.editing.changes import Change
from studio_planner.services.questions.every import QUESTIONS
from studio_planner.services.trying.every import WHAT_IFS
from tests.desktop import scenes
from tests.desktop.question_scene import questions_on

if TYPE_CHECKING:
    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.window import DeskWindow


@pytest.fixture
def page(desk: DeskWindow) -> QuestionsPage:
    return questions_on(desk)


def test_every_question_is_in_the_list_and_has_its_answer_when_it_is_chosen(
    page: QuestionsPage,
) -> None:
    for question in QUESTIONS:
        page.choose(question.key)
        assert page.title == question.in_words
        assert page.answer.verdict
        assert page.answer.isVisible()
        assert not page.trial.isVisible()


def test_the_list_is_walked_by_keyboard_past_its_heads(page: QuestionsPage) -> None:
    page.list.setFocus()
    seen = [page.list.current_key]
    for _ in range(len(WHAT_IFS) + len(QUESTIONS) - 1):
        QTest.keyClick(page.list, Qt.Key.Key_Down)
        seen.append(page.list.current_key)
    assert seen == [one.key for one in WHAT_IFS] + [one.key for one in QUESTIONS]


def test_an_answer_follows_what_is_typed(page: QuestionsPage) -> None:
    page.choose("latest-start")
    pour, minutes = page.form.fields["pour"], page.form.fields["minutes"]
    assert isinstance(pour, ChoiceField)
    assert isinstance(minutes, NumberField)
    pour.editor.setCurrentIndex(pour.editor.count() - 1)
    pour.editor.activated.emit(pour.editor.count() - 1)
    # Ada and Bo go to bed at 23:00.
    assert "21:30" in page.answer.verdict
    minutes.editor.selectAll()
    QTest.keyClicks(minutes.editor, "60")
    QTest.keyClick(minutes.editor, Qt.Key.Key_Return)
    assert "22:00" in page.answer.verdict


def test_what_makes_no_sense_is_said_beside_the_field(
    page: QuestionsPage,
) -> None:
    page.choose("sanding-now")
    minutes = page.form.fields["minutes"]
    assert isinstance(minutes, NumberField)
    before = page.answer.verdict
    minutes.editor.selectAll()
    QTest.keyClicks(minutes.editor, "soon")
    QTest.keyClick(minutes.editor, Qt.Key.Key_Return)
    assert "not a number" in minutes.wrong
    assert page.answer.verdict == before


def test_answers_are_in_the_studios_units(page: QuestionsPage, desk: DeskWindow) -> None:
    fahrenheit = Units(temperature=TemperatureUnit.FAHRENHEIT)
    assert desk.changes.attempt(Change("Units", lambda s: replace(s, units=fahrenheit)))
    page.choose("damp-tonight")
    assert any("°F" in line for line in page.answer.lines)
    assert not any("°C" in line for line in page.answer.lines)


def test_an_answer_moves_on_with_the_clock(
    qtbot: QtBot, page: QuestionsPage, desk: DeskWindow, clock: scenes.StillClock
) -> None:
    page.choose("latest-start")
    assert "at the latest" in page.answer.verdict
    clock.when = scenes.at(0, "22:58")
    desk.tick()
    qtbot.waitUntil(lambda: "at the latest" not in page.answer.verdict)
    assert "too late" in page.answer.verdict


def test_without_a_studio_it_says_what_to_do(window: DeskWindow) -> None:
    window.go_to("questions")
    page = window.pages.page("questions")
    assert isinstance(page, QuestionsPage)
    assert page.title == "Open a studio first."
    assert not page.trial.isVisible()


def test_a_day_is_written_with_its_weekday(page: QuestionsPage) -> None:
    page.choose("to-market")
    assert "Sat 19 Dec" in page.answer.verdict
    assert scenes.DAY + timedelta(days=11) == scenes.ORDERS[3].promised


def test_a_time_in_a_question_is_on_the_studios_kind_of_clock(
    desk: DeskWindow, page: QuestionsPage
) -> None:
    assert desk.session is not None
    clock = replace(desk.session.studio.units, clock=ClockForm.HOURS_12)
    assert desk.changes.attempt(Change("12 h", lambda now: replace(now, units=clock)))
    page.choose("colour-window")
    assert page.title.startswith("If I pour the base at 6:00 pm tonight")
    item = page.list.currentItem()
    assert item is not None
    assert item.text() == page.title
