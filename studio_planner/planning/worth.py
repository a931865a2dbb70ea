"""What a plan is worth: its goals in their strict order, less is better in each."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from studio_planner.craft.plans import Goal, GoalValue

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping, Sequence

    from studio_planner.craft.plans import Plan
    from studio_planner.planning.placing.placements import Placement
    from studio_planner.planning.placing.placer import Stuck

MOVED_SECONDS = 30 * 60
"""A pour that starts up to so much earlier or later than before has not been moved."""

UP_TO_LATE, UP_TO_MOVED = 2, 5
"""How many goals there are up to lateness, and up to moved pours."""

Starts = dict[tuple[str, str], int]
"""Planned starts [s] by piece and coat."""


class Worth(NamedTuple):
    """The goals in their order; two of them compare as the plans do."""

    left_out: int
    late: float
    scuffed: int
    tested: int
    moved: int
    spare: float
    mixes: int
    ends: float


_GOALS = (
    Goal.LEFT_OUT,
    Goal.LATENESS,
    Goal.SCUFFED,
    Goal.TESTED,
    Goal.MOVED,
    Goal.SPARE,
    Goal.MIXES,
    Goal.ENDS,
)


def worth_of(placed: Sequence[Placement], left_out: int, now: int, before: Starts) -> Worth:
    """The worth of placements, with so many pieces left out, against the starts before."""
    return Worth(
        left_out=left_out,
        late=_total(hours_late(placed)),
        scuffed=sum(one.score[1] * len(one.chain.pieces) for one in placed),
        tested=sum(one.score[2] * len(one.chain.pieces) for one in placed),
        moved=sum(moved_pours(one, before) for one in placed) if before else 0,
        spare=_total(of_orders(placed, 3)),
        mixes=len({label for one in placed for label in mix_labels(one)}),
        ends=round(sum((end - now) / 3600.0 for one in placed for end in _ends(one)), 6),
    )


def lost(placed: Iterable[Placement], stuck: Iterable[Stuck]) -> tuple[int, float]:
    """The worth of placements up to lateness, soon told; `stuck` is what has no place."""
    return pieces_of(stuck), _total(hours_late(placed))


def pieces_of(stuck: Iterable[Stuck]) -> int:
    """How many pieces have no place."""
    return sum(len(one.chain.pieces) for one in stuck)


def hours_late(placed: Iterable[Placement]) -> dict[str, float]:
    """The weighted hours by which each order is late, by its key."""
    return of_orders(placed, 0)


def of_orders(placed: Iterable[Placement], part: int) -> dict[str, float]:
    """What each order has of a part of the score: that of its worst chain."""
    most: dict[str, float] = {}
    for one in placed:
        order = one.chain.order
        if order is not None:
            most[order.key] = max(most.get(order.key, 0.0), one.score[part])
    return most


def _total(hours: Mapping[str, float]) -> float:
    return round(sum(hours.values()), 6)


def _ends(placement: Placement) -> list[float]:
    """When each piece of a chain is done: packed, or its last block over."""
    packed = [float(pack.end) for pack in placement.packed]
    return packed or [placement.score[4]] * len(placement.chain.pieces)


def moved_pours(placement: Placement, before: Starts) -> int:
    """How many pours of a chain's pieces start at another time than before."""
    chain = placement.chain
    moved = 0
    for task, start in zip(chain.tasks, placement.starts, strict=True):
        for piece in chain.pieces if task.fixed is None else ():
            then = before.get((piece.key, task.coat.key))
            moved += then is not None and abs(start - then) > MOVED_SECONDS
    return moved


def mix_labels(placement: Placement) -> Iterable[str]:
    """The names of the mixes that a chain's new coats are poured from."""
    for index in range(placement.chain.first, len(placement.starts)):
        yield mix_label(placement, index)


def mix_label(placement: Placement, index: int) -> str:
    """The name of a coat's mix: the one it shares, or one of its own (twins have one)."""
    chain = placement.chain
    own = f"{chain.key}/{chain.tasks[index].coat.key}"
    return placement.laid.mix(index) or own


def by_goal(worth: Worth) -> dict[Goal, float]:
    """The value of each goal, in their order."""
    return dict(zip(_GOALS, worth, strict=True))


def goals_of(worth: Worth, bounds: Mapping[Goal, float]) -> tuple[GoalValue, ...]:
    """The goals of a plan with the bounds that are known; nothing gets below zero."""
    rows = []
    best_so_far = True
    for goal, value in by_goal(worth).items():
        bound = bounds.get(goal)
        if bound is None and value == 0 and best_so_far and goal in _COUNTED_FROM_ZERO:
            bound = 0.0
        row = GoalValue(goal=goal, value=value, bound=bound if best_so_far else None)
        # A bound holds among the plans that are as good before; that has to be known.
        best_so_far = best_so_far and row.proved
        rows.append(row)
    return tuple(rows)


_COUNTED_FROM_ZERO = frozenset(_GOALS) - {Goal.MIXES, Goal.ENDS}


def starts_of(plan: Plan | None) -> Starts:
    """The starts of a plan's coats that were not poured when it was made."""
    if plan is None:
        return {}
    return {
        (coat.piece, coat.coat): int(coat.start.timestamp())
        for coat in plan.coats
        if not coat.poured
    }
