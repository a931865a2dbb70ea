"""The timeline: a table with one row for a piece and one cell for a bar, painted as ribbons.

It is a table and not a bare canvas so that a screen reader finds every bar by name and place.
"""

from __future__ import annotations

from bisect import bisect_right
from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QPoint, QRect, QRectF, Qt, Signal
from PySide6.QtGui import QPainter, QRegion
from PySide6.QtWidgets import QAbstractItemView, QPushButton
from typing_extensions import override

from studio_planner.desktop.bar_walk import bar_of, first_bar, neighbour, next_bar_of
from studio_planner.desktop.headers import LaneHead, Ruler
from studio_planner.desktop.lane_model import LaneModel
from studio_planner.desktop.lane_shape import LaneShape, bar_rect, shape_for
from studio_planner.desktop.time_table import TimeTable
from studio_planner.desktop.timeline_drawing import Stand, TimelineDrawing
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtCore import QItemSelection
    from PySide6.QtGui import (
        QFocusEvent,
        QPaintEvent,
        QResizeEvent,
    )
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.desk import DeskView
    from studio_planner.services.ribbons import Bar, Lane

_Index = QModelIndex | QPersistentModelIndex
_Move = QAbstractItemView.CursorAction
_MARGIN = 48.0
_UNDER_WORDS = 18


class Timeline(TimeTable):
    """Cure ribbons of all pieces over time.

    Arrows go from bar to bar, along a lane and across to the bar nearest in time.

    Signals:
        piece_chosen: the key of the piece whose bar or name was chosen.
        set_up_asked: there is no piece yet, and the maker wants to see what is lacking.
        new_asked: no studio is open, and the maker wants to make one.
    """

    piece_chosen = Signal(str)
    set_up_asked = Signal()
    new_asked = Signal()

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Draw what `canvas` shows."""
        super().__init__(canvas, parent)
        self.lanes = LaneModel(self)
        self.set_up_button = QPushButton(translate("timeline", "Set up the studio"), self)
        self.drawing = TimelineDrawing(canvas, self)
        self._shape: LaneShape = shape_for(canvas.scale.pixels_per_day, canvas.fonts)
        self._set_up()
        self.setModel(self.lanes)
        canvas.scale.changed.connect(self._scale_changed)
        canvas.redrawn.connect(self._update_all)
        self.drawing.renewed.connect(self.viewport().update)

    def _set_up(self) -> None:
        self.setAccessibleName(translate("timeline", "Timeline"))
        self.setAccessibleDescription(
            translate("timeline", "One row for each piece, one cell for each coat or step.")
        )
        self.set_heads(
            Ruler(self.canvas, self),
            LaneHead(self.canvas, self.lanes, self),
            self._shape.height,
        )
        self.set_up_button.setMinimumHeight(28)
        self.set_up_button.hide()
        self.set_up_button.clicked.connect(self._verb_asked)

    # What is shown

    def show_lanes(self) -> None:
        """Show the lanes of the canvas's view; the chosen bar stays so where it still is."""
        kept = self.currentIndex()
        bar = self.lanes.bar(kept)
        view = self.canvas.view
        self.lanes.set_lanes(self.lanes_of(view) if view else ())
        self.drawing.show_lanes(self.lanes.lanes)
        self._fit_shape()
        if bar is not None:
            self._choose_again(bar.lane.piece.key, kept.column())
        self.set_up_button.setText(
            translate("timeline", "New studio…")
            if view is None
            else translate("timeline", "Set up the studio")
        )
        self.set_up_button.setVisible(view is None or not view.lanes)
        self._place_button()
        self.viewport().update()

    def lanes_of(self, view: DeskView) -> tuple[Lane, ...]:
        """The lanes that are shown of a view: all of them."""
        return view.lanes

    def _verb_asked(self) -> None:
        (self.new_asked if self.canvas.view is None else self.set_up_asked).emit()

    def _choose_again(self, key: str, column: int) -> None:
        rows = (row for row, lane in enumerate(self.lanes.lanes) if lane.piece.key == key)
        index = self.lanes.index(next(rows, -1), column)
        if self.lanes.bar(index) is not None:
            self.setCurrentIndex(index)

    def _place_button(self) -> None:
        # Under the words in the middle of the empty timeline.
        button, area = self.set_up_button, self.viewport().geometry()
        button.adjustSize()
        button.move(area.center().x() - button.width() // 2, area.center().y() + _UNDER_WORDS)

    @property
    def shape(self) -> LaneShape:
        """How the lanes are drawn at the present zoom."""
        return self._shape

    def choose_piece(self, key: str) -> None:
        """Make a bar the current one and show it: behind piece/ that coat's, else the next."""
        piece, _, coat = key.partition("/")
        for row, lane in enumerate(self.lanes.lanes):
            if lane.piece.key == piece:
                column = bar_of(lane, coat)
                if column is None:
                    column = next_bar_of(lane, self.canvas.now.timestamp())
                if column is not None:
                    self.setCurrentIndex(self.lanes.index(row, column))

    @override
    def chosen_second(self) -> float | None:
        bar = self.lanes.bar(self.currentIndex())
        return None if bar is None else bar.start.timestamp()

    def top_of(self, row: int) -> int:
        """The y of a lane's upper edge in the viewport."""
        return self.rowViewportPosition(row)

    # Where things are

    @override
    def visualRect(self, index: _Index) -> QRect:
        bar = self.lanes.bar(index)
        if bar is None:
            return QRect()
        return self._rect_of(bar, index.row()).toAlignedRect()

    def _rect_of(self, bar: Bar, row: int) -> QRectF:
        return bar_rect(bar, self.top_of(row), self._shape, self.canvas.scale)

    @override
    def indexAt(self, pos: QPoint) -> QModelIndex:
        row = self.rowAt(pos.y())
        if row < 0:
            return QModelIndex()
        bars = self.lanes.lanes[row].bars
        reach = self.canvas.scale.second(pos.x() + 4.0)
        last = bisect_right(bars, reach, key=lambda bar: bar.begins)
        # A step lies upon a ribbon and an earlier ribbon may still run beside a later one.
        hits = [i for i in range(last) if self._rect_of(bars[i], row).contains(pos.toPointF())]
        return self.lanes.index(row, hits[-1]) if hits else QModelIndex()

    @override
    def scrollTo(
        self,
        index: _Index,
        hint: QAbstractItemView.ScrollHint = QAbstractItemView.ScrollHint.EnsureVisible,
    ) -> None:
        bar = self.lanes.bar(index)
        if bar is None:
            return
        self._scroll_to_row(index.row())
        scale = self.canvas.scale
        x = scale.x(bar.start.timestamp())
        if not _MARGIN <= x <= scale.width - _MARGIN:
            scale.pan(x - scale.width * 0.3)

    def _scroll_to_row(self, row: int) -> None:
        top = self.top_of(row)
        below = top + self._shape.height - self.viewport().height()
        scroll = self.verticalScrollBar()
        if top < 0:
            scroll.setValue(scroll.value() + top)
        elif below > 0:
            scroll.setValue(scroll.value() + below)

    @override
    def visualRegionForSelection(self, selection: QItemSelection) -> QRegion:
        return QRegion(self.viewport().rect())

    @override
    def moveCursor(self, cursorAction: _Move, modifiers: Qt.KeyboardModifier) -> QModelIndex:
        current = self.currentIndex()
        if self.lanes.bar(current) is None:
            return self._first_bar()
        place = (current.row(), current.column())
        return self.lanes.index(*neighbour(self.lanes.lanes, place, cursorAction))

    def _first_bar(self) -> QModelIndex:
        place = first_bar(self.lanes.lanes)
        return QModelIndex() if place is None else self.lanes.index(*place)

    # Painting

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        with QPainter(self.viewport()) as painter:
            self.drawing.paint(painter, self._stand())

    def _stand(self) -> Stand:
        view = self.viewport()
        current = self.currentIndex()
        bar = self.lanes.bar(current)
        rows = self._rows_in_view()
        return Stand(
            size=view.size(),
            rows=rows,
            first_top=self.top_of(rows.start),
            shape=self._shape,
            current=None if bar is None else self._rect_of(bar, current.row()),
            focused=self.hasFocus(),
        )

    @property
    def settled(self) -> bool:
        """Whether what was drawn last is more than a sketch everywhere."""
        return self.drawing.settled

    @property
    def at_rest(self) -> bool:
        """Whether nothing is left to be asked or drawn ahead."""
        return self.drawing.at_rest

    def _rows_in_view(self) -> range:
        if not self.lanes.lanes:
            return range(0)
        first = max(self.rowAt(0), 0)
        # A lane whose film is still below the edge would show no more than loose words.
        last = self.rowAt(self.viewport().height() - round(self._shape.film) - 4)
        return range(first, len(self.lanes.lanes) if last < 0 else last + 1)

    # Scrolling

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.canvas.set_width(self.viewport().width())
        self._fit_shape()
        self._place_button()

    def _scale_changed(self) -> None:
        self._fit_shape()
        self._update_all()

    def _fit_shape(self) -> None:
        """Make the lanes as high as the zoom, and the room there is for all of them, allow."""
        scale, fonts, lanes = self.canvas.scale, self.canvas.fonts, len(self.lanes.lanes)
        room = self.viewport().height()
        shape = shape_for(scale.pixels_per_day, fonts, lanes, room, scale.width)
        if shape != self._shape:
            self._shape = shape
            self.verticalHeader().setDefaultSectionSize(shape.height)
            self.updateGeometries()

    def _update_all(self) -> None:
        self.viewport().update()
        self.horizontalHeader().viewport().update()
        self.verticalHeader().viewport().update()

    @override
    def currentChanged(self, current: _Index, previous: _Index) -> None:
        super().currentChanged(current, previous)
        self.canvas.current_row = current.row() if self.lanes.bar(current) is not None else -1
        self._update_all()
        if self.canvas.current_row >= 0:
            self.piece_chosen.emit(self.lanes.lanes[current.row()].piece.key)

    @override
    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if self.lanes.bar(self.currentIndex()) is None:
            self.setCurrentIndex(self._first_bar())
