"""What happened to a piece, told on its page."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QMenu, QPushButton, QWidget

from studio_planner.desktop.happened_menu import fill_happened
from studio_planner.desktop.studio_pages.lines import LEAST_TARGET
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from studio_planner.desktop.page import PageDesk


class HappenedButton(QPushButton):
    """A verb with a menu of what can have happened."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Tell of no piece yet."""
        super().__init__(translate("pieces", "What happened"), parent)
        self._desk = desk
        self.piece = ""
        self.setAccessibleName(self.text())
        self.setMinimumHeight(LEAST_TARGET)
        self.inside = QMenu(self)
        self.setMenu(self.inside)
        self.inside.aboutToShow.connect(self._fill)

    def _fill(self) -> None:
        self.inside.clear()
        fill_happened(self.inside, self._desk, self.piece)
