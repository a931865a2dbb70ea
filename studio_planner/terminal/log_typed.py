"""What was typed after the command log, and the studio's things that it names."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.services.naming import find_named, find_piece
from studio_planner.terminal.bad_input import BadInput
from studio_planner.terminal.reading import past_when_of

if TYPE_CHECKING:
    import argparse
    from datetime import datetime

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True)
class _Coat:
    """A coat as it is found by what is typed."""

    key: str
    name: str


@dataclass(frozen=True, slots=True)
class Typed:
    """What was typed: the studio, the names, the options, and what time it is (aware)."""

    studio: Studio
    names: tuple[str, ...]
    options: argparse.Namespace
    now: datetime

    def named(self, wanted: str, least: int, most: int) -> tuple[str, ...]:
        """The names, at least and at most so many, else BadInput; `wanted` says which."""
        if not least <= len(self.names) <= most:
            raise BadInput(f"log {self.options.what}: write {wanted}; see log --help.")
        return self.names

    def when(self, option: str) -> datetime | None:
        """The time of an option; a time of day alone is the latest that has come."""
        text = getattr(self.options, option)
        if text is None:
            return None
        return past_when_of(text, self.studio.time_zone, f"--{option}", self.now)

    @property
    def at(self) -> datetime:
        """When it happened: now, unless told otherwise."""
        return self.when("at") or self.now

    @property
    def words(self) -> str:
        """The note; empty where there is none."""
        return self.options.words or ""

    def piece(self, text: str) -> Piece:
        """The piece of that key or name."""
        return find_piece(self.studio, text)

    def coat(self, piece: Piece, text: str) -> str:
        """The key of a coat by its key, its name, or its place in the stack from 1 on."""
        coats = [_Coat(one.key, piece.coat_name(one.key)) for one in piece.stack]
        known = {name.casefold() for one in coats for name in (one.key, one.name)}
        place = text.strip().removeprefix("#")
        if text.strip().casefold() not in known and place.isascii() and place.isdecimal():
            return self._coat_at(piece, int(place))
        return find_named(coats, text, f"coat of {piece.name}").key

    def _coat_at(self, piece: Piece, place: int) -> str:
        if not 1 <= place <= len(piece.stack):
            names = ", ".join(piece.coat_name(one.key) for one in piece.stack)
            raise BadInput(
                f"{piece.name} has no coat {place}; from the first on they are: {names}."
            )
        return piece.stack[place - 1].key

    def spot(self, text: str | None) -> str | None:
        """The key of the spot of that key or name; None for None."""
        return None if text is None else find_named(self.studio.spots, text, "spot").key
