"""Seen from afar, lanes still say what is poured, where there is room for it."""

from __future__ import annotations

from itertools import pairwise
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt

from studio_planner.craft.kind_words import kind_word
from studio_planner.desktop.labels import TextStore
from studio_planner.desktop.lane_labels import LaneLabels
from studio_planner.desktop.lane_shape import CLOSE_HEIGHT, shape_for
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.nouns import with_thing
from studio_planner.services.editing.pieces import new_piece
from studio_planner.services.ribbons import Ribbon
from tests.desktop.hands_on import labels_in_view, open_sample

if TYPE_CHECKING:
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.window import DeskWindow
    from tests.desktop import scenes

pytestmark = pytest.mark.gui
CLOSE = 40.0


@pytest.fixture
def desk(
    qtbot: QtBot, window: DeskWindow, tmp_path: Path, clock: scenes.StillClock
) -> DeskWindow:
    """The window with the planned sample from its first to its last day."""
    open_sample(window, tmp_path, clock)
    window.canvas.show_plan()
    qtbot.waitUntil(lambda: window.timeline.settled)
    return window


def test_the_whole_plan_is_shown_with_names_of_coats(desk: DeskWindow) -> None:
    shape = desk.timeline.shape
    assert shape.named
    assert not shape.labelled
    texts = [label.text for _, _, label in labels_in_view(desk.timeline)]
    assert "flood" in texts
    assert "top coat" in texts
    assert all(len(text.strip("\N{HORIZONTAL ELLIPSIS}")) > 1 for text in texts)


def test_a_lane_without_pours_has_no_names_there(desk: DeskWindow) -> None:
    name = "New board"
    change = Change("Add", lambda studio: with_thing(studio, new_piece(studio, name)))
    assert desk.changes.attempt(change)
    desk.canvas.show_plan()
    timeline = desk.timeline
    assert not timeline.shape.labelled
    lane = next(one for one in timeline.lanes.lanes if one.piece.name == name)
    assert not lane.bars
    labels = LaneLabels(desk.canvas.theme, desk.canvas.fonts, desk.canvas.wall, TextStore())
    assert not list(labels.in_view(lane, 0.0, timeline.shape, desk.canvas.scale))


def test_no_two_names_of_a_lane_meet(desk: DeskWindow) -> None:
    rows: dict[float, list[tuple[float, float]]] = {}
    for left, top, label in labels_in_view(desk.timeline):
        rows.setdefault(top, []).append((left, left + label.width))
    for spans in rows.values():
        spans.sort()
        assert all(one[1] <= other[0] for one, other in pairwise(spans))


def test_what_is_cut_short_is_whole_to_the_pointer_and_to_a_screen_reader(
    desk: DeskWindow,
) -> None:
    lanes = desk.timeline.lanes
    for row, lane in enumerate(lanes.lanes):
        for column, bar in enumerate(lane.bars):
            if isinstance(bar, Ribbon):
                name = kind_word(bar.coat.kind)
                index = lanes.index(row, column)
                for role in (
                    Qt.ItemDataRole.AccessibleTextRole,
                    Qt.ItemDataRole.ToolTipRole,
                ):
                    assert name in lanes.data(index, role)


def test_names_give_way_only_where_all_lanes_fit_without_them(desk: DeskWindow) -> None:
    fonts = desk.canvas.fonts
    assert shape_for(CLOSE, fonts, 15, 500.0).named
    assert not shape_for(CLOSE, fonts, 15, 15.0 * CLOSE_HEIGHT).named
    assert shape_for(CLOSE, fonts, 100, 500.0).named
    assert not shape_for(CLOSE, fonts, 1000, 500.0).named
    assert not shape_for(5.0, fonts, 15, 500.0).named
    assert shape_for(200.0, fonts, 1000, 500.0).labelled
