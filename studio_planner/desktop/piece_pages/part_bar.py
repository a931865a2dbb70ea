"""The names of what is shown of a piece in a row, the one in front underlined."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QWidget

from studio_planner.desktop.page_bar import PageName

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.desktop.canvas import Canvas


class PartBar(QWidget):
    """Names in a row.

    Signals:
        part_asked: the key of the part that the maker wants to see.
    """

    part_asked = Signal(str)

    def __init__(
        self, canvas: Canvas, parts: Iterable[tuple[str, str]], parent: QWidget
    ) -> None:
        """Show `parts`, each a key and its words."""
        super().__init__(parent)
        self.names: dict[str, PageName] = {}
        group, layout = QButtonGroup(self), QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 4)
        layout.setSpacing(0)
        for key, words in parts:
            name = PageName(canvas, words, self)
            name.clicked.connect(lambda _on=False, key=key: self.part_asked.emit(key))
            self.names[key] = name
            group.addButton(name)
            layout.addWidget(name)
        layout.addStretch(1)

    def show_part(self, key: str) -> None:
        """Underline the part that is in front."""
        self.names[key].setChecked(True)
