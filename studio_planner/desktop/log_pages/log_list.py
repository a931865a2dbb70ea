"""The log, day by day: what counts in ink, what was wrong struck through beneath it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QSize, Qt, Signal
from PySide6.QtGui import QFont, QFontMetrics, QPainter, QPen, QStandardItem, QStandardItemModel
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QListView,
    QStyle,
    QStyledItemDelegate,
    QStyleOptionViewItem,
)
from typing_extensions import override

from studio_planner.desktop.log_pages.row_words import ReadLine, ReadRow, day_of, read_row
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtGui import QResizeEvent
    from PySide6.QtWidgets import QWidget

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.log_book.log_rows import LogRow

_ROLE = Qt.ItemDataRole.UserRole
_WRAP = Qt.TextFlag.TextWordWrap
_PAD, _EDGE, _GAP, _HEAD_GAP = 6, 8, 10, 12
_WIDEST_TIME = "00:00 mm"


class LogList(QListView):
    """Rows under the days on which they happened, newest first.

    Signals:
        row_chosen: the LogRow that is chosen; None where none is.
    """

    row_chosen = Signal(object)

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Start empty."""
        super().__init__(parent)
        self._canvas = canvas
        self._things = QStandardItemModel(self)
        self.setModel(self._things)
        self.setItemDelegate(_RowDelegate(canvas, self))
        self.setAccessibleName(translate("happened", "What happened, newest first"))
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.viewport().setAutoFillBackground(False)
        canvas.redrawn.connect(self.viewport().update)

    def show_rows(self, studio: Studio, rows: Sequence[LogRow]) -> None:
        """Show rows; the chosen one stays so, also where it was corrected meanwhile."""
        kept = self.chosen
        place = self.verticalScrollBar().value()
        blocked = self.blockSignals(True)  # noqa: FBT003 - Qt's own
        self._things.clear()
        day = ""
        for row in rows:
            if day_of(studio, row) != day:
                day = day_of(studio, row)
                self._things.appendRow(_item(ReadRow("", (ReadLine(day, "clock"),))))
            self._things.appendRow(_item(read_row(studio, row)))
        self.blockSignals(blocked)
        self._choose_again(kept)
        self.verticalScrollBar().setValue(place)
        self.row_chosen.emit(self.chosen)

    @property
    def chosen(self) -> LogRow | None:
        """The row that is chosen."""
        read = self.currentIndex().data(_ROLE)
        return read.row if isinstance(read, ReadRow) else None

    @property
    def read(self) -> list[ReadRow]:
        """Everything that is shown, headings too."""
        return [self._things.item(row).data(_ROLE) for row in range(self._things.rowCount())]

    def choose_entry(self, number: int) -> None:
        """Choose the row of an entry, whether it stands or was corrected."""
        for place, read in enumerate(self.read):
            if read.row is not None and number in _numbers(read.row):
                self.setCurrentIndex(self._things.index(place, 0))
                return

    def _choose_again(self, kept: LogRow | None) -> None:
        if kept is not None and not kept.older_than_log:
            self.choose_entry(kept.entry.number)

    @override
    def currentChanged(
        self,
        current: QModelIndex | QPersistentModelIndex,
        previous: QModelIndex | QPersistentModelIndex,
    ) -> None:
        super().currentChanged(current, previous)
        if not self.signalsBlocked():
            self.row_chosen.emit(self.chosen)

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.scheduleDelayedItemsLayout()

    @override
    def minimumSizeHint(self) -> QSize:
        return QSize(240, 180)


def _numbers(row: LogRow) -> set[int]:
    return {row.entry.number, *(entry.number for entry in row.former)}


def _item(read: ReadRow) -> QStandardItem:
    item = QStandardItem(read.spoken)
    item.setData(read, _ROLE)
    item.setData(read.spoken, Qt.ItemDataRole.AccessibleTextRole)
    if read.row is None:
        item.setFlags(Qt.ItemFlag.ItemIsEnabled)
    return item


class _RowDelegate(QStyledItemDelegate):
    """Draws a row: its time, then its lines."""

    def __init__(self, canvas: Canvas, rows: LogList) -> None:
        super().__init__(rows)
        self._canvas = canvas
        self._rows = rows

    def _font(self, line: ReadLine) -> QFont:
        font = QFont(getattr(self._canvas.fonts, line.font))
        font.setStrikeOut(line.struck)
        return font

    def _indent(self, read: ReadRow) -> int:
        if read.row is None:
            return _EDGE
        wide = QFontMetrics(self._canvas.fonts.bold).horizontalAdvance(_WIDEST_TIME)
        return _EDGE + wide + _GAP

    def _heights(self, read: ReadRow) -> list[int]:
        room = self._rows.viewport().width() - self._indent(read) - _EDGE
        return [
            QFontMetrics(self._font(line))
            .boundingRect(QRect(0, 0, max(room, 60), 10_000), _WRAP, line.text)
            .height()
            for line in read.lines
        ]

    @override
    def sizeHint(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QSize:
        read: ReadRow = index.data(_ROLE)
        above = _HEAD_GAP if read.row is None and index.row() else 0
        width = self._rows.viewport().width()
        return QSize(width, sum(self._heights(read)) + 2 * _PAD + above)

    @override
    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        read: ReadRow = index.data(_ROLE)
        theme = self._canvas.theme
        rect = QRect(option.rect)
        painter.save()
        if read.row is None and index.row():
            rect.setTop(rect.top() + _HEAD_GAP)
        self._mark(painter, option, rect)
        painter.setFont(self._canvas.fonts.bold)
        painter.setPen(theme.colour("ink"))
        painter.drawText(
            rect.adjusted(_EDGE, _PAD, 0, 0), Qt.AlignmentFlag.AlignLeft, read.time
        )
        left, top = rect.left() + self._indent(read), rect.top() + _PAD
        for line, height in zip(read.lines, self._heights(read), strict=True):
            painter.setFont(self._font(line))
            quiet = line.struck or line.font == "small"
            painter.setPen(theme.colour("quiet" if quiet else "ink"))
            room = max(rect.right() - left - _EDGE + 1, 60)
            painter.drawText(QRect(left, top, room, height), _WRAP, line.text)
            top += height
        painter.restore()

    def _mark(self, painter: QPainter, option: QStyleOptionViewItem, rect: QRect) -> None:
        """Wash what is chosen, and put an ink edge beside it."""
        theme = self._canvas.theme
        state = option.state
        if state & QStyle.StateFlag.State_Selected:
            painter.fillRect(rect, theme.colour("panel"))
            edge = "window" if state & QStyle.StateFlag.State_HasFocus else "ink"
            painter.setPen(QPen(theme.colour(edge), 3))
            painter.drawLine(
                rect.left() + 1, rect.top() + 2, rect.left() + 1, rect.bottom() - 2
            )
