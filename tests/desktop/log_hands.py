"""What a maker does on the page of the log, and what is asked of it."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from studio_planner.desktop.pages.log_page import LogPage

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from studio_planner.craft.log import EntryKind, LogEntry
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.window import DeskWindow


def log_of(desk: DeskWindow) -> LogPage:
    """Bring the log to the front."""
    desk.changes.plans_by_itself = False
    QTest.keyClick(desk, Qt.Key.Key_7, Qt.KeyboardModifier.ControlModifier)
    found = desk.pages.currentWidget()
    assert isinstance(found, LogPage)
    return found


def studio_of(desk: DeskWindow) -> Studio:
    assert desk.session is not None
    return desk.session.studio


def last(desk: DeskWindow) -> LogEntry:
    return studio_of(desk).log[-1]


def click(button: QWidget) -> None:
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)


def words(page: LogPage) -> str:
    return "\n".join(read.spoken for read in page.happened.list.read)


def choose(page: LogPage, kind: EntryKind, piece: str) -> LogEntry:
    for read in page.happened.list.read:
        if read.row and (read.row.entry.kind, read.row.entry.piece) == (kind, piece):
            page.happened.list.choose_entry(read.row.entry.number)
            return read.row.entry
    pytest.fail("no such entry")


def undone(desk: DeskWindow, before: Studio) -> None:
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before
