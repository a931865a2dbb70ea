"""Whether a piece can be shown and sold on a market day."""

from __future__ import annotations

from datetime import time, timedelta
from typing import TYPE_CHECKING, Any

from studio_planner.craft.local_time import instant
from studio_planner.craft.orders import Promise
from studio_planner.services.questions.asking import (
    Answer,
    Kind,
    Parameter,
    Question,
    Sign,
    not_known,
)
from studio_planner.services.questions.gates import (
    Gates,
    Reached,
    gates_of,
    lane_of,
    reached,
    ready_lines,
    safe_words,
)
from studio_planner.services.questions.lying import piece_options
from studio_planner.services.questions.sentences import Day, Sentence, said

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import date, datetime

    from studio_planner.craft.orders import Order
    from studio_planner.services.desk import DeskView

_SATURDAY = 5
_WEEK = 7
_OPENS = time(9)


def _parameters(view: DeskView) -> tuple[Parameter, ...]:
    market = _next_market(view)
    options = piece_options(view)
    first = market.pieces[0] if market is not None else next((k for k, _ in options), "")
    today = view.now.astimezone(view.studio.time_zone).date()
    saturday = today + timedelta(days=(_SATURDAY - today.weekday()) % _WEEK)
    return (
        Parameter("piece", "Which piece", Kind.CHOICE, first, options),
        Parameter("day", "Market day", Kind.DATE, market.promised if market else saturday),
        Parameter("opens", "Opens at", Kind.TIME, market.opens if market else _OPENS),
    )


def _next_market(view: DeskView) -> Order | None:
    zone = view.studio.time_zone
    markets = (one for one in view.studio.orders if one.promise is Promise.MARKET)
    coming = (one for one in markets if one.due(zone) > view.now)
    return min(coming, key=lambda one: one.due(zone), default=None)


def _answer(view: DeskView, given: Mapping[str, Any]) -> Answer:
    if not view.studio.pieces:
        return not_known("There is no piece in this studio yet; add one on the page Pieces.")
    lane = lane_of(view, given["piece"])
    gates = gates_of(lane)
    if gates is None:
        return not_known(
            "Not all coats of it are planned, so nobody knows when it is ready; plan again."
        )
    opens = instant(view.studio.time_zone, given["day"], given["opens"])
    return _judged(lane.piece.name, gates, opens, given["day"])


def _judged(name: str, gates: Gates, opens: datetime, day: date) -> Answer:
    lines = ready_lines(gates)
    shown, full = reached(gates.handle, opens), reached(gates.full, opens)
    if full is Reached.SURELY:
        verdict = said("Yes: show and sell {name} on {day}.", name=name, day=Day(day))
        return Answer(Sign.YES, verdict, lines, caution=True)
    if shown is Reached.SURELY:
        verdict = said(
            "Show {name}, yes; sell it only with a note: handle gently, full cure {full}.",
            name=name,
            full=safe_words(gates.full),
        )
        return Answer(Sign.CARE, verdict, (*lines, *_wrapping(gates, opens)), caution=True)
    if shown is Reached.LIKELY:
        verdict = said(
            "Perhaps: {name} will likely be hard enough to show, but it is not sure. Press the "
            "edge with a gloved thumb before you take it.",
            name=name,
        )
        return Answer(Sign.CARE, verdict, lines, caution=True)
    verdict = said("No: on {day} {name} would print where it is held.", name=name, day=Day(day))
    return Answer(Sign.NO, verdict, lines, caution=True)


def _wrapping(gates: Gates, opens: datetime) -> tuple[Sentence, ...]:
    if reached(gates.pack, opens) is Reached.SURELY:
        return (said("On the way it may lie wrapped in release paper, nothing on top."),)
    return (said("Nothing may touch its face on the way: it is not print-free yet."),)


QUESTION = Question("to-market", "Can it go to the market on Saturday?", _parameters, _answer)
