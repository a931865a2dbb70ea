"""What the fields of the log offer, each with its words."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.log import EntryKind, GoneKind
from studio_planner.craft.pieces import Joint
from studio_planner.craft.tongue import capital
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.desktop import words
from studio_planner.desktop.log_pages.told import FIELDS
from studio_planner.desktop.tongue import translate
from studio_planner.services.log_book.known import coat_name, piece_name

if TYPE_CHECKING:
    from studio_planner.craft.log import LogEntry
    from studio_planner.craft.studio import Studio

Options = list[tuple[object, str]]
"""Values with their words."""

_MAY_BE_UNSAID = frozenset({EntryKind.TURNED, EntryKind.SANDED, EntryKind.SPOILED})


def pieces(studio: Studio, entry: LogEntry | None = None) -> Options:
    """The pieces that are there, and that of an entry which is gone."""
    options: Options = [(one.key, words.piece_name(one)) for one in studio.pieces]
    if entry is not None and entry.piece not in {one.key for one in studio.pieces}:
        options.append((entry.piece, piece_name(studio, entry.piece)))
    return options


def any_pieces(studio: Studio) -> Options:
    """Every piece that the log may speak of, those that are gone at the end."""
    text = translate("happened", "{name} (taken out)")
    gone: Options = [
        (one.key, text.format(name=one.name))
        for one in studio.gone
        if one.kind is GoneKind.PIECE
    ]
    return [*pieces(studio), *gone]


def any_orders(studio: Studio) -> Options:
    """Every order that the log may speak of."""
    text = translate("happened", "{name} (taken out)")
    gone: Options = [
        (one.key, text.format(name=one.name))
        for one in studio.gone
        if one.kind is GoneKind.ORDER
    ]
    return [*((one.key, one.name) for one in studio.orders), *gone]


def kinds() -> Options:
    """What can be written down with the form."""
    return [(kind, capital(kind_word(kind))) for kind in FIELDS]


def every_kind() -> Options:
    """What the log tells of."""
    others = (kind for kind in EntryKind if kind is not EntryKind.WITHDRAWN)
    return [(kind, capital(kind_word(kind))) for kind in others]


def coats(studio: Studio, piece: str, kind: EntryKind) -> Options:
    """The coats of a piece; none is among them where it need not be said."""
    stack = next((one.stack for one in studio.pieces if one.key == piece), ())
    options: Options = [(coat.key, coat_name(studio, piece, coat.key)) for coat in stack]
    if kind in _MAY_BE_UNSAID:
        return [("", translate("happened", "not said")), *options]
    return options


def spots(studio: Studio, kind: EntryKind) -> Options:
    """The spots; a pour may lie where the plan has it."""
    options: Options = [(spot.key, spot.name) for spot in studio.spots]
    if kind is EntryKind.POURED:
        return [(None, translate("happened", "as planned, or where it lies")), *options]
    return options


def joints() -> Options:
    """How a coat meets the one below; as planned where nothing else is said."""
    usual = (None, translate("happened", "as planned"))
    return [usual, *((joint, capital(kind_word(joint))) for joint in Joint)]


def touches() -> Options:
    """The four touch tests."""
    return [(touch, capital(kind_word(touch))) for touch in Touch]


def verdicts() -> Options:
    """What a touch test may find."""
    return [(one, capital(kind_word(one))) for one in (Verdict.ALREADY, Verdict.NOT_YET)]
