"""Keeping plans in a studio file while better ones are still looked for.

What was changed in the file since it was read for planning is looked at before a plan is kept:
it is kept as it is then, if it still holds.
"""

from __future__ import annotations

from threading import Lock, Timer
from time import monotonic
from typing import TYPE_CHECKING, Protocol

from studio_planner.craft.errors import ChangedElsewhere, NoPlanPossible, StudioError
from studio_planner.craft.tongue import marked, translate
from studio_planner.services.editing.changes import bears_on_plan
from studio_planner.services.plan_again import carried
from studio_planner.storage.studio_file import open_studio

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from datetime import datetime
    from pathlib import Path

    from studio_planner.craft.studio import Studio
    from studio_planner.services.plan_again import CheckedPlan

_TRIES = 5
"""How often a plan is looked at anew because the file was changed while that was done."""

_CHANGED = (
    ("log", marked("files", "what was poured or done")),
    ("places", marked("files", "the rooms or their readings")),
    ("pieces", marked("files", "pieces")),
    ("orders", marked("files", "orders")),
    ("people", marked("files", "hands")),
    ("products", marked("files", "products")),
    ("pins", marked("files", "pinned pours")),
    ("settings", marked("files", "rules of work")),
)
"""Parts of a studio that bear on a plan, and what the maker calls them."""

PAUSE_SECONDS = 2.0
"""The least time between two plans that are passed on: each is a change of the file on disk."""


class ChangedMeanwhile(StudioError):  # noqa: N818 - reads as a sentence where it is raised
    """The studio was changed while it was planned, and the plan does not hold any more."""


class FileToPlan:
    """A studio file that is planned: the studio as it was read, and a place for its plan.

    `as_it_is` is the studio as it was when a plan was kept last.
    """

    def __init__(self, path: Path) -> None:
        """Read the studio at `path`; StudioFileError in one sentence when that fails."""
        self.path = path
        with open_studio(path) as file:
            self.revision = file.revision()
            self.studio = self.as_it_is = file.read()

    def keep(
        self, made: CheckedPlan, until: datetime | None = None, *, last: bool = False
    ) -> CheckedPlan:
        """Keep a plan in place of the one before, in one change of the file.

        Parameters
        ----------
        made
            The plan, of the studio as it was read.
        until
            What it was planned until, if that was asked for.
        last
            Whether no better one comes.

        Returns
        -------
        CheckedPlan
            The plan as it is kept: carried over to what anybody has changed since, so that it
            says what is true now.

        Raises
        ------
        ChangedMeanwhile
            When it does not hold any more; the file is left as it is.
        """
        with open_studio(self.path) as file:
            for _ in range(_TRIES):
                kept = self._carried(made, until, last=last)
                try:
                    # What was looked at is what is written on, or nothing is written.
                    self.revision = file.keep_plan(kept.plan, expected_revision=self.revision)
                except ChangedElsewhere:
                    self.revision = file.revision()
                    self.as_it_is = file.read()
                else:
                    return kept
        raise self._changed(translate("files", "It is changed faster than it can be planned."))

    def _carried(self, made: CheckedPlan, until: datetime | None, *, last: bool) -> CheckedPlan:
        if not bears_on_plan(self.studio, self.as_it_is):
            return made
        try:
            return carried(self.as_it_is, made.plan, until, last=last)
        except NoPlanPossible as error:
            raise self._changed(" ".join(error.reasons)) from error

    def _changed(self, why: str) -> ChangedMeanwhile:
        said = translate(
            "files",
            "{name} was changed while it was planned ({what}), and the plan that was found no "
            "longer holds, so it is not kept; plan again. {why}",
        )
        what = ", ".join(_changed_words(self.studio, self.as_it_is))
        return ChangedMeanwhile(said.format(name=self.path.name, what=what, why=why))


def _changed_words(before: Studio, after: Studio) -> Iterator[str]:
    for field, words in _CHANGED:
        if getattr(before, field) != getattr(after, field):
            yield translate("files", words)


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
