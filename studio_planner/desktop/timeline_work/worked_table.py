"""A table in time under the hands: pours are taken, moved and dropped, by mouse and by keys."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, Qt, QTimer
from typing_extensions import override

from studio_planner.desktop.motion import moves_little

if TYPE_CHECKING:
    from PySide6.QtGui import QContextMenuEvent, QFocusEvent, QKeyEvent, QMouseEvent
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.time_table import TimeTable
    from studio_planner.desktop.timeline_work.drag import Drag
    from studio_planner.desktop.timeline_work.plan_work import PlanWork
    from studio_planner.desktop.timeline_work.work_desk import WorkDesk
    from studio_planner.services.ribbons import Bar

    _Table = TimeTable
else:
    # Signals of two Qt classes do not come together in one: only the other is one of Qt's.
    _Table = object

_TAKEN_AFTER = 4
"""Pixels that the pointer goes with a bar before that is taken; less is a click."""

_EDGE = 28
_EDGE_STEP, _EDGE_MILLISECONDS = 10.0, 30
_EDGE_LEAP, _LEAP_MILLISECONDS = 160.0, 700
"""Where little is to move the ground leaps now and then instead of gliding."""

_STEP, _LONG_STEP = 5, 60
"""Minutes that a key moves a pour by."""

_KEYS = {Qt.Key.Key_Left: -1, Qt.Key.Key_Right: 1}
_ROWS = {Qt.Key.Key_Up: -1, Qt.Key.Key_Down: 1}


class WorkedTable(_Table):
    """What makes of a table in time one from which pours are taken in the hand.

    A pour is dragged along time; with Alt and arrows it goes by five minutes, with Shift by an
    hour. Enter drops it, Esc puts it back. Empty ground pans, as the middle button and the
    space bar do anywhere.
    """

    taken_cursor = Qt.CursorShape.SizeHorCursor
    rows_mean = False
    """Whether a pour may be held over another row."""

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Draw what `canvas` shows; there is nothing to work with before `desk` is set."""
        super().__init__(canvas, parent)
        self.desk: WorkDesk | None = None
        self._pressed: QPoint | None = None
        self._offset = 0.0
        self._last = QPoint()
        self._space = False
        self._frame = QTimer(self)
        self._frame.setSingleShot(True)
        self._frame.timeout.connect(self._show_drag)
        self._edge = QTimer(self)
        self._edge.timeout.connect(self._pan_at_edge)

    @property
    def work(self) -> PlanWork:
        """What is done with the plan."""
        raise NotImplementedError

    @property
    def at_work(self) -> PlanWork | None:
        """The same; None while nothing was done."""
        raise NotImplementedError

    def bar_at(self, pos: QPoint) -> Bar | None:
        """The bar under a pixel; None where there is none to take."""
        raise NotImplementedError

    def bar_chosen(self) -> Bar | None:
        """The bar that keys take."""
        raise NotImplementedError

    def hold_over(self, drag: Drag, pos: QPoint) -> bool:  # noqa: ARG002 - a row may mean more
        """Hold a pour over what else a pixel stands for; tell whether it moved."""
        return False

    def hold_rows_on(self, drag: Drag, rows: int) -> bool:  # noqa: ARG002 - likewise
        """Hold a pour over the row some rows on; tell whether it moved."""
        return False

    def open_hand(self) -> None:
        """Nothing is in the hand any more: the pointer looks as it did."""
        self.viewport().unsetCursor()

    @property
    def held(self) -> bool:
        """Whether a pour is in the hand."""
        return self.at_work is not None and self.at_work.drag is not None

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
        bar = self.bar_at(at)
        if bar is not None:
            self.grab_ground(None)
            self._pressed = at
            self._offset = self.canvas.scale.second(at.x()) - bar.begins

    @override
    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        at = event.position().toPoint()
        if self.held and not self.work.by_keys:
            self._follow(at)
        elif self._pressed is not None and event.buttons():
            if (at - self._pressed).manhattanLength() >= _TAKEN_AFTER:
                self._take(at)
        else:
            super().mouseMoveEvent(event)

    def _take(self, at: QPoint) -> None:
        bar = None if self._pressed is None else self.bar_at(self._pressed)
        self._pressed = None
        if bar is not None and self.desk is not None and self.work.take(bar, by_keys=False):
            self.viewport().setCursor(self.taken_cursor)
            self._edge.start(_LEAP_MILLISECONDS if moves_little() else _EDGE_MILLISECONDS)
            self._follow(at)

    def _follow(self, at: QPoint) -> None:
        self._last = at
        drag = self.work.drag
        if drag is None:
            return
        moved = drag.want_second(self.canvas.scale.second(at.x()) - self._offset)
        if self.hold_over(drag, at) or moved:
            self._frame.start(0)

    def _pan_at_edge(self) -> None:
        if not self.held:
            self._edge.stop()
            return
        x, width = self._last.x(), self.canvas.scale.width
        if _EDGE <= x <= width - _EDGE:
            return
        step = _EDGE_LEAP if moves_little() else _EDGE_STEP
        self.canvas.scale.pan(-step if x < _EDGE else step)
        self._follow(self._last)

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
            self.work.show_menu(self.bar_at(event.pos()), event.globalPos())

    def _show_menu_by_key(self) -> None:
        if self.desk is not None and not self.held:
            rect = self.visualRect(self.currentIndex()) & self.viewport().rect()
            self.work.show_menu(self.bar_chosen(), self.viewport().mapToGlobal(rect.center()))

    # Keys

    @override
    def keyPressEvent(self, event: QKeyEvent) -> None:
        key, modifiers = Qt.Key(event.key()), event.modifiers()
        alt = bool(modifiers & Qt.KeyboardModifier.AltModifier)
        shifted = bool(modifiers & Qt.KeyboardModifier.ShiftModifier)
        if key == Qt.Key.Key_Space:
            self._hold_space(down=True)
        elif key in _KEYS and alt:
            self._step(_KEYS[key] * (_LONG_STEP if shifted else _STEP))
        elif key in _ROWS and alt and self.rows_mean:
            self._step_rows(_ROWS[key])
        elif key == Qt.Key.Key_F10 and shifted:
            # Not every system makes a menu event of it, as it does of the menu key.
            self._show_menu_by_key()
        elif not self._ends_the_drag(key):
            super().keyPressEvent(event)

    def _ends_the_drag(self, key: Qt.Key) -> bool:
        if self.held and key in {Qt.Key.Key_Return, Qt.Key.Key_Enter}:
            self.work.drop()
            return True
        if key == Qt.Key.Key_Escape and self.desk is not None:
            if self.held:
                self.work.put_back()
            else:
                self.desk.work_line.back()
            return True
        return False

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

    def _in_hand(self) -> Drag | None:
        """The pour in the hand; the chosen one is taken where none is."""
        bar = self.bar_chosen()
        if bar is None or self.desk is None:
            return None
        if not self.held and not self.work.take(bar, by_keys=True):
            return None
        return self.work.drag

    def _step(self, minutes: int) -> None:
        drag = self._in_hand()
        if drag is not None and drag.step(minutes):
            self._bring_into_view(drag.wanted.timestamp())
            self._show_drag()

    def _step_rows(self, rows: int) -> None:
        drag = self._in_hand()
        if drag is not None and self.hold_rows_on(drag, rows):
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

    def _show_drag(self) -> None:
        if self.held:
            self.work.say_drag()
            self.viewport().update()
