"""What a page of the desk is, and what it may ask of the window it lies in."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

    from PySide6.QtGui import QAction

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.desk_backups import DeskBackups
    from studio_planner.desktop.desk_changes import DeskChanges
    from studio_planner.desktop.dialogs import Dialogs
    from studio_planner.desktop.notice_line import NoticeLine
    from studio_planner.desktop.reading_watch import ReadingWatch
    from studio_planner.desktop.reminding.calendar_files import CalendarFiles
    from studio_planner.desktop.reminding.desk_reminding import DeskReminding
    from studio_planner.services.desk import DeskSession, DeskView
    from studio_planner.services.ports import WallClock


class PageDesk(Protocol):
    """What a page may ask of the window."""

    canvas: Canvas
    clock: WallClock
    session: DeskSession | None
    changes: DeskChanges
    notice: NoticeLine
    verbs: dict[str, QAction]

    @property
    def backups(self) -> DeskBackups:
        """What makes backups and brings them back."""
        ...

    @property
    def reminding(self) -> DeskReminding:
        """What reminds of the studio."""
        ...

    @property
    def calendars(self) -> CalendarFiles:
        """What writes calendar files."""
        ...

    @property
    def reading_watch(self) -> ReadingWatch:
        """What looks at loggers' files while they grow."""
        ...

    @property
    def dialogs(self) -> Dialogs:
        """The questions about files."""
        ...

    def tell(self, words: str) -> None:
        """Say news that goes by itself."""
        ...

    def tell_entry(self, words: str) -> None:
        """Say that something was just written down, and what of it can hardly be right."""
        ...

    def go_to(self, page: str, key: str = "") -> None:
        """Show another page, and on it the thing of that key."""
        ...

    def weigh(self, piece: str, coat: str) -> None:
        """Take the whole screen to weigh the mix that a coat is poured from."""
        ...


class Page(QWidget):
    """A page: it shows the studio when told to, and what is on it is changed through the desk.

    `show_view` comes whenever the studio is another one while the page is in front, and before
    it comes to the front; a page keeps what is being typed and what is chosen.
    """

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Lie in the window `desk`, of no studio yet."""
        super().__init__(parent)
        self.desk = desk
        self.canvas = desk.canvas

    def show_view(self, view: DeskView | None) -> None:
        """Show a studio as it is now; None: none is open."""
        raise NotImplementedError

    def getting_ready(self) -> Iterator[None]:
        """Make what is not seen at first, in parts, while nobody waits for it."""
        yield from ()

    def choose(self, key: str) -> None:
        """Choose the thing of that key, where the page has it."""

    def take_file(self, path: Path) -> None:
        """Take a file that was dropped on the window, where the page has a use for it."""

    def take_focus(self) -> None:
        """Give the keyboard to the first list of the page, or else to its first field."""
        focus_first(self)

    @property
    def chosen(self) -> str:
        """The key of the thing that is chosen; empty where nothing is, or nothing can be."""
        return ""


def focus_first(widget: QWidget) -> None:
    """Give the keyboard to the first list that is seen in a widget, or else its first field."""
    from PySide6.QtWidgets import QAbstractItemView  # noqa: PLC0415 - the window stands before

    inside = [one for one in _in_order(widget) if _takes_keys(one)]
    lists = [one for one in inside if isinstance(one, QAbstractItemView)]
    for first in (lists or inside)[:1]:
        first.setFocus(Qt.FocusReason.ShortcutFocusReason)


def _in_order(widget: QWidget) -> Iterator[QWidget]:
    """What lies in a widget, in the order in which Tab goes through it."""
    one = widget.nextInFocusChain()
    while one is not None and one is not widget:
        if widget.isAncestorOf(one):
            yield one
        one = one.nextInFocusChain()


def _takes_keys(widget: QWidget) -> bool:
    by_tab = widget.focusPolicy() & Qt.FocusPolicy.TabFocus
    return bool(by_tab) and widget.isVisible() and widget.isEnabled()
