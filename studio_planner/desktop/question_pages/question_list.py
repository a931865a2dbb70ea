"""All questions at the left of the page: what can be tried, and what is answered at once."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import QFrame, QListWidget, QListWidgetItem
from typing_extensions import override

from studio_planner.craft.settings import ClockForm
from studio_planner.desktop.question_pages.voice import question_words
from studio_planner.desktop.tongue import translate
from studio_planner.services.questions.every import QUESTIONS
from studio_planner.services.trying.every import WHAT_IFS

if TYPE_CHECKING:
    from PySide6.QtGui import QResizeEvent
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.canvas import Canvas

_KEY = Qt.ItemDataRole.UserRole
_PAD = 12
_SIDES = 8
"""What a row needs beside its words."""

WIDTH = 268
"""How wide the list is, its scroll bar included."""


class QuestionList(QListWidget):
    """Every question in words, under two heads that cannot be chosen.

    Signals:
        chosen: the key of the question that is chosen.
    """

    chosen = Signal(str)

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """List them all; none is chosen yet."""
        super().__init__(parent)
        self._canvas = canvas
        self.setAccessibleName(translate("questions", "Questions"))
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWordWrap(True)
        self.setFixedWidth(WIDTH)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollMode(QListWidget.ScrollMode.ScrollPerPixel)
        self._head(translate("questions", "Try a change"))
        for what_if in WHAT_IFS:
            self._add(what_if.key, translate("questions", what_if.words))
        self._head(translate("questions", "Answered at once"))
        for question in QUESTIONS:
            self._add(question.key, question_words(question, ClockForm.HOURS_24))
        self.currentItemChanged.connect(lambda *_: self._changed())
        canvas.recoloured.connect(self._recolour)
        self._recolour()

    def _head(self, words: str) -> None:
        item = QListWidgetItem(words)
        item.setFlags(Qt.ItemFlag.NoItemFlags)
        item.setFont(self._canvas.fonts.clock)
        height = round(self._canvas.fonts.plain_height * 1.5) + 2 * _PAD
        item.setSizeHint(QSize(0, height))
        self.addItem(item)

    def show_clock(self, form: ClockForm) -> None:
        """Write the times in the questions as that clock does."""
        timed = {one.key: one for one in QUESTIONS if one.example is not None}
        for row in range(self.count()):
            item = self.item(row)
            question = timed.get(str(item.data(_KEY) or ""))
            if question is not None:
                self._write(item, question_words(question, form))

    def _add(self, key: str, words: str) -> None:
        item = QListWidgetItem()
        item.setData(_KEY, key)
        self._write(item, words)
        self.addItem(item)

    def _write(self, item: QListWidgetItem, words: str) -> None:
        item.setText(words)
        self._fit(item)

    def _fit(self, item: QListWidgetItem) -> None:
        """Make a row as high as its words are where they are wrapped."""
        room, wrap = self.viewport().width() - _SIDES, int(Qt.TextFlag.TextWordWrap)
        lines = self.fontMetrics().boundingRect(0, 0, room, 1000, wrap, item.text())
        item.setSizeHint(QSize(0, max(lines.height() + _PAD, 26)))

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        for row in range(self.count()):
            item = self.item(row)
            if item.data(_KEY):
                self._fit(item)

    def _recolour(self) -> None:
        # A list to choose from lies on the paper; only what is typed into is lighter.
        palette = self._canvas.theme.palette
        palette.setColor(palette.ColorRole.Base, self._canvas.theme.colour("paper"))
        self.setPalette(palette)
        for row in range(self.count()):
            item = self.item(row)
            if not item.data(_KEY):
                item.setForeground(self._canvas.theme.colour("ink"))

    @property
    def current_key(self) -> str:
        """The key of the chosen question; empty when none is."""
        row = self.currentRow()
        return str(self.item(row).data(_KEY) or "") if row >= 0 else ""

    def choose(self, key: str) -> bool:
        """Choose a question by its key; tell whether there is one."""
        for row in range(self.count()):
            if self.item(row).data(_KEY) == key:
                self.setCurrentRow(row)
                return True
        return False

    def _changed(self) -> None:
        if self.current_key:
            self.chosen.emit(self.current_key)
