"""The hours of a date in which a place is another than its week says, each with a way out."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from studio_planner.desktop import words
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.spells import spells_ahead

if TYPE_CHECKING:
    from PySide6.QtWidgets import QPushButton

    from studio_planner.craft.places import Place
    from studio_planner.craft.spells import Spell
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.desk import DeskView


class SpellList(QWidget):
    """What is to come besides the week; hidden where that is nothing.

    Signals:
        remove_asked: the Spell that is not to be.
    """

    remove_asked = Signal(object)

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Show no place yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._rows: list[QWidget] = []
        self.verbs: list[QPushButton] = []
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(4)
        title = translate("room", "Besides the week")
        layout.addWidget(Line(canvas, title, self, font="bold"))
        self.hide()

    def show_place(self, view: DeskView, place: Place) -> None:
        """Show the spells of a place that are not over yet."""
        for row in self._rows:
            row.hide()
            row.deleteLater()
        self._rows, self.verbs = [], []
        spells = spells_ahead(place, view.now)
        for spell in spells:
            self._add(view, spell)
        self.setVisible(bool(spells))

    def _add(self, view: DeskView, spell: Spell) -> None:
        row = QWidget(self)
        text = words_of(view, spell)
        line = Line(self._canvas, text, row)
        button = verb(translate("room", "Remove"), partial(self.remove_asked.emit, spell), row)
        button.setAccessibleName(translate("room", "Remove: {spell}").format(spell=text))
        layout = QHBoxLayout(row)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(line, 1)
        layout.addWidget(button)
        self._rows.append(row)
        self.verbs.append(button)
        box = self.layout()
        assert box is not None  # noqa: S101 - it was given one when it was made
        box.addWidget(row)


def words_of(view: DeskView, spell: Spell) -> str:
    """A spell in words: Thu 5 Feb 18:00 to 07:00: 22 °C."""
    studio = view.studio
    span = words.span(spell.start, spell.end, words.wall_of(studio))
    celsius = words.degrees(spell.celsius, studio.units)
    return translate("room", "{span}: {degrees}").format(span=span, degrees=celsius)
