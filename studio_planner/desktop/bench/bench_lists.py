"""What stands beneath the one task: what comes then, what closes, what is ready."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QLabel

from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtWidgets import QWidget

_SPACING = 32
_COUNT = 3


class BenchLists(QHBoxLayout):
    """Three lists beside each other; on a low screen they say less, or nothing."""

    def __init__(self, parent: QWidget) -> None:
        """Say nothing yet, in labels of `parent`."""
        super().__init__()
        self._said: Sequence[tuple[str, list[str]]] = ()
        self.labels = [QLabel(parent) for _ in range(_COUNT)]
        self.setSpacing(_SPACING)
        for label in self.labels:
            label.setTextFormat(Qt.TextFormat.PlainText)
            label.setWordWrap(True)
            label.setProperty("kind", "line")
            label.setAlignment(Qt.AlignmentFlag.AlignTop)
            self.addWidget(label, 1)

    def say(self, said: Sequence[tuple[str, list[str]]]) -> None:
        """Take the title and the lines of each list; `keep` shows them."""
        self._said = said

    def keep(self, most: int) -> None:
        """Show so many lines of each list at most; with none of them, not even the titles."""
        none = translate("bench", "nothing")
        for label, (title, lines) in zip(self.labels, self._said, strict=False):
            label.setText("\n".join([f"{title}:", *(lines[:most] or [none])]))
            label.setVisible(most > 0)
