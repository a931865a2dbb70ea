"""A logger's file, dropped anywhere on the window: it goes to the room that it was read in."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QEvent, QObject
from typing_extensions import override

from studio_planner.desktop.page import Page
from studio_planner.desktop.page_keys import STUDIO
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtCore import QMimeData
    from PySide6.QtGui import QDropEvent
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.notice_line import NoticeLine
    from studio_planner.services.desk import DeskSession

_ENTERS = {QEvent.Type.DragEnter, QEvent.Type.DragMove}
_TABLES = {".csv", ".txt", ".tsv", ".log", ".dat"}


class Dropped(Protocol):
    """What a window does with a file that is a table by its name."""

    session: DeskSession | None
    notice: NoticeLine

    def go_to(self, page: str, key: str = "") -> None:
        """Show another page, and on it the thing of that key."""
        ...

    def page_of(self, key: str) -> QWidget:
        """The page of that key."""
        ...


class LogDrops(QObject):
    """Watches a window for what its pages leave: a page's own files go to the page first."""

    def __init__(self, window: QWidget, desk: Dropped) -> None:
        """Watch a window from now on."""
        super().__init__(window)
        self._desk = desk
        window.setAcceptDrops(True)
        window.installEventFilter(self)

    @override
    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() not in _ENTERS and event.type() is not QEvent.Type.Drop:
            return False
        drop: QDropEvent = event  # type: ignore[assignment]
        paths = tables_in(drop.mimeData())
        if not paths or self._desk.session is None:
            return False
        drop.acceptProposedAction()
        if event.type() is QEvent.Type.Drop:
            self._take(paths)
        return True

    def _take(self, paths: list[Path]) -> None:
        session = self._desk.session
        if session is None:
            return
        if len(paths) > 1:
            text = translate("room", "Drop one file at a time: a logger's CSV.")
            self._desk.notice.say(text, wrong=True)
            return
        if not session.studio.places:
            text = translate("room", "Add a room first; then drop its readings again.")
            self._desk.notice.say(text, wrong=True)
        self._desk.go_to(STUDIO, "room")
        page = self._desk.page_of(STUDIO)
        if isinstance(page, Page):
            page.take_file(paths[0])


def tables_in(data: QMimeData) -> list[Path]:
    """The files among some data that may be tables by their names."""
    paths = [Path(url.toLocalFile()) for url in data.urls() if url.isLocalFile()]
    return [path for path in paths if path.suffix.lower() in _TABLES]
