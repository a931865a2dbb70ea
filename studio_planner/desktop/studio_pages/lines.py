"""Lines of text in the desk's fonts and colours, and verbs as buttons."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QLabel, QPushButton, QWidget
from typing_extensions import override

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtGui import QPaintEvent

    from studio_planner.desktop.canvas import Canvas

LEAST_TARGET = 28
"""How high a button is at least."""


class Line(QLabel):
    """Text that wraps, in one of the desk's fonts and one of its colours."""

    def __init__(
        self,
        canvas: Canvas,
        text: str,
        parent: QWidget,
        *,
        font: str = "plain",
        colour: str = "ink",
    ) -> None:
        """Say `text`; `font` is a field of Fonts, `colour` one of Theme."""
        super().__init__(text, parent)
        self._canvas = canvas
        self._colour = colour
        self.setFont(getattr(canvas.fonts, font))
        self.setWordWrap(True)
        self.setTextFormat(Qt.TextFormat.PlainText)
        canvas.recoloured.connect(self._recolour)
        self._recolour()

    def say(self, text: str) -> None:
        """Say something else; nothing takes no room."""
        if text != self.text():
            self.setText(text)
        self.setVisible(bool(text))

    def _recolour(self) -> None:
        palette = self.palette()
        palette.setColor(palette.ColorRole.WindowText, self._canvas.theme.colour(self._colour))
        self.setPalette(palette)


def verb(
    words: str, does: Callable[[], object], parent: QWidget, *, about: str = ""
) -> QPushButton:
    """A button that does what its words say; `about` tells a screen reader of what."""
    button = QPushButton(words, parent)
    button.setMinimumHeight(LEAST_TARGET)
    button.setAccessibleName(f"{words}: {about}" if about else words)
    button.clicked.connect(lambda _checked=False: does())
    return button


class Rule(QWidget):
    """A faint line across, between two things."""

    def __init__(self, canvas: Canvas, parent: QWidget) -> None:
        """Draw in the colours of `canvas`."""
        super().__init__(parent)
        self._canvas = canvas
        self.setFixedHeight(1)
        canvas.redrawn.connect(self.update)

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        with QPainter(self) as painter:
            painter.fillRect(self.rect(), self._canvas.theme.colour("faint_rule"))
