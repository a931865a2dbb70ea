"""Whether a piece can be warmed to catch up, how, and what that risks."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import TYPE_CHECKING, Any

from studio_planner.craft.log_legs import legs_from
from studio_planner.craft.pieces import EDGE, UNDERSIDE, CoatKind
from studio_planner.science.clocks import StageClock, reached_through
from studio_planner.science.samples import history_of
from studio_planner.science.stages import Edge, Stage
from studio_planner.services.questions.asking import (
    Answer,
    Kind,
    Parameter,
    Question,
    Sign,
    not_known,
)
from studio_planner.services.questions.lying import begun, open_films, to_come
from studio_planner.services.questions.sentences import (
    Degrees,
    Lasting,
    Moment,
    Sentence,
    Step,
    said,
)

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.timing import Leg
    from studio_planner.science.samples import History
    from studio_planner.services.desk import DeskView
    from studio_planner.services.ribbons import Ribbon

_TARGET_CELSIUS = 40.0
_MOST_CELSIUS, _MOST_POROUS_CELSIUS = 50.0, 45.0
_CELSIUS_PER_HOUR = 5.0
_HOLD_HOURS = 8.0
"""Common practice: 40 to 50 °C for 4 to 12 h, up by 5 to 10 °C an hour; what is porous less."""

_HOUR = 3600.0
_FRAGILE = frozenset({CoatKind.LEAF, CoatKind.SIZE, CoatKind.GLITTER})


def _parameters(view: DeskView) -> tuple[Parameter, ...]:
    keys = dict.fromkeys(one.lane.piece.key for one in begun(view))
    options = tuple((key, view.studio.piece(key).name) for key in keys)
    first = next(iter(keys), "")
    return (
        Parameter("piece", "Which piece", Kind.CHOICE, first, options),
        Parameter("celsius", "Warm it to", Kind.TEMPERATURE, _TARGET_CELSIUS),
    )


def _answer(view: DeskView, given: Mapping[str, Any]) -> Answer:
    films = open_films(view, given["piece"]) if given["piece"] else []
    if not films:
        return not_known("No film lies open now, so there is nothing to warm.")
    piece, target = films[0].lane.piece, float(given["celsius"])
    most = _MOST_POROUS_CELSIUS if piece.material.porous else _MOST_CELSIUS
    if target > most:
        verdict = said("No: not above {most} for this piece.", most=Degrees(most))
        return Answer(Sign.NO, verdict, tuple(_risks(piece)), caution=True)
    holds = _holds(films)
    if holds is None:
        return not_known(
            "Its sheet does not say when it can be handled, so ask its maker first."
        )
    if holds > view.now:
        text = "No, not before {holds}: it would sag, or print where it lies."
        return Answer(
            Sign.NO,
            said(text, holds=Moment(holds)),
            (_steps(target), *_risks(piece)),
            caution=True,
        )
    return _planned(view, films, target)


def _holds(films: list[Ribbon]) -> datetime | None:
    """When every open film of a piece can surely be handled."""
    found = [film.film.safe(Stage.HANDLE) for film in films]
    known = [one for one in found if one is not None]
    return max(known) if len(known) == len(found) else None


def _planned(view: DeskView, films: list[Ribbon], target: float) -> Answer:
    piece = films[0].lane.piece
    lines = [_steps(target), *_gain(view, films[0], target), *_next_coat(view, piece)]
    risks = _risks(piece)
    if any(coat.kind in _FRAGILE for coat in piece.stack):
        verdict = said("Better not: what lies in it may lift or go dull. Wait instead.")
        return Answer(Sign.NO, verdict, (*risks, *lines), caution=True)
    if risks or to_come(view, piece.key):
        verdict = said("Yes, with care: it holds.")
        return Answer(Sign.CARE, verdict, (*lines, *risks), caution=True)
    return Answer(Sign.YES, said("Yes: it holds."), tuple(lines), caution=True)


def _steps(target: float) -> Sentence:
    return said(
        "Once it holds: up by {rate} an hour to {target}, {hold} there, and cool slowly in the "
        "box. Lie it flat on its whole face, and never go above what the data sheet allows.",
        rate=Step(_CELSIUS_PER_HOUR),
        target=Degrees(target),
        hold=Lasting(_HOLD_HOURS),
    )


def _risks(piece: Piece) -> list[Sentence]:
    lines = []
    faces = {face for coat in piece.stack for face in coat.faces}
    if piece.material.porous:
        text = "MDF and timber move when they dry in the warmth; stay under {most}."
        lines.append(said(text, most=Degrees(_MOST_POROUS_CELSIUS)))
        if UNDERSIDE not in faces or faces <= {UNDERSIDE, EDGE}:
            lines.append(said("One face of it is bare, so it may cup: seal both faces first."))
    if any(coat.kind in _FRAGILE for coat in piece.stack):
        lines.append(said("Leaf, size and glitter move otherwise than the film around them."))
    return lines


def _gain(view: DeskView, film: Ribbon, target: float) -> list[Sentence]:
    """What warming from now on does to print-free, at the late edge; nothing if it is past."""
    law = film.product.law(Stage.PRINT_FREE)
    then = film.film.safe(Stage.PRINT_FREE)
    if law is None or then is None or then <= view.now:
        return []
    legs = [leg for leg in legs_from(film.lane.legs, film.planned.end) if leg[1] < view.now]
    start = view.now.timestamp()
    celsius = view.timing.history(legs[-1][0]).celsius_at(start) if legs else None
    if celsius is None or celsius >= target:
        return []
    warm = StageClock(law, _warmed(view, celsius, target), Edge.LATE)
    second = reached_through([*_clocks(view, film, legs), (warm, start)])
    text = "Print-free {now} instead of {then}, if it is warmed from now on."
    found = () if second is None else (datetime.fromtimestamp(second, UTC),)
    return [said(text, now=Moment(now), then=Moment(then)) for now in found]


def _clocks(
    view: DeskView, film: Ribbon, legs: Sequence[Leg]
) -> list[tuple[StageClock, float]]:
    """The clock of print-free, at the late edge, wherever the film was, each from when on."""
    clock_in, late = view.timing.clock, Edge.LATE
    found = ((clock_in(film.product, p, Stage.PRINT_FREE, late), since) for p, since in legs)
    return [(clock, since.timestamp()) for clock, since in found if clock is not None]


def _warmed(view: DeskView, celsius: float, target: float) -> History:
    """Up, held, down again to the room as it is now, and there until the record ends."""
    begins, ends = view.now.timestamp(), view.timing.end.timestamp()
    up = (target - celsius) / _CELSIUS_PER_HOUR * _HOUR
    down = begins + up + _HOLD_HOURS * _HOUR
    rows = [(begins, celsius), (begins + up, target), (down, target), (down + up, celsius)]
    rows.append((max(ends, down + up + _HOUR), celsius))
    return history_of([(second, warmth, 0.0, None) for second, warmth in rows])


def _next_coat(view: DeskView, piece: Piece) -> list[Sentence]:
    coming = to_come(view, piece.key)
    if not coming:
        return []
    text = (
        "The {coat} still comes: warmth closes its window sooner, so it may have to be scuffed."
    )
    return [said(text, coat=piece.coat_name(coming[0].coat.key))]


QUESTION = Question("warming", "Can I warm it to catch up?", _parameters, _answer)
