"""The safe window of one joint, from the coat below where it stands."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.clocks.stage_times import ALWAYS
from studio_planner.science.stages import Edge

if TYPE_CHECKING:
    from studio_planner.planning.clocks.edges import Edges
    from studio_planner.planning.problem import Task


def window_of(  # noqa: PLR0913 - each is one plain question
    edges: Edges,
    task: Task,
    below: Task,
    place: str,
    poured: tuple[int, int],
    *,
    likely: bool = False,
) -> tuple[int | None, int]:
    """When a coat's window opens (None: never in this record) and closes (ALWAYS: never).

    `poured` are the start and the end of the coat below, in seconds, which stands in `place`;
    the safe edges are given, or the likely ones.
    """
    start, end = poured
    opens: int | None = end
    closes = ALWAYS
    late, early = (Edge.LIKELY, Edge.LIKELY) if likely else (Edge.LATE, Edge.EARLY)
    if task.sheet_opens is not None:
        opening = edges.not_before(below.product, place, task.sheet_opens, late)
        opens = None if opening is None else opening.at(end)
    if task.sheet_closes is not None:
        closing = edges.not_after(below.product, place, task.sheet_closes, early)
        closes = ALWAYS if closing is None else closing.at(start)
    return opens, closes
