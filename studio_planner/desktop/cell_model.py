"""The frame of a table in time: a row for a lane, a cell for each thing on it, all in words."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt
from typing_extensions import override

Index = QModelIndex | QPersistentModelIndex
Role = Qt.ItemDataRole


class CellModel(QAbstractTableModel):
    """Rows of different lengths; past the end of its row a cell is no item and says nothing.

    Whoever derives from it says how long each row is, and what a cell and a row are called.
    """

    def __init__(self, parent: QObject | None = None) -> None:
        """Start without rows."""
        super().__init__(parent)
        self._lengths: tuple[int, ...] = ()

    def has_cell(self, index: Index) -> bool:
        """Whether a cell is one of its row's."""
        return index.isValid() and index.column() < self._lengths[index.row()]

    def set_lengths(self, lengths: tuple[int, ...]) -> None:
        """Take over how long each row is, while the model is being reset."""
        self._lengths = lengths

    def cell_says(self, index: Index, role: int) -> str | None:
        """What a cell that is there says in a role of text."""
        raise NotImplementedError

    def row_says(self, row: int, role: int) -> str | None:
        """What the head of a row says in a role of text."""
        raise NotImplementedError

    def column_says(self, column: int) -> str:
        """What the head of a column is called."""
        raise NotImplementedError

    @override
    def rowCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self._lengths)

    @override
    def columnCount(self, parent: Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else max(self._lengths, default=0)

    @override
    def flags(self, index: Index) -> Qt.ItemFlag:
        if not self.has_cell(index):
            return Qt.ItemFlag.NoItemFlags
        return Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable

    @override
    def data(self, index: Index, role: int = Role.DisplayRole) -> Any:
        return self.cell_says(index, role) if self.has_cell(index) else None

    @override
    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Role.DisplayRole
    ) -> Any:
        if orientation is Qt.Orientation.Horizontal:
            return self.column_says(section) if role == Role.AccessibleTextRole else None
        return self.row_says(section, role)
