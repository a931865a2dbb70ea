"""A drop, and the planning that puts the rest right in a process of its own: one step."""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from studio_planner.desktop.planning_process import PlanningProcess
from tests.desktop.hands_on import (
    LEFT,
    bar_again,
    choose,
    drag_of,
    open_sample,
    pours,
    studio_of,
)
from tests.services.small_studios import kept

if TYPE_CHECKING:
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.window import DeskWindow
    from tests.desktop import scenes

pytestmark = [pytest.mark.gui, pytest.mark.journey, pytest.mark.slow]

# Plans as the real command does, from the instant of the test on.
QUICK = """
import json, sys
from datetime import datetime
from pathlib import Path
from studio_planner.planning.quick import quick_plan
from studio_planner.storage.studio_file import open_studio
with open_studio(Path(sys.argv[2])) as file:
    file.keep_plan(quick_plan(file.read(), datetime.fromisoformat(sys.argv[1])))
print(json.dumps({"kept": True, "reasons": []}))
"""


@pytest.fixture
def desk(
    qtbot: QtBot, window: DeskWindow, tmp_path: Path, clock: scenes.StillClock
) -> DeskWindow:
    open_sample(window, tmp_path, clock)
    qtbot.waitUntil(lambda: window.parts.side.hands.rows.rowCount() > 0)
    program = [sys.executable, "-c", QUICK, clock.when.isoformat()]
    window.plan_with(PlanningProcess(lambda path: [*program, str(path)]))
    window.changes.plans_by_itself = True
    return window


def drop_five_minutes_later(desk: DeskWindow, qtbot: QtBot) -> None:
    """Pour a flood five minutes later that another pour waits for, and let planning end."""
    flood = next(b for b in pours(desk) if (b.lane.piece.key, b.coat.key) == FLOOD)
    choose(desk, flood)
    QTest.keyClick(desk.timeline, Qt.Key.Key_Right, Qt.KeyboardModifier.AltModifier)
    assert drag_of(desk).verdict.allowed
    with qtbot.waitSignal(desk.planning.planned, timeout=30_000):
        QTest.keyClick(desk.timeline, Qt.Key.Key_Return)


FLOOD = ("birthday-board", "flood")


def test_what_a_drop_moves_is_shown_and_taken_back_with_it_in_one_step(
    qtbot: QtBot, desk: DeskWindow
) -> None:
    before = studio_of(desk)
    drop_five_minutes_later(desk, qtbot)
    after = studio_of(desk)
    assert not after.plan_outdated
    (pin,) = after.pins
    flood = next(b for b in pours(desk) if (b.lane.piece.key, b.coat.key) == FLOOD)
    assert bar_again(desk, flood).start == pin.start
    moved = desk.timeline.work.aftermath.difference.moved
    assert moved
    assert all((row.piece, row.coat) != FLOOD for row in moved)
    desk.timeline.viewport().repaint()
    desk.changes.plans_by_itself = False
    QTest.mouseClick(desk.work_line.verbs[-1], LEFT)
    assert studio_of(desk) == before
    desk.verbs["redo"].trigger()
    assert studio_of(desk) == after
    assert kept(after) == kept(studio_of(desk))
