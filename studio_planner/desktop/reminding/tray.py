"""The desk's place in the tray of the system: a short word, and the way back to the window."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QApplication, QMenu, QSystemTrayIcon

from studio_planner.desktop.tongue import counted, translate

if TYPE_CHECKING:
    from studio_planner.services.ports import Notice

_STANDS_MILLISECONDS = 20_000


class Tray(QObject):
    """An icon that is there while it is needed.

    Signals:
        open_asked: show the window.
        due_asked: show the list of what is due.
        leave_asked: end the program.
    """

    open_asked = Signal()
    due_asked = Signal()
    leave_asked = Signal()

    def __init__(self, parent: QObject) -> None:
        """Show nothing yet."""
        super().__init__(parent)
        self._icon: QSystemTrayIcon | None = None
        self._menu: QMenu | None = None

    @property
    def available(self) -> bool:
        """Whether this system has a tray."""
        return QSystemTrayIcon.isSystemTrayAvailable()

    def show_notice(self, notice: Notice) -> str:
        """Show a notice; gives a sentence where that is not possible."""
        if not self.available:
            return translate("due", "There is no tray on this system to show it in.")
        if not QSystemTrayIcon.supportsMessages():
            return translate("due", "The tray of this system shows no messages.")
        self.say(notice.title, notice.body, strong=notice.strong)
        return ""

    def say(self, title: str, body: str, *, strong: bool = False) -> None:
        """Say something beside the icon."""
        sign = QSystemTrayIcon.MessageIcon
        kind = sign.Warning if strong else sign.Information
        self._shown_icon().showMessage(title, body, kind, _STANDS_MILLISECONDS)

    def stay(self, due: int) -> None:
        """Be there, and say how much is due."""
        if self.available:
            words = counted(
                due,
                translate("due", "{count} thing is due"),
                translate("due", "{count} things are due"),
            )
            self._shown_icon().setToolTip(f"Studio planner: {words}")

    def go(self) -> None:
        """Be there no more."""
        if self._icon is not None:
            self._icon.hide()

    def _shown_icon(self) -> QSystemTrayIcon:
        if self._icon is None:
            self._icon = icon = QSystemTrayIcon(QApplication.windowIcon(), self)
            self._menu = self._made_menu()
            icon.setContextMenu(self._menu)
            icon.activated.connect(self._activated)
            icon.messageClicked.connect(self.due_asked)
        self._icon.show()
        return self._icon

    def _made_menu(self) -> QMenu:
        menu = QMenu()
        menu.addAction(translate("due", "Open the desk")).triggered.connect(self.open_asked)
        menu.addAction(translate("due", "What is due")).triggered.connect(self.due_asked)
        menu.addSeparator()
        menu.addAction(translate("due", "Leave")).triggered.connect(self.leave_asked)
        return menu

    def _activated(self, how: QSystemTrayIcon.ActivationReason) -> None:
        if how is not QSystemTrayIcon.ActivationReason.Context:
            self.open_asked.emit()
