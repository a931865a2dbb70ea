"""A day of the week sheet: its name at the left, beside it what happens, each with a sign.

What is done stands in a column of its own, but a longer text pushes on what it is done to.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.tongue import translate
from studio_planner.desktop.paper.ink import FINE, FIRM, Ink
from studio_planner.desktop.paper.paper_type import Face, ascent, line_height, width_of, wrapped
from studio_planner.services.paper.pages import Mark

if TYPE_CHECKING:
    from studio_planner.services.paper.pages import Day, DayLine

_NAME = 35.0
"""How wide the day's name is [mm]."""

_CLOCK = 33.5
_WHAT = 30.0
_CLOSES = 28.0
_SIGN = 6.0
_AFTER = 1.2
_PAD = 1.2
_GAP = 0.7
_BETWEEN = 2.5


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
    x += _SIGN
    for words, face, room in _columns(line, width):
        # Small letters stand on the line of the others.
        down = ascent(Face.PLAIN) - ascent(face)
        ink.paragraph(x, y + down, words, face, room - _BETWEEN)
        x += room


def _draw_sign(ink: Ink, mark: Mark, x: float, y: float) -> None:
    """A full square for hands at a pour, an empty one for a step, an arrow for what leaves."""
    match mark:
        case Mark.POUR:
            ink.outline([(x - 1.4, y - 1.4), (x + 1.4, y - 1.4), (x + 1.4, y + 1.4),
                         (x - 1.4, y + 1.4)], 0.2, filled=True)  # fmt: skip
        case Mark.STEP:
            ink.box(x - 1.3, y - 1.3, 2.6, 2.6, FINE)
        case Mark.LEAVES:
            ink.rule((x - 1.8, y), (x + 1.0, y), FIRM)
            ink.outline([(x + 0.4, y - 1.3), (x + 2.2, y), (x + 0.4, y + 1.3)], 0.2,
                        filled=True)  # fmt: skip


def _line_height(line: DayLine, width: float) -> float:
    columns = _columns(line, width - _NAME)
    heights = (
        len(wrapped(words, face, room - _BETWEEN)) * line_height(face)
        for words, face, room in columns
    )
    return max(heights) + _GAP


def _columns(line: DayLine, width: float) -> tuple[tuple[str, Face, float], ...]:
    """What stands beside the sign: words, face and width [mm] of each column."""
    face = Face.PLAIN if line.mark is Mark.STEP else Face.BOLD
    closes = _CLOSES if line.closes else 0.0
    rest = width - _SIGN - _CLOCK - closes
    what = min(max(_WHAT, width_of(line.what, face) + _BETWEEN + 0.1), rest / 2)
    return (
        (line.clock, face, _CLOCK),
        (line.what, face, what),
        (line.whom, Face.PLAIN, rest - what),
        (line.closes, Face.SMALL, closes),
    )


def _name_height(day: Day) -> float:
    room = _NAME - 3.0
    heights = (
        (day.weekday, Face.LARGE_BOLD),
        (day.date, Face.LARGE),
        (day.hands, Face.SMALL),
    )
    return sum(len(wrapped(text, face, room)) * line_height(face) for text, face in heights)
