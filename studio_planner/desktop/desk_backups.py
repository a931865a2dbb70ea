"""Backups on the desk: one a day by itself, others when asked, and one brought back."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol, cast

from PySide6.QtCore import QObject, QTimer, Signal

from studio_planner.desktop.thread_work import ThreadWork
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from PySide6.QtGui import QAction
    from PySide6.QtWidgets import QWidget

    from studio_planner.craft.errors import StudioError
    from studio_planner.desktop.desk_changes import DeskChanges
    from studio_planner.desktop.notice_line import NoticeLine
    from studio_planner.desktop.thread_work import Then
    from studio_planner.services.backups import Backups, KeptBackup
    from studio_planner.services.desk import DeskSession
    from studio_planner.services.editing.changes import Change

WAIT_MILLISECONDS = 1500
"""How long after a studio was opened its backup is made: what is on screen comes first."""


class BackedUpDesk(Protocol):
    """What backups need of the window."""

    session: DeskSession | None
    notice: NoticeLine
    changes: DeskChanges
    verbs: dict[str, QAction]

    def tell(self, words: str) -> None:
        """Say news that goes by itself."""
        ...


class DeskBackups(QObject):
    """Makes backups of the studio on the desk, where the maker's own folder is known.

    Signals:
        made: there is another backup.
    """

    made = Signal()

    def __init__(
        self, desk: BackedUpDesk, data_folder: Callable[[], Path] | None, parent: QWidget
    ) -> None:
        """Keep backups in a folder of `data_folder`, which is asked when first needed."""
        super().__init__(parent)
        self._desk = desk
        self._data_folder = data_folder
        self.work = ThreadWork(self)
        self._wait = QTimer(self)
        self._wait.setSingleShot(True)
        self._wait.setInterval(WAIT_MILLISECONDS)
        self._wait.timeout.connect(self.make_for_today)

    @property
    def possible(self) -> bool:
        """Whether there is a studio to back up, and a folder to put it into."""
        return self._desk.session is not None and self._data_folder is not None

    def of_studio(self) -> Backups | None:
        """The backups of the studio on the desk; None where there can be none."""
        from studio_planner.services.backups import FOLDER, Backups  # noqa: PLC0415 - when needed

        session = self._desk.session
        if session is None or self._data_folder is None:
            return None
        return Backups(session, self._data_folder() / FOLDER)

    def way_back(self, path: Path) -> str:
        """Where the newest backup is of a studio that does not open; empty without one."""
        from studio_planner.services.backups import FOLDER, newest_backup  # noqa: PLC0415

        folder = None if self._data_folder is None else self._data_folder() / FOLDER
        found = None if folder is None else newest_backup(path, folder)
        if found is None:
            return ""
        return translate(
            "backups", "Its newest backup is {path}: open that and save a copy of it."
        ).format(path=found.path)

    def offer(self) -> None:
        """Offer to back up where that is possible."""
        self._desk.verbs["back up"].setEnabled(self.possible)

    def make_soon(self) -> None:
        """Make today's backup of a studio that has just been opened, a little later."""
        if self.possible:
            self._wait.start()

    def make_for_today(self) -> None:
        """Make today's backup unless there is one; only a failure is spoken of."""
        self._beside(lambda backups: backups.make_for_today(), self._made_for_today)

    def _made_for_today(self, made: object, wrong: StudioError | None) -> None:
        if wrong is not None:
            said = translate("backups", "Today's backup was not made. {why}")
            self._desk.notice.say(said.format(why=wrong))
        elif made is not None:
            self.made.emit()

    def make_now(self) -> bool:
        """Make a backup because the maker wants one; tell whether it has begun."""
        return self._beside(lambda backups: backups.make(), self._made_now)

    def _made_now(self, _made: object, wrong: StudioError | None) -> None:
        if self._refused(wrong):
            return
        self._desk.tell(
            translate("backups", "Backed up. It is with the others of this studio.")
        )
        self.made.emit()

    def bring_back(self, kept: KeptBackup, when: str) -> bool:
        """Bring a backup of `when` (in words) back as one change; tell whether it begins."""
        words = translate("backups", "Bring back the backup of {when}").format(when=when)
        path = None if self._desk.session is None else self._desk.session.path

        def brought(change: object, wrong: StudioError | None) -> None:
            session = self._desk.session
            if self._refused(wrong) or session is None or session.path != path:
                return
            self.made.emit()
            if self._desk.changes.attempt(cast("Change", change)):
                said = translate(
                    "backups",
                    "The studio is as it was on {when}. How it was before is in a backup, and "
                    "can be undone.",
                )
                self._desk.tell(said.format(when=when))

        return self._beside(lambda backups: backups.bringing_back(kept, words), brought)

    def _refused(self, wrong: StudioError | None) -> bool:
        if wrong is not None:
            self._desk.notice.say(str(wrong), wrong=True)
        return wrong is not None

    def _beside(self, work: Callable[[Backups], object], then: Then) -> bool:
        """Work on the backups of the studio as it is now, in a thread of its own."""
        from studio_planner.services.backups import FOLDER, backups_beside  # noqa: PLC0415

        session, data_folder = self._desk.session, self._data_folder
        if session is None or data_folder is None:
            return False
        path, studio, now = session.path, session.studio, session.now()

        def done() -> object:
            with backups_beside(path, studio, now, data_folder() / FOLDER) as backups:
                return work(backups)

        self.work.do(done, then)
        return True
