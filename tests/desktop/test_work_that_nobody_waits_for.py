"""What the desk does in small parts, in threads and behind the window."""

from __future__ import annotations

import gc
import os
import subprocess
import sys
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QObject, Qt, QTimer
from PySide6.QtWidgets import QApplication, QWidget
from shiboken6 import delete

from studio_planner.craft.errors import StudioError
from studio_planner.desktop.aside import send_back
from studio_planner.desktop.canvas import Canvas
from studio_planner.desktop.fonts import fonts_from
from studio_planner.desktop.forms.noun_list import NounList
from studio_planner.desktop.idle_work import IdleWork
from studio_planner.desktop.page_keys import ORDERS, PRODUCTS, STUDIO
from studio_planner.desktop.recolouring import Recolouring
from studio_planner.desktop.room_strip import RoomStrip
from studio_planner.desktop.rubbish import Rubbish
from studio_planner.desktop.theme import LIGHT
from studio_planner.desktop.thread_work import ThreadWork
from tests.desktop import scenes

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.window import DeskWindow


@pytest.fixture
def owner(qtbot: QtBot) -> QWidget:
    """A widget for whatever needs one."""
    widget = QWidget()
    qtbot.addWidget(widget)
    return widget


def test_work_is_done_in_parts_and_what_follows_at_last(qtbot: QtBot, owner: QWidget) -> None:
    done: list[str] = []
    work = IdleWork(owner)
    work.do(iter(map(done.append, "abc")), lambda: done.append("then"))
    assert not done
    qtbot.waitUntil(lambda: not work.going_on)
    assert done == ["a", "b", "c", "then"]


def test_other_work_takes_the_place_of_what_is_not_done(qtbot: QtBot, owner: QWidget) -> None:
    done: list[str] = []
    work = IdleWork(owner)
    work.do(iter(map(done.append, "abc")))
    work.do(iter(map(done.append, "xy")))
    qtbot.waitUntil(lambda: not work.going_on)
    assert done == ["x", "y"]


def test_work_that_is_waited_for_is_done_at_once(owner: QWidget) -> None:
    done: list[str] = []
    work = IdleWork(owner)
    work.do(iter(map(done.append, "ab")), lambda: done.append("then"))
    work.finish()
    assert done == ["a", "b", "then"]
    work.do(iter(map(done.append, "cd")))
    work.drop()
    work.finish()
    assert "c" not in done


def test_work_may_give_way_to_other_work_while_it_is_done(qtbot: QtBot, owner: QWidget) -> None:
    done: list[str] = []
    work = IdleWork(owner)

    def parts() -> Iterator[None]:
        work.do(iter(map(done.append, "x")))
        yield
        done.append("never")

    work.do(parts())
    qtbot.waitUntil(lambda: done == ["x"])


class _Coloured(QWidget):
    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.times = 0

    def recolour(self) -> None:
        """Count."""
        self.times += 1


def test_what_is_in_sight_is_recoloured_at_once_and_the_rest_soon(
    qtbot: QtBot, owner: QWidget
) -> None:
    shown, hidden, behind = _Coloured(owner), _Coloured(owner), _Coloured()
    qtbot.addWidget(behind)
    hidden.hide()
    owner.show()
    colours = Recolouring(owner)
    for one in (shown, hidden, behind):
        colours.connect(one.recolour)
    colours.emit()
    assert (shown.times, hidden.times, behind.times) == (1, 0, 0)
    colours.finish(behind)
    assert (shown.times, hidden.times, behind.times) == (1, 0, 1)
    qtbot.waitUntil(lambda: hidden.times == 1)
    assert (shown.times, behind.times) == (1, 1)


def test_a_widget_that_is_gone_is_recoloured_no_more(qtbot: QtBot, owner: QWidget) -> None:
    gone, there = _Coloured(owner), _Coloured(owner)
    colours = Recolouring(owner)
    colours.connect(gone.recolour)
    colours.connect(there.recolour)
    colours.emit()
    delete(gone)
    qtbot.waitUntil(lambda: there.times == 1)
    colours.emit()
    qtbot.waitUntil(lambda: there.times == 2)
    assert gone.times <= 1


def test_what_a_thread_made_or_why_it_did_not_comes_back_in_order(owner: QWidget) -> None:
    told: list[tuple[object, str]] = []

    def failing() -> object:
        raise StudioError("No room left.")

    work = ThreadWork(owner)
    for what in (lambda: 1, failing, lambda: 3):
        work.do(what, lambda made, wrong: told.append((made, str(wrong or ""))))
    work.finish()
    assert told == [(1, ""), (None, "No room left."), (3, "")]


def test_rubbish_is_cleared_away_by_the_window_as_long_as_it_is_there() -> None:
    window = QObject()
    rubbish = Rubbish(window)
    try:
        assert not gc.isenabled()
        rubbish.look_through_all()
        held = [[number] for number in range(60_000)]
        assert gc.get_count()[0] > len(held) // 2
        rubbish.look()
        assert gc.get_count()[0] < len(held) // 2
    finally:
        gc.unfreeze()
        delete(window)
    assert gc.isenabled()


@pytest.mark.skipif(sys.platform == "win32", reason="other classes of priority there")
def test_a_process_that_nobody_waits_for_goes_behind_the_window() -> None:
    with subprocess.Popen([sys.executable, "-c", "input()"], stdin=subprocess.PIPE) as child:
        send_back(child.pid)
        own = os.getpriority(os.PRIO_PROCESS, 0)
        assert os.getpriority(os.PRIO_PROCESS, child.pid) == min(own + 5, 19)
        child.kill()


def test_a_list_that_is_shown_anew_tells_only_of_another_choice(owner: QWidget) -> None:
    canvas = Canvas(LIGHT, fonts_from(QApplication.font()), scenes.NOW)
    things = NounList(canvas, "Things", "None yet.", owner)
    chosen: list[str] = []
    things.chosen.connect(chosen.append)
    rows = [(key, key.upper(), "") for key in "abc"]
    things.show_things(rows)
    things.choose("b")
    things.show_things(rows)
    assert chosen == ["a", "b"]
    things.show_things([row for row in rows if row[0] != "b"])
    assert chosen == ["a", "b", "a"]


def test_pages_get_ready_while_nobody_waits(qtbot: QtBot, desk: DeskWindow) -> None:
    desk.pages.get_ready()
    pages = (ORDERS, PRODUCTS, STUDIO)
    qtbot.waitUntil(lambda: all(key in desk.pages._held for key in pages), timeout=20_000)
    assert desk.pages.current_key == "plan"


def test_the_air_comes_also_where_the_side_was_asked_for_before_it(
    qtbot: QtBot, window: DeskWindow, studio_path: Path
) -> None:
    def shown_again() -> None:
        QTimer.singleShot(0, window, window.show_session_view)

    assert window.open_path(studio_path)
    window.parts.side.show_worth()
    once = Qt.ConnectionType.SingleShotConnection
    window.timeline.drawing.drawn.connect(shown_again, once)
    qtbot.waitUntil(lambda: window.parts.findChild(RoomStrip) is not None)
    assert window.parts.side.hands.rows.rowCount()


def test_who_looks_for_a_piece_at_once_sees_what_is_typed(
    window: DeskWindow, studio_path: Path
) -> None:
    assert window.open_path(studio_path)
    window.verbs["find"].trigger()
    assert window.work_line.search.isVisible()
