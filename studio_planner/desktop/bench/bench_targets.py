"""The targets of the bench: few, and each as large as a knuckle needs it."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from PySide6.QtWidgets import QGridLayout, QWidget

from studio_planner.desktop.big_button import BigButton
from studio_planner.desktop.big_screen import LEAST_TARGET

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from PySide6.QtGui import QFont

_SPACING = 12
_PLACES = (
    *((0, 0, 1, 6), (0, 6, 1, 6)),
    *((1, 0, 1, 3), (1, 3, 1, 3), (1, 9, 1, 3), (1, 6, 1, 3)),
)
"""Row, column and how many rows and columns each target takes, where there is room for two."""

_COUNT = len(_PLACES)


class Offer(NamedTuple):
    """What a target says and does; without anything to do it can't be hit."""

    words: str
    does: Callable[[], object] | None


class BenchTargets(QWidget):
    """Six targets in two rows, or in one where the screen is low."""

    def __init__(self, parent: QWidget) -> None:
        """Offer nothing yet."""
        super().__init__(parent)
        self._does: list[Callable[[], object] | None] = [None] * _COUNT
        self.buttons = [self._button(place) for place in range(_COUNT)]
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setSpacing(_SPACING)
        self._rows = 0
        self._arrange(2)

    def _button(self, place: int) -> BigButton:
        button = BigButton(self)
        button.clicked.connect(lambda _checked=False: self._hit(place))
        return button

    def _hit(self, place: int) -> None:
        does = self._does[place]
        if does is not None:
            does()

    def offer(self, offers: Sequence[Offer]) -> None:
        """Say what each target does, in order; those without words are not there."""
        for place, button in enumerate(self.buttons):
            words, does = offers[place] if place < len(offers) else Offer("", None)
            self._does[place] = does
            button.setText(words.replace("&", "&&"))
            button.setAccessibleName(words)
            button.setVisible(bool(words))
            button.setEnabled(does is not None)

    def fit(self, height: int, first: QFont, others: QFont, *, rows: int) -> None:
        """Make each target that high, and say what it does in letters of that size."""
        self._arrange(rows)
        for place, button in enumerate(self.buttons):
            button.setFont(first if not place else others)
            button.setMinimumSize(LEAST_TARGET, height)

    def _arrange(self, rows: int) -> None:
        if rows == self._rows:
            return
        self._rows = rows
        for button in self.buttons:
            self._grid.removeWidget(button)
        for place, button in enumerate(self.buttons):
            if rows == 1:
                self._grid.addWidget(button, 0, place)
            else:
                self._grid.addWidget(button, *_PLACES[place])
        used = _COUNT if rows == 1 else self._grid.columnCount()
        for column in range(self._grid.columnCount()):
            self._grid.setColumnStretch(column, int(column < used))
