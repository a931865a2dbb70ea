"""An answer: its sign and verdict, then a line for each reason, then who decides."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QHBoxLayout, QLabel, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop.question_pages.voice import QuestionVoice
from studio_planner.desktop.row_signs import draw_square
from studio_planner.desktop.side_rows import Standing
from studio_planner.desktop.tongue import translate
from studio_planner.services.caution import deferral
from studio_planner.services.questions.asking import Answer, Sign

if TYPE_CHECKING:
    from PySide6.QtGui import QFont, QPaintEvent

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas

_SIDE = 20
_STANDINGS = {
    Sign.YES: Standing.KEPT,
    Sign.CARE: Standing.TIGHT,
    Sign.NO: Standing.BROKEN,
    Sign.OPEN: Standing.OPEN,
}
_DASH = "\N{EN DASH}"


class SignMark(QWidget):
    """A full, half, broken or empty square before the verdict, which says the same."""

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Start empty."""
        super().__init__(parent)
        self._canvas = canvas
        self.sign = Sign.OPEN
        self.setFixedSize(_SIDE, _SIDE)

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        with QPainter(self) as painter:
            area = QRectF(self.rect())
            draw_square(painter, self._canvas.theme, area, _STANDINGS[self.sign])


class AnswerView(QWidget):
    """The answer to one question."""

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Answer nothing yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._shown: tuple[Studio, Answer] | None = None
        self._mark = SignMark(canvas, self)
        self._verdict = QLabel(self)
        self._lines = QLabel(self)
        self._caution = QLabel(self)
        for label in (self._verdict, self._lines, self._caution):
            label.setWordWrap(True)
            label.setTextFormat(Qt.TextFormat.PlainText)
            label.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        head = QHBoxLayout()
        head.setSpacing(10)
        head.addWidget(self._mark, 0, Qt.AlignmentFlag.AlignTop)
        head.addWidget(self._verdict, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(10)
        layout.addLayout(head)
        layout.addWidget(self._lines)
        layout.addWidget(self._caution)
        canvas.recoloured.connect(self._recolour)
        self._recolour()
        self.clear()

    @property
    def verdict(self) -> str:
        """What it comes to; empty while there is no answer."""
        return self._verdict.text() if self._shown is not None else ""

    @property
    def lines(self) -> list[str]:
        """The reasons, line by line."""
        text = self._lines.text() if self._shown is not None else ""
        return [line.removeprefix(f"{_DASH} ") for line in text.splitlines()]

    @property
    def sign(self) -> Sign:
        """The sign before the verdict."""
        return self._mark.sign

    def clear(self) -> None:
        """Answer nothing any more."""
        self._shown = None
        self.hide()

    def show_answer(self, studio: Studio, answer: Answer) -> None:
        """Show an answer, in the words of a studio."""
        self._shown = (studio, answer)
        voice = QuestionVoice(studio)
        self._mark.sign = answer.sign
        self._mark.update()
        self._verdict.setText(answer.verdict.words(voice))
        sign = translate("questions", str(answer.sign))
        self._verdict.setAccessibleName(f"{sign}: {self._verdict.text()}")
        self._lines.setText("\n".join(f"{_DASH} {one}" for one in voice.all_of(answer.lines)))
        self._lines.setVisible(bool(answer.lines))
        self._caution.setText(deferral())
        self._caution.setVisible(answer.caution)
        self.show()

    def _recolour(self) -> None:
        fonts = self._canvas.fonts
        _paint(self._verdict, fonts.clock, self._canvas, "ink")
        _paint(self._lines, fonts.plain, self._canvas, "ink")
        _paint(self._caution, fonts.small, self._canvas, "quiet")
        self._mark.update()


def _paint(label: QLabel, font: QFont, canvas: Canvas, colour: str) -> None:
    label.setFont(font)
    palette = label.palette()
    palette.setColor(palette.ColorRole.WindowText, canvas.theme.colour(colour))
    label.setPalette(palette)
