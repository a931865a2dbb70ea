"""The two lists at the side of the desk, drawn row by row: hands next, and promises."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import (
    QAbstractListModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QPointF,
    QRect,
    QRectF,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QFont, QFontMetrics, QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QAbstractItemView, QFrame, QListView, QStyledItemDelegate
from typing_extensions import override

from studio_planner.desktop.side_rows import HandsRow, PromiseRow, Standing

if TYPE_CHECKING:
    from PySide6.QtGui import QResizeEvent
    from PySide6.QtWidgets import QStyleOptionViewItem, QWidget

    from studio_planner.desktop.canvas import Canvas

_Index = QModelIndex | QPersistentModelIndex
_Row = HandsRow | PromiseRow
_SIGN = 20
_GAP = 10
_PAD = 5
_LOW = 0.25
_WRAP = Qt.TextFlag.TextWordWrap


class RowModel(QAbstractListModel):
    """Rows that speak for themselves."""

    def __init__(self, parent: QObject | None = None) -> None:
        """Start empty."""
        super().__init__(parent)
        self.rows: tuple[_Row, ...] = ()

    def set_rows(self, rows: tuple[_Row, ...]) -> bool:
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
        self.setItemDelegate(RowDelegate(canvas, self))
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

    def show_rows(self, rows: tuple[_Row, ...]) -> None:
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
        self.piece_chosen.emit(self.rows.rows[index.row()].piece)

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
        return sum(heights) or QFontMetrics(self._canvas.fonts.small).height() + 2 * _PAD

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
                    self.viewport().rect().adjusted(0, _PAD, 0, 0), _WRAP, self.empty
                )


class RowDelegate(QStyledItemDelegate):
    """Draws a row: a sign, then its lines; the sign always stands beside a word."""

    def __init__(self, canvas: Canvas, parent: QObject) -> None:
        """Draw with the canvas's theme and fonts."""
        super().__init__(parent)
        self._canvas = canvas

    @override
    def sizeHint(self, option: QStyleOptionViewItem, index: _Index) -> QSize:
        width, row = self._width(option), _row_of(index)
        heights = [
            _height(text, font, width - _SIGN - _GAP) for text, font, _ in self._lines(row)
        ]
        return QSize(width, sum(heights) + 2 * _PAD)

    def _width(self, option: QStyleOptionViewItem) -> int:
        view = self.parent()
        return view.row_width if isinstance(view, RowList) else option.rect.width()

    @override
    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: _Index) -> None:
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        row, rect = _row_of(index), QRect(option.rect)
        rect.setWidth(self._width(option))
        sign = QRectF(rect.left() + 1.0, rect.top() + _PAD + 2.0, 15.0, 17.0)
        if isinstance(row, HandsRow):
            self._draw_cup(painter, sign, row.cup)
        else:
            self._draw_square(painter, sign, row.standing)
        self._draw_lines(painter, rect, row)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)
        self._draw_focus(painter, option, index)
        painter.setPen(QPen(self._canvas.theme.colour("rule"), 1.0))
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())
        painter.restore()

    def _draw_lines(self, painter: QPainter, rect: QRect, row: _Row) -> None:
        left, width = rect.left() + _SIGN + _GAP, rect.width() - _SIGN - _GAP
        top = rect.top() + _PAD
        for text, font, colour in self._lines(row):
            height = _height(text, font, width)
            painter.setFont(font)
            painter.setPen(self._canvas.theme.colour(colour))
            painter.drawText(QRect(left, top, width, height), _WRAP, text)
            top += height
        if isinstance(row, HandsRow):
            self._draw_left(painter, rect, row)

    def _draw_left(self, painter: QPainter, rect: QRect, row: HandsRow) -> None:
        fonts = self._canvas.fonts
        height = QFontMetrics(fonts.clock).height()
        area = QRect(rect.left(), rect.top() + _PAD, rect.width() - 2, height)
        painter.setFont(fonts.small)
        painter.setPen(self._canvas.theme.colour("ink" if row.cup > _LOW else "now"))
        painter.drawText(
            area, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, row.left
        )

    def _lines(self, row: _Row) -> list[tuple[str, QFont, str]]:
        fonts = self._canvas.fonts
        if isinstance(row, HandsRow):
            lines = [(row.clock, fonts.clock, "ink"), (row.title, fonts.bold, "ink")]
            return [*lines, (row.detail, fonts.small, "quiet")]
        colour = "now" if row.standing is Standing.BROKEN else "ink"
        lines = [(row.title, fonts.bold, "ink"), (row.word, fonts.plain, colour)]
        lines.append((row.dates, fonts.small, "quiet"))
        return [*lines, (row.why, fonts.small, "quiet")] if row.why else lines

    def _draw_cup(self, painter: QPainter, rect: QRectF, level: float) -> None:
        theme = self._canvas.theme
        slope = 2.5
        top = rect.bottom() - rect.height() * level
        inset = slope * (1.0 - level)
        shape = [
            QPointF(rect.left() + slope - inset, top),
            QPointF(rect.right() - slope + inset, top),
            QPointF(rect.right() - slope, rect.bottom()),
            QPointF(rect.left() + slope, rect.bottom()),
        ]
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(theme.film_colour(0.25))
        painter.drawPolygon(QPolygonF(shape))
        painter.setPen(QPen(theme.colour("ink"), 1.4))
        outline = [rect.topLeft(), shape[3], shape[2], rect.topRight()]
        painter.drawPolyline(QPolygonF(outline))

    def _draw_square(self, painter: QPainter, rect: QRectF, standing: Standing) -> None:
        theme = self._canvas.theme
        square = QRectF(rect.left() + 0.5, rect.top() + 1.5, 13.0, 13.0)
        colour = theme.colour("now" if standing is Standing.BROKEN else "ink")
        painter.setPen(QPen(colour, 1.5))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        if standing is Standing.BROKEN:
            self._draw_broken(painter, square)
            return
        if standing is Standing.OPEN:
            painter.setPen(QPen(colour, 1.2, Qt.PenStyle.DotLine))
        painter.drawRect(square)
        if standing in {Standing.KEPT, Standing.TIGHT}:
            height = square.height() * (1.0 if standing is Standing.KEPT else 0.5)
            filled = QRectF(square.left(), square.bottom() - height, square.width(), height)
            painter.fillRect(filled, colour)

    def _draw_broken(self, painter: QPainter, square: QRectF) -> None:
        left, right, top, bottom = square.left(), square.right(), square.top(), square.bottom()
        middle = square.center()
        one = [(middle.x() - 1, top), (left, top), (left, bottom), (middle.x() - 4, bottom)]
        other = [(middle.x() + 3, top), (right, top), (right, bottom), (middle.x(), bottom)]
        crack = [(middle.x() + 3, top), (middle.x() - 1, middle.y() - 1)]
        crack += [(middle.x() + 3, middle.y() + 2), (middle.x(), bottom)]
        for line in (one, other, crack):
            painter.drawPolyline(QPolygonF([QPointF(x, y) for x, y in line]))

    def _draw_focus(
        self, painter: QPainter, option: QStyleOptionViewItem, index: _Index
    ) -> None:
        view = self.parent()
        if isinstance(view, RowList) and view.hasFocus() and view.currentIndex() == index:
            painter.setPen(QPen(self._canvas.theme.colour("ink"), 2.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(option.rect.adjusted(1, 1, -2, -3))


def _row_of(index: _Index) -> _Row:
    model = index.model()
    assert isinstance(model, RowModel)  # noqa: S101 - the delegate serves no other model
    return model.rows[index.row()]


def _height(text: str, font: QFont, width: int) -> int:
    return (
        QFontMetrics(font)
        .boundingRect(QRect(0, 0, max(width, 40), 10_000), _WRAP, text)
        .height()
    )
