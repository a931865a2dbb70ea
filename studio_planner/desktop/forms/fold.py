"""What is seldom needed, folded away under a verb that says what it is."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

if TYPE_CHECKING:
    from PySide6.QtWidgets import QLayout

_FOLDED, _OPEN = (
    "\N{BLACK RIGHT-POINTING SMALL TRIANGLE}",
    "\N{BLACK DOWN-POINTING SMALL TRIANGLE}",
)
_LEAST_TARGET = 28


class Fold(QWidget):
    """A verb, and under it, once it is asked for, what is folded away."""

    def __init__(self, words: str, inside: QLayout, parent: QWidget | None = None) -> None:
        """Be folded; `words` say what `inside` is."""
        super().__init__(parent)
        self._words = words
        self.button = QPushButton(self)
        self.button.setCheckable(True)
        self.button.setFlat(True)
        self.button.setMinimumHeight(_LEAST_TARGET)
        self.button.setAccessibleName(words)
        self._inside = QWidget(self)
        self._inside.setLayout(inside)
        inside.setContentsMargins(0, 4, 0, 4)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(2)
        layout.addWidget(self.button, 0, Qt.AlignmentFlag.AlignLeft)
        layout.addWidget(self._inside)
        self.button.toggled.connect(self._turn)
        self._turn(opened=False)

    def unfold(self) -> None:
        """Show what is inside."""
        self.button.setChecked(True)

    def _turn(self, opened: bool) -> None:  # noqa: FBT001 - Qt's own signal
        self.button.setText(f"{_OPEN if opened else _FOLDED} {self._words}")
        self._inside.setVisible(opened)
