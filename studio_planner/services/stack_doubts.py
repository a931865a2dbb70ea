"""What can hardly be meant in the stacks of a studio that was made elsewhere."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Joint
from studio_planner.craft.tongue import translate
from studio_planner.planning.cannot_meet import cannot_meet

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.studio import Studio


def stack_doubts(studio: Studio) -> tuple[str, ...]:
    """A sentence for each coat that cannot be planned, or not as its joint says, by piece."""
    return tuple(words for piece in studio.pieces for words in _doubts(studio, piece))


def _doubts(studio: Studio, piece: Piece) -> Iterator[str]:
    for row in cannot_meet(studio, piece):
        yield str(row.reason)
    for index, coat in enumerate(piece.stack):
        if coat.joint is Joint.WET_IN_WET and piece.below(index) is None:
            yield translate(
                "stacks",
                "{piece}, {coat}: it lies on the bare piece, where nothing is wet, and is "
                "planned on bare; put a coat below it, or choose in the window.",
            ).format(piece=piece.name, coat=piece.coat_name(coat.key))
