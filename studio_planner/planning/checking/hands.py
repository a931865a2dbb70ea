"""Hands: work lies in somebody's working hours, and nobody does two things at once."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from studio_planner.craft.plans import StepKind
from studio_planner.craft.tongue import quoted
from studio_planner.planning.checking.findings import Finding, Rule
from studio_planner.planning.checking.words import step_name

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator
    from datetime import datetime

    from studio_planner.craft.hands import Person
    from studio_planner.craft.local_time import Span
    from studio_planner.planning.checking.reading import Reading

_BOOKING = {StepKind.SAND, StepKind.TURN, StepKind.PACK}
"""Steps that take hands; tape and trim only need somebody awake."""


class _Work(NamedTuple):
    """A stretch of hands-on work; the coats of one mix are one."""

    start: datetime
    end: datetime
    what: str
    piece: str
    coat: str | None
    mix: int | None


def broken_hands(reading: Reading) -> Iterator[Finding]:
    """Work by nobody, outside working hours, or two things at once."""
    for key, work in _work(reading).items():
        person = reading.person(key)
        if person is None:
            for one in work:
                sentence = f"is given to {quoted(key)}, but nobody of that key works here"
                yield _on(reading, one, sentence)
            continue
        yield from _outside_hours(reading, person, work)
        yield from _at_once(reading, person, work)


def _work(reading: Reading) -> dict[str, list[_Work]]:
    work: dict[str, list[_Work]] = {}
    for laid in reading.laid:
        coat = laid.planned
        if not coat.poured:
            one = _Work(coat.start, coat.end, "its block", coat.piece, coat.coat, coat.mix)
            work.setdefault(coat.person, []).append(one)
    for step in reading.steps:
        if step.kind in _BOOKING:
            name = step_name(step)
            one = _Work(step.start, step.end, name, step.piece, step.coat, None)
            work.setdefault(step.person, []).append(one)
    return work


def _outside_hours(reading: Reading, person: Person, work: list[_Work]) -> Iterator[Finding]:
    hours = reading.working(person)
    for one in work:
        if not covered(hours, one.start, one.end):
            when = f"{reading.local(one.start)} to {reading.local(one.end)}"
            sentence = f"{one.what} {when} is outside {person.name}'s working hours"
            yield _on(reading, one, sentence)


def covered(spans: Iterable[Span], start: datetime, end: datetime) -> bool:
    """Tell whether one span holds all of `start` to `end`; no time at all needs none."""
    return start == end or any(a <= start and end <= b for a, b in spans)


def _at_once(reading: Reading, person: Person, work: list[_Work]) -> Iterator[Finding]:
    busy: list[_Work] = []
    for one in sorted(work, key=lambda one: one.start):
        busy = [other for other in busy if other.end > one.start]
        for other in busy:
            if one.end > one.start and not _same_block(one, other):
                sentence = f"{one.what} at {reading.local(one.start)} finds {person.name} busy"
                yield _on(reading, one, f"{sentence} till {reading.local(other.end)}")
        busy.append(one)


def _same_block(one: _Work, other: _Work) -> bool:
    same_time = (one.start, one.end) == (other.start, other.end)
    return one.mix is not None and one.mix == other.mix and same_time


def _on(reading: Reading, work: _Work, sentence: str) -> Finding:
    piece = reading.piece(work.piece)
    coat = None if piece is None or work.coat is None else piece.coat(work.coat)
    return reading.finding(Rule.HANDS, piece, coat, work.start, sentence)
