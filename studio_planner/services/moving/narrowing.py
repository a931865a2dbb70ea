"""Which lanes a maker wants to see: by what is typed, only late ones, only this week's."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import instant

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import datetime

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView
    from studio_planner.services.ribbons import Lane

_WEEK = timedelta(days=7)


@dataclass(frozen=True, slots=True, kw_only=True)
class Wanted:
    """What of a plan is wanted; everything at first.

    Every word of `text` has to be in the name of the piece, its order, a product or a colour.
    """

    text: str = ""
    late: bool = False
    week: bool = False

    @property
    def everything(self) -> bool:
        """Whether nothing is left out."""
        return not (self.text.strip() or self.late or self.week)


def narrowed(view: DeskView, wanted: Wanted) -> tuple[Lane, ...]:
    """The lanes that are wanted, in their order."""
    if wanted.everything:
        return view.lanes
    words = wanted.text.casefold().split()
    late = _late_pieces(view) if wanted.late else None
    week = _week_of(view.studio, view.now)
    return tuple(
        lane
        for lane in view.lanes
        if _says(view.studio, lane.piece, words)
        and (late is None or lane.piece.key in late)
        and (not wanted.week or _in_week(lane, *week))
    )


def _says(studio: Studio, piece: Piece, words: list[str]) -> bool:
    if not words:
        return True
    text = "\n".join(_texts(studio, piece)).casefold()
    return all(word in text for word in words)


def _texts(studio: Studio, piece: Piece) -> Iterator[str]:
    yield piece.name
    order = studio.order_of(piece.key)
    if order is not None:
        yield order.name
    for coat in piece.stack:
        yield studio.product(coat.product).name
        yield from coat.colour_names


def _late_pieces(view: DeskView) -> set[str]:
    """The pieces of orders that are late or not planned, and pieces that are not planned."""
    plan = view.plan
    outcomes = plan.outcomes if plan else ()
    late = {row.order for row in outcomes if row.late_hours != 0.0}
    found = {key for order in view.studio.orders if order.key in late for key in order.pieces}
    return found | {row.piece for row in (plan.unplanned if plan else ())}


def _week_of(studio: Studio, now: datetime) -> tuple[datetime, datetime]:
    """The calendar week around an instant, from the day that the studio's week starts on."""
    zone = studio.time_zone
    first = studio.units.first_of_week(now.astimezone(zone).date())
    midnight = now.min.time()
    return instant(zone, first, midnight), instant(zone, first + _WEEK, midnight)


def _in_week(lane: Lane, start: datetime, end: datetime) -> bool:
    return any(start <= bar.start < end for bar in lane.bars)
