"""Where little is to move, nothing glides: by the maker's choice, else by the system's word."""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QPoint, QStandardPaths
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QStyle

from studio_planner.desktop import motion
from studio_planner.desktop.application import application
from studio_planner.desktop.motion import (
    STYLE,
    choose_motion,
    move,
    moves_little,
    system_moves_little,
    wanted_motion,
)
from studio_planner.desktop.remembered import remembered_motion
from tests.desktop.hands_on import LEFT, choose, drag_by, open_sample, pours
from tests.desktop.hands_on import move as move_to

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.window import DeskWindow
    from tests.desktop import scenes

pytestmark = pytest.mark.gui


@pytest.fixture(autouse=True)
def _as_before(qapp: QApplication) -> Iterator[None]:  # noqa: ARG001 - there has to be one
    application()
    move(little=False)
    yield
    move(little=False)


def test_the_style_of_all_widgets_carries_it_and_looks_the_same() -> None:
    hint = QStyle.StyleHint.SH_Widget_Animation_Duration
    assert not moves_little()
    assert QApplication.style().styleHint(hint) > 0
    move(little=True)
    assert moves_little()
    assert QApplication.style().styleHint(hint) == 0
    move(little=False)
    assert not moves_little()
    assert QApplication.style().name() == STYLE


def test_what_is_chosen_is_remembered_and_wins_over_the_system(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(motion, "system_moves_little", lambda: True)
    assert remembered_motion() is None
    assert wanted_motion(remembered_motion())
    choose_motion(little=False)
    assert remembered_motion() is False
    assert not wanted_motion(remembered_motion())
    choose_motion(little=True)
    assert wanted_motion(remembered_motion())
    assert moves_little()


@pytest.mark.parametrize(
    ("name", "text", "little"),
    [
        ("kdeglobals", "[KDE]\nAnimationDurationFactor=0\n", True),
        ("kdeglobals", "[KDE]\nAnimationDurationFactor=0.5\n", False),
        ("gtk-3.0/settings.ini", "[Settings]\ngtk-enable-animations=false\n", True),
        ("gtk-4.0/settings.ini", "[Settings]\ngtk-enable-animations=1\n", False),
    ],
)
def test_the_systems_word_is_read_where_it_is_kept(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, name: str, text: str, *, little: bool
) -> None:
    folder = tmp_path / "config"
    monkeypatch.setattr(QStandardPaths, "writableLocation", lambda _kind: str(folder))
    monkeypatch.setattr(sys, "platform", "linux")
    assert not system_moves_little()
    (folder / name).parent.mkdir(parents=True)
    (folder / name).write_text(text, encoding="utf-8")
    assert system_moves_little() is little


def test_it_is_a_verb_of_the_menu(desk: DeskWindow) -> None:
    desk.verbs["little motion"].trigger()
    assert moves_little()
    assert remembered_motion() is True
    desk.verbs["little motion"].trigger()
    assert not moves_little()


def test_at_the_edge_the_ground_leaps_instead_of_gliding(
    qtbot: QtBot, window: DeskWindow, tmp_path: Path, clock: scenes.StillClock
) -> None:
    open_sample(window, tmp_path, clock)
    steps = {}
    for little in (False, True):
        move(little=little)
        bar = pours(window)[4]
        choose(window, bar)
        drag_by(window, bar, 5)
        scale, view = window.canvas.scale, window.timeline.viewport()
        move_to(window, QPoint(scale.width - 4, view.height() // 2))
        before = scale.origin
        with qtbot.waitSignal(scale.changed, timeout=5000):
            pass
        steps[little] = (scale.origin - before) / scale.seconds_per_pixel
        window.timeline.work.put_back()
        QTest.mouseRelease(view, LEFT)
    assert steps[True] > 100.0 > steps[False] > 0.0
