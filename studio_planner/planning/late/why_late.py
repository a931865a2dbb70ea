"""Why an order is late, in one sentence: coats, windows, nights and other orders by name."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.plans import StepKind
from studio_planner.craft.tongue import counted, translate
from studio_planner.planning.late import what_if
from studio_planner.planning.late.fitting import leaves
from studio_planner.planning.late.in_the_way import fitting_spots, span_of, standing, working
from studio_planner.planning.late.ladder import Rung
from studio_planner.planning.late.soonest import For, Soonest
from studio_planner.planning.late.waits_said import (
    after_pick_up,
    air_wait,
    longest_cure,
    slowest,
    waiting,
)
from studio_planner.planning.saying import (
    coat_said,
    length_said,
    listed,
    moment_said,
    owner_said,
)

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import datetime

    from studio_planner.craft.orders import Order
    from studio_planner.planning.late.fitting import Fit
    from studio_planner.planning.late.ladder import Climb, Ladder
    from studio_planner.planning.late.soonest import Missed, Wait, Walk
    from studio_planner.planning.placing.chain_times import Means
    from studio_planner.planning.problem import Chain

_NAMED = 2
"""Orders that are named as standing in the way: those that take most."""

_A_WAIT = 3600
"""A shorter wait (seconds) is no reason to name."""


def why_late(ladder: Ladder, order: Order, climb: Climb) -> str:
    """The reason of one rung in the maker's nouns."""
    words: dict[Rung, Callable[[Ladder, Order, Climb], str]] = {
        Rung.CURE: _cure,
        Rung.HOURS: _hours,
        Rung.SPOTS: _spots,
        Rung.HANDS: _hands,
        Rung.DUST: _dust,
        Rung.NOTHING: _nothing,
    }
    return words[climb.rung](ladder, order, climb)


# Rung by rung


def _cure(ladder: Ladder, order: Order, climb: Climb) -> str:
    due = order.due(ladder.studio.time_zone)
    if due <= ladder.plan.start:
        return translate(
            "late",
            "Too late already: to keep the date it had to leave by {due}, and this plan starts "
            "{start}.",
        ).format(due=_said(ladder, due), start=_said(ladder, ladder.plan.start))
    warm = ladder.warm(order)
    walk = _walk(ladder, Rung.CURE, climb.fit)
    wait = None if walk is None else walk.longest(For.AIR)
    if warm.late == 0:
        named = f" {air_wait(climb.fit, ladder, wait)}" if wait and _long(wait) else ""
        said = translate(
            "late",
            "Too cold: at the room's temperature its coats cure too slowly for the date; never "
            "below {warmth:.0f} °C they would be in time.",
        )
        return said.format(warmth=what_if.warmth(ladder.studio)) + named
    if wait is not None and _long(wait) and wait.seconds >= _late_seconds(order, climb.fit):
        return translate("late", "Air: {what}").format(what=air_wait(climb.fit, ladder, wait))
    said = translate(
        "late",
        "Cure time: its coats cannot cure by then, even with hands day and night and every "
        "spot "
        "free.",
    )
    return said + longest_cure(climb.fit)


def _hours(ladder: Ladder, order: Order, climb: Climb) -> str:
    short = _too_few_hours(ladder, order)
    if short:
        return short
    chain, walk = slowest(climb.fit), _walk(ladder, Rung.HOURS, climb.fit)
    for missed in walk.missed if walk is not None else ():
        if chain is not None and missed.what is For.HANDS:
            return _missed(ladder, ladder.fitter(Rung.HOURS).empty(), chain, missed)
    words = translate(
        "late",
        "No hands: even with nothing else to do, the hours you work come too far apart for its "
        "coats.",
    )
    wait = None if walk is None else walk.longest(For.HANDS)
    if chain is None or walk is None or wait is None or not _long(wait):
        return words
    zone = ladder.studio.time_zone
    said = translate(
        "late", "{what} could start {since}, but nobody can work on it before {until}"
    ).format(
        what=waiting(chain, wait),
        since=moment_said(zone, wait.since),
        until=moment_said(zone, wait.until),
    )
    return f"{words} {said}{after_pick_up(ladder, order, wait)}."


def _missed(ladder: Ladder, means: Means, chain: Chain, missed: Missed) -> str:
    zone = ladder.studio.time_zone
    piece, task = chain.pieces[0], chain.tasks[missed.index]
    lower = chain.tasks[task.below or 0].coat.key
    night = _asleep(means, missed)
    head = (
        translate("late", "Night closes a window")
        if night
        else translate("late", "Your working hours miss a window")
    )
    text = (
        translate(
            "late",
            "{head}: poured as soon as you can, the window of {lower} opens {opens} and closes "
            "{closes}, when nobody can work {length} on end; {after}.",
        )
        if _somebody_works(means, missed)
        else translate(
            "late",
            "{head}: poured as soon as you can, the window of {lower} opens {opens} and closes "
            "{closes}, when nobody can work; {after}.",
        )
    )
    after = (
        translate("late", "{upper} then waits until it can be washed and sanded")
        if task.may_scuff
        else translate("late", "so {lower} has to be poured at another time")
    )
    below, upper = coat_said(piece, lower), coat_said(piece, task.coat.key)
    return text.format(
        head=head,
        lower=below,
        opens=moment_said(zone, missed.opens),
        closes=moment_said(zone, missed.closes),
        length=length_said(task.lead + task.block),
        after=after.format(lower=below, upper=upper),
    )


def _spots(ladder: Ladder, order: Order, climb: Climb) -> str:
    taken = standing(ladder, order, climb.before)
    if not taken:
        count = len(fitting_spots(ladder, order))
        return counted(
            count,
            translate(
                "late",
                "No spot: its own pieces have to wait for each other, for only {count} spot "
                "can "
                "hold them.",
            ),
            translate(
                "late",
                "No spot: its own pieces have to wait for each other, for only {count} spots "
                "can "
                "hold them.",
            ),
        )
    names = [name for name, _ in taken.most_common(_NAMED)]
    text = (
        translate(
            "late",
            "No spot: {names} stands on the shelf when its coats have to be poured{own}.",
        )
        if len(names) == 1
        else translate(
            "late", "No spot: {names} stand on the shelf when its coats have to be poured{own}."
        )
    )
    return text.format(names=listed(names), own=_own_too(order))


def _own_too(order: Order) -> str:
    count = len(order.pieces)
    if count == 1:
        return ""
    needs = translate("late", "it needs {count} spots").format(count=count)
    return f" ({needs})"


def _hands(ladder: Ladder, order: Order, climb: Climb) -> str:
    taken = working(ladder, order, climb.before)
    if not taken:
        return translate("late", "No hands: the free hours go to pours of other orders.")
    zone = ladder.studio.time_zone
    low, high = span_of(ladder, order, climb.before)
    most = [f"{name} ({length_said(s)})" for name, s in taken.most_common(_NAMED)]
    return translate(
        "late",
        "No hands: between {low} and {high}, when it has to be made, the free hours go to "
        "{names}.",
    ).format(low=moment_said(zone, low), high=moment_said(zone, high), names=listed(most))


def _dust(ladder: Ladder, order: Order, climb: Climb) -> str:
    low, high = span_of(ladder, order, climb.before)
    sanded = [
        owner_said(ladder.studio, step.piece)
        for step in ladder.plan.steps
        if step.kind is StepKind.SAND
        and step.piece not in order.pieces
        and low <= step.start.timestamp() <= high
    ]
    if sanded:
        said = translate(
            "late", "Dust: its pours have to keep away from the sanding for {names}."
        )
        return said.format(names=listed(sanded))
    return translate(
        "late",
        "Dust: it has to be sanded, and wet coats of other orders are about all the while.",
    )


def _nothing(ladder: Ladder, order: Order, climb: Climb) -> str:
    out = leaves(ladder.studio, order, climb.fit)
    if out is None:
        return translate(
            "late",
            "Other orders got their places first. It does fit between their pours as they "
            "stand.",
        )
    return translate(
        "late",
        "Other orders got their places first. It does fit between their pours as they stand "
        "and "
        "leaves {when}.",
    ).format(when=_said(ladder, out))


# What the sentences are made from


def _said(ladder: Ladder, when: datetime) -> str:
    return moment_said(ladder.studio.time_zone, when.timestamp())


def _long(wait: Wait) -> bool:
    return wait.seconds >= _A_WAIT


def _late_seconds(order: Order, fit: Fit) -> float:
    return 3600.0 * fit.late / order.weight


def _walk(ladder: Ladder, rung: Rung, fit: Fit) -> Walk | None:
    """The soonest pours of the chain that comes last, with nothing else in the workshop."""
    chain = slowest(fit)
    if chain is None or chain.order is None:
        return None
    means = ladder.fitter(rung).empty()
    spots = {coat.spot for coat in ladder.plan.coats if coat.piece == chain.pieces[0].key}
    places = {means.place_of_spot[spot] for spot in spots}
    place = places.pop() if len(places) == 1 else means.edges.rest
    return Soonest(ladder.studio, means, chain, place).walk()


def _somebody_works(means: Means, missed: Missed) -> bool:
    """Whether there are any working hours in a window."""
    for free in means.shop.hands.values():
        start, _ = next(free.from_(missed.opens), (missed.closes, 0))
        if start < missed.closes:
            return True
    return False


def _asleep(means: Means, missed: Missed) -> bool:
    """Whether there is a time in a window at which nobody is awake."""
    at = missed.opens
    for start, end, _ in means.shop.awake_from(missed.opens):
        if start > at:
            break
        at = max(at, end)
        if at >= missed.closes:
            return False
    return at < missed.closes


def _too_few_hours(ladder: Ladder, order: Order) -> str:
    """Whether an order's own work is more than all the hours until its date."""
    studio = ladder.studio
    due = order.due(studio.time_zone)
    if due <= ladder.plan.start:
        return ""
    there = sum(
        (end - start).total_seconds()
        for person in studio.people
        for start, end in person.working(studio.time_zone, ladder.plan.start, due)
    )
    asked = ladder.fitter(Rung.HOURS).hands(order)
    if asked <= there:
        return ""
    return translate(
        "late",
        "No hands: its own pours and packing take {asked}, and you work {there} until then.",
    ).format(asked=length_said(asked), there=length_said(there))
