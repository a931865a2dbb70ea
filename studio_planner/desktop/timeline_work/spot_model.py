"""Spots as a table, a row for a spot and a cell for a piece on it, so that all can read it."""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt
from typing_extensions import override

from studio_planner.desktop import words
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from studio_planner.services.moving.spot_lanes import SpotLane, Standing

_Index = QModelIndex | QPersistentModelIndex
_Role = Qt.ItemDataRole


class SpotModel(QAbstractTableModel):
    """Spots and what stands on them; each has a name and a description in words."""

    def __init__(self, parent: QObject | None = None) -> None:
        """Start without spots."""
        super().__init__(parent)
        self.spots: tuple[SpotLane, ...] = ()
        self._columns = 0

    def set_spots(self, spots: tuple[SpotLane, ...]) -> None:
        """Show other spots."""
        self.beginResetModel()
        self.spots = spots
        self._columns = max((len(spot.stands) for spot in spots), default=0)
        self.endResetModel()

    def standing(self, index: _Index) -> Standing | None:
        """What a cell stands for; None past the last of its spot."""
        if not index.isValid() or index.column() >= len(self.spots[index.row()].stands):
            return None
        return self.spots[index.row()].stands[index.column()]

    @override
    def rowCount(self, parent: _Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else len(self.spots)

    @override
    def columnCount(self, parent: _Index = QModelIndex()) -> int:
        return 0 if parent.isValid() else self._columns

    @override
    def flags(self, index: _Index) -> Qt.ItemFlag:
        if self.standing(index) is None:
            return Qt.ItemFlag.NoItemFlags
        return Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable

    @override
    def data(self, index: _Index, role: int = _Role.DisplayRole) -> Any:
        one = self.standing(index)
        if one is None:
            return None
        spot = self.spots[index.row()].spot.name
        if role in {_Role.AccessibleTextRole, _Role.DisplayRole}:
            text = translate("spots", "{piece} on {spot}, {coats}")
            return text.format(
                piece=words.piece_name(one.piece), spot=spot, coats=coats_of(one)
            )
        if role == _Role.AccessibleDescriptionRole:
            return span_of(one)
        if role == _Role.ToolTipRole:
            name = f"<b>{escape(words.piece_name(one.piece))}</b>"
            return "<br>".join([name, escape(coats_of(one)), escape(span_of(one))])
        return None

    @override
    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = _Role.DisplayRole
    ) -> Any:
        if orientation is Qt.Orientation.Horizontal:
            return f"{section + 1}" if role == _Role.AccessibleTextRole else None
        spot = self.spots[section]
        if role in {_Role.DisplayRole, _Role.AccessibleTextRole}:
            return spot.spot.name
        if role in {_Role.AccessibleDescriptionRole, _Role.ToolTipRole}:
            return f"{spot.spot.name}, {spot.place.name}"
        return None


def coats_of(one: Standing) -> str:
    """The coats that a piece gets while it stands there."""
    return ", ".join(one.piece.coat_name(coat.coat) for coat in one.coats)


def span_of(one: Standing) -> str:
    """From when to when it takes the spot."""
    wall = words.wall_of(one.lane.studio)
    if one.end is None:
        text = translate("spots", "On the spot from {start}, not free in the time looked at.")
        return text.format(start=words.moment(one.start, wall))
    text = translate("spots", "On the spot {span}, until it can be handled or goes on.")
    return text.format(span=words.span(one.start, one.end, wall))
