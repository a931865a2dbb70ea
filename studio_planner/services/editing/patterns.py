"""Stack patterns: a stack under a name of the maker's own, put on as many pieces as wanted."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.errors import BrokenRule, InvalidEntry
from studio_planner.craft.pieces import StackPattern
from studio_planner.craft.tongue import translate
from studio_planner.services.editing.nouns import free_key, free_name, with_thing
from studio_planner.services.editing.stacks import StackHolder, poured_words, with_stack

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.studio import Studio


def pattern_of(studio: Studio, piece: Piece, name: str) -> StackPattern:
    """A pattern of a piece's stack, under that name or the next one that is free."""
    own = free_name((pattern.name for pattern in studio.patterns), name.strip() or piece.name)
    key = free_key((pattern.key for pattern in studio.patterns), own)
    return StackPattern(key=key, name=own, stack=piece.stack)


def renamed(studio: Studio, pattern: StackPattern, name: str) -> Studio:
    """Give a pattern another name; InvalidEntry when another one has it."""
    if any(one.name == name and one.key != pattern.key for one in studio.patterns):
        said = translate("stacks", "there is a pattern {name} already; choose another name.")
        rule = BrokenRule("name", said.format(name=name))
        raise InvalidEntry(translate("nouns", "stack pattern {name}").format(name=name), [rule])
    return with_thing(studio, replace(pattern, name=name))


def put_on(studio: Studio, pattern: StackPattern, pieces: Sequence[str]) -> Studio:
    """Put a pattern on all those pieces, by their keys: on all of them or on none.

    What is poured stays. InvalidEntry, naming the pieces, where the pattern begins otherwise
    than what is poured, or does not suit the blank.
    """
    after, broken = studio, []
    for key in pieces:
        piece = studio.piece(key)
        try:
            after = with_stack(after, StackHolder(key), stack_on(studio, pattern, piece))
        except InvalidEntry as error:
            broken += [BrokenRule(piece.name, rule.sentence) for rule in error.broken]
    if broken:
        raise InvalidEntry(
            translate("nouns", "stack pattern {name}").format(name=pattern.name), broken
        )
    return after


def stack_on(studio: Studio, pattern: StackPattern, piece: Piece) -> tuple[Coat, ...]:
    """The pattern's coats as they lie on a piece.

    A coat that is the same as the one in its place keeps that one's key, so that what is
    poured, pinned or planned of it stays; all others get keys that the piece has not yet.
    InvalidEntry when the pattern begins otherwise than what is poured.
    """
    poured = piece.stack[: len(studio.pours_of(piece.key))]
    alike = [_alike(one, other) for one, other in zip(poured, pattern.stack, strict=False)]
    if len(alike) < len(poured) or not all(alike):
        begins = translate("stacks", "{pattern} begins otherwise.").format(pattern=pattern.name)
        sentence = f"{poured_words(piece, poured)} {begins}"
        raise InvalidEntry(
            translate("nouns", "piece {name}").format(name=piece.name),
            [BrokenRule("stack", sentence)],
        )
    taken = {coat.key for coat in piece.stack}
    stack: list[Coat] = []
    for at, coat in enumerate(pattern.stack):
        here = piece.stack[at] if at < len(piece.stack) else None
        key = here.key if here and _alike(here, coat) else free_key(taken, str(coat.kind))
        taken.add(key)
        stack.append(replace(coat, key=key))
    return tuple(stack)


def _alike(one: Coat, other: Coat) -> bool:
    return replace(one, key=other.key) == other
