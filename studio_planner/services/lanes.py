"""A studio's lanes: what its plan has for each piece, or without a plan what was poured."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol, TypeVar

from studio_planner.craft.local_time import clipped
from studio_planner.craft.plans import pours_as_planned
from studio_planner.services.doorways import Hands
from studio_planner.services.ribbons import Lane, PlannedStudio

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import datetime

    from studio_planner.craft.local_time import Span
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.craft.timing import Timing


class _OfPiece(Protocol):
    @property
    def piece(self) -> str: ...


_Planned = TypeVar("_Planned", bound=_OfPiece)


def lanes_of(studio: Studio, plan: Plan | None, timing: Timing) -> tuple[Lane, ...]:
    """Give one lane for each piece, in the studio's order; without a plan, what was poured."""
    hands = Hands(_working(studio, timing.start, timing.end))
    whole = PlannedStudio(studio, plan, timing, hands)
    coats = _by_piece(plan.coats if plan else pours_as_planned(studio.poured))
    steps = _by_piece(plan.steps if plan else ())
    ready = _by_piece(plan.ready if plan else ())
    return tuple(
        Lane(
            whole,
            piece,
            coats.get(piece.key, ()),
            steps.get(piece.key, ()),
            ready.get(piece.key, ()),
        )
        for piece in studio.pieces
    )


def _working(studio: Studio, start: datetime, end: datetime) -> tuple[Span, ...]:
    zone = studio.time_zone
    spans = (span for person in studio.people for span in person.working(zone, start, end))
    return clipped(spans, start, end)


def _by_piece(rows: Iterable[_Planned]) -> dict[str, list[_Planned]]:
    found: dict[str, list[_Planned]] = {}
    for row in rows:
        found.setdefault(row.piece, []).append(row)
    return found
