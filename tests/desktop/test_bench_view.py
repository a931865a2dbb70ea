"""The bench view with taps only: a pour is started and written down, other things passed."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from studio_planner.services.editing.changes import Change
from studio_planner.services.hands_items import HandsKind

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
