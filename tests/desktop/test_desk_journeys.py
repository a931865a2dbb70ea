"""Journeys through the real window, from keys and clicks to the file and back."""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt, QTimer
from PySide6.QtGui import QMouseEvent, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from studio_planner.craft.local_time import zone_named
from studio_planner.desktop import planning_process
from studio_planner.desktop.application import run_desk
from studio_planner.desktop.planning_process import PlanningProcess
from studio_planner.desktop.system_zone import system_zone
from studio_planner.desktop.theme import Look
from studio_planner.desktop.window import DeskWindow
from studio_planner.services.ribbons import Ribbon
from studio_planner.storage.studio_file import create_studio, open_studio
from tests.desktop import scenes

if TYPE_CHECKING:
    from pathlib import Path

    from pytestqt.qtbot import QtBot


pytestmark = pytest.mark.journey


def test_opening_a_studio_shows_its_name_its_lanes_and_its_promises(desk: DeskWindow) -> None:
    assert desk.title_bar.name.text() == "Lantern Yard"
    assert "Lantern Yard" in desk.windowTitle()
    assert desk.timeline.lanes.rowCount() == len(scenes.PIECES)
    assert [row.title for row in desk.parts.side.promises.rows.rows][-1] == "Harbour pair"
    assert desk.notice.words == ""


def test_the_window_opens_without_planning_and_leaves_the_file_as_it_was(
    desk: DeskWindow, studio_path: Path
) -> None:
    before = studio_path.read_bytes()
    desk.canvas.show_plan()
    desk.tick()
    assert not desk.planning.running
    assert studio_path.read_bytes() == before


def test_arrows_go_from_bar_to_bar_and_the_section_follows(desk: DeskWindow) -> None:
    timeline = desk.timeline
    timeline.setFocus()
    timeline.setCurrentIndex(timeline.lanes.index(0, 0))
    QTest.keyClick(timeline, Qt.Key.Key_Right)
    assert (timeline.currentIndex().row(), timeline.currentIndex().column()) == (0, 1)
    QTest.keyClick(timeline, Qt.Key.Key_Down)
    assert timeline.currentIndex().row() == 1
    QTest.keyClick(timeline, Qt.Key.Key_Left)
    QTest.keyClick(timeline, Qt.Key.Key_Left)
    QTest.keyClick(timeline, Qt.Key.Key_Left)
    assert timeline.currentIndex().column() == 0
    for _ in range(9):
        QTest.keyClick(timeline, Qt.Key.Key_Down)
    lane = desk.parts.side.section.lane
    assert lane is not None
    assert lane.piece.name == "Market board 7"


def test_a_bar_chosen_by_keyboard_is_brought_into_view(desk: DeskWindow) -> None:
    timeline = desk.timeline
    timeline.setCurrentIndex(timeline.lanes.index(0, 0))
    for _ in range(5):
        QTest.keyClick(timeline, Qt.Key.Key_Right)
    rect = timeline.visualRect(timeline.currentIndex())
    assert 0 <= rect.left() <= desk.canvas.scale.width


def test_a_click_on_a_bar_chooses_it(desk: DeskWindow) -> None:
    timeline = desk.timeline
    index = timeline.lanes.index(3, 0)
    middle = timeline.visualRect(index).center() + QPoint(0, 4)
    assert timeline.indexAt(middle) == index
    QTest.mouseClick(timeline.viewport(), Qt.MouseButton.LeftButton, pos=middle)
    assert timeline.currentIndex() == index


def wheel(desk: DeskWindow, x: float, steps: int, keys: Qt.KeyboardModifier) -> None:
    viewport = desk.timeline.viewport()
    at = QPointF(x, 120.0)
    event = QWheelEvent(
        at,
        viewport.mapToGlobal(at),
        QPoint(0, 0),
        QPoint(0, 120 * steps),
        Qt.MouseButton.NoButton,
        keys,
        Qt.ScrollPhase.NoScrollPhase,
        False,  # noqa: FBT003 - Qt takes it by place
    )
    QApplication.sendEvent(viewport, event)


@pytest.mark.parametrize("x", [200.0, 431.0, 700.0])
@pytest.mark.parametrize("steps", [3, 1, -1])
def test_zooming_at_the_cursor_keeps_the_instant_under_it(
    desk: DeskWindow, x: float, steps: int
) -> None:
    scale = desk.canvas.scale
    scale.pan(900)  # away from the record's ends, where the axis stops
    held, before = scale.second(x), scale.seconds_per_pixel
    wheel(desk, x, steps, Qt.KeyboardModifier.ControlModifier)
    assert (scale.seconds_per_pixel < before) == (steps > 0)
    assert scale.second(x) == pytest.approx(held, abs=0.01)


def test_plus_and_minus_zoom_and_home_shows_now(desk: DeskWindow) -> None:
    scale, timeline = desk.canvas.scale, desk.timeline
    before = scale.seconds_per_pixel
    QTest.keyClick(timeline, Qt.Key.Key_Plus)
    assert scale.seconds_per_pixel < before
    QTest.keyClick(timeline, Qt.Key.Key_Minus)
    assert scale.seconds_per_pixel == pytest.approx(before)
    scale.pan(5000)
    assert not 0 <= desk.canvas.now_x <= scale.width
    QTest.keyClick(timeline, Qt.Key.Key_Home)
    assert 0 <= desk.canvas.now_x <= scale.width


def test_the_wheel_moves_through_time_where_all_lanes_are_in_view(desk: DeskWindow) -> None:
    before = desk.canvas.scale.origin
    wheel(desk, 300.0, -1, Qt.KeyboardModifier.NoModifier)
    assert desk.canvas.scale.origin > before


def test_dragging_pans_by_as_many_pixels_as_the_hand_moves(desk: DeskWindow) -> None:
    viewport, scale = desk.timeline.viewport(), desk.canvas.scale
    scale.pan(300)
    held = scale.second(500.0)
    QTest.mousePress(viewport, Qt.MouseButton.LeftButton, pos=QPoint(500, 500))
    for x in (495, 460, 400):
        QApplication.sendEvent(viewport, _move(desk, x))
    QTest.mouseRelease(viewport, Qt.MouseButton.LeftButton, pos=QPoint(400, 500))
    assert scale.second(400.0) == pytest.approx(held, abs=1.0)


def _move(desk: DeskWindow, x: int) -> QMouseEvent:
    at = QPointF(x, 500.0)
    return QMouseEvent(
        QEvent.Type.MouseMove,
        at,
        desk.timeline.viewport().mapToGlobal(at),
        Qt.MouseButton.NoButton,
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )


def test_the_scroll_bar_and_the_scale_follow_each_other(desk: DeskWindow) -> None:
    bar, scale = desk.parts.time_scroll, desk.canvas.scale
    bar.setValue(bar.maximum())
    assert scale.end == pytest.approx(scale.last, abs=2 * scale.seconds_per_pixel)
    scale.show(scale.first, scale.seconds_per_pixel)
    assert bar.value() == 0


def test_lanes_grow_thinner_as_the_view_takes_in_more(desk: DeskWindow) -> None:
    scale, heights = desk.canvas.scale, []
    for pixels_per_day in (160.0, 50.0, 10.0):
        scale.show(scale.first, 86_400.0 / pixels_per_day)
        heights.append(desk.timeline.verticalHeader().sectionSize(0))
    assert heights[0] >= 60
    assert 24 <= heights[1] < 36
    assert heights[2] == 4 or scale.pixels_per_day > 26.0


def test_nothing_is_left_to_scroll_when_thinner_lanes_fit(desk: DeskWindow) -> None:
    desk.resize(1000, 560)
    rows, scale = desk.timeline.verticalScrollBar(), desk.canvas.scale
    scale.show(scale.first, 86_400.0 / 160.0)
    assert rows.maximum() > 0
    scale.show(scale.first, 86_400.0 / 50.0)
    assert rows.maximum() == 0


def test_a_row_of_the_side_chooses_its_piece_on_the_timeline(desk: DeskWindow) -> None:
    rows = desk.parts.side.promises
    index = next(i for i, row in enumerate(rows.rows.rows) if row.title == "Moon tray")
    middle = rows.visualRect(rows.rows.index(index)).center()
    QTest.mouseClick(rows.viewport(), Qt.MouseButton.LeftButton, pos=middle)
    bar = desk.timeline.lanes.bar(desk.timeline.currentIndex())
    assert bar is not None
    assert bar.lane.piece.name == "Moon tray"


def test_a_copy_is_a_whole_studio_and_the_first_stays_open(
    desk: DeskWindow, tmp_path: Path, answers: dict[str, Path | None]
) -> None:
    answers["copy"] = tmp_path / "copy.studio"
    desk.verbs["copy"].trigger()
    assert desk.notice.words == "A copy is saved as copy.studio."
    with open_studio(tmp_path / "copy.studio") as copy:
        assert copy.read() == scenes.planned()
    assert desk.session is not None
    assert desk.session.path.name == "lantern.studio"


def test_a_new_studio_is_empty_and_says_so(
    window: DeskWindow, tmp_path: Path, answers: dict[str, Path | None]
) -> None:
    answers["new"] = tmp_path / "Quay.studio"
    window.verbs["new"].trigger()
    assert window.title_bar.name.text() == "Quay"
    assert window.title_bar.line.text() == "0 pieces, not planned yet"
    assert window.timeline.lanes.rowCount() == 0
    assert not window.grab().isNull()


def test_a_new_studio_never_replaces_one_that_is_there(
    desk: DeskWindow, studio_path: Path, answers: dict[str, Path | None]
) -> None:
    before = studio_path.read_bytes()
    answers["new"] = studio_path
    desk.verbs["new"].trigger()
    assert desk.notice.words.startswith("Not done: ")
    assert studio_path.read_bytes() == before


@pytest.mark.parametrize("content", [b"", b"not a studio at all", b"SQLite format 3\x00" * 9])
def test_a_bad_file_gives_a_sentence_and_leaves_the_desk_as_it_was(
    desk: DeskWindow, tmp_path: Path, answers: dict[str, Path | None], content: bytes
) -> None:
    bad = tmp_path / "bad.studio"
    bad.write_bytes(content)
    answers["open"] = bad
    desk.verbs["open"].trigger()
    assert "bad.studio" in desk.notice.words
    assert "Traceback" not in desk.notice.words
    assert desk.title_bar.name.text() == "Lantern Yard"
    assert bad.read_bytes() == content


def test_a_missing_file_gives_a_sentence(window: DeskWindow, tmp_path: Path) -> None:
    assert not window.open_path(tmp_path / "gone.studio")
    assert "gone.studio" in window.notice.words


def test_asking_and_thinking_better_of_it_changes_nothing(desk: DeskWindow) -> None:
    for verb in ("open", "new", "copy"):
        desk.verbs[verb].trigger()
    assert desk.notice.words == ""
    assert desk.title_bar.name.text() == "Lantern Yard"


def test_a_change_from_another_window_is_shown_and_told(
    desk: DeskWindow, studio_path: Path
) -> None:
    with open_studio(studio_path) as other:
        other.keep_plan(None)
    desk.tick()
    assert "another window" in desk.notice.words
    assert "not planned yet" in desk.title_bar.line.text()


def test_the_now_line_moves_with_the_clock_that_was_given(
    desk: DeskWindow, clock: scenes.StillClock
) -> None:
    before = desk.canvas.now_x
    clock.when = scenes.at(0, "22:36")
    desk.tick()
    moved = (desk.canvas.now_x - before) * desk.canvas.scale.seconds_per_pixel
    assert moved == pytest.approx(3 * 3600.0)


def test_dark_and_light_repaint_every_part(qtbot: QtBot, desk: DeskWindow) -> None:
    places = ((700, 40), (400, 560), (60, 700), (1200, 780))

    def lightness() -> list[int]:
        image = desk.grab().toImage()
        return [image.pixelColor(x, y).lightness() for x, y in places]

    assert min(lightness()) > 200
    desk.verbs["dark"].trigger()
    qtbot.waitUntil(lambda: max(lightness()) < 60)
    desk.verbs["light"].trigger()
    qtbot.waitUntil(lambda: min(lightness()) > 200)


@pytest.fixture
def _briefly(monkeypatch: pytest.MonkeyPatch) -> None:
    """Look for better plans for a moment only."""
    monkeypatch.setattr(planning_process, "LOOK_SECONDS", 2)


@pytest.mark.slow
@pytest.mark.usefixtures("_briefly")
def test_planning_again_runs_apart_and_the_desk_shows_the_new_plan(
    qtbot: QtBot, desk: DeskWindow, studio_path: Path
) -> None:
    with open_studio(studio_path) as file:
        before = file.revision()
    with qtbot.waitSignal(desk.planning.planned, timeout=60_000, raising=True):
        desk.verbs["plan"].trigger()
        assert desk.planning.running
        assert not desk.title_bar.stop_button.isHidden()
    assert desk.notice.words.startswith("Planned again: ")
    assert desk.title_bar.stop_button.isHidden()
    assert desk.session is not None
    assert desk.session.revision > before
    bars = [bar for lane in desk.timeline.lanes.lanes for bar in lane.bars]
    assert any(isinstance(bar, Ribbon) and not bar.planned.poured for bar in bars)


@pytest.mark.slow
def test_good_enough_ends_the_real_search_and_its_best_plan_has_reasons(
    qtbot: QtBot, desk: DeskWindow
) -> None:
    planning = desk.planning
    with qtbot.waitSignal(planning.better, timeout=60_000, raising=True):
        desk.plan_again()
    with qtbot.waitSignal(planning.planned, timeout=60_000, raising=True):
        desk.title_bar.stop_button.click()
    assert desk.notice.words.startswith("Planned again: ")
    assert desk.session is not None
    plan = desk.session.studio.plan
    assert plan is not None
    assert plan != scenes.planned().plan
    assert all(one.reason for one in plan.outcomes if one.late_hours)


@pytest.mark.slow
@pytest.mark.usefixtures("_briefly")
def test_what_can_be_planned_is_shown_and_what_cannot_is_named(
    qtbot: QtBot, window: DeskWindow, tmp_path: Path
) -> None:
    path = tmp_path / "crowded.studio"
    studio = scenes.crowded()
    create_studio(path, studio).close()
    assert window.open_path(path)
    with qtbot.waitSignal(window.planning.planned, timeout=60_000, raising=True):
        window.verbs["plan"].trigger()
    assert window.session is not None
    plan = window.session.studio.plan
    assert plan is not None
    assert plan != studio.plan
    assert [row.piece for row in plan.unplanned] == ["d"]
    assert "Not planned: Barn door: no spot is large enough" in window.notice.words
    assert not window.notice.words.startswith("Not done")


def run_instead(window: DeskWindow, program: list[str]) -> None:
    """Let the window plan with another program."""
    window.plan_with(PlanningProcess(lambda path: [*program, str(path)]))


def test_a_failed_planning_says_why_in_a_line_and_keeps_the_plan(
    qtbot: QtBot, desk: DeskWindow
) -> None:
    script = 'print(\'{"reasons": ["There is no spot yet."]}\'); raise SystemExit(1)'
    run_instead(desk, [sys.executable, "-c", script])
    with qtbot.waitSignal(desk.planning.failed, timeout=20_000, raising=True):
        desk.plan_again()
    assert desk.notice.words == "Not done: There is no spot yet."
    assert desk.session is not None
    assert desk.session.studio == scenes.planned()


def test_a_planner_that_falls_over_never_shows_its_trace(
    qtbot: QtBot, desk: DeskWindow
) -> None:
    run_instead(desk, [sys.executable, "-c", "raise ValueError('inner')"])
    with qtbot.waitSignal(desk.planning.failed, timeout=20_000, raising=True):
        desk.plan_again()
    assert "inner" not in desk.notice.words
    assert "left as it is" in desk.notice.words


def test_a_planner_that_is_not_there_gives_a_sentence(
    qtbot: QtBot, desk: DeskWindow, tmp_path: Path
) -> None:
    run_instead(desk, [str(tmp_path / "no such program")])
    with qtbot.waitSignal(desk.planning.failed, timeout=20_000, raising=True):
        desk.plan_again()
    assert "could not start" in desk.notice.words


def test_planning_can_be_stopped(qtbot: QtBot, desk: DeskWindow) -> None:
    run_instead(desk, [sys.executable, "-c", "import time; time.sleep(60)"])
    desk.plan_again()
    with qtbot.waitSignal(desk.planning.failed, timeout=20_000, raising=True):
        desk.title_bar.stop_button.click()
    assert "stopped" in desk.notice.words
    assert not desk.planning.running


def test_closing_the_window_stops_planning_and_lets_go_of_the_file(
    desk: DeskWindow, studio_path: Path
) -> None:
    run_instead(desk, [sys.executable, "-c", "import time; time.sleep(60)"])
    desk.plan_again()
    desk.close()
    assert not desk.planning.running
    studio_path.rename(studio_path.with_suffix(".moved"))


def test_the_window_stands_before_the_studio_is_read_and_then_shows_it(
    qtbot: QtBot, window: DeskWindow, studio_path: Path
) -> None:
    window.open_soon(studio_path)
    assert window.session is None
    assert window.title_bar.line.text() == "Opening…"
    window.update()
    qtbot.waitUntil(lambda: window.session is not None)
    assert window.title_bar.name.text() == "Lantern Yard"


def test_a_bad_file_opened_at_the_start_leaves_an_empty_desk_with_the_reason(
    qtbot: QtBot, window: DeskWindow, tmp_path: Path
) -> None:
    bad = tmp_path / "bad.studio"
    bad.write_bytes(b"no studio")
    window.open_soon(bad)
    window.update()
    qtbot.waitUntil(lambda: window.title_bar.name.text() == "No studio is open")
    assert window.notice.words
    assert not window.verbs["plan"].isEnabled()


def test_a_new_studio_takes_the_systems_zone_where_none_is_given() -> None:
    name = system_zone()
    assert zone_named(name).key == name


def test_the_desk_runs_until_its_window_is_closed(
    qapp: QApplication, clock: scenes.StillClock, studio_path: Path
) -> None:
    seen: list[str] = []

    def look_and_close() -> None:
        windows = [w for w in qapp.topLevelWidgets() if isinstance(w, DeskWindow)]
        opened = next((w for w in windows if w.session is not None and w.isVisible()), None)
        if opened is not None:
            seen.append(opened.title_bar.name.text())
            opened.close()

    watch = QTimer()
    watch.timeout.connect(look_and_close)
    watch.start(20)
    assert run_desk(studio_path, clock, look=Look.LIGHT) == 0
    watch.stop()
    assert seen == ["Lantern Yard"]
