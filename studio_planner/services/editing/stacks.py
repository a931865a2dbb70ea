"""What a maker does to a stack: coats added, copied, moved, changed and removed.

A stack belongs to a piece, or to a pattern that the maker has named. What is poured of a piece
stays as it was poured.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.craft.errors import BrokenRule, InvalidEntry
from studio_planner.craft.pieces import Coat, Material, Piece, StackPattern
from studio_planner.craft.shapes import Rectangle
from studio_planner.craft.tongue import translate
from studio_planner.services.editing.nouns import free_key, with_thing

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.studio import Studio

Stack = tuple[Coat, ...]

_BARE = Rectangle(length_mm=300, width_mm=200)
"""What a pattern is drawn on, and its grams reckoned for, where no piece is chosen for it."""

_BARE_BODY_MM = 18.0


@dataclass(frozen=True, slots=True)
class StackHolder:
    """Whose stack it is: the piece of a key, or the pattern of a key.

    `blank` is the key of the piece whose blank a pattern is looked at on; empty for none.
    """

    key: str
    pattern: bool = False
    blank: str = ""

    @property
    def bearer(self) -> tuple[str, bool]:
        """What tells one stack from another, whatever it is looked at on."""
        return self.key, self.pattern


def as_piece(studio: Studio, holder: StackHolder) -> Piece | None:
    """The piece that bears the stack; a pattern lies on the blank that its holder names.

    Without one it lies on a board of 300 by 200 mm. None where there is no such piece or
    pattern.
    """
    if not holder.pattern:
        return next((piece for piece in studio.pieces if piece.key == holder.key), None)
    pattern = next((one for one in studio.patterns if one.key == holder.key), None)
    if pattern is None:
        return None
    board = bare_board(pattern)
    under = next((piece for piece in studio.pieces if piece.key == holder.blank), None)
    if under is None:
        return board
    return replace(under, key=board.key, name=board.name, stack=board.stack)


def bare_board(pattern: StackPattern) -> Piece:
    """A board of 300 by 200 mm of MDF with that pattern on it."""
    return Piece(
        key=f"pattern {pattern.key}",
        name=pattern.name,
        shape=_BARE,
        material=Material.MDF,
        body_mm=_BARE_BODY_MM,
        stack=pattern.stack,
    )


def poured_coats(studio: Studio, holder: StackHolder) -> tuple[Coat, ...]:
    """The coats of a stack that are poured already, the first ones of it."""
    if holder.pattern:
        return ()
    piece = as_piece(studio, holder)
    return () if piece is None else piece.stack[: len(studio.pours_of(piece.key))]


def with_stack(studio: Studio, holder: StackHolder, stack: Stack) -> Studio:
    """The studio with another stack on that piece or pattern; lost coats lose their pins.

    InvalidEntry when a coat that is poured would be another one, or a rule is broken.
    """
    if holder.pattern:
        pattern = next(one for one in studio.patterns if one.key == holder.key)
        return with_thing(studio, replace(pattern, stack=stack))
    piece = studio.piece(holder.key)
    _keep_poured(studio, piece, stack)
    new = replace(piece, stack=stack)
    keys = {coat.key for coat in stack}
    pins = tuple(pin for pin in studio.pins if pin.piece != piece.key or pin.coat in keys)
    return with_thing(replace(studio, pins=pins), new)


def _keep_poured(studio: Studio, piece: Piece, stack: Stack) -> None:
    poured = piece.stack[: len(studio.pours_of(piece.key))]
    if stack[: len(poured)] != poured:
        raise InvalidEntry(
            translate("nouns", "piece {name}").format(name=piece.name),
            [BrokenRule("stack", poured_words(piece, poured))],
        )


def poured_words(piece: Piece, poured: Sequence[Coat]) -> str:
    """Say that coats are poured, and what to do when that is not so."""
    names = [piece.coat_name(coat.key) for coat in poured]
    if len(names) == 1:
        said = translate(
            "stacks",
            "{coat} is poured already, so nothing of it changes any more; "
            "work on the coats above, or take the pour back first.",
        )
        return said.format(coat=names[0])
    said = translate(
        "stacks",
        "{coats} and {coat} are poured already, so nothing of them changes any more; "
        "work on the coats above, or take the pours back first.",
    )
    return said.format(coats=", ".join(names[:-1]), coat=names[-1])


# From one stack to the next


def with_coat(stack: Stack, coat: Coat) -> Stack:
    """The stack with a coat in the place of the one of its key."""
    return tuple(coat if one.key == coat.key else one for one in stack)


def with_new(stack: Stack, at: int, coat: Coat) -> Stack:
    """The stack with one more coat at that position."""
    return (*stack[:at], coat, *stack[at:])


def with_copy(stack: Stack, key: str) -> tuple[Stack, str]:
    """The stack with a copy of a coat on top of it; and the key of the copy."""
    at = position(stack, key)
    new = free_key((coat.key for coat in stack), str(stack[at].kind))
    return with_new(stack, at + 1, replace(stack[at], key=new)), new


def without_coat(stack: Stack, key: str) -> Stack:
    """The stack without a coat."""
    return tuple(coat for coat in stack if coat.key != key)


def with_move(stack: Stack, key: str, to: int) -> Stack:
    """The stack with a coat moved to another position, 0 for the first that is poured."""
    moving = stack[position(stack, key)]
    rest = without_coat(stack, key)
    return (*rest[:to], moving, *rest[to:])


def position(stack: Stack, key: str) -> int:
    """Where a coat lies in a stack, 0 for the first; KeyError when it does not."""
    for at, coat in enumerate(stack):
        if coat.key == key:
            return at
    raise KeyError(key)
