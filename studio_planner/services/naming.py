"""Finds a studio's things by what the maker types: the key or the name, in any case."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol, TypeVar

from studio_planner.craft.errors import StudioError
from studio_planner.craft.tongue import quoted

if TYPE_CHECKING:
    from collections.abc import Sequence


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


def find_named(things: Sequence[_Thing], wanted: str, noun: str) -> _Thing:
    """Find the thing whose key or name is `wanted`, in any case; keys win over names.

    Raises UnknownName, with the names there are, when there is none or more than one.
    """
    asked = wanted.strip().casefold()
    found = [thing for thing in things if thing.key.casefold() == asked]
    found = found or [thing for thing in things if thing.name.casefold() == asked]
    if len(found) == 1:
        return found[0]
    raise UnknownName(_sentence(things, len(found), wanted, noun))


def _sentence(things: Sequence[Named], found: int, wanted: str, noun: str) -> str:
    known = ", ".join(f"{thing.name} ({thing.key})" for thing in things)
    if found:
        return (
            f"There are {found} {noun}s called {quoted(wanted)}; use the key of one: {known}."
        )
    has = f"the studio has: {known}" if things else f"the studio has no {noun}s"
    return f"There is no {noun} called {quoted(wanted)}; {has}."
