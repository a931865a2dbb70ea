"""Sketches, straight drawings and tiles of the same ribbons."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from studio_planner.desktop.canvas import Canvas
from studio_planner.desktop.fonts import fonts_from
from studio_planner.desktop.theme import LIGHT
from studio_planner.desktop.timeline import Timeline
from studio_planner.services.desk import DeskView
from studio_planner.services.ribbons import Ribbon
from tests.desktop import scenes
from tests.desktop.hands_on import labels_in_view

if TYPE_CHECKING:
    from PySide6.QtGui import QColor, QImage
    from PySide6.QtWidgets import QApplication
    from pytestqt.qtbot import QtBot

    from studio_planner.craft.studio import Studio


_LONG = 30_000
"""Milliseconds that a busy computer may take to draw what is around the view."""


def timeline_of(qtbot: QtBot, app: QApplication, studio: Studio) -> Timeline:
    canvas = Canvas(LIGHT, fonts_from(app.font()), scenes.NOW)
    timeline = Timeline(canvas)
    qtbot.addWidget(timeline)
    timeline.resize(1100, 500)
    canvas.show_view(DeskView(studio, scenes.NOW))
    timeline.show_lanes()
    timeline.show()
    return timeline


def picture(timeline: Timeline) -> QImage:
    return timeline.viewport().grab().toImage()


def known(timeline: Timeline) -> list[bool]:
    bars = (bar for lane in timeline.lanes.lanes for bar in lane.bars)
    return [bar.known(fine=True) for bar in bars if isinstance(bar, Ribbon)]


def test_the_first_drawing_is_a_sketch_that_asks_no_clock(
    qtbot: QtBot, qapp: QApplication
) -> None:
    timeline = timeline_of(qtbot, qapp, scenes.planned())
    sketch = picture(timeline)
    assert not any(known(timeline))
    assert not timeline.settled
    assert labels_in_view(timeline) == []
    qtbot.waitUntil(lambda: timeline.settled)
    assert all(known(timeline))
    assert labels_in_view(timeline)
    assert picture(timeline) != sketch


@pytest.mark.parametrize("pixels_per_day", [160.0, 60.0, 20.0])
def test_tiles_show_what_is_drawn_straight(
    qtbot: QtBot, qapp: QApplication, pixels_per_day: float
) -> None:
    timeline = timeline_of(qtbot, qapp, scenes.many(300))
    qtbot.waitUntil(lambda: timeline.settled)
    scale = timeline.canvas.scale
    scale.show(scenes.NOW.timestamp(), 86_400.0 / (pixels_per_day + 1.0))
    picture(timeline)
    qtbot.waitUntil(lambda: timeline.settled and timeline.at_rest, timeout=_LONG)
    scale.show(scenes.NOW.timestamp(), 86_400.0 / pixels_per_day)
    straight = picture(timeline)  # at another zoom there is no tile yet
    assert timeline.settled
    qtbot.waitUntil(lambda: timeline.at_rest, timeout=_LONG)
    tiled = picture(timeline)
    assert tiled != straight
    differing = sum(
        differs(straight.pixelColor(x, y), tiled.pixelColor(x, y))
        for x in range(0, straight.width(), 3)
        for y in range(0, straight.height(), 3)
    )
    # Ripples and edges may begin half a pixel to one side; all films moved by one pixel would
    # be 11 to 15 % of the picture.
    assert differing < 0.06 * (straight.width() // 3) * (straight.height() // 3)


def differs(one: QColor, other: QColor) -> bool:
    """Whether colours differ by more than the shade of a film does within half a pixel."""
    return (
        abs(one.red() - other.red()) > 12
        or abs(one.green() - other.green()) > 12
        or abs(one.blue() - other.blue()) > 12
    )


def test_lanes_that_scroll_in_are_sketched_and_shaded_a_little_later(
    qtbot: QtBot, qapp: QApplication
) -> None:
    timeline = timeline_of(qtbot, qapp, scenes.many(2000))
    qtbot.waitUntil(lambda: timeline.settled and timeline.at_rest, timeout=_LONG)
    timeline.verticalScrollBar().setValue(timeline.verticalScrollBar().maximum())
    sketch = picture(timeline)
    assert not timeline.settled
    qtbot.waitUntil(lambda: timeline.settled and timeline.at_rest, timeout=_LONG)
    assert picture(timeline) != sketch


def test_what_has_scrolled_far_away_is_let_go(qtbot: QtBot, qapp: QApplication) -> None:
    timeline = timeline_of(qtbot, qapp, scenes.many(4000))
    rows = timeline.verticalScrollBar()
    for part in range(9):
        rows.setValue(rows.maximum() * part // 8)
        picture(timeline)
        qtbot.waitUntil(lambda: timeline.settled and timeline.at_rest, timeout=_LONG)
    tiles = timeline.drawing._tiles
    assert tiles is not None
    assert len(tiles._tiles) <= 3 * max(len(tiles._in_view), 24)
