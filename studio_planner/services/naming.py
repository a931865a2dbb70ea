"""Finds a studio's things by what the maker types: the key or the name, in any case."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol, TypeVar

from studio_planner.craft.errors import StudioError
from studio_planner.craft.tongue import quoted

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.studio import Studio


class Named(Protocol):
    """Something with a key and a name."""

    @property
    def key(self) -> str:
        """The short name, unique among its kind."""
        ...

    @property
    def name(self) -> str:
        """The name that is shown."""
        ...


_Thing = TypeVar("_Thing", bound=Named)


class UnknownName(StudioError):  # noqa: N818 - reads as a sentence where it is raised
    """Nothing in the studio is called what was asked for; the text lists what there is."""


def find_named(
    things: Sequence[_Thing],
    wanted: str,
    noun: str,
    apart: Callable[[_Thing], str] = lambda _thing: "",
) -> _Thing:
    """Find the thing whose key or name is `wanted`, in any case; keys win over names.

    Raises UnknownName when there is none, with the names there are, or more than one, with the
    keys of those and what tells them `apart`.
    """
    found = all_named(things, wanted)
    if len(found) == 1:
        return found[0]
    if not found:
        raise UnknownName(_nothing_named(things, wanted, noun))
    keys = ", ".join(f"{one.key}{apart(one)}" for one in found)
    raise UnknownName(
        f"There are {len(found)} {noun}s called {quoted(wanted)}; use the key of one: {keys}."
    )


def find_piece(studio: Studio, wanted: str) -> Piece:
    """Find a piece as `find_named` does; those of one name are told apart by their orders."""

    def apart(piece: Piece) -> str:
        order = studio.order_of(piece.key)
        return " (of no order)" if order is None else f" (of the order {order.name})"

    return find_named(studio.pieces, wanted, "piece", apart)


def all_named(things: Sequence[_Thing], wanted: str) -> list[_Thing]:
    """All things whose key is `wanted`, in any case, else all of that name."""
    asked = wanted.strip().casefold()
    by_key = [thing for thing in things if thing.key.casefold() == asked]
    return by_key or [thing for thing in things if thing.name.casefold() == asked]


def _nothing_named(things: Sequence[Named], wanted: str, noun: str) -> str:
    known = ", ".join(f"{thing.name} ({thing.key})" for thing in things)
    has = f"the studio has: {known}" if things else f"the studio has no {noun}s"
    return f"There is no {noun} called {quoted(wanted)}; {has}."
