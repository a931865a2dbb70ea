"""The kept plan with a pour moved in it, so that it stands where it was dropped at once."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.grid import next_on_grid
from studio_planner.services.moving.held import kept_steps

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.services.moving.held import Goes
    from studio_planner.services.moving.judging import Verdict


def moved_plan(plan: Plan, verdict: Verdict) -> Plan:
    """Give the plan with the coats and steps of a verdict in place of what it had for them.

    Later coats that would begin while the moved one is still poured are put behind it, until
    planning puts them where they belong. What was known of when its pieces are ready is left
    out, and coats are numbered anew in the order of their starts.
    """
    moved = {(coat.piece, coat.coat): coat for coat in verdict.coats}
    others = (*verdict.after, *verdict.along)
    renewed = moved | {(coat.piece, coat.coat): coat for coat in others}
    rows = [renewed.get((row.piece, row.coat), row) for row in plan.coats]
    pieces = {coat.piece for coat in verdict.coats}
    for key in pieces:
        rows = _behind(rows, key, verdict)
    rows.sort(key=lambda row: (row.start, row.number))
    steps = kept_steps(plan.steps, verdict.coats, verdict.steps)
    return replace(
        plan,
        coats=tuple(replace(row, number=number) for number, row in enumerate(rows, start=1)),
        steps=tuple(sorted([*steps, *verdict.steps], key=lambda step: step.start)),
        ready=tuple(row for row in plan.ready if row.piece not in pieces),
    )


def put_on_spot(plan: Plan, piece: str, goes: Goes) -> Plan:
    """Give the plan with a piece on another spot of the same place, at the same times.

    The clocks of a place are the same on all its spots, so nothing else is different.
    """
    return replace(
        plan,
        coats=tuple(
            replace(row, spot=goes.spot)
            if row.piece == piece and row.coat in goes.coats
            else row
            for row in plan.coats
        ),
    )


def _behind(rows: Iterable[PlannedCoat], piece: str, verdict: Verdict) -> list[PlannedCoat]:
    """Put the coats of a piece that begin during the moved one, or before it, behind it."""
    (lane,) = (lane for lane in verdict.lanes if lane.piece.key == piece)
    at = {coat.coat: lane.piece.position(coat.coat) for coat in lane.coats}
    free = max(at[coat.coat] for coat in verdict.coats if coat.piece == piece)
    after, ends = {}, verdict.end
    for coat in sorted(lane.coats, key=lambda coat: at[coat.coat]):
        if at[coat.coat] > free and coat.start < ends:
            length, start = coat.end - coat.start, next_on_grid(ends)
            after[coat.coat] = replace(coat, start=start, end=start + length, window=None)
            ends = start + length
    return [after.get(row.coat, row) if row.piece == piece else row for row in rows]
