"""What happened, told where the hand already is: at a bar of the timeline and at a piece."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from PySide6.QtWidgets import QMenu

from studio_planner.craft.log import EntryKind
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.desktop.happened_menu import fill_happened
from studio_planner.storage.studio_file import create_studio
from tests.desktop import logged_scene

if TYPE_CHECKING:
    from pathlib import Path

    from PySide6.QtGui import QAction

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.window import DeskWindow


@pytest.fixture
def studio_path(tmp_path: Path) -> Path:
    path = tmp_path / "lantern.studio"
    create_studio(path, logged_scene.logged()).close()
    return path


def studio_of(desk: DeskWindow) -> Studio:
    assert desk.session is not None
    return desk.session.studio


def action(menu: QMenu, words: str) -> QAction:
    for one in menu.actions():
        if one.text() == words:
            return one
        inside = one.menu()
        if isinstance(inside, QMenu) and any(two.text() == words for two in inside.actions()):
            return action(inside, words)
    pytest.fail(f"no {words} among {[one.text() for one in menu.actions()]}")


def submenu(menu: QMenu, words: str) -> QMenu:
    found = action(menu, words).menu()
    assert isinstance(found, QMenu)
    return found


def test_a_bar_on_the_timeline_tells_what_happened_with_one_tap(desk: DeskWindow) -> None:
    desk.changes.plans_by_itself = False
    before = studio_of(desk)
    desk.timeline.choose_piece("h1")
    menu = desk.timeline.work.verbs.menu(desk.timeline.bar_chosen())
    happened = submenu(menu, "What &happened")
    happened.aboutToShow.emit()
    action(happened, "Turned over").trigger()
    assert studio_of(desk).log[-1].kind is EntryKind.TURNED
    assert "Turned over" in desk.notice.words
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_touch_tests_are_told_of_the_coat_that_lies_uppermost(desk: DeskWindow) -> None:
    desk.changes.plans_by_itself = False
    menu = QMenu(desk)
    fill_happened(menu, desk, "h1")
    action(menu, "Tape-tack: not yet").trigger()
    entry = studio_of(desk).log[-1]
    assert (entry.coat, entry.touch, entry.verdict) == ("seal", Touch.TACK, Verdict.NOT_YET)


def test_what_can_not_have_happened_is_said_and_changes_nothing(desk: DeskWindow) -> None:
    desk.changes.plans_by_itself = False
    menu = QMenu(desk)
    fill_happened(menu, desk, "h1")
    action(menu, "Packed").trigger()
    before = studio_of(desk)
    action(menu, "Packed").trigger()
    assert "packed already" in desk.notice.words
    assert studio_of(desk) == before


def test_the_menu_leads_to_the_log_and_to_the_trace(desk: DeskWindow) -> None:
    menu = QMenu(desk)
    fill_happened(menu, desk, "m")
    action(menu, "At another &time, moved, with a note…").trigger()
    page = desk.pages.page("log")
    assert desk.pages.current_key == "log"
    assert page.happened.form.fields["piece"].value() == "m"  # type: ignore[attr-defined]
    action(menu, "&Where did it come from?").trigger()
    assert page.trace.isVisible()  # type: ignore[attr-defined]
