"""When the next coat may be poured after one that is poured at a given time."""

from __future__ import annotations

from datetime import datetime, time, timedelta
from typing import TYPE_CHECKING, Any, NamedTuple

from studio_planner.craft.local_time import clipped, instant
from studio_planner.craft.pieces import Joint
from studio_planner.science.stages import Stage
from studio_planner.services.film_shades import Film
from studio_planner.services.hands_on import block_of
from studio_planner.services.questions.asking import (
    Answer,
    Kind,
    Parameter,
    Question,
    Sign,
    not_known,
)
from studio_planner.services.questions.evenings import awake, working
from studio_planner.services.questions.sentences import (
    Lasting,
    Moment,
    Sentence,
    said,
)

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.services.desk import DeskView

_EVENING = time(18)
_HALF_HOUR = timedelta(minutes=30)
_LOOKED = timedelta(hours=36)
_BETTER = 2


class _Pair(NamedTuple):
    """A coat, the next one over it, and where it is poured."""

    piece: Piece
    lower: Coat
    upper: Coat
    place: str


class _Open(NamedTuple):
    """A window: when it opens and closes (None: it stays open), its awake minutes."""

    opens: datetime
    closes: datetime | None
    awake: timedelta


def _pairs(view: DeskView) -> dict[str, _Pair]:
    poured = view.studio.poured_keys
    found = {}
    for piece in view.studio.pieces:
        for index, upper in enumerate(piece.stack):
            below = piece.below(index)
            if below is None or upper.joint is Joint.WET_IN_WET:
                continue
            lower, place = piece.stack[below], _place(view, piece, piece.stack[below])
            if (piece.key, lower.key) not in poured and place is not None:
                found[f"{piece.key}/{lower.key}"] = _Pair(piece, lower, upper, place)
    return found


def _place(view: DeskView, piece: Piece, coat: Coat) -> str | None:
    planned = view.plan.coats if view.plan is not None else ()
    spots = (one.spot for one in planned if (one.piece, one.coat) == (piece.key, coat.key))
    spot = next(spots, None)
    if spot is not None:
        return view.studio.place_of_spot(spot).key
    rest = view.studio.resting_place
    return None if rest is None else rest.key


def _parameters(view: DeskView) -> tuple[Parameter, ...]:
    options = tuple(
        (key, f"{pair.piece.name}, {pair.piece.coat_name(pair.lower.key)}")
        for key, pair in _pairs(view).items()
    )
    first = next((key for key, _ in options), "")
    today = view.now.astimezone(view.studio.time_zone).date()
    return (
        Parameter("coat", "Which coat", Kind.CHOICE, first, options),
        Parameter("day", "Poured on", Kind.DATE, today),
        Parameter("at", "Poured at", Kind.TIME, _EVENING),
    )


def _answer(view: DeskView, given: Mapping[str, Any]) -> Answer:
    pair = _pairs(view).get(given["coat"])
    if pair is None:
        return not_known("No coat is waiting that another one lies on.")
    start = instant(view.studio.time_zone, given["day"], given["at"])
    if not view.timing.start <= start <= view.timing.end:
        return not_known("That day lies outside the plan; choose one nearer to today.")
    window = _window(view, pair, start)
    if window is None:
        return _without_window(view, pair)
    return _judged(view, pair, start, window)


def _without_window(view: DeskView, pair: _Pair) -> Answer:
    name = view.studio.product(pair.lower.product).name
    text = (
        "There is no safe window: by the sheet of {product} it may close before it surely "
        "opens. Enter its recoat times on the page Products, or wash and sand in between."
    )
    return Answer(Sign.NO, said(text, product=name))


def _window(view: DeskView, pair: _Pair, start: datetime) -> _Open | None:
    product = view.studio.product(pair.lower.product)
    film = Film(
        view.timing,
        product,
        start,
        start + block_of(view.studio, pair.piece, pair.lower),
        [(pair.place, start)],
    )
    opens = film.safe(Stage.RECOAT_OPENS)
    if opens is None and pair.upper.joint is Joint.ON_DRY:
        opens = film.safe(Stage.TACK_FREE)
    closes = film.safe(Stage.RECOAT_CLOSES)
    if opens is None or (closes is not None and closes <= opens):
        return None
    end = closes or min(opens + timedelta(days=7), view.timing.end)
    spans = awake(view, opens, end) if opens < end else ()
    lying = sum((b - a for a, b in spans), timedelta())
    return _Open(opens, closes, lying)


def _judged(view: DeskView, pair: _Pair, start: datetime, window: _Open) -> Answer:
    upper = pair.piece.coat_name(pair.upper.key)
    block = block_of(view.studio, pair.piece, pair.upper)
    lines = list(_lines(window, block))
    fits = _fits(view, window, block)
    if fits is not None:
        verdict = said(
            "Pour the {upper} from {opens}; somebody is awake for it from {fits}.",
            upper=upper,
            opens=Moment(window.opens),
            fits=Moment(fits),
        )
        return Answer(Sign.YES, verdict, tuple(lines))
    lines += _others(view, pair, start)
    if not window.awake:
        verdict = said("Nobody is awake while the window for the {upper} is open.", upper=upper)
    else:
        text = "Somebody is awake in its window, but not long enough for the {upper}."
        verdict = said(text, upper=upper)
    return Answer(Sign.NO, verdict, tuple(lines))


def _lines(window: _Open, block: timedelta) -> tuple[Sentence, ...]:
    opens = Moment(window.opens)
    if window.closes is None:
        first = said("The window opens {opens} and stays open.", opens=opens)
    else:
        text = "The window opens {opens} at the latest and closes {closes} at the earliest."
        first = said(text, opens=opens, closes=Moment(window.closes))
    hour = timedelta(hours=1)
    text = "Somebody is awake for {awake} of it; the next coat takes {block}."
    return first, said(text, awake=Lasting(window.awake / hour), block=Lasting(block / hour))


def _fits(view: DeskView, window: _Open, block: timedelta) -> datetime | None:
    """The first instant from which somebody is awake for the whole block, in the window."""
    end = window.closes or min(window.opens + timedelta(days=7), view.timing.end)
    if window.opens >= end:
        return None
    spans = clipped(awake(view, window.opens, end), window.opens, end)
    return next((a for a, b in spans if b - a >= block), None)


def _others(view: DeskView, pair: _Pair, asked: datetime) -> list[Sentence]:
    own = block_of(view.studio, pair.piece, pair.lower)
    block = block_of(view.studio, pair.piece, pair.upper)
    better: list[tuple[datetime, _Open]] = []
    for span in working(view, view.now, view.now + _LOOKED):
        start = max(span[0], view.now)
        while start + own <= span[1]:
            window = _window(view, pair, start)
            if window is not None and _fits(view, window, block) is not None:
                better.append((start, window))
            start += _HALF_HOUR
    better.sort(key=lambda one: abs(one[0] - asked))
    chosen = sorted(better[:_BETTER], key=lambda one: one[0])
    return [
        said(
            "Better: pour at {start}; it opens {opens}.",
            start=Moment(start),
            opens=Moment(window.opens),
        )
        for start, window in chosen
    ]


QUESTION = Question(
    "colour-window",
    "If I pour the base at {time} tonight, when may I pour the colour?",
    _parameters,
    _answer,
    example=_EVENING,
)
