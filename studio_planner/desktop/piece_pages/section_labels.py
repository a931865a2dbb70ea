"""The words beside a section: one block for each coat, and one for the blank."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import Enum
from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QFontMetricsF

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtGui import QFont

    from studio_planner.desktop.fonts import Fonts
    from studio_planner.desktop.piece_pages.joint_words import CoatWords

_BETWEEN = 7.0
_LEAST = 24.0
"""A block is a target of the mouse too."""

FAULT_SIGN = "\N{BLACK RIGHT-POINTING TRIANGLE} "
BADGE = 18.0
"""Room for the letter of the kind."""


class Role(Enum):
    """What a line says."""

    HEAD = "head"
    POUR = "pour"
    JOINT = "joint"
    FAULT = "fault"


@dataclass(frozen=True, slots=True)
class LabelLine:
    """One line, or several that belong together: its words, and where it starts."""

    role: Role
    text: str
    offset: float
    height: float


@dataclass(slots=True)
class LabelBlock:
    """What is said of one coat; the key of the blank is empty."""

    key: str
    lines: list[LabelLine] = field(default_factory=list)
    height: float = 0.0
    rect: QRectF = field(default_factory=QRectF)

    def line(self, role: Role) -> LabelLine | None:
        """The first line of a role."""
        return next((line for line in self.lines if line.role is role), None)


def font_of(fonts: Fonts, role: Role) -> QFont:
    """The font of a line."""
    return fonts.bold if role is Role.HEAD else fonts.small


def block_for(fonts: Fonts, key: str, said: CoatWords, width: float) -> LabelBlock:
    """The block of a coat, `width` pixels wide."""
    lines = [(Role.HEAD, said.head), (Role.POUR, said.pour), (Role.JOINT, said.joint_line)]
    lines += [(Role.FAULT, FAULT_SIGN + sentence) for sentence in said.faults]
    return _block(fonts, key, lines, width)


def blank_block(fonts: Fonts, text: str, width: float) -> LabelBlock:
    """The block of the blank."""
    return _block(fonts, "", [(Role.POUR, text)], width)


def _block(
    fonts: Fonts, key: str, lines: Sequence[tuple[Role, str]], width: float
) -> LabelBlock:
    block, y = LabelBlock(key), 0.0
    for role, text in lines:
        metrics = QFontMetricsF(font_of(fonts, role))
        box = QRectF(0.0, 0.0, width - BADGE, 1000.0)
        high = metrics.boundingRect(box, int(Qt.TextFlag.TextWordWrap), text).height()
        block.lines.append(LabelLine(role, text, y, high))
        y += high
    block.height = max(y, _LEAST)
    return block


def place(
    blocks: Sequence[LabelBlock], middles: Sequence[float], left: float, width: float
) -> float:
    """Put blocks beside what they point to, none over another; the lowest point of all."""
    at = 4.0
    tops = []
    for block, middle in zip(blocks, middles, strict=True):
        at = max(at, middle - block.height / 2.0)
        tops.append(at)
        at += block.height + _BETWEEN
    _pull_up(blocks, tops, middles)
    for block, top in zip(blocks, tops, strict=True):
        block.rect = QRectF(left, top, width, block.height)
    return max((block.rect.bottom() for block in blocks), default=0.0)


def _pull_up(blocks: Sequence[LabelBlock], tops: list[float], middles: Sequence[float]) -> None:
    """Share out the way that crowded blocks were pushed down."""
    for last in range(len(blocks) - 1, -1, -1):
        ahead = tops[last] - (middles[last] - blocks[last].height / 2.0)
        above = tops[last - 1] + blocks[last - 1].height + _BETWEEN if last else 4.0
        room = tops[last] - above
        if ahead > 0 and room > 0:
            tops[last] -= min(ahead, room)
