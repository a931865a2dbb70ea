"""What of a chain's old place in the week a search has to keep, or tries first."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.planning.placing.chain_times import Ground
    from studio_planner.planning.spans import Stretch


@dataclass(frozen=True, slots=True)
class Pins:
    """What stays of a chain, by the positions of its coats; everything in seconds.

    `grounds` are one for each coat, none where all stand on the ground that is tried. A coat
    starts within its stretch of `ranges`, and at its start of `wishes` where that serves.
    `sandings` stay as they were where they can. For `shared` coats the hands are booked
    already, with another chain's coat of the same mix.
    """

    grounds: tuple[Ground, ...] = ()
    ranges: Mapping[int, Stretch] = field(default_factory=dict)
    wishes: Mapping[int, int] = field(default_factory=dict)
    sandings: Mapping[int, tuple[int, int]] = field(default_factory=dict)
    shared: frozenset[int] = frozenset()


UNPINNED = Pins()
"""Nothing has to stay."""
