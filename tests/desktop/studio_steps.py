"""What a maker does on the page of the studio, as tests do it."""

from __future__ import annotations

from typing import TYPE_CHECKING, TypeVar

from PySide6.QtCore import QPointF, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QComboBox, QWidget

from studio_planner.desktop.page_keys import STUDIO
from studio_planner.desktop.pages.studio_page import (
    StudioPage,
)

if TYPE_CHECKING:
    from studio_planner.craft.hands import Person
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.forms.field import Field
    from studio_planner.desktop.studio_pages.week_drawing import WeekDrawing
    from studio_planner.desktop.window import DeskWindow


_Section = TypeVar("_Section", bound=QWidget)


def studio_of(desk: DeskWindow) -> Studio:
    assert desk.session is not None
    return desk.session.studio


def section(desk: DeskWindow, key: str, kind: type[_Section]) -> _Section:
    desk.changes.plans_by_itself = False
    desk.go_to(STUDIO, key)
    page = desk.pages.page(STUDIO)
    assert isinstance(page, StudioPage)
    found = page.section(key)
    assert isinstance(found, kind)
    return found


def click(button: QAbstractButton) -> None:
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)


def typed(field: Field, text: str) -> None:
    editor = field.focusProxy()
    assert editor is not None
    line = editor.lineEdit() if isinstance(editor, QComboBox) else editor
    assert line is not None
    line.setFocus()
    line.selectAll()  # type: ignore[attr-defined]
    QTest.keyClicks(line, text)
    QTest.keyClick(line, Qt.Key.Key_Return)


def pulled(week: WeekDrawing, day: int, start: int, end: int) -> None:
    """Drag from one minute of a day to another, as a hand does."""
    shape = week.shape
    y = shape.row_rect(day).center().y()
    points = [
        QPointF(shape.x(minute), y).toPoint() for minute in (start, (start + end) // 2, end)
    ]
    QTest.mousePress(week, Qt.MouseButton.LeftButton, pos=points[0])
    for point in points[1:]:
        QTest.mouseMove(week, point)
    QTest.mouseRelease(week, Qt.MouseButton.LeftButton, pos=points[-1])


def person(desk: DeskWindow, key: str = "ada") -> Person:
    return next(one for one in studio_of(desk).people if one.key == key)
