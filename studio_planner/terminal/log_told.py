"""What is typed after the command log, as the change that it stands for."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import timedelta
from typing import TYPE_CHECKING, TypeVar

from studio_planner.craft.log import EntryKind
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.services.log_book.corrections import corrected, withdrawn
from studio_planner.services.log_book.entries import entry_of
from studio_planner.services.log_book.pours import PourTold, mix_of, planned_minutes, poured
from studio_planner.services.log_book.steps import StepTold, shipped, told
from studio_planner.services.log_book.weighings import WeighingTold, weighed
from studio_planner.services.naming import find_named
from studio_planner.terminal.bad_input import BadInput
from studio_planner.terminal.reading import grams_of, when_of, whole_number

if TYPE_CHECKING:
    import argparse
    from collections.abc import Callable
    from datetime import datetime

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.services.editing.changes import Change

_T = TypeVar("_T")
_LARGEST = 999_999
_ON_A_COAT = {"taped": EntryKind.TAPED, "trimmed": EntryKind.TRIMMED}
_OF_A_PIECE = {
    "turned": EntryKind.TURNED,
    "sanded": EntryKind.SANDED,
    "packed": EntryKind.PACKED,
    "spoiled": EntryKind.SPOILED,
    "stripped": EntryKind.STRIPPED,
}
_TOUCHES = {
    "string": Touch.STRING,
    "tack": Touch.TACK,
    "no-mark": Touch.NO_MARK,
    "thumbnail": Touch.THUMBNAIL,
}
_VERDICTS = {"already": Verdict.ALREADY, "not-yet": Verdict.NOT_YET}


@dataclass(frozen=True, slots=True)
class _Coat:
    """A coat as it is found by what is typed."""

    key: str
    name: str


@dataclass(frozen=True, slots=True)
class _Typed:
    """What was typed: the studio, the names, the options, and what time it is."""

    studio: Studio
    names: tuple[str, ...]
    options: argparse.Namespace
    now: datetime

    def named(self, wanted: str, least: int, most: int) -> tuple[str, ...]:
        """The names, at least and at most so many; `wanted` says which."""
        if not least <= len(self.names) <= most:
            raise BadInput(f"log {self.options.what}: write {wanted}; see log --help.")
        return self.names

    def when(self, option: str) -> datetime | None:
        text = getattr(self.options, option)
        return None if text is None else when_of(text, self.studio.time_zone, f"--{option}")

    @property
    def at(self) -> datetime:
        return self.when("at") or self.now

    @property
    def words(self) -> str:
        return self.options.words or ""

    def piece(self, text: str) -> Piece:
        return find_named(self.studio.pieces, text, "piece")

    def coat(self, piece: Piece, text: str) -> str:
        coats = [_Coat(one.key, piece.coat_name(one.key)) for one in piece.stack]
        return find_named(coats, text, f"coat of {piece.name}").key

    def spot(self, text: str | None) -> str | None:
        return None if text is None else find_named(self.studio.spots, text, "spot").key


def change_told(studio: Studio, options: argparse.Namespace, now: datetime) -> Change:
    """Make the change that was typed; BadInput or UnknownName where that is none."""
    typed = _Typed(studio, tuple(options.names), options, now)
    make = _WHATS.get(options.what)
    if make is None:
        raise BadInput(
            f"log: {options.what!r} is nothing that can be written down; there is: "
            f"{', '.join(_WHATS)}."
        )
    return make(typed)


def _poured(typed: _Typed) -> Change:
    names = typed.named("the number of a coat in the plan, or PIECE COAT", 1, 2)
    if len(names) == 1:
        pours = [(one.piece, one.coat) for one in _mix_of_plan(typed, names[0])]
    else:
        piece = typed.piece(names[0])
        pours = [(piece.key, typed.coat(piece, names[1]))]
    start, end = _block(typed, *pours[0])
    batch = typed.options.batch
    return poured(
        typed.studio,
        [
            PourTold(
                piece=piece_key,
                coat=coat,
                start=start,
                end=end,
                spot=typed.spot(typed.options.spot),
                batch=None if batch is None else whole_number(batch, "--batch", _LARGEST),
                words=typed.words,
            )
            for piece_key, coat in pours
        ],
        typed.now,
    )


def _mix_of_plan(typed: _Typed, text: str) -> tuple[PlannedCoat, ...]:
    number = whole_number(text, "COAT", _LARGEST)
    plan = typed.studio.plan
    coat = None if plan is None else plan.coat(number)
    if plan is None or coat is None:
        raise BadInput(f"COAT {number} is not in the kept plan; write PIECE COAT instead.")
    return mix_of(plan, coat)


def _block(typed: _Typed, piece: str, coat: str) -> tuple[datetime, datetime]:
    """From --at to --end; what was not said follows from how long the pour takes."""
    length = timedelta(minutes=planned_minutes(typed.studio, piece, coat))
    start, end = typed.when("at"), typed.when("end")
    if start is None:
        end = end or typed.now
        return end - length, end
    return start, end or start + length


def _weighed(typed: _Typed) -> Change:
    names = typed.named("PRODUCT, grams of A and, where it is mixed, grams of B", 2, 3)
    product = find_named(typed.studio.products, names[0], "product")
    told_of = WeighingTold(
        product=product.key,
        at=typed.at,
        a_grams=grams_of(names[1], "A"),
        b_grams=grams_of(names[2], "B") if len(names) > 2 else 0.0,  # noqa: PLR2004 - the third
        lot_a=typed.options.lot_a or "",
        lot_b=typed.options.lot_b or "",
        coats=tuple(_coat_of(typed, text) for text in typed.options.coats or ()),
        words=typed.words,
    )
    return weighed(typed.studio, told_of, typed.now)


def _coat_of(typed: _Typed, text: str) -> tuple[str, str]:
    piece, slash, coat = text.rpartition("/")
    if not slash:
        raise BadInput(f"--for {text!r} is no coat; write it as PIECE/COAT.")
    found = typed.piece(piece)
    return found.key, typed.coat(found, coat)


def _touched(typed: _Typed) -> Change:
    wanted = f"PIECE COAT and one of {', '.join(_TOUCHES)}, perhaps already or not-yet"
    names = typed.named(wanted, 3, 4)
    piece = typed.piece(names[0])
    touch = _one_of(_TOUCHES, names[2], "a touch test")
    verdict = _one_of(_VERDICTS, names[3], "an answer") if len(names) > 3 else touch.usual  # noqa: PLR2004 - the fourth
    return told(
        typed.studio,
        StepTold(
            kind=EntryKind.TOUCHED,
            pieces=(piece.key,),
            at=typed.at,
            coat=typed.coat(piece, names[1]),
            touch=touch,
            verdict=verdict,
            words=typed.words,
        ),
        typed.now,
    )


def _one_of(known: dict[str, _T], text: str, noun: str) -> _T:
    found = known.get(text.strip().casefold())
    if found is None:
        raise BadInput(f"{text!r} is not {noun}; there is: {', '.join(known)}.")
    return found


def _step(typed: _Typed) -> Change:
    what = typed.options.what
    on_coat = _ON_A_COAT.get(what)
    names = typed.named(
        "PIECE COAT" if on_coat else "PIECE, perhaps with COAT", 1 + bool(on_coat), 2
    )
    piece = typed.piece(names[0])
    step = StepTold(
        kind=on_coat or _OF_A_PIECE[what],
        pieces=(piece.key,),
        at=typed.at,
        coat=typed.coat(piece, names[1]) if len(names) > 1 else "",
        words=typed.words,
    )
    return told(typed.studio, step, typed.now)


def _moved(typed: _Typed) -> Change:
    names = typed.named("PIECE SPOT", 2, 2)
    step = StepTold(
        kind=EntryKind.MOVED,
        pieces=(typed.piece(names[0]).key,),
        at=typed.at,
        spot=typed.spot(names[1]) or "",
        words=typed.words,
    )
    return told(typed.studio, step, typed.now)


def _shipped(typed: _Typed) -> Change:
    names = typed.named("ORDER", 1, 1)
    order = find_named(typed.studio.orders, names[0], "order")
    return shipped(typed.studio, order.key, typed.at, typed.now, typed.words)


def _withdraw(typed: _Typed) -> Change:
    names = typed.named("the number of an entry", 1, 1)
    number = whole_number(names[0], "ENTRY", _LARGEST)
    return withdrawn(typed.studio, number, typed.now, typed.words)


def _correct(typed: _Typed) -> Change:
    names = typed.named("the number of an entry, and --at, --end, --spot or --words", 1, 1)
    number = whole_number(names[0], "ENTRY", _LARGEST)
    old = entry_of(typed.studio, number)
    if old is None:
        raise BadInput(f"ENTRY {number} is not in the log; log FILE lists it.")
    if old.kind is EntryKind.WEIGHED:
        raise BadInput("A weighing is withdrawn and written down anew; correct can't do it.")
    right = replace(
        old,
        at=typed.when("at") or old.at,
        end=None if old.end is None else _end_of(typed, old.at, old.end),
        spot=typed.spot(typed.options.spot) or old.spot,
        words=typed.words or old.words,
    )
    return corrected(typed.studio, number, right, typed.now)


def _end_of(typed: _Typed, start: datetime, end: datetime) -> datetime:
    """The end as told, else as long after the start as it was."""
    return typed.when("end") or end + ((typed.when("at") or start) - start)


_WHATS: dict[str, Callable[[_Typed], Change]] = {
    "weighed": _weighed,
    "poured": _poured,
    "touched": _touched,
    **dict.fromkeys(_ON_A_COAT, _step),
    **dict.fromkeys(_OF_A_PIECE, _step),
    "moved": _moved,
    "shipped": _shipped,
    "correct": _correct,
    "withdraw": _withdraw,
}
