"""Journeys over the plan by spot, finding pieces, and one choice for all panes."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from studio_planner.desktop.page import Page
from tests.desktop.hands_on import LEFT, choose, open_sample, pours, studio_of
from tests.services.small_studios import kept

if TYPE_CHECKING:
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.window import DeskWindow
    from tests.desktop import scenes

pytestmark = [pytest.mark.gui, pytest.mark.journey]


@pytest.fixture
def desk(
    qtbot: QtBot, window: DeskWindow, tmp_path: Path, clock: scenes.StillClock
) -> DeskWindow:
    """The window with the planned sample, which breaks no rule, at the start of its plan."""
    open_sample(window, tmp_path, clock)
    qtbot.waitUntil(lambda: window.parts.side.hands.rows.rowCount() > 0)
    window.timeline.setFocus()
    return window


def test_the_plan_by_spot_shares_the_choice(desk: DeskWindow) -> None:
    bar = pours(desk)[3]
    choose(desk, bar)
    desk.verbs["by spot"].trigger()
    spots = desk.parts.spots
    one = spots.spots.standing(spots.currentIndex())
    assert one is not None
    assert one.piece.key == bar.lane.piece.key
    assert spots.spots.rowCount() == len(studio_of(desk).spots)
    name = spots.spots.data(spots.currentIndex(), Qt.ItemDataRole.AccessibleTextRole)
    assert one.piece.name in name
    spots.viewport().repaint()
    QTest.keyClick(spots, Qt.Key.Key_Down)
    QTest.keyClick(spots, Qt.Key.Key_Right)
    other = spots.spots.standing(spots.currentIndex())
    assert other is not None
    desk.verbs["by piece"].trigger()
    chosen = desk.timeline.lanes.bar(desk.timeline.currentIndex())
    assert chosen is not None
    assert chosen.lane.piece.key == other.piece.key


def test_a_click_on_a_box_chooses_its_piece(desk: DeskWindow) -> None:
    desk.verbs["by spot"].trigger()
    spots = desk.parts.spots
    index = spots.spots.index(0, 0)
    spots.scrollTo(index)
    rect = spots.visualRect(index)
    at = QPoint(max(rect.left(), 0) + 6, rect.center().y())
    QTest.mouseClick(spots.viewport(), LEFT, pos=at)
    assert spots.currentIndex() == spots.indexAt(at)
    assert spots.currentIndex().isValid()


def test_a_box_stands_from_the_pour_until_the_handle(desk: DeskWindow) -> None:
    desk.parts.show_by_spot()
    stands = [one for spot in desk.parts.spots.spots.spots for one in spot.stands]
    assert stands
    assert all(one.end is None or one.end > one.start for one in stands)
    assert sum(len(one.coats) for one in stands) == len(kept(studio_of(desk)).coats)


def test_ctrl_f_finds_pieces_and_esc_shows_all(desk: DeskWindow) -> None:
    every = desk.timeline.lanes.rowCount()
    desk.verbs["find"].trigger()
    line = desk.work_line
    assert line.search.hasFocus() or line.search.isVisible()
    QTest.keyClicks(line.search, "tide")
    shown = [lane.piece.name for lane in desk.timeline.lanes.lanes]
    assert shown
    assert all("tide" in name.casefold() for name in shown) or len(shown) < every
    assert line.shown.text() == f"{len(shown)} of {every} pieces"
    QTest.keyClick(line.search, Qt.Key.Key_Escape)
    assert desk.timeline.lanes.rowCount() == every
    assert line.shown.text() == ""


def test_only_late_and_only_this_week_leave_the_others_out(desk: DeskWindow) -> None:
    every = desk.timeline.lanes.rowCount()
    line = desk.work_line
    desk.verbs["find"].trigger()
    line.only_late.click()
    late = desk.timeline.lanes.rowCount()
    assert late < every
    line.only_late.click()
    line.only_week.click()
    assert 0 < desk.timeline.lanes.rowCount() <= every
    QTest.keyClicks(line.search, "no such thing")
    assert desk.timeline.lanes.rowCount() == 0
    desk.timeline.viewport().repaint()
    assert not desk.timeline.set_up_button.isVisible()
    line.find_all()
    assert desk.timeline.lanes.rowCount() == every


def test_the_side_shows_the_lane_that_is_chosen_among_those_found(desk: DeskWindow) -> None:
    desk.verbs["find"].trigger()
    last = desk.timeline.lanes.lanes[-1].piece
    QTest.keyClicks(desk.work_line.search, last.name)
    desk.timeline.setCurrentIndex(desk.timeline.lanes.index(0, 0))
    desk.parts.show_side()
    lane = desk.parts.side.section.lane
    assert lane is not None
    assert lane.piece.key == desk.timeline.lanes.lanes[0].piece.key


def test_the_chosen_piece_goes_along_to_the_pages_and_back(desk: DeskWindow) -> None:
    bar = pours(desk)[5]
    choose(desk, bar)
    desk.pages.go_to("pieces")
    page = desk.pages.page("pieces")
    assert isinstance(page, Page)
    assert page.chosen == bar.lane.piece.key
    other = pours(desk)[12].lane.piece.key
    page.choose(other)
    desk.pages.go_to("plan")
    chosen = desk.timeline.lanes.bar(desk.timeline.currentIndex())
    assert chosen is not None
    assert chosen.lane.piece.key == other
    order = studio_of(desk).orders[0]
    desk.go_to("orders", order.key)
    desk.pages.go_to("plan")
    chosen = desk.timeline.lanes.bar(desk.timeline.currentIndex())
    assert chosen is not None
    assert chosen.lane.piece.key in order.pieces


def test_what_is_looked_for_is_alone_on_its_spots(desk: DeskWindow) -> None:
    desk.verbs["by spot"].trigger()
    desk.verbs["find"].trigger()
    QTest.keyClicks(desk.work_line.search, "tide")
    standing = {one.piece.name for spot in desk.parts.spots.spots.spots for one in spot.stands}
    assert standing == {lane.piece.name for lane in desk.timeline.lanes.lanes}
    assert desk.verbs["by spot"].isChecked()
    desk.verbs["by piece"].trigger()
    assert not desk.verbs["by spot"].isChecked()
