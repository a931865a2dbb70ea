"""The sections of a page as a quiet list of words, the one in front marked as a lane is."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import QAbstractButton, QButtonGroup, QSizePolicy, QVBoxLayout, QWidget
from typing_extensions import override

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from studio_planner.desktop.canvas import Canvas

_LEFT, _RIGHT, _MARK, _HIGH = 14, 12, 3, 32


class SectionName(QAbstractButton):
    """The name of one section."""

    def __init__(self, canvas: Canvas, words: str, parent: QWidget) -> None:
        """Show `words`."""
        super().__init__(parent)
        self._canvas = canvas
        self.setText(words)
        self.setAccessibleName(words)
        self.setCheckable(True)
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    @override
    def sizeHint(self) -> QSize:
        metrics = QFontMetrics(self._canvas.fonts.bold)
        width = metrics.horizontalAdvance(self.text()) + _LEFT + _RIGHT
        return QSize(width, max(metrics.height() + 10, _HIGH))

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        theme, fonts = self._canvas.theme, self._canvas.fonts
        with QPainter(self) as painter:
            chosen = self.isChecked()
            painter.setFont(fonts.bold if chosen else fonts.plain)
            strong = chosen or self.underMouse()
            painter.setPen(theme.colour("ink" if strong else "quiet"))
            middle = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
            painter.drawText(self.rect().adjusted(_LEFT, 0, 0, 0), middle, self.text())
            if chosen:
                painter.fillRect(0, 4, _MARK, self.height() - 8, theme.colour("ink"))
            if self.hasFocus():
                painter.setPen(QPen(theme.colour("window"), 2.0))
                painter.drawRect(self.rect().adjusted(1, 1, -2, -2))


class SectionNames(QWidget):
    """All names below each other; arrows go from one to the next.

    Signals:
        section_asked: the key of the section that the maker wants to see.
    """

    section_asked = Signal(str)

    def __init__(self, canvas: Canvas, title: str, parent: QWidget | None = None) -> None:
        """Start without sections; `title` is what a screen reader calls them."""
        super().__init__(parent)
        self._canvas = canvas
        self.names: dict[str, SectionName] = {}
        self._group = QButtonGroup(self)
        self._layout = QVBoxLayout(self)
        self._layout.setContentsMargins(0, 10, 0, 10)
        self._layout.setSpacing(0)
        self._layout.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.setAccessibleName(title)
        canvas.redrawn.connect(self.update)

    def add(self, key: str, words: str) -> None:
        """Add the name of a section."""
        name = SectionName(self._canvas, words, self)
        name.clicked.connect(lambda: self.section_asked.emit(key))
        self.names[key] = name
        self._group.addButton(name)
        self._layout.addWidget(name)

    def show_section(self, key: str) -> None:
        """Mark the section that is in front."""
        self.names[key].setChecked(True)

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        with QPainter(self) as painter:
            painter.fillRect(self.rect(), self._canvas.theme.colour("panel"))
