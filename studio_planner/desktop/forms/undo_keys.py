"""The keys of undo: what is being typed is theirs first, then the last change of the studio."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject
from PySide6.QtGui import QKeyEvent, QKeySequence
from PySide6.QtWidgets import QApplication
from shiboken6 import isValid
from typing_extensions import override

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtWidgets import QWidget

_KEYS = (QKeySequence.StandardKey.Undo, QKeySequence.StandardKey.Redo)


_FOLLOWED = "undo keys follow the focus"


class UndoKeys(QObject):
    """Leaves the keys to the window while nothing is being typed into an editor.

    Qt's editors take them whenever they have the focus, so that right after Return nothing
    would be undone by them. An editor is watched only while it has the focus: a page has
    hundreds of them, and each is told of every change of its size, font and colours.
    """

    def __init__(self, editor: QWidget, unfinished: Callable[[], bool]) -> None:
        """Watch `editor`; `unfinished` tells whether it holds what was not entered yet."""
        super().__init__(editor)
        self._unfinished = unfinished
        _follow_focus()
        if editor.hasFocus():
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


def _follow_focus() -> None:
    application = QApplication.instance()
    if isinstance(application, QApplication) and not application.property(_FOLLOWED):
        application.setProperty(_FOLLOWED, True)  # noqa: FBT003 - Qt's own
        application.focusChanged.connect(_focus_changed)


def _focus_changed(before: QWidget | None, now: QWidget | None) -> None:
    if before is not None and isValid(before):
        for keys in _keys_of(before):
            before.removeEventFilter(keys)
    if now is not None:
        for keys in _keys_of(now):
            now.installEventFilter(keys)


def _keys_of(editor: QWidget) -> list[UndoKeys]:
    return [one for one in editor.children() if isinstance(one, UndoKeys)]
