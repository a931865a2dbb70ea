"""Light or dark, for the window and for everything in it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

from PySide6.QtWidgets import QApplication

from studio_planner.desktop.theme import Look, theme_for, wear

if TYPE_CHECKING:
    from PySide6.QtCore import SignalInstance
    from PySide6.QtGui import QAction

    from studio_planner.desktop.canvas import Canvas


class Looking(Protocol):
    """What the look needs of the window."""

    canvas: Canvas
    verbs: dict[str, QAction]
    look_chosen: SignalInstance


class DeskLook:
    """Changes between light and dark."""

    def __init__(self, window: Looking) -> None:
        """Leave `window` as it looks."""
        self._window = window

    def choose(self, look: Look) -> None:
        """Change because the maker wants it."""
        self.set(look)
        self._window.look_chosen.emit(look)

    def set(self, look: Look) -> None:
        """Change for now."""
        application, theme = QApplication.instance(), theme_for(look)
        if isinstance(application, QApplication):
            wear(application, theme)
        self._window.canvas.set_theme(theme)
        self._window.verbs["dark" if look is Look.DARK else "light"].setChecked(True)
