"""A change on the desk is planned by itself, and its plan is undone with it."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel

from studio_planner.desktop.idle_work import BREATH_MILLISECONDS
from studio_planner.desktop.page_keys import ORDERS, PLAN, PRODUCTS
from studio_planner.services.editing.changes import Change
from studio_planner.storage.studio_file import open_studio

if TYPE_CHECKING:
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.window import DeskWindow

_LONG = 60_000


def studio_of(desk: DeskWindow) -> Studio:
    assert desk.session is not None
    return desk.session.studio


def spare(hours: float) -> Change:
    return Change(
        "Spare before promises",
        lambda studio: replace(studio, settings=replace(studio.settings, spare_hours=hours)),
    )


def test_a_quick_hand_starts_planning_once_and_a_newer_change_drops_the_older_plan(
    qtbot: QtBot, desk: DeskWindow
) -> None:
    before = studio_of(desk)
    started = []
    desk.planning.started.connect(lambda: started.append(1))
    desk.changes.attempt(spare(30))
    desk.changes.attempt(spare(31))
    qtbot.waitUntil(lambda: bool(started), timeout=_LONG)
    assert len(started) == 1
    desk.changes.attempt(spare(32))
    assert not desk.planning.running
    qtbot.waitUntil(lambda: len(started) == 2, timeout=_LONG)
    desk.stop_planning()
    qtbot.waitUntil(lambda: not desk.planning.running, timeout=_LONG)
    assert studio_of(desk).settings.spare_hours == 32
    for _ in range(3):
        desk.verbs["undo"].trigger()
    assert studio_of(desk) == before
    assert not desk.verbs["undo"].isEnabled()


def test_planning_by_itself_can_be_switched_off_and_on(qtbot: QtBot, desk: DeskWindow) -> None:
    desk.verbs["by itself"].trigger()
    desk.changes.attempt(spare(30))
    assert studio_of(desk).plan_outdated
    desk.verbs["by itself"].trigger()
    qtbot.waitUntil(lambda: desk.planning.running, timeout=_LONG)
    desk.stop_planning()
    qtbot.waitUntil(lambda: not desk.planning.running, timeout=_LONG)


@pytest.mark.parametrize(("number", "page"), [(2, ORDERS), (4, PRODUCTS), (1, PLAN)])
def test_pages_have_numbers_on_the_keyboard(
    qtbot: QtBot, desk: DeskWindow, number: int, page: str
) -> None:
    QTest.keyClick(desk, Qt.Key(Qt.Key.Key_0 + number), Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: desk.pages.current_key == page)
    assert desk.title_bar.page_bar.names[page].isChecked()


def test_the_menu_says_what_would_be_undone(desk: DeskWindow) -> None:
    desk.changes.plans_by_itself = False
    assert not desk.verbs["undo"].isEnabled()
    desk.changes.attempt(spare(30))
    assert "Spare before promises" in desk.verbs["undo"].text()
    desk.verbs["undo"].trigger()
    assert "Spare before promises" in desk.verbs["redo"].text()
    assert "Undone: Spare before promises" in desk.notice.words


def test_what_a_change_on_another_page_moves_is_said_over_the_timeline(
    qtbot: QtBot, desk: DeskWindow
) -> None:
    before = studio_of(desk)
    desk.changes.plans_by_itself = False
    desk.changes.attempt(spare(30))
    assert before.plan is not None
    moved = replace(
        before.plan.coats[-1], start=before.plan.coats[-1].start + timedelta(hours=3)
    )
    with open_studio(desk_path(desk)) as planner:
        planner.keep_plan(replace(before.plan, coats=(*before.plan.coats[:-1], moved)))
    assert desk.session is not None
    desk.session.take_plan()
    desk.show_session_view()
    qtbot.waitUntil(lambda: "1 pour moved" in said_over_the_timeline(desk))
    desk.changes.undo()
    assert "1 pour moved" not in said_over_the_timeline(desk)
    assert studio_of(desk) == before


def said_over_the_timeline(desk: DeskWindow) -> str:
    line = desk.parts.work_line
    labels = (one for one in line.findChildren(QLabel) if one.isVisibleTo(line))
    return " ".join(one.text() for one in labels)


def desk_path(desk: DeskWindow) -> Path:
    assert desk.session is not None
    return desk.session.path


def test_without_a_studio_there_is_a_verb_to_make_one(
    qtbot: QtBot, window: DeskWindow, answers: dict[str, Path | None], tmp_path: Path
) -> None:
    answers["new"] = tmp_path / "fresh.studio"
    window.open_soon(tmp_path / "missing.studio")
    window.repaint()
    qtbot.waitUntil(lambda: bool(window.notice.words))
    button = window.timeline.set_up_button
    qtbot.waitUntil(button.isVisible)
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)
    assert window.session is not None
    assert window.session.path.name == "fresh.studio"


def test_what_is_said_before_a_long_change_is_shown_stays_said(
    qtbot: QtBot, desk: DeskWindow
) -> None:
    desk.changes.plans_by_itself = False
    desk.notice.say("The room is colder than planned.")
    with qtbot.waitSignal(desk.changes.changed):
        desk.changes.attempt(spare(30), long=True)
        assert desk.notice.isHidden()
        desk.notice.say("Three readings were taken.")
    assert desk.notice.words == "Three readings were taken."


def test_what_is_undone_before_it_was_shown_is_shown_once(
    qtbot: QtBot, desk: DeskWindow
) -> None:
    desk.changes.plans_by_itself = False
    before = studio_of(desk)
    shown: list[Studio] = []
    desk.changes.changed.connect(lambda: shown.append(studio_of(desk)))
    desk.changes.attempt(spare(30), long=True)
    desk.changes.undo()
    with qtbot.waitCallback() as later:
        QTimer.singleShot(2 * BREATH_MILLISECONDS, later)
    assert shown == [before]
    assert desk.notice.words == "Undone: Spare before promises."
