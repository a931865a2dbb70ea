"""A table on a time scale: wheel, drag and keys move through time and zoom."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QAbstractButton, QAbstractItemView, QFrame, QTableView
from typing_extensions import override

if TYPE_CHECKING:
    from PySide6.QtGui import QKeyEvent, QMouseEvent, QWheelEvent
    from PySide6.QtWidgets import QHeaderView, QWidget

    from studio_planner.desktop.canvas import Canvas

ZOOM_STEP = 1.25
_NOTCH = 120.0
_DRAG_STARTS = 4


class TimeTable(QTableView):
    """Wheel scrolls, with Ctrl it zooms at the cursor, with Shift it moves through time.

    Dragging pans; + and - zoom, Home shows now, End the whole plan.
    """

    _corner: QAbstractButton | None = None

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Move the scale of `canvas`."""
        super().__init__(parent)
        self.canvas = canvas
        self._grabbed: QPoint | None = None
        self._dragging = False
        self._corner = next(iter(self.findChildren(QAbstractButton)), None)

    def set_heads(self, ruler: QHeaderView, names: QHeaderView, row_height: int) -> None:
        """Take the heads of time and of the rows, and be a table that is only looked at.

        Time has a scroll bar of its own, one bar is chosen at a time, and Tab leaves it.
        """
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalHeader(ruler)
        self.setVerticalHeader(names)
        self.setCornerButtonEnabled(False)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setTabKeyNavigation(False)
        self.setMouseTracking(True)
        names.setDefaultSectionSize(row_height)
        ruler.setMinimumSectionSize(1)
        ruler.setDefaultSectionSize(1)

    @override
    def updateGeometries(self) -> None:
        super().updateGeometries()
        if self._corner is not None:
            self._corner.hide()

    @override
    def scrollContentsBy(self, dx: int, dy: int) -> None:
        # Time has a scale and a scroll bar of its own, apart from the table's.
        super().scrollContentsBy(0, dy)
        self.viewport().update()

    def zoom_in(self) -> None:
        """Zoom in at now where it is in view, else at the chosen bar, else in the middle."""
        self.canvas.scale.zoom(ZOOM_STEP, self._zoom_x())

    def zoom_out(self) -> None:
        """Zoom out likewise."""
        self.canvas.scale.zoom(1.0 / ZOOM_STEP, self._zoom_x())

    def _zoom_x(self) -> float:
        scale, second = self.canvas.scale, self.chosen_second()
        held = [self.canvas.now_x] if second is None else [self.canvas.now_x, scale.x(second)]
        return next((x for x in held if 0.0 <= x <= scale.width), scale.width / 2.0)

    def chosen_second(self) -> float | None:
        """When the chosen thing begins [s]; None when nothing is chosen."""
        return None

    @override
    def wheelEvent(self, event: QWheelEvent) -> None:
        steps = event.angleDelta()
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.canvas.scale.zoom(ZOOM_STEP ** (steps.y() / _NOTCH), event.position().x())
        elif self._wheel_means_time(event):
            self.canvas.scale.pan(-(steps.x() or steps.y()) * 0.6)
        else:
            super().wheelEvent(event)
        event.accept()

    def _wheel_means_time(self, event: QWheelEvent) -> bool:
        steps = event.angleDelta()
        shifted = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        nothing_below = self.verticalScrollBar().maximum() == 0
        return shifted or nothing_below or abs(steps.x()) > abs(steps.y())

    @override
    def mousePressEvent(self, event: QMouseEvent) -> None:
        self._grabbed = event.position().toPoint()
        self._dragging = False
        super().mousePressEvent(event)

    @override
    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._grabbed is None or not event.buttons():
            return
        moved = event.position().toPoint() - self._grabbed
        if self._dragging or moved.manhattanLength() >= _DRAG_STARTS:
            self._dragging = True
            self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)
            self._grabbed = event.position().toPoint()
            self.canvas.scale.pan(-moved.x())
            scroll = self.verticalScrollBar()
            scroll.setValue(scroll.value() - moved.y())

    def grab_ground(self, at: QPoint | None) -> None:
        """Let the ground follow the pointer from a pixel on; None: it does not."""
        self._grabbed = at
        self._dragging = False

    @override
    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self._grabbed = None
        self._dragging = False
        self.viewport().unsetCursor()
        super().mouseReleaseEvent(event)

    @override
    def keyPressEvent(self, event: QKeyEvent) -> None:
        action = {
            Qt.Key.Key_Plus: self.zoom_in,
            Qt.Key.Key_Equal: self.zoom_in,
            Qt.Key.Key_Minus: self.zoom_out,
            Qt.Key.Key_Home: self.canvas.show_now,
            Qt.Key.Key_End: self.canvas.show_plan,
        }.get(Qt.Key(event.key()))
        if action is None or event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            super().keyPressEvent(event)
        else:
            action()
