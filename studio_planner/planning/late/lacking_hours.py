"""Why an order is late for want of working hours: too few, or none while a window is open."""

from __future__ import annotations

from datetime import UTC, datetime, time, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import clipped, daily_span, days_between, without
from studio_planner.craft.saying import SILENT, Saying, joined, saying
from studio_planner.craft.tongue import marked
from studio_planner.planning.late.ladder import Rung
from studio_planner.planning.late.slowest_walk import is_long, slowest_walk
from studio_planner.planning.late.soonest import For
from studio_planner.planning.late.waits_said import after_pick_up, slowest, waiting
from studio_planner.planning.saying import coat_said, length_said, moment_said

if TYPE_CHECKING:
    from zoneinfo import ZoneInfo

    from studio_planner.craft.orders import Order
    from studio_planner.planning.late.ladder import Climb, Ladder
    from studio_planner.planning.late.soonest import Missed
    from studio_planner.planning.placing.chain_times import Means
    from studio_planner.planning.problem import Chain

_NIGHT = time(22), time(6)
"""What is called night, whoever sleeps by day (our choice)."""

_DAY = timedelta(days=1)


def lacking_hours(ladder: Ladder, order: Order, climb: Climb) -> Saying:
    """The reason of the rung of hours: too few in all, a missed window, or too far apart."""
    short = _too_few(ladder, order)
    if short:
        return short
    chain, walk = slowest(climb.fit), slowest_walk(ladder, Rung.HOURS, climb.fit)
    for missed in walk.missed if walk is not None else ():
        if chain is not None and missed.what is For.HANDS:
            return _missed(ladder, ladder.fitter(Rung.HOURS).empty(), chain, missed)
    words = saying(
        "late",
        "No hands: even with nothing else to do, the working hours come too far apart for its "
        "coats.",
    )
    wait = None if walk is None else walk.longest(For.HANDS)
    if chain is None or walk is None or wait is None or not is_long(wait):
        return words
    zone = ladder.studio.time_zone
    said = saying(
        "late",
        "{what} could start {since}, but nobody can work on it before {until}",
        what=waiting(chain, wait),
        since=moment_said(zone, wait.since),
        until=moment_said(zone, wait.until),
    )
    return joined(words, joined(said, after_pick_up(ladder, order, wait), ".", between=""))


def _missed(ladder: Ladder, means: Means, chain: Chain, missed: Missed) -> Saying:
    zone = ladder.studio.time_zone
    piece, task = chain.pieces[0], chain.tasks[missed.index]
    lower = chain.tasks[task.below or 0].coat.key
    night = _in_the_night(means, missed, zone)
    head = (
        saying("late", "Night closes a window")
        if night
        else saying("late", "The working hours miss a window")
    )
    text = (
        marked(
            "late",
            "{head}: poured as soon as can be, the window of {lower} opens {opens} and closes "
            "{closes}, when nobody can work {length} on end; {after}.",
        )
        if _somebody_works(means, missed)
        else marked(
            "late",
            "{head}: poured as soon as can be, the window of {lower} opens {opens} and closes "
            "{closes}, when nobody can work; {after}.",
        )
    )
    below, upper = coat_said(piece, lower), coat_said(piece, task.coat.key)
    after = (
        saying("late", "{upper} then waits until it can be washed and sanded", upper=upper)
        if task.may_scuff
        else saying("late", "so {lower} has to be poured at another time", lower=below)
    )
    return saying(
        "late",
        text,
        head=head,
        lower=below,
        opens=moment_said(zone, missed.opens),
        closes=moment_said(zone, missed.closes),
        length=length_said(task.lead + task.block),
        after=after,
    )


def _too_few(ladder: Ladder, order: Order) -> Saying:
    """The sentence when an order's own work is more than all hours until its date, or none."""
    studio = ladder.studio
    due = order.due(studio.time_zone)
    if due <= ladder.plan.start:
        return SILENT
    there = sum(
        (end - start).total_seconds()
        for person in studio.people
        for start, end in person.working(studio.time_zone, ladder.plan.start, due)
    )
    asked = ladder.fitter(Rung.HOURS).hands(order)
    if asked <= there:
        return SILENT
    text = (
        marked(
            "late",
            "No hands: its own pours and packing take {asked}, and until then there are "
            "{there} of working hours.",
        )
        if there
        else marked(
            "late",
            "No hands: its own pours and packing take {asked}, and until then nobody works.",
        )
    )
    words = saying("late", text, asked=length_said(asked), there=length_said(there))
    return joined(words, *_away(ladder, due))


def _away(ladder: Ladder, due: datetime) -> list[Saying]:
    """Who is away between the start of a plan and a date, and until when."""
    studio, start = ladder.studio, ladder.plan.start
    return [
        saying(
            "late",
            "{name} is away from {start} to {end}.",
            name=person.name,
            start=moment_said(studio.time_zone, absence.start.timestamp()),
            end=moment_said(studio.time_zone, absence.end.timestamp()),
        )
        for person in studio.people
        for absence in person.absences
        if absence.start < due and absence.end > start
    ]


def _somebody_works(means: Means, missed: Missed) -> bool:
    """Whether there are any working hours in a window."""
    for free in means.shop.hands.values():
        start, _ = next(free.from_(missed.opens), (missed.closes, 0))
        if start < missed.closes:
            return True
    return False


def _in_the_night(means: Means, missed: Missed, zone: ZoneInfo) -> bool:
    """Whether there are hours of the night in a window in which nobody is awake."""
    opens, closes = _moment(missed.opens), _moment(missed.closes)
    days = days_between(zone, opens - _DAY, closes)
    nights = clipped([daily_span(zone, day, *_NIGHT) for day in days], opens, closes)
    awake = [
        (_moment(start), _moment(end))
        for start, end, _ in means.shop.awake_from(missed.opens)
        if start < missed.closes
    ]
    return bool(without(nights, awake))


def _moment(second: int) -> datetime:
    return datetime.fromtimestamp(second, UTC)
