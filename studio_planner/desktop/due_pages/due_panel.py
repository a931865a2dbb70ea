"""The list of what is due, over the right edge of the desk; it stays until it is answered."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QPainter, QShortcut
from PySide6.QtWidgets import (
    QApplication,
    QFrame,
    QHBoxLayout,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)
from typing_extensions import override

from studio_planner.craft.reminders import Means, reminder_word
from studio_planner.craft.tongue import capital
from studio_planner.desktop.due_pages.column import Column
from studio_planner.desktop.due_pages.due_row import DueRow
from studio_planner.desktop.idle_work import IdleWork
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import counted, translate

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from PySide6.QtGui import QPaintEvent

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.reminding.due_list import DueItem, DueList

WIDTH = 460
_AT_ONCE = 6
"""As many are seen at first; the others are made after them."""

_SIGN = "\N{BLACK RIGHT-POINTING TRIANGLE}"


class DuePanel(QWidget):
    """What is due and what was missed, each under its heading, the most pressing first.

    Signals:
        done: the names of reminders that the maker has answered.
        later: the names of reminders that are to be told again.
        cleared: take off the list what it is too late for.
        put_back: put what was taken off last on the list again.
        open_asked: the DueItem that the maker wants to see.
        settings_asked: how the studio reminds.
        closed: the list was closed.
    """

    done = Signal(object)
    later = Signal(object)
    cleared = Signal()
    put_back = Signal()
    open_asked = Signal(object)
    settings_asked = Signal()
    closed = Signal()

    def __init__(self, canvas: Canvas, parent: QWidget) -> None:
        """Show nothing yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._items: dict[str, DueItem] = {}
        self.rows: dict[str, DueRow] = {}
        # It hides what it lies over, which is then not drawn anew with it.
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self.setAccessibleName(translate("due", "What is due"))
        self.count = Line(canvas, "", self, font="clock")
        self.close_verb = verb(translate("due", "Close"), self.leave, self)
        self.close_verb.setAccessibleName(translate("due", "Close the list of what is due"))
        self._column = column = Column(self)
        self.missed = Line(canvas, "", column, font="bold")
        self.now_due = Line(canvas, translate("due", "Due now"), column, font="bold")
        self.empty = Line(canvas, "", column)
        self.more = Line(canvas, "", column, colour="quiet")
        self.clear_verb = verb(
            translate("due", "Take off all that is too late"), self.cleared.emit, self
        )
        self.taken_off = Line(canvas, "", self, font="small", colour="quiet")
        self.back_verb = verb(translate("due", "Put it back"), self.put_back.emit, self)
        self.failures = Line(canvas, "", self, font="small", colour="now")
        self.settings_verb = verb(
            translate("due", "How the studio reminds…"), self.settings_asked.emit, self
        )
        self._rest = IdleWork(self)
        self._lay_out()
        close = QShortcut(QKeySequence(Qt.Key.Key_Escape), self)
        close.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        close.activated.connect(self.leave)
        canvas.redrawn.connect(self.update)
        self.hide()

    def _lay_out(self) -> None:
        head = QHBoxLayout()
        head.addWidget(self.count, 1)
        head.addWidget(self.close_verb)
        scroll = QScrollArea(self)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setWidgetResizable(True)
        scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.viewport().setAutoFillBackground(False)
        scroll.setWidget(self._column)
        self._column.setAutoFillBackground(False)
        back = QHBoxLayout()
        back.addWidget(self.taken_off, 1)
        back.addWidget(self.back_verb)
        foot = QHBoxLayout()
        foot.addWidget(self.clear_verb)
        foot.addStretch(1)
        foot.addWidget(self.settings_verb)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(18, 10, 14, 12)
        layout.setSpacing(8)
        layout.addLayout(head)
        layout.addWidget(scroll, 1)
        layout.addLayout(back)
        layout.addWidget(self.failures)
        layout.addLayout(foot)

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        theme = self._canvas.theme
        with QPainter(self) as painter:
            painter.fillRect(self.rect(), theme.colour("paper"))
            painter.fillRect(0, 0, 2, self.height(), theme.colour("ink"))

    def enter(self) -> None:
        """Come up, with the keys on the first answer."""
        self.show()
        self.raise_()
        first = next(iter(self.rows.values()), None)
        target = self.close_verb if first is None else first.done_verb
        target.setFocus(Qt.FocusReason.OtherFocusReason)

    def leave(self) -> None:
        """Go; the list stays as it is."""
        self.hide()
        self.closed.emit()

    def show_due(self, due: DueList | None) -> None:
        """Show the list as it is now; None: nobody has looked yet."""
        items = () if due is None else due.items
        self._items = {item.uid: item for item in items}
        count = 0 if due is None else due.count
        self.count.say(
            counted(
                count,
                translate("due", "{count} thing is due"),
                translate("due", "{count} things are due"),
            )
            if count
            else translate("due", "Nothing is due")
        )
        begun = max(_AT_ONCE, len(self.rows))
        self._show_items(items[:begun], due)
        # Many rows are many widgets: they follow while nobody waits.
        self._rest.do(self._showing(items, begun, due))
        left = count - len(items)
        more = translate("due", "{count} more come up as these are answered.")
        self.more.say(more.format(count=left) if left > 0 else "")
        self.clear_verb.setVisible(due is not None and due.too_late > 0)
        self._show_taken_off("" if due is None else due.taken_off_words)

    def _show_taken_off(self, words: str) -> None:
        """Say what was taken off the list last, to be put back; empty for nothing."""
        said = translate("due", "Taken off the list: {what}.").format(what=words)
        self.taken_off.say(said if words else "")
        self.back_verb.setVisible(bool(words))
        self.back_verb.setAccessibleDescription(self.taken_off.text())

    def _showing(
        self, items: tuple[DueItem, ...], begun: int, due: DueList | None
    ) -> Iterator[None]:
        for shown in range(begun, len(items)):
            self._show_items(items[: shown + 1], due)
            yield

    def _show_items(self, items: tuple[DueItem, ...], due: DueList | None) -> None:
        self._show_rows(items)
        self._arrange(items, due)

    def _show_rows(self, items: tuple[DueItem, ...]) -> None:
        wanted = {item.uid for item in items}
        focused = next((uid for uid, row in self.rows.items() if _has_keys(row)), "")
        order = list(self.rows)
        for uid in [uid for uid in self.rows if uid not in wanted]:
            gone = self.rows.pop(uid)
            gone.hide()
            gone.deleteLater()
        for item in items:
            row = self.rows.get(item.uid)
            if row is None:
                self.rows[item.uid] = self._made(item)
            else:
                row.show_item(item)
        if focused and focused not in self.rows:
            self._pass_keys_on(order.index(focused))

    def _made(self, item: DueItem) -> DueRow:
        row = DueRow(self._canvas, item, self._column)
        row.show()  # what is not shown yet does not know how high it will be
        row.done.connect(lambda uid: self.done.emit(self._items[uid].uids))
        row.later.connect(lambda uid: self.later.emit(self._items[uid].uids))
        row.open_asked.connect(lambda uid: self.open_asked.emit(self._items.get(uid)))
        return row

    def _pass_keys_on(self, place: int) -> None:
        """Whoever answers with the keys goes on with the next one."""
        left = list(self.rows.values())
        target = left[min(place, len(left) - 1)].done_verb if left else self.close_verb
        target.setFocus(Qt.FocusReason.OtherFocusReason)

    def _arrange(self, items: tuple[DueItem, ...], due: DueList | None) -> None:
        """Put each under its heading; the heading over the most pressing one comes first."""
        groups = {one.missed: [i for i in items if i.missed is one.missed] for one in items}
        self.missed.say(due.missed_words if due is not None and True in groups else "")
        self.now_due.setVisible(len(groups) > 1)
        wanted: list[QWidget] = []
        for missed, members in groups.items():
            wanted.append(self.missed if missed else self.now_due)
            wanted += [self.rows[item.uid] for item in members]
        self.rows = {item.uid: self.rows[item.uid] for one in groups.values() for item in one}
        self.empty.say("" if items else _nothing(due))
        self._column.put([*wanted, self.more, self.empty])

    def show_failures(self, outcomes: Mapping[str, str], trouble: str) -> None:
        """Say which means did not reach the maker, and why."""
        lines = [f"{_SIGN} {trouble}"] if trouble else []
        for means, why in outcomes.items():
            if why:
                lines.append(f"{_SIGN} {capital(reminder_word(Means(means)))}: {why}")
        self.failures.say("\n".join(lines))


def _nothing(due: DueList | None) -> str:
    if due is None:
        return translate("due", "Looking what is due…")
    said = translate(
        "due", "What comes due is listed here and stays until you have answered it."
    )
    return f"{due.next_words}\n\n{said}" if due.next_words else said


def _has_keys(row: DueRow) -> bool:
    focus = QApplication.focusWidget()
    return focus is not None and row.isAncestorOf(focus)
