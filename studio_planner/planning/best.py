"""The best plan: the quick one at once, then better ones from a process of its own.

The solver is heavy and may fail in ways that end its process; what was found before is safe.
"""

from __future__ import annotations

import signal
from contextlib import contextmanager, suppress
from dataclasses import replace
from multiprocessing import get_context, resource_tracker
from threading import Event
from time import monotonic
from typing import TYPE_CHECKING, Self

from studio_planner.planning.quick import quick_plan
from studio_planner.planning.solving import ENOUGH, Request, serve, serve_rehearsal

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from datetime import datetime
    from multiprocessing.connection import Connection

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio

_GRACE = 30.0
"""Seconds beyond the end of a search, in which its last plan may be written and rehearsed."""

_LAST_WORDS = 1.0
"""Seconds in which a process that was asked may end by itself."""

_GLANCE = 0.1
"""Seconds between two looks at whether somebody has had enough."""

_LEAST_SECONDS = 0.1
"""What is said of a search that was over at once."""

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
    enough: Event | None = None,
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
    enough
        Set, nothing better is looked for any more; what was found is still rehearsed.

    Returns
    -------
    Plan
        With its goals and their bounds as far as they are proved; rehearsed, unless no time was
        asked for or that failed, twice.

    Raises
    ------
    NoPlanPossible
        As the quick plan does.
    """
    begun, enough = monotonic(), enough or Event()
    if seconds <= 0:
        return _Kept(quick_plan(studio, now, until), told).best

    def searched(process: _Process, seed: int) -> bool:
        """Take what is found; tell whether the search came to its end."""
        left = seconds - (monotonic() - begun)
        request = Request(studio, now, until, left, seed)
        if kept.all_of(process.plans(request, left, enough)):
            return True
        kept.looked(min(seconds, monotonic() - begun))
        return False

    with _Process(serve) as process:
        # The process loads the solver meanwhile.
        kept = _Kept(quick_plan(studio, now, until), told)
        ended = not enough.is_set() and searched(process, seed)
    if not ended and not enough.is_set() and seconds - (monotonic() - begun) >= _ONCE_MORE:
        with _Process(serve) as process:
            ended = searched(process, seed + 1)
    if not ended:
        # Whatever has ended the search: how sure its plan is does not depend on that.
        kept.take(rehearsed(studio, kept.best, seed=seed))
    return kept.best


def rehearsed(studio: Studio, plan: Plan, *, seed: int = 0) -> Plan:
    """Rehearse a plan in a process of its own; it stays as it is where that fails."""
    with _Process(serve_rehearsal) as process:
        for found in process.plans((studio, plan, seed), 0.0, Event()):
            plan = found
    return plan


class _Kept:
    """The best plan so far, told whenever it changes."""

    def __init__(self, quick: Plan, told: Callable[[Plan], None] | None) -> None:
        self._told = told
        self.take(quick)

    def take(self, plan: Plan) -> None:
        """Take a plan, and tell of it."""
        self.best = plan
        if self._told is not None:
            self._told(plan)

    def all_of(self, plans: Iterator[Plan]) -> bool:
        """Take what is no worse; tell whether a rehearsed plan came, which is the last one."""
        ended = False
        for plan in plans:
            ended = ended or bool(plan.rehearsals)
            if _worth(plan) <= _worth(self.best):
                self.take(plan)
        return ended

    def looked(self, seconds: float) -> None:
        """Say of the best plan for how long it was looked for, though its search broke down."""
        said = max(_LEAST_SECONDS, round(seconds, 1))
        self.best = replace(self.best, solved_seconds=said)


def _worth(plan: Plan) -> tuple[float, ...]:
    return tuple(goal.value for goal in plan.goals)


class _Process:
    """A process of its own that is asked one thing and sends plans; it ends with the block."""

    def __init__(self, serving: Callable[[Connection], None]) -> None:
        context = get_context("spawn")
        self._ours, theirs = context.Pipe()
        self._process = context.Process(target=serving, args=(theirs,), daemon=True)
        with _no_interrupt():
            self._process.start()
        theirs.close()
        self._asked = False

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self._ours.close()
        if self._asked:
            self._process.join(_LAST_WORDS)
        self._process.kill()
        self._process.join()

    def plans(self, asked: object, seconds: float, enough: Event) -> Iterator[Plan]:
        """The plans that the process sends; they end when it does, in whichever way."""
        deadline, self._asked = monotonic() + seconds + _GRACE, True
        # Who is gone by now sends nothing.
        with suppress(OSError):
            self._ours.send(asked)
        return _received(self._ours, deadline, enough)


@contextmanager
def _no_interrupt() -> Iterator[None]:
    """Let a process begin that Ctrl-C, which reaches every process of a terminal, leaves alone.

    What is held back here is held back there for good: the solver listens to it too, and aborts
    where several of its searches do.
    """
    mask = getattr(signal, "pthread_sigmask", None)
    if mask is None:  # nothing of the kind is handed down on Windows
        yield
        return
    # What cleans up after processes begins with the first, and lets Ctrl-C through once it has.
    resource_tracker.ensure_running()
    before = mask(signal.SIG_BLOCK, {signal.SIGINT})
    try:
        yield
    finally:
        mask(signal.SIG_SETMASK, before)


def _received(connection: Connection, deadline: float, enough: Event) -> Iterator[Plan]:
    said = False
    while (left := deadline - monotonic()) > 0:
        try:
            if enough.is_set() and not said:
                said, deadline = True, min(deadline, monotonic() + _GRACE)
                connection.send(ENOUGH)
            if not connection.poll(min(left, _GLANCE)):
                continue
            plan = connection.recv()
        except (EOFError, OSError):
            return
        if plan is None:
            return
        yield plan
