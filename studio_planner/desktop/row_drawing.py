"""How a row at the side of the desk is drawn: a sign, then its lines."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QFont, QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import QStyle, QStyledItemDelegate
from typing_extensions import override

from studio_planner.desktop.row_signs import draw_cup, draw_square
from studio_planner.desktop.side_rows import HandsRow, PromiseRow, Standing, WorthRow

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtWidgets import QStyleOptionViewItem, QWidget

    from studio_planner.desktop.canvas import Canvas

_Index = QModelIndex | QPersistentModelIndex
Row = HandsRow | PromiseRow | WorthRow
"""What a list at the side may show."""

ROW_ROLE = Qt.ItemDataRole.UserRole
"""Under this role a model gives the row itself."""

PAD = 5
"""Pixels above and below the lines of a row."""

WRAP = Qt.TextFlag.TextWordWrap
_SIGN = 20
_GAP = 10
_EDGE = 6
_LOW = 0.25


class RowDelegate(QStyledItemDelegate):
    """Draws a row: a sign, then its lines; the sign always stands beside a word."""

    def __init__(self, canvas: Canvas, parent: QWidget, row_width: Callable[[], int]) -> None:
        """Draw with the canvas's theme and fonts, rows as wide as `row_width` says."""
        super().__init__(parent)
        self._canvas = canvas
        self._list = parent
        self._row_width = row_width

    @override
    def sizeHint(self, option: QStyleOptionViewItem, index: _Index) -> QSize:
        width, row = self._row_width(), _row_of(index)
        room = width - _indent(row)
        heights = [_height(text, font, room) for text, font, _ in self._lines(row)]
        return QSize(width, sum(heights) + 2 * PAD)

    @override
    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: _Index) -> None:
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        row, rect = _row_of(index), QRect(option.rect)
        rect.setWidth(self._row_width())
        sign = QRectF(rect.left() + 1.0, rect.top() + PAD + 2.0, 15.0, 17.0)
        if isinstance(row, HandsRow):
            draw_cup(painter, self._canvas.theme, sign, row.cup)
        elif isinstance(row, PromiseRow):
            draw_square(painter, self._canvas.theme, sign, row.standing)
        self._draw_lines(painter, rect, row)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)
        self._draw_focus(painter, option)
        painter.setPen(QPen(self._canvas.theme.colour("rule"), 1.0))
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())
        painter.restore()

    def _draw_lines(self, painter: QPainter, rect: QRect, row: Row) -> None:
        left, width = rect.left() + _indent(row), rect.width() - _indent(row)
        top = rect.top() + PAD
        for text, font, colour in self._lines(row):
            height = _height(text, font, width)
            painter.setFont(font)
            painter.setPen(self._canvas.theme.colour(colour))
            painter.drawText(QRect(left, top, width, height), WRAP, text)
            top += height
        if isinstance(row, HandsRow):
            self._draw_left(painter, rect, row)

    def _draw_left(self, painter: QPainter, rect: QRect, row: HandsRow) -> None:
        fonts = self._canvas.fonts
        height = QFontMetrics(fonts.clock).height()
        area = QRect(rect.left(), rect.top() + PAD, rect.width() - 2, height)
        painter.setFont(fonts.small)
        painter.setPen(self._canvas.theme.colour("ink" if row.cup > _LOW else "now"))
        painter.drawText(
            area, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter, row.left
        )

    def _lines(self, row: Row) -> list[tuple[str, QFont, str]]:
        fonts = self._canvas.fonts
        if isinstance(row, HandsRow):
            lines = [(row.clock, fonts.clock, "ink"), (row.title, fonts.bold, "ink")]
            return [*lines, (row.detail, fonts.small, "quiet")]
        if isinstance(row, WorthRow):
            lines = [(row.title, fonts.bold, "ink")]
            return [*lines, (row.detail, fonts.small, "quiet")] if row.detail else lines
        colour = "now" if row.standing is Standing.BROKEN else "ink"
        lines = [(row.title, fonts.bold, "ink"), (row.word, fonts.plain, colour)]
        more = (row.dates, row.sure[:1].upper() + row.sure[1:], row.why)
        return [*lines, *((text, fonts.small, "quiet") for text in more if text)]

    def _draw_focus(self, painter: QPainter, option: QStyleOptionViewItem) -> None:
        focused = option.state & QStyle.StateFlag.State_HasFocus
        if focused and self._list.hasFocus():
            painter.setPen(QPen(self._canvas.theme.colour("ink"), 2.0))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(option.rect.adjusted(1, 1, -2, -3))


def _indent(row: Row) -> int:
    """Where the lines of a row begin: after its sign, if it has one."""
    return _EDGE if isinstance(row, WorthRow) else _SIGN + _GAP


def _row_of(index: _Index) -> Row:
    row: Row = index.data(ROW_ROLE)
    return row


def _height(text: str, font: QFont, width: int) -> int:
    return (
        QFontMetrics(font)
        .boundingRect(QRect(0, 0, max(width, 40), 10_000), WRAP, text)
        .height()
    )
