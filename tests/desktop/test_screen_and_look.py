"""The desk on small screens, the look that is ticked, and lengths of time said honestly."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QPoint, QRect
from PySide6.QtWidgets import QApplication

from studio_planner.craft.orders import Gate
from studio_planner.craft.plans import Change, StepKind
from studio_planner.craft.saying import Saying
from studio_planner.desktop import bar_words
from studio_planner.desktop.application import (
    application,
    desk_window,
    fit_to_screen,
    system_look,
)
from studio_planner.desktop.legend import SIGNS, Sign
from studio_planner.desktop.remembered import remembered_look
from studio_planner.desktop.side_rows import promise_rows
from studio_planner.desktop.theme import Look
from studio_planner.desktop.words import lateness, length_of_time
from studio_planner.services.desk import DeskView
from studio_planner.services.ribbons import StepMark
from tests.desktop import scenes

if TYPE_CHECKING:
    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.window import DeskWindow
    from tests.desktop.scenes import StillClock


def test_the_window_is_never_larger_than_its_screen(desk: DeskWindow) -> None:
    room = desk.screen().availableGeometry()
    desk.resize(room.width() + 400, room.height() + 400)
    fit_to_screen(desk)
    assert desk.width() <= room.width()
    assert desk.height() <= room.height()
    assert desk.minimumWidth() <= room.width()


@pytest.mark.parametrize(("look", "ticked"), [(Look.DARK, "dark"), (Look.LIGHT, "light")])
def test_the_look_that_is_on_is_ticked(desk: DeskWindow, look: Look, ticked: str) -> None:
    desk.set_look(look)
    names = [name for name in ("light", "dark") if desk.verbs[name].isChecked()]
    assert names == [ticked]


def test_the_look_that_was_chosen_is_there_at_the_next_start(clock: StillClock) -> None:
    first = desk_window(clock)
    assert first.canvas.theme.look is system_look(application())
    first.verbs["dark"].trigger()
    first.close()
    again = desk_window(clock)
    assert again.canvas.theme.look is Look.DARK
    assert again.verbs["dark"].isChecked()
    again.verbs["light"].trigger()
    again.close()
    assert remembered_look() is Look.LIGHT


def test_a_look_that_is_only_the_systems_is_not_remembered(desk: DeskWindow) -> None:
    desk.set_look(Look.DARK)
    assert remembered_look() is None


@pytest.mark.parametrize(
    ("hours", "words"),
    [
        (0.5, "30 min"),
        (0.999, "59 min"),
        (5.2, "5 h 12 min"),
        (24.0, "1 day"),
        (47.9, "1 d 23 h"),
        (72.0, "3 days"),
        (87.9, "3 d 15 h"),
        (95.99, "3 d 23 h"),
    ],
)
def test_a_length_of_time_is_never_rounded_up(hours: float, words: str) -> None:
    assert length_of_time(hours) == words


@pytest.mark.parametrize(
    ("hours", "words"), [(0.001, "1 min"), (1.5, "1 h 30 min"), (95.99, "4 days")]
)
def test_lateness_is_never_nothing(hours: float, words: str) -> None:
    assert lateness(hours) == words


def test_the_section_gives_way_where_the_window_is_low(desk: DeskWindow) -> None:
    side = desk.parts.side
    side.resize(side.width(), 900)
    assert side.section.isVisibleTo(side)
    side.resize(side.width(), 320)
    assert not side.section.isVisibleTo(side)


def test_the_window_stands_in_the_middle_of_its_screen(desk: DeskWindow) -> None:
    room = desk.screen().availableGeometry()
    desk.resize(room.size() / 2)
    fit_to_screen(desk)
    assert abs(desk.geometry().center().x() - room.center().x()) <= 20
    assert abs(desk.geometry().center().y() - room.center().y()) <= 40


def test_every_part_stays_inside_the_smallest_window(qtbot: QtBot, desk: DeskWindow) -> None:
    desk.resize(640, 400)
    qtbot.waitUntil(lambda: desk.parts.side.height() < 400)
    assert (desk.width(), desk.height()) == (640, 400)
    inside = desk.rect()
    side = desk.parts.side
    for part in (desk.timeline, desk.parts.room, desk.parts.time_scroll, side.hands):
        assert inside.contains(QRect(part.mapTo(desk, QPoint()), part.size()))
    assert desk.timeline.viewport().width() > 60
    assert side.promises.mapTo(desk, QPoint()).y() < 400


def test_a_promise_that_nothing_keeps_says_when_it_leaves_at_the_soonest() -> None:
    studio = scenes.planned()
    plan = studio.plan
    assert plan is not None
    late = next(one for one in plan.outcomes if one.late_hours)
    soonest = Change(
        words=Saying("nothing else to pour, hands day and night and a warm room"),
        leaves=scenes.at(5, "16:00"),
        keeps_promise=False,
    )
    outcomes = tuple(
        replace(one, reason=Saying("cure time"), changes=(soonest,)) if one is late else one
        for one in plan.outcomes
    )
    view = DeskView(replace(studio, plan=replace(plan, outcomes=outcomes)), scenes.NOW)
    why = next(row.why for row in promise_rows(view) if row.why.startswith("Cure time."))
    assert why == (
        "Cure time. No change that was tried keeps it. Soonest Sun 13 Dec 16:00: "
        "nothing else to pour, hands day and night and a warm room."
    )


def test_zooming_in_by_menu_keeps_now_in_view(desk: DeskWindow) -> None:
    desk.canvas.show_week()
    desk.timeline.setCurrentIndex(desk.timeline.lanes.index(5, 0))
    desk.canvas.show_week()
    for _ in range(8):
        desk.verbs["nearer"].trigger()
        assert 0 <= desk.canvas.now_x <= desk.canvas.scale.width


@pytest.mark.parametrize("height", [500, 640, 780, 860])
def test_the_side_leaves_no_room_that_one_more_row_would_fill(
    desk: DeskWindow, height: int
) -> None:
    side = desk.parts.side
    side.resize(side.width(), height)
    QApplication.processEvents()
    last = side.foot if side.foot.isVisibleTo(side) else side.promises
    left = side.height() - 12 - last.geometry().bottom()
    for rows in (side.hands, side.promises):
        full = rows.height()
        if full < rows.wanted_height:
            assert rows.whole_rows_height(full + left - 12) == full


@pytest.mark.qt_log_ignore("This plugin does not support", extend=True)
@pytest.mark.parametrize("look", [Look.LIGHT, Look.DARK])
def test_the_legend_draws_every_sign_unlike_the_others(desk: DeskWindow, look: Look) -> None:
    desk.set_look(look)
    desk.verbs["legend"].trigger()
    assert desk.others.legend.isVisible()
    signs = desk.others.legend.findChildren(Sign)
    bare = Sign(desk.canvas, lambda _painter, _theme: None)
    pictures = [sign.grab().toImage() for sign in (*signs, bare)]
    assert len(pictures) == len(SIGNS) + 1
    assert all(a != b for i, a in enumerate(pictures) for b in pictures[:i])
    desk.others.legend.close()
    assert desk.isVisible()


@pytest.mark.parametrize("height", [420, 500, 560, 640, 700, 780, 860])
def test_no_row_of_the_side_lies_upon_another(desk: DeskWindow, height: int) -> None:
    side = desk.parts.side
    side.resize(side.width(), height)
    QApplication.processEvents()
    for rows in (side.hands, side.promises):
        rects = [rows.visualRect(rows.rows.index(row)) for row in range(rows.rows.rowCount())]
        hints = [
            rows.sizeHintForIndex(rows.rows.index(row)).height() for row in range(len(rects))
        ]
        assert [rect.height() for rect in rects] == hints
        assert all(a.bottom() < b.top() for a, b in pairwise(rects))


def test_packing_for_a_market_is_called_so_on_its_bar() -> None:
    studio = scenes.planned()
    orders = tuple(replace(order, gate=Gate.DISPLAY) for order in studio.orders)
    view = DeskView(replace(studio, orders=orders), scenes.NOW)
    steps = [bar for lane in view.lanes for bar in lane.bars if isinstance(bar, StepMark)]
    packs = [bar for bar in steps if bar.planned.kind is StepKind.PACK]
    assert packs
    assert all(bar_words.name(bar).endswith(", pack for display") for bar in packs)
