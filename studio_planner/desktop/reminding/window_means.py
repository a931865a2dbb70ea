"""Means that belong to the window: the tray and a sound; and what came of the one before them.

Reminders are told from a thread of their own; what Qt shows has to be shown in the window's
thread, which answers whether it worked.
"""

from __future__ import annotations

from concurrent.futures import Future
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt, QThread, Signal
from PySide6.QtWidgets import QApplication
from typing_extensions import override

from studio_planner.craft.reminders import Means
from studio_planner.craft.tongue import translate
from studio_planner.services.ports import CannotRing, Notice, Pressed

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.services.ports import Notifier

_SECONDS = 3.0
"""How long the window may take to show something."""


class Watched:
    """Another means, and the key of the notice that it showed last."""

    def __init__(self, notifier: Notifier) -> None:
        """Ring by `notifier`."""
        self._notifier = notifier
        self.shown = ""

    @property
    def means(self) -> str:
        """The other's name."""
        return self._notifier.means

    def ring(self, notice: Notice) -> None:
        """Ring, and remember what was shown."""
        self.shown = ""
        self._notifier.ring(notice)
        self.shown = notice.key

    def pressed(self, seconds: float) -> tuple[Pressed, ...]:
        """The answers given there."""
        return self._notifier.pressed(seconds)


class _InWindow(QObject):
    """Rings in the window's thread, whichever thread has asked for it."""

    _asked = Signal(object)

    def __init__(self, show: Callable[[Notice], str], parent: QObject) -> None:
        """Let `show` show notices; it gives a sentence where that fails, else nothing."""
        super().__init__(parent)
        self._show = show
        self._asked.connect(self._answer, Qt.ConnectionType.QueuedConnection)

    def ring(self, notice: Notice) -> None:
        """Show a notice; CannotRing when that is not possible."""
        if QThread.currentThread() is self.thread():
            why = self._show(notice)
        else:
            why = self._ask(notice)
        if why:
            raise CannotRing(why)

    def pressed(self, seconds: float) -> tuple[Pressed, ...]:  # noqa: ARG002 - no buttons there
        """Nothing: it has no buttons."""
        return ()

    def _ask(self, notice: Notice) -> str:
        answer: Future[str] = Future()
        self._asked.emit((notice, answer))
        try:
            return answer.result(_SECONDS)
        except TimeoutError:
            return translate("due", "The window was too busy to show it.")

    def _answer(self, asked: tuple[Notice, Future[str]]) -> None:
        notice, answer = asked
        if answer.set_running_or_notify_cancel():
            try:
                answer.set_result(self._show(notice))
            except Exception as error:  # noqa: BLE001 - whoever waits has to be told
                answer.set_exception(error)


class TrayMeans(_InWindow):
    """The tray, where the means before it has not reached the maker.

    `always` has it show what is shown already, too; `needed` says whether it was called on the
    last time.
    """

    means = Means.TRAY.value

    def __init__(
        self, show: Callable[[Notice], str], before: Watched | None, parent: QObject
    ) -> None:
        """Show by `show` what `before` has not shown."""
        super().__init__(show, parent)
        self._before = before
        self.always = False
        self.needed = False

    @override
    def ring(self, notice: Notice) -> None:
        """Show a notice unless it is shown already."""
        before = self._before
        if before is not None and before.shown == notice.key and not self.always:
            before.shown = ""
            self.needed = False
            return
        self.needed = True
        super().ring(notice)


class SoundMeans(_InWindow):
    """The computer's own short sound."""

    means = Means.SOUND.value

    def __init__(self, parent: QObject) -> None:
        """Sound where the application runs."""
        super().__init__(_beep, parent)


def _beep(notice: Notice) -> str:
    if notice.sound:
        QApplication.beep()
    return ""
