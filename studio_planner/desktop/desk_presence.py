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

    def enter_typed(self) -> bool:
        """Have what is being typed entered; False when it is refused."""
        ...


class DeskPresence:
    """Closes a window into the tray, brings it back, and ends it."""

    def __init__(self, window: QWidget, desk: RemindingDesk) -> None:
        """Let `window` stay for the reminding of `desk` where the maker wants that."""
        self._window = window
        self._desk = desk
        self._leaving = False
        self._surely = False

    def stays(self, event: QCloseEvent) -> bool:
        """Whether the desk goes on after its window was closed.

        It does while something that is being typed is refused, and says so; and to go on
        reminding: it is hidden then.
        """
        if not self._desk.enter_typed() and not self._surely:
            event.ignore()
            self._leaving = False
            return True
        if self._leaving or self._desk.session is None:
            return False
        closed = self._desk.reminding.closed
        if not closed.stays:
            return False
        event.ignore()
        self._window.hide()
        closed.stay()
        return True

    def leave(self) -> bool:
        """End the desk, from the tray, too; False when it stays for what is being typed."""
        self._leaving = True
        hidden = self._window.isHidden()
        left = self._window.close()
        if hidden:
            QApplication.quit()
        return left

    def end(self) -> None:
        """End the desk, though something that is being typed be refused."""
        self._surely = True
        self.leave()

    def come_back(self) -> None:
        """Show the window again, wherever it is."""
        window = self._window
        window.setWindowState(window.windowState() & ~Qt.WindowState.WindowMinimized)
        hidden = window.isHidden()
        window.show()
        window.activateWindow()
        if not hidden and not window.isActiveWindow():
            window.raise_()
