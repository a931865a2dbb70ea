"""The beat of the desk's event loop, and what holds it up; for the benchmarks of the desk."""

from __future__ import annotations

import sys
from collections import Counter
from collections.abc import Generator
from pathlib import Path
from threading import Event, Thread, get_ident
from time import perf_counter
from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from types import FrameType

    Does = Callable[[], Iterator[object] | object]

_BEAT = 2
_LOOK_SECONDS = 0.001
_LONG_MILLISECONDS = 25.0
_DEEPEST, _MOST_PLACES = 60, 45


class Watch:
    """Looks from a thread of its own at what the window's thread is doing.

    It is only for finding causes: looking takes time, so no figure is taken with it.
    """

    def __init__(self) -> None:
        """Look at the thread that makes it."""
        sys.setswitchinterval(_LOOK_SECONDS)
        self._watched = get_ident()
        self._over = Event()
        self._seen: list[tuple[float, tuple[str, ...]]] = []
        Thread(target=self._look, daemon=True).start()

    def _look(self) -> None:
        while not self._over.wait(_LOOK_SECONDS):
            frame = sys._current_frames().get(self._watched)
            if frame is not None:
                self._seen.append((perf_counter(), tuple(_places(frame))))

    def forget(self) -> None:
        """Forget what was seen."""
        self._seen.clear()

    def between(self, begun: float, ended: float) -> str:
        """What was seen in a stretch, as a tree of places with how often each was seen."""
        stacks = [places for when, places in self._seen if begun <= when <= ended]
        counts = Counter(stack[: depth + 1] for stack in stacks for depth in range(len(stack)))
        least = max(len(stacks) // 12, 1)
        often = sorted(places for places, count in counts.items() if count > least)
        lines = [f"{'  ' * len(one)}{counts[one]:3} {one[-1]}" for one in often]
        return "\n".join([f"  {len(stacks)} looks", *lines[:_MOST_PLACES]])


def _places(frame: FrameType) -> list[str]:
    """The functions of a stack that are the program's own, the outermost first."""
    found: list[str] = []
    one: FrameType | None = frame
    while one is not None and len(found) < _DEEPEST:
        path = Path(one.f_code.co_filename)
        if "tests" not in path.parts and "importlib" not in one.f_code.co_filename:
            found.append(f"{path.stem}.{one.f_code.co_qualname}:{one.f_lineno}")
        one = one.f_back
    return found[::-1]


class Heart:
    """Beats in the event loop; the longest pause between two beats is what a maker waits."""

    def __init__(self, watch: Watch | None = None) -> None:
        """Beat from now on; with a `watch`, tell what long pauses are made of."""
        self.longest = 0.0
        self._watch = watch
        self._last = perf_counter()
        self._timer = QTimer()
        self._timer.setInterval(_BEAT)
        self._timer.timeout.connect(self._beat)
        self._timer.start()

    def _beat(self) -> None:
        now = perf_counter()
        pause = (now - self._last) * 1000.0 - _BEAT
        self.longest = max(self.longest, pause)
        if self._watch is not None and pause > _LONG_MILLISECONDS:
            print(f"  {pause:.0f} ms:\n{self._watch.between(self._last, now)}")
        self._last = perf_counter()

    def run(self, does: Does, seconds: float) -> float:
        """Do something in the event loop, let it go on for a while; the longest pause [ms].

        What `does` yields between is done in turns of their own, as fast as a hand is.
        """
        if self._watch is not None:
            self._watch.forget()
        self.longest, self._last = 0.0, perf_counter()
        turns = _turns(does)
        QTimer.singleShot(0, lambda: next(turns, None))
        end = turn = perf_counter()
        end += seconds
        while perf_counter() < end:
            QApplication.processEvents()
            if perf_counter() - turn > _HAND_SECONDS:
                turn = perf_counter()
                QTimer.singleShot(0, lambda: next(turns, None))
        for _ in turns:
            QApplication.processEvents()
        return self.longest


_HAND_SECONDS = 0.03
"""How soon one move of a hand, or one key, follows another."""


def _turns(does: Does) -> Iterator[object]:
    # Even the first part is done when the event loop comes to it.
    done = does()
    if isinstance(done, Generator):
        yield from done
