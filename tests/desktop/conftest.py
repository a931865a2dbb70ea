"""A desk on a real studio file, with the clock and the dialogs in the test's hands."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QSettings

from studio_planner.desktop.application import application
from studio_planner.desktop.dialogs import Dialogs
from studio_planner.desktop.remembered import remember_language
from studio_planner.desktop.theme import LIGHT, Look, wear
from studio_planner.desktop.tongue import Language, speak
from studio_planner.desktop.window import DeskWindow
from studio_planner.storage.studio_file import create_studio
from tests.desktop import scenes
from tests.desktop.due_scene import NotingNotifier, NotingScheduler, look, ways_out

if TYPE_CHECKING:
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from tests.desktop.due_scene import OpenDesk


@pytest.fixture(autouse=True)
def _settings_of_this_test(tmp_path: Path) -> None:
    """Keep settings and language away from those of whoever runs the tests.

    The language and every timer belong to the application, whichever test is the first.
    """
    application()
    form, scope = QSettings.Format.IniFormat, QSettings.Scope.UserScope
    QSettings.setPath(form, scope, str(tmp_path / "settings"))
    remember_language(Language.ENGLISH)
    speak(Language.ENGLISH)


@pytest.fixture
def clock() -> scenes.StillClock:
    return scenes.StillClock(scenes.NOW)


@pytest.fixture
def studio_path(tmp_path: Path) -> Path:
    path = tmp_path / "lantern.studio"
    create_studio(path, scenes.planned()).close()
    return path


@pytest.fixture
def answers() -> dict[str, Path | None]:
    """What the maker answers when the desk asks for a file."""
    return {}


@pytest.fixture
def window(
    qtbot: QtBot, clock: scenes.StillClock, answers: dict[str, Path | None], tmp_path: Path
) -> DeskWindow:
    """A shown window of 1280 by 800 without a studio."""
    wear(application(), LIGHT)
    dialogs = Dialogs(
        open=lambda _parent, _folder: answers.get("open"),
        new=lambda _parent, _folder: answers.get("new"),
        copy=lambda _parent, _folder: answers.get("copy"),
    )
    made = DeskWindow(
        clock,
        look=Look.LIGHT,
        dialogs=dialogs,
        zone=scenes.ZONE,
        data_folder=lambda: tmp_path / "data",
    )
    qtbot.addWidget(made)
    made.resize(1280, 800)
    made.show()
    qtbot.waitExposed(made)
    return made


@pytest.fixture
def desk(qtbot: QtBot, window: DeskWindow, studio_path: Path) -> DeskWindow:
    """The window with the scene's studio open."""
    assert window.open_path(studio_path)
    qtbot.waitUntil(lambda: window.parts.side.hands.rows.rowCount() > 0)
    qtbot.waitUntil(lambda: window.timeline.settled)
    return window


@pytest.fixture
def notifier() -> NotingNotifier:
    """The means of a desk that reminds; it only notes."""
    return NotingNotifier()


@pytest.fixture
def scheduler(tmp_path: Path) -> NotingScheduler:
    """The scheduler of a desk that reminds; it only notes."""
    return NotingScheduler(tmp_path)


@pytest.fixture
def reminded(studio_path: Path) -> Path:
    """The scene's studio, to be opened on a desk that reminds."""
    return studio_path


@pytest.fixture
def shared_mix(tmp_path: Path) -> Path:
    """The scene's studio with both harbour boards in one mix of flood."""
    studio = scenes.planned()
    assert studio.plan is not None
    coats = tuple(
        replace(coat, mix=99) if coat.coat == "flood" and coat.piece in {"h1", "h2"} else coat
        for coat in studio.plan.coats
    )
    path = tmp_path / "shared.studio"
    create_studio(path, replace(studio, plan=replace(studio.plan, coats=coats))).close()
    return path


@pytest.fixture
def crowded_studio(tmp_path: Path) -> Path:
    """A studio with very many bars."""
    path = tmp_path / "many.studio"
    create_studio(path, scenes.many(60, coats_each=5)).close()
    return path


@pytest.fixture
def reminding_desk(
    qtbot: QtBot,
    clock: scenes.StillClock,
    notifier: NotingNotifier,
    scheduler: NotingScheduler,
    answers: dict[str, Path | None],
) -> OpenDesk:
    """Opens windows that remind by the notifier; each has looked once."""

    def open_window(path: Path) -> DeskWindow:
        wear(application(), LIGHT)
        made = DeskWindow(
            clock,
            look=Look.LIGHT,
            dialogs=Dialogs(calendar=lambda _parent, _name: answers.get("calendar")),
            zone=scenes.ZONE,
            ways_out=ways_out(notifier, scheduler),
        )
        qtbot.addWidget(made, before_close_func=lambda window: window.leave())
        made.changes.plans_by_itself = False
        made.resize(1280, 800)
        made.show()
        assert made.open_path(path)
        look(qtbot, made)
        return made

    return open_window
