"""A field for days of the week, each to be ticked."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop.forms.field import Field
from studio_planner.desktop.tongue import weekday, whole_weekday

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.settings import Units
    from studio_planner.desktop.canvas import Canvas


_WEEK = 7


class DaysField(Field):
    """Weekdays, 0 for Monday, in the order in which the studio's weeks run."""

    def __init__(self, canvas: Canvas, label: str, parent: QWidget | None = None) -> None:
        """Start with no day ticked."""
        super().__init__(canvas, label, parent)
        self._first = 0
        row = QWidget(self)
        self._boxes = QHBoxLayout(row)
        self._boxes.setContentsMargins(0, 0, 0, 0)
        self._boxes.setSpacing(10)
        self.boxes = tuple(self._box(day) for day in range(_WEEK))
        self._boxes.addStretch(1)
        self.hold(row)
        self.setFocusProxy(self.boxes[0])

    def _box(self, day: int) -> QCheckBox:
        box, name = QCheckBox(weekday(day), self), whole_weekday(day)
        box.setMinimumHeight(24)
        box.setAccessibleName(f"{self.words}: {name}")
        box.setToolTip(name)
        box.clicked.connect(lambda _checked: self.edited.emit())
        self._boxes.addWidget(box)
        return box

    def set_units(self, units: Units) -> None:
        """Begin with the day on which the studio's weeks begin."""
        if units.week_starts == self._first:
            return
        self._first = units.week_starts
        for place in range(len(self.boxes)):
            box = self.boxes[(place + self._first) % len(self.boxes)]
            self._boxes.removeWidget(box)
            self._boxes.insertWidget(place, box)

    @override
    def value(self) -> frozenset[int]:
        return frozenset(day for day, box in enumerate(self.boxes) if box.isChecked())

    @override
    def show_value(self, value: Iterable[int]) -> None:
        self.say_right()
        ticked = set(value)
        for day, box in enumerate(self.boxes):
            box.setChecked(day in ticked)
