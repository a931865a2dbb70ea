"""The lanes as a table, one row for a piece and one cell for a bar, so that all can read it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from typing_extensions import override

from studio_planner.desktop import bar_words, words
from studio_planner.desktop.cell_model import CellModel, Index, Role
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtCore import QObject

    from studio_planner.services.ribbons import Bar, Lane


class LaneModel(CellModel):
    """Lanes and their bars; every bar has a name and a description in words."""

    def __init__(self, parent: QObject | None = None) -> None:
        """Start without lanes."""
        super().__init__(parent)
        self.lanes: tuple[Lane, ...] = ()

    def set_lanes(self, lanes: tuple[Lane, ...]) -> None:
        """Show other lanes."""
        self.beginResetModel()
        self.lanes = lanes
        # How many bars there are is known before they are laid out.
        self.set_lengths(tuple(lane.bar_count for lane in lanes))
        self.endResetModel()

    def bar(self, index: Index) -> Bar | None:
        """The bar of a cell; None past the last bar of its lane."""
        there = self.has_cell(index)
        return self.lanes[index.row()].bars[index.column()] if there else None

    @override
    def cell_says(self, index: Index, role: int) -> str | None:
        bar = self.lanes[index.row()].bars[index.column()]
        if role in {Role.AccessibleTextRole, Role.DisplayRole}:
            return bar_words.name(bar)
        if role == Role.AccessibleDescriptionRole:
            return " ".join(bar_words.lines(bar))
        return bar_words.tooltip(bar) if role == Role.ToolTipRole else None

    @override
    def row_says(self, row: int, role: int) -> str | None:
        lane = self.lanes[row]
        name = words.piece_name(lane.piece)
        if role in {Role.DisplayRole, Role.AccessibleTextRole}:
            return name
        if role in {Role.AccessibleDescriptionRole, Role.ToolTipRole}:
            return "\n".join([name, *bar_words.lane_lines(lane)])
        return None

    @override
    def column_says(self, column: int) -> str:
        return translate("timeline", "bar {number}").format(number=column + 1)
