"""The hours of a date in which a place is another than its week says: listed, put in, out."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from studio_planner.desktop.layouts import take_out
from studio_planner.desktop.room_pages.spell_form import SpellForm, words_of
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.wrapping import Wrapping
from studio_planner.services.editing.spells import spells_ahead, without_spell

if TYPE_CHECKING:
    from datetime import datetime

    from PySide6.QtWidgets import QPushButton

    from studio_planner.craft.places import Place
    from studio_planner.craft.spells import Spell
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView


class SpellList(QWidget):
    """What is to come besides the week, each with a way out, and the form for one more.

    Signals:
        tried: the Place as it would be with what is typed, or as it is once that is left.
        made: what the form was left with, in words.
        left: the form is closed again.
    """

    tried = Signal(object)
    made = Signal(str)
    left = Signal()

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Show no place yet."""
        super().__init__(parent)
        self._desk = desk
        self._view: DeskView | None = None
        self._place: Place | None = None
        self.verbs: list[QPushButton] = []
        title = translate("room", "Besides the week")
        self.title = Line(desk.canvas, title, self, font="bold")
        self._rows: list[QWidget] = []
        self._rows_place = QVBoxLayout()
        self.form = SpellForm(desk, self)
        another = translate("room", "Another temperature for a time…")
        self.add_button = verb(another, self.open, self)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(4)
        layout.addWidget(self.title)
        layout.addLayout(self._rows_place)
        layout.addWidget(self.form)
        layout.addWidget(self.add_button, 0, Qt.AlignmentFlag.AlignLeft)
        self.form.tried.connect(self.tried)
        self.form.made.connect(self._made)
        self.form.left.connect(self.close_form)
        self.form.hide()

    def show_place(self, view: DeskView, place: Place) -> None:
        """Show the spells of a place that are not over yet."""
        self._view, self._place = view, place
        take_out(self._rows_place, *self._rows)
        self._rows, self.verbs = [], []
        for spell in spells_ahead(place, view.now):
            self._add(view, spell)
        if not self.form.isHidden():
            self.form.show_place(view, place)

    def open(self, start: datetime | None = None) -> None:
        """Ask for the coming night, or for the hours from `start` on."""
        if self._view is not None and self._place is not None:
            self.form.show()
            self.add_button.hide()
            self.form.begin(self._view, self._place, start)

    def close_form(self) -> None:
        """Ask no more; what was typed is forgotten."""
        if self.form.isHidden():
            return
        self.add_button.show()
        self.form.hide()
        self.tried.emit(self._place)
        self.left.emit()

    def _made(self, said: str) -> None:
        self.close_form()
        self.made.emit(said)

    def _add(self, view: DeskView, spell: Spell) -> None:
        row = QWidget(self)
        text = words_of(view, spell)
        line = Line(self._desk.canvas, text, row)
        line.setWordWrap(False)
        button = verb(
            translate("room", "Remove"), partial(self._remove, spell), row, about=text
        )
        line.setMinimumHeight(button.minimumHeight())
        wrapping = Wrapping()
        wrapping.add(line, button)
        row.setLayout(wrapping)
        self._rows.append(row)
        self.verbs.append(button)
        self._rows_place.addWidget(row)

    def _remove(self, spell: Spell) -> None:
        if self._view is not None and self._place is not None:
            text = translate("room", "{place}, as the week says: {spell}")
            what = words_of(self._view, spell)
            said = text.format(place=self._place.name, spell=what)
            self._desk.changes.attempt(without_spell(self._place, spell, said))
