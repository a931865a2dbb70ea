"""Keeping plans in a studio file while better ones are still looked for.

A plan is kept only as long as the file is as it was when it was read for planning: a plan of
pieces that have changed since is worth nothing.
"""

from __future__ import annotations

from threading import Lock, Timer
from time import monotonic
from typing import TYPE_CHECKING, Protocol

from studio_planner.craft.errors import ChangedElsewhere, StudioError
from studio_planner.craft.tongue import translate
from studio_planner.storage.studio_file import open_studio

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from studio_planner.craft.plans import Plan
    from studio_planner.services.plan_again import CheckedPlan

PAUSE_SECONDS = 2.0
"""The least time between two plans that are passed on: each is a change of the file on disk."""


class ChangedMeanwhile(StudioError):  # noqa: N818 - reads as a sentence where it is raised
    """The studio was changed by somebody else while it was planned; the plan is not kept."""


class FileToPlan:
    """A studio file that is planned: the studio as it was read, and a place for its plan."""

    def __init__(self, path: Path) -> None:
        """Read the studio at `path`; StudioFileError in one sentence when that fails."""
        self.path = path
        with open_studio(path) as file:
            self.revision = file.revision()
            self.studio = file.read()

    def keep(self, plan: Plan) -> None:
        """Keep a plan in place of the one before, in one change of the file.

        ChangedMeanwhile when anybody else has changed the file since it was read.
        """
        with open_studio(self.path) as file:
            try:
                self.revision = file.keep_plan(plan, expected_revision=self.revision)
            except ChangedElsewhere as error:
                raise ChangedMeanwhile(
                    translate(
                        "files",
                        "{name} was changed while it was planned, so the plan that was found "
                        "is not kept; plan again.",
                    ).format(name=self.path.name)
                ) from error


class Waiting(Protocol):
    """Something that will happen after a while, unless it is called off."""

    def start(self) -> None:
        """Begin to wait."""
        ...

    def cancel(self) -> None:
        """Call it off."""
        ...


class Paced:
    """Passes better plans on, the first at once, then the newest at most every few seconds.

    A plan that comes during a pause is passed on at its end, unless a better one has come; so
    what was passed on is never far behind the best that is known.
    """

    def __init__(
        self,
        pass_on: Callable[[CheckedPlan], None],
        *,
        pause: float,
        seconds: Callable[[], float] = monotonic,
        later: Callable[[float, Callable[[], None]], Waiting] = Timer,
    ) -> None:
        """Pass on with `pass_on`, then wait for `pause` seconds.

        `seconds` tells a steady time, `later` waits.
        """
        self._pass_on = pass_on
        self._pause = pause
        self._seconds = seconds
        self._later = later
        self._lock = Lock()
        self._free_at = seconds()
        self._newest: CheckedPlan | None = None
        self._waiting: Waiting | None = None
        self._failed: Exception | None = None

    def take(self, made: CheckedPlan) -> None:
        """Take a better plan; raises what passing one on has raised in the meantime."""
        with self._lock:
            self._raise_failed()
            self._newest = made
            pause = self._free_at - self._seconds()
            if pause <= 0.0:
                self._pass_newest()
            elif self._waiting is None:
                self._waiting = self._later(pause, self._pause_over)
                self._waiting.start()

    def end(self) -> None:
        """Take nothing more and forget what still waits; raises as `take` does."""
        with self._lock:
            if self._waiting is not None:
                self._waiting.cancel()
            self._newest = None
            self._raise_failed()

    def _pause_over(self) -> None:
        with self._lock:
            self._waiting = None
            try:
                self._pass_newest()
            except Exception as error:  # noqa: BLE001 - raised where the plans come from
                self._failed = error

    def _pass_newest(self) -> None:
        made, self._newest = self._newest, None
        if made is not None:
            self._pass_on(made)
            self._free_at = self._seconds() + self._pause

    def _raise_failed(self) -> None:
        if self._failed is not None:
            raise self._failed
