"""A desk that stays in the tray when its window is closed."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.services.editing.reminding_words import changed_reminding
from tests.desktop import scenes
from tests.desktop.due_scene import items, look, with_tray

if TYPE_CHECKING:
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.window import DeskWindow
    from tests.desktop.due_scene import NotingNotifier, OpenDesk


def staying(reminding_desk: OpenDesk, path: Path) -> DeskWindow:
    window = reminding_desk(path)
    with_tray(window)
    window.changes.make(changed_reminding("tray", {"stays_in_tray": True}))
    return window


def test_it_goes_on_reminding_and_says_so_the_first_time(
    qtbot: QtBot,
    reminding_desk: OpenDesk,
    reminded: Path,
    clock: scenes.StillClock,
    notifier: NotingNotifier,
) -> None:
    window = staying(reminding_desk, reminded)
    tray = with_tray(window)
    window.close()
    assert window.isHidden()
    assert window.session is not None
    assert len(tray.said) == 1
    assert "goes on reminding" in tray.said[0]
    before = len(notifier.notices)
    clock.when = scenes.at(0, "20:02")
    look(qtbot, window)
    assert len(notifier.notices) > before
    assert tray.due == len(items(window))
    window.reminding.closed.open_asked.emit()
    assert window.isVisible()
    window.close()
    assert window.isHidden()
    assert len(tray.said) == 1


def test_its_list_can_be_asked_for_from_there(reminding_desk: OpenDesk, reminded: Path) -> None:
    window = staying(reminding_desk, reminded)
    window.close()
    window.reminding.closed.due_asked.emit()
    assert window.isVisible()
    assert window.due.is_open


def test_leave_ends_it_from_the_menu_and_from_the_tray(
    reminding_desk: OpenDesk, reminded: Path
) -> None:
    window = staying(reminding_desk, reminded)
    window.verbs["close"].trigger()
    assert window.session is None
    again = reminding_desk(reminded)
    with_tray(again)
    again.close()
    assert again.session is not None
    again.reminding.closed.leave_asked.emit()
    assert again.session is None


def test_without_a_tray_the_desk_ends_with_its_window(
    reminding_desk: OpenDesk, reminded: Path
) -> None:
    window = staying(reminding_desk, reminded)
    with_tray(window).there = False
    window.close()
    assert window.session is None


def test_unless_it_is_asked_to_stay_it_ends_with_its_window(
    reminding_desk: OpenDesk, reminded: Path
) -> None:
    window = reminding_desk(reminded)
    tray = with_tray(window)
    window.close()
    assert window.session is None
    assert not tray.said
