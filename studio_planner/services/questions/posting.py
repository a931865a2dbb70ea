"""Whether a piece can be posted today, and how it is packed."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING, Any

from studio_planner.craft.orders import Courier, Gate
from studio_planner.services.questions.asking import (
    Answer,
    Kind,
    Parameter,
    Question,
    Sign,
    not_known,
)
from studio_planner.services.questions.gates import (
    Reached,
    gates_of,
    lane_of,
    reached,
    ready_lines,
)
from studio_planner.services.questions.lying import piece_options
from studio_planner.services.questions.sentences import Clock, Day, Moment, Sentence, said

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import datetime

    from studio_planner.services.desk import DeskView
    from studio_planner.services.ready_flags import Flag

_BEFORE_WEEKEND = frozenset({3, 4})
_PACKING_MINUTES = 15
"""What a new order has for packing (common practice)."""


def _parameters(view: DeskView) -> tuple[Parameter, ...]:
    options = piece_options(view)
    first = next((key for key, _ in options), "")
    return (
        Parameter("piece", "Which piece", Kind.CHOICE, first, options),
        # Common practice: a van in summer can pass 40 to 50 °C, and softens what is half cured.
        Parameter("hot", "Hot weather on its way", Kind.FLAG, value=False),
    )


def _answer(view: DeskView, given: Mapping[str, Any]) -> Answer:
    if not view.studio.pieces:
        return not_known("There is no piece in this studio yet; add one on the page Pieces.")
    gates = gates_of(lane_of(view, given["piece"]))
    if gates is None:
        return not_known(
            "Not all its coats are planned, so nobody knows when it may be packed; plan again."
        )
    order = view.studio.order_of(given["piece"])
    gate = Gate.PACK if order is None or order.gate is Gate.DISPLAY else order.gate
    flag = gates.full if given["hot"] or gate is Gate.FULL else gates.pack
    courier = Courier() if order is None else order.courier
    minutes = _PACKING_MINUTES if order is None else order.packing_minutes
    answer = _judged(view, flag, courier, timedelta(minutes=minutes))
    lines = [*ready_lines(gates), *_season(view, courier, hot=given["hot"]), *_packing()]
    return Answer(answer.sign, answer.verdict, tuple(lines), caution=True)


def _judged(view: DeskView, flag: Flag | None, courier: Courier, packing: timedelta) -> Answer:
    zone, now = view.studio.time_zone, view.now
    leaves = courier.next_pick_up(zone, now + packing)
    if reached(flag, now) is Reached.SURELY:
        if leaves.astimezone(zone).date() == now.astimezone(zone).date():
            verdict = said("Yes: it leaves today at {at}.", at=Clock(leaves))
            return Answer(Sign.YES, verdict)
        verdict = said("Pack it today; it leaves {at}.", at=Moment(leaves))
        return Answer(Sign.CARE, verdict)
    if flag is None or flag.safe is None:
        return not_known("No: its sheet does not say when it may be packed; ask its maker.")
    after = _leaves(view, courier, flag.safe + packing)
    verdict = said("Not before {day}.", day=Day(after.astimezone(zone).date()))
    if reached(flag, now) is Reached.LIKELY:
        text = "Not for sure before {day}; a thumbnail that leaves no mark says otherwise."
        verdict = said(text, day=Day(after.astimezone(zone).date()))
    return Answer(Sign.NO, verdict)


def _leaves(view: DeskView, courier: Courier, ready: datetime) -> datetime:
    return courier.next_pick_up(view.studio.time_zone, ready)


def _season(view: DeskView, courier: Courier, *, hot: bool) -> list[Sentence]:
    if not hot:
        return []
    day = courier.next_pick_up(view.studio.time_zone, view.now).astimezone(
        view.studio.time_zone
    )
    lines = [said("A hot van softens what is not fully cured, so full cure is asked for.")]
    if day.weekday() in _BEFORE_WEEKEND:
        lines.append(said("Wait for Monday: a parcel of today may spend the weekend in a van."))
    return lines


def _packing() -> tuple[Sentence, ...]:
    # Release paper or foam on the face, never bubble wrap: a guild's shipping page (BWAC).
    return (
        said("Pack: release paper or foam on the face, never bubble wrap against it."),
        said("Nothing presses on it, and the batch number and care card are inside."),
    )


QUESTION = Question("posting", "Can I post it today?", _parameters, _answer)
