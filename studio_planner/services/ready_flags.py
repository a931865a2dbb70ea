"""When a whole piece is ready: to handle, to pack, and fully cured."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence
    from datetime import datetime

    from studio_planner.craft.plans import Readiness
    from studio_planner.services.film_shades import Film

FLAG_STAGES = (Stage.HANDLE, Stage.PRINT_FREE, Stage.FULL_CURE)
"""What a maker waits for once the last coat is on: to handle, to pack, and full cure."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Flag:
    """When a whole piece is ready for something: likely and safe; None: not in this record."""

    stage: Stage
    likely: datetime | None
    safe: datetime | None


def kept_flags(ready: Iterable[Readiness]) -> tuple[Flag, ...]:
    """The flags that a plan has kept for a piece."""
    kept = {row.stage: row for row in ready}
    rows = (kept[stage] for stage in FLAG_STAGES if stage in kept)
    return tuple(Flag(stage=row.stage, likely=row.likely, safe=row.safe) for row in rows)


def flags_of(films: Sequence[Film]) -> tuple[Flag, ...]:
    """The flags that the clocks of all films of a piece give."""
    found = (_flag(stage, films) for stage in FLAG_STAGES)
    return tuple(flag for flag in found if flag is not None)


def _flag(stage: Stage, films: Sequence[Film]) -> Flag | None:
    known = [film for film in films if any(p.stage is stage for p in film.product.sheet)]
    if not known:
        return None
    likely = [film.reached(stage, Edge.LIKELY) for film in known]
    safe = [film.reached(stage, Edge.LATE) for film in known]
    return Flag(stage=stage, likely=_latest(likely), safe=_latest(safe))


def _latest(whens: Iterable[datetime | None]) -> datetime | None:
    found = list(whens)
    known = [when for when in found if when is not None]
    return max(known) if known and len(known) == len(found) else None
