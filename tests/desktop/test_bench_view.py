"""The bench view with taps only: a pour is started and written down, other things passed."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from studio_planner.craft.log import EntryKind
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.services.editing.changes import Change
from studio_planner.services.hands_items import HandsKind
from tests.desktop import scenes

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.bench.bench_window import BenchWindow
    from studio_planner.desktop.window import DeskWindow
    from tests.desktop.scenes import StillClock


@pytest.fixture
def bench(desk: DeskWindow) -> BenchWindow:
    desk.changes.plans_by_itself = False
    desk.verbs["bench"].trigger()
    return desk.others.bench


def tap(bench: BenchWindow) -> None:
    QTest.mouseClick(bench.target, Qt.MouseButton.LeftButton)


def studio_of(desk: DeskWindow) -> Studio:
    assert desk.session is not None
    return desk.session.studio


def go_to_a_pour(bench: BenchWindow) -> None:
    for _ in range(20):
        if bench.task is not None and bench.task.item.kind is HandsKind.POUR:
            return
        QTest.keyClick(bench, Qt.Key.Key_Right)
    pytest.fail("the scene has no pour in the next hours")


def test_the_target_is_large_enough_for_a_knuckle(bench: BenchWindow) -> None:
    dots = bench.screen().physicalDotsPerInch() / bench.screen().devicePixelRatio()
    millimetres = bench.target.height() / dots * 25.4
    assert millimetres >= 25 or bench.target.height() >= bench.height() // 4
    assert bench.target.height() >= 96


def test_one_task_and_one_number_are_shown(bench: BenchWindow) -> None:
    assert bench.verb.text()
    assert bench.number.text()
    assert bench.meaning.text()
    heights = [label.font().pixelSize() for label in (bench.number, bench.verb, bench.about)]
    assert heights == sorted(heights, reverse=True)


def test_two_taps_write_a_pour_down_and_undo_takes_it_back(
    desk: DeskWindow, bench: BenchWindow, clock: StillClock
) -> None:
    before = studio_of(desk)
    go_to_a_pour(bench)
    task = bench.task
    assert task is not None
    begun = clock.when
    tap(bench)
    clock.when += timedelta(minutes=52)
    bench.show_now()
    assert bench.number.text() == "52"
    assert "since A met B" in bench.meaning.text()
    tap(bench)
    row = next(
        row
        for row in studio_of(desk).poured
        if (row.piece, row.coat) == (task.item.piece, task.item.coat)
    )
    assert (row.start, row.end) == (begun, begun + timedelta(minutes=52))
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_a_start_can_be_forgotten(desk: DeskWindow, bench: BenchWindow) -> None:
    before = studio_of(desk)
    go_to_a_pour(bench)
    tap(bench)
    QTest.mouseClick(bench.other, Qt.MouseButton.LeftButton)
    assert "A met B: start" in bench.target.text()
    assert studio_of(desk) == before


def go_to_a_step(bench: BenchWindow) -> None:
    for _ in range(20):
        if ": done now" in bench.target.text():
            return
        QTest.keyClick(bench, Qt.Key.Key_Right)
    pytest.fail("the scene has no step in the next hours")


def test_a_step_takes_one_tap_and_the_last_tap_is_taken_back(
    desk: DeskWindow, bench: BenchWindow
) -> None:
    before = studio_of(desk)
    go_to_a_step(bench)
    assert not bench.undo.isEnabled()
    tap(bench)
    entry = studio_of(desk).log[-1]
    assert entry.kind in {EntryKind.SANDED, EntryKind.TURNED, EntryKind.PACKED}
    assert entry.at == scenes.NOW
    QTest.mouseClick(bench.undo, Qt.MouseButton.LeftButton)
    assert studio_of(desk) == before
    assert not bench.undo.isEnabled()


def test_a_touch_test_takes_three_taps(desk: DeskWindow, bench: BenchWindow) -> None:
    go_to_a_pour(bench)
    assert not bench.touch.isEnabled()  # nothing lies on that piece yet
    tap(bench)
    tap(bench)
    for _ in range(20):
        if bench.touch.isEnabled():
            break
        QTest.keyClick(bench, Qt.Key.Key_Right)
    QTest.mouseClick(bench.touch, Qt.MouseButton.LeftButton)
    words = [one.text() for one in bench.targets.buttons]
    assert words[:2] == ["String", "Tape-tack"]
    QTest.mouseClick(bench.targets.buttons[1], Qt.MouseButton.LeftButton)
    assert "Tape-tack: already" in bench.target.text()
    QTest.mouseClick(bench.targets.buttons[1], Qt.MouseButton.LeftButton)
    entry = studio_of(desk).log[-1]
    assert (entry.touch, entry.verdict) == (Touch.TACK, Verdict.NOT_YET)
    assert "A met B" in bench.target.text() or "now" in bench.target.text()


def test_a_touch_test_can_be_left(desk: DeskWindow, bench: BenchWindow) -> None:
    go_to_a_pour(bench)
    tap(bench)
    tap(bench)
    before = studio_of(desk)
    for _ in range(20):
        if bench.touch.isEnabled():
            break
        QTest.keyClick(bench, Qt.Key.Key_Right)
    bench.touch.click()
    bench.targets.buttons[4].click()
    assert bench.leave.text() == "Leave the bench"
    assert studio_of(desk) == before


def test_every_target_is_as_high_as_a_knuckle_needs(bench: BenchWindow) -> None:
    go_to_a_pour(bench)
    for button in bench.targets.buttons:
        assert button.height() >= 96
        assert button.width() >= 96


def test_a_pour_is_weighed_from_the_bench(desk: DeskWindow, bench: BenchWindow) -> None:
    go_to_a_pour(bench)
    task = bench.task
    assert task is not None
    QTest.mouseClick(bench.weigh, Qt.MouseButton.LeftButton)
    sheet = desk.others.scale.sheet
    assert sheet is not None
    assert task.item.piece in {coat.piece for coat in sheet.coats}


def test_escape_leaves_the_bench(bench: BenchWindow) -> None:
    QTest.keyClick(bench, Qt.Key.Key_Escape)
    assert not bench.isVisible()


def test_without_a_plan_it_says_that_nothing_needs_hands(
    desk: DeskWindow, bench: BenchWindow
) -> None:
    desk.changes.attempt(Change("Forget the plan", lambda s: replace(s, plan=None)))
    bench.show_now()
    assert "Nothing needs hands" in bench.verb.text()
    assert not bench.target.isEnabled()
