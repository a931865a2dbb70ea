"""Editors that the wheel turns only while they have the focus: else it scrolls the page."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QDateEdit, QTimeEdit, QWidget
from typing_extensions import override

from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtGui import QWheelEvent

    _Editor = QWidget
else:
    _Editor = object


class _Still(_Editor):
    """Comes before the editor that it keeps still."""

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


class StillChoice(_Still, QComboBox):
    """A box to choose from."""


class StillTime(_Still, QTimeEdit):
    """A time of day."""


class StillDate(_Still, QDateEdit):
    """A date, with a calendar to choose from."""

    def __init__(self, parent: QWidget | None = None) -> None:
        """Write the day as the language does: the letters are Qt's."""
        super().__init__(parent)
        self.setCalendarPopup(True)
        self.setDisplayFormat(translate("forms", "ddd d MMM yyyy"))
