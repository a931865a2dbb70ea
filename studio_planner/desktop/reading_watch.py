"""Loggers' files that are watched while they grow: looked at every minute, place by place."""

from __future__ import annotations

from contextlib import suppress
from dataclasses import dataclass, replace
from datetime import timedelta
from threading import Thread
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QObject, Signal

from studio_planner.craft.errors import StudioError
from studio_planner.desktop.tongue import counted, translate
from studio_planner.desktop.watched_files import remember_watched, remembered_watched
from studio_planner.services.editing.places import place_of
from studio_planner.services.log_book.growing_file import WatchedFile, grown, taken_growth

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import datetime
    from pathlib import Path
    from zoneinfo import ZoneInfo

    from studio_planner.craft.places import Reading
    from studio_planner.desktop.desk_changes import DeskChanges
    from studio_planner.services.desk import DeskSession
    from studio_planner.services.log_book.growing_file import Growth
    from studio_planner.services.ports import WallClock
    from studio_planner.services.room_logs import LogAsked

EVERY = timedelta(minutes=1)
"""How long a file is left alone after it was looked at."""


class WatchedDesk(Protocol):
    """What watching needs of the window."""

    clock: WallClock
    session: DeskSession | None
    changes: DeskChanges


@dataclass(frozen=True, slots=True)
class Watching:
    """A file that is watched for a place: when it was looked at last, and what came of it."""

    file: WatchedFile
    looked: datetime | None = None
    came: int = 0
    wrong: str = ""


class _Answer(QObject):
    """Carries a look from its thread into the window's."""

    come = Signal(str, object, str)


class ReadingWatch(QObject):
    """Watches for the studio that is open; which files it watches is remembered on this desk.

    Signals:
        changed: the key of a place of which there is something else to say.
    """

    changed = Signal(str)

    def __init__(self, desk: WatchedDesk, parent: QObject) -> None:
        """Watch nothing yet."""
        super().__init__(parent)
        self._desk = desk
        self._studio: Path | None = None
        self._watched: dict[str, Watching] = {}
        self._at_work: Thread | None = None
        self._answer = _Answer(self)
        self._answer.come.connect(self._come)

    def watching(self, place: str) -> Watching | None:
        """What is watched for a place; None where nothing is."""
        self._follow_studio()
        return self._watched.get(place)

    def start(self, place: str, path: Path, asked: LogAsked) -> None:
        """Watch a file for a place from now on, read as `asked` says."""
        self._follow_studio()
        self._watched[place] = Watching(WatchedFile(path=path, asked=asked))
        self._remember()
        self.changed.emit(place)
        self.tick()

    def stop(self, place: str) -> None:
        """Watch nothing for a place any more."""
        if self._watched.pop(place, None) is not None:
            self._remember()
            self.changed.emit(place)

    def tick(self) -> None:
        """Look at what was left alone for a minute, one file at a time."""
        self._follow_studio()
        now, session = self._desk.clock.now(), self._desk.session
        if session is None or self._at_work is not None:
            return
        for key, watching in self._watched.items():
            place = place_of(session.studio, key)
            resting = watching.looked is not None and now - watching.looked < EVERY
            # A clock that was set back must not stop the watching.
            ahead = watching.looked is not None and watching.looked > now
            if place is not None and (ahead or not resting):
                self._watched[key] = replace(watching, looked=now)
                self._look(key, watching.file, session.studio.time_zone, place.readings)
                return

    def _look(
        self, key: str, file: WatchedFile, zone: ZoneInfo, existing: Sequence[Reading]
    ) -> None:
        work = key, file, zone, existing, self._desk.clock.now()
        # A window that is closed meanwhile does not wait for it.
        self._at_work = Thread(target=_look_at, args=(work, self._answer), daemon=True)
        self._at_work.start()

    def _come(self, key: str, growth: Growth | None, wrong: str) -> None:
        self._at_work = None
        watching, session = self._watched.get(key), self._desk.session
        place = None if session is None else place_of(session.studio, key)
        if watching is None or place is None:
            return
        if growth is None or (growth.look is not None and growth.look.questions):
            said = wrong or (" ".join(growth.look.questions) if growth and growth.look else "")
            self._watched[key] = replace(watching, wrong=said)
        else:
            self._take(key, watching, growth)
        self.changed.emit(key)
        self.tick()

    def _take(self, key: str, watching: Watching, growth: Growth) -> None:
        session = self._desk.session
        place = None if session is None else place_of(session.studio, key)
        came = 0 if growth.look is None else growth.look.added
        if place is not None and came:
            change = taken_growth(place, watching.file, growth)
            # Every reading changes the clocks a little; the line over the timeline says when
            # a window has moved so far that it is worth planning again.
            if not self._desk.changes.attempt(change, plans=False):
                return
        self._watched[key] = replace(
            watching, file=growth.watched, came=watching.came + came, wrong=""
        )

    def _follow_studio(self) -> None:
        session = self._desk.session
        path = None if session is None else session.path
        if path == self._studio:
            return
        self._studio = path
        files = {} if path is None else remembered_watched(path)
        self._watched = {
            key: Watching(WatchedFile(path=file, asked=asked))
            for key, (file, asked) in files.items()
        }

    def _remember(self) -> None:
        if self._studio is not None:
            remember_watched(
                self._studio,
                {key: (one.file.path, one.file.asked) for key, one in self._watched.items()},
            )


def watching_words(watching: Watching, when: str) -> str:
    """How watching goes, in a sentence; `when` is the time of the last look."""
    name = watching.file.path.name
    if watching.wrong:
        text = translate("watching", "{name} is watched, but: {why} It is tried again.")
        return text.format(name=name, why=watching.wrong)
    if watching.looked is None:
        return translate("watching", "{name} is watched.").format(name=name)
    came = counted(
        watching.came,
        translate("watching", "{count} reading came"),
        translate("watching", "{count} readings came"),
    )
    text = translate("watching", "{name} is watched every minute; looked at {when}, {came}.")
    return text.format(name=name, when=when, came=came)


def _look_at(
    work: tuple[str, WatchedFile, ZoneInfo, Sequence[Reading], datetime], answer: _Answer
) -> None:
    key, file, zone, existing, now = work
    growth, wrong = None, translate("watching", "The file could not be read.")
    try:
        growth = grown(file, zone, existing, now)
    except StudioError as error:
        wrong = str(error)
    finally:
        with suppress(RuntimeError):  # the window is gone, and nobody waits any more
            answer.come.emit(key, growth, wrong)
