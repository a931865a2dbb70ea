"""What can be said to a customer: when an order can leave, likely and for sure, and why."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.orders import Gate
from studio_planner.services.left_out import why_left_out
from studio_planner.services.promises import promise_of

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.orders import Order
    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.plans import Change, Outcome, Plan
    from studio_planner.craft.studio import Studio

_LOOKED_AHEAD = timedelta(days=30)
"""How far ahead hands to pack are looked for (our choice)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class GateTime:
    """When a piece may pass a gate, likely and for sure; None: not in the time looked at."""

    gate: Gate
    likely: datetime | None
    safe: datetime | None


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceAnswer:
    """A piece of an order and its gates; `reason` says why it is not planned, else empty."""

    piece: Piece
    gates: tuple[GateTime, ...]
    reason: str


@dataclass(frozen=True, slots=True, kw_only=True)
class OrderAnswer:
    """An order: when it is due, when it leaves, likely and for sure, and what was tried.

    `safe` is what the plan reckons with, `likely` when it leaves if every coat cures as it
    most likely does and somebody packs it then. Both are None where a piece is not planned.
    What has left has done so at `shipped`, which is its safe date then.
    """

    order: Order
    due: datetime
    likely: datetime | None
    safe: datetime | None
    outcome: Outcome | None
    pieces: tuple[PieceAnswer, ...]
    shipped: datetime | None = None

    @property
    def reason(self) -> str:
        """What binds a late order; empty where the promise is kept."""
        return str(self.outcome.reason) if self.outcome else ""

    @property
    def changes(self) -> tuple[Change, ...]:
        """The changes that were tried for it, those that keep the promise first."""
        tried = self.outcome.changes if self.outcome else ()
        return tuple(sorted(tried, key=lambda change: not change.keeps_promise))


def answer_for(studio: Studio, plan: Plan | None, key: str, now: datetime) -> OrderAnswer:
    """Answer at `now` (aware) for the order of that key; KeyError when there is none."""
    order = next((order for order in studio.orders if order.key == key), None)
    if order is None:
        raise KeyError(key)
    kept = promise_of(studio, plan, order)
    pieces = tuple(_piece_answer(studio, plan, piece) for piece in order.pieces)
    safe = kept.outcome.leaves if kept.outcome else None
    return OrderAnswer(
        order=order,
        due=order.due(studio.time_zone),
        likely=_likely(studio, order, pieces, safe, now)
        if safe is not None and kept.shipped is None
        else None,
        safe=safe,
        outcome=kept.outcome,
        pieces=pieces,
        shipped=kept.shipped,
    )


def _piece_answer(studio: Studio, plan: Plan | None, key: str) -> PieceAnswer:
    ready = {row.stage: row for row in plan.ready if row.piece == key} if plan else {}
    return PieceAnswer(
        piece=studio.piece(key),
        gates=tuple(
            GateTime(
                gate=gate,
                likely=ready[gate.stage].likely if gate.stage in ready else None,
                safe=ready[gate.stage].safe if gate.stage in ready else None,
            )
            for gate in Gate
        ),
        reason=why_left_out(plan, studio.piece(key)),
    )


def _likely(
    studio: Studio, order: Order, pieces: Iterable[PieceAnswer], safe: datetime, now: datetime
) -> datetime | None:
    """When it likely leaves: never in the past, nor later than for sure, on every margin."""
    ready = [gate.likely for row in pieces for gate in row.gates if gate.gate is order.gate]
    known = [when for when in ready if when is not None]
    if len(known) < len(ready) or not known:
        return None
    packed = _packed(
        studio, max(now, *known), timedelta(minutes=order.packing_minutes * len(known))
    )
    return None if packed is None else min(order.leaves(studio.time_zone, packed), safe)


def _packed(studio: Studio, ready: datetime, work: timedelta) -> datetime | None:
    """The first instant at which somebody can have worked so long since then."""
    ends = []
    for person in studio.people:
        left = work
        for start, end in person.working(studio.time_zone, ready, ready + _LOOKED_AHEAD):
            if end - start >= left:
                ends.append(start + left)
                break
            left -= end - start
    return min(ends, default=None)
