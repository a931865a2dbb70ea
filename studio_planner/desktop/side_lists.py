"""The lists at the side of the desk: hands next, promises, and what the plan is worth."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import (
    QAbstractListModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QFontMetrics, QPainter
from PySide6.QtWidgets import QAbstractItemView, QFrame, QListView
from typing_extensions import override

from studio_planner.desktop.row_drawing import PAD, ROW_ROLE, WRAP, Row, RowDelegate

if TYPE_CHECKING:
    from PySide6.QtGui import QResizeEvent
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.canvas import Canvas

_Index = QModelIndex | QPersistentModelIndex


class RowModel(QAbstractListModel):
    """Rows that speak for themselves."""

    def __init__(self, parent: QObject | None = None) -> None:
        """Start empty."""
        super().__init__(parent)
        self.rows: tuple[Row, ...] = ()

    def set_rows(self, rows: tuple[Row, ...]) -> bool:
        """Show other rows; False when they are the same."""
        if rows == self.rows:
            return False
        self.beginResetModel()
        self.rows = rows
        self.endResetModel()
        return True

    @override
    def rowCount(self, parent: _Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self.rows)

    @override
    def data(self, index: _Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        row = self.rows[index.row()]
        if role == ROW_ROLE:
            return row
        if role in {Qt.ItemDataRole.AccessibleTextRole, Qt.ItemDataRole.DisplayRole}:
            return row.spoken
        return None


class RowList(QListView):
    """A list of rows; choosing one chooses its piece.

    Signals:
        piece_chosen: the key of the piece that the row is about.
        fitted: the rows, or the width they have, are others.
    """

    piece_chosen = Signal(str)
    fitted = Signal()

    def __init__(
        self, canvas: Canvas, name: str, empty: str, parent: QWidget | None = None
    ) -> None:
        """Name the list for a screen reader; `empty` is said when there is no row."""
        super().__init__(parent)
        self._canvas = canvas
        self._fitted_width = 0
        self.empty = empty
        self.rows = RowModel(self)
        self.setModel(self.rows)
        self.setItemDelegate(RowDelegate(canvas, self, lambda: self.row_width))
        self.setAccessibleName(name)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setUniformItemSizes(False)
        self.viewport().setAutoFillBackground(False)
        self.clicked.connect(self._chosen)
        self.activated.connect(self._chosen)
        canvas.redrawn.connect(self.viewport().update)

    def show_rows(self, rows: tuple[Row, ...]) -> None:
        """Show other rows and take the height that they need."""
        if self.rows.set_rows(rows):
            self._fit()

    def _fit(self) -> None:
        self.updateGeometry()
        self.fitted.emit()

    def whole_rows_height(self, room: int) -> int:
        """The height of as many whole rows as fit into `room` pixels, at least of one."""
        height = 0
        for row in range(self.rows.rowCount()):
            following = height + self.sizeHintForIndex(self.rows.index(row)).height()
            if row and following > room:
                break
            height = following
        return height or self.wanted_height

    def _chosen(self, index: QModelIndex) -> None:
        piece = self.rows.rows[index.row()].piece
        if piece:
            self.piece_chosen.emit(piece)

    @property
    def row_width(self) -> int:
        """How wide rows are: there is always room for a scroll bar beside them.

        Else words wrap otherwise with the bar than without, and the bar comes and goes.
        """
        return self.width() - self.verticalScrollBar().sizeHint().width()

    @property
    def wanted_height(self) -> int:
        """The height of all rows at the present width."""
        rows = range(self.rows.rowCount())
        heights = (self.sizeHintForIndex(self.rows.index(row)).height() for row in rows)
        return sum(heights) or QFontMetrics(self._canvas.fonts.small).height() + 2 * PAD

    @override
    def sizeHint(self) -> QSize:
        return QSize(200, self.wanted_height)

    @override
    def minimumSizeHint(self) -> QSize:
        return QSize(120, min(self.wanted_height, 120))

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self._fitted_width != self.row_width:
            self._fitted_width = self.row_width
            self.scheduleDelayedItemsLayout()
            self._fit()

    @override
    def paintEvent(self, event: Any) -> None:
        super().paintEvent(event)
        if not self.rows.rows:
            with QPainter(self.viewport()) as painter:
                painter.setPen(self._canvas.theme.colour("quiet"))
                painter.setFont(self._canvas.fonts.small)
                painter.drawText(
                    self.viewport().rect().adjusted(0, PAD, 0, 0), WRAP, self.empty
                )
