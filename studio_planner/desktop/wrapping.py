"""A row that goes on below where there is no more room at its right."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout
from typing_extensions import override

if TYPE_CHECKING:
    from PySide6.QtWidgets import QLayoutItem, QWidget


class Wrapping(QLayout):
    """Widgets side by side, their feet on one line, in as many rows as the width asks for.

    None is wider than the layout; those that are hidden take no room.
    """

    def __init__(self, across: int = 12, down: int = 6) -> None:
        """Keep `across` pixels between widgets, and `down` between rows."""
        super().__init__()
        self._across, self._down = across, down
        self._items: list[QLayoutItem] = []
        self.setContentsMargins(0, 0, 0, 0)

    def add(self, *widgets: QWidget) -> None:
        """Add widgets at the end."""
        for widget in widgets:
            self.addWidget(widget)

    def put_first(self, widget: QWidget) -> None:
        """Add a widget before all others."""
        self.addWidget(widget)
        self._items.insert(0, self._items.pop())

    @override
    def addItem(self, item: QLayoutItem, /) -> None:
        self._items.append(item)

    @override
    def count(self) -> int:
        return len(self._items)

    @override
    def itemAt(self, index: int, /) -> QLayoutItem | None:
        return self._items[index] if 0 <= index < len(self._items) else None

    @override
    def takeAt(self, index: int, /) -> QLayoutItem | None:
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    @override
    def expandingDirections(self) -> Qt.Orientation:
        return Qt.Orientation(0)

    @override
    def hasHeightForWidth(self) -> bool:
        return True

    @override
    def heightForWidth(self, width: int, /) -> int:
        rows = self._rows(width)
        heights = [max(height for _, _, height in row) for row in rows]
        return sum(heights) + self._down * max(len(rows) - 1, 0)

    @override
    def sizeHint(self) -> QSize:
        shown = self._shown
        width = sum(item.sizeHint().width() for item in shown)
        width += self._across * max(len(shown) - 1, 0)
        return QSize(width, self.heightForWidth(width))

    @override
    def minimumSize(self) -> QSize:
        least = QSize(0, 0)
        for item in self._shown:
            least = least.expandedTo(item.minimumSize())
        return least

    @override
    def setGeometry(self, place: QRect, /) -> None:
        super().setGeometry(place)
        top = place.top()
        for row in self._rows(place.width()):
            highest = max(height for _, _, height in row)
            left = place.left()
            for item, width, height in row:
                corner = QPoint(left, top + highest - height)
                item.setGeometry(QRect(corner, QSize(width, height)))
                left += width + self._across
            top += highest + self._down

    @property
    def _shown(self) -> list[QLayoutItem]:
        return [item for item in self._items if not item.isEmpty()]

    def _rows(self, most: int) -> list[list[tuple[QLayoutItem, int, int]]]:
        """What is shown, row by row, each with its width and height."""
        rows: list[list[tuple[QLayoutItem, int, int]]] = []
        used = 0
        for item in self._shown:
            hint, least = item.sizeHint(), item.minimumSize().width()
            width = max(min(hint.width(), most), least)
            height = item.heightForWidth(width) if item.hasHeightForWidth() else hint.height()
            if rows and used + self._across + width <= most:
                rows[-1].append((item, width, height))
                used += self._across + width
            else:
                rows.append([(item, width, height)])
                used = width
        return rows
