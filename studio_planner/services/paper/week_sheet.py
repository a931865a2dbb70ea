"""The week sheet: A4 for the door, a band for each day, then when each piece may go."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.day_words import day_word, weekday_word
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
    PaperSize,
    Part,
    Prose,
    Row,
    Sheet,
    Table,
)
from studio_planner.services.paper.wall_words import (
    clock_said,
    local_day,
    long_date_said,
    minute_after,
    moment_said,
)
from studio_planner.services.step_words import step_words

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView

DAYS = 7


@dataclass(frozen=True, slots=True)
class _Line:
    """A line of the week with the instant that it is sorted by."""

    at: datetime
    line: DayLine


def week_sheet(view: DeskView, day: date) -> Sheet:
    """The week of the studio's calendar that a day lies in."""
    studio = view.studio
    first = studio.units.first_of_week(day)
    days = [first + timedelta(days=number) for number in range(DAYS)]
    found = [] if view.plan is None else list(_lines(studio, view.plan))
    parts = [*_outdated(view), *(Part(blocks=(_day(studio, one, found),)) for one in days)]
    gates = _gates(studio, view.plan)
    if gates.rows:
        parts.append(Part(blocks=(gates,)))
    title = translate("paper", "Week from {date}").format(date=long_date_said(first))
    return headed(view, PaperSize.A4, title, f"week-{first.isoformat()}", parts)


def _outdated(view: DeskView) -> Iterator[Part]:
    words = ""
    if view.plan is None:
        words = translate("paper", "There is no plan yet: plan first, then print the week.")
    elif view.studio.plan_outdated:
        words = translate(
            "paper", "Something was changed since this plan was made: plan again."
        )
    if words:
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
    yield from _closings(studio, plan)
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
        said = what.format(coat=kind)
        yield _line(studio, (first.start, first.end), Mark.POUR, said, whom)


def _steps(studio: Studio, plan: Plan) -> Iterator[_Line]:
    groups: dict[tuple[datetime, datetime, str], list[str]] = {}
    for step in plan.steps:
        key = (step.start, step.end, step_words(studio, step))
        groups.setdefault(key, []).append(studio.piece(step.piece).name)
    for (start, end, what), names in groups.items():
        yield _line(studio, (start, end), Mark.STEP, what, ", ".join(dict.fromkeys(names)))


def _closings(studio: Studio, plan: Plan) -> Iterator[_Line]:
    """The windows that a pour which is still to come has to be in."""
    groups: dict[datetime, list[str]] = {}
    for coat in plan.coats:
        if coat.poured or coat.window is None or coat.window.closes is None:
            continue
        piece = studio.piece(coat.piece)
        said = translate("paper", "{piece}: {coat}").format(
            piece=piece.name, coat=piece.coat_name(coat.coat)
        )
        groups.setdefault(coat.window.closes, []).append(said)
    for closes, names in groups.items():
        what = translate("paper", "window closes")
        yield _line(studio, (closes, None), Mark.CLOSES, what, ", ".join(names))


def _leaving(studio: Studio, plan: Plan) -> Iterator[_Line]:
    outcomes = {one.order: one.leaves for one in plan.outcomes}
    for order in studio.orders:
        leaves = outcomes.get(order.key)
        if leaves is None:
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


def _gates(studio: Studio, plan: Plan | None) -> Table:
    """When each piece may pass its gates for sure, and when its order is due."""
    heads = (
        translate("paper", "handle"),
        translate("paper", "pack"),
        translate("paper", "full cure"),
    )
    columns = (
        Column(head=translate("paper", "piece"), share=0.22),
        *(Column(head=head, share=0.19) for head in heads),
        Column(head=translate("paper", "for"), share=0.21),
    )
    rows = () if plan is None else tuple(_gate_rows(studio, plan))
    title = translate("paper", "May be handled, packed, is fully cured: for sure from")
    return Table(title=title, columns=columns, rows=rows)


def _gate_rows(studio: Studio, plan: Plan) -> Iterable[Row]:
    for piece in studio.pieces:
        ready = {one.stage: one.safe for one in plan.ready if one.piece == piece.key}
        if not ready:
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
