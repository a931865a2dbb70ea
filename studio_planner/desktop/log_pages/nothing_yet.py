"""What stands in place of the form where nothing can have happened yet, and where to go."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget

from studio_planner.desktop.page_keys import PIECES
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from studio_planner.desktop.page import PageDesk


class NothingYet(QWidget):
    """Says what is missing, and leads there."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Say that there is no piece."""
        super().__init__(parent)
        canvas = desk.canvas
        self.title = Line(canvas, translate("happened", "What happened?"), self, font="clock")
        said = translate(
            "happened",
            "No piece is there yet to which something could have happened. Enter what you "
            "coat, and its coats: then it is written down here when they were poured, how they "
            "felt to the touch, and when they were turned, packed and shipped.",
        )
        self.words = Line(canvas, said, self)
        text = translate("happened", "Enter a piece")
        self.enter = verb(text, lambda: desk.go_to(PIECES), self)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(10)
        layout.addWidget(self.title)
        layout.addWidget(self.words)
        layout.addWidget(self.enter, 0, Qt.AlignmentFlag.AlignLeft)
