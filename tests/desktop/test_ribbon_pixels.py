"""The ribbon on the screen against the clock: its colour is the share of the next stage."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest
from PySide6.QtGui import QColor

from studio_planner.desktop.canvas import Canvas
from studio_planner.desktop.fonts import fonts_from
from studio_planner.desktop.theme import DARK, LIGHT, Theme
from studio_planner.desktop.timeline import Timeline
from studio_planner.science.clocks import StageClock
from studio_planner.science.stages import Edge, Stage
from studio_planner.services.desk import DeskView
from studio_planner.services.film_shades import TONES
from studio_planner.services.ribbons import Ribbon
from tests.desktop import scenes

if TYPE_CHECKING:
    from PySide6.QtWidgets import QApplication
    from pytestqt.qtbot import QtBot

_HOURS = (3.5, 6.0, 11.0, 21.0, 33.0)
"""Five times after the block's end: wet, tacky, and on towards full cure."""


def timeline_on(qtbot: QtBot, app: QApplication, theme: Theme, view: DeskView) -> Timeline:
    canvas = Canvas(theme, fonts_from(app.font()), scenes.NOW)
    timeline = Timeline(canvas)
    qtbot.addWidget(timeline)
    timeline.resize(1400, 500)
    canvas.show_view(view)
    timeline.show_lanes()
    timeline.show()
    qtbot.waitExposed(timeline)
    qtbot.waitUntil(lambda: timeline.settled)
    return timeline


def expected_tone(ribbon: Ribbon, second: float) -> float:
    """The tone by the stage clocks alone, from the laws, the room and the block."""
    product, timing = ribbon.product, ribbon.lane.timing
    history = timing.history("room")
    spread, mixed = ribbon.planned.end.timestamp(), ribbon.start.timestamp()
    found = []
    for stage in (stage for stage in TONES if product.law(stage) is not None):
        law = product.law(stage)
        assert law is not None
        clock = StageClock(law, history, Edge.LIKELY, product.minimum_celsius)
        since = mixed if stage is Stage.WORKING_TIME else spread
        reached = clock.reached(since)
        found.append((float("inf") if reached is None else reached, clock, since, stage))
    found.sort(key=lambda item: item[0])
    tones = [0.0, *sorted(TONES[item[3]] for item in found)]
    for index, (reached, clock, since, _) in enumerate(found):
        if second < reached:
            begins = max(spread, found[index - 1][0]) if index else spread
            begun = clock.degree(since, begins)
            way = (clock.degree(since, second) - begun) / (1.0 - begun)
            return tones[index] + (tones[index + 1] - tones[index]) * way
    return 1.0


def distance(one: QColor, other: QColor) -> int:
    parts = (QColor.red, QColor.green, QColor.blue)
    return max(abs(part(one) - part(other)) for part in parts)


@pytest.mark.parametrize("theme", [LIGHT, DARK], ids=["light", "dark"])
@pytest.mark.parametrize(
    "room", [scenes.constant_room(), scenes.night_room()], ids=["even", "nights"]
)
def test_five_times_on_the_screen_have_the_shade_of_the_clock(
    qtbot: QtBot, qapp: QApplication, theme: Theme, room: object
) -> None:
    studio = scenes.planned(room)  # type: ignore[arg-type]
    assert studio.plan is not None
    # The night line and the markers of steps and flags would cover the film.
    plan = replace(studio.plan, steps=(), ready=())
    timeline = timeline_on(qtbot, qapp, theme, DeskView(replace(studio, plan=plan), scenes.NOW))
    row = [piece.key for piece in scenes.PIECES].index("k")
    ribbon = timeline.lanes.lanes[row].bars[0]
    assert isinstance(ribbon, Ribbon)
    end = ribbon.planned.end.timestamp()
    scale = timeline.canvas.scale
    scale.show(end - 3600.0, 150.0)
    image = timeline.viewport().grab().toImage()
    ratio = image.devicePixelRatio()
    shape = timeline.shape
    y = (timeline.top_of(row) + shape.film + shape.film_height - 2.5) * ratio
    for hours in _HOURS:
        x = round(scale.x(end + hours * 3600.0))
        tone = expected_tone(ribbon, scale.second(x + 0.5))
        assert tone == pytest.approx(ribbon.film.shade_at(scale.second(x + 0.5)).tone, abs=1e-6)
        seen = image.pixelColor(round(x * ratio), round(y))
        assert distance(seen, theme.film_colour(tone)) <= 4, (hours, seen.name())


def test_a_film_grows_only_harder_from_left_to_right(qtbot: QtBot, qapp: QApplication) -> None:
    view = DeskView(scenes.planned(), scenes.NOW)
    timeline = timeline_on(qtbot, qapp, LIGHT, view)
    ribbon = timeline.lanes.lanes[5].bars[0]
    assert isinstance(ribbon, Ribbon)
    tones = [tone for _, tone in ribbon.tones]
    assert tones == sorted(tones)
    assert tones[0] <= 0.1
    assert tones[-1] == pytest.approx(1.0)


def test_an_hour_in_which_nobody_works_is_hatched_in_the_doorway(
    qtbot: QtBot, qapp: QApplication
) -> None:
    view = DeskView(scenes.planned(), scenes.NOW)
    timeline = timeline_on(qtbot, qapp, LIGHT, view)
    ribbon = timeline.lanes.lanes[0].bars[0]
    assert isinstance(ribbon, Ribbon)
    assert ribbon.doorway is not None
    start, end = ribbon.doorway.nobody[0]
    working = ribbon.lane.hands.spans
    assert not any(a < end and b > start for a, b in working)
    scale = timeline.canvas.scale
    scale.show(start.timestamp() - 3600.0, 60.0)
    image = timeline.viewport().grab().toImage()
    y = round(timeline.top_of(0) + timeline.shape.lintel + 4)
    inside = {
        image.pixelColor(round(scale.x(start.timestamp())) + x, y).name() for x in range(4, 60)
    }
    assert LIGHT.window_wash in inside
    assert len(inside) > 1
