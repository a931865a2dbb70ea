"""Hands for journeys over Room and shelf: typing, dragging, and what the studio is then."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtTest import QTest

from studio_planner.desktop.pages.room_section import RoomSection
from studio_planner.desktop.pages.studio_page import StudioPage
from studio_planner.services.editing.changes import Change

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.craft.places import Place
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.forms.field import Field
    from studio_planner.desktop.room_pages.air_curve import AirCurve
    from studio_planner.desktop.window import DeskWindow


LEFT = Qt.MouseButton.LeftButton


def section_of(desk: DeskWindow) -> RoomSection:
    """Bring the section to the front; nothing is planned by itself."""
    desk.changes.plans_by_itself = False
    desk.go_to("studio", "room")
    page = desk.pages.page("studio")
    assert isinstance(page, StudioPage)
    found = page.section("room")
    assert isinstance(found, RoomSection)
    return found


def studio_of(desk: DeskWindow) -> Studio:
    assert desk.session is not None
    return desk.session.studio


def room_of(desk: DeskWindow) -> Place:
    return studio_of(desk).places[0]


def change(desk: DeskWindow, make: Callable[[Studio], Studio]) -> None:
    assert desk.changes.attempt(Change("a change", make))


def type_into(field: Field, text: str) -> None:
    editor = field.focusProxy()
    assert editor is not None
    editor.setFocus()
    QTest.keyClick(editor, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
    QTest.keyClicks(editor, text)
    QTest.keyClick(editor, Qt.Key.Key_Return)


def point_at(curve: AirCurve, index: int) -> QPoint:
    spot = next(s for s in curve.axes.spots(curve.pattern) if s.index == index and not s.damp)
    return QPointF(spot.x, spot.y).toPoint()


def drag(curve: AirCurve, start: QPoint, along: int, up: int, *, drop: bool = True) -> None:
    end = start + QPoint(along, -up)
    QTest.mousePress(curve, LEFT, pos=start)
    QTest.mouseMove(curve, start + QPoint(along // 2, -up // 2))
    QTest.mouseMove(curve, end)
    if drop:
        QTest.mouseRelease(curve, LEFT, pos=end)
