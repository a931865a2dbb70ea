"""One thing on the list of what is due, with the maker's three answers."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, QSize, Signal
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop.row_signs import draw_cup
from studio_planner.desktop.side_rows import CUP_HOURS
from studio_planner.desktop.studio_pages.lines import Line, Rule, verb
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.reminding.due_list import DueItem

_SIGN = QSize(22, 22)
_GAP = 8


class _Cup(QWidget):
    """Drains as the time runs out in which it helps to act; the words beside it say when."""

    def __init__(self, canvas: Canvas, parent: QWidget) -> None:
        super().__init__(parent)
        self._canvas = canvas
        self._level: float | None = None
        self.setFixedSize(_SIGN)
        canvas.redrawn.connect(self.update)

    def show_left(self, hours: float | None) -> None:
        """Show how many hours are left; None: it has no end."""
        self._level = None if hours is None else min(max(hours / CUP_HOURS, 0.0), 1.0)
        self.update()

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        if self._level is None:
            return
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            draw_cup(painter, self._canvas.theme, QRectF(2.0, 2.0, 15.0, 17.0), self._level)


class DueRow(QWidget):
    """What it is, until when it helps, and Done, Later and Open.

    Signals:
        done: the maker has answered it.
        later: the maker wants to be told again.
        open_asked: the maker wants to see it.
    """

    done = Signal(str)
    later = Signal(str)
    open_asked = Signal(str)

    def __init__(self, canvas: Canvas, item: DueItem, parent: QWidget) -> None:
        """Show `item`."""
        super().__init__(parent)
        self.uid = item.uid
        self._cup = _Cup(canvas, self)
        self.title = Line(canvas, item.title, self, font="bold")
        self.strong = Line(canvas, "", self, font="bold", colour="now")
        self.words = Line(canvas, "", self, font="small")
        self.told_again = Line(canvas, "", self, font="small", colour="quiet")
        about = item.title
        self.done_verb = verb(translate("due", "Done"), self._done, self, about=about)
        self.later_verb = verb(translate("due", "Later"), self._later, self, about=about)
        self.open_verb = verb(translate("due", "Open"), self._open, self, about=about)
        self._lay_out(canvas)
        self.show_item(item)

    def _lay_out(self, canvas: Canvas) -> None:
        verbs = QHBoxLayout()
        verbs.setSpacing(6)
        for button in (self.done_verb, self.later_verb, self.open_verb):
            verbs.addWidget(button)
        verbs.addStretch(1)
        grid = QGridLayout()
        grid.setHorizontalSpacing(_GAP)
        grid.setVerticalSpacing(2)
        grid.addWidget(self._cup, 0, 0)
        for row, line in enumerate((self.title, self.strong, self.words, self.told_again)):
            grid.addWidget(line, row, 1)
        grid.setColumnStretch(1, 1)
        answers = QHBoxLayout()
        answers.addSpacing(_SIGN.width() + _GAP)
        answers.addLayout(verbs)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 6, 0, 0)
        layout.setSpacing(0)
        layout.addLayout(grid)
        layout.addSpacing(5)
        layout.addLayout(answers)
        layout.addSpacing(8)
        layout.addWidget(Rule(canvas, self))

    def show_item(self, item: DueItem) -> None:
        """Show it as it is now."""
        self._cup.show_left(item.hours_left)
        self.title.say(item.title)
        sign = "\N{BLACK RIGHT-POINTING TRIANGLE}"
        urgent = translate("due", "Can't be saved later.")
        self.strong.say(f"{sign} {urgent}" if item.urgent else "")
        self.words.say(" ".join(item.lines))
        self.told_again.say(item.put_off or item.later_words)
        self.later_verb.setVisible(item.later is not None and not item.put_off)
        self.later_verb.setToolTip(item.later_words)
        self.later_verb.setAccessibleDescription(item.later_words)
        self.done_verb.setAccessibleDescription(item.spoken)
        self.open_verb.setVisible(bool(item.piece or item.order or item.place))

    def _done(self) -> None:
        self.done.emit(self.uid)

    def _later(self) -> None:
        self.later_verb.hide()
        self.later.emit(self.uid)

    def _open(self) -> None:
        self.open_asked.emit(self.uid)
