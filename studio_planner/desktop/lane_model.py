"""The lanes as a table, one row for a piece and one cell for a bar, so that all can read it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt
from typing_extensions import override

from studio_planner.desktop import bar_words, words
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from studio_planner.services.ribbons import Bar, Lane

_Index = QModelIndex | QPersistentModelIndex
_Role = Qt.ItemDataRole


class LaneModel(QAbstractTableModel):
    """Lanes and their bars; every bar has a name and a description in words."""

    def __init__(self, parent: QObject | None = None) -> None:
        """Start without lanes."""
        super().__init__(parent)
        self.lanes: tuple[Lane, ...] = ()
        self._columns = 0

    def set_lanes(self, lanes: tuple[Lane, ...]) -> None:
        """Show other lanes."""
        self.beginResetModel()
        self.lanes = lanes
        self._columns = max((lane.bar_count for lane in lanes), default=0)
        self.endResetModel()

    def bar(self, index: _Index) -> Bar | None:
        """The bar of a cell; None past the last bar of its lane."""
        if not index.isValid() or index.column() >= self.lanes[index.row()].bar_count:
            return None
        return self.lanes[index.row()].bars[index.column()]

    @override
    def rowCount(self, parent: _Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self.lanes)

    @override
    def columnCount(self, parent: _Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else self._columns

    @override
    def flags(self, index: _Index) -> Qt.ItemFlag:
        if self.bar(index) is None:
            return Qt.ItemFlag.NoItemFlags
        return Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable

    @override
    def data(self, index: _Index, role: int = _Role.DisplayRole) -> Any:
        bar = self.bar(index)
        if bar is None:
            return None
        if role in {_Role.AccessibleTextRole, _Role.DisplayRole}:
            return bar_words.name(bar)
        if role == _Role.AccessibleDescriptionRole:
            return " ".join(bar_words.lines(bar))
        if role == _Role.ToolTipRole:
            return bar_words.tooltip(bar)
        return None

    @override
    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = _Role.DisplayRole
    ) -> Any:
        if orientation is Qt.Orientation.Horizontal:
            return _column(section) if role == _Role.AccessibleTextRole else None
        lane = self.lanes[section]
        name = words.piece_name(lane.piece)
        if role in {_Role.DisplayRole, _Role.AccessibleTextRole}:
            return name
        if role in {_Role.AccessibleDescriptionRole, _Role.ToolTipRole}:
            return "\n".join([name, *bar_words.lane_lines(lane)])
        return None


def _column(section: int) -> str:
    return translate("timeline", "bar {number}").format(number=section + 1)
