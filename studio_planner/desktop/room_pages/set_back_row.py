"""The verbs that draw much of an expected week at once: heater off, days alike, humidity."""

from __future__ import annotations

from datetime import time
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from studio_planner.desktop.forms.fields import ChoiceField, NumberField
from studio_planner.desktop.forms.time_fields import TimeField
from studio_planner.desktop.quantities import Quantity
from studio_planner.desktop.studio_pages.lines import verb
from studio_planner.desktop.tongue import translate, weekday
from studio_planner.desktop.wrapping import Wrapping
from studio_planner.services.editing.air_weeks import (
    WEEK_DAYS,
    alike,
    day_copied,
    differs,
    parted,
    set_back,
    with_humidity,
)

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.craft.settings import Units
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.editing.air_weeks import Pattern

_WORK_DAYS = tuple(range(5))
_FREE_DAYS = (5, 6)
_ROOM_FOR_UNKNOWN = 88
_OFF, _ON, _COOL = time(22), time(7), 16.0


class WeekVerbs(QWidget):
    """Rows of fields, each with its verb.

    Signals:
        asked: (what is done, how the pattern is made of another one).
        wrong: what is wrong with a field.
    """

    asked = Signal(str, object)
    wrong = Signal(str)

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Offer everything for a week that is alike on all days."""
        super().__init__(parent)
        self.off = TimeField(canvas, translate("room", "Heater off from"))
        self.on = TimeField(canvas, translate("room", "to"))
        self.cool = NumberField(
            canvas, translate("room", "temperature then"), Quantity.TEMPERATURE
        )
        self.set_back = verb(translate("room", "Set the nights back"), self._set_back, self)
        self.humidity = NumberField(
            canvas, translate("room", "Humidity"), Quantity.PER_CENT, optional=True
        )
        self.damp = verb(translate("room", "Expect this humidity"), self._damp, self)
        self.dry = verb(translate("room", "Leave humidity out"), self._dry, self)
        self.part = verb(translate("room", "Let the days differ"), self._part, self)
        days = [(day, weekday(day)) for day in range(7)]
        self.source = ChoiceField(canvas, translate("room", "Day"), days)
        self.to_work = verb(translate("room", "Use it Mon to Fri"), self._to_work, self)
        self.to_free = verb(translate("room", "Use it Sat and Sun"), self._to_free, self)
        self.to_all = verb(translate("room", "Make every day like it"), self._to_all, self)
        self.off.show_value(_OFF)
        self.on.show_value(_ON)
        self.cool.show_value(_COOL)
        # An empty field, since nothing is known: a figure in it would look like one.
        self.humidity.editor.setPlaceholderText(translate("room", "unknown"))
        self.humidity.editor.setMinimumWidth(_ROOM_FOR_UNKNOWN)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(2)
        for parts in (
            (self.off, self.on, self.cool, self.set_back),
            (self.humidity, self.damp, self.dry),
            (self.part, self.source, self.to_work, self.to_free, self.to_all),
        ):
            row = Wrapping()
            row.add(*parts)
            layout.addLayout(row)

    def show_pattern(self, pattern: Pattern, units: Units) -> None:
        """Offer what makes sense for a pattern."""
        for field in (self.off, self.on):
            field.set_units(units)
        self.cool.set_units(units)
        damp = any(point.humidity_pct is not None for point in pattern)
        self.dry.setVisible(damp)
        lacks = any(point.humidity_pct is None for point in pattern)
        self.damp.setVisible(lacks)
        self.humidity.setVisible(lacks)
        several = differs(pattern)
        self.part.setVisible(any(point.day is None for point in pattern))
        for widget in (self.source, self.to_work, self.to_free, self.to_all):
            widget.setVisible(several)

    def _set_back(self) -> None:
        off, on, cool = self.off.value(), self.on.value(), self._number(self.cool)
        if cool is not None:
            self.asked.emit(
                translate("room", "nights set back"),
                lambda pattern: set_back(pattern, off, on, cool),
            )

    def _damp(self) -> None:
        humidity = self._number(self.humidity)
        if humidity is not None:
            self._ask(
                translate("room", "humidity"),
                lambda pattern: with_humidity(pattern, humidity),
            )

    def _dry(self) -> None:
        self._ask(translate("room", "no humidity"), lambda p: with_humidity(p, None))

    def _part(self) -> None:
        self._ask(translate("room", "days that differ"), parted)

    def _to_work(self) -> None:
        self._copy(_WORK_DAYS)

    def _to_free(self) -> None:
        self._copy(_FREE_DAYS)

    def _copy(self, days: tuple[int, ...]) -> None:
        day = self._day
        self._ask(
            translate("room", "days like {day}").format(day=weekday(day)),
            lambda pattern: day_copied(pattern, day, days),
        )

    def _to_all(self) -> None:
        day = self._day
        self._ask(translate("room", "every day alike"), lambda pattern: alike(pattern, day))

    def _ask(self, words: str, make: Callable[[Pattern], Pattern]) -> None:
        self.asked.emit(words, make)

    @property
    def _day(self) -> int:
        value = self.source.value()
        return value if isinstance(value, int) and value < WEEK_DAYS else 0

    def _number(self, field: NumberField) -> float | None:
        field.say_right()
        try:
            value = field.value()
        except ValueError as error:
            field.say_wrong(str(error))
            return None
        if value is None:
            field.say_wrong(translate("room", "Write a number here."))
        return value
