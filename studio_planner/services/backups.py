"""Backups of the open studio: made, looked at, and brought back as one change."""

from __future__ import annotations

from contextlib import contextmanager
from dataclasses import dataclass
from datetime import timedelta
from functools import lru_cache
from typing import TYPE_CHECKING, Protocol

from studio_planner.craft.errors import StudioError
from studio_planner.services.editing.changes import Change

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator
    from datetime import datetime
    from pathlib import Path

    from studio_planner.craft.studio import Studio
    from studio_planner.storage.backups import Backup
    from studio_planner.storage.looking_in import Glance
    from studio_planner.storage.studio_file import StudioFile

FOLDER = "backups"
"""What the folder of backups is called in the maker's own folder."""

_NOUNS = ("people", "places", "products", "pieces", "orders")
_TICK = timedelta(microseconds=1)
_GLANCES = 256


class BackedUp(Protocol):
    """What backups need of an open studio."""

    @property
    def studio(self) -> Studio:
        """The studio as it is now."""
        ...

    def now(self) -> datetime:
        """The current instant, aware, in UTC."""
        ...

    def back_up(self, folder: Path, now: datetime, *, sparing: Path | None = None) -> Backup:
        """Put a backup into a folder."""
        ...

    def backups(self, folder: Path) -> tuple[Backup, ...]:
        """The backups in a folder, newest first."""
        ...

    def photo(self, key: str) -> bytes | None:
        """Give a picture."""
        ...

    def add_photo(self, key: str, picture: bytes) -> None:
        """Keep a picture."""
        ...


@dataclass(frozen=True, slots=True, kw_only=True)
class KeptBackup:
    """One backup: when it was made, where it is, and what is in it; else what is wrong."""

    made: datetime
    path: Path
    holds: Glance | None = None
    fault: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Difference:
    """What bringing a backup back would do to one kind of thing, by the things' names."""

    noun: str
    back: tuple[str, ...]
    gone: tuple[str, ...]
    other: tuple[str, ...]


class Backups:
    """The backups of one open studio, in a folder of the maker's.

    Every method lets StudioFileError pass, in a sentence for the maker.
    """

    def __init__(self, session: BackedUp, folder: Path) -> None:
        """Keep those of `session` in `folder`, which is made when it is first needed."""
        self._session = session
        self.folder = folder

    def all(self) -> tuple[KeptBackup, ...]:
        """Every backup, newest first, with what is in it."""
        return tuple(_looked_at(backup) for backup in self._session.backups(self.folder))

    def make(self, *, sparing: KeptBackup | None = None) -> Backup:
        """Make a backup now; `sparing` stays, however many there are."""
        taken = {backup.made for backup in self._session.backups(self.folder)}
        now = self._session.now()
        while now in taken:
            now += _TICK
        path = None if sparing is None else sparing.path
        return self._session.back_up(self.folder, now, sparing=path)

    def make_for_today(self) -> Backup | None:
        """Make a backup unless there is one of today, by the studio's wall clock."""
        zone = self._session.studio.time_zone
        today = self._session.now().astimezone(zone).date()
        backups = self._session.backups(self.folder)
        if any(backup.made.astimezone(zone).date() == today for backup in backups):
            return None
        return self.make()

    def studio_in(self, kept: KeptBackup) -> Studio:
        """Read the whole studio of a backup, which stays as it is."""
        from studio_planner.storage.looking_in import read_backup  # noqa: PLC0415 - when asked

        return read_backup(kept.path)

    def bringing_back(self, kept: KeptBackup, words: str) -> Change:
        """The change that brings a backup back, called `words`.

        Before, the studio as it is now is backed up, and pictures that it lacks are taken over:
        whatever follows, nothing is lost.
        """
        from studio_planner.storage.looking_in import photo_in  # noqa: PLC0415 - likewise

        studio = self.studio_in(kept)
        self.make(sparing=kept)
        for key in _photos(studio):
            if self._session.photo(key) is None:
                picture = photo_in(kept.path, key)
                if picture is not None:
                    self._session.add_photo(key, picture)
        return Change(words, lambda _now: studio)


class _Beside:
    """A studio as it was at a moment, and its file on a connection of its own."""

    def __init__(self, file: StudioFile, studio: Studio, now: datetime) -> None:
        self.studio = studio
        self._file = file
        self._now = now
        self.back_up, self.backups = file.back_up, file.backups
        self.photo, self.add_photo = file.photo, file.add_photo

    def now(self) -> datetime:
        return self._now


@contextmanager
def backups_beside(
    path: Path, studio: Studio, now: datetime, folder: Path
) -> Iterator[Backups]:
    """The backups of the studio at `path` as it is `now`, for a thread beside the window.

    The file is opened once more for it, so that nobody else's work on it has to wait.
    """
    from studio_planner.storage.studio_file import open_studio  # noqa: PLC0415 - as above

    with open_studio(path) as file:
        yield Backups(_Beside(file, studio, now), folder)


def newest_backup(path: Path, folder: Path) -> Backup | None:
    """The newest backup of a studio that may not open any more; None where there is none."""
    from studio_planner.storage.backups import backups_of  # noqa: PLC0415 - as above

    try:
        return next(iter(backups_of(path, folder)), None)
    except OSError:  # nothing to point to
        return None


def differences(backup: Studio, now: Studio) -> tuple[Difference, ...]:
    """What bringing a backup back would change, kind by kind; kinds that stay are left out."""
    found = []
    for noun in _NOUNS:
        then = {thing.key: thing for thing in getattr(backup, noun)}
        today = {thing.key: thing for thing in getattr(now, noun)}
        difference = Difference(
            noun=noun,
            back=_names(then[key] for key in then if key not in today),
            gone=_names(today[key] for key in today if key not in then),
            other=_names(then[k] for k in then if k in today and then[k] != today[k]),
        )
        if difference.back or difference.gone or difference.other:
            found.append(difference)
    return tuple(found)


class _Named(Protocol):
    @property
    def name(self) -> str: ...


def _names(things: Iterable[_Named]) -> tuple[str, ...]:
    return tuple(thing.name for thing in things)


def _looked_at(backup: Backup) -> KeptBackup:
    try:
        state = backup.path.stat()
    except OSError:  # gone meanwhile: looking in says so
        return _glanced(backup.made, backup.path, 0, 0)
    return _glanced(backup.made, backup.path, state.st_mtime_ns, state.st_size)


@lru_cache(maxsize=_GLANCES)
def _glanced(made: datetime, path: Path, _written: int, _size: int) -> KeptBackup:
    """What is in a backup; a file that was not written since is not opened again."""
    from studio_planner.storage.looking_in import glance_at  # noqa: PLC0415 - as above

    try:
        holds = glance_at(path)
    except StudioError as error:
        return KeptBackup(made=made, path=path, fault=str(error))
    return KeptBackup(made=made, path=path, holds=holds)


def _photos(studio: Studio) -> list[str]:
    return [photo.key for piece in studio.pieces for photo in piece.photos]
