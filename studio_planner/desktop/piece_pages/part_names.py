"""The parts of the page of a piece by name, and the line that pieces are found with."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QLineEdit

from studio_planner.desktop.piece_pages.part_bar import PartBar
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.canvas import Canvas

STACK, BLANK, PHOTOS, PATTERNS = "stack", "blank", "photos", "patterns"
MISSED = "missed"
"""The keys of what is shown of a piece; the last one only where a window was missed."""


class PieceSearch(QLineEdit):
    """The line that pieces are found with."""

    def __init__(self, parent: QWidget) -> None:
        """Look for nothing yet."""
        super().__init__(parent)
        self.setPlaceholderText(translate("pieces", "look for: name, coat, colour"))
        self.setAccessibleName(translate("pieces", "Look for pieces"))
        self.setClearButtonEnabled(True)


def piece_parts(canvas: Canvas, parent: QWidget) -> PartBar:
    """The row of the names of all parts."""
    names = (
        (STACK, translate("pieces", "Stack")),
        (BLANK, translate("pieces", "Blank")),
        (PHOTOS, translate("pieces", "Photos")),
        (PATTERNS, translate("pieces", "Patterns")),
        (MISSED, translate("pieces", "Window missed")),
    )
    parts = PartBar(canvas, names, parent)
    parts.setAccessibleName(translate("pieces", "Of the piece"))
    return parts
