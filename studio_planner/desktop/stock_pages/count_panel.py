"""Counting a bottle: what the scale says is in it, and the counts that were made before."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from studio_planner.craft.errors import InvalidEntry, StudioError
from studio_planner.desktop import words
from studio_planner.desktop.forms.fields import NumberField, TextField
from studio_planner.desktop.layouts import empty
from studio_planner.desktop.quantities import Quantity
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.bottles import changed_bottle, counted, without_count

if TYPE_CHECKING:
    from studio_planner.craft.stock import Lot, LotCount
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk

_MOST = 4


class CountPanel(QWidget):
    """A mass, the verb that keeps it as counted now, and the last counts."""

    def __init__(self, desk: PageDesk, parent: QWidget) -> None:
        """Lie in the window `desk`, of no bottle yet."""
        super().__init__(parent)
        self._desk = desk
        self._lot: Lot | None = None
        canvas = desk.canvas
        self.mass = NumberField(
            canvas,
            translate("stock", "In it now, without the bottle"),
            Quantity.MASS,
            self,
            optional=True,
        )
        self.note = TextField(canvas, translate("stock", "Note"), self)
        self.button = verb(translate("stock", "Keep this count"), self.count, self)
        self._counts = QVBoxLayout()
        self._counts.setSpacing(2)
        row = QHBoxLayout()
        row.setSpacing(12)
        row.addWidget(self.mass)
        row.addWidget(self.note, 1)
        row.addWidget(self.button, 0, Qt.AlignmentFlag.AlignVCenter)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(4)
        layout.addWidget(Line(canvas, translate("stock", "Count it"), self, font="bold"))
        said = translate(
            "stock",
            "Put it on the scale now and then: from a count on, only what was weighed since is "
            "taken off.",
        )
        layout.addWidget(Line(canvas, said, self, font="small", colour="quiet"))
        layout.addLayout(row)
        layout.addLayout(self._counts)

    def show_bottle(self, studio: Studio, lot: Lot) -> None:
        """Show the counts of a bottle; what is being typed for it stays."""
        if self._lot is None or self._lot.key != lot.key:
            self._clear()
        self._lot = lot
        self.mass.set_units(studio.units)
        empty(self._counts)
        for count in lot.counts[: -_MOST - 1 : -1]:
            self._counts.addWidget(self._count_row(studio, lot, count))

    def _clear(self) -> None:
        self.mass.show_value(None)
        self.note.show_value("")

    def _count_row(self, studio: Studio, lot: Lot, count: LotCount) -> QWidget:
        said = translate("stock", "{when}: {left} left").format(
            when=words.moment(count.at, words.wall_of(studio)),
            left=words.mass(count.left_g, studio.units),
        )
        text = f"{said} ({count.words})" if count.words else said
        row = QWidget(self)
        layout = QHBoxLayout(row)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(Line(self._desk.canvas, text, row), 1)
        words_of_it = translate("stock", "Take back")
        button = verb(words_of_it, lambda: self._take_back(lot, count), row, about=said)
        layout.addWidget(button)
        return row

    def count(self) -> None:
        """Keep what was typed as what is left now."""
        lot, now = self._lot, self._desk.clock.now()
        if lot is None:
            return
        self.mass.say_right()
        try:
            grams = self.mass.value()
        except ValueError as error:
            self.mass.say_wrong(str(error))
            return
        if grams is None:
            self.mass.say_wrong(translate("stock", "Write what the scale shows."))
            return
        note = self.note.value()
        what = translate("stock", "count")
        change = changed_bottle(lot, what, lambda one: counted(one, now, grams, note))
        try:
            self._desk.changes.make(change)
        except InvalidEntry as error:
            self.mass.say_wrong(" ".join(rule.sentence for rule in error.broken))
        except StudioError as error:
            self.mass.say_wrong(str(error))
        else:
            self._clear()

    def _take_back(self, lot: Lot, count: LotCount) -> None:
        what = translate("stock", "take a count back")
        self._desk.changes.attempt(
            changed_bottle(lot, what, lambda one: without_count(one, count.at))
        )
