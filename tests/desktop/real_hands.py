"""A virtual screen, and a real mouse and real keys upon it: the X server's own test events.

There is no window manager: whoever opens a window gives it the keys with `give_keys`.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from contextlib import contextmanager
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator

SCREEN = (1400, 900)
WHEEL_UP = 4
_LEFT = 1
_NAMED = {" ": "space", "-": "minus", ".": "period", ",": "comma"}


def missing() -> list[str]:
    """What a real screen needs and this computer has not; empty where it can be had."""
    if sys.platform != "linux":
        return ["an X server"]
    return [] if shutil.which("Xvfb") else ["Xvfb"]


@contextmanager
def virtual_screen() -> Iterator[str]:
    """A screen of its own for as long as it is needed; its name."""
    read, write = os.pipe()
    size = "x".join(map(str, (*SCREEN, 24)))
    server = subprocess.Popen(  # noqa: S603 - our own words
        ["Xvfb", "-displayfd", str(write), "-screen", "0", size, "-nolisten", "tcp"],  # noqa: S607
        pass_fds=(write,),
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    os.close(write)
    try:
        with os.fdopen(read) as told:
            yield f":{told.readline().strip()}"
    finally:
        server.terminate()
        server.wait(10)


class Hands:
    """A mouse and keys on one screen."""

    def __init__(self, screen: str) -> None:
        """Take hold of them on the screen of that name."""
        from Xlib import XK, X, display  # noqa: PLC0415 - on Linux only
        from Xlib.ext import xtest  # noqa: PLC0415 - likewise

        self._x, self._keys, self._events = X, XK, xtest
        self._display = display.Display(screen)

    def let_go(self) -> None:
        """Leave the screen."""
        self._display.close()

    def _do(self, kind: int, detail: int = 0, **where: int) -> None:
        self._events.fake_input(self._display, kind, detail, **where)
        self._display.sync()

    def give_keys(self, window: int) -> None:
        """Let a window, by its number on the screen, have the keys from now on."""
        target = self._display.create_resource_object("window", window)
        target.set_input_focus(self._x.RevertToParent, self._x.CurrentTime)
        self._display.sync()

    def move(self, x: int, y: int) -> None:
        """Put the mouse somewhere on the screen."""
        self._do(self._x.MotionNotify, x=x, y=y)

    def click(self, button: int = _LEFT) -> None:
        """Press a button of the mouse and let it go; the wheel is a button too."""
        self._do(self._x.ButtonPress, button)
        self._do(self._x.ButtonRelease, button)

    def drag(self, start: tuple[int, int], end: tuple[int, int], *, steps: int = 12) -> None:
        """Press at one place, go to another one bit by bit, and let go there."""
        self.move(*start)
        self._do(self._x.ButtonPress, _LEFT)
        for step in range(1, steps + 1):
            part = step / steps
            x, y = (round(a + (b - a) * part) for a, b in zip(start, end, strict=True))
            self.move(x, y)
        self._do(self._x.ButtonRelease, _LEFT)

    def _code(self, name: str) -> int:
        return int(self._display.keysym_to_keycode(self._keys.string_to_keysym(name)))

    @contextmanager
    def holding(self, name: str) -> Iterator[None]:
        """Hold a key down: Control_L, Shift_L, Alt_L."""
        self._do(self._x.KeyPress, self._code(name))
        try:
            yield
        finally:
            self._do(self._x.KeyRelease, self._code(name))

    def key(self, name: str) -> None:
        """Press one key and let it go: a letter, Return, Tab, minus."""
        self._do(self._x.KeyPress, self._code(name))
        self._do(self._x.KeyRelease, self._code(name))

    def write(self, text: str) -> None:
        """Type a text of letters, figures and a few signs."""
        for letter in text:
            if letter.isupper():
                with self.holding("Shift_L"):
                    self.key(letter.lower())
            else:
                self.key(_NAMED.get(letter, letter))
