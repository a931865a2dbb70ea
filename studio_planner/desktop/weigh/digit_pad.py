"""The digit pad: what the display really reads, typed with a knuckle or on the keyboard."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QLocale, Qt, Signal
from PySide6.QtWidgets import QGridLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from studio_planner.desktop import words
from studio_planner.desktop.quantities import Quantity, number_of, scale_of
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtGui import QFont

    from studio_planner.craft.settings import Units

ERASE = "⌫"
_MOST_DIGITS = 7
_TALL, _FLAT = 3, 6
_FOUR_ROWS, _TWO_ROWS = 4, 2
_SPACING, _LEAST = 8, 40
"""Keys beside each other where there is height for four rows, and where there is for two."""


class DigitPad(QWidget):
    """Twelve keys and the number that they make.

    Signals:
        typed: the number is another one.
    """

    typed = Signal()

    def __init__(self, parent: QWidget) -> None:
        """Start without a number."""
        super().__init__(parent)
        self.text = ""
        self.mark = QLocale().decimalPoint()
        self.unit = ""
        self.readout = QLabel(self)
        self.readout.setTextFormat(Qt.TextFormat.PlainText)
        self.readout.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self.keys = {
            key: QPushButton(key, self) for key in (*"123456789", self.mark, "0", ERASE)
        }
        names = {
            self.mark: translate("weigh", "Decimal sign"),
            ERASE: translate("weigh", "Erase the last digit"),
        }
        for key, button in self.keys.items():
            button.setAccessibleName(names.get(key, key))
            button.clicked.connect(partial(self._pressed, key))
        self._grid = QGridLayout()
        self._grid.setSpacing(_SPACING)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.readout)
        layout.addLayout(self._grid)
        layout.addStretch(1)
        self._columns = 0
        self.fit(96, columns=_TALL)

    def fit(self, target: int, *, columns: int) -> None:
        """Make every key `target` pixels high and wide, so many beside each other."""
        for button in self.keys.values():
            button.setMinimumSize(target, target)
        if columns == self._columns:
            return
        self._columns = columns
        for place, button in enumerate(self.keys.values()):
            self._grid.addWidget(button, place // columns, place % columns)

    def fit_into(self, target: int, width: int, height: int) -> None:
        """Take four rows of three keys where there is height for them, else two of six.

        Where not even those have room keys are smaller, and still larger than a fingertip.
        """
        room = height - self.readout.sizeHint().height()
        tall = room >= _FOUR_ROWS * (target + _SPACING)
        columns, rows = (_TALL, _FOUR_ROWS) if tall else (_FLAT, _TWO_ROWS)
        wide = width // columns - _SPACING
        self.fit(max(_LEAST, min(target, room // rows - _SPACING, wide)), columns=columns)

    def set_fonts(self, number: QFont, key: QFont) -> None:
        """Write the number and the keys with these."""
        self.readout.setFont(number)
        for button in self.keys.values():
            button.setFont(key)

    def begin(self, units: Units, text: str = "") -> None:
        """Ask for a mass in the studio's unit, beginning with what was typed already."""
        self.unit = scale_of(Quantity.MASS, units).unit
        self.text = text
        self._show()

    def press(self, key: str) -> None:
        """Take a key of the pad, or of a keyboard: a digit, a comma or point, or ⌫."""
        if key == ERASE:
            self.text = self.text[:-1]
        elif key in {",", "."}:
            if self.mark not in self.text:
                self.text = f"{self.text or '0'}{self.mark}"
        elif key.isdigit() and len(self.text) < _MOST_DIGITS:
            self.text += key
        self._show()
        self.typed.emit()

    def _pressed(self, key: str, _checked: bool = False) -> None:  # noqa: FBT001, FBT002 - Qt's
        self.press(key)

    def grams(self, units: Units) -> float | None:
        """The mass that was typed; None when it is none."""
        try:
            shown = number_of(self.text)
        except ValueError:
            return None
        return scale_of(Quantity.MASS, units).inside(shown)

    def _show(self) -> None:
        self.readout.setText(f"{self.text or words.TO} {self.unit}")
        self.readout.setAccessibleName(self.readout.text())
