"""What was washed and sanded already: the joints that it scuffs, and its dust."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from studio_planner.craft.log import EntryKind

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import datetime

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.studio import Studio


def scuffed_at(
    studio: Studio, piece: Piece, index: int, sandings: Mapping[tuple[str, str], datetime]
) -> int | None:
    """The second at which a coat that is still to come was sanded for; None where it was not.

    It counts where the coat below was on by then and can be sanded, and the coat holds on that:
    what is meant wet in wet does not, nor does leaf.
    """
    coat, below = piece.stack[index], piece.below(index)
    at = sandings.get((piece.key, coat.key))
    if at is None or below is None or not coat.holds_on_sanded:
        return None
    lower = piece.stack[below]
    pours = {pour.coat: pour for pour in studio.pours_of(piece.key)}
    on = pours.get(lower.key)
    if coat.key in pours or on is None or not lower.sandable:
        return None
    second = at.timestamp()
    return math.ceil(second) if second >= on.start.timestamp() else None


def dust_until(studio: Studio) -> int:
    """The second until which the dust of all that was sanded settles; 0 where nothing was."""
    settle = 60 * studio.settings.settle_minutes
    sanded = (entry.at for entry in studio.standing if entry.kind is EntryKind.SANDED)
    return max((math.ceil(at.timestamp()) + settle for at in sanded), default=0)
