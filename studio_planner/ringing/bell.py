"""The last means: the terminal's own bell, and the notice in a few lines."""

from __future__ import annotations

from typing import TYPE_CHECKING, TextIO

from studio_planner.craft.reminders import Means
from studio_planner.craft.tongue import translate
from studio_planner.services.ports import CannotRing, Notice, Pressed

if TYPE_CHECKING:
    from collections.abc import Callable

_BELL = "\a"


class TerminalBell:
    """Rings and writes where a maker looks at a terminal; it hears no answers."""

    means = Means.TERMINAL.value

    def __init__(self, stream: Callable[[], TextIO]) -> None:
        """Write to what `stream` gives."""
        self._stream = stream

    def ring(self, notice: Notice) -> None:
        """Ring the bell and write the notice; CannotRing when nobody sees the output."""
        stream = self._stream()
        if not stream.isatty():
            raise CannotRing(
                translate(
                    "ringing", "The terminal's bell was not rung: the output is no terminal."
                )
            )
        bell = _BELL if notice.sound else ""
        lines = [_plain(line) for line in (notice.title, *notice.body.split("\n"))]
        try:
            stream.write(bell + "\n  ".join(lines) + "\n")
            stream.flush()
        except OSError as error:
            raise CannotRing(
                translate("ringing", "The terminal's bell was not rung: {error}.").format(
                    error=error.strerror or error
                )
            ) from error

    def pressed(self, seconds: float) -> tuple[Pressed, ...]:  # noqa: ARG002 - nothing to wait for
        """Nothing: the bell has no buttons."""
        return ()


def _plain(line: str) -> str:
    return "".join(c if c.isprintable() else " " for c in line)
