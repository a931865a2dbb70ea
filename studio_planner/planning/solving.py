"""What the solving process does: the only process that loads the solver."""

from __future__ import annotations

import os
from contextlib import suppress
from dataclasses import dataclass
from signal import SIG_IGN, SIGINT, signal
from threading import Event, Lock, Thread
from time import monotonic
from typing import TYPE_CHECKING, Any

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.planning.exact.search import Effort, PlanSearch
from studio_planner.planning.late.bettering import bettered
from studio_planner.planning.quick import quick_start
from studio_planner.planning.rehearsal.rehearsed import with_rehearsal
from studio_planner.planning.rehearsal.rehearsing import rehearse
from studio_planner.planning.solver import load

if TYPE_CHECKING:
    from datetime import datetime
    from multiprocessing.connection import Connection

    from studio_planner.craft.plans import Goal, Plan
    from studio_planner.craft.studio import Studio

ENOUGH = "enough"
"""What the other side says when nothing better is to be looked for any more."""

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


def serve(connection: Connection) -> None:
    """Search as a `Request` asks and send each better plan, the last one rehearsed, then None.

    Told ENOUGH it looks no further, and rehearses what it has. Ends at once when the other side
    of the connection is gone.
    """
    _leave_interrupts()
    load()
    request = _asked(connection)
    begun, enough = monotonic(), _listening(connection)
    with suppress(NoPlanPossible):
        plan = _search(connection, request, begun, enough)
        connection.send(_rehearsed(request.studio, plan, request.seed))
    _end(connection)


def serve_rehearsal(connection: Connection) -> None:
    """Send a plan as rehearsed, then None, for a studio, a plan of it and a seed.

    Ends as `serve` does.
    """
    _leave_interrupts()
    studio, plan, seed = _asked(connection)
    _listening(connection)
    connection.send(_rehearsed(studio, plan, seed))
    _end(connection)


def _leave_interrupts() -> None:
    """Ctrl-C in a terminal reaches each of its processes; the other side says what it means."""
    signal(SIGINT, SIG_IGN)


def _asked(connection: Connection) -> Any:  # noqa: ANN401 - whatever the other side asks
    try:
        return connection.recv()
    except (EOFError, OSError):
        os._exit(0)


def _listening(connection: Connection) -> Event:
    """Listen to the other side; the event is set when it has had enough."""
    enough = Event()
    Thread(target=_listen, args=(connection, enough), daemon=True).start()
    return enough


def _listen(connection: Connection, enough: Event) -> None:
    try:
        while connection.recv() == ENOUGH:
            enough.set()
    except (EOFError, OSError):
        os._exit(0)


def _end(connection: Connection) -> None:
    connection.send(None)
    connection.close()
    # A search may still be at work in a thread: the process does not wait for it.
    os._exit(0)


def _search(connection: Connection, request: Request, begun: float, enough: Event) -> Plan:
    start = quick_start(request.studio, request.now, request.until, thorough=True)
    search = PlanSearch(start)
    left = request.seconds * (1 - _FOR_THE_END) - (monotonic() - begun)
    teller = Teller(connection)

    def look() -> None:
        try:
            search.run(Effort(left, seed=request.seed), teller.told, enough.is_set)
        finally:
            enough.set()

    # What looks into a large part does not look up: it is left behind, at its end or before.
    Thread(target=look, daemon=True).start()
    enough.wait()
    teller.end()
    return bettered(request.studio, search.plan(), request.until)


def _rehearsed(studio: Studio, plan: Plan, seed: int) -> Plan:
    return with_rehearsal(plan, rehearse(studio, plan, seed=seed))


class Teller:
    """Sends better plans, but not faster than they can be taken in; what is proved, at once."""

    def __init__(self, connection: Connection) -> None:
        """Send to a connection."""
        self._connection = connection
        self._next = 0.0
        self._met: set[Goal] = set()
        self._lock = Lock()
        self._ended = False

    def told(self, search: PlanSearch) -> None:
        """Send the best plan of a search if it is time to, or if more is proved of it."""
        begun, met = monotonic(), search.best.met
        with self._lock:
            if not self._ended and (begun >= self._next or not met <= self._met):
                self._met |= met
                self._connection.send(search.plan())
                took = monotonic() - begun
                self._next = monotonic() + max(_PAUSE, _SPARING * took)

    def end(self) -> None:
        """Send nothing more: the connection is another thread's from now on."""
        with self._lock:
            self._ended = True
