"""Hands for journeys over the timeline: they find pours, choose them, and drag them."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from studio_planner.services.moving.judging import Judge
from studio_planner.services.ribbons import Ribbon, StepMark
from studio_planner.storage.studio_file import create_studio
from tests.services.small_studios import kept, planned_once

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.lane_labels import SeenLabel
    from studio_planner.desktop.timeline import Timeline
    from studio_planner.desktop.timeline_work.drag import Drag
    from studio_planner.desktop.window import DeskWindow
    from tests.desktop import scenes

LEFT = Qt.MouseButton.LeftButton


def open_sample(window: DeskWindow, folder: Path, clock: scenes.StillClock) -> None:
    """Open the planned sample at the start of its plan; nothing is planned by itself."""
    studio = planned_once()
    path = folder / "tallow.studio"
    create_studio(path, studio).close()
    clock.when = kept(studio).start
    window.changes.plans_by_itself = False
    assert window.open_path(path)


def studio_of(desk: DeskWindow) -> Studio:
    assert desk.session is not None
    return desk.session.studio


def drag_of(desk: DeskWindow) -> Drag:
    drag = desk.timeline.work.drag
    assert drag is not None
    return drag


def free_pour(desk: DeskWindow) -> tuple[Ribbon, int]:
    """A pour to come and the minutes that it can be moved by, as near as there are."""
    session = desk.session
    assert session is not None
    for bar in pours(desk):
        judge = Judge(session.view, bar.planned)
        for minutes in (5, -5, 10, -10, 15, -15, 30, -30):
            drag = judge.at(bar.start + minutes * timedelta(minutes=1))
            if drag.allowed:
                return bar, minutes
    raise AssertionError


def pours(desk: DeskWindow) -> list[Ribbon]:
    lanes = desk.timeline.lanes.lanes
    bars = [bar for lane in lanes for bar in lane.bars if isinstance(bar, Ribbon)]
    return [bar for bar in bars if not bar.planned.poured]


def choose(desk: DeskWindow, bar: Ribbon | StepMark) -> None:
    timeline = desk.timeline
    row = next(i for i, ln in enumerate(timeline.lanes.lanes) if bar in ln.bars)
    column = timeline.lanes.lanes[row].bars.index(bar)
    timeline.setCurrentIndex(timeline.lanes.index(row, column))
    timeline.setFocus()


def bar_again(desk: DeskWindow, bar: Ribbon) -> Ribbon:
    """The same pour in the studio as it is now."""
    key = (bar.lane.piece.key, bar.coat.key)
    return next(one for one in pours(desk) if (one.lane.piece.key, one.coat.key) == key)


def grip(desk: DeskWindow, bar: Ribbon) -> QPoint:
    """A pixel on the block of the chosen pour."""
    rect = desk.timeline.visualRect(desk.timeline.currentIndex())
    assert isinstance(desk.timeline.lanes.bar(desk.timeline.currentIndex()), Ribbon)
    x = desk.canvas.scale.x(bar.begins)
    return QPoint(round(x) + 2, rect.center().y() + 4)


def move(desk: DeskWindow, at: QPoint, buttons: Qt.MouseButton = LEFT) -> None:
    viewport = desk.timeline.viewport()
    where = QPointF(at)
    QApplication.sendEvent(
        viewport,
        QMouseEvent(
            QEvent.Type.MouseMove,
            where,
            viewport.mapToGlobal(where),
            Qt.MouseButton.NoButton,
            buttons,
            Qt.KeyboardModifier.NoModifier,
        ),
    )


def drag_by(desk: DeskWindow, bar: Ribbon, minutes: int) -> QPoint:
    """Press on a pour and move the mouse as far as those minutes are wide; do not let go."""
    choose(desk, bar)
    desk.canvas.scale.show(bar.begins - 6 * 3600.0, 60.0)
    start = grip(desk, bar)
    QTest.mousePress(desk.timeline.viewport(), LEFT, pos=start)
    end = start + QPoint(round(minutes * 60.0 / desk.canvas.scale.seconds_per_pixel), 0)
    for step in (1, 2, 3):
        move(desk, start + (end - start) * step / 3 + QPoint(0, step % 2))
    return end


def labels_in_view(timeline: Timeline) -> list[SeenLabel]:
    """Every label that is in view, with its left and top edge in the viewport."""
    return timeline.drawing.labels(timeline._stand())
