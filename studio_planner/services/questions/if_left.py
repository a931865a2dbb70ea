"""What is lost when everything is left as it is, what cannot be undone first."""

from __future__ import annotations

from datetime import timedelta
from enum import IntEnum
from typing import TYPE_CHECKING, Any

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.pieces import Joint
from studio_planner.craft.tongue import marked, translate
from studio_planner.services.hands_items import HandsItem, HandsKind
from studio_planner.services.next_hands import next_hands
from studio_planner.services.questions.asking import (
    Answer,
    Kind,
    Parameter,
    Question,
    Sign,
    not_known,
)
from studio_planner.services.questions.sentences import Moment, Sentence, said

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.services.desk import DeskView

_HOURS = {
    marked("harm", "tonight"): 12.0,
    marked("harm", "a day"): 24.0,
    marked("harm", "two days"): 48.0,
}
_MOST_LINES = 8


class Harm(IntEnum):
    """How much cannot be undone, worst first."""

    LOST = 0
    WORK = 1
    REPAIR = 2
    WAIT = 3


_OF_KIND = {
    HandsKind.TAPE: Harm.REPAIR,
    HandsKind.TRIM: Harm.REPAIR,
    HandsKind.LAST_TORCH: Harm.REPAIR,
    HandsKind.COVER: Harm.REPAIR,
}
_WORDS = {
    Harm.LOST: marked("harm", "cannot be saved"),
    Harm.WORK: marked("harm", "is saved only by washing and sanding"),
    Harm.REPAIR: marked("harm", "can be mended"),
    Harm.WAIT: marked("harm", "can wait"),
}


def _parameters(view: DeskView) -> tuple[Parameter, ...]:  # noqa: ARG001 - the same always
    options = tuple((key, translate("harm", key)) for key in _HOURS)
    return (Parameter("left", "Left for", Kind.CHOICE, "tonight", options),)


def _answer(view: DeskView, given: Mapping[str, Any]) -> Answer:
    if view.plan is None:
        return not_known("There is no plan yet, so nothing is due; plan first.")
    until = view.now + timedelta(hours=_HOURS[given["left"]])
    items = next_hands(view.studio, view.plan, view.now, _HOURS[given["left"]])
    due = [one for one in items if one.deadline <= until]
    ranked = sorted(due, key=lambda one: (_harm(view, one), one.deadline, one.piece))
    if not ranked:
        text = "Nothing is lost: no window closes and nothing is due in that time."
        return Answer(Sign.YES, said(text))
    worst = ranked[0]
    lines = tuple(_line(view, one) for one in ranked[:_MOST_LINES])
    verdict = _verdict(view, worst)
    sign = Sign.NO if _harm(view, worst) is Harm.LOST else Sign.CARE
    return Answer(sign, verdict, lines)


def _harm(view: DeskView, item: HandsItem) -> Harm:
    if item.kind in _OF_KIND:
        return _OF_KIND[item.kind]
    if item.kind in {HandsKind.POUR, HandsKind.WINDOW_CLOSES}:
        return _harm_of_pour(view, item)
    return Harm.WAIT


def _harm_of_pour(view: DeskView, item: HandsItem) -> Harm:
    plan = view.plan
    coat = None if plan is None or item.number is None else plan.coat(item.number)
    if coat is None or coat.joint not in {Joint.WET_IN_WET, Joint.IN_WINDOW}:
        return Harm.WAIT
    if coat.window is None or coat.window.closes is None:
        return Harm.WAIT
    piece = view.studio.piece(coat.piece)
    below = piece.below(piece.position(coat.coat))
    saved = below is None or piece.stack[below].sandable
    return Harm.WORK if saved else Harm.LOST


def _verdict(view: DeskView, item: HandsItem) -> Sentence:
    harm = _harm(view, item)
    what, by = _what(view, item), Moment(item.deadline)
    if harm is Harm.LOST:
        text = "{what} cannot be saved: do it by {by}, whatever else waits."
        return said(text, what=what, by=by)
    if harm is Harm.WAIT:
        return said("Nothing is spoiled; the plan only moves later.")
    text = "Nothing is lost for good. The worst is {what}, due by {by}: {why}."
    return said(text, what=what, by=by, why=item.if_left)


def _line(view: DeskView, item: HandsItem) -> Sentence:
    return said(
        "{what}, by {by}: {word}; {why}.",
        what=_what(view, item),
        by=Moment(item.deadline),
        word=translate("harm", _WORDS[_harm(view, item)]),
        why=item.if_left,
    )


def _what(view: DeskView, item: HandsItem) -> str:
    piece = view.studio.piece(item.piece)
    if item.kind in {HandsKind.POUR, HandsKind.WINDOW_CLOSES} and item.coat is not None:
        return f"{piece.name}, {piece.coat_name(item.coat)}"
    return f"{piece.name}, {kind_word(item.kind)}"


QUESTION = Question(
    "if-left", "If I leave it, what is the worst that happens?", _parameters, _answer
)
