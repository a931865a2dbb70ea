"""A day of the week sheet: its name at the left, what happens in it beside, each with a sign."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.tongue import translate
from studio_planner.desktop.paper.ink import FINE, FIRM, Ink
from studio_planner.desktop.paper.paper_type import Face, line_height, wrapped
from studio_planner.services.paper.pages import Mark

if TYPE_CHECKING:
    from studio_planner.services.paper.pages import Day, DayLine

_NAME = 36.0
"""How wide the day's name is [mm]."""

_CLOCK = 34.0
_SIGN = 7.0
_AFTER = 1.6
_PAD = 1.4
_GAP = 0.7


def day_height(day: Day, width: float) -> float:
    """How high a day is [mm]."""
    lines = sum(_line_height(one, width) for one in day.lines) or line_height(Face.PLAIN)
    return max(lines, _name_height(day)) + 2 * _PAD + _AFTER


def draw_day(ink: Ink, day: Day, x: float, y: float, width: float) -> None:
    """Draw a day under a firm rule."""
    ink.rule((x, y), (x + width, y), FIRM)
    y += _PAD
    name = ink.paragraph(x, y, day.weekday, Face.LARGE_BOLD, _NAME - 3.0)
    name = ink.paragraph(x, name, day.date, Face.LARGE, _NAME - 3.0)
    ink.paragraph(x, name, day.hands, Face.SMALL, _NAME - 3.0)
    if not day.lines:
        words = translate("paper", "nothing planned")
        ink.text(x + _NAME, y + 1.0, words, Face.PLAIN)
    for line in day.lines:
        _draw_line(ink, line, x + _NAME, y, width - _NAME)
        y += _line_height(line, width)


def _draw_line(ink: Ink, line: DayLine, x: float, y: float, width: float) -> None:
    _draw_sign(ink, line.mark, x + 2.0, y + line_height(Face.PLAIN) / 2)
    face = Face.BOLD if line.mark is not Mark.STEP else Face.PLAIN
    ink.lines(x + _SIGN, y, wrapped(line.clock, face, _CLOCK - 2.0), face)
    left = x + _SIGN + _CLOCK
    room = width - _SIGN - _CLOCK
    y = ink.paragraph(left, y, line.what, face, room)
    ink.paragraph(left, y, line.whom, Face.PLAIN, room)


def _draw_sign(ink: Ink, mark: Mark, x: float, y: float) -> None:
    """A full square for hands at a pour, an empty one for a step, two posts, an arrow."""
    match mark:
        case Mark.POUR:
            ink.outline([(x - 1.4, y - 1.4), (x + 1.4, y - 1.4), (x + 1.4, y + 1.4),
                         (x - 1.4, y + 1.4)], 0.2, filled=True)  # fmt: skip
        case Mark.STEP:
            ink.box(x - 1.3, y - 1.3, 2.6, 2.6, FINE)
        case Mark.CLOSES:
            ink.rule((x - 1.3, y - 1.6), (x - 1.3, y + 1.6), FINE)
            ink.rule((x + 0.9, y - 1.6), (x + 0.9, y + 1.6), FIRM + 0.3)
        case Mark.LEAVES:
            ink.rule((x - 1.8, y), (x + 1.0, y), FIRM)
            ink.outline([(x + 0.4, y - 1.3), (x + 2.2, y), (x + 0.4, y + 1.3)], 0.2,
                        filled=True)  # fmt: skip


def _line_height(line: DayLine, width: float) -> float:
    face = Face.BOLD if line.mark is not Mark.STEP else Face.PLAIN
    room = width - _NAME - _SIGN - _CLOCK
    words = len(wrapped(line.what, face, room)) * line_height(face)
    if line.whom:
        words += len(wrapped(line.whom, Face.PLAIN, room)) * line_height(Face.PLAIN)
    clock = len(wrapped(line.clock, face, _CLOCK - 2.0)) * line_height(face)
    return max(words, clock) + _GAP


def _name_height(day: Day) -> float:
    room = _NAME - 3.0
    heights = (
        (day.weekday, Face.LARGE_BOLD),
        (day.date, Face.LARGE),
        (day.hands, Face.SMALL),
    )
    return sum(len(wrapped(text, face, room)) * line_height(face) for text, face in heights)
