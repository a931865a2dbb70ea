"""What a screen reader and a tired eye get: names, descriptions, and no clipped word."""

from __future__ import annotations

from itertools import pairwise
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QRect, QRectF, Qt
from PySide6.QtGui import QAccessible, QFontMetrics
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel, QWidget

from studio_planner.desktop.fonts import fonts_from
from studio_planner.desktop.headers import lane_head_lines
from studio_planner.desktop.labels import LabelRow, TextStore
from studio_planner.desktop.measures import LANE_HEAD_WIDTH
from studio_planner.desktop.page_keys import (
    LOG,
    ORDERS,
    PIECES,
    PLAN,
    PRODUCTS,
    QUESTIONS,
    STOCK,
    STUDIO,
)
from studio_planner.desktop.section_view import spread
from studio_planner.desktop.side_lists import RowList
from tests.desktop import scenes
from tests.desktop.hands_on import labels_in_view

if TYPE_CHECKING:
    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.window import DeskWindow

PAGES = (PLAN, ORDERS, PIECES, PRODUCTS, STUDIO, QUESTIONS, LOG, STOCK)


def show_page(qtbot: QtBot, desk: DeskWindow, page: str) -> None:
    """Bring a page to the front, and wait until everything on it has found its place."""
    desk.go_to(page)
    qtbot.waitUntil(lambda: desk.pages.current_key == page)
    for _ in range(3):
        QApplication.processEvents()


_TEXT = Qt.ItemDataRole.AccessibleTextRole
_DESCRIPTION = Qt.ItemDataRole.AccessibleDescriptionRole


@pytest.mark.parametrize("page", PAGES)
def test_everything_that_takes_the_focus_has_a_name(
    qtbot: QtBot, desk: DeskWindow, page: str
) -> None:
    show_page(qtbot, desk, page)
    focusable = [
        widget
        for widget in desk.findChildren(QWidget)
        if widget.focusPolicy() is not Qt.FocusPolicy.NoFocus and widget.isVisibleTo(desk)
    ]
    assert len(focusable) >= 4
    nameless = [
        widget
        for widget in focusable
        if not (widget.accessibleName() or getattr(widget, "text", str)())
    ]
    assert not nameless


def test_every_bar_has_a_name_and_a_description(desk: DeskWindow) -> None:
    lanes = desk.timeline.lanes
    names = []
    for row, lane in enumerate(lanes.lanes):
        for column in range(len(lane.bars)):
            index = lanes.index(row, column)
            name, description = lanes.data(index, _TEXT), lanes.data(index, _DESCRIPTION)
            assert lane.piece.name in name
            assert "Dec" in description
            names.append((row, name, description))
    assert len(set(names)) == len(names)


def test_a_ribbons_description_tells_hands_joint_stages_and_window(desk: DeskWindow) -> None:
    lanes = desk.timeline.lanes
    text = lanes.data(lanes.index(0, 0), _DESCRIPTION)
    for part in (
        "Hands Tue 8 Dec 18:20 to 19:05, Ada",
        "spot B1",
        "tack-free",
        "opens",
        "Nobody",
    ):
        assert part in text


def test_a_screen_reader_finds_a_bar_where_it_is_drawn(desk: DeskWindow) -> None:
    timeline = desk.timeline
    table = QAccessible.queryAccessibleInterface(timeline)
    assert table is not None
    index = timeline.lanes.index(3, 0)
    name = timeline.lanes.data(index, _TEXT)
    found = [
        child
        for child in (table.child(i) for i in range(table.childCount()))
        if child.text(QAccessible.Text.Name) == name
    ]
    assert len(found) == 1
    drawn = timeline.visualRect(index)
    corner = timeline.viewport().mapToGlobal(drawn.topLeft())
    assert found[0].rect().topLeft() == corner


def test_rows_of_the_side_speak_whole_sentences(desk: DeskWindow) -> None:
    spoken = [row.spoken for row in desk.parts.side.promises.rows.rows]
    assert any("Moon tray, 3 days late" in text for text in spoken)
    assert any("kept" in text for text in spoken)
    assert all(row.spoken for row in desk.parts.side.hands.rows.rows)


def test_the_room_and_the_section_say_what_they_draw(desk: DeskWindow) -> None:
    desk.timeline.choose_piece("m")
    assert "dew-point margin" in desk.parts.room.accessibleDescription()
    assert "glitter 0.5 mm" in desk.parts.side.section.accessibleDescription()
    assert "above the dew point" in desk.parts.room.reading_at(600)
    assert desk.parts.room.reading_at(3) == ""


def test_the_sections_labels_do_not_meet_and_stay_inside(desk: DeskWindow) -> None:
    section = desk.parts.side.section
    line = QFontMetrics(desk.canvas.fonts.small).height()
    for piece in scenes.PIECES:
        desk.timeline.choose_piece(piece.key)
        parts = section.slices()
        tops = spread([part.top + part.height / 2.0 - line / 2.0 for part in parts], line)
        assert all(b - a >= line for a, b in pairwise(tops))
        assert tops[-1] + line <= section.height()


@pytest.mark.parametrize("look", ["light", "dark"])
@pytest.mark.parametrize("page", PAGES)
def test_no_label_or_button_is_clipped_at_1280_by_800(
    qtbot: QtBot, desk: DeskWindow, page: str, look: str
) -> None:
    desk.verbs[look].trigger()
    show_page(qtbot, desk, page)
    for label in desk.findChildren(QLabel):
        if label.isVisibleTo(desk) and label.text():
            need = label.fontMetrics().boundingRect(
                QRect(0, 0, label.width(), 10_000), _wrap(label), label.text()
            )
            assert need.width() <= label.width() + 1, label.text()
            assert need.height() <= label.height() + 1, label.text()
    for button in desk.findChildren(QAbstractButton):
        if button.isVisibleTo(desk) and button.text():
            assert button.fontMetrics().horizontalAdvance(button.text()) < button.width()


def _wrap(label: QLabel) -> int:
    return int(Qt.TextFlag.TextWordWrap) if label.wordWrap() else 0


def test_the_names_of_pieces_fit_their_head(desk: DeskWindow) -> None:
    fonts = desk.canvas.fonts
    for lane in desk.timeline.lanes.lanes:
        name, *rest = lane_head_lines(lane)
        assert QFontMetrics(fonts.bold).horizontalAdvance(name) <= LANE_HEAD_WIDTH - 20
        for line in rest:
            assert QFontMetrics(fonts.small).horizontalAdvance(line) <= LANE_HEAD_WIDTH - 20


def test_lists_show_whole_rows_only(desk: DeskWindow) -> None:
    for rows in (desk.parts.side.hands, desk.parts.side.promises):
        assert isinstance(rows, RowList)
        heights = [
            rows.sizeHintForIndex(rows.rows.index(row)).height()
            for row in range(rows.rows.rowCount())
        ]
        edges = [sum(heights[: count + 1]) for count in range(len(heights))]
        assert rows.height() in edges


def test_labels_on_the_timeline_never_meet_or_cross_a_post(desk: DeskWindow) -> None:
    desk.canvas.show_week()
    timeline = desk.timeline
    seen = labels_in_view(timeline)
    assert len(seen) > 12
    shape, line = timeline.shape, desk.canvas.fonts.small_height
    rects = [QRectF(left, top, label.width, line) for left, top, label in seen]
    for index, rect in enumerate(rects):
        meeting = [seen[i][2].text for i in range(index) if rects[i].intersects(rect)]
        assert not meeting, seen[index][2].text
        above = (rect.top() - timeline.top_of(0)) % shape.height
        assert above + line <= shape.lintel or above >= shape.film_bottom


def test_a_row_refuses_a_label_where_another_lies(qapp: QApplication) -> None:
    fonts = fonts_from(qapp.font())
    row = LabelRow(TextStore(), 0.0, 12.0)
    ink = qapp.palette().text().color()
    assert row.place(10.0, "handle", fonts.small, ink)
    assert not row.place(20.0, "pack", fonts.small, ink)
    assert not row.place_before(4.0, "x", fonts.small, ink)
    assert not row.place(200.0, "", fonts.small, ink)
