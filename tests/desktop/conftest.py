"""A desk on a real studio file, with the clock and the dialogs in the test's hands."""

from __future__ import annotations

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

if TYPE_CHECKING:
    from pathlib import Path

    from pytestqt.qtbot import QtBot


@pytest.fixture(autouse=True)
def _settings_of_this_test(tmp_path: Path) -> None:
    """Keep settings and language away from those of whoever runs the tests."""
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
    app = application()
    wear(app, LIGHT)
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
