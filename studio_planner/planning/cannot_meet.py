"""Coats that can never meet: such a piece is left out of a plan, and says why."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.joint_rules import clashes
from studio_planner.craft.plans import Unplanned
from studio_planner.craft.saying import saying

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.studio import Studio


def cannot_meet(studio: Studio, piece: Piece) -> list[Unplanned]:
    """One row for each coat of a piece that can never lie on the one below it."""
    return [
        Unplanned(
            piece=piece.key,
            coat=clash.coat,
            reason=saying(
                "missing",
                "{piece}, {coat}: {words}",
                piece=piece.name,
                coat=piece.coat_name_said(clash.coat),
                words=clash.sentence,
            ),
        )
        for clash in clashes(studio, piece)
    ]
