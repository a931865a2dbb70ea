"""Editors that the wheel turns only while they have the focus: else it scrolls the page."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QDateEdit, QTimeEdit, QWidget
from typing_extensions import override

if TYPE_CHECKING:
    from PySide6.QtGui import QWheelEvent


class StillChoice(QComboBox):
    """A box to choose from."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Take the focus by keys and by a click."""
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    @override
    def wheelEvent(self, e: QWheelEvent) -> None:
        if self.hasFocus():
            super().wheelEvent(e)
        else:
            e.ignore()


class StillTime(QTimeEdit):
    """A time of day."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Take the focus by keys and by a click."""
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    @override
    def wheelEvent(self, event: QWheelEvent) -> None:
        if self.hasFocus():
            super().wheelEvent(event)
        else:
            event.ignore()


class StillDate(QDateEdit):
    """A date."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Take the focus by keys and by a click."""
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    @override
    def wheelEvent(self, event: QWheelEvent) -> None:
        if self.hasFocus():
            super().wheelEvent(event)
        else:
            event.ignore()
