"""What is to be traced, as somebody types it: a piece, an order, the number of a mix, a lot."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.log import GoneKind
from studio_planner.craft.tongue import translate
from studio_planner.services.log_book.tracing import Spread, trace_batch, trace_lot
from studio_planner.services.naming import UnknownName

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.studio import Studio

Names = list[tuple[str, str]]
"""Keys with the names that belong to them."""

_MOST_NAMED = 6


@dataclass(frozen=True, slots=True)
class Traced:
    """What was asked for: the keys of pieces, or where a mix or lot went."""

    pieces: tuple[str, ...] = ()
    spread: Spread | None = None


def traced(studio: Studio, wanted: str) -> Traced:
    """Find what is called so: a piece, else an order, else a mix, else a lot, in any case.

    What is gone from the studio is found as well. The beginning of a name will do where only
    one piece, or else only one order, begins like that. A number is that of a mix, with or
    without the word; `#` may stand before it. UnknownName, in one sentence, for anything else.
    """
    asked = wanted.strip().casefold()
    pieces, orders = _names(studio, GoneKind.PIECE), _names(studio, GoneKind.ORDER)
    if named := _called(pieces, asked):
        return Traced(tuple(named))
    if found := _pieces_of(studio, _called(orders, asked)):
        return Traced(found)
    spread = spread_of(studio, wanted)
    if spread.mixes:
        return Traced(spread=spread)
    if len(keys := _beginning(pieces, asked)) == 1:
        return Traced(tuple(keys))
    if len(keys := _beginning(orders, asked)) == 1:
        return Traced(_pieces_of(studio, keys))
    raise UnknownName(_sentence(studio, wanted.strip(), pieces + orders))


def spread_of(studio: Studio, wanted: str) -> Spread:
    """Where the mix of a number, or else a lot, went, as somebody types either.

    A number that is both is taken as that of a mix; no mixes where it is neither.
    """
    number = wanted.strip().casefold()
    for word in ("mix", translate("trace", "mix").casefold()):
        number = number.removeprefix(word).strip()
    number = number.removeprefix("#").strip()
    if number.isascii() and number.isdecimal():
        found = trace_batch(studio, int(number))
        if found.mixes:
            return found
    return trace_lot(studio, wanted)


def _names(studio: Studio, kind: GoneKind) -> Names:
    there = studio.pieces if kind is GoneKind.PIECE else studio.orders
    gone = [(one.key, one.name) for one in studio.gone if one.kind is kind]
    return [*((one.key, one.name) for one in there), *gone]


def _called(names: Names, asked: str) -> list[str]:
    by_key = [key for key, _ in names if key.casefold() == asked]
    return by_key or [key for key, name in names if name.casefold() == asked]


def _beginning(names: Names, asked: str) -> list[str]:
    return [key for key, name in names if asked and name.casefold().startswith(asked)]


def _pieces_of(studio: Studio, orders: Iterable[str]) -> tuple[str, ...]:
    keys = set(orders)
    pieces = [key for one in studio.orders if one.key in keys for key in one.pieces]
    gone = (one for one in studio.gone if one.kind is GoneKind.PIECE and one.order in keys)
    return (*pieces, *(one.key for one in gone))


def _sentence(studio: Studio, wanted: str, names: Names) -> str:
    alike = [name for _, name in names if wanted and wanted.casefold() in name.casefold()]
    if alike:
        text = translate("trace", "Nothing is called just {wanted}; there is: {names}.")
        return text.format(wanted=wanted, names=", ".join(alike[:_MOST_NAMED]))
    batches = [mix.batch for mix in studio.standing_mixes]
    text = translate(
        "trace",
        "{wanted} is no piece, order, number of a mix ({mixes}) or lot that anything was "
        "weighed from. Numbers stand on the cup and in the log.",
    )
    none = translate("trace", "none was weighed yet")
    mixes = f"{min(batches)}-{max(batches)}" if batches else none
    return text.format(wanted=wanted, mixes=mixes)
