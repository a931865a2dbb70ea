"""What the weigh view sounds: once for a minute that has come, more often for an end."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer
from PySide6.QtWidgets import QApplication

from studio_planner.desktop.weigh.cup_times import CupState

if TYPE_CHECKING:
    from collections.abc import Callable

_BETWEEN_MILLISECONDS = 350
_AGAIN_MINUTES = {CupState.DUE: 1.0, CupState.GONE: 0.25}
"""How often an end is sounded again until the cup is empty."""

_TIMES = {CupState.DUE: 2, CupState.GONE: 3}
COME = 1
"""How often it sounds when the minute to pour at has come."""


class WeighSound(QObject):
    """Sounds what is new; `off` is silence."""

    def __init__(self, parent: QObject, ring: Callable[[], None] = QApplication.beep) -> None:
        """Sound with `ring`."""
        super().__init__(parent)
        self.ring = ring
        self.off = False
        self._heard: tuple[object, CupState, bool] | None = None
        self._next = 0.0

    def hear(self, what: object, state: CupState, minute: float | None, *, come: bool) -> None:
        """Sound what has changed of a step: its cup's state, or that its minute has come."""
        now, before = (what, state, come), self._heard
        self._heard = now
        if self.off or before is None or minute is None:
            return
        times = _TIMES.get(state, 0)
        if times and (state is not before[1] or minute >= self._next):
            self._next = minute + _AGAIN_MINUTES[state]
            self._sound(times)
        elif come and not before[2] and what == before[0]:
            self._sound(COME)

    def _sound(self, times: int) -> None:
        for again in range(times):
            QTimer.singleShot(again * _BETWEEN_MILLISECONDS, self, self._ring)

    def _ring(self) -> None:
        self.ring()
