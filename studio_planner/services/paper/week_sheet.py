"""The week sheet: A4 for the door, a band for each day, then when each piece may go.

A pour says on its own line by when its window closes, so that a usual week has room on one
page; a fuller one goes on overleaf.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date, datetime, time, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.day_words import day_word, short_weekday_word, weekday_word
from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.local_time import clipped, instant, merged
from studio_planner.craft.orders import Gate, Promise
from studio_planner.craft.tongue import capital, translate
from studio_planner.services.paper.heading import headed
from studio_planner.services.paper.pages import (
    Column,
    Day,
    DayLine,
    Mark,
    NothingForPaper,
    PaperSize,
    Part,
    Prose,
    Row,
    Sheet,
    Table,
)
from studio_planner.services.paper.wall_words import (
    clock_said,
    date_said,
    local_day,
    long_date_said,
    minute_after,
    moment_said,
)
from studio_planner.services.promises import promise_of
from studio_planner.services.step_words import step_words

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView

_DAYS = 7


@dataclass(frozen=True, slots=True)
class _Line:
    """A line of the week with the instant that it is sorted by."""

    at: datetime
    line: DayLine


def week_sheet(view: DeskView, day: date) -> Sheet:
    """The calendar week that a day lies in; NothingForPaper where nothing is planned."""
    studio = view.studio
    first = studio.units.first_of_week(day)
    days = [first + timedelta(days=number) for number in range(_DAYS)]
    if view.plan is None:
        raise NothingForPaper(
            translate("paper", "There is no plan yet: plan first, then print the week.")
        )
    found = list(_lines(studio, view.plan))
    if not any(local_day(studio, one.at) in days for one in found):
        raise NothingForPaper(_nothing_in(studio, found, first))
    parts = [*_outdated(view), *(Part(blocks=(_day(studio, one, found),)) for one in days)]
    gates = _gates(studio, view.plan, first)
    if gates.rows:
        parts.append(Part(blocks=(gates,)))
    title = translate("paper", "Week from {date}").format(date=long_date_said(first))
    sheet = headed(view, PaperSize.A4, title, f"week-{first.isoformat()}", parts)
    return replace(sheet, one_page=True)


def planned_weeks(view: DeskView) -> tuple[date, ...]:
    """The first days of the weeks in which something is planned, in order."""
    if view.plan is None:
        return ()
    studio = view.studio
    days = {local_day(studio, one.at) for one in _lines(studio, view.plan)}
    return tuple(sorted({studio.units.first_of_week(day) for day in days}))


def _nothing_in(studio: Studio, found: list[_Line], first: date) -> str:
    """That nothing is planned in a week, and from when to when something is."""
    said = translate("paper", "Nothing is planned in the week from {date}.").format(
        date=long_date_said(first)
    )
    planned = sorted(local_day(studio, one.at) for one in found)
    if not planned:
        return said
    reach = translate("paper", "The plan has something from {first} to {last}.").format(
        first=long_date_said(planned[0]), last=long_date_said(planned[-1])
    )
    return f"{said} {reach}"


def _outdated(view: DeskView) -> Iterator[Part]:
    if view.studio.plan_outdated:
        words = translate(
            "paper", "Something was changed since this plan was made: plan again."
        )
        yield Part(blocks=(Prose(title="", sentences=(words,), listed=True, large=True),))


def _day(studio: Studio, day: date, found: list[_Line]) -> Day:
    own = [one for one in found if local_day(studio, one.at) == day]
    own.sort(key=lambda one: one.at)
    return Day(
        weekday=weekday_word(day.weekday()),
        date=day_word(day),
        hands=_hands(studio, day),
        lines=tuple(one.line for one in own),
    )


def _hands(studio: Studio, day: date) -> str:
    """When somebody can work on a day."""
    zone = studio.time_zone
    start, end = (instant(zone, one, time(0)) for one in (day, day + timedelta(days=1)))
    spans = (span for one in studio.people for span in one.working(zone, start, end))
    there = merged(clipped(spans, start, end))
    if not there:
        return translate("paper", "no hands")
    said = ", ".join(
        translate("paper", "{start} to {end}").format(
            start=clock_said(studio, one[0]), end=clock_said(studio, one[1])
        )
        for one in there
    )
    return translate("paper", "hands {times}").format(times=said)


def _lines(studio: Studio, plan: Plan) -> Iterator[_Line]:
    yield from _pours(studio, plan)
    yield from _steps(studio, plan)
    yield from _leaving(studio, plan)


def _pours(studio: Studio, plan: Plan) -> Iterator[_Line]:
    mixes: dict[int, list[PlannedCoat]] = {}
    for coat in plan.coats:
        mixes.setdefault(coat.mix, []).append(coat)
    for coats in mixes.values():
        first = coats[0]
        kind = kind_word(studio.piece(first.piece).coat(first.coat).kind)
        what = translate("paper", "poured: {coat}") if first.poured else "{coat}"
        whom = ", ".join(
            translate("paper", "{piece} ({spot})").format(
                piece=studio.piece(one.piece).name, spot=studio.spot(one.spot).name
            )
            for one in coats
        )
        line = _line(studio, (first.start, first.end), Mark.POUR, what.format(coat=kind), whom)
        yield replace(line, line=replace(line.line, closes=_closes(studio, coats)))


def _steps(studio: Studio, plan: Plan) -> Iterator[_Line]:
    groups: dict[tuple[datetime, datetime, str], list[str]] = {}
    for step in plan.steps:
        key = (step.start, step.end, step_words(studio, step))
        groups.setdefault(key, []).append(studio.piece(step.piece).name)
    for (start, end, what), names in groups.items():
        yield _line(studio, (start, end), Mark.STEP, what, ", ".join(dict.fromkeys(names)))


def _closes(studio: Studio, coats: list[PlannedCoat]) -> str:
    """When the first window closes that a pour which is still to come has to be in."""
    closings = [
        one.window.closes
        for one in coats
        if not one.poured and one.window is not None and one.window.closes is not None
    ]
    if not closings:
        return ""
    closes, day = min(closings), local_day(studio, coats[0].start)
    when = clock_said(studio, closes)
    if (there := local_day(studio, closes)) != day:
        near = there - day < timedelta(days=_DAYS)
        named = short_weekday_word(there.weekday()) if near else date_said(there)
        when = f"{named} {when}"
    return translate("paper", "closes {when}").format(when=when)


def _leaving(studio: Studio, plan: Plan) -> Iterator[_Line]:
    for order in studio.orders:
        kept = promise_of(studio, plan, order)
        leaves = None if kept.outcome is None else kept.outcome.leaves
        if leaves is None or kept.shipped is not None:
            continue
        market = order.promise is Promise.MARKET
        what = (
            translate("paper", "ready for the market")
            if market
            else translate("paper", "pick-up")
        )
        yield _line(studio, (leaves, None), Mark.LEAVES, what, order.name)


def _line(
    studio: Studio, span: tuple[datetime, datetime | None], mark: Mark, what: str, whom: str
) -> _Line:
    start, end = span
    clock = clock_said(studio, start)
    if end is not None:
        clock = translate("paper", "{start} to {end}").format(
            start=clock, end=moment_said(studio, end, local_day(studio, start))
        )
    return _Line(start, DayLine(clock=clock, mark=mark, what=capital(what), whom=whom))


def _gates(studio: Studio, plan: Plan, first: date) -> Table:
    """When each piece of the week may pass its gates for sure, and which order it is for."""
    heads = (
        translate("paper", "handle"),
        translate("paper", "pack"),
        translate("paper", "full cure"),
    )
    columns = (
        Column(head=translate("paper", "piece"), share=0.21),
        *(Column(head=head, share=0.18) for head in heads),
        Column(head=translate("paper", "for"), share=0.25),
    )
    rows = tuple(_gate_rows(studio, plan, first))
    title = translate("paper", "May be handled, packed, is fully cured: for sure from")
    return Table(title=title, columns=columns, rows=rows)


def _gate_rows(studio: Studio, plan: Plan, first: date) -> Iterator[Row]:
    """The pieces that are begun before the week ends and pass a gate from it on, if ever."""
    begun: dict[str, date] = {}
    for coat in sorted(plan.coats, key=lambda one: one.start):
        begun.setdefault(coat.piece, local_day(studio, coat.start))
    for piece in studio.pieces:
        ready = {one.stage: one.safe for one in plan.ready if one.piece == piece.key}
        passed = (date.max if w is None else local_day(studio, w) for w in ready.values())
        last = max(passed, default=date.min)
        after = begun.get(piece.key, date.min) >= first + timedelta(days=_DAYS)
        if after or last < first:
            continue
        order = studio.order_of(piece.key)
        times = [
            ""
            if (when := ready.get(gate.stage)) is None
            else moment_said(studio, minute_after(when))
            for gate in Gate
        ]
        whose = "" if order is None else order.name
        yield Row(cells=(piece.name, *times, whose))
