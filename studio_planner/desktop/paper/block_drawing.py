"""The other blocks of a sheet: headlines, the number on its tape, boxes, sentences."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.desktop.paper.ink import FINE, Ink
from studio_planner.desktop.paper.paper_type import Face, line_height, width_of, wrapped

if TYPE_CHECKING:
    from studio_planner.services.paper.pages import Fields, Headline, LargeNumber, Prose

_TAPE_HEIGHT = 21.0
_TEETH = 7
_TOOTH = 1.5
"""The torn ends of a strip of tape: how many teeth, and how deep [mm]."""

_FIELD_HEIGHT = 9.4
_FIELD_GAP = 3.0
_AFTER = 4.0
_INDENT = 5.0


def headline_height(block: Headline, width: float) -> float:
    """How high a headline is [mm]."""
    words = len(wrapped(block.words, Face.TITLE, width)) * line_height(Face.TITLE)
    under = sum(len(wrapped(one, Face.PLAIN, width)) for one in block.under)
    return words + under * line_height(Face.PLAIN) + _AFTER


def draw_headline(ink: Ink, block: Headline, x: float, y: float, width: float) -> None:
    """Draw a headline and the lines under it."""
    y = ink.paragraph(x, y, block.words, Face.TITLE, width)
    for line in block.under:
        y = ink.paragraph(x, y, line, Face.PLAIN, width)


def number_height(block: LargeNumber, width: float) -> float:
    """How high a large number is [mm], with the lines beside it."""
    return max(_TAPE_HEIGHT, _beside_height(block, width)) + _AFTER


def draw_number(ink: Ink, block: LargeNumber, x: float, y: float, width: float) -> None:
    """Draw a number on a strip of tape, as it is written on the cup, and lines beside it."""
    tape = _tape_width(block)
    ink.outline(_torn(x, y, tape))
    ink.text(x + 4.5, y + 1.0, block.label, Face.LABEL)
    top = y + (_TAPE_HEIGHT - line_height(Face.NUMBER)) / 2 + 1.4
    middle = x + (tape - width_of(block.number, Face.NUMBER)) / 2
    ink.text(middle, top, block.number, Face.NUMBER)
    left = x + tape + 5.0
    for place, line in enumerate(block.beside):
        face = Face.LARGE_BOLD if not place else Face.PLAIN
        y = ink.paragraph(left, y, line, face, width - tape - 5.0)


def _tape_width(block: LargeNumber) -> float:
    return max(30.0, width_of(block.number, Face.NUMBER) + 12.0)


def _beside_height(block: LargeNumber, width: float) -> float:
    room = width - _tape_width(block) - 5.0
    height = 0.0
    for place, line in enumerate(block.beside):
        face = Face.LARGE_BOLD if not place else Face.PLAIN
        height += len(wrapped(line, face, room)) * line_height(face)
    return height


def _torn(x: float, y: float, width: float) -> list[tuple[float, float]]:
    """The outline of a strip of tape, torn off on both sides."""
    step = _TAPE_HEIGHT / (2 * _TEETH)
    right = [
        (x + width - (_TOOTH if place % 2 else 0.0), y + place * step)
        for place in range(2 * _TEETH + 1)
    ]
    left = [
        (x + (_TOOTH if place % 2 else 0.0), y + place * step)
        for place in reversed(range(2 * _TEETH + 1))
    ]
    return right + left


def fields_height(block: Fields, width: float) -> float:
    """How high boxes to write in are [mm]."""
    rows = -(-len(block.labels) // block.across)
    title = _title_height(block.title, width)
    return title + rows * (_FIELD_HEIGHT + _FIELD_GAP / 2) + _AFTER


def draw_fields(ink: Ink, block: Fields, x: float, y: float, width: float) -> None:
    """Draw boxes to write in, each with its label inside at the top."""
    y = _draw_title(ink, block.title, x, y, width)
    own = (width - _FIELD_GAP * (block.across - 1)) / block.across
    for place, label in enumerate(block.labels):
        row, column = divmod(place, block.across)
        left = x + column * (own + _FIELD_GAP)
        top = y + row * (_FIELD_HEIGHT + _FIELD_GAP / 2)
        ink.box(left, top, own, _FIELD_HEIGHT, FINE)
        ink.paragraph(left + 1.2, top + 0.6, label, Face.LABEL, own - 2.4)


def prose_height(block: Prose, width: float) -> float:
    """How high sentences are [mm]."""
    face, room = _prose_face(block), width - (_INDENT if block.listed else 0.0)
    lines = sum(len(wrapped(one, face, room)) for one in block.sentences)
    gaps = 1.2 * len(block.sentences)
    return _title_height(block.title, width) + lines * line_height(face) + gaps + _AFTER / 2


def draw_prose(ink: Ink, block: Prose, x: float, y: float, width: float) -> None:
    """Draw sentences, each with a drop before it where they are listed."""
    y = _draw_title(ink, block.title, x, y, width)
    face = _prose_face(block)
    indent = _INDENT if block.listed else 0.0
    for words in block.sentences:
        if block.listed:
            _draw_drop(ink, x + 1.6, y + line_height(face) / 2)
        y = ink.paragraph(x + indent, y, words, face, width - indent) + 1.2


def _draw_drop(ink: Ink, x: float, y: float) -> None:
    """A drop standing on its corner, as wide as 1.8 mm."""
    ink.outline([(x, y - 1.2), (x + 0.9, y), (x, y + 1.2), (x - 0.9, y)], 0.2, filled=True)


def _prose_face(block: Prose) -> Face:
    return Face.LARGE if block.large else Face.PLAIN


def _title_height(title: str, width: float) -> float:
    if not title:
        return 0.0
    return len(wrapped(title, Face.HEADING, width)) * line_height(Face.HEADING) + 0.8


def _draw_title(ink: Ink, title: str, x: float, y: float, width: float) -> float:
    if title:
        ink.paragraph(x, y, title, Face.HEADING, width)
    return y + _title_height(title, width)
