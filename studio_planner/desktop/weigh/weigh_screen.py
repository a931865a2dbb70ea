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

from studio_planner.desktop.big_button import BigButton
from studio_planner.desktop.big_screen import letters, target_pixels
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.weigh.cover_sheet import CoverSheet
from studio_planner.desktop.weigh.cup_clock import CupClock
from studio_planner.desktop.weigh.digit_pad import DigitPad
from studio_planner.desktop.weigh.verdict_line import VerdictLine

if TYPE_CHECKING:
    from PySide6.QtGui import QResizeEvent

    from studio_planner.desktop.canvas import Canvas

_SHARES = {"number": 0.2, "verb": 0.075, "about": 0.042, "line": 0.032}
"""How high each kind of line is, in parts of the window's height."""

_LINE_SHARE, _SMALL_SHARE = 0.03, 0.026
_TARGET_SHARE, _KEY_SHARE, _READOUT_SHARE = 0.045, 0.06, 0.085
_LEAST_BUTTON, _LOW_BUTTON = 48, 30
_RIGHT_SHARE = 0.44
"""How much of the width the right side takes."""

_ROOM_FOR_BOTH = 560
"""From this height on the step stays in view beside the pad."""

_GAP, _BETWEEN, _SIDES = 8, 32, 32
_MOST_PERCENT, _LEAST_PERCENT = 130, 30
"""How much larger or smaller lines are written where there is room, or none."""


class WeighScreen(QWidget):
    """The parts of the weigh view; what they say and do is told to them."""

    def __init__(self, canvas: Canvas, parent: QWidget | None) -> None:
        """Lay the parts out."""
        super().__init__(parent, Qt.WindowType.Window)
        self.canvas = canvas
        self.setWindowTitle(translate("weigh", "Weigh - Studio planner"))
        self.head = self._label("head")
        self.head.setWordWrap(False)
        self.step = QWidget(self)
        self.verb = self._label("verb")
        self.about = self._label("about")
        self.number = self._label("number")
        self.number.setWordWrap(False)
        self.number.setContentsMargins(_GAP // 2, 0, _GAP // 2, 0)
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
        self.target = BigButton(self)
        self.other = BigButton(self)
        self.back = BigButton(self)
        self.leave = BigButton(translate("weigh", "Leave the scale"), self)
        self.sound = QPushButton(self)
        self.give_up = QPushButton(translate("weigh", "Throw away…"), self)
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
        step = QVBoxLayout(self.step)
        step.setContentsMargins(0, 0, 0, 0)
        step.setSpacing(_GAP)
        for label in self._lines:
            step.addWidget(label)
        step.addStretch(1)
        middle = QHBoxLayout()
        middle.setSpacing(_BETWEEN)
        middle.addWidget(self.step, 1)
        middle.addWidget(self.right)
        verbs = QHBoxLayout()
        verbs.setSpacing(_BETWEEN // 2)
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
        layout.setContentsMargins(_SIDES, 16, _SIDES, 20)
        layout.setSpacing(_GAP)
        layout.addLayout(head)
        layout.addLayout(middle, 1)
        layout.addLayout(verbs)

    @property
    def _lines(self) -> tuple[QLabel, ...]:
        """What stands under each other at the left."""
        return (self.verb, self.about, self.number, self.meaning, self.reads, self.said)

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    @property
    def _low(self) -> bool:
        """Whether the window is too low for step and pad beside each other."""
        return self.height() < _ROOM_FOR_BOTH

    def _fit(self) -> None:
        bold, plain = self.canvas.fonts.bold, self.canvas.fonts.plain
        large, line = letters(self, bold, _TARGET_SHARE), letters(self, bold, _LINE_SHARE)
        small = letters(self, bold, _SMALL_SHARE)
        target = target_pixels(self)
        for button in (self.target, self.other, self.back, self.leave):
            button.setFont(line)
            button.setMinimumHeight(target)
        self.target.setFont(large)
        self.head.setFont(small)
        for line_button in (self.sound, self.give_up):
            line_button.setFont(small)
            line_button.setMinimumHeight(_LOW_BUTTON if self._low else _LEAST_BUTTON)
        self.cover.set_fonts(line, letters(self, plain, _SMALL_SHARE))
        self.pad.set_fonts(letters(self, bold, _READOUT_SHARE), letters(self, bold, _KEY_SHARE))
        self.fit_letters()

    def fit_letters(self) -> None:
        """Write the step as large as there is room for; in low windows a pad takes it all."""
        whole = self.width() - 2 * _SIDES
        padded = self.right.currentWidget() is self.pad
        self.step.setVisible(not (padded and self._low))
        wide = whole if padded and self._low else (whole - _BETWEEN) * _RIGHT_SHARE
        self.right.setFixedWidth(round(wide))
        room = self.height() - target_pixels(self) - self.sound.minimumHeight() - 36 - 2 * _GAP
        self.pad.fit_into(target_pixels(self), round(wide), room)
        for percent in range(_MOST_PERCENT, _LEAST_PERCENT, -5):
            if self._lines_height(percent / 100.0, round(whole - _BETWEEN - wide)) <= room:
                break

    def _lines_height(self, factor: float, wide: int) -> int:
        """Write all lines so large, and tell how high they are together."""
        high, bold = 0, self.canvas.fonts.bold
        for label in self._lines:
            if not label.text():
                continue
            font = letters(self, bold, factor * _SHARES[label.property("kind")])
            if label is self.number:
                across = QFontMetricsF(font).horizontalAdvance(label.text()) + 2 * _GAP
                font.setPixelSize(max(1, int(font.pixelSize() * min(1.0, wide / across))))
            label.setFont(font)
            high += (
                label.heightForWidth(wide) if label.wordWrap() else label.sizeHint().height()
            )
            high += _GAP
        return high

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
