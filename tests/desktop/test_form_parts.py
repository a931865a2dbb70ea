"""The kit of forms: fields that are taken up, days in rows, what is folded away."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QScrollArea, QVBoxLayout, QWidget

from studio_planner.craft.settings import Units
from studio_planner.desktop.canvas import Canvas
from studio_planner.desktop.fonts import fonts_from
from studio_planner.desktop.forms.days_field import DaysField
from studio_planner.desktop.forms.fields import TextField
from studio_planner.desktop.forms.fold import Fold
from studio_planner.desktop.forms.noun_list import NounList
from studio_planner.desktop.layouts import empty
from studio_planner.desktop.theme import LIGHT
from studio_planner.desktop.wrapping import Wrapping
from tests.desktop import scenes

if TYPE_CHECKING:
    from pytestqt.qtbot import QtBot

pytestmark = pytest.mark.gui


@pytest.fixture
def canvas(paper: QWidget) -> Canvas:
    return Canvas(LIGHT, fonts_from(paper.font()), scenes.NOW)


@pytest.fixture
def paper(qtbot: QtBot) -> QWidget:
    """A window without a layout, on which a part lies as large as it is told to."""
    window = QWidget()
    qtbot.addWidget(window)
    window.resize(1000, 600)
    window.show()
    qtbot.waitActive(window)
    return window


def lay(part: QWidget, width: int, height: int) -> None:
    part.resize(width, height)
    part.show()
    QApplication.processEvents()


def test_an_empty_list_has_its_verb_under_the_words_that_ask_for_it(
    paper: QWidget, canvas: Canvas
) -> None:
    things = NounList(canvas, "Pieces", "No piece yet. Add one.", paper)
    lay(things, 240, 600)
    assert things.add_button.y() < 100
    assert not things.copy_button.isVisible()
    things.show_things([("a", "Tray", "")])
    QApplication.processEvents()
    assert things.add_button.y() > 540
    assert things.copy_button.isVisible()


def test_what_has_no_room_in_a_row_goes_on_below(paper: QWidget) -> None:
    row, wrapping = QWidget(paper), Wrapping()
    labels = [QLabel("a word or two", row) for _ in range(4)]
    wrapping.add(*labels)
    row.setLayout(wrapping)
    wide = labels[0].sizeHint().width()
    lay(row, 5 * wide, 200)
    assert {label.y() for label in labels} == {0}
    lay(row, 2 * wide + 20, 200)
    assert len({label.y() for label in labels}) == 2
    labels[0].hide()
    lay(row, wide, 200)
    assert wrapping.heightForWidth(wide) == 3 * labels[1].height() + 2 * 6


@pytest.mark.parametrize("width", [240, 900])
def test_a_week_to_tick_stands_in_as_few_rows_as_there_is_room_for(
    paper: QWidget, canvas: Canvas, width: int
) -> None:
    days = DaysField(canvas, "Days", paper)
    lay(days, width, 120)
    assert len({box.y() for box in days.boxes}) == (2 if width < 400 else 1)
    for box in days.boxes:
        assert box.width() >= box.sizeHint().width(), box.text()
    days.show_value({0, 6})
    QTest.mouseClick(days.boxes[2], Qt.MouseButton.LeftButton)
    assert days.value() == {0, 2, 6}


def test_days_begin_when_the_weeks_of_the_studio_begin(paper: QWidget, canvas: Canvas) -> None:
    days = DaysField(canvas, "Days", paper)
    days.set_units(Units(week_starts=6))
    lay(days, 900, 120)
    in_order = sorted(range(7), key=lambda day: days.boxes[day].x())
    assert in_order == [6, 0, 1, 2, 3, 4, 5]


def test_a_field_that_is_taken_up_comes_into_view_and_gives_way_to_typing(
    paper: QWidget, canvas: Canvas
) -> None:
    scroll, inside = QScrollArea(paper), QWidget()
    column = QVBoxLayout(inside)
    column.addSpacing(2000)
    field = TextField(canvas, "Name")
    field.show_value("New piece")
    column.addWidget(field)
    scroll.setWidget(inside)
    lay(scroll, 300, 200)
    assert field.visibleRegion().isEmpty()
    field.take_up()
    assert not field.editor.visibleRegion().isEmpty()
    assert field.editor.hasFocus()
    assert not field.in_hand
    QTest.keyClicks(field.editor, "Moon")
    assert field.value() == "Moon"
    assert field.in_hand


def test_a_fold_says_what_it_hides_and_shows_it_by_key_or_click(paper: QWidget) -> None:
    inside = QVBoxLayout()
    figure = QLabel("25 W/K")
    inside.addWidget(figure)
    fold = Fold("Further figures", inside, paper)
    lay(fold, 300, 200)
    assert not figure.isVisible()
    assert "Further figures" in fold.button.text()
    assert fold.button.accessibleName() == "Further figures"
    fold.button.setFocus()
    QTest.keyClick(fold.button, Qt.Key.Key_Space)
    assert figure.isVisible()
    QTest.mouseClick(fold.button, Qt.MouseButton.LeftButton)
    assert not figure.isVisible()
    fold.unfold()
    assert figure.isVisible()


def test_a_layout_is_emptied_of_widgets_and_stretches(paper: QWidget) -> None:
    holder = QWidget(paper)
    layout = QVBoxLayout(holder)
    layout.addWidget(QLabel("one"))
    layout.addStretch(1)
    layout.addWidget(QLabel("two"))
    empty(layout)
    assert layout.count() == 0
    assert not [label for label in holder.findChildren(QLabel) if label.isVisibleTo(holder)]
