"""What is due, on the desk: it comes up, is answered, stays, and survives."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.reminders import Reminding
from studio_planner.desktop.application import application
from studio_planner.desktop.theme import LIGHT, Look, wear
from studio_planner.desktop.window import DeskWindow
from studio_planner.storage.studio_file import create_studio
from tests.desktop import scenes
from tests.desktop.due_scene import NotingNotifier, NotingScheduler, ways_out

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.services.reminding.due_list import DueItem

OPENS = scenes.at(1, "08:10")


@pytest.fixture
def notifier() -> NotingNotifier:
    return NotingNotifier()


@pytest.fixture
def reminded(tmp_path: Path) -> Path:
    path = tmp_path / "lantern.studio"
    create_studio(path, replace(scenes.planned(), reminding=Reminding())).close()
    return path


@pytest.fixture
def opened(
    qtbot: QtBot, clock: scenes.StillClock, notifier: NotingNotifier, tmp_path: Path
) -> Callable[[Path], DeskWindow]:
    """Opens a window that reminds by the notifier."""

    def open_window(path: Path) -> DeskWindow:
        wear(application(), LIGHT)
        window = DeskWindow(
            clock,
            look=Look.LIGHT,
            zone=scenes.ZONE,
            ways_out=ways_out(notifier, NotingScheduler(tmp_path)),
        )
        qtbot.addWidget(window)
        window.changes.plans_by_itself = False
        window.resize(1280, 800)
        window.show()
        assert window.open_path(path)
        look(qtbot, window)
        return window

    return open_window


def look(qtbot: QtBot, window: DeskWindow) -> None:
    with qtbot.waitSignal(window.reminding.due_changed):
        window.reminding.look()


def items(window: DeskWindow) -> tuple[DueItem, ...]:
    due = window.reminding.due
    assert due is not None
    return due.items


def test_what_comes_due_stands_in_the_head_with_its_number(
    qtbot: QtBot,
    opened: Callable[[Path], DeskWindow],
    reminded: Path,
    clock: scenes.StillClock,
    notifier: NotingNotifier,
) -> None:
    window = opened(reminded)
    before = len(items(window))
    clock.when = OPENS
    look(qtbot, window)
    assert len(items(window)) > before
    assert window.title_bar.due.text() == f"{len(items(window))} due"
    assert any("Harbour board 1" in notice.body for notice in notifier.notices)
