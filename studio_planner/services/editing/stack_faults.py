"""What is wrong with a stack, or wants a second look, said at the coat it is about."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.craft.joint_rules import clashes
from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.pieces import EDGE, UNDERSIDE, CoatKind, Joint, coat_below
from studio_planner.craft.tongue import translate
from studio_planner.planning.cannot_meet import cannot_meet
from studio_planner.planning.missing_figures import missing_figures
from studio_planner.science.film_limits import FilmVerdict, film_verdict
from studio_planner.services.editing.shut_windows import would_be_sanded
from studio_planner.services.mix_notes import notes_on

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from datetime import datetime

    from studio_planner.craft.errors import BrokenRule, InvalidEntry
    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.studio import Studio
    from studio_planner.craft.timing import Timing

_STACK = "stack, coat "


@dataclass(frozen=True, slots=True)
class StackFault:
    """One fault: the key of its coat, the field of the coat, and a sentence in trade words.

    Placeholders in the sentence stand for the `films` (mm), which the maker reads in their own
    unit. What is `refused` breaks a hard rule and is not kept; all else is a warning.
    """

    coat: str
    field: str
    sentence: str
    films: tuple[tuple[str, float], ...] = ()
    refused: bool = False


def refused_by(error: InvalidEntry, coat: str) -> tuple[StackFault, ...]:
    """The hard rules that an entry broke, each at its coat; `coat` where a rule names none."""
    return tuple(_refused(rule, coat) for rule in error.broken)


def _refused(rule: BrokenRule, coat: str) -> StackFault:
    parts = rule.field.split(", ")
    named = next((part[5:] for part in parts if part.startswith("coat ")), coat)
    field = parts[-1]
    if rule.field.startswith(_STACK):
        field = "kind"  # the only such rule: leaf and what is below it
    return StackFault(named, field, rule.sentence, refused=True)


def stack_faults(
    studio: Studio, piece: Piece, timing: Timing | None = None, now: datetime | None = None
) -> tuple[StackFault, ...]:
    """Every warning about the coats of a piece that keeps the hard rules, first coat first.

    With `timing` and `now` also those that the clocks of the coming week tell.
    """
    found = [
        StackFault(one.coat, one.field, str(one.sentence)) for one in clashes(studio, piece)
    ]
    for index in range(len(piece.stack)):
        for look in _LOOKS:
            found += look(studio, piece, index)
        if timing is not None and now is not None:
            found += _closed_windows(studio, piece, index, timing, now)
    found += _silent_sheets(studio, piece)
    return tuple(sorted(found, key=lambda fault: piece.position(fault.coat)))


def _thick(studio: Studio, piece: Piece, index: int) -> Iterator[StackFault]:
    coat, settings = piece.stack[index], studio.settings
    inside = bool(coat.faces - {UNDERSIDE, EDGE})
    rim = piece.rim_mm if inside else 0.0
    verdict = film_verdict(
        coat.film_mm, rim, settings.film_warn_mm, max(settings.film_refuse_mm, coat.film_mm)
    )
    if verdict is FilmVerdict.NEAR_LIMIT:
        sentence = translate(
            "stacks", "{film} is near what an edge without a rim holds ({most}): some runs off."
        )
        films = (("film", coat.film_mm), ("most", settings.film_refuse_mm))
        yield StackFault(coat.key, "film_mm", sentence, films)


def _open_to_the_air(_studio: Studio, piece: Piece, index: int) -> Iterator[StackFault]:
    coat = piece.stack[index]
    delicate = _delicate(coat)
    if delicate and not any(one.touches(coat) for one in piece.stack[index + 1 :]):
        sentence = translate(
            "stacks", "nothing covers the {coat}; a lock coat in its window keeps it."
        )
        yield StackFault(coat.key, "kind", sentence.format(coat=delicate))
    if delicate and coat.sandable:
        sentence = translate(
            "stacks", "sanding takes the {coat} off; say that it can't be sanded."
        )
        yield StackFault(coat.key, "sandable", sentence.format(coat=delicate))


def _delicate(coat: Coat) -> str:
    """What sanding would take off a coat, in a word; empty: nothing."""
    if coat.kind in {CoatKind.GLITTER, CoatKind.LEAF}:
        return kind_word(coat.kind)
    ink = any(colour.colourant.casefold().endswith("ink") for colour in coat.colours)
    return translate("stacks", "ink") if ink else ""


def _much_colour(studio: Studio, piece: Piece, index: int) -> Iterator[StackFault]:
    coat = piece.stack[index]
    if coat.colours:
        for note in notes_on(studio, coat, 1.0, 1.0):
            yield StackFault(coat.key, "colours", note)


def _planned_scuffed(studio: Studio, piece: Piece, index: int) -> Iterator[StackFault]:
    """A joint that the plan has scuffed over a coat that does not survive it."""
    below = piece.below(index)
    if below is None or piece.stack[below].sandable or studio.plan is None:
        return
    key = piece.stack[index].key
    rows = (row for row in studio.plan.coats if (row.piece, row.coat) == (piece.key, key))
    if any(row.joint is Joint.SCUFFED and not row.poured for row in rows):
        under = piece.stack[below]
        sentence = translate(
            "stacks", "the plan sands the {coat} first, which it does not survive."
        )
        yield StackFault(under.key, "sandable", sentence.format(coat=kind_word(under.kind)))


def _left_out(studio: Studio, piece: Piece, index: int) -> Iterator[StackFault]:
    """What the plan says when it has no place for a coat."""
    if studio.plan is None or studio.plan_outdated:
        return
    key = piece.stack[index].key
    told = [*cannot_meet(studio, piece), *missing_figures(studio, piece)]
    for row in studio.plan.unplanned:
        if (row.piece, row.coat) == (piece.key, key) and row not in told:
            said = translate("stacks", "the plan has no time for it: {reason}")
            yield StackFault(key, "joint", said.format(reason=row.reason))


def _closed_windows(
    studio: Studio, piece: Piece, index: int, timing: Timing, now: datetime
) -> Iterator[StackFault]:
    coat, over = piece.stack[index], _over(piece, index)
    if coat.sandable or over is None or index < len(studio.pours_of(piece.key)):
        return
    if would_be_sanded(piece, index, over, timing, now):
        sentence = translate(
            "stacks",
            "poured at any hour with hands in the coming week, the window of {product} closes "
            "before hands can be there for the {over}, and the {coat} can't be sanded: "
            "take a slower product, allow a touch test, or lock it wet in wet.",
        ).format(
            product=studio.product(coat.product).name,
            over=kind_word(piece.stack[over].kind),
            coat=kind_word(coat.kind),
        )
        yield StackFault(coat.key, "product", sentence)


def _silent_sheets(studio: Studio, piece: Piece) -> Iterator[StackFault]:
    """Products whose sheets have no figure for a stage that a joint needs."""
    named = replace(piece, name="-")
    for row in missing_figures(studio, named):
        sentence = str(row.reason).partition(": ")[2]
        # Two coats may lack the same figure of the same coat; a row names its coat.
        yield StackFault(row.coat or piece.stack[0].key, "product", sentence)


def _over(piece: Piece, index: int) -> int | None:
    later = range(index + 1, len(piece.stack))
    return next((i for i in later if coat_below(piece.stack, i) == index), None)


_LOOKS: tuple[Callable[[Studio, Piece, int], Iterator[StackFault]], ...] = (
    _thick,
    _open_to_the_air,
    _much_colour,
    _planned_scuffed,
    _left_out,
)
