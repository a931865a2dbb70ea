"""One thing that needs hands: what, when, until when, and what happens if it is left."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime  # noqa: TC003 - a field of a value
from enum import StrEnum

from studio_planner.craft.plans import StepKind
from studio_planner.craft.tongue import marked, translate


class HandsKind(StrEnum):
    """What there is to do."""

    POUR = "weigh and pour"
    LAST_TORCH = "last torch"
    COVER = "cover"
    WINDOW_CLOSES = "window closes"
    SAND = "wash and sand"
    TURN = "turn over"
    TAPE = "pull tape"
    TRIM = "trim drips"
    PACK = "pack"


KIND_OF_STEP = {
    StepKind.SAND: HandsKind.SAND,
    StepKind.TURN: HandsKind.TURN,
    StepKind.TAPE: HandsKind.TAPE,
    StepKind.TRIM: HandsKind.TRIM,
    StepKind.PACK: HandsKind.PACK,
}

_IF_LEFT = {
    HandsKind.LAST_TORCH: marked("if left", "later heat leaves dimples"),
    HandsKind.COVER: marked("if left", "dust settles in the film"),
    HandsKind.SAND: marked("if left", "its dust delays the next coat"),
    HandsKind.TURN: marked("if left", "the next coat has to wait"),
    HandsKind.TAPE: marked("if left", "it has to be cut out with a knife"),
    HandsKind.TRIM: marked("if left", "drips have to be ground off"),
}


def if_left(kind: HandsKind) -> str:
    """What happens if it is not done; empty where that depends on what it is about."""
    text = _IF_LEFT.get(kind)
    return "" if text is None else translate("if left", text)


@dataclass(frozen=True, slots=True, kw_only=True)
class HandsItem:
    """Something to do with `piece` (a key), planned from `start` to `end`.

    It can be done from `opens` on and has to be done by `deadline`; `if_left` says what
    happens otherwise. `number` is that of the coat it is about, `coat` its key. `missed` marks
    a coat whose block is over and that is not written down as poured; it is still possible.
    """

    kind: HandsKind
    piece: str
    coat: str | None
    number: int | None
    start: datetime
    end: datetime
    opens: datetime
    deadline: datetime
    person: str
    spot: str | None
    if_left: str
    missed: bool = False
