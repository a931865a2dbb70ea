"""The field of an order that only an order has: its pieces."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QWidget
from typing_extensions import override

from studio_planner.desktop.forms.field import Field

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.desktop.canvas import Canvas

_KEY = Qt.ItemDataRole.UserRole
_ROW = 24
"""How high a piece to tick is."""
_MOST_ROWS = 6
_IN_A_ROW = 4
_WEEK = 7


class PiecesField(Field):
    """Pieces to tick: those of the order, and those that nobody was promised."""

    def __init__(self, canvas: Canvas, label: str, parent: QWidget | None = None) -> None:
        """Start without pieces."""
        super().__init__(canvas, label, parent)
        self.editor = QListWidget(self)
        self.editor.itemChanged.connect(lambda _item: self.edited.emit())
        self.hold(self.editor)

    def offer(self, pieces: Sequence[tuple[str, str]]) -> None:
        """Offer pieces as (key, name)."""
        self.editor.blockSignals(True)  # noqa: FBT003 - Qt's own
        self.editor.clear()
        for key, name in pieces:
            item = QListWidgetItem(name)
            item.setData(_KEY, key)
            item.setSizeHint(QSize(0, _ROW))
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            item.setCheckState(Qt.CheckState.Unchecked)
            self.editor.addItem(item)
        self.editor.blockSignals(False)  # noqa: FBT003 - Qt's own
        rows = min(max(len(pieces), 2), _MOST_ROWS)
        self.editor.setFixedHeight(rows * _ROW + 6)

    @override
    def value(self) -> tuple[str, ...]:
        items = [self.editor.item(row) for row in range(self.editor.count())]
        ticked = (item for item in items if item.checkState() is Qt.CheckState.Checked)
        return tuple(str(item.data(_KEY)) for item in ticked)

    @override
    def show_value(self, value: tuple[str, ...]) -> None:
        self.say_right()
        self.editor.blockSignals(True)  # noqa: FBT003 - Qt's own
        for row in range(self.editor.count()):
            item = self.editor.item(row)
            ticked = item.data(_KEY) in value
            item.setCheckState(Qt.CheckState.Checked if ticked else Qt.CheckState.Unchecked)
        self.editor.blockSignals(False)  # noqa: FBT003 - Qt's own
