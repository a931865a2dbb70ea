"""A studio in slots and lags: what is asked, and what a set of starts is worth and breaks.

Slots are five minutes long and count from the plan's start.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator

Slots = tuple[int, int]
"""The first slot, and the first one after the last."""


@dataclass(frozen=True, slots=True)
class Bound:
    """A coat starts at least `least` and, unless None, at most `most` slots after another."""

    earlier: int
    least: int
    most: int | None = None


@dataclass(frozen=True, slots=True)
class PlainCoat:
    """Slots of turning and then of the block; slots from the block's start until handle."""

    key: str
    turning: int
    block: int
    handle: int
    bounds: tuple[Bound, ...]
    gate: int
    """Slots from the block's start until it may be packed."""


@dataclass(frozen=True, slots=True)
class PlainPiece:
    """A piece's coats in order; which order it belongs to, and the slots of its packing."""

    key: str
    order: int
    coats: tuple[PlainCoat, ...]
    packing: int


@dataclass(frozen=True, slots=True)
class PlainOrder:
    """The slot it is due at, its weight, and the slots of its pick-ups; None: any time."""

    key: str
    due: int
    weight: int
    pick_ups: tuple[int, ...] | None

    def leaves(self, packed: int) -> int:
        """When it leaves once it is packed."""
        if self.pick_ups is None:
            return packed
        return next(slot for slot in self.pick_ups if slot >= packed)

    def late(self, packed: int) -> int:
        """Weighted slots late."""
        return self.weight * max(0, self.leaves(packed) - self.due)


@dataclass(frozen=True, slots=True)
class PlainStudio:
    """The whole: everybody has the same hours, every piece fits every spot."""

    pieces: tuple[PlainPiece, ...]
    orders: tuple[PlainOrder, ...]
    people: int
    hours: tuple[Slots, ...]
    spots: int
    end: int


Starts = dict[tuple[str, str], int]
"""The slot at which a coat's block, or the packing ("") of a piece, starts."""


def lateness(whole: PlainStudio, starts: Starts) -> int:
    """Weighted slots late of all orders."""
    packed: dict[int, int] = {}
    for piece in whole.pieces:
        end = starts[piece.key, ""] + piece.packing
        packed[piece.order] = max(packed.get(piece.order, 0), end)
    return sum(whole.orders[order].late(end) for order, end in packed.items())


def broken(whole: PlainStudio, starts: Starts) -> list[str]:
    """What starts break, in words; nothing else is known here than the plain form."""
    work: list[Slots] = []
    held: list[Slots] = []
    faults: list[str] = []
    for piece in whole.pieces:
        at = [starts[piece.key, coat.key] for coat in piece.coats]
        pack = starts[piece.key, ""]
        faults += list(_broken_bounds(piece, at, pack))
        work.append((pack, pack + piece.packing))
        for coat, start in zip(piece.coats, at, strict=True):
            work.append((start - coat.turning, start + coat.block))
        held += _held(piece, at)
    faults += [f"work at {a} outside hours" for a, b in work if not _within(whole, a, b)]
    faults += [f"hands at {slot}" for slot in _beyond(work, whole.people)]
    faults += [f"spots at {slot}" for slot in _beyond(held, whole.spots)]
    return faults


def _broken_bounds(piece: PlainPiece, at: list[int], pack: int) -> Iterator[str]:
    for coat, start in zip(piece.coats, at, strict=True):
        for bound in coat.bounds:
            gap = start - at[bound.earlier]
            if gap < bound.least or (bound.most is not None and gap > bound.most):
                yield f"{piece.key} {coat.key}: {gap} not in {bound.least} to {bound.most}"
        if pack < start + coat.gate or start - coat.turning < 0:
            yield f"{piece.key} {coat.key} at {start}: packed at {pack}"


def _held(piece: PlainPiece, at: list[int]) -> list[Slots]:
    """The spot is kept until handle, or handed on to the next coat before."""
    spans = [(start, start + c.handle) for c, start in zip(piece.coats, at, strict=True)]
    cut = [(a, min(b, following[0])) for (a, b), following in pairwise(spans)]
    return [*cut, spans[-1]]


def _within(whole: PlainStudio, first: int, last: int) -> bool:
    return any(a <= first and last <= b for a, b in whole.hours)


def _beyond(spans: list[Slots], most: int) -> list[int]:
    return [a for a, _ in spans if sum(one <= a < other for one, other in spans) > most]
