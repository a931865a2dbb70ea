"""The timeline under the hands: bars are taken, moved and dropped, by mouse and by keys."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtCore import (
    QModelIndex,
    QPersistentModelIndex,
    QPoint,
    Qt,
    QTimer,
    Signal,
)
from PySide6.QtGui import QPainter
from typing_extensions import override

from studio_planner.desktop.timeline import Timeline
from studio_planner.desktop.tongue import translate
from studio_planner.services.moving.narrowing import Wanted, narrowed
from studio_planner.services.ribbons import Ribbon

if TYPE_CHECKING:
    from PySide6.QtGui import (
        QContextMenuEvent,
        QFocusEvent,
        QKeyEvent,
        QMouseEvent,
        QPaintEvent,
    )
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.timeline_work.plan_work import PlanWork
    from studio_planner.desktop.timeline_work.work_desk import WorkDesk
    from studio_planner.services.desk import DeskView
    from studio_planner.services.ribbons import Lane

_TAKEN_AFTER = 4
"""Pixels that the pointer goes with a bar before that is taken; less is a click."""

_EDGE = 28
_EDGE_STEP = 10.0
_EDGE_MILLISECONDS = 30
_STEP, _LONG_STEP = 5, 60
"""Minutes that a key moves a pour by."""

_Index = QModelIndex | QPersistentModelIndex
_KEYS = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}


class WorkingTimeline(Timeline):
    """Cure ribbons that can be worked with.

    A pour is dragged along its lane, with Alt and arrows it goes by five minutes, with Shift by
    an hour; Enter drops it, Esc puts it back. Empty ground pans, as the middle button and the
    space bar do anywhere.

    Signals:
        narrowed: how many lanes are shown now, and of how many.
        went_on: the maker has chosen another bar.
    """

    narrowed = Signal(int, int)
    went_on = Signal()
    _showing = True  # until there is something to choose by hand

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Draw what `canvas` shows; there is nothing to work with before `desk` is set."""
        super().__init__(canvas, parent)
        self.desk: WorkDesk | None = None
        self.wanted = Wanted()
        self.setAccessibleDescription(
            translate(
                "work",
                "One row for each piece, one cell for each coat or step. Alt with left and "
                "right moves a pour by five minutes, with Shift by an hour.",
            )
        )
        self.drawing.nothing = translate("work", "No piece is like that. Esc shows all.")
        self._pressed: QPoint | None = None
        self._offset = 0.0
        self._last_x = 0
        self._space = False
        self._frame = QTimer(self)
        self._frame.setSingleShot(True)
        self._frame.timeout.connect(self._show_drag)
        self._edge = QTimer(self)
        self._edge.setInterval(_EDGE_MILLISECONDS)
        self._edge.timeout.connect(self._pan_at_edge)
        self._showing = False

    @cached_property
    def work(self) -> PlanWork:
        """What is done with the plan; made when something is."""
        from studio_planner.desktop.timeline_work.plan_work import PlanWork  # noqa: PLC0415

        assert self.desk is not None  # noqa: S101 - set where the timeline is put into a desk
        return PlanWork(self.desk, self)

    def work_in(self, desk: WorkDesk) -> None:
        """Be worked on in a desk; what any change of its studio moves is told, too."""
        self.desk = desk
        desk.changes.changed.connect(self._changed)

    def _changed(self) -> None:
        if self.at_work is None:
            self.work.aftermath.changed()

    @property
    def at_work(self) -> PlanWork | None:
        """What is done with the plan; None while nothing was."""
        work: PlanWork | None = self.__dict__.get("work")
        return work

    @property
    def held(self) -> bool:
        """Whether a pour is in the hand."""
        return self.at_work is not None and self.at_work.drag is not None

    def chosen_bar(self) -> Ribbon | None:
        """The pour that is chosen; None where a step or nothing is."""
        bar = self.lanes.bar(self.currentIndex())
        return bar if isinstance(bar, Ribbon) else None

    @override
    def lanes_of(self, view: DeskView) -> tuple[Lane, ...]:
        return narrowed(view, self.wanted)

    def want(self, wanted: Wanted) -> None:
        """Show only the lanes that are wanted."""
        self.wanted = wanted
        self.show_lanes()

    @override
    def show_lanes(self) -> None:
        if self.at_work is not None:
            self.at_work.interrupt()
        self._showing = True
        super().show_lanes()
        self._showing = False
        view = self.canvas.view
        self.narrowed.emit(len(self.lanes.lanes), len(view.lanes) if view else 0)
        if self.at_work is not None:
            self.at_work.aftermath.view_shown()

    @override
    def currentChanged(self, current: _Index, previous: _Index) -> None:
        super().currentChanged(current, previous)
        if not self._showing:
            self.went_on.emit()

    # Mouse

    @override
    def mousePressEvent(self, event: QMouseEvent) -> None:
        at = event.position().toPoint()
        left = event.button() is Qt.MouseButton.LeftButton
        if not left or self._space:
            if event.button() is not Qt.MouseButton.RightButton:
                self.grab_ground(at)
            return
        super().mousePressEvent(event)
        index = self.indexAt(at)
        bar = self.lanes.bar(index)
        if bar is not None:
            self.grab_ground(None)
            self._pressed = at
            self._offset = self.canvas.scale.second(at.x()) - bar.begins

    @override
    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        at = event.position().toPoint()
        if self.held and not self.work.by_keys:
            self._follow(at.x())
        elif self._pressed is not None and event.buttons():
            if abs(at.x() - self._pressed.x()) >= _TAKEN_AFTER:
                self._take(at.x())
        else:
            super().mouseMoveEvent(event)

    def _take(self, x: int) -> None:
        bar = self.lanes.bar(self.currentIndex())
        self._pressed = None
        if bar is not None and self.desk is not None and self.work.take(bar, by_keys=False):
            self.viewport().setCursor(Qt.CursorShape.SizeHorCursor)
            self._edge.start()
            self._follow(x)

    def _follow(self, x: int) -> None:
        self._last_x = x
        drag = self.work.drag
        if drag is not None and drag.want_second(self.canvas.scale.second(x) - self._offset):
            self._frame.start(0)

    def _pan_at_edge(self) -> None:
        if not self.held:
            self._edge.stop()
            return
        x, width = self._last_x, self.canvas.scale.width
        if _EDGE <= x <= width - _EDGE:
            return
        self.canvas.scale.pan(-_EDGE_STEP if x < _EDGE else _EDGE_STEP)
        self._follow(x)

    @override
    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self._pressed = None
        self._edge.stop()
        super().mouseReleaseEvent(event)
        if self.held and not self.work.by_keys:
            self.work.drop()

    @override
    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        if self.desk is None or self.held:
            return
        if event.reason() is not event.Reason.Mouse:
            self._show_menu_by_key()
            return
        index = self.indexAt(event.pos())
        if index.isValid():
            self.setCurrentIndex(index)
            self.work.show_menu(event.globalPos())

    def _show_menu_by_key(self) -> None:
        if self.desk is not None and not self.held:
            rect = self.visualRect(self.currentIndex()) & self.viewport().rect()
            self.work.show_menu(self.viewport().mapToGlobal(rect.center()))

    # Keys

    @override
    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, modifiers = Qt.Key(event.key()), event.modifiers()
        if key == Qt.Key.Key_Space:
            self._hold_space(down=True)
        elif key in _KEYS and modifiers & Qt.KeyboardModifier.AltModifier:
            shifted = bool(modifiers & Qt.KeyboardModifier.ShiftModifier)
            self._step(_KEYS[key] * (_LONG_STEP if shifted else _STEP))
        elif key == Qt.Key.Key_F10 and modifiers & Qt.KeyboardModifier.ShiftModifier:
            # Not every system makes a menu event of it, as it does of the menu key.
            self._show_menu_by_key()
        elif self.held and key in {Qt.Key.Key_Return, Qt.Key.Key_Enter}:
            self.work.drop()
        elif key == Qt.Key.Key_Escape and self.desk is not None:
            self._escape(self.desk)
        else:
            super().keyPressEvent(event)

    def _escape(self, desk: WorkDesk) -> None:
        if self.held:
            self.work.put_back()
        else:
            desk.work_line.back()

    @override
    def keyReleaseEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Space and not event.isAutoRepeat():
            self._hold_space(down=False)
        super().keyReleaseEvent(event)

    def _hold_space(self, *, down: bool) -> None:
        self._space = down
        if down:
            self.viewport().setCursor(Qt.CursorShape.OpenHandCursor)
        else:
            self.viewport().unsetCursor()

    def _step(self, minutes: int) -> None:
        bar = self.lanes.bar(self.currentIndex())
        if bar is None or self.desk is None:
            return
        if not self.held and not self.work.take(bar, by_keys=True):
            return
        drag = self.work.drag
        if drag is not None and drag.step(minutes):
            self._bring_into_view(drag.wanted.timestamp())
            self._show_drag()

    def _bring_into_view(self, second: float) -> None:
        scale = self.canvas.scale
        x = scale.x(second)
        if not 0.0 <= x <= scale.width - 2 * _EDGE:
            scale.pan(x - scale.width * 0.5)

    @override
    def focusOutEvent(self, event: QFocusEvent) -> None:
        self._hold_space(down=False)
        super().focusOutEvent(event)

    # What is drawn over the ribbons

    def _show_drag(self) -> None:
        if self.held:
            self.work.say_drag()
            self.viewport().update()

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if self.at_work is not None:
            with QPainter(self.viewport()) as painter:
                self.at_work.paint(painter)
