"""What lies where on the weigh view, and how large it is."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QFontMetricsF
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QPushButton,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)
from typing_extensions import override

from studio_planner.desktop.big_screen import letters, target_pixels
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.weigh.cover_sheet import CoverSheet
from studio_planner.desktop.weigh.cup_clock import CupClock
from studio_planner.desktop.weigh.digit_pad import DigitPad
from studio_planner.desktop.weigh.verdict_line import VerdictLine

if TYPE_CHECKING:
    from PySide6.QtGui import QResizeEvent

    from studio_planner.desktop.canvas import Canvas

_SHARES = {"number": 0.2, "verb": 0.075, "about": 0.04, "line": 0.03, "small": 0.026}
"""How high each kind of line is, in parts of the window's height."""

_NUMBER_ROOM, _NUMBER_ALONE = 0.4, 0.52
"""How wide the number may be beside what it means, and alone, in parts of the window."""

_TARGET_SHARE, _KEY_SHARE, _READOUT_SHARE = 0.045, 0.06, 0.085
_LEAST_BUTTON = 48


class WeighScreen(QWidget):
    """The parts of the weigh view; what they say and do is told to them."""

    def __init__(self, canvas: Canvas, parent: QWidget | None) -> None:
        """Lay the parts out."""
        super().__init__(parent, Qt.WindowType.Window)
        self.canvas = canvas
        self.setWindowTitle(translate("weigh", "Weigh - Studio planner"))
        self.head = self._label("line")
        self.verb = self._label("verb")
        self.about = self._label("about")
        self.number = self._label("number")
        self.number.setWordWrap(False)
        self.meaning = self._label("about")
        self.reads = self._label("about")
        self.said = VerdictLine(canvas, self)
        self.said.setProperty("kind", "line")
        self.clock = CupClock(canvas, self)
        self.pad = DigitPad(self)
        self.cover = CoverSheet(self)
        self.right = QStackedWidget(self)
        for part in (self.cover, self.clock, self.pad):
            self.right.addWidget(part)
        self.target = QPushButton(self)
        self.other = QPushButton(self)
        self.back = QPushButton(self)
        self.leave = QPushButton(translate("weigh", "Leave the scale"), self)
        self.sound = QPushButton(self)
        self.give_up = QPushButton(translate("weigh", "Throw this mix away…"), self)
        for button in (self.leave, self.give_up):
            button.setAccessibleName(button.text())
        self._lay_out()
        canvas.recoloured.connect(self.recolour)
        self.recolour()

    def _label(self, kind: str) -> QLabel:
        label = QLabel(self)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setWordWrap(True)
        label.setProperty("kind", kind)
        return label

    def _lay_out(self) -> None:
        head = QHBoxLayout()
        head.addWidget(self.head, 1)
        head.addWidget(self.sound)
        head.addWidget(self.give_up)
        number = QHBoxLayout()
        number.setSpacing(20)
        number.addWidget(self.number)
        number.addWidget(self.meaning, 1, Qt.AlignmentFlag.AlignBottom)
        step = QVBoxLayout()
        step.addWidget(self.verb)
        step.addWidget(self.about)
        step.addLayout(number)
        step.addWidget(self.reads)
        step.addSpacing(8)
        step.addWidget(self.said)
        step.addStretch(1)
        middle = QHBoxLayout()
        middle.setSpacing(32)
        middle.addLayout(step, 5)
        middle.addWidget(self.right, 4)
        verbs = QHBoxLayout()
        verbs.setSpacing(16)
        for button, share in (
            (self.target, 6),
            (self.other, 4),
            (self.back, 3),
            (self.leave, 2),
        ):
            verbs.addWidget(button, share)
        layout = QVBoxLayout(self)
        # What stands in it changes while it is shown; the screen is as large as it is.
        layout.setSizeConstraint(QVBoxLayout.SizeConstraint.SetNoConstraint)
        layout.setContentsMargins(32, 16, 32, 24)
        layout.setSpacing(12)
        layout.addLayout(head)
        layout.addLayout(middle, 1)
        layout.addLayout(verbs)

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        bold, plain = self.canvas.fonts.bold, self.canvas.fonts.plain
        for label in self.findChildren(QLabel):
            kind = label.property("kind")
            if kind not in {None, "number"}:
                label.setFont(letters(self, bold, _SHARES[kind]))
        self.fit_number()
        large, line = letters(self, bold, _TARGET_SHARE), letters(self, bold, _SHARES["line"])
        small = letters(self, bold, _SHARES["small"])
        target = target_pixels(self)
        for button in (self.target, self.other, self.back, self.leave):
            button.setFont(line)
            button.setMinimumHeight(target)
        self.target.setFont(large)
        for button in (self.sound, self.give_up):
            button.setFont(small)
            button.setMinimumHeight(_LEAST_BUTTON)
        self.cover.set_fonts(line, letters(self, plain, _SHARES["small"]))
        self.pad.set_fonts(letters(self, bold, _READOUT_SHARE), letters(self, bold, _KEY_SHARE))
        self.pad.fit_into(target, self.height() - target - 2 * _LEAST_BUTTON)

    def fit_number(self) -> None:
        """Write the number as large as there is room for it and what it means."""
        font = letters(self, self.canvas.fonts.bold, _SHARES["number"])
        room = self.width() * (_NUMBER_ROOM if self.meaning.text() else _NUMBER_ALONE)
        wide = QFontMetricsF(font).horizontalAdvance(self.number.text())
        if wide > room:
            font.setPixelSize(max(1, int(font.pixelSize() * room / wide)))
        self.number.setFont(font)

    @override
    def minimumSizeHint(self) -> QSize:
        return QSize(480, 320)

    def recolour(self) -> None:
        """Take the colours of the look that is on."""
        theme = self.canvas.theme
        self.setPalette(theme.palette)
        self.setAutoFillBackground(True)
        for label, colour in (
            (self.number, "now"),
            (self.meaning, "now"),
            (self.head, "quiet"),
        ):
            palette = theme.palette
            palette.setColor(palette.ColorRole.WindowText, theme.colour(colour))
            label.setPalette(palette)
        self.said.say(self.said.text(), stops=self.said.stops)
