"""A field for days of the week, each to be ticked."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QCheckBox, QGridLayout, QWidget
from typing_extensions import override

from studio_planner.desktop.forms.field import Field
from studio_planner.desktop.tongue import weekday, whole_weekday

if TYPE_CHECKING:
    from collections.abc import Iterable

    from PySide6.QtGui import QResizeEvent

    from studio_planner.craft.settings import Units
    from studio_planner.desktop.canvas import Canvas

_WEEK = 7
_FEWER = 4
"""How many days stand in a row where a whole week has no room."""

_GAP = 10


class DaysField(Field):
    """Weekdays, 0 for Monday, in the order in which the studio's weeks run."""

    def __init__(self, canvas: Canvas, label: str, parent: QWidget | None = None) -> None:
        """Start with no day ticked."""
        super().__init__(canvas, label, parent)
        self._first = 0
        self._in_a_row = _FEWER
        holder = QWidget(self)
        self._boxes = QGridLayout(holder)
        self._boxes.setContentsMargins(0, 0, 0, 0)
        self._boxes.setHorizontalSpacing(_GAP)
        self._boxes.setVerticalSpacing(2)
        self._boxes.setColumnStretch(_WEEK, 1)
        self.boxes = tuple(self._box(day) for day in range(_WEEK))
        self._deal()
        self.hold(holder)
        self.setFocusProxy(self.boxes[0])

    def _box(self, day: int) -> QCheckBox:
        box, name = QCheckBox(weekday(day), self), whole_weekday(day)
        box.setMinimumHeight(24)
        box.setAccessibleName(f"{self.words}: {name}")
        box.setToolTip(name)
        box.clicked.connect(lambda _checked: self.edited.emit())
        return box

    def _deal(self) -> None:
        """Put the boxes into rows, the first day of the week first."""
        for place in range(_WEEK):
            box = self.boxes[(place + self._first) % _WEEK]
            self._boxes.addWidget(box, place // self._in_a_row, place % self._in_a_row)

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        needed = sum(box.sizeHint().width() + _GAP for box in self.boxes)
        in_a_row = _WEEK if event.size().width() >= needed else _FEWER
        if in_a_row != self._in_a_row:
            self._in_a_row = in_a_row
            self._deal()

    def set_units(self, units: Units) -> None:
        """Begin with the day on which the studio's weeks begin."""
        if units.week_starts == self._first:
            return
        self._first = units.week_starts
        self._deal()

    @override
    def value(self) -> frozenset[int]:
        return frozenset(day for day, box in enumerate(self.boxes) if box.isChecked())

    @override
    def show_value(self, value: Iterable[int]) -> None:
        self.say_right()
        ticked = set(value)
        for day, box in enumerate(self.boxes):
            box.setChecked(day in ticked)
