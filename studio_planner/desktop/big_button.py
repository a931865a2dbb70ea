"""A button that says all of its words: in as many lines, or as small, as its size asks for."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QPushButton, QStyle, QStyleOptionButton, QStylePainter
from typing_extensions import override

from studio_planner.desktop.big_screen import LEAST_TARGET, fitting

if TYPE_CHECKING:
    from PySide6.QtGui import QFont, QPaintEvent

_FLAGS = int(Qt.TextFlag.TextWordWrap | Qt.AlignmentFlag.AlignCenter)
_EDGE = 6.0


class BigButton(QPushButton):
    """A target whose words go on in a next line, each of them whole."""

    @property
    def words(self) -> str:
        """What is read on it."""
        return self.text().replace("&&", "&")

    @property
    def room(self) -> QRectF:
        """Where its words stand."""
        return QRectF(self.rect()).adjusted(_EDGE, _EDGE, -_EDGE, -_EDGE)

    @property
    def letters(self) -> QFont:
        """How large its words are written: as it was told, or as large as they fit."""
        return fitting(self.font(), self.room, self.words, _FLAGS)

    @override
    def minimumSizeHint(self) -> QSize:
        return QSize(LEAST_TARGET, super().minimumSizeHint().height())

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        option = QStyleOptionButton()
        self.initStyleOption(option)
        # The style would write them in one line, and cut both ends off.
        option.text = ""
        painter = QStylePainter(self)
        painter.drawControl(QStyle.ControlElement.CE_PushButton, option)
        painter.setFont(self.letters)
        painter.drawItemText(
            self.room.toRect(),
            _FLAGS,
            self.palette(),
            self.isEnabled(),
            self.words,
            QPalette.ColorRole.ButtonText,
        )
        painter.end()
