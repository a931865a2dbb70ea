"""What a plan has least of: hands or level spots, and where and when most."""

from __future__ import annotations

from collections import defaultdict
from datetime import date, datetime, timedelta
from typing import TYPE_CHECKING, Any, NamedTuple

from studio_planner.craft.local_time import Span, clipped, instant, merged
from studio_planner.craft.log_legs import stays_along
from studio_planner.craft.plans import StepKind
from studio_planner.science.stages import Stage
from studio_planner.services.questions.asking import (
    Answer,
    Question,
    Sign,
    not_known,
    nothing_asked,
)
from studio_planner.services.questions.lying import ribbons_of
from studio_planner.services.questions.sentences import Day, Sentence, Share, said

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from studio_planner.services.desk import DeskView

_HANDS_ON = frozenset({StepKind.SAND, StepKind.TURN, StepKind.PACK})
_DAY, _WEEK = timedelta(days=1), timedelta(days=7)
_MOST_WEEKS = 6
_MIDNIGHT = datetime.min.time()


class _Week(NamedTuple):
    """A week from its first day on: shares of hands and of all spots in use, 0 to 1."""

    first: date
    hands: float
    spots: float


def _answer(view: DeskView, given: Mapping[str, Any]) -> Answer:  # noqa: ARG001 - nothing asked
    if view.plan is None or not view.plan.coats:
        return not_known("There is no plan yet, so nothing is busy; plan first.")
    hands, spots = _hands_busy(view), _spots_busy(view)
    weeks = [_week(view, first, hands, spots) for first in _week_starts(view)]
    fullest = _fullest_spot(view, spots)
    evening = _fullest_day(view, hands)
    lines = [_week_line(week) for week in weeks]
    if fullest is not None:
        text = "The fullest spot is {spot}: in use for {share} of the time."
        lines.append(said(text, spot=fullest[0], share=Share(fullest[1])))
    if evening is not None:
        text = "The fullest day is {day}: {share} of its working hours are hands-on."
        lines.append(said(text, day=Day(evening[0]), share=Share(evening[1])))
    lines += _late_reasons(view)
    return Answer(Sign.CARE, _verdict(weeks, fullest, evening), tuple(lines))


def _verdict(
    weeks: list[_Week], spot: tuple[str, float] | None, day: tuple[date, float] | None
) -> Sentence:
    hands = max((week.hands for week in weeks), default=0.0)
    spots = max((week.spots for week in weeks), default=0.0)
    if spots >= hands and spot is not None:
        text = (
            "Level spots, {spot} most of all: up to {share} of all spots are taken in a week."
        )
        return said(text, spot=spot[0], share=Share(spots))
    if day is not None:
        text = "Your hands, most of all on {day}: up to {share} of a week's working hours."
        return said(text, day=Day(day[0]), share=Share(hands))
    return said("Nothing: neither hands nor spots are in use.")


def _hands_busy(view: DeskView) -> dict[str, list[Span]]:
    """Hands-on spans of everybody (by key) that the plan still holds."""
    busy: dict[str, list[Span]] = defaultdict(list)
    plan = view.plan
    for coat in plan.coats if plan is not None else ():
        busy[coat.person].append((coat.start, coat.end))
    for step in plan.steps if plan is not None else ():
        if step.kind in _HANDS_ON:
            busy[step.person].append((step.start, step.end))
    return {key: list(merged(spans)) for key, spans in busy.items()}


def _spots_busy(view: DeskView) -> dict[str, tuple[Span, ...]]:
    """When each spot (by key) is taken: from a pour's start until *handle* at its safe edge.

    What was carried takes the spot where it was put.
    """
    taken: dict[str, list[Span]] = {spot.key: [] for spot in view.studio.spots}
    for film in ribbons_of(view):
        handle = film.film.safe(Stage.HANDLE) or film.planned.end
        until = max(handle, film.planned.end)
        for spot, since, left in stays_along(film.lane.stands(film.planned), until):
            taken[spot].append((since, left))
    return {key: merged(spans) for key, spans in taken.items()}


def _week_starts(view: DeskView) -> list[date]:
    plan = view.plan
    last = max((coat.end for coat in plan.coats), default=view.now) if plan else view.now
    zone = view.studio.time_zone
    first = view.studio.units.first_of_week(view.now.astimezone(zone).date())
    found: list[date] = []
    while first <= last.astimezone(zone).date() and len(found) < _MOST_WEEKS:
        found.append(first)
        first += _WEEK
    return found


def _span(view: DeskView, first: date, length: timedelta) -> Span:
    zone = view.studio.time_zone
    return instant(zone, first, _MIDNIGHT), instant(zone, first + length, _MIDNIGHT)


def _week(
    view: DeskView,
    first: date,
    hands: Mapping[str, list[Span]],
    spots: Mapping[str, Iterable[Span]],
) -> _Week:
    start, end = _span(view, first, _WEEK)
    whole = (end - start) * max(len(view.studio.spots), 1)
    taken = sum((_length(clipped(spans, start, end)) for spans in spots.values()), timedelta())
    return _Week(first, _hands_share(view, hands, start, end), taken / whole)


def _hands_share(
    view: DeskView, hands: Mapping[str, list[Span]], start: datetime, end: datetime
) -> float:
    zone, people = view.studio.time_zone, view.studio.people
    work = sum((_length(one.working(zone, start, end)) for one in people), timedelta())
    busy = sum((_length(clipped(spans, start, end)) for spans in hands.values()), timedelta())
    return busy / work if work else 0.0


def _length(spans: Iterable[Span]) -> timedelta:
    return sum((end - start for start, end in spans), timedelta())


def _fullest_spot(
    view: DeskView, spots: Mapping[str, tuple[Span, ...]]
) -> tuple[str, float] | None:
    ends = [end for spans in spots.values() for _, end in spans if end > view.now]
    if not ends:
        return None
    whole = max(ends) - view.now
    shares = {key: _length(clipped(s, view.now, max(ends))) / whole for key, s in spots.items()}
    key = max(shares, key=lambda one: shares[one])
    return view.studio.spot(key).name, shares[key]


def _fullest_day(view: DeskView, hands: Mapping[str, list[Span]]) -> tuple[date, float] | None:
    zone = view.studio.time_zone
    starts = (start for spans in hands.values() for start, _ in spans if start > view.now)
    days = {start.astimezone(zone).date() for start in starts}
    shares = {day: _hands_share(view, hands, *_span(view, day, _DAY)) for day in days}
    best = max(sorted(shares), key=lambda day: shares[day], default=None)
    return None if best is None else (best, shares[best])


def _week_line(week: _Week) -> Sentence:
    return said(
        "Week of {first}: hands {hands}, spots {spots}.",
        first=Day(week.first),
        hands=Share(week.hands),
        spots=Share(week.spots),
    )


def _late_reasons(view: DeskView) -> Iterable[Sentence]:
    plan = view.plan
    names = {order.key: order.name for order in view.studio.orders}
    for outcome in plan.outcomes if plan is not None else ():
        if outcome.reason and outcome.order in names:
            text = "Late: {order}. {why}"
            yield said(text, order=names[outcome.order], why=str(outcome.reason))


QUESTION = Question("bottleneck", "Which is my bottleneck?", nothing_asked, _answer)
