"""Whether a piece fits before everybody goes away, and else where it can wait."""

from __future__ import annotations

from datetime import UTC, datetime, time, timedelta
from typing import TYPE_CHECKING, Any, NamedTuple

from studio_planner.craft.grid import last_on_grid
from studio_planner.craft.local_time import instant
from studio_planner.science.stages import Edge, Stage
from studio_planner.services.questions.asking import (
    Answer,
    Kind,
    Parameter,
    Question,
    Sign,
    not_known,
)
from studio_planner.services.questions.gates import lane_of
from studio_planner.services.questions.lying import piece_options, to_come
from studio_planner.services.questions.sentences import Moment, Sentence, said

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.hands import Absence
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.services.desk import DeskView
    from studio_planner.services.ribbons import Lane

_MORNING, _EVENING = time(9), time(18)
_LEAVES_IN, _BACK_IN = timedelta(days=3), timedelta(days=7)


class _Away(NamedTuple):
    """From when to when nobody is there (aware)."""

    leaves: datetime
    back: datetime


def _parameters(view: DeskView) -> tuple[Parameter, ...]:
    zone = view.studio.time_zone
    away = _next_absence(view)
    leaves = (view.now + _LEAVES_IN if away is None else away.start).astimezone(zone)
    back = (view.now + _BACK_IN if away is None else away.end).astimezone(zone)
    options = piece_options(view)
    coming = to_come(view)
    first = coming[0].lane.piece.key if coming else next((key for key, _ in options), "")
    return (
        Parameter("piece", "Which piece", Kind.CHOICE, first, options),
        Parameter("leaves_on", "Away from", Kind.DATE, leaves.date()),
        Parameter("leaves_at", "At", Kind.TIME, _MORNING if away is None else _wall(leaves)),
        Parameter("back_on", "Back on", Kind.DATE, back.date()),
        Parameter("back_at", "At", Kind.TIME, _EVENING if away is None else _wall(back)),
    )


def _wall(local: datetime) -> time:
    return time(local.hour, local.minute)


def _next_absence(view: DeskView) -> Absence | None:
    found = (a for person in view.studio.people for a in person.absences if a.end > view.now)
    return min(found, key=lambda one: one.start, default=None)


def _answer(view: DeskView, given: Mapping[str, Any]) -> Answer:
    if not view.studio.pieces:
        return not_known("There is no piece in this studio yet; add one on the page Pieces.")
    zone = view.studio.time_zone
    away = _Away(
        instant(zone, given["leaves_on"], given["leaves_at"]),
        instant(zone, given["back_on"], given["back_at"]),
    )
    if not view.now < away.leaves < away.back:
        return not_known("Give a day to leave that is to come, and one to be back after it.")
    lane = lane_of(view, given["piece"])
    if not lane.coats:
        return not_known("It is not in the plan yet; plan again first.")
    return _judged(view, lane, away)


def _judged(view: DeskView, lane: Lane, away: _Away) -> Answer:
    inside = _hands_inside(view, lane, away)
    before = [one for one in lane.coats if one.end <= away.leaves]
    name = lane.piece.name
    if not inside and len(before) == len(lane.piece.stack):
        verdict = said("Yes: nothing on {name} needs hands while you are away.", name=name)
        return Answer(Sign.YES, verdict, tuple(_latest(view, lane, away, before[-1])))
    lines = [
        said("Planned while you are away: {what}, {at}.", what=w, at=Moment(t))
        for w, t in inside
    ]
    if not before:
        verdict = said(
            "Do not begin {name} before you go; begin it when you are back.", name=name
        )
        return Answer(Sign.CARE, verdict, tuple(lines))
    return _parked(view, lane, away, lines)


def _hands_inside(view: DeskView, lane: Lane, away: _Away) -> list[tuple[str, datetime]]:
    """What the plan wants done to a piece while nobody is there, in order of time."""
    steps = view.plan.steps if view.plan is not None else ()
    todo = [(lane.piece.coat_name(one.coat), one.start, one.end) for one in lane.coats]
    todo += [(str(s.kind), s.start, s.end) for s in steps if s.piece == lane.piece.key]
    inside = [(what, a) for what, a, b in todo if a < away.back and b > away.leaves]
    return sorted(inside, key=lambda one: one[1])


def _parked(view: DeskView, lane: Lane, away: _Away, lines: list[Sentence]) -> Answer:
    """Where a piece can wait: on the last coat before that survives sanding or stays open."""
    for coat in reversed([one for one in lane.coats if one.end <= away.leaves]):
        kind, why = lane.piece.coat_name(coat.coat), _waits(lane, coat, away)
        if why is not None:
            verdict = said(
                "Pour no further than the {kind}, and the rest from {back}.",
                kind=kind,
                back=Moment(away.back),
            )
            found = (why, *_latest(view, lane, away, coat), *lines)
            return Answer(Sign.CARE, verdict, found)
        if coat.start <= view.now:
            verdict = said(
                "No: the {kind} cannot be sanded, so its next coat has to be on before you go.",
                kind=kind,
            )
            return Answer(Sign.NO, verdict, tuple(lines))
        lines = [_cannot_wait(kind), *lines]
    name = lane.piece.name
    verdict = said("Do not begin {name} before you go; begin it when you are back.", name=name)
    return Answer(Sign.CARE, verdict, tuple(lines))


def _cannot_wait(kind: str) -> Sentence:
    return said(
        "The {kind} cannot be sanded, and its window closes before you are back.", kind=kind
    )


def _waits(lane: Lane, coat: PlannedCoat, away: _Away) -> Sentence | None:
    """Why a coat can wait for its next one until everybody is back; None where it cannot."""
    piece, position = lane.piece, lane.piece.position(coat.coat)
    uppers = (i for i in range(position + 1, len(piece.stack)) if piece.below(i) == position)
    upper = next(uppers, None)
    kind = piece.coat_name(coat.coat)
    if upper is None:
        return said("No other coat lies on the {kind}.", kind=kind)
    closes = _closes(lane, coat)
    if closes is not None and closes > away.back:
        text = "The window over the {kind} stays open until {closes}."
        return said(text, kind=kind, closes=Moment(closes))
    if piece.stack[position].sandable:
        return said("The {kind} can be washed and sanded when you are back.", kind=kind)
    return None


def _closes(lane: Lane, coat: PlannedCoat) -> datetime | None:
    film = next((bar for bar in lane.ribbons if bar.planned is coat), None)
    return None if film is None else film.film.safe(Stage.RECOAT_CLOSES)


def _latest(view: DeskView, lane: Lane, away: _Away, coat: PlannedCoat) -> tuple[Sentence, ...]:
    """The latest start of a coat that is no longer sticky when everybody leaves."""
    if coat.start <= view.now:
        return ()
    product = view.studio.product(lane.piece.coat(coat.coat).product)
    place = view.studio.place_of_spot(coat.spot).key
    clock = view.timing.clock(product, place, Stage.TACK_FREE, Edge.LATE)
    spread = None if clock is None else clock.start_for(away.leaves.timestamp())
    if spread is None:
        return ()
    start = last_on_grid(datetime.fromtimestamp(spread, UTC) - (coat.end - coat.start))
    return (
        said(
            "Latest pour of the {kind}: {start}, so that it is tack-free when you leave.",
            kind=lane.piece.coat_name(coat.coat),
            start=Moment(start),
        ),
    )


QUESTION = Question("before-away", "Will this fit before I go away?", _parameters, _answer)
