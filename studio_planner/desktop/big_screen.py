"""A screen that is read from three metres and tapped with a knuckle: sizes of all on it."""

from __future__ import annotations

from math import ceil
from typing import TYPE_CHECKING

from PySide6.QtGui import QFont, QFontMetricsF

if TYPE_CHECKING:
    from PySide6.QtCore import QRectF
    from PySide6.QtWidgets import QWidget

TARGET_MM = 25.0
"""How large a target is for a hand in a glove, seen through a smeared film."""

LEAST_TARGET = 96
"""Pixels below which no target goes, whatever a screen says of its size."""

_MM_PER_INCH = 25.4
_SHAPE = 0.62
"""Letters go by the height of a window, but no more than this share of its width."""

_LEAST_PIXELS = 12


def target_pixels(widget: QWidget) -> int:
    """How high a target is: 25 mm on this screen, as far as it says how large it is."""
    screen = widget.screen()
    dots = screen.physicalDotsPerInch() / screen.devicePixelRatio()
    wanted = ceil(TARGET_MM / _MM_PER_INCH * dots)
    return max(LEAST_TARGET, min(wanted, widget.height() // 4))


def letters(widget: QWidget, font: QFont, share: float) -> QFont:
    """A font so many parts of a window high."""
    height = min(widget.height(), round(widget.width() * _SHAPE))
    sized = QFont(font)
    sized.setPixelSize(max(round(share * height), _LEAST_PIXELS))
    return sized


def fitting(font: QFont, room: QRectF, text: str, flags: int, least: int = 8) -> QFont:
    """That font, or one so much smaller that `text` fits into `room` [px] with all its words.

    `flags` say how it is written, as for a painter; below `least` pixels no letter goes.
    """
    sized = QFont(font)
    while sized.pixelSize() > least:
        need = QFontMetricsF(sized).boundingRect(room, flags, text)
        if need.height() <= room.height() and need.width() <= room.width():
            break
        sized.setPixelSize(sized.pixelSize() - 1)
    return sized
