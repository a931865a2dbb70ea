"""How late a pour can begin tonight, so that its drips are wiped before bedtime."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import TYPE_CHECKING, Any, NamedTuple

from studio_planner.craft.grid import last_on_grid
from studio_planner.craft.tongue import listed, translate
from studio_planner.services.editing.people import person_of
from studio_planner.services.questions.asking import (
    Answer,
    Kind,
    Parameter,
    Question,
    Sign,
    not_known,
)
from studio_planner.services.questions.evenings import bedtime
from studio_planner.services.questions.lying import coat_words, to_come
from studio_planner.services.questions.sentences import (
    Clock,
    Lasting,
    Moment,
    Sentence,
    said,
)

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.hands import Person
    from studio_planner.services.desk import DeskView
    from studio_planner.services.ribbons import Ribbon

ANOTHER = "another"
_ATTENDED_MINUTES = 90
"""What a pour holds a maker, drips and all (common practice)."""

_NEAR = timedelta(hours=24)


class _Pour(NamedTuple):
    """A block of hands: what it is, how long, who, when it is planned, its window's end."""

    words: str
    hours: float
    person: Person | None
    planned: datetime | None
    closes: datetime | None


def _mixes(view: DeskView) -> dict[str, list[Ribbon]]:
    mixes: dict[str, list[Ribbon]] = {}
    for one in to_come(view):
        if one.start < view.now + _NEAR:
            mixes.setdefault(str(one.planned.mix), []).append(one)
    return mixes


def _parameters(view: DeskView) -> tuple[Parameter, ...]:
    options = [(key, listed(map(coat_words, films))) for key, films in _mixes(view).items()]
    options.append((ANOTHER, translate("questions", "Another pour")))
    return (
        Parameter("pour", "Which pour", Kind.CHOICE, options[0][0], tuple(options)),
        Parameter(
            "minutes", "Hands-on minutes of another pour", Kind.MINUTES, _ATTENDED_MINUTES
        ),
    )


def _answer(view: DeskView, given: Mapping[str, Any]) -> Answer:
    if not view.studio.people:
        return not_known("Nobody works in this studio yet; add a person on the page Studio.")
    pour = _asked(view, given)
    ends = [e for one in _who(view, pour) if (e := bedtime(view, one)) is not None]
    if not ends:
        return not_known("Nobody is there within a day.")
    bed = max(ends)
    last = bed if pour.closes is None else min(bed, pour.closes)
    start = last_on_grid(last - timedelta(hours=pour.hours))
    lines = _lines(view, pour, bed, start)
    if start < view.now:
        text = "It is too late for {what}: it would have had to begin at {start}."
        return Answer(Sign.NO, said(text, what=pour.words, start=Clock(start)), lines)
    text = "Begin {what} by {start} at the latest."
    return Answer(Sign.YES, said(text, what=pour.words, start=Moment(start)), lines)


def _asked(view: DeskView, given: Mapping[str, Any]) -> _Pour:
    films = _mixes(view).get(given["pour"])
    if films is None:
        return _Pour(
            translate("questions", "another pour"), given["minutes"] / 60.0, None, None, None
        )
    first = films[0].planned
    windows = (one.planned.window for one in films)
    ends = [w.closes for w in windows if w is not None and w.closes is not None]
    return _Pour(
        listed(map(coat_words, films)),
        (first.end - first.start) / timedelta(hours=1),
        person_of(view.studio, first.person),
        first.start,
        min(ends, default=None),
    )


def _who(view: DeskView, pour: _Pour) -> tuple[Person, ...]:
    return view.studio.people if pour.person is None else (pour.person,)


def _lines(view: DeskView, pour: _Pour, bed: datetime, start: datetime) -> tuple[Sentence, ...]:
    who = listed(one.name for one in _who(view, pour))
    lines = [
        said(
            "It needs {time} of hands, from weighing to the last wipe of the drips.",
            time=Lasting(pour.hours),
        )
    ]
    if pour.closes is not None and pour.closes < bed:
        text = "Its window closes at {closes}, before bedtime at {bed}."
        lines.append(said(text, closes=Clock(pour.closes), bed=Clock(bed)))
    else:
        lines.append(said("Bedtime of {who} is {bed}.", who=who, bed=Moment(bed)))
    if pour.planned is not None:
        lines.append(said("The plan begins it {at}.", at=Moment(pour.planned)))
    end = start + timedelta(hours=pour.hours)
    zone = view.studio.time_zone
    worked = any(
        s <= start and end <= e
        for one in _who(view, pour)
        for s, e in one.working(zone, start, end)
    )
    if not worked:
        lines.append(said("That reaches beyond the working hours of {who}.", who=who))
    return tuple(lines)


QUESTION = Question(
    "latest-start",
    "How late can I start tonight and still wipe the drips?",
    _parameters,
    _answer,
)
