"""Why a piece is not planned, for where its name already stands."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.plans import Plan


def why_left_out(plan: Plan | None, piece: Piece) -> str:
    """Why a piece, or the rest of it, is not planned, without its name; empty when it is."""
    rows = plan.unplanned if plan else ()
    reason = next((str(row.reason) for row in rows if row.piece == piece.key), "")
    return reason.removeprefix(f"{piece.name}: ")
