"""The plan in small windows: lanes are named and read, what is beside them is a key away."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from studio_planner.desktop.application import application
from studio_planner.desktop.canvas import Canvas
from studio_planner.desktop.fonts import fonts_from
from studio_planner.desktop.lane_shape import CLOSE_HEIGHT, HAIRLINE_HEIGHT, shape_for
from studio_planner.desktop.page_keys import ORDERS
from studio_planner.desktop.theme import LIGHT
from studio_planner.desktop.time_scale import DAY_SECONDS
from tests.desktop import scenes

if TYPE_CHECKING:
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.window import DeskWindow

SMALL = [(640, 400), (853, 533)]


def opened(qtbot: QtBot, window: DeskWindow, path: Path, size: tuple[int, int]) -> None:
    """Open a studio in a window that has been so large before."""
    window.resize(*size)
    qtbot.waitUntil(lambda: (window.width(), window.height()) == size)
    assert window.open_path(path)
    qtbot.waitUntil(lambda: window.timeline.settled)


@pytest.mark.parametrize("size", SMALL)
def test_a_studio_opens_on_days_that_can_be_read(
    qtbot: QtBot, window: DeskWindow, studio_path: Path, size: tuple[int, int]
) -> None:
    opened(qtbot, window, studio_path, size)
    scale = window.canvas.scale
    assert 1.9 * DAY_SECONDS < scale.end - scale.origin < 2.1 * DAY_SECONDS
    assert 0 < window.canvas.now_x < scale.width / 3
    shape = window.timeline.shape
    assert shape.labelled
    assert shape.named


@pytest.mark.parametrize("size", [(1280, 800), (1440, 900)])
def test_a_large_window_opens_on_the_week(
    qtbot: QtBot, window: DeskWindow, studio_path: Path, size: tuple[int, int]
) -> None:
    opened(qtbot, window, studio_path, size)
    scale = window.canvas.scale
    assert 5.8 * DAY_SECONDS < scale.end - scale.origin < 6.2 * DAY_SECONDS


@pytest.mark.parametrize("size", SMALL)
def test_the_lanes_of_a_whole_plan_are_high_enough_for_names(
    qtbot: QtBot, window: DeskWindow, studio_path: Path, size: tuple[int, int]
) -> None:
    opened(qtbot, window, studio_path, size)
    window.verbs["whole"].trigger()
    qtbot.waitUntil(lambda: window.timeline.shape.height >= CLOSE_HEIGHT)
    qtbot.waitUntil(lambda: window.timeline.verticalHeader().sectionSize(0) >= CLOSE_HEIGHT)


def test_days_that_are_asked_for_before_there_is_room_are_shown_once_there_is() -> None:
    canvas = Canvas(LIGHT, fonts_from(application().font()), scenes.NOW)
    canvas.show_first()
    canvas.set_width(400)
    assert canvas.scale.end - canvas.scale.origin == pytest.approx(2 * DAY_SECONDS)


def test_only_few_lanes_on_a_narrow_axis_are_kept_from_being_hairlines(
    desk: DeskWindow,
) -> None:
    fonts = desk.canvas.fonts
    assert shape_for(5.0, fonts, 15, 500.0, 430.0).height == CLOSE_HEIGHT
    assert shape_for(5.0, fonts, 15, 500.0, 754.0).height == HAIRLINE_HEIGHT
    assert shape_for(5.0, fonts, 1000, 500.0, 430.0).height == HAIRLINE_HEIGHT


@pytest.mark.parametrize("size", SMALL)
def test_in_a_low_window_the_room_gives_way_to_the_lanes(
    qtbot: QtBot, window: DeskWindow, studio_path: Path, size: tuple[int, int]
) -> None:
    opened(qtbot, window, studio_path, size)
    qtbot.waitUntil(lambda: not window.parts.room.isVisible())
    lanes = window.timeline.viewport().height() / window.timeline.shape.height
    assert lanes >= 3


def test_in_a_small_window_hands_next_come_and_go_by_a_key(
    qtbot: QtBot, window: DeskWindow, studio_path: Path
) -> None:
    opened(qtbot, window, studio_path, (640, 400))
    hands = window.parts.side.hands
    qtbot.waitUntil(lambda: not hands.isVisible())
    window.verbs["side"].trigger()
    qtbot.waitUntil(lambda: hands.isVisible() and hands.rows.rowCount() > 0)
    qtbot.waitUntil(hands.hasFocus)
    assert window.width() == 640
    window.verbs["side"].trigger()
    qtbot.waitUntil(lambda: not hands.isVisible())


def test_the_side_that_was_asked_for_stays_when_the_window_changes(
    qtbot: QtBot, desk: DeskWindow
) -> None:
    hands = desk.parts.side.hands
    desk.verbs["side"].trigger()
    qtbot.waitUntil(lambda: not hands.isVisible())
    desk.resize(1300, 820)
    qtbot.waitUntil(lambda: desk.parts.width() == 1300)
    assert not hands.isVisible()
    desk.go_to(ORDERS)
    desk.verbs["side"].trigger()
    qtbot.waitUntil(hands.isVisible)
