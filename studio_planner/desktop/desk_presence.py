"""Whether the desk's window is there: it may be closed and go on reminding, and come back."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

if TYPE_CHECKING:
    from PySide6.QtGui import QCloseEvent
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.reminding.desk_reminding import DeskReminding
    from studio_planner.services.desk import DeskSession


class RemindingDesk(Protocol):
    """What the window tells of itself."""

    session: DeskSession | None

    @property
    def reminding(self) -> DeskReminding:
        """What reminds of the studio."""
        ...


class DeskPresence:
    """Closes a window into the tray, brings it back, and ends it."""

    def __init__(self, window: QWidget, desk: RemindingDesk) -> None:
        """Let `window` stay for the reminding of `desk` where the maker wants that."""
        self._window = window
        self._desk = desk
        self._leaving = False

    def stays(self, event: QCloseEvent) -> bool:
        """Whether the desk goes on reminding after its window was closed; it is hidden then."""
        if self._leaving or self._desk.session is None:
            return False
        closed = self._desk.reminding.closed
        if not closed.stays:
            return False
        event.ignore()
        self._window.hide()
        closed.stay()
        return True

    def leave(self) -> None:
        """End the desk, from the tray, too."""
        self._leaving = True
        hidden = self._window.isHidden()
        self._window.close()
        if hidden:
            QApplication.quit()

    def come_back(self) -> None:
        """Show the window again, wherever it is."""
        window = self._window
        window.setWindowState(window.windowState() & ~Qt.WindowState.WindowMinimized)
        hidden = window.isHidden()
        window.show()
        window.activateWindow()
        if not hidden and not window.isActiveWindow():
            window.raise_()
