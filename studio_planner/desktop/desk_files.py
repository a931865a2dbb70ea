"""Files on the desk: a studio is opened, made new, or copied."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QObject, QTimer

from studio_planner.craft.errors import StudioError
from studio_planner.desktop.idle_work import BREATH_MILLISECONDS
from studio_planner.desktop.page_keys import SET_UP, STUDIO
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.desk_backups import DeskBackups
    from studio_planner.desktop.dialogs import Dialogs
    from studio_planner.desktop.notice_line import NoticeLine
    from studio_planner.desktop.title_bar import TitleBar
    from studio_planner.services.desk import DeskSession
    from studio_planner.services.ports import WallClock


class FilingDesk(Protocol):
    """What files need of the window."""

    clock: WallClock
    session: DeskSession | None
    title_bar: TitleBar
    notice: NoticeLine

    @property
    def backups(self) -> DeskBackups:
        """What makes backups, and knows the newest one."""
        ...

    @property
    def dialogs(self) -> Dialogs:
        """The questions about files."""
        ...

    def enter_typed(self) -> bool:
        """Have what is being typed entered; False when it is refused."""
        ...

    def tell(self, words: str) -> None:
        """Say news that goes by itself."""
        ...

    def go_to(self, page: str, key: str = "") -> None:
        """Show another page."""
        ...

    def attempt(self, action: Callable[[], object]) -> bool:
        """Do what may fail in a sentence."""
        ...

    def show_session(self, session: DeskSession | None) -> None:
        """Show an open studio in place of the one before; None: there is none."""
        ...


class DeskFiles(QObject):
    """Opens studios for the window, and asks the maker which."""

    def __init__(self, desk: FilingDesk, zone: str | None, window: QWidget) -> None:
        """Open on `desk`, asking over `window`; a new studio begins with `zone`."""
        super().__init__(window)
        self._desk = desk
        self._zone = zone
        self._window = window
        self._path_to_open: Path | None = None

    def open_soon(self, path: Path) -> None:
        """Open a studio file as soon as the window has been painted once."""
        self._path_to_open = path
        self._desk.title_bar.say(path.stem, translate("window", "Opening…"))

    def painted(self) -> None:
        """The window has been painted: open what waits for that."""
        path, self._path_to_open = self._path_to_open, None
        if path is not None:
            QTimer.singleShot(0, self, lambda: self._open_in_steps(path))

    def _open_in_steps(self, path: Path) -> None:
        # Reading it and showing it are two waits; a key that is pressed comes between them.
        session = self._read(path)
        QTimer.singleShot(BREATH_MILLISECONDS, self, lambda: self._desk.show_session(session))

    def open_path(self, path: Path) -> bool:
        """Open a studio file; what is wrong with it is said in the notice line.

        What is being typed into the one before is entered first; refused, it stays open.
        """
        if not self._desk.enter_typed():
            return False
        session = self._read(path)
        if session is not None:
            self._desk.show_session(session)
        return session is not None

    def _read(self, path: Path) -> DeskSession | None:
        from studio_planner.services.desk import DeskSession  # noqa: PLC0415 - when needed

        desk = self._desk
        try:
            return DeskSession(path, desk.clock)
        except StudioError as error:
            desk.notice.say(f"{error} {desk.backups.way_back(path)}".strip(), wrong=True)
            return None

    def ask_open(self) -> None:
        """Ask for a studio file and open it."""
        if not self._desk.enter_typed():
            return
        path = self._desk.dialogs.open(self._window, self._folder)
        if path is not None:
            self.open_path(path)

    def ask_new(self) -> None:
        """Ask where a new, empty studio goes, make it and open it."""
        from studio_planner.desktop.new_studio import make_studio  # noqa: PLC0415

        if not self._desk.enter_typed():
            return
        path = self._desk.dialogs.new(self._window, self._folder)
        if path is None or not self._desk.attempt(lambda: make_studio(path, self._zone)):
            return
        if self.open_path(path):
            self._desk.go_to(STUDIO, SET_UP)

    def ask_copy(self) -> None:
        """Ask for a name and save a copy under it; the studio itself stays open."""
        desk, session = self._desk, self._desk.session
        if not desk.enter_typed():
            return
        path = None if session is None else desk.dialogs.copy(self._window, self._folder)
        if path is None or session is None:
            return
        if desk.attempt(lambda: session.save_copy(path, overwrite=True)):
            desk.tell(translate("window", "A copy is saved as {name}.").format(name=path.name))

    @property
    def _folder(self) -> str:
        session = self._desk.session
        return str(session.path.parent) if session else ""
