"""Whether somebody can pour at a time, who, and if nobody can, why not."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.services.moving.breaks import Break, Rule
from studio_planner.services.questions.sentences import Clock, Moment, said

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import datetime

    from studio_planner.craft.local_time import Span
    from studio_planner.services.moving.around import Around, Work
    from studio_planner.services.moving.held import Held


def hands_then(around: Around, held: Held) -> tuple[str | None, tuple[Break, ...]]:
    """The person (a key) who can do all of it, the planned one if possible; else why nobody."""
    planned = held.mix[0].person
    keys = sorted((person.key for person in around.studio.people), key=lambda k: k != planned)
    if not keys:
        return None, (_nobody("Nobody works in this studio yet."),)
    spans = [(turn.start, turn.end) for turn in held.turns] + [(held.start, held.end)]
    there = [key for key in keys if all(_holds(around.working[key], span) for span in spans)]
    for key in there:
        if _busy(around.busy[key], spans) is None:
            return key, ()
    if not there:
        return None, (_why_nobody(around, held),)
    work = _busy(around.busy[there[0]], spans)
    assert work is not None  # noqa: S101 - else the loop would have found them free
    return None, (_busy_words(around, there[0], work),)


def _holds(spans: Iterable[Span], wanted: Span) -> bool:
    start, end = wanted
    return start == end or any(a <= start and end <= b for a, b in spans)


def _busy(work: Iterable[Work], spans: Iterable[Span]) -> Work | None:
    wanted = [span for span in spans if span[0] < span[1]]
    return next(
        (one for one in work if any(one.start < b and a < one.end for a, b in wanted)), None
    )


def _busy_words(around: Around, key: str, work: Work) -> Break:
    name = next(person.name for person in around.studio.people if person.key == key)
    text = "Hands are busy: {who} is at {what} until {until}."
    words = said(text, who=name, what=work.what, until=Clock(work.end))
    return Break(rule=Rule.HANDS, words=words)


def _why_nobody(around: Around, held: Held) -> Break:
    """Say what keeps everybody from it: an absence, the night, or their hours."""
    zone, start = around.studio.time_zone, held.start
    for person in around.studio.people:
        there = replace(person, absences=()).working(zone, start, held.end)
        if _holds(there, (start, held.end)):
            away = [a for a in person.absences if a.start < held.end and start < a.end]
            until = Moment(max(a.end for a in away)) if away else Moment(held.end)
            text = "Nobody can work then: {who} is away until {until}."
            return Break(rule=Rule.HANDS, words=said(text, who=person.name, until=until))
    if not any(a < held.end and start < b for a, b in around.somebody_awake):
        return _nobody("Nobody can work then: it is night.")
    ends = [b for key in around.working for b in _covering(around.working[key], start)]
    if ends:
        text = "Nobody can work then: hours end {end}, the pour would end {ends}."
        words = said(text, end=Clock(max(ends)), ends=Clock(held.end))
        return Break(rule=Rule.HANDS, words=words)
    after = [a for spans in around.working.values() for a, _ in spans if a >= start]
    if not after:
        return _nobody("Nobody can work then.")
    text = "Nobody can work then: hours begin {begin}."
    return Break(rule=Rule.HANDS, words=said(text, begin=Moment(min(after))))


def _covering(spans: Iterable[Span], when: datetime) -> list[datetime]:
    return [b for a, b in spans if a <= when < b]


def _nobody(text: str) -> Break:
    return Break(rule=Rule.HANDS, words=said(text))
