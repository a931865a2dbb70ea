"""Spots as a table, a row for a spot and a cell for a piece on it, so that all can read it."""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex
from typing_extensions import override

from studio_planner.desktop import words
from studio_planner.desktop.cell_model import CellModel, Index, Role
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtCore import QObject

    from studio_planner.services.moving.spot_lanes import SpotLane, Standing
    from studio_planner.services.ribbons import Ribbon


class SpotModel(CellModel):
    """Spots and what stands on them; each has a name and a description in words."""

    def __init__(self, parent: QObject | None = None) -> None:
        """Start without spots."""
        super().__init__(parent)
        self.spots: tuple[SpotLane, ...] = ()

    def set_spots(self, spots: tuple[SpotLane, ...]) -> None:
        """Show other spots."""
        self.beginResetModel()
        self.spots = spots
        self.set_lengths(tuple(len(spot.stands) for spot in spots))
        self.endResetModel()

    def standing(self, index: Index) -> Standing | None:
        """What a cell stands for; None past the last of its spot."""
        there = self.has_cell(index)
        return self.spots[index.row()].stands[index.column()] if there else None

    def place_of(self, piece: str, coat: str) -> QModelIndex:
        """The cell of the stay on which a piece gets a coat; invalid where there is none."""
        for row, spot in enumerate(self.spots):
            for column, one in enumerate(spot.stands):
                if one.piece.key == piece and any(c.coat == coat for c in one.coats):
                    return self.index(row, column)
        return QModelIndex()

    def row_of(self, spot: str) -> int:
        """The row of a spot (a key)."""
        return next(row for row, lane in enumerate(self.spots) if lane.spot.key == spot)

    @override
    def cell_says(self, index: Index, role: int) -> str | None:
        spot = self.spots[index.row()]
        one = spot.stands[index.column()]
        if role in {Role.AccessibleTextRole, Role.DisplayRole}:
            text = translate("spots", "{piece} on {spot}, {coats}")
            return text.format(
                piece=words.piece_name(one.piece), spot=spot.spot.name, coats=coats_of(one)
            )
        if role == Role.AccessibleDescriptionRole:
            return span_of(one)
        if role == Role.ToolTipRole:
            name = f"<b>{escape(words.piece_name(one.piece))}</b>"
            return "<br>".join([name, escape(coats_of(one)), escape(span_of(one))])
        return None

    @override
    def row_says(self, row: int, role: int) -> str | None:
        spot = self.spots[row]
        if role in {Role.DisplayRole, Role.AccessibleTextRole}:
            return spot.spot.name
        if role in {Role.AccessibleDescriptionRole, Role.ToolTipRole}:
            return f"{spot.spot.name}, {spot.place.name}"
        return None

    @override
    def column_says(self, column: int) -> str:
        return f"{column + 1}"


def coats_of(one: Standing) -> str:
    """The coats that a piece gets while it stands there; which are pinned is said."""
    pinned = translate("spots", "{coat}, pinned")
    return ", ".join(
        pinned.format(coat=name) if coat.coat in one.lane.pinned and not coat.poured else name
        for coat, name in ((c, one.piece.coat_name(c.coat)) for c in one.coats)
    )


def pours_of(one: Standing) -> list[Ribbon]:
    """The pours of a stay as bars of its lane, in order of time."""
    keys = {coat.coat for coat in one.coats}
    return [bar for bar in one.lane.ribbons if bar.coat.key in keys]


def pour_at(one: Standing, second: float) -> Ribbon:
    """The pour of a stay that was begun last at an instant [s], else its first."""
    pours = pours_of(one)
    begun = [bar for bar in pours if bar.begins <= second]
    return begun[-1] if begun else pours[0]


def pour_to_come(one: Standing) -> Ribbon:
    """The first pour of a stay that is not poured yet, else its last."""
    pours = pours_of(one)
    return next((bar for bar in pours if not bar.planned.poured), pours[-1])


def span_of(one: Standing) -> str:
    """From when to when it takes the spot."""
    wall = words.wall_of(one.lane.studio)
    if one.end is None:
        text = translate("spots", "On the spot from {start}, not free in the time looked at.")
        return text.format(start=words.moment(one.start, wall))
    text = translate("spots", "On the spot {span}, until it can be handled or goes on.")
    return text.format(span=words.span(one.start, one.end, wall))
