"""Draws the spots, and over them ghosts, a piece in the hand, and why a drop was refused."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

from studio_planner.desktop.timeline_work.spot_drawing import BoxLook
from studio_planner.services.moving.spot_lanes import spot_lanes

if TYPE_CHECKING:
    from PySide6.QtCore import QModelIndex
    from PySide6.QtGui import QPainter
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.timeline_work.drag import Drag
    from studio_planner.desktop.timeline_work.plan_work import PlanWork
    from studio_planner.desktop.timeline_work.slip import Slip
    from studio_planner.desktop.timeline_work.spot_drawing import SpotDrawing
    from studio_planner.desktop.timeline_work.spot_model import SpotModel


class Spots(Protocol):
    """The table that is drawn on."""

    spots: SpotModel

    @property
    def at_work(self) -> PlanWork | None:
        """What is done with the plan; None while nothing was."""
        ...

    def top_of(self, row: int) -> float:
        """The y of the upper edge of a row in the viewport."""
        ...

    def viewport(self) -> QWidget:
        """What is drawn on."""
        ...

    def currentIndex(self) -> QModelIndex:  # noqa: N802 - Qt's name
        """The chosen cell."""
        ...

    def hasFocus(self) -> bool:  # noqa: N802 - Qt's name
        """Whether the table has the keys."""
        ...


def paint_stands(painter: QPainter, table: Spots, drawing: SpotDrawing, key: str) -> None:
    """Draw the boards and what stands on them; what is in the hand is only outlined."""
    current = table.spots.standing(table.currentIndex())
    drag = None if table.at_work is None else table.at_work.drag
    in_hand = set() if drag is None else {coat.piece for coat in drag.judge.mix}
    for row, spot in enumerate(table.spots.spots):
        top = table.top_of(row)
        drawing.draw_board(painter, top, float(table.viewport().width()))
        for one in spot.stands:
            if one.piece.key in in_hand:
                drawing.draw_left_behind(painter, one, top)
                continue
            look = BoxLook(one is current, one.piece.key == key, table.hasFocus())
            drawing.draw_box(painter, one, top, look)


def paint_work(painter: QPainter, table: Spots, drawing: SpotDrawing, work: PlanWork) -> None:
    """Draw all of it, whatever there is."""
    tops = _tops(table)
    moved = work.aftermath.difference.moved
    if moved:
        rows = ((pour, tops.get(pour.before.spot), tops.get(pour.after.spot)) for pour in moved)
        drawing.draw_ghosts(painter, rows)
    if work.drag is not None:
        _paint_drag(painter, table, drawing, work.drag)
        _paint_slip(painter, table, drawing, work.drag, work.drag.slip)
    elif work.refusal is not None:
        _paint_slip(painter, table, drawing, work.refusal.drag, work.refusal.slip)


def _tops(table: Spots) -> dict[str, float]:
    return {lane.spot.key: table.top_of(row) for row, lane in enumerate(table.spots.spots)}


def _paint_drag(painter: QPainter, table: Spots, drawing: SpotDrawing, drag: Drag) -> None:
    """The stays of its mix as they would be; those of the pours themselves are framed."""
    coats = {(coat.piece, coat.coat) for coat in drag.judge.mix}
    for lane, top in zip(
        spot_lanes(drag.judge.view, drag.lanes), _tops(table).values(), strict=True
    ):
        for one in lane.stands:
            mine = any((coat.piece, coat.coat) in coats for coat in one.coats)
            drawing.draw_box(painter, one, top, BoxLook(same_piece=mine))
            if mine:
                drawing.draw_frame(painter, one, top, allowed=drag.verdict.allowed)


def _paint_slip(
    painter: QPainter, table: Spots, drawing: SpotDrawing, drag: Drag, slip: Slip
) -> None:
    top = _tops(table).get(drag.spot)
    if top is not None:
        size = table.viewport().size().toSizeF()
        drawing.draw_slip(painter, slip, top, drag.wanted.timestamp(), size)
