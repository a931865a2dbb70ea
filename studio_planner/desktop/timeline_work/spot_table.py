"""The plan by the shelf: a lane for each spot, a box for each piece that stands on it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QPoint, QRect, QRectF, Qt, Signal
from PySide6.QtGui import QFontMetrics, QPainter, QPen, QRegion
from PySide6.QtWidgets import QAbstractItemView, QFrame
from typing_extensions import override

from studio_planner.desktop import words
from studio_planner.desktop.ground_painter import draw_ground, draw_now
from studio_planner.desktop.headers import Ruler
from studio_planner.desktop.time_table import TimeTable
from studio_planner.desktop.timeline_work.spot_head import SpotHead
from studio_planner.desktop.timeline_work.spot_model import SpotModel, coats_of
from studio_planner.desktop.tongue import translate
from studio_planner.services.moving.narrowing import Wanted, narrowed
from studio_planner.services.moving.spot_lanes import spot_lanes

if TYPE_CHECKING:
    from PySide6.QtCore import QItemSelection
    from PySide6.QtGui import QPaintEvent, QResizeEvent
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.moving.spot_lanes import Standing

_Index = QModelIndex | QPersistentModelIndex
_Move = QAbstractItemView.CursorAction
_ALONG = {_Move.MoveLeft: -1, _Move.MovePrevious: -1, _Move.MoveRight: 1, _Move.MoveNext: 1}
_ACROSS = {_Move.MoveUp: -1, _Move.MoveDown: 1, _Move.MovePageUp: -8, _Move.MovePageDown: 8}
_HEIGHT = 60
_BOX, _SHELF = 36.0, 4.0
_MARGIN = 48.0
_PAD = 6.0


class SpotTable(TimeTable):
    """What stands where and when; the same hands move through time as on the timeline.

    Signals:
        piece_chosen: the key of the piece whose box was chosen.
    """

    piece_chosen = Signal(str)

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Draw what `canvas` shows."""
        super().__init__(canvas, parent)
        self.spots = SpotModel(self)
        self.wanted = Wanted()
        self.setAccessibleName(translate("spots", "Timeline by spot"))
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setHorizontalHeader(Ruler(canvas, self))
        self.setVerticalHeader(SpotHead(canvas, self.spots, self))
        self.setCornerButtonEnabled(False)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setTabKeyNavigation(False)
        self.verticalHeader().setDefaultSectionSize(_HEIGHT)
        self.horizontalHeader().setMinimumSectionSize(1)
        self.horizontalHeader().setDefaultSectionSize(1)
        self.setModel(self.spots)
        canvas.scale.changed.connect(self._update_all)
        canvas.redrawn.connect(self._update_all)

    def show_spots(self) -> None:
        """Show the spots of the canvas's view; the chosen piece stays so."""
        kept = self.spots.standing(self.currentIndex())
        view = self.canvas.view
        lanes = narrowed(view, self.wanted) if view else ()
        self.spots.set_spots(spot_lanes(view, lanes) if view else ())
        if kept is not None:
            self.choose_piece(kept.piece.key)
        self.viewport().update()

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

    # Where things are

    def _box(self, one: Standing, row: int) -> QRectF:
        scale = self.canvas.scale
        left = scale.x(one.start.timestamp())
        right = scale.last if one.end is None else one.end.timestamp()
        top = self.rowViewportPosition(row) + (_HEIGHT - _BOX - _SHELF) / 2.0
        return QRectF(left, top, max(scale.x(right) - left, 4.0), _BOX)

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
        scroll, top = self.verticalScrollBar(), self.rowViewportPosition(index.row())
        below = top + _HEIGHT - self.viewport().height()
        if top < 0 or below > 0:
            scroll.setValue(scroll.value() + (top if top < 0 else below))
        box, scale = self._box(one, index.row()), self.canvas.scale
        if box.right() < _MARGIN or box.left() > scale.width - _MARGIN:
            scale.pan(box.left() - scale.width * 0.3)

    @override
    def visualRegionForSelection(self, selection: QItemSelection) -> QRegion:
        return QRegion(self.viewport().rect())

    @override
    def moveCursor(self, cursorAction: _Move, modifiers: Qt.KeyboardModifier) -> QModelIndex:
        spots, current = self.spots.spots, self.currentIndex()
        one = self.spots.standing(current)
        if one is None:
            first = next((row for row, spot in enumerate(spots) if spot.stands), None)
            return QModelIndex() if first is None else self.spots.index(first, 0)
        row, column = current.row(), current.column()
        along = column + _ALONG.get(cursorAction, 0)
        if cursorAction in _ALONG:
            return self.spots.index(row, min(max(along, 0), len(spots[row].stands) - 1))
        step = _ACROSS.get(cursorAction, 0)
        wanted = min(max(row + step, 0), len(spots) - 1)
        rows = range(wanted, len(spots)) if step > 0 else range(wanted, -1, -1)
        found = next((r for r in rows if spots[r].stands), row)
        near = [abs(stand.start - one.start) for stand in spots[found].stands]
        return self.spots.index(found, near.index(min(near))) if found != row else current

    # Painting

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        theme, size = self.canvas.theme, self.viewport().size()
        current = self.spots.standing(self.currentIndex())
        with QPainter(self.viewport()) as painter:
            painter.fillRect(self.viewport().rect(), theme.colour("paper"))
            draw_ground(painter, size.height(), self.canvas)
            for row, spot in enumerate(self.spots.spots):
                self._draw_shelf(painter, row)
                for one in spot.stands:
                    self._draw_box(painter, one, row, chosen=one is current)
            draw_now(painter, size.height(), theme, self.canvas.now_x)
            if not self.spots.spots:
                painter.setPen(theme.colour("quiet"))
                said = translate("spots", "No spots yet: add them under Studio.")
                painter.drawText(self.viewport().rect(), Qt.AlignmentFlag.AlignCenter, said)

    def _draw_shelf(self, painter: QPainter, row: int) -> None:
        top = self.rowViewportPosition(row) + (_HEIGHT - _BOX - _SHELF) / 2.0 + _BOX
        board = QRectF(0.0, top, float(self.viewport().width()), _SHELF)
        painter.fillRect(board, self.canvas.theme.colour("wood"))

    def _draw_box(self, painter: QPainter, one: Standing, row: int, *, chosen: bool) -> None:
        theme, fonts, box = self.canvas.theme, self.canvas.fonts, self._box(one, row)
        if box.right() < 0.0 or box.left() > self.canvas.scale.width:
            return
        same = self._chosen_key() == one.piece.key
        painter.setBrush(theme.colour("panel"))
        width = (3.0 if self.hasFocus() else 2.0) if chosen else 1.6 if same else 1.0
        painter.setPen(QPen(theme.colour("ink" if same or chosen else "quiet"), width))
        painter.drawRect(box)
        inner = box.adjusted(_PAD, 2.0, -_PAD, -3.0)
        inner.setLeft(max(inner.left(), 2.0))
        painter.setPen(theme.colour("ink"))
        bold, small = QFontMetrics(fonts.bold), QFontMetrics(fonts.small)
        name = _cut(bold, words.piece_name(one.piece), inner)
        painter.setFont(fonts.bold)
        painter.drawText(inner, Qt.AlignmentFlag.AlignTop, name)
        painter.setFont(fonts.small)
        painter.setPen(theme.colour("quiet"))
        coats = _cut(small, coats_of(one), inner) if name else ""
        painter.drawText(inner, Qt.AlignmentFlag.AlignBottom, coats)

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


def _cut(metrics: QFontMetrics, text: str, room: QRectF) -> str:
    least = metrics.horizontalAdvance("MM\N{HORIZONTAL ELLIPSIS}")
    if room.width() < least:
        return ""
    return metrics.elidedText(text, Qt.TextElideMode.ElideRight, int(room.width()))
