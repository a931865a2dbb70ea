"""An open studio on the desk: its file, its kept plan, and what is drawn of it."""

from __future__ import annotations

from contextlib import suppress
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from functools import cached_property
from typing import TYPE_CHECKING, Protocol

from studio_planner.craft.errors import ChangedElsewhere
from studio_planner.craft.settings import Units
from studio_planner.craft.studio import Studio
from studio_planner.craft.timing import Timing
from studio_planner.craft.tongue import translate
from studio_planner.services.backdrop import Backdrop
from studio_planner.services.editing.changes import made
from studio_planner.services.editing.history import History, Step
from studio_planner.services.lanes import lanes_of

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.craft.plans import Plan
    from studio_planner.services.editing.changes import Change
    from studio_planner.services.ports import WallClock
    from studio_planner.services.ribbons import Lane
    from studio_planner.storage.backups import Backup

_BEFORE = timedelta(days=1)
_AFTER = timedelta(days=28)


class FileOfStudio(Protocol):
    """What the desk needs of an open studio file."""

    def read(self) -> Studio:
        """Read the whole studio."""
        ...

    def revision(self) -> int:
        """A number that every change raises."""
        ...

    def write(self, studio: Studio, *, expected_revision: int | None = None) -> int:
        """Replace everything in one change and give the new revision."""
        ...

    def add_photo(self, key: str, picture: bytes) -> None:
        """Keep a picture."""
        ...

    def photo(self, key: str) -> bytes | None:
        """Give a picture."""
        ...

    def save_copy(self, path: Path, *, overwrite: bool = False) -> None:
        """Write a copy."""
        ...

    def back_up(self, folder: Path, now: datetime, *, sparing: Path | None = None) -> Backup:
        """Put a backup into a folder."""
        ...

    def backups(self, folder: Path) -> tuple[Backup, ...]:
        """The backups in a folder, newest first."""
        ...

    def close(self) -> None:
        """Close the file."""
        ...


class DeskView:
    """A studio with its kept plan at one moment; lanes, clocks and backdrop are made lazily."""

    def __init__(self, studio: Studio, now: datetime, before: DeskView | None = None) -> None:
        """See `studio` at `now` (aware), where what was seen `before` may still be of use."""
        self.studio = studio
        self.now = now
        self._known: Timing | None
        self._known_backdrop: Backdrop | None
        self._known, self._known_backdrop = (None, None) if before is None else before.made

    @property
    def made(self) -> tuple[Timing | None, Backdrop | None]:
        """Clocks and backdrop that there are, its own or those it may take over."""
        own = self.__dict__
        return own.get("timing") or self._known, own.get("backdrop") or self._known_backdrop

    @property
    def plan(self) -> Plan | None:
        """The kept plan."""
        return self.studio.plan

    @cached_property
    def timing(self) -> Timing:
        """The clocks, over the same record of time that the plan was made on."""
        plan = self.plan
        starts = [plan.start if plan else self.now, *(p.start for p in self.studio.poured)]
        ends = [self.now, *starts]
        if plan is not None:
            ends += [coat.end for coat in plan.coats]
            ends += [row.safe for row in plan.ready if row.safe is not None]
            ends += [outcome.due for outcome in plan.outcomes]
        start, end = min(starts) - _BEFORE, max(ends) + _AFTER
        known, self._known = self._known, None
        if known is None or not known.start <= start <= end <= known.end:
            # Some room on both sides, so that the next plan fits the same record.
            return Timing(self.studio, start - _BEFORE, end + _AFTER / 4)
        timing = Timing(self.studio, known.start, known.end)
        timing.take_over(known)
        return timing

    @cached_property
    def lanes(self) -> tuple[Lane, ...]:
        """One lane for each piece."""
        return lanes_of(self.studio, self.plan, self.timing)

    @cached_property
    def backdrop(self) -> Backdrop:
        """Nights, hands and air."""
        backdrop = Backdrop(self.studio, self.timing)
        known, self._known_backdrop = self._known_backdrop, None
        if known is not None:
            backdrop.take_over(known)
        return backdrop


class DeskSession:
    """One studio file open on the desk.

    Every method that touches the file lets StudioError pass, in a sentence for the maker.
    """

    def __init__(
        self, path: Path, clock: WallClock, *, opened: FileOfStudio | None = None
    ) -> None:
        """Open the file at `path`, or take over one that is `opened`."""
        self.path = path
        self.clock = clock
        self.history = History()
        self.view: DeskView
        self._plan_words: str | None = None
        self._file = _opened(path) if opened is None else opened
        try:
            self._look()
        except BaseException:
            self._file.close()
            raise

    def _look(self) -> None:
        self.revision = self._file.revision()
        self._see(self._file.read())

    def _see(self, studio: Studio) -> None:
        before = self.__dict__.get("view")
        self.view = DeskView(studio, self.now(), before)

    def now(self) -> datetime:
        """The current instant, aware, in UTC."""
        return self.clock.now().astimezone(UTC)

    @property
    def studio(self) -> Studio:
        """The studio as it was last read."""
        return self.view.studio

    def changed_elsewhere(self) -> bool:
        """Tell whether somebody has changed the file since it was last read."""
        return self._file.revision() != self.revision

    def read_again(self) -> DeskView:
        """Read the file as somebody else has left it; nothing before that can be undone."""
        before = self.revision
        self._look()
        if self.revision != before:
            self.history.forget()
        return self.view

    def apply(self, change: Change) -> bool:
        """Make a change in the file; tell whether anything is different after it.

        InvalidEntry when it breaks a rule, StudioFileError when it cannot be written; the
        studio is as it was then. A change by somebody else in between is read first.
        """
        while True:
            if self.changed_elsewhere():
                self.read_again()
            before = self.studio
            after = made(change, before)
            if after == before:
                return False
            with suppress(ChangedElsewhere):  # somebody was quicker: once more, after theirs
                self._write(after)
                self.history.add(Step(change.words, before, after))
                return True

    def undo(self) -> Step | None:
        """Take the last step back and give it; None when there is none."""
        step = self._free(self.history.undoable)
        if step is not None:
            self._write(step.before)
            self.history.undo()
        return step

    def redo(self) -> Step | None:
        """Do the step that was taken back last again and give it; None when there is none."""
        step = self._free(self.history.redoable)
        if step is not None:
            self._write(step.after)
            self.history.redo()
        return step

    def _free(self, step: Step | None) -> Step | None:
        """Give a step unless somebody else has changed the studio since."""
        if step is not None and self.changed_elsewhere():
            self.read_again()
            return None
        return step

    def _write(self, studio: Studio) -> None:
        self.revision = self._file.write(studio, expected_revision=self.revision)
        self._see(studio)

    def expect_plan(self, words: str | None) -> None:
        """Say what plans that come from now on belong to.

        With `words` they are a step of that name, without them a part of the last step.
        """
        self._plan_words = words

    def take_plan(self) -> DeskView:
        """Read the plan that was kept in the file by our own planning.

        Where somebody else has changed more in the meantime, nothing before that can be undone.
        """
        before, revision = self.studio, self.revision
        self._look()
        if self.revision == revision:
            return self.view
        after = self.studio
        if replace(after, plan=before.plan, plan_outdated=before.plan_outdated) != before:
            self.history.forget()
        elif self._plan_words is not None or self.history.undoable is None:
            words = self._plan_words or translate("planning", "Plan again")
            self.history.add(Step(words, before, after))
            self._plan_words = None
        else:
            self.history.amend(after)
        return self.view

    def add_photo(self, key: str, picture: bytes) -> None:
        """Keep a picture in the file; the piece that it belongs to names its key."""
        self._file.add_photo(key, picture)

    def photo(self, key: str) -> bytes | None:
        """Give the picture of that key, or None where the file has none."""
        return self._file.photo(key)

    def save_copy(self, path: Path, *, overwrite: bool = False) -> None:
        """Write a copy of the studio to another file."""
        self._file.save_copy(path, overwrite=overwrite)

    def back_up(self, folder: Path, now: datetime, *, sparing: Path | None = None) -> Backup:
        """Put a backup of the studio, made at `now`, into a folder."""
        return self._file.back_up(folder, now, sparing=sparing)

    def backups(self, folder: Path) -> tuple[Backup, ...]:
        """The backups of the studio in a folder, newest first."""
        return self._file.backups(folder)

    @property
    def file(self) -> FileOfStudio:
        """The open file, for what lies in it beside the studio."""
        return self._file

    def close(self) -> None:
        """Close the file."""
        self._file.close()


def new_studio(
    path: Path, *, zone: str, units: Units | None = None, currency: str = "EUR"
) -> None:
    """Make an empty studio file, named after the file; StudioFileError when it is taken."""
    from studio_planner.storage.studio_file import create_studio  # noqa: PLC0415 - loaded late

    empty = Studio(
        name=path.stem or "Studio", zone=zone, units=units or Units(), currency=currency
    )
    create_studio(path, empty).close()


def _opened(path: Path) -> FileOfStudio:
    from studio_planner.storage.studio_file import open_studio  # noqa: PLC0415 - loaded late

    return open_studio(path)
