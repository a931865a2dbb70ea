"""A line of text that is cut short with three dots where there is no room for all of it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QSizePolicy
from typing_extensions import override

if TYPE_CHECKING:
    from PySide6.QtGui import QResizeEvent
    from PySide6.QtWidgets import QWidget


class ShortLabel(QLabel):
    """A label that never asks for more width than there is; pointing at it shows all of it."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Say nothing yet."""
        super().__init__(parent)
        self.words = ""
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)

    @override
    def setText(self, text: str) -> None:
        self.words = text
        self._fit()

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        cut = Qt.TextElideMode.ElideRight
        shown = self.fontMetrics().elidedText(self.words, cut, max(self.width(), 60))
        super().setText(shown)
        self.setToolTip("" if shown == self.words else self.words)
