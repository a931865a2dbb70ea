"""What the desk's window has beside its pages; the window stands before any of it."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QMainWindow, QWidget

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from PySide6.QtGui import QAction

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.desk_backups import DeskBackups
    from studio_planner.desktop.desk_changes import DeskChanges
    from studio_planner.desktop.dialogs import Dialogs
    from studio_planner.desktop.due_pages.due_corner import DueCorner
    from studio_planner.desktop.notice_line import NoticeLine
    from studio_planner.desktop.reminding.calendar_files import CalendarFiles
    from studio_planner.desktop.reminding.desk_reminding import DeskReminding
    from studio_planner.desktop.title_bar import TitleBar
    from studio_planner.services.desk import DeskSession
    from studio_planner.services.ports import WallClock, WaysOut
    from studio_planner.services.questions.sentences import Voice


class LateParts(QMainWindow):
    """A window that loads and makes each of these parts when it is first needed.

    Whoever is one makes itself what is only named here: the parts ask for it.
    """

    canvas: Canvas
    title_bar: TitleBar
    notice: NoticeLine
    verbs: dict[str, QAction]
    changes: DeskChanges
    leave: Callable[[], bool]
    come_back: Callable[[], None]

    def __init__(
        self,
        clock: WallClock,
        dialogs: Dialogs | None,
        data_folder: Callable[[], Path] | None,
        ways_out: WaysOut | None,
    ) -> None:
        """Have no part yet; see `DeskWindow`."""
        super().__init__()
        self.clock = clock
        self.session: DeskSession | None = None
        self.whole_desk = QWidget(self)
        self._dialogs = dialogs
        self._data_folder = data_folder
        self._ways_out = ways_out

    @cached_property
    def dialogs(self) -> Dialogs:
        """The questions about files."""
        from studio_planner.desktop.dialogs import Dialogs  # noqa: PLC0415

        return self._dialogs or Dialogs()

    @cached_property
    def backups(self) -> DeskBackups:
        """What makes backups and brings them back."""
        from studio_planner.desktop.desk_backups import DeskBackups  # noqa: PLC0415

        return DeskBackups(self, self._data_folder, self)

    @cached_property
    def reminding(self) -> DeskReminding:
        """What reminds of the studio."""
        from studio_planner.desktop.reminding.desk_reminding import (  # noqa: PLC0415
            DeskReminding,
        )

        return DeskReminding(self, self._ways_out, _voice, self)

    @cached_property
    def due(self) -> DueCorner:
        """The list of what is due."""
        from studio_planner.desktop.due_pages.due_corner import DueCorner  # noqa: PLC0415

        return DueCorner(self, self.title_bar.due, self.reminding, self.whole_desk)

    @cached_property
    def calendars(self) -> CalendarFiles:
        """What writes calendar files."""
        from studio_planner.desktop.reminding.calendar_files import (  # noqa: PLC0415
            CalendarFiles,
        )

        return CalendarFiles(self, _voice, self)

    def offer_due(self) -> None:
        """Offer the list of what is due where this desk reminds of anything."""
        possible, badge = self._ways_out is not None, self.title_bar.due
        badge.setVisible(possible)
        badge.clicked.connect(lambda: self.due.turn())  # noqa: PLW0108 - made then
        self.verbs["due"].setEnabled(possible)

    def look_soon(self) -> None:
        """Look after a pause what is due in the studio, if one is open."""
        if self.session is not None:
            self.reminding.look_soon()

    def enter_typed(self) -> bool:
        """Have what is being typed entered; False when it is refused, which is said then."""
        from studio_planner.desktop.typed_in import enter_typed  # noqa: PLC0415 - when needed

        return enter_typed(self, self.notice)

    def let_go(self) -> None:
        """End what goes on beside the window, and close the studio."""
        if "calendars" in self.__dict__:
            self.calendars.close()
        if self.session is not None:
            self.reminding.close()
            self.session.close()
            self.session = None

    def tell(self, words: str) -> None:
        """Say news in the notice line, from where it goes by itself."""
        self.notice.say(words, passing=self.clock.now())

    def tell_entry(self, words: str) -> None:
        """Say that something was just written down, and what of it can hardly be right."""
        from studio_planner.desktop.entry_news import tell_entry  # noqa: PLC0415 - when needed

        tell_entry(self, words)

    def go_to(self, page: str, key: str = "") -> None:
        """Show another page, and on it the thing of that key."""
        raise NotImplementedError


def _voice(studio: Studio) -> Voice:
    from studio_planner.desktop.timeline_work.voice import DeskVoice  # noqa: PLC0415 - when needed

    return DeskVoice(studio)
