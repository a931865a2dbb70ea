"""How the rows of the list of what is due lie while the list is being made."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QObject, QPoint, QRect
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QWidget
from typing_extensions import override

from studio_planner.desktop.canvas import Canvas
from studio_planner.desktop.due_pages.due_panel import WIDTH, DuePanel
from studio_planner.desktop.due_pages.due_row import DueRow
from studio_planner.desktop.fonts import fonts_from
from studio_planner.desktop.theme import LIGHT
from studio_planner.services.reminding.due_list import DueItem, DueList
from tests.desktop import scenes

if TYPE_CHECKING:
    from pytestqt.qtbot import QtBot

MANY = 40
MORE_TURNS = 6


def item(number: int, *, missed: bool) -> DueItem:
    """A thing with a title and lines of different lengths."""
    long = "It lies in the warm box and was meant to be turned over before the night. "
    return DueItem(
        uids=(f"thing-{number}",),
        title=f"Weigh now: Harbour board {number}, flood coat" + " and seal" * (number % 4),
        lines=(long * (number % 3 + 1),),
        missed=missed,
        urgent=number % 5 == 0,
        saved=True,
        hours_left=2.0,
        later=scenes.NOW,
        later_words="Later: Tue 20:00; it helps until Tue 21:00.",
        put_off="",
        piece="board",
    )


def due_list(count: int = MANY) -> DueList:
    """So many things, the half of them missed."""
    items = tuple(item(number, missed=number < count // 2) for number in range(count))
    missed = f"Missed while you were away: {count // 2} reminders"
    return DueList(items=items, count=count, missed_words=missed)


class Seen(QObject):
    """Looks at the rows each time that anything of the list is painted."""

    def __init__(self, panel: DuePanel) -> None:
        super().__init__(panel)
        self._panel = panel
        self.looks = 0
        self.wrong: list[str] = []

    @override
    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() is QEvent.Type.Paint and isinstance(watched, DueRow):
            self.looks += 1
            self.wrong += faults(self._panel)
        return False


def faults(panel: DuePanel) -> list[str]:
    """What lies over something else, and what has less room than its words need."""
    rows = [row for row in panel.findChildren(DueRow) if row.isVisible()]
    found = _overlaps(panel, [*rows, panel.missed, panel.now_due])
    for row in rows:
        needed = row.heightForWidth(row.width())
        if row.height() < needed:
            found.append(f"{row.title.text()}: {row.height()} instead of {needed}")
        inside: list[QWidget] = [*row.findChildren(QLabel), *row.findChildren(QPushButton)]
        found += _overlaps(row, inside)
        found += [
            f"{part} out of {row.title.text()}"
            for part in inside
            if part.isVisible() and not row.rect().contains(part.geometry())
        ]
    return found


def _overlaps(over: QWidget, parts: list[QWidget]) -> list[str]:
    seen = [part for part in parts if part.isVisible()]
    places = sorted((_place(over, part) for part in seen), key=lambda rect: rect.top())
    return [f"{a} over {b}" for a, b in pairwise(places) if a.intersects(b)]


def _place(over: QWidget, part: QWidget) -> QRect:
    return QRect(part.mapTo(over, QPoint()), part.size())


@pytest.fixture
def over(qtbot: QtBot) -> QWidget:
    over = QWidget()
    over.resize(900, 700)
    qtbot.addWidget(over)
    over.show()
    return over


@pytest.fixture
def panel(over: QWidget) -> DuePanel:
    canvas = Canvas(LIGHT, fonts_from(QApplication.font()), scenes.NOW)
    canvas.setParent(over)
    panel = DuePanel(canvas, over)
    panel.setGeometry(900 - WIDTH, 0, WIDTH, 700)
    return panel


@pytest.fixture
def seen(panel: DuePanel) -> Seen:
    seen = Seen(panel)
    app = QApplication.instance()
    assert app is not None
    app.installEventFilter(seen)
    return seen


def watch(panel: DuePanel, seen: Seen, count: int) -> None:
    """Draw the list after every turn until it is whole and a little longer, and look at it."""
    after = 0
    for _turn in range(2_000):
        QCoreApplication.processEvents()
        panel.repaint()
        assert not seen.wrong
        after += len(panel.rows) == count
        if after == MORE_TURNS:
            return
    pytest.fail("The list was never whole.")


def test_no_row_lies_over_another_while_a_long_list_is_made(
    panel: DuePanel, seen: Seen
) -> None:
    panel.show_due(due_list())
    panel.enter()
    watch(panel, seen, MANY)
    assert seen.looks


def test_no_row_lies_over_another_while_rows_change_and_others_come(
    panel: DuePanel, seen: Seen
) -> None:
    panel.show_due(due_list())
    panel.enter()
    watch(panel, seen, MANY)
    due = due_list(MANY + 3)
    longer = tuple(replace(one, put_off="Put off: " + one.lines[0]) for one in due.items[7:])
    panel.show_due(replace(due, items=longer))
    watch(panel, seen, len(longer))
    panel.resize(300, 500)
    watch(panel, seen, len(longer))
