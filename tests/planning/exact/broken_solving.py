"""Solving processes that break down in several ways; each runs in a process of its own."""

from __future__ import annotations

import os
from dataclasses import replace
from threading import Event
from typing import TYPE_CHECKING

from studio_planner.planning.quick import quick_plan

if TYPE_CHECKING:
    from multiprocessing.connection import Connection

    from studio_planner.craft.plans import Plan
    from studio_planner.planning.solving import Request

MARK = 77
"""The grid of plans that are sent from here, to tell them from others."""


def ends_at_once(connection: Connection) -> None:
    """End without a word."""
    del connection
    os._exit(3)


def does_not_rehearse(connection: Connection) -> None:
    """End without a word where a plan was to be rehearsed."""
    del connection
    os._exit(3)


def aborts_after_a_plan(connection: Connection) -> None:
    """Send a plan, then end as a solver does that finds itself broken."""
    connection.send(_plan(connection.recv()))
    os._exit(134)


def works_the_second_time(connection: Connection) -> None:
    """End without a word the first time, and send a plan the second."""
    request = connection.recv()
    if request.seed == 0:
        os._exit(3)
    connection.send(_plan(request))
    connection.send(None)


def sends_a_worse_plan_and_never_ends(connection: Connection) -> None:
    """Send a plan that leaves more out, and hear nothing any more."""
    plan = _plan(connection.recv())
    goals = tuple(replace(goal, value=goal.value + 1.0) for goal in plan.goals)
    connection.send(replace(plan, goals=goals))
    Event().wait()


def raises(connection: Connection) -> None:
    """Fail as Python does."""
    request = connection.recv()
    connection.close()
    raise SystemExit(request.seed + 1)


def _plan(request: Request) -> Plan:
    plan = quick_plan(request.studio, request.now, request.until)
    return replace(plan, grid_minutes=MARK)
