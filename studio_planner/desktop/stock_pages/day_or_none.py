"""A field for a date that may not be known."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QDate, Qt
from PySide6.QtWidgets import QCheckBox
from typing_extensions import override

from studio_planner.desktop.forms.field import Field
from studio_planner.desktop.forms.still_editors import StillDate

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from studio_planner.craft.settings import Units
    from studio_planner.desktop.canvas import Canvas


class DayOrNoneField(Field):
    """A tick, and once it is set a date with a calendar to choose from."""

    def __init__(
        self, canvas: Canvas, label: str, tick: str, parent: QWidget | None = None
    ) -> None:
        """Start without a date; `tick` stands beside the box."""
        super().__init__(canvas, label, parent)
        self._shown: date | None = None
        self.usual = date(2000, 1, 1)
        self.known = QCheckBox(tick, self)
        self.known.setMinimumHeight(24)
        self.day = StillDate(self)
        self.day.setAccessibleName(label)
        self.hold(self.known)
        self.known.setAccessibleName(f"{label}: {tick}")
        self._row.setStretch(0, 0)
        self._row.addWidget(self.day)
        self._row.addStretch(1)
        self.known.clicked.connect(self._ticked)
        self.day.editingFinished.connect(self._finished)
        self.show_value(None)

    def set_units(self, units: Units) -> None:
        """Begin the calendar's weeks on the day that the studio's begin on."""
        self.day.calendarWidget().setFirstDayOfWeek(Qt.DayOfWeek(units.week_starts + 1))

    def _ticked(self) -> None:
        self.day.setVisible(self.known.isChecked())
        self._finished()

    def _finished(self) -> None:
        if self.value() != self._shown:
            self._shown = self.value()
            self.edited.emit()

    @property
    @override
    def in_hand(self) -> bool:
        return self.day.hasFocus() and self.value() != self._shown

    @override
    def value(self) -> date | None:
        if not self.known.isChecked():
            return None
        shown = self.day.date()
        return date(shown.year(), shown.month(), shown.day())

    @override
    def show_value(self, value: date | None) -> None:
        self.say_right()
        self._shown = value
        self.known.setChecked(value is not None)
        self.day.setVisible(value is not None)
        day = value or self.usual
        self.day.setDate(QDate(day.year, day.month, day.day))
