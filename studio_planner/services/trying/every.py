"""Everything that can be tried, in the order it is shown."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.services.trying import (
    being_away,
    heating,
    more_hours,
    more_spots,
    pouring_then,
    warm_boxes,
)

if TYPE_CHECKING:
    from studio_planner.services.trying.trial import WhatIf

WHAT_IFS: tuple[WhatIf, ...] = (
    heating.WHAT_IF,
    pouring_then.WHAT_IF,
    more_hours.EVENING_MORE,
    more_hours.EARLIER,
    more_spots.WHAT_IF,
    warm_boxes.WHAT_IF,
    being_away.WHAT_IF,
)
