"""Journeys over the readings of a room: typed, dropped as a file, made a pattern of."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from studio_planner.craft.places import Reading
from tests.desktop import scenes
from tests.desktop.room_hands import (
    LEFT,
    change,
    room_of,
    section_of,
    studio_of,
    type_into,
)

if TYPE_CHECKING:
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.pages.room_section import RoomSection
    from studio_planner.desktop.window import DeskWindow


@pytest.fixture
def section(desk: DeskWindow) -> RoomSection:
    return section_of(desk)


def log_at(
    path: Path, heading: str, warmth: int = 20, rows: int = 30, year: int = 2026
) -> Path:
    start = datetime(year, 12, 1, tzinfo=UTC)
    lines = [heading]
    for row in range(rows):
        when = start + timedelta(minutes=30 * row)
        lines.append(f"{when:%Y-%m-%d %H:%M},{warmth + row % 3}")
    path.write_text("\n".join(lines), encoding="utf-8")
    return path


def drop(section: RoomSection, path: Path) -> None:
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path))])
    copied, no_keys = Qt.DropAction.CopyAction, Qt.KeyboardModifier.NoModifier
    entered = QDragEnterEvent(QPoint(20, 20), copied, data, LEFT, no_keys)
    QApplication.sendEvent(section, entered)
    assert entered.isAccepted()
    QApplication.sendEvent(section, QDropEvent(QPointF(20, 20), copied, data, LEFT, no_keys))


def test_a_reading_is_typed_and_taken_back(desk: DeskWindow, section: RoomSection) -> None:
    before, panel = studio_of(desk), section.readings
    type_into(panel.warmth, "19.3")
    type_into(panel.damp, "55")
    QTest.mouseClick(panel.write, LEFT)
    (reading,) = room_of(desk).readings
    assert (reading.celsius, reading.humidity_pct) == (19.3, 55)
    assert "19.3 °C, 55 %" in panel.said.text()
    type_into(panel.warmth, "400")
    QTest.mouseClick(panel.write, LEFT)
    assert "outside -40 to 90" in panel.warmth.wrong
    assert len(room_of(desk).readings) == 1
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_a_dropped_log_asks_previews_and_is_taken_as_one_change(
    qtbot: QtBot, desk: DeskWindow, section: RoomSection, tmp_path: Path
) -> None:
    before, preview = studio_of(desk), section.readings.preview
    drop(section, log_at(tmp_path / "shed.csv", "time,temp", warmth=68))
    qtbot.waitUntil(lambda: preview.look is not None)
    assert "°C or °F" in preview.questions.text()
    assert not preview.take.isEnabled()
    preview.unit.editor.setFocus()
    for _ in range(2):
        QTest.keyClick(preview.unit.editor, Qt.Key.Key_Down)
    qtbot.waitUntil(lambda: preview.look is not None and preview.look.ready)
    assert "30 readings" in preview.said.text()
    assert studio_of(desk) == before
    with qtbot.waitSignal(desk.changes.changed):
        QTest.mouseClick(preview.take, LEFT)
    assert len(room_of(desk).readings) == 30
    assert room_of(desk).readings[0].celsius == pytest.approx(20.0)
    assert preview.isHidden()
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_what_a_dropped_file_was_found_to_be_comes_into_sight(
    qtbot: QtBot, section: RoomSection, tmp_path: Path
) -> None:
    preview, progress = section.readings.preview, section.readings.progress
    assert section.readings.title.visibleRegion().isEmpty(), "it lies far down the page"
    drop(section, log_at(tmp_path / "shed.csv", "time,temperature_c"))
    qtbot.waitUntil(lambda: not preview.title.visibleRegion().isEmpty())
    qtbot.waitUntil(lambda: not preview.take.visibleRegion().isEmpty())
    section.places.setFocus()
    section._beside.area.verticalScrollBar().setValue(0)
    assert preview.title.visibleRegion().isEmpty()
    drop(section, tmp_path / "gone.csv")
    qtbot.waitUntil(lambda: not progress.visibleRegion().isEmpty())


def test_a_log_of_next_year_is_not_taken_and_one_of_last_year_says_its_year(
    qtbot: QtBot, section: RoomSection, tmp_path: Path
) -> None:
    preview = section.readings.preview
    drop(section, log_at(tmp_path / "next.csv", "time,temperature_c", year=2027))
    qtbot.waitUntil(lambda: preview.look is not None)
    assert "to 2027-12-01, and today is 2026-1" in preview.questions.text()
    assert not preview.take.isEnabled()
    assert not preview.watch.isEnabled()
    drop(section, log_at(tmp_path / "last.csv", "time,temperature_c", year=2025))
    qtbot.waitUntil(lambda: preview.look is not None and preview.look.ready)
    assert "(2025)" in preview.said.text()


def test_times_without_a_zone_can_be_utc(
    qtbot: QtBot, desk: DeskWindow, section: RoomSection, tmp_path: Path
) -> None:
    preview = section.readings.preview
    drop(section, log_at(tmp_path / "shed.csv", "time,temperature_c"))
    qtbot.waitUntil(lambda: preview.look is not None)
    assert preview.zone.isVisibleTo(section)
    preview.zone.editor.setFocus()
    QTest.keyClick(preview.zone.editor, Qt.Key.Key_Down)
    qtbot.waitUntil(lambda: "UTC" in preview.said.text())
    with qtbot.waitSignal(desk.changes.changed):
        QTest.mouseClick(preview.take, LEFT)
    assert room_of(desk).readings[0].when == datetime(2026, 12, 1, tzinfo=UTC)


def test_a_wrong_file_takes_the_place_of_the_one_before_and_says_what_it_is(
    qtbot: QtBot, desk: DeskWindow, section: RoomSection, tmp_path: Path
) -> None:
    before = studio_of(desk)
    picture = tmp_path / "board.csv"
    picture.write_bytes(b"\x89PNG\r\n\x1a\n")
    drop(section, log_at(tmp_path / "shed.csv", "time,temperature_c"))
    qtbot.waitUntil(lambda: section.readings.preview.look is not None)
    drop(section, picture)
    assert section.readings.preview.isHidden()
    assert "board.csv is a picture" in section.readings.progress.text()
    assert "What is wanted here" in section.readings.progress.text()
    assert studio_of(desk) == before


def test_a_text_that_is_no_log_is_refused_in_words(
    qtbot: QtBot, section: RoomSection, tmp_path: Path
) -> None:
    note = tmp_path / "note.txt"
    note.write_text("buy tape\nand gloves", encoding="utf-8")
    drop(section, note)
    qtbot.waitUntil(
        lambda: "note.txt: The room log has no rows" in section.readings.progress.text()
    )
    assert not section.readings.work.busy


def test_reading_a_log_can_be_stopped(
    desk: DeskWindow, section: RoomSection, tmp_path: Path
) -> None:
    before = studio_of(desk)
    drop(section, log_at(tmp_path / "shed.csv", "time,temperature_c", rows=400))
    assert "shed.csv, 401 lines; 0 s so far" in section.readings.progress.text()
    thread = section.readings.work.thread_at_work
    QTest.mouseClick(section.readings.stop, LEFT)
    assert not section.readings.work.busy
    assert thread is not None
    thread.join()
    QApplication.processEvents()
    assert section.readings.preview.isHidden()
    assert studio_of(desk) == before


def test_the_expected_air_is_made_from_readings_and_shown_first(
    desk: DeskWindow, section: RoomSection
) -> None:
    start = scenes.NOW - timedelta(days=20)
    rows = tuple(
        Reading(when=start + timedelta(hours=hour), celsius=15.0 + hour % 24 // 12)
        for hour in range(20 * 24)
    )
    room = replace(room_of(desk), readings=rows)
    change(desk, lambda now: replace(now, places=(room, *now.places[1:])))
    before, week = studio_of(desk), section.readings.week
    QTest.mouseClick(week.make, LEFT)
    assert "median of each hour" in week.said.text()
    assert week.curve.isVisibleTo(section)
    assert studio_of(desk) == before
    QTest.mouseClick(week.take, LEFT)
    assert {round(p.celsius) for p in room_of(desk).pattern} == {15, 16}
    section.readings.picture.grab()
    QTest.mouseClick(section.readings.more, LEFT)
    section.readings.picture.grab()
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_where_there_are_readings_already_the_maker_says_which_stay(
    qtbot: QtBot, desk: DeskWindow, section: RoomSection, tmp_path: Path
) -> None:
    preview = section.readings.preview
    for warmth in (20, 24):
        preview.look = None
        drop(section, log_at(tmp_path / "shed.csv", "time,temperature_c", warmth=warmth))
        qtbot.waitUntil(lambda: preview.look is not None)
        if warmth == 20:
            with qtbot.waitSignal(desk.changes.changed):
                QTest.mouseClick(preview.take, LEFT)
    assert "30 of them fall where there are readings already" in preview.said.text()
    assert "Nothing would be added" in preview.said.text()
    assert not preview.take.isEnabled()
    preview.overlap.editor.setFocus()
    QTest.keyClick(preview.overlap.editor, Qt.Key.Key_Down)
    qtbot.waitUntil(lambda: not section.readings.work.busy)
    with qtbot.waitSignal(desk.changes.changed):
        QTest.mouseClick(preview.take, LEFT)
    assert [reading.celsius for reading in room_of(desk).readings[:3]] == [24, 25, 26]
    assert len(room_of(desk).readings) == 30
