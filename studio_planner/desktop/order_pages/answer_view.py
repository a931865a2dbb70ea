"""The answer to a customer: how the promise stands, when it leaves, and what would help."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QGuiApplication, QPainter
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)
from typing_extensions import override

from studio_planner.craft.tongue import capital
from studio_planner.desktop import words
from studio_planner.desktop.layouts import empty
from studio_planner.desktop.order_pages import answer_words
from studio_planner.desktop.row_signs import draw_square
from studio_planner.desktop.side_rows import Standing, standing_of
from studio_planner.desktop.tongue import translate
from studio_planner.services.caution import deferral

if TYPE_CHECKING:
    from collections.abc import Iterable

    from PySide6.QtGui import QFont, QPaintEvent

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.order_pages.answer_words import Line
    from studio_planner.services.order_answers import OrderAnswer

_SIGN = 18


class StandingSign(QWidget):
    """The square that says how a promise stands, before its word."""

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Start with a promise that is not planned."""
        super().__init__(parent)
        self._canvas = canvas
        self.standing = Standing.OPEN
        self.setFixedSize(QSize(_SIGN, _SIGN))

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        with QPainter(self) as painter:
            draw_square(painter, self._canvas.theme, QRectF(self.rect()), self.standing)


class AnswerView(QWidget):
    """Everything that is known about one order, to be read out on the telephone.

    Signals:
        piece_asked: the key of a piece that the maker wants to see on the plan.
    """

    piece_asked = Signal(str)

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Answer nothing yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._shown: tuple[Studio, OrderAnswer] | None = None
        self._sign = StandingSign(canvas, self)
        self._word = self._label(canvas.fonts.clock)
        self._say = self._label(canvas.fonts.plain)
        self._say.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse
            | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
        self.copy_button = QPushButton(translate("orders", "Copy the sentence"), self)
        self.copy_button.clicked.connect(self._copy)
        self._rows = QVBoxLayout()
        self._rows.setSpacing(10)
        self._lay_out()
        canvas.recoloured.connect(self._again)

    def _lay_out(self) -> None:
        head = QHBoxLayout()
        head.addWidget(self._sign)
        head.addWidget(self._word, 1)
        say = QHBoxLayout()
        say.addWidget(self._say, 1)
        say.addWidget(self.copy_button, 0, Qt.AlignmentFlag.AlignTop)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(10)
        layout.addLayout(head)
        layout.addLayout(say)
        layout.addLayout(self._rows)
        layout.addStretch(1)

    def _label(self, font: QFont, text: str = "", colour: str = "ink") -> QLabel:
        label = QLabel(text, self)
        label.setFont(font)
        label.setWordWrap(True)
        label.setTextFormat(Qt.TextFormat.PlainText)
        palette = label.palette()
        palette.setColor(palette.ColorRole.WindowText, self._canvas.theme.colour(colour))
        label.setPalette(palette)
        return label

    @property
    def spoken(self) -> str:
        """Everything that stands there, line by line."""
        return "\n".join(
            label.text() for label in self.findChildren(QLabel) if label.isVisibleTo(self)
        )

    def _again(self) -> None:
        for label in (self._word, self._say):
            palette = label.palette()
            palette.setColor(palette.ColorRole.WindowText, self._canvas.theme.colour("ink"))
            label.setPalette(palette)
        if self._shown is not None:
            self.show_answer(*self._shown)

    def show_answer(self, studio: Studio, answer: OrderAnswer) -> None:
        """Show the answer for one order."""
        self._shown = (studio, answer)
        self._sign.standing = standing_of(studio, answer.outcome, answer.shipped)
        self._sign.update()
        word = words.promise_word(answer.outcome, studio.settings, answer.shipped)
        self._word.setText(capital(word))
        self._say.setText(answer_words.for_the_customer(studio, answer))
        empty(self._rows)
        self._rows.addWidget(self._table(answer_words.dates(studio, answer)))
        if answer.reason:
            self._add_reason(studio, answer)
        for row in answer.pieces:
            self._rows.addWidget(self._title(words.piece_name(row.piece), row.piece.key))
            if row.reason:
                reason = translate("orders", "Not planned: {reason}").format(reason=row.reason)
                self._rows.addWidget(self._label(self._canvas.fonts.plain, reason, "now"))
            if answer.shipped is None:
                self._rows.addWidget(self._table(answer_words.gate_lines(studio, row)))
        self._rows.addWidget(self._label(self._canvas.fonts.small, deferral(), "quiet"))

    def _add_reason(self, studio: Studio, answer: OrderAnswer) -> None:
        fonts = self._canvas.fonts
        self._rows.addWidget(self._label(fonts.bold, translate("orders", "Why it is late")))
        reason = answer.reason[:1].upper() + answer.reason[1:]
        self._rows.addWidget(self._label(fonts.plain, reason))
        if not answer.changes:
            return
        self._rows.addWidget(self._label(fonts.bold, translate("orders", "What was tried")))
        grid = QWidget(self)
        layout = QGridLayout(grid)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setColumnStretch(1, 1)
        for row, change in enumerate(answer.changes):
            tried = answer_words.tried(studio, change)
            sign = StandingSign(self._canvas, grid)
            sign.standing = Standing.KEPT if tried.enough else Standing.BROKEN
            verdict = (
                translate("orders", "keeps it") if tried.enough else translate("orders", "late")
            )
            layout.addWidget(sign, row, 0, Qt.AlignmentFlag.AlignTop)
            top = Qt.AlignmentFlag.AlignTop
            layout.addWidget(self._label(fonts.plain, tried.change), row, 1, top)
            said = f"{tried.comes}, {verdict}" if change.leaves else tried.comes
            layout.addWidget(self._label(fonts.plain, said, "quiet"), row, 2, top)
        self._rows.addWidget(grid)

    def _title(self, name: str, key: str) -> QWidget:
        row = QWidget(self)
        layout = QHBoxLayout(row)
        layout.setContentsMargins(0, 6, 0, 0)
        layout.addWidget(self._label(self._canvas.fonts.bold, name), 1)
        button = QPushButton(translate("orders", "Show on the plan"), row)
        button.setAccessibleName(f"{button.text()}: {name}")
        button.clicked.connect(lambda: self.piece_asked.emit(key))
        layout.addWidget(button)
        return row

    def _table(self, lines: Iterable[Line]) -> QWidget:
        table = QWidget(self)
        layout = QGridLayout(table)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setVerticalSpacing(3)
        layout.setColumnMinimumWidth(0, 130)
        layout.setColumnStretch(1, 1)
        for row, line in enumerate(lines):
            about = self._label(self._canvas.fonts.plain, line.about, "quiet")
            layout.addWidget(about, row, 0, Qt.AlignmentFlag.AlignTop)
            layout.addWidget(self._label(self._canvas.fonts.plain, line.says), row, 1)
        return table

    def _copy(self) -> None:
        QGuiApplication.clipboard().setText(self._say.text())
