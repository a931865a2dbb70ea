"""The plan by the shelf: a lane for each spot, a box for each piece that stands on it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QPoint, QRect, QRectF, Qt, Signal
from PySide6.QtGui import QPainter, QRegion
from PySide6.QtWidgets import QAbstractItemView
from typing_extensions import override

from studio_planner.desktop.ground_painter import draw_ground, draw_now
from studio_planner.desktop.headers import Ruler
from studio_planner.desktop.time_table import TimeTable
from studio_planner.desktop.timeline_work.spot_drawing import HEIGHT, SpotDrawing
from studio_planner.desktop.timeline_work.spot_hand import paint_stands, paint_work
from studio_planner.desktop.timeline_work.spot_head import SpotHead
from studio_planner.desktop.timeline_work.spot_model import SpotModel, pour_at, pour_to_come
from studio_planner.desktop.timeline_work.spot_walk import first_stay, neighbour
from studio_planner.desktop.timeline_work.worked_table import WorkedTable
from studio_planner.desktop.tongue import translate
from studio_planner.services.moving.held import Goes
from studio_planner.services.moving.narrowing import Wanted, narrowed
from studio_planner.services.moving.spot_lanes import spot_lanes

if TYPE_CHECKING:
    from PySide6.QtCore import QItemSelection
    from PySide6.QtGui import QPaintEvent, QResizeEvent
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.timeline_work.drag import Drag
    from studio_planner.desktop.timeline_work.plan_work import PlanWork
    from studio_planner.desktop.timeline_work.working_timeline import WorkingTimeline
    from studio_planner.services.moving.spot_lanes import Standing
    from studio_planner.services.ribbons import Bar

_Index = QModelIndex | QPersistentModelIndex
_Move = QAbstractItemView.CursorAction
_MARGIN = 48.0
_NEAR = 5.0
"""Pixels left of a pour at which it is taken already."""


class SpotTable(WorkedTable, TimeTable):
    """What stands where and when; the same hands work on it as on the timeline.

    A pour is dragged along time, and its piece to another spot, by the mouse or with Alt, up
    and down.

    Signals:
        piece_chosen: the key of the piece whose box was chosen.
        went_on: the maker has chosen another box.
    """

    piece_chosen = Signal(str)
    went_on = Signal()
    taken_cursor = Qt.CursorShape.SizeAllCursor
    rows_mean = True

    def __init__(self, timeline: WorkingTimeline, parent: QWidget | None = None) -> None:
        """Show the plan of `timeline`, and let the same work be done on it."""
        canvas = timeline.canvas
        super().__init__(canvas, parent)
        self._timeline = timeline
        self.desk = timeline.desk
        self._drawing = SpotDrawing(canvas)
        self.spots = SpotModel(self)
        self.wanted = Wanted()
        self.setAccessibleName(translate("spots", "Timeline by spot"))
        self.setAccessibleDescription(
            translate(
                "spots",
                "One row for each spot, one cell for each piece that stands on it. Alt with "
                "left and right moves its next pour by five minutes, with Shift by an hour; "
                "Alt with up and down puts the piece on another spot.",
            )
        )
        self.set_heads(Ruler(canvas, self), SpotHead(canvas, self.spots, self), HEIGHT)
        self.setModel(self.spots)
        canvas.scale.changed.connect(self._update_all)
        canvas.redrawn.connect(self._update_all)

    def show_spots(self) -> None:
        """Show the spots of the canvas's view; the chosen piece stays so."""
        kept = self.spots.standing(self.currentIndex())
        view = self.canvas.view
        self._showing = True
        lanes = narrowed(view, self.wanted) if view else ()
        self.spots.set_spots(spot_lanes(view, lanes) if view else ())
        if kept is not None:
            self._choose_again(kept)
        self._showing = False
        self.viewport().update()

    _showing = False

    def _choose_again(self, kept: Standing) -> None:
        index = self.spots.place_of(kept.piece.key, kept.coats[0].coat)
        if index.isValid():
            self.setCurrentIndex(index)
        else:
            self.choose_piece(kept.piece.key)

    def want(self, wanted: Wanted) -> None:
        """Show only the pieces that are wanted."""
        self.wanted = wanted
        self.show_spots()

    def choose_piece(self, key: str) -> None:
        """Make the piece's stand after now the current one, else its last."""
        now = self.canvas.now
        found = [
            (one.end is not None and one.end <= now, one.start, (row, column))
            for row, spot in enumerate(self.spots.spots)
            for column, one in enumerate(spot.stands)
            if one.piece.key == key
        ]
        ahead = [row for row in found if not row[0]]
        chosen = min(ahead, default=None) or max(found, default=None)
        if chosen is not None:
            self.setCurrentIndex(self.spots.index(*chosen[2]))

    @override
    def chosen_second(self) -> float | None:
        one = self.spots.standing(self.currentIndex())
        return None if one is None else one.start.timestamp()

    # What is worked with

    @property
    @override
    def work(self) -> PlanWork:
        return self._timeline.work

    @property
    @override
    def at_work(self) -> PlanWork | None:
        return self._timeline.at_work

    def work_here(self) -> None:
        """Draw anew what work on the plan draws, and go where it shows something."""
        work = self.work
        work.renewed.connect(self.viewport().update)
        work.left.connect(self.open_hand)
        work.shown.connect(self.choose_pour)

    def choose_pour(self, piece: str, coat: str) -> None:
        """Choose the stay on which a piece gets a coat."""
        index = self.spots.place_of(piece, coat)
        if index.isValid():
            self.setCurrentIndex(index)

    @override
    def bar_at(self, pos: QPoint) -> Bar | None:
        one = self.spots.standing(self.indexAt(pos))
        return None if one is None else pour_at(one, self.canvas.scale.second(pos.x() + _NEAR))

    @override
    def bar_chosen(self) -> Bar | None:
        one = self.spots.standing(self.currentIndex())
        return None if one is None else pour_to_come(one)

    @override
    def hold_over(self, drag: Drag, pos: QPoint) -> bool:
        row = self.rowAt(pos.y())
        return row >= 0 and drag.want_spot(self._goes(drag, row))

    @override
    def hold_rows_on(self, drag: Drag, rows: int) -> bool:
        row = min(max(self.spots.row_of(drag.spot) + rows, 0), len(self.spots.spots) - 1)
        moved = drag.want_spot(self._goes(drag, row))
        self._scroll_to_row(row)
        return moved

    def _goes(self, drag: Drag, row: int) -> Goes | None:
        """The spot of a row with all coats that the piece gets on its stay; None: its own."""
        spot, planned = self.spots.spots[row].spot.key, drag.bar.planned
        one = self.spots.standing(self.spots.place_of(planned.piece, planned.coat))
        if one is None or spot == planned.spot:
            return None
        return Goes(spot, frozenset(coat.coat for coat in one.coats))

    # Where things are

    def top_of(self, row: int) -> float:
        """The y of the upper edge of a row in the viewport."""
        return float(self.rowViewportPosition(row))

    def _box(self, one: Standing, row: int) -> QRectF:
        return self._drawing.box(one, self.top_of(row))

    @override
    def visualRect(self, index: _Index) -> QRect:
        one = self.spots.standing(index)
        return QRect() if one is None else self._box(one, index.row()).toAlignedRect()

    @override
    def indexAt(self, pos: QPoint) -> QModelIndex:
        row = self.rowAt(pos.y())
        if row < 0:
            return QModelIndex()
        for column, one in enumerate(self.spots.spots[row].stands):
            if self._box(one, row).contains(pos.toPointF()):
                return self.spots.index(row, column)
        return QModelIndex()

    @override
    def scrollTo(
        self,
        index: _Index,
        hint: QAbstractItemView.ScrollHint = QAbstractItemView.ScrollHint.EnsureVisible,
    ) -> None:
        one = self.spots.standing(index)
        if one is None:
            return
        self._scroll_to_row(index.row())
        box, scale = self._box(one, index.row()), self.canvas.scale
        if box.right() < _MARGIN or box.left() > scale.width - _MARGIN:
            scale.pan(box.left() - scale.width * 0.3)

    def _scroll_to_row(self, row: int) -> None:
        scroll, top = self.verticalScrollBar(), self.rowViewportPosition(row)
        below = top + HEIGHT - self.viewport().height()
        if top < 0 or below > 0:
            scroll.setValue(scroll.value() + (top if top < 0 else below))

    @override
    def visualRegionForSelection(self, selection: QItemSelection) -> QRegion:
        return QRegion(self.viewport().rect())

    @override
    def moveCursor(self, cursorAction: _Move, modifiers: Qt.KeyboardModifier) -> QModelIndex:
        spots, current = self.spots.spots, self.currentIndex()
        if self.spots.standing(current) is None:
            first = first_stay(spots)
            return QModelIndex() if first is None else self.spots.index(*first)
        place = (current.row(), current.column())
        return self.spots.index(*neighbour(spots, place, cursorAction))

    # Painting

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        theme, size = self.canvas.theme, self.viewport().size()
        with QPainter(self.viewport()) as painter:
            painter.fillRect(self.viewport().rect(), theme.colour("paper"))
            draw_ground(painter, size.height(), self.canvas)
            paint_stands(painter, self, self._drawing, self._chosen_key())
            draw_now(painter, size.height(), theme, self.canvas.now_x)
            if not self.spots.spots:
                painter.setPen(theme.colour("quiet"))
                said = translate("spots", "No spots yet: add them under Studio.")
                painter.drawText(self.viewport().rect(), Qt.AlignmentFlag.AlignCenter, said)
            if self.at_work is not None:
                paint_work(painter, self, self._drawing, self.at_work)

    def _chosen_key(self) -> str:
        one = self.spots.standing(self.currentIndex())
        return "" if one is None else one.piece.key

    # Scrolling and choosing

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.canvas.set_width(self.viewport().width())

    def _update_all(self) -> None:
        self.viewport().update()
        self.horizontalHeader().viewport().update()
        self.verticalHeader().viewport().update()

    @override
    def currentChanged(self, current: _Index, previous: _Index) -> None:
        super().currentChanged(current, previous)
        self.viewport().update()
        one = self.spots.standing(current)
        if one is not None:
            self.piece_chosen.emit(one.piece.key)
        if not self._showing:
            self.went_on.emit()
