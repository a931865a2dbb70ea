"""The studio file: one SQLite file that holds a whole studio.

    with open_studio(path) as file:
        studio = file.read()
        file.write(changed, expected_revision=file.revision())

Every change is one transaction on disk. Whatever goes wrong raises StudioFileError with one
sentence and leaves the file as it was.
"""

from __future__ import annotations

from contextlib import contextmanager, suppress
from dataclasses import replace
from threading import RLock
from typing import TYPE_CHECKING, Self, TypeVar

from studio_planner.craft.errors import ChangedElsewhere, StudioFileError
from studio_planner.craft.tongue import translate
from studio_planner.storage.backups import Backup, backup_name, backups_of, no_longer_kept
from studio_planner.storage.file_errors import told_about
from studio_planner.storage.migrating import bring_up_to_date, copy_into, start_file, verify
from studio_planner.storage.migrations import RELEASED, Migration
from studio_planner.storage.opening import connect, require_whole, version_in_header
from studio_planner.storage.placing import clear_left, placed
from studio_planner.storage.rows import (
    branch_of,
    read_plan,
    read_studio,
    write_branch,
    write_studio,
)
from studio_planner.storage.transaction import changing, looking

if TYPE_CHECKING:
    import sqlite3
    from collections.abc import Callable, Iterator, Sequence
    from datetime import datetime
    from pathlib import Path

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio

BUSY_MILLISECONDS = 3000
"""How long to wait for another window before saying that the file is in use."""


_Read = TypeVar("_Read")
_State = tuple[int, int, int]
"""The file's revision, its changes beside plans, and what SQLite counts of other programs."""


class StudioFile:
    """An open studio file. One at a time may use it; a lock sees to that across threads."""

    def __init__(
        self, path: Path, connection: sqlite3.Connection, steps: Sequence[Migration]
    ) -> None:
        """Take over a checked connection; use `open_studio` or `create_studio`."""
        self.path = path
        self._steps = steps
        self._connection = connection
        self._lock = RLock()
        self._known: tuple[_State, Studio] | None = None

    def __enter__(self) -> Self:
        """Give the file itself."""
        return self

    def __exit__(self, *_: object) -> None:
        """Close the file."""
        self.close()

    def close(self) -> None:
        """Close the file; closing twice does nothing."""
        with self._lock:
            self._connection.close()

    def revision(self) -> int:
        """A number that every change raises, by whichever window it was made."""
        with self._used():
            return self._revision()

    def read(self) -> Studio:
        """Read the whole studio as it is now; StudioFileError when a row breaks a rule."""
        with self._used(), looking(self._connection):
            revision = self._revision()
            known = self._still_known(revision) or self._with_another_plan(revision)
            studio = self._read() if known is None else known
            self._known = (self._state(revision), studio)
            return studio

    def write(self, studio: Studio, *, expected_revision: int | None = None) -> int:
        """Replace everything in one change and give the new revision.

        With `expected_revision`, ChangedElsewhere when the file has changed since that one.
        """
        with self._changing(expected_revision) as revision:
            known = self._still_known(revision - 1)
            write_studio(self._connection, studio, known)
            self._connection.execute("UPDATE change_count SET beside_plans = beside_plans + 1")
            state = self._state(revision)
        self._known = (state, studio)
        return revision

    def keep_plan(self, plan: Plan | None, *, expected_revision: int | None = None) -> int:
        """Replace only the plan (None: forget it) and give the new revision.

        A plan that is kept is of the studio as it is: nothing was changed since. With
        `expected_revision`, ChangedElsewhere when the file has changed since that one.
        """
        with self._changing(expected_revision) as revision:
            known = self._still_known(revision - 1)
            write_branch(self._connection, branch_of("plan"), plan)
            self._connection.execute("UPDATE studio SET plan_outdated = 0")
            state = self._state(revision)
        if known is not None:
            self._known = (state, replace(known, plan=plan, plan_outdated=False))
        return revision

    def add_photo(self, key: str, picture: bytes) -> None:
        """Keep a picture under its key; one that is there already stays."""
        with self._used(), changing(self._connection):
            self._connection.execute(
                "INSERT OR IGNORE INTO photo_files VALUES (?, ?)", (key, picture)
            )

    def photo(self, key: str) -> bytes | None:
        """Give the picture of that key, or None where there is none."""
        with self._used():
            row = self._connection.execute(
                "SELECT picture FROM photo_files WHERE key = ?", (key,)
            ).fetchone()
        return None if row is None else bytes(row[0])

    @contextmanager
    def beside(self) -> Iterator[sqlite3.Connection]:
        """One change of what lies beside the studio: reminders, and what a calendar was told.

        It raises no revision: the studio is the same after it.
        """
        with self._used(), changing(self._connection):
            yield self._connection

    def save_copy(self, path: Path, *, overwrite: bool = False) -> None:
        """Write a compact copy to `path`; never over another file unless `overwrite`.

        With that even over another studio: whoever wants a copy under its name has said so.
        """
        if path.exists() and path.samefile(self.path):
            raise StudioFileError(
                translate(
                    "files", "{path} is the open studio itself; choose another name."
                ).format(path=path)
            )
        with (
            self._used(),
            told_about(path),
            placed(path, overwrite=overwrite, over_studios=True) as temporary,
        ):
            self._connection.execute("VACUUM INTO ?", (str(temporary),))

    def back_up(self, folder: Path, now: datetime, *, sparing: Path | None = None) -> Backup:
        """Put a backup made at `now` into `folder`, and let old ones of this studio go.

        The one at `sparing` stays, however old it is. What a kill has left of a backup, or of
        a copy beside the studio, goes too.
        """
        target = folder / backup_name(self.path, now)
        with self._used(), told_about(target):
            folder.mkdir(parents=True, exist_ok=True)
            with placed(target) as temporary:
                copy_into(self._connection, temporary)
                verify(temporary, self._steps)
            for old in no_longer_kept(self.backups(folder), now):
                if old.path == sparing:
                    continue
                with suppress(OSError):  # the new backup stands; the old one goes next time
                    old.path.unlink()
            for place in (folder, self.path.parent):
                clear_left(place, self.path.suffix, now)
        return Backup(made=now, path=target)

    def backups(self, folder: Path) -> tuple[Backup, ...]:
        """The backups of this studio in a folder, newest first."""
        with told_about(folder, reading=True):
            return backups_of(self.path, folder)

    def _with_another_plan(self, revision: int) -> Studio | None:
        """What is known, with the plan that others have kept; None where they did more."""
        if self._known is None:
            return None
        (known_revision, known_beside, _), studio = self._known
        if revision == known_revision or self._beside_plans() != known_beside:
            return None
        plan, outdated = self._told(lambda: read_plan(self._connection))
        return replace(studio, plan=plan, plan_outdated=outdated)

    def _beside_plans(self) -> int:
        (count,) = self._connection.execute("SELECT beside_plans FROM change_count").fetchone()
        return int(count)

    def _still_known(self, revision: int) -> Studio | None:
        if self._known is not None and self._known[0] == self._state(revision):
            return self._known[1]
        return None

    def _state(self, revision: int) -> _State:
        """The state that goes with a studio; asked for inside the transaction it came by.

        After it another window may have written, and its change would be taken for ours.
        """
        # data_version also tells of changes by other programs, which raise no revision.
        (others,) = self._connection.execute("PRAGMA data_version").fetchone()
        return (revision, self._beside_plans(), int(others))

    def _read(self) -> Studio:
        return self._told(lambda: read_studio(self._connection))

    def _told(self, read: Callable[[], _Read]) -> _Read:
        try:
            return read()
        except StudioFileError as error:
            raise StudioFileError(
                translate("files", "{path}: {error}").format(path=self.path, error=error)
            ) from error

    def _revision(self) -> int:
        row = self._connection.execute("SELECT revision FROM change_count").fetchone()
        if row is None:
            raise StudioFileError(
                translate(
                    "files", "{path} is damaged; open a copy of it if you have one."
                ).format(path=self.path)
            )
        return int(row[0])

    @contextmanager
    def _changing(self, expected: int | None) -> Iterator[int]:
        with self._used(), changing(self._connection):
            revision = self._revision()
            if expected is not None and revision != expected:
                raise ChangedElsewhere(
                    translate(
                        "files",
                        "{path} was changed in another window; load it again and repeat the "
                        "change.",
                    ).format(path=self.path)
                )
            yield revision + 1
            self._connection.execute("UPDATE change_count SET revision = revision + 1")

    @contextmanager
    def _used(self) -> Iterator[None]:
        with self._lock, told_about(self.path):
            yield


def open_studio(
    path: Path,
    *,
    busy_milliseconds: int = BUSY_MILLISECONDS,
    steps: Sequence[Migration] = RELEASED,
) -> StudioFile:
    """Open a studio file after checking it; bring an older one up to date (a backup first).

    StudioFileError in one sentence when it is missing, a folder, damaged, another program's,
    from a newer version or in use; the file is left untouched then.
    """
    version_in_header(path, len(steps))
    with told_about(path):
        connection = connect(path, busy_milliseconds)
        try:
            if require_whole(connection, path, steps) < len(steps):
                bring_up_to_date(connection, path, steps)
        except BaseException:
            connection.close()
            raise
    return StudioFile(path, connection, steps)


def create_studio(
    path: Path, studio: Studio, *, steps: Sequence[Migration] = RELEASED
) -> StudioFile:
    """Make a new studio file with that studio in it; StudioFileError when `path` is taken.

    The file appears under its name only when it is complete.
    """
    with told_about(path), placed(path) as temporary:
        connection = connect(temporary, BUSY_MILLISECONDS, mode="rwc")
        try:
            with changing(connection):
                start_file(connection, steps)
                write_studio(connection, studio)
        finally:
            connection.close()
    return open_studio(path, steps=steps)
