"""Another temperature for some hours of a date: from when, until when, how warm."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QVBoxLayout, QWidget

from studio_planner.craft.errors import BrokenRule, InvalidEntry
from studio_planner.craft.spells import Spell
from studio_planner.desktop import words
from studio_planner.desktop.forms.fields import NumberField
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.forms.moment_field import MomentField
from studio_planner.desktop.quantities import Quantity
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.wrapping import Wrapping
from studio_planner.services.editing.spells import (
    coming_night,
    expected_between,
    with_spell,
    with_spells,
)

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping
    from datetime import datetime

    from studio_planner.craft.places import Place
    from studio_planner.desktop.forms.field import Field
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView

_DONE = "done"
"""What is edited last: the verb that makes a change of it."""


class SpellForm(QWidget):
    """Nothing is changed until its verb is chosen; what is typed is told of before.

    Signals:
        tried: the Place as it would be with what is typed.
        made: what was typed is expected now; it in words.
        left: the maker has left it.
    """

    tried = Signal(object)
    made = Signal(str)
    left = Signal()

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Ask for no place yet."""
        super().__init__(parent)
        canvas = desk.canvas
        self._desk = desk
        self._view: DeskView | None = None
        self._place: Place | None = None
        self.start = MomentField(canvas, translate("room", "From"), self)
        self.end = MomentField(canvas, translate("room", "Until"), self)
        self.celsius = NumberField(
            canvas, translate("room", "Temperature then"), Quantity.TEMPERATURE, optional=True
        )
        self.form = Form(canvas, self._enter, self)
        self.done = verb(translate("room", "Expect this"), self._done, self)
        self.leave = verb(translate("room", "Leave it"), self.left.emit, self)
        self.otherwise = Line(canvas, "", self, font="small", colour="quiet")
        self.what_moves = Line(
            canvas,
            translate(
                "room",
                "The plan is made again with it. What moves is said over the timeline, where "
                "you keep it or take it back. Warm with electric or indirect heat only.",
            ),
            self,
            font="small",
            colour="quiet",
        )
        self._lay_out()
        for field in (self.start, self.end, self.celsius):
            _key(Qt.Key.Key_Return, field, self._done)
            _key(Qt.Key.Key_Enter, field, self._done)
        _key(Qt.Key.Key_Escape, self, self.left.emit)

    def _lay_out(self) -> None:
        row = self._row = Wrapping()
        fields = (("start", self.start), ("end", self.end), ("celsius", self.celsius))
        for name, field in fields:
            self.form.add(name, field, into=row)
        row.add(self.done, self.leave)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(4)
        layout.addLayout(row)
        layout.addWidget(self.form)
        layout.addWidget(self.otherwise)
        layout.addWidget(self.what_moves)

    def lead_with(self, field: Field) -> None:
        """Put a field of somebody else's before these."""
        self._row.put_first(field)

    def begin(self, view: DeskView, place: Place, start: datetime | None = None) -> None:
        """Ask for the coming night of a place, or for the hours from `start` on."""
        begins, ends = coming_night(start or view.now, view.studio.time_zone)
        self._show(view, place, {"start": start or begins, "end": ends, "celsius": None})
        self.celsius.take_up()

    def show_place(self, view: DeskView, place: Place) -> None:
        """See a place of the studio as it is now; what is typed stays."""
        self._view, self._place = view, place
        self.celsius.set_units(view.studio.units)
        self._say_otherwise()

    def _show(self, view: DeskView, place: Place, values: Mapping[str, Any]) -> None:
        for field in (self.start, self.end):
            field.set_zone(view.studio.time_zone)
        self.form.show_values(values, view.studio.units, fresh=True)
        self.show_place(view, place)

    def _say_otherwise(self) -> None:
        """Say what the place is expected to be in these hours without what is typed."""
        view, place = self._view, self._place
        if view is None or place is None:
            return
        start, end = self.start.value(), self.end.value()
        if end <= start:
            self.otherwise.say("")
            return
        zone, units = view.studio.time_zone, view.studio.units
        low, high = (
            words.degrees(one, units) for one in expected_between(place, zone, start, end)
        )
        text = (
            translate("room", "As things stand, {place} is at {low} in these hours.")
            if low == high
            else translate("room", "As things stand, {place} is at {low} to {high} then.")
        )
        self.otherwise.say(text.format(place=place.name, low=low, high=high))

    def _done(self) -> None:
        self.form.enter(_DONE)

    def _enter(self, name: str, values: Mapping[str, Any]) -> None:
        view, place = self._view, self._place
        if view is None or place is None:
            return
        self._say_otherwise()
        if values["celsius"] is None:
            if name == _DONE:
                missing = translate("forms", "Write a number here.")
                raise InvalidEntry(place.name, [BrokenRule("celsius", missing)])
            return
        spell = Spell(**values)
        if name != _DONE:
            self.tried.emit(with_spells(place, (spell,)))
            return
        said = translate("room", "{place}, {spell}").format(
            place=place.name, spell=words_of(view, spell)
        )
        self._desk.changes.make(with_spell(place, spell, self._desk.clock.now(), said))
        self.made.emit(said)


def _key(key: Qt.Key, where: QWidget, does: Callable[[], object]) -> None:
    """Let a key, pressed in a widget or what lies in it, do something."""
    pressed = QShortcut(QKeySequence(key), where)
    pressed.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
    pressed.activated.connect(does)


def words_of(view: DeskView, spell: Spell) -> str:
    """A spell in words: Thu 5 Feb 18:00 to 07:00: 22 °C."""
    studio = view.studio
    span = words.span(spell.start, spell.end, words.wall_of(studio))
    celsius = words.degrees(spell.celsius, studio.units)
    return translate("room", "{span}: {degrees}").format(span=span, degrees=celsius)
