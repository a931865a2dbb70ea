"""What was done to a studio since it was opened, so that it can be undone and done again."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio

_MOST = 500
"""Steps that are kept; studios share what did not change, so a step costs little."""


@dataclass(frozen=True, slots=True)
class Step:
    """One step: what it is called, and the studio before and after it."""

    words: str
    before: Studio
    after: Studio


class History:
    """Steps that can be undone, and steps that were undone and can be done again."""

    def __init__(self) -> None:
        """Start without a step."""
        self._done: list[Step] = []
        self._undone: list[Step] = []

    @property
    def undoable(self) -> Step | None:
        """The step that would be undone next."""
        return self._done[-1] if self._done else None

    @property
    def redoable(self) -> Step | None:
        """The step that would be done again next."""
        return self._undone[-1] if self._undone else None

    def add(self, step: Step) -> None:
        """Remember a step; what was undone before cannot be done again any more."""
        self._done.append(step)
        del self._done[:-_MOST]
        self._undone.clear()

    def amend(self, after: Studio) -> None:
        """Let the last step end in another studio: a plan that followed belongs to it."""
        if self._done:
            self._done[-1] = replace(self._done[-1], after=after)
        if self._undone:
            # What is done again goes on from there, and going back ends there.
            self._undone[-1] = replace(self._undone[-1], before=after)

    def undo(self) -> None:
        """Take the last step back."""
        self._undone.append(self._done.pop())

    def redo(self) -> None:
        """Do again what was taken back last."""
        self._done.append(self._undone.pop())

    def forget(self) -> None:
        """Forget every step: somebody else has changed the studio in between."""
        self._done.clear()
        self._undone.clear()
