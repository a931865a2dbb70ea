"""What is typed after the command log, as the change that it stands for."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING, TypeVar

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.log import EntryKind
from studio_planner.craft.tongue import quoted
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.services.log_book.corrections import corrected, withdrawn
from studio_planner.services.log_book.entries import entry_of
from studio_planner.services.log_book.pours import PourTold, mix_of, planned_minutes, poured
from studio_planner.services.log_book.steps import StepTold, shipped, told
from studio_planner.services.log_book.taps import next_coat
from studio_planner.services.log_book.times import require_past
from studio_planner.services.log_book.weighings import WeighingTold, weighed
from studio_planner.services.naming import find_named
from studio_planner.services.room_logs import typed_reading
from studio_planner.terminal.bad_input import BadInput
from studio_planner.terminal.log_typed import Typed
from studio_planner.terminal.reading import celsius_of, grams_of, percent_of, whole_number

if TYPE_CHECKING:
    import argparse
    from collections.abc import Callable
    from datetime import datetime

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.places import Place
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.services.editing.changes import Change

_T = TypeVar("_T")
_LARGEST = 999_999
_TEMPERATURE = re.compile(r"[+-]?\d")
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


def change_told(studio: Studio, options: argparse.Namespace, now: datetime) -> Change:
    """Make the change that was typed; BadInput or UnknownName where that is none."""
    typed = Typed(studio, tuple(options.names), options, now)
    make = _WHATS.get(options.what)
    if make is None:
        raise BadInput(
            f"log: {quoted(options.what)} is nothing that can be written down; there is: "
            f"{', '.join(_WHATS)}."
        )
    return make(typed)


def _poured(typed: Typed) -> Change:
    names = typed.named("the number of a coat in the plan, or PIECE and perhaps COAT", 1, 2)
    if len(names) == 1 and names[0].strip().removeprefix("#").isdecimal():
        pours = [(one.piece, one.coat) for one in _mix_of_plan(typed, names[0])]
    else:
        piece = typed.piece(names[0])
        coat = typed.coat(piece, names[1]) if len(names) > 1 else _next_of(typed, piece)
        pours = [(piece.key, coat)]
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


def _next_of(typed: Typed, piece: Piece) -> str:
    coat = next_coat(typed.studio, piece.key)
    if not coat:
        raise BadInput(
            f"Every coat of {piece.name} is written down as poured; log FILE lists the "
            "entries, and log FILE correct ENTRY corrects one."
        )
    return coat


def _mix_of_plan(typed: Typed, text: str) -> tuple[PlannedCoat, ...]:
    number = whole_number(text, "COAT", _LARGEST)
    plan = typed.studio.plan
    coat = None if plan is None else plan.coat(number)
    if plan is None or coat is None:
        raise BadInput(f"COAT {number} is not in the kept plan; write PIECE COAT instead.")
    return mix_of(plan, coat)


def _block(typed: Typed, piece: str, coat: str) -> tuple[datetime, datetime]:
    """From --at to --end; what was not said follows from how long the pour takes."""
    length = timedelta(minutes=planned_minutes(typed.studio, piece, coat))
    start, end = typed.when("at"), typed.when("end")
    if start is None:
        end = end or typed.now
        return end - length, end
    return start, end or start + length


def _weighed(typed: Typed) -> Change:
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


def _coat_of(typed: Typed, text: str) -> tuple[str, str]:
    piece, slash, coat = text.rpartition("/")
    if not slash:
        raise BadInput(f"--for {quoted(text)} is no coat; write it as PIECE/COAT.")
    found = typed.piece(piece)
    return found.key, typed.coat(found, coat)


def _touched(typed: Typed) -> Change:
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
        raise BadInput(f"{quoted(text)} is not {noun}; there is: {', '.join(known)}.")
    return found


def _step(typed: Typed) -> Change:
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


def _moved(typed: Typed) -> Change:
    names = typed.named("PIECE SPOT", 2, 2)
    step = StepTold(
        kind=EntryKind.MOVED,
        pieces=(typed.piece(names[0]).key,),
        at=typed.at,
        spot=typed.spot(names[1]) or "",
        words=typed.words,
    )
    return told(typed.studio, step, typed.now)


def _shipped(typed: Typed) -> Change:
    names = typed.named("ORDER", 1, 1)
    order = find_named(typed.studio.orders, names[0], "order")
    return shipped(typed.studio, order.key, typed.at, typed.now, typed.words)


def _reading(typed: Typed) -> Change:
    wanted = "a temperature such as 19.5C or 67F, perhaps a humidity such as 45%, and a place"
    names = list(typed.named(wanted, 1, 3))
    damp = next((name for name in names if name.strip().endswith("%")), None)
    warmth = next((name for name in names if _TEMPERATURE.match(name.strip())), names[0])
    left = [name for name in names if name not in {damp, warmth}]
    if len(left) > 1:
        raise BadInput(
            f"log reading: {quoted(left[0])} and {quoted(left[1])} can't both be its place."
        )
    place = _place(typed, left)
    rules = Rulebook(f"{place.name}, a reading")
    require_past(rules, typed.at, typed.now)
    rules.close()
    humidity = None if damp is None else percent_of(damp, "The humidity")
    return typed_reading(place, typed.at, celsius_of(warmth, "The reading"), humidity)


def _place(typed: Typed, names: list[str]) -> Place:
    """The place of that name; the first one where none is named."""
    places = typed.studio.places
    if not places:
        raise BadInput("The studio has no place yet that could be read; add its room first.")
    return find_named(places, names[0], "place") if names else places[0]


def _withdraw(typed: Typed) -> Change:
    names = typed.named("the number of an entry", 1, 1)
    number = whole_number(names[0], "ENTRY", _LARGEST)
    return withdrawn(typed.studio, number, typed.now, typed.words)


def _correct(typed: Typed) -> Change:
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


def _end_of(typed: Typed, start: datetime, end: datetime) -> datetime:
    """The end as told, else as long after the start as it was."""
    return typed.when("end") or end + ((typed.when("at") or start) - start)


_WHATS: dict[str, Callable[[Typed], Change]] = {
    "weighed": _weighed,
    "poured": _poured,
    "touched": _touched,
    **dict.fromkeys(_ON_A_COAT, _step),
    **dict.fromkeys(_OF_A_PIECE, _step),
    "moved": _moved,
    "reading": _reading,
    "shipped": _shipped,
    "correct": _correct,
    "withdraw": _withdraw,
}
