"""A logger's file on the desk: dropped anywhere, and watched while it grows."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from studio_planner.desktop.watched_files import remembered_watched
from tests.desktop.room_hands import LEFT, room_of, section_of, studio_of

if TYPE_CHECKING:
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.pages.room_section import RoomSection
    from studio_planner.desktop.window import DeskWindow
    from tests.desktop.scenes import StillClock

START = datetime(2026, 12, 8, 6, tzinfo=UTC)


def rows(first: int, count: int) -> str:
    lines = []
    for row in range(first, first + count):
        when = START + timedelta(minutes=10 * row)
        lines.append(f"{when:%Y-%m-%dT%H:%M:00Z},{19 + row % 3},50\n")
    return "".join(lines)


@pytest.fixture
def log(tmp_path: Path) -> Path:
    path = tmp_path / "shed.csv"
    path.write_text("time,temperature_c,humidity_pct\n" + rows(0, 12), encoding="utf-8")
    return path


def drop_on_window(desk: DeskWindow, *paths: Path) -> bool:
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
    copied, no_keys = Qt.DropAction.CopyAction, Qt.KeyboardModifier.NoModifier
    entered = QDragEnterEvent(QPoint(20, 20), copied, data, LEFT, no_keys)
    QApplication.sendEvent(desk, entered)
    if entered.isAccepted():
        QApplication.sendEvent(desk, QDropEvent(QPointF(20, 20), copied, data, LEFT, no_keys))
    return entered.isAccepted()


@pytest.fixture
def watched(qtbot: QtBot, desk: DeskWindow, log: Path) -> RoomSection:
    """The room, with the log taken and watched."""
    section = section_of(desk)
    assert drop_on_window(desk, log)
    preview = section.readings.preview
    qtbot.waitUntil(lambda: preview.look is not None)
    QTest.mouseClick(preview.watch, LEFT)
    known = desk.reading_watch
    qtbot.waitUntil(lambda: bool((one := known.watching("room")) and one.file.offset))
    return section


def grow(log: Path, text: str) -> None:
    with log.open("a", encoding="utf-8") as more:
        more.write(text)


def test_a_log_dropped_on_any_page_goes_to_the_rooms_preview(
    qtbot: QtBot, desk: DeskWindow, log: Path
) -> None:
    section = section_of(desk)
    desk.go_to("plan")
    before = studio_of(desk)
    assert drop_on_window(desk, log)
    assert desk.pages.current_key == "studio"
    qtbot.waitUntil(lambda: section.readings.preview.look is not None)
    assert studio_of(desk) == before


def test_what_is_no_table_by_its_name_is_left_and_two_are_refused(
    desk: DeskWindow, log: Path, tmp_path: Path
) -> None:
    assert not drop_on_window(desk, tmp_path / "moon.zip")
    assert drop_on_window(desk, log, tmp_path / "other.csv")
    assert "one file at a time" in desk.notice.words


def test_a_watched_file_is_looked_at_every_minute(
    qtbot: QtBot, desk: DeskWindow, watched: RoomSection, log: Path, clock: StillClock
) -> None:
    assert len(room_of(desk).readings) == 12
    grow(log, rows(12, 3))
    clock.when += timedelta(seconds=30)
    desk.tick()
    assert len(room_of(desk).readings) == 12
    clock.when += timedelta(seconds=31)
    desk.tick()
    qtbot.waitUntil(lambda: len(room_of(desk).readings) == 15)
    row = watched.readings.watching
    assert "shed.csv is watched every minute" in row.said.text()
    assert "3 readings came" in row.said.text()
    desk.verbs["undo"].trigger()
    assert len(room_of(desk).readings) == 12


def test_what_is_wrong_with_a_watched_file_is_seen_and_tried_again(
    qtbot: QtBot, desk: DeskWindow, watched: RoomSection, log: Path, clock: StillClock
) -> None:
    kept = log.read_bytes()
    log.unlink()
    clock.when += timedelta(minutes=2)
    desk.tick()
    row = watched.readings.watching
    qtbot.waitUntil(lambda: "cannot be read" in row.said.text())
    log.write_bytes(kept)
    grow(log, rows(12, 1))
    clock.when += timedelta(minutes=2)
    desk.tick()
    qtbot.waitUntil(lambda: len(room_of(desk).readings) == 13)
    assert "cannot be read" not in row.said.text()


def test_watching_is_stopped_and_remembered_until_then(
    desk: DeskWindow, watched: RoomSection, log: Path, clock: StillClock
) -> None:
    assert desk.session is not None
    path = desk.session.path
    assert remembered_watched(path)["room"][0] == log
    QTest.mouseClick(watched.readings.watching.stop, LEFT)
    assert watched.readings.watching.isHidden()
    assert remembered_watched(path) == {}
    grow(log, rows(12, 1))
    clock.when += timedelta(minutes=2)
    desk.tick()
    assert len(room_of(desk).readings) == 12


@pytest.mark.usefixtures("watched")
def test_a_desk_that_is_opened_again_goes_on_watching(
    qtbot: QtBot, desk: DeskWindow, log: Path, clock: StillClock
) -> None:
    assert desk.session is not None
    path = desk.session.path
    other = path.with_name("other.studio")
    desk.session.save_copy(other)
    assert desk.open_path(other)
    assert desk.reading_watch.watching("room") is None
    assert desk.open_path(path)
    grow(log, rows(12, 2))
    clock.when += timedelta(minutes=2)
    desk.tick()
    qtbot.waitUntil(lambda: len(room_of(desk).readings) == 14)
