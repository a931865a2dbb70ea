"""What the solving process does: the only process that loads the solver."""

from __future__ import annotations

import os
from contextlib import suppress
from dataclasses import dataclass
from threading import Thread
from time import monotonic
from typing import TYPE_CHECKING

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.planning.exact.search import Effort, PlanSearch
from studio_planner.planning.quick import quick_start
from studio_planner.planning.rehearsal.rehearsed import with_rehearsal
from studio_planner.planning.rehearsal.rehearsing import rehearse
from studio_planner.planning.solver import load

if TYPE_CHECKING:
    from datetime import datetime
    from multiprocessing.connection import Connection

    from studio_planner.craft.plans import Goal, Plan
    from studio_planner.craft.studio import Studio

_PAUSE, _SPARING = 1.0, 10.0
"""Seconds between two plans that are told, and how many times as long as writing one took: it
takes time from the search."""

_FOR_THE_END = 0.12
"""The share of the time that is kept for writing and rehearsing the last plan."""


@dataclass(frozen=True, slots=True)
class Request:
    """What is asked of the solving process."""

    studio: Studio
    now: datetime
    until: datetime | None
    seconds: float
    seed: int


def serve(connection: Connection, request: Request) -> None:
    """Search as asked and send each better plan, the last one rehearsed; None is the end.

    Ends at once when the other side of the connection is gone.
    """
    Thread(target=_end_with, args=(connection,), daemon=True).start()
    begun = monotonic()
    with suppress(NoPlanPossible):
        connection.send(_search(connection, request, begun))
    connection.send(None)
    connection.close()
    # A search may still be at work in a thread: the process does not wait for it.
    os._exit(0)


def _end_with(connection: Connection) -> None:
    """Nothing is ever sent here: what wakes this is that nobody listens any more."""
    try:
        connection.recv()
    except (EOFError, OSError):
        os._exit(0)


def _search(connection: Connection, request: Request, begun: float) -> Plan:
    load()
    start = quick_start(request.studio, request.now, request.until, thorough=True)
    search = PlanSearch(start)
    left = request.seconds * (1 - _FOR_THE_END) - (monotonic() - begun)
    search.run(Effort(left, seed=request.seed), Teller(connection).told, lambda: False)
    plan = search.plan()
    return with_rehearsal(plan, rehearse(request.studio, plan, seed=request.seed))


class Teller:
    """Sends better plans, but not faster than they can be taken in; what is proved, at once."""

    def __init__(self, connection: Connection) -> None:
        """Send to a connection."""
        self._connection = connection
        self._next = 0.0
        self._met: set[Goal] = set()

    def told(self, search: PlanSearch) -> None:
        """Send the best plan of a search if it is time to, or if more is proved of it."""
        begun, met = monotonic(), search.best.met
        if begun >= self._next or not met <= self._met:
            self._met |= met
            self._connection.send(search.plan())
            took = monotonic() - begun
            self._next = monotonic() + max(_PAUSE, _SPARING * took)
