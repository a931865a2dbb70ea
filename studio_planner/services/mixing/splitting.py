"""When a mix is better made in two, and what pieces save that share one."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.services.mixing.cup_plan import PortionTime, portion_time
from studio_planner.services.weighing import amounts_of, weigh_mix

if TYPE_CHECKING:
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio

_MOST_PORTIONS = 8
"""Nobody weighs one mix in more portions, one after the other (our choice)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Split:
    """How many portions a mix is weighed in, and in how many it would be out of its cups.

    `needed_parts` is None where no number of portions that can be weighed is quick enough, and
    the same as `parts` where nothing has to change.
    """

    parts: int
    needed_parts: int | None
    times: tuple[PortionTime, ...]

    @property
    def fits(self) -> bool:
        """Whether the mix is out of its cups in time as it is weighed."""
        return self.needed_parts == self.parts


@dataclass(frozen=True, slots=True, kw_only=True)
class Saving:
    """What pieces save that share a mix: whole mixes, grams of mix, attended minutes."""

    mixes: int
    grams: float
    minutes: float


def split_of(studio: Studio, coats: tuple[PlannedCoat, ...]) -> Split:
    """Whether the mix of these coats is out of its cups in time, or in how many portions."""
    portions = weigh_mix(studio, coats)
    times = tuple(portion_time(studio, portion) for portion in portions)
    needed: int | None = len(portions)
    if any(one.in_time is False for one in times):
        needed = _needed(studio, coats, len(portions))
    return Split(parts=len(portions), needed_parts=needed, times=times)


def _needed(studio: Studio, coats: tuple[PlannedCoat, ...], parts: int) -> int | None:
    for more in range(parts + 1, _MOST_PORTIONS + 1):
        first = weigh_mix(studio, coats, more)[0]
        if portion_time(studio, first).in_time:
            return more
    return None


def saved_by_sharing(studio: Studio, coats: tuple[PlannedCoat, ...]) -> Saving:
    """What the coats of one mix save against a mix for each: cups, smallest mixes, set-ups."""
    entered = [(studio.piece(c.piece), studio.piece(c.piece).coat(c.coat)) for c in coats]
    together = amounts_of(studio, entered)
    alone = [amounts_of(studio, [one]) for one in entered]
    set_up = max(coat.setup_minutes for _, coat in entered) * together.parts
    set_ups = sum(
        coat.setup_minutes * amounts.parts
        for (_, coat), amounts in zip(entered, alone, strict=True)
    )
    return Saving(
        mixes=sum(amounts.parts for amounts in alone) - together.parts,
        grams=sum(amounts.total_grams for amounts in alone) - together.total_grams,
        minutes=float(set_ups - set_up),
    )
