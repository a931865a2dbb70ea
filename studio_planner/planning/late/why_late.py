"""Why an order is late, in one sentence: coats, windows, nights and other orders by name."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.plans import StepKind
from studio_planner.craft.saying import SILENT, Saying, joined, saying
from studio_planner.craft.tongue import marked
from studio_planner.planning.late import what_if
from studio_planner.planning.late.fitting import leaves
from studio_planner.planning.late.in_the_way import (
    fitting_spots,
    span_of,
    standing,
    without_whom,
    working,
)
from studio_planner.planning.late.lacking_hours import lacking_hours
from studio_planner.planning.late.ladder import Rung
from studio_planner.planning.late.slowest_walk import is_long, slowest_walk
from studio_planner.planning.late.soonest import For
from studio_planner.planning.late.waits_said import air_wait, longest_cure
from studio_planner.planning.saying import length_said, listed, moment_said, owner_said

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import datetime

    from studio_planner.craft.orders import Order
    from studio_planner.planning.late.fitting import Fit
    from studio_planner.planning.late.ladder import Climb, Ladder

_NAMED = 2
"""Orders that are named as standing in the way: those that take most."""


def why_late(ladder: Ladder, order: Order, climb: Climb) -> Saying:
    """The reason of one rung in the maker's nouns."""
    words: dict[Rung, Callable[[Ladder, Order, Climb], Saying]] = {
        Rung.CURE: _cure,
        Rung.HOURS: lacking_hours,
        Rung.SPOTS: _spots,
        Rung.HANDS: _hands,
        Rung.DUST: _dust,
        Rung.NOTHING: _nothing,
    }
    return words[climb.rung](ladder, order, climb)


# Rung by rung


def _cure(ladder: Ladder, order: Order, climb: Climb) -> Saying:
    due = order.due(ladder.studio.time_zone)
    if due <= ladder.plan.start:
        return saying(
            "late",
            "Too late already: to keep the date it had to leave by {due}, and this plan starts "
            "{start}.",
            due=_said(ladder, due),
            start=_said(ladder, ladder.plan.start),
        )
    warm = ladder.warm(order)
    walk = slowest_walk(ladder, Rung.CURE, climb.fit)
    wait = None if walk is None else walk.longest(For.AIR)
    if warm.late == 0:
        named = air_wait(climb.fit, ladder, wait) if wait and is_long(wait) else ""
        cold = saying(
            "late",
            "Too cold: at the room's temperature its coats cure too slowly for the date; never "
            "below {warmth} they would be in time.",
            warmth=what_if.warmth_said(ladder.studio),
        )
        return joined(cold, named)
    if wait is not None and is_long(wait) and wait.seconds >= _late_seconds(order, climb.fit):
        return saying("late", "Air: {what}", what=air_wait(climb.fit, ladder, wait))
    slow = saying(
        "late",
        "Cure time: its coats cannot cure by then, even with hands day and night and every "
        "spot free.",
    )
    return joined(slow, longest_cure(climb.fit))


def _spots(ladder: Ladder, order: Order, climb: Climb) -> Saying:
    taken = standing(ladder, order, climb.before)
    most = [name for name, _ in taken.most_common(_NAMED)]
    names = without_whom(ladder, order) or most
    if not names:
        count = len(fitting_spots(ladder, order))
        text = (
            marked(
                "late",
                "No spot: its own pieces have to wait for each other, for only {count} spot "
                "can hold them.",
            )
            if count == 1
            else marked(
                "late",
                "No spot: its own pieces have to wait for each other, for only {count} spots "
                "can hold them.",
            )
        )
        return saying("late", text, count=count)
    text = (
        marked(
            "late",
            "No spot: {names} stands on the shelf when its coats have to be poured{own}.",
        )
        if len(names) == 1
        else marked(
            "late", "No spot: {names} stand on the shelf when its coats have to be poured{own}."
        )
    )
    return saying("late", text, names=listed(names), own=_own_too(order))


def _own_too(order: Order) -> Saying:
    count = len(order.pieces)
    if count == 1:
        return SILENT
    needs = saying("late", "it needs {count} spots", count=count)
    return joined(" (", needs, ")", between="")


def _hands(ladder: Ladder, order: Order, climb: Climb) -> Saying:
    taken = working(ladder, order, climb.before)
    if not taken:
        return saying("late", "No hands: the free hours go to pours of other orders.")
    zone = ladder.studio.time_zone
    low, high = span_of(ladder, order, climb.before)
    most = [
        joined(name, " (", length_said(s), ")", between="")
        for name, s in taken.most_common(_NAMED)
    ]
    return saying(
        "late",
        "No hands: between {low} and {high}, when it has to be made, the free hours go to "
        "{names}.",
        low=moment_said(zone, low),
        high=moment_said(zone, high),
        names=listed(most),
    )


def _dust(ladder: Ladder, order: Order, climb: Climb) -> Saying:
    low, high = span_of(ladder, order, climb.before)
    sanded = [
        owner_said(ladder.studio, step.piece)
        for step in ladder.plan.steps
        if step.kind is StepKind.SAND
        and step.piece not in order.pieces
        and low <= step.start.timestamp() <= high
    ]
    if sanded:
        return saying(
            "late",
            "Dust: its pours have to keep away from the sanding for {names}.",
            names=listed(sanded),
        )
    return saying(
        "late",
        "Dust: it has to be sanded, and wet coats of other orders are about all the while.",
    )


def _nothing(ladder: Ladder, order: Order, climb: Climb) -> Saying:
    out = leaves(ladder.studio, order, climb.fit)
    if out is None:
        return saying(
            "late",
            "Other orders got their places first. It does fit between their pours as they "
            "stand.",
        )
    return saying(
        "late",
        "Other orders got their places first. It does fit between their pours as they stand "
        "and leaves {when}.",
        when=_said(ladder, out),
    )


# What the sentences are made from


def _said(ladder: Ladder, when: datetime) -> Saying:
    return moment_said(ladder.studio.time_zone, when.timestamp())


def _late_seconds(order: Order, fit: Fit) -> float:
    return 3600.0 * fit.late / order.weight
