"""Journeys over the plan by spot: pours are dragged along time, pieces to other spots."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from studio_planner.services.moving.comparing import Difference, MovedPour
from studio_planner.services.moving.held import Goes
from studio_planner.services.moving.judging import Judge
from tests.desktop.hands_on import LEFT, drag_of, free_pour, open_sample, studio_of
from tests.services.small_studios import kept

if TYPE_CHECKING:
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.timeline_work.spot_table import SpotTable
    from studio_planner.desktop.window import DeskWindow
    from studio_planner.services.moving.spot_lanes import Standing
    from tests.desktop import scenes

pytestmark = [pytest.mark.gui, pytest.mark.journey]
_ALT, _SHIFT = Qt.KeyboardModifier.AltModifier, Qt.KeyboardModifier.ShiftModifier


@pytest.fixture
def desk(
    qtbot: QtBot, window: DeskWindow, tmp_path: Path, clock: scenes.StillClock
) -> DeskWindow:
    """The window with the planned sample by spot, at the start of its plan."""
    open_sample(window, tmp_path, clock)
    qtbot.waitUntil(lambda: window.parts.side.hands.rows.rowCount() > 0)
    window.verbs["by spot"].trigger()
    return window


@pytest.fixture
def spots(desk: DeskWindow) -> SpotTable:
    return desk.parts.spots


def stand_of(spots: SpotTable, piece: str, coat: str) -> Standing:
    one = spots.spots.standing(spots.spots.place_of(piece, coat))
    assert one is not None
    return one


def free_spot(desk: DeskWindow, spots: SpotTable) -> tuple[Standing, int]:
    """A stay to come, and the row of another spot of its place that it may go to."""
    session = desk.session
    assert session is not None
    for lane in spots.spots.spots:
        for one in lane.stands:
            if any(coat.poured for coat in one.coats):
                continue
            for row, other in enumerate(spots.spots.spots):
                if other.place != lane.place or other is lane:
                    continue
                goes = Goes(other.spot.key, frozenset(c.coat for c in one.coats))
                judge = Judge(session.view, one.coats[0])
                if judge.at(one.coats[0].start, goes).allowed:
                    return one, row
    raise AssertionError


def move(spots: SpotTable, at: QPoint) -> None:
    viewport, where = spots.viewport(), QPointF(at)
    kind, button = QEvent.Type.MouseMove, Qt.MouseButton.NoButton
    modifiers = Qt.KeyboardModifier.NoModifier
    QApplication.sendEvent(
        viewport,
        QMouseEvent(kind, where, viewport.mapToGlobal(where), button, LEFT, modifiers),
    )


def grip(desk: DeskWindow, spots: SpotTable, one: Standing) -> QPoint:
    """A pixel on the first pour of a stay, which is brought into view."""
    spots.setCurrentIndex(spots.spots.place_of(one.piece.key, one.coats[0].coat))
    desk.canvas.scale.show(one.start.timestamp() - 6 * 3600.0, 120.0)
    rect = spots.visualRect(spots.currentIndex())
    return QPoint(round(desk.canvas.scale.x(one.start.timestamp())) + 2, rect.center().y())


def test_a_pour_is_dragged_along_time_and_pinned_as_on_the_timeline(
    desk: DeskWindow, spots: SpotTable
) -> None:
    before = studio_of(desk)
    bar, minutes = free_pour(desk)
    one = stand_of(spots, bar.lane.piece.key, bar.coat.key)
    spots.setCurrentIndex(spots.spots.place_of(one.piece.key, bar.coat.key))
    desk.canvas.scale.show(bar.begins - 6 * 3600.0, 60.0)
    y = spots.visualRect(spots.currentIndex()).center().y()
    start = QPoint(round(desk.canvas.scale.x(bar.begins)) + 2, y)
    QTest.mousePress(spots.viewport(), LEFT, pos=start)
    end = start + QPoint(minutes, 0)
    for step in (1, 2, 3):
        move(spots, start + (end - start) * step / 3)
    spots.viewport().repaint()
    drag = drag_of(desk)
    assert drag.bar.coat.key == bar.coat.key
    assert drag.goes is None
    assert (drag.wanted - bar.start).total_seconds() == minutes * 60.0
    QTest.mouseRelease(spots.viewport(), LEFT, pos=end)
    after = studio_of(desk)
    (pin,) = after.pins
    assert (pin.piece, pin.coat) == (bar.lane.piece.key, bar.coat.key)
    again = stand_of(spots, pin.piece, pin.coat)
    name = spots.spots.data(
        spots.spots.place_of(pin.piece, pin.coat), Qt.ItemDataRole.AccessibleTextRole
    )
    assert "pinned" in name
    assert again.lane.pinned
    spots.viewport().repaint()
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_a_piece_is_dragged_to_another_spot_as_one_change(
    desk: DeskWindow, spots: SpotTable
) -> None:
    before = studio_of(desk)
    one, row = free_spot(desk, spots)
    start = grip(desk, spots, one)
    QTest.mousePress(spots.viewport(), LEFT, pos=start)
    spots.verticalScrollBar().setValue(0)
    target = QPoint(start.x(), round(spots.top_of(row)) + 20)
    for step in (1, 2, 3):
        move(spots, start + (target - start) * step / 3)
    spots.viewport().repaint()
    spot = spots.spots.spots[row].spot
    assert drag_of(desk).spot == spot.key
    assert spot.name in drag_of(desk).slip.heading
    QTest.mouseRelease(spots.viewport(), LEFT, pos=target)
    after = studio_of(desk)
    keys = {(coat.piece, coat.coat) for coat in one.coats}
    assert {c.spot for c in kept(after).coats if (c.piece, c.coat) in keys} == {spot.key}
    assert not after.pins
    assert not after.plan_outdated
    assert f"goes on {spot.name}" in desk.work_line.said
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before
    desk.verbs["redo"].trigger()
    assert studio_of(desk) == after


def test_keys_move_a_piece_in_time_and_from_spot_to_spot(
    desk: DeskWindow, spots: SpotTable
) -> None:
    one, row = free_spot(desk, spots)
    spots.setCurrentIndex(spots.spots.place_of(one.piece.key, one.coats[0].coat))
    now = spots.currentIndex().row()
    key = Qt.Key.Key_Down if row > now else Qt.Key.Key_Up
    for _ in range(abs(row - now)):
        QTest.keyClick(spots, key, _ALT)
    assert drag_of(desk).spot == spots.spots.spots[row].spot.key
    QTest.keyClick(spots, Qt.Key.Key_Right, _ALT)
    assert (drag_of(desk).wanted - one.start).total_seconds() == 300.0
    QTest.keyClick(spots, Qt.Key.Key_Left, _ALT)
    QTest.keyClick(spots, Qt.Key.Key_Return)
    assert stand_of(spots, one.piece.key, one.coats[0].coat).coats[0].spot == (
        spots.spots.spots[row].spot.key
    )
    assert not spots.held


def test_a_spot_that_is_taken_refuses_and_says_who_stands_there(
    desk: DeskWindow, spots: SpotTable
) -> None:
    before = studio_of(desk)
    refused = None
    for lane in spots.spots.spots:
        for one in lane.stands:
            if refused is None and not any(coat.poured for coat in one.coats):
                refused = taken_row(desk, spots, one)
    assert refused is not None
    one, row = refused
    spots.setCurrentIndex(spots.spots.place_of(one.piece.key, one.coats[0].coat))
    now = spots.currentIndex().row()
    for _ in range(abs(row - now)):
        QTest.keyClick(spots, Qt.Key.Key_Down if row > now else Qt.Key.Key_Up, _ALT)
    assert not drag_of(desk).verdict.allowed
    spots.viewport().repaint()
    QTest.keyClick(spots, Qt.Key.Key_Return)
    assert studio_of(desk) == before
    assert "stays where it was" in desk.work_line.said
    refusal = desk.timeline.work.refusal
    assert refusal is not None
    assert all(line.forbids for line in refusal.slip.lines)
    spots.viewport().repaint()


def taken_row(desk: DeskWindow, spots: SpotTable, one: Standing) -> tuple[Standing, int] | None:
    session = desk.session
    assert session is not None
    for row, other in enumerate(spots.spots.spots):
        goes = Goes(other.spot.key, frozenset(c.coat for c in one.coats))
        if other.spot.key == one.coats[0].spot:
            continue
        if not Judge(session.view, one.coats[0]).at(one.coats[0].start, goes).allowed:
            return one, row
    return None


def test_esc_puts_a_piece_back_on_its_spot(desk: DeskWindow, spots: SpotTable) -> None:
    before = studio_of(desk)
    one, row = free_spot(desk, spots)
    spots.setCurrentIndex(spots.spots.place_of(one.piece.key, one.coats[0].coat))
    up = row < spots.currentIndex().row()
    QTest.keyClick(spots, Qt.Key.Key_Up if up else Qt.Key.Key_Down, _ALT)
    assert spots.held
    QTest.keyClick(spots, Qt.Key.Key_Escape)
    assert desk.timeline.work.drag is None
    assert "stays where it was" in desk.work_line.said
    assert studio_of(desk) == before


def test_ghosts_show_where_planning_took_a_pour_from(
    desk: DeskWindow, spots: SpotTable
) -> None:
    coats = [coat for coat in kept(studio_of(desk)).coats if not coat.poured]
    one, other = coats[0], next(c for c in coats if c.spot != coats[0].spot)
    aftermath = desk.timeline.work.aftermath
    without = spots.viewport().grab().toImage()
    aftermath.difference = Difference(moved=(MovedPour(before=other, after=one),))
    assert spots.viewport().grab().toImage() != without
    aftermath.shown.emit(other.piece, other.coat)
    assert stand_of(spots, other.piece, other.coat) is spots.spots.standing(
        spots.currentIndex()
    )


def test_the_menu_of_a_box_has_the_verbs_of_its_next_pour(
    desk: DeskWindow, spots: SpotTable
) -> None:
    one, _ = free_spot(desk, spots)
    spots.setCurrentIndex(spots.spots.place_of(one.piece.key, one.coats[0].coat))
    bar = spots.bar_chosen()
    assert bar is not None
    menu = desk.timeline.work.verbs.menu(bar)
    assert any(a.text().replace("&", "").startswith("Pin here") for a in menu.actions())
