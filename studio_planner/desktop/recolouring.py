"""Other colours for everything on the desk: what is in sight at once, the rest bit by bit."""

from __future__ import annotations

from collections import deque
from typing import TYPE_CHECKING, cast
from weakref import WeakMethod

from PySide6.QtCore import QElapsedTimer, QTimer
from shiboken6 import isValid

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtCore import QObject
    from PySide6.QtWidgets import QWidget

_BITE_MILLISECONDS = 4


class Recolouring:
    """Keeps the methods by which widgets take other colours, as long as there are the widgets.

    The pages behind the one in front hold hundreds of fields: they follow while there is
    nothing else to do, or when they come to the front.
    """

    def __init__(self, parent: QObject) -> None:
        """Know no widget yet; the work that is left to do ends with `parent`."""
        self._all: list[WeakMethod[Callable[[], None]]] = []
        self._left: deque[WeakMethod[Callable[[], None]]] = deque()
        self._idle = QTimer(parent)
        self._idle.setSingleShot(True)
        self._idle.setInterval(0)
        self._idle.timeout.connect(self._bite)

    def connect(self, recolour: Callable[[], None]) -> None:
        """Call that method of a widget whenever the colours are others."""
        self._all.append(WeakMethod(recolour))

    def emit(self) -> None:
        """The colours are others now."""
        self._all = [one for one in self._all if _widget(one) is not None]
        self._left.clear()
        for one in self._all:
            widget = _widget(one)
            if widget is not None and widget.isVisible():
                _call(one)
            else:
                self._left.append(one)
        self._idle.start()

    def finish(self, page: QWidget) -> None:
        """Recolour at once whatever of a page is left: it comes to the front."""
        left, self._left = self._left, deque()
        for one in left:
            widget = _widget(one)
            if widget is not None and (widget is page or page.isAncestorOf(widget)):
                _call(one)
            else:
                self._left.append(one)

    def _bite(self) -> None:
        clock = QElapsedTimer()
        clock.start()
        while self._left and clock.elapsed() < _BITE_MILLISECONDS:
            _call(self._left.popleft())
        if self._left:
            self._idle.start()


def _widget(method: WeakMethod[Callable[[], None]]) -> QWidget | None:
    """The widget of a method; None when it is gone, in Python or in Qt."""
    bound = method()
    widget = None if bound is None else cast("QWidget", bound.__self__)  # type: ignore[attr-defined]
    return widget if widget is not None and isValid(widget) else None


def _call(method: WeakMethod[Callable[[], None]]) -> None:
    bound = method()
    if bound is not None and _widget(method) is not None:
        bound()
