"""Clearing away what nobody holds any more, when it holds nobody up.

Python looks for circles of objects in whichever thread makes the next one, and looks through
all of them every so often: that takes a tenth of a second on a desk, and a widget that is
cleared away in another thread takes the program down. So it is done here, in the window's own
thread: young objects a few thousand at a time, all others while the maker is elsewhere.
"""

from __future__ import annotations

import gc

from PySide6.QtCore import QObject, Qt, QTimer
from PySide6.QtWidgets import QApplication

_LOOK_MILLISECONDS = 250
_YOUNG, _MANY = 10_000, 40_000
"""From so many new objects on they are looked through, and from so many on only set aside."""

_ROUNDS = 3
"""What has been looked through so often in vain is set aside, too."""

_MOST_ASIDE = 3_000_000
"""With more than that set aside all are looked through, wherever the maker is."""


class Rubbish(QObject):
    """Clears away for as long as there is its window."""

    def __init__(self, window: QObject) -> None:
        """Begin; Python itself looks no more from now on."""
        super().__init__(window)
        gc.disable()
        window.destroyed.connect(gc.enable)
        self._rounds = 0
        self._timer = QTimer(self)
        self._timer.setInterval(_LOOK_MILLISECONDS)
        self._timer.timeout.connect(self.look)
        self._timer.start()
        application = QApplication.instance()
        if isinstance(application, QApplication):
            application.applicationStateChanged.connect(self._state_changed)

    def look(self) -> None:
        """Look through what is young, if there is much of it."""
        young = gc.get_count()[0]
        if young < _YOUNG:
            return
        if young < _MANY and self._rounds < _ROUNDS:
            gc.collect(0)
            self._rounds += 1
            return
        self._rounds = 0
        gc.freeze()
        if gc.get_freeze_count() > _MOST_ASIDE:
            self.look_through_all()

    @staticmethod
    def look_through_all() -> None:
        """Look through everything; it takes a while."""
        gc.unfreeze()
        gc.collect()
        gc.freeze()

    def _state_changed(self, state: Qt.ApplicationState) -> None:
        if state is Qt.ApplicationState.ApplicationInactive:
            self.look_through_all()
