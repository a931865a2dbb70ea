"""What is seldom needed, folded away under a verb that says what it is."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QPushButton, QStyle, QStyleOptionFocusRect, QVBoxLayout, QWidget
from typing_extensions import override

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent
    from PySide6.QtWidgets import QLayout

_FOLDED, _OPEN = (
    "\N{BLACK RIGHT-POINTING SMALL TRIANGLE}",
    "\N{BLACK DOWN-POINTING SMALL TRIANGLE}",
)
_LEAST_TARGET = 28


class _Verb(QPushButton):
    """A verb without a frame: its words begin where the lines above and below it do."""

    @override
    def sizeHint(self) -> QSize:
        return QSize(self.fontMetrics().horizontalAdvance(self.text()) + 4, _LEAST_TARGET)

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        with QPainter(self) as painter:
            font = painter.font()
            font.setUnderline(self.underMouse())
            painter.setFont(font)
            painter.drawText(self.rect(), Qt.AlignmentFlag.AlignVCenter, self.text())
            if self.hasFocus():
                option = QStyleOptionFocusRect()
                option.initFrom(self)
                focus = QStyle.PrimitiveElement.PE_FrameFocusRect
                self.style().drawPrimitive(focus, option, painter, self)


class Fold(QWidget):
    """A verb, and under it, once it is asked for, what is folded away."""

    def __init__(self, words: str, inside: QLayout, parent: QWidget | None = None) -> None:
        """Be folded; `words` say what `inside` is."""
        super().__init__(parent)
        self._words = words
        self.button = _Verb(self)
        self.button.setCheckable(True)
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
