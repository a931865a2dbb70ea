"""What the thermometer says now, written down on one line."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from studio_planner.desktop import words
from studio_planner.desktop.forms.fields import ChoiceField, NumberField
from studio_planner.desktop.log_pages.written_form import WRITE, WrittenForm
from studio_planner.desktop.quantities import Quantity
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.places import place_of
from studio_planner.services.room_logs import typed_reading

if TYPE_CHECKING:
    from collections.abc import Mapping
    from typing import Any

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk

_NARROW = 64


class ReadingRow(QWidget):
    """Room, temperature and humidity; the time is now."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Ask of no studio yet."""
        super().__init__(parent)
        canvas = desk.canvas
        self._desk = desk
        self._studio: Studio | None = None
        self._kept = ""
        self.title = Line(
            canvas, translate("happened", "What does the thermometer say?"), self, font="clock"
        )
        self.form = WrittenForm(desk, self._enter, lambda _name: None, self)
        row = QHBoxLayout()
        row.setSpacing(10)
        self.room = ChoiceField(canvas, translate("happened", "Where"))
        self.warmth = NumberField(canvas, translate("happened", "Now"), Quantity.TEMPERATURE)
        self.damp = NumberField(
            canvas,
            translate("happened", "Humidity (may be empty)"),
            Quantity.PER_CENT,
            optional=True,
        )
        for name, field in (
            ("place", self.room),
            ("celsius", self.warmth),
            ("humidity_pct", self.damp),
        ):
            self.form.add(name, field, into=row)
        for number in (self.warmth, self.damp):
            number.editor.setMinimumWidth(_NARROW)
            number.editor.returnPressed.connect(self.write_down)
        self.write = verb(
            translate("happened", "Write the reading down"), self.write_down, self
        )
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(4)
        layout.addWidget(self.title)
        layout.addLayout(row)
        layout.addWidget(self.form)
        layout.addWidget(self.write, 0, Qt.AlignmentFlag.AlignLeft)

    def show_studio(self, studio: Studio | None) -> None:
        """Offer a studio's rooms; without one there is nothing to write down."""
        self._studio = studio
        places = () if studio is None else studio.places
        self.setVisible(bool(places))
        if studio is None:
            return
        self.room.offer([(place.key, place.name) for place in places])
        for field in (self.warmth, self.damp):
            field.set_units(studio.units)

    def write_down(self) -> None:
        """Write the reading down; what is wrong with it stands beside its field."""
        if self.form.enter(WRITE):
            self.warmth.show_value(None)
            self.damp.show_value(None)
            text = translate("happened", "The reading is kept: {reading}. Undo takes it back.")
            self._desk.tell_entry(text.format(reading=self._kept))

    def _enter(self, values: Mapping[str, Any]) -> None:
        studio = self._studio
        place = None if studio is None else place_of(studio, values["place"])
        if studio is None or place is None:
            return
        now = self._desk.clock.now()
        change = typed_reading(place, now, values["celsius"], values["humidity_pct"])
        self._desk.changes.make(change)
        warmth = words.degrees(values["celsius"], studio.units, decimals=1)
        self._kept = f"{place.name}, {warmth}"
