"""The keys of undo: what is being typed is theirs first, then the last change of the studio."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject
from PySide6.QtGui import QKeyEvent, QKeySequence
from typing_extensions import override

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtWidgets import QWidget

_KEYS = (QKeySequence.StandardKey.Undo, QKeySequence.StandardKey.Redo)


class UndoKeys(QObject):
    """Leaves the keys to the window while nothing is being typed into an editor.

    Qt's editors take them whenever they have the focus, so that right after Return nothing
    would be undone by them.
    """

    def __init__(self, editor: QWidget, unfinished: Callable[[], bool]) -> None:
        """Watch `editor`; `unfinished` tells whether it holds what was not entered yet."""
        super().__init__(editor)
        self._unfinished = unfinished
        editor.installEventFilter(self)

    @override
    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if (
            event.type() is QEvent.Type.ShortcutOverride
            and isinstance(event, QKeyEvent)
            and any(event.matches(key) for key in _KEYS)
            and not self._unfinished()
        ):
            event.ignore()
            return True
        return False
