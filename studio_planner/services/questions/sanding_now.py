"""Whether sanding would spoil a wet film now, and when it would not."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import TYPE_CHECKING, Any, NamedTuple

from studio_planner.craft.grid import next_on_grid
from studio_planner.craft.pieces import CoatKind
from studio_planner.craft.tongue import listed
from studio_planner.services.questions.asking import (
    Answer,
    Kind,
    Parameter,
    Question,
    Sign,
)
from studio_planner.services.questions.evenings import working
from studio_planner.services.questions.lying import NEVER, coat_words, ribbons_of, wet_until
from studio_planner.services.questions.sentences import (
    Lasting,
    Moment,
    Sentence,
    said,
)

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from studio_planner.services.desk import DeskView

_WATCHED = timedelta(days=14)
"""Where no free time is found in so long, none is said."""


class _Wet(NamedTuple):
    """A film that dust would spoil: `clear` is how long before it the last sanding must end."""

    words: str
    start: datetime
    until: datetime
    clear: datetime


def _parameters(view: DeskView) -> tuple[Parameter, ...]:
    minutes = view.studio.settings.sand_minutes
    return (Parameter("minutes", "Minutes of sanding", Kind.MINUTES, minutes),)


def _answer(view: DeskView, given: Mapping[str, Any]) -> Answer:
    minutes = timedelta(minutes=given["minutes"])
    wet = _wet(view)
    free = _first_free(wet, view.now, minutes)
    lines = _reasons(view, wet, minutes)
    if free == view.now:
        return Answer(Sign.YES, said("Yes, sand now."), _until(view, wet), caution=True)
    if free is None:
        text = "No, and no free time is in sight; cover what is wet."
        return Answer(Sign.NO, said(text), lines, caution=True)
    verdict = said("Not now; from {free}.", free=Moment(free))
    lines += _in_working_hours(view, wet, free, minutes)
    return Answer(Sign.NO, verdict, lines, caution=True)


def _wet(view: DeskView) -> list[_Wet]:
    settle = timedelta(minutes=view.studio.settings.settle_minutes)
    films = (one for one in ribbons_of(view) if one.coat.kind is not CoatKind.LEAF)
    found = [_Wet(coat_words(o), o.start, wet_until(o), o.start - settle) for o in films]
    return sorted((one for one in found if one.until > view.now), key=lambda one: one.start)


def _first_free(wet: Sequence[_Wet], now: datetime, minutes: timedelta) -> datetime | None:
    free = now
    for one in wet:  # by start, so whatever is passed stays behind
        if free + minutes > one.clear and free < one.until:
            if one.until == NEVER or one.until - now > _WATCHED:
                return None
            free = next_on_grid(one.until)
    return free


def _in_working_hours(
    view: DeskView, wet: Sequence[_Wet], free: datetime, minutes: timedelta
) -> tuple[Sentence, ...]:
    """The first working hours that are free for it, where it would be free at another time."""
    for start, end in working(view, free, free + _WATCHED):
        at = _first_free(wet, start, minutes)
        if at is not None and at + minutes <= end:
            text = "The first working hours free for it begin {at}."
            return () if at == free else (said(text, at=Moment(at)),)
    return ()


def _reasons(view: DeskView, wet: Sequence[_Wet], minutes: timedelta) -> tuple[Sentence, ...]:
    lines = []
    for one in wet:
        if one.start <= view.now and one.until == NEVER:
            lines.append(
                said("{what} is wet, and its sheet does not say for how long.", what=one.words)
            )
        elif one.start <= view.now:
            text = "{what} is wet and in the open until {until}."
            lines.append(said(text, what=one.words, until=Moment(one.until)))
        elif one.clear < view.now + minutes:
            text = "{what} is poured {start}, and dust takes {settle} to settle."
            settle = Lasting((one.start - one.clear) / timedelta(hours=1))
            lines.append(said(text, what=one.words, start=Moment(one.start), settle=settle))
    return tuple(lines)


def _until(view: DeskView, wet: Sequence[_Wet]) -> tuple[Sentence, ...]:
    lines = [said("No wet piece lies uncovered.")]
    coming = [one for one in wet if one.start > view.now]
    if coming:
        first = coming[0]
        text = "End by {end}: the dust has to settle before {what} at {start}."
        what = listed(one.words for one in coming if one.start == first.start)
        end, start = Moment(first.clear), Moment(first.start)
        lines.append(said(text, end=end, what=what, start=start))
    return tuple(lines)


QUESTION = Question("sanding-now", "May I sand in here now?", _parameters, _answer)
