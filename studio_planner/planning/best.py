"""The best plan: the quick one at once, then better ones from a process of its own.

The solver is heavy and may fail in ways that end its process; what was found before is safe.
"""

from __future__ import annotations

from dataclasses import replace
from multiprocessing import get_context
from time import monotonic
from typing import TYPE_CHECKING

from studio_planner.planning.quick import quick_plan
from studio_planner.planning.solving import Request, serve

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from datetime import datetime
    from multiprocessing.connection import Connection
    from multiprocessing.process import BaseProcess

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio

_GRACE = 30.0
"""Seconds beyond those asked for, in which the last plan may still be written and rehearsed."""

_ONCE_MORE = 3.0
"""With so many seconds left a search that broke down is begun again."""


def best_plan(  # noqa: PLR0913 - each is one plain question
    studio: Studio,
    now: datetime,
    until: datetime | None = None,
    *,
    seconds: float,
    seed: int = 0,
    told: Callable[[Plan], None] | None = None,
) -> Plan:
    """Plan everything from `now` on as well as can be done in some seconds.

    Parameters
    ----------
    studio
        The studio; what it has poured stays, and its kept plan is moved as little as possible.
    now
        Aware instant; nothing new starts before it.
    until
        Pours start before it; None lets everything be planned to its end.
    seconds
        How long better plans are looked for; it ends sooner when nothing can be better.
    seed
        Where the search's draws begin.
    told
        Gets the quick plan, and then each better one.

    Returns
    -------
    Plan
        With its goals and their bounds; rehearsed, unless the solving process failed.

    Raises
    ------
    NoPlanPossible
        As the quick plan does.
    """
    begun = monotonic()
    quick = quick_plan(studio, now, until)
    kept = _Kept(quick, told)
    for again in range(2 if seconds > 0 else 0):
        left = seconds - (monotonic() - begun)
        if again and left < _ONCE_MORE:
            break
        if kept.all_of(_found(Request(studio, now, until, left, seed + again))):
            break
    return replace(kept.best, solved_seconds=round(monotonic() - begun, 1))


class _Kept:
    """The best plan so far, told whenever it changes."""

    def __init__(self, quick: Plan, told: Callable[[Plan], None] | None) -> None:
        self._told = told
        self._take(quick)

    def _take(self, plan: Plan) -> None:
        self.best = plan
        if self._told is not None:
            self._told(plan)

    def all_of(self, plans: Iterator[Plan]) -> bool:
        """Take what is no worse; tell whether a rehearsed plan came, which is the last one."""
        ended = False
        for plan in plans:
            ended = ended or bool(plan.rehearsals)
            if _worth(plan) <= _worth(self.best):
                self._take(plan)
        return ended


def _worth(plan: Plan) -> tuple[float, ...]:
    return tuple(goal.value for goal in plan.goals)


def _found(request: Request) -> Iterator[Plan]:
    """The plans that the solving process finds; they end when it does, in whichever way."""
    context = get_context("spawn")
    ours, theirs = context.Pipe()
    process = context.Process(target=serve, args=(theirs, request), daemon=True)
    process.start()
    theirs.close()
    try:
        yield from _received(ours, monotonic() + request.seconds + _GRACE)
    finally:
        ours.close()
        _ended(process)


def _received(connection: Connection, deadline: float) -> Iterator[Plan]:
    while (left := deadline - monotonic()) > 0:
        try:
            if not connection.poll(left):
                return
            plan = connection.recv()
        except (EOFError, OSError):
            return
        if plan is None:
            return
        yield plan


def _ended(process: BaseProcess) -> None:
    process.join(1.0)
    if process.is_alive():
        process.kill()
        process.join()
