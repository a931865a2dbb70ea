"""A field for a time zone, found by typing any part of its name."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QCompleter
from typing_extensions import override

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.local_time import zone_named
from studio_planner.desktop.forms.field import TypedField
from studio_planner.desktop.forms.still_editors import StillChoice
from studio_planner.desktop.tongue import quoted, translate

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.canvas import Canvas

_MOST_SHOWN = 12


class ZoneField(TypedField):
    """An IANA time zone; typing "york" offers America/New_York."""

    def __init__(self, canvas: Canvas, label: str, parent: QWidget | None = None) -> None:
        """Offer every zone that this computer knows."""
        from zoneinfo import available_timezones  # noqa: PLC0415 - reads many files

        super().__init__(canvas, label, parent)
        self._shown = ""
        self.editor = StillChoice(self)
        self.editor.setEditable(True)
        self.editor.setInsertPolicy(QComboBox.InsertPolicy.NoInsert)
        self.editor.addItems(sorted(name for name in available_timezones() if "/" in name))
        self.editor.addItem("UTC")
        self.editor.setMinimumWidth(240)
        self._search = QCompleter(self.editor.model(), self)
        self._search.setFilterMode(Qt.MatchFlag.MatchContains)
        self._search.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        self._search.setMaxVisibleItems(_MOST_SHOWN)
        self._search.activated.connect(lambda _text: self._finished())
        self.editor.setCompleter(self._search)
        self.editor.activated.connect(lambda _index: self._finished())
        line = self.editor.lineEdit()
        if line is not None:
            line.editingFinished.connect(self._finished)
            line.setAccessibleName(label)
        self.hold(self.editor)
        self._row.addStretch(1)

    @override
    def _typed(self) -> str:
        return self.editor.currentText()

    @override
    def value(self) -> str:
        typed = self.editor.currentText().strip()
        try:
            zone_named(typed)
        except InvalidEntry as error:
            sentence = translate(
                "units", "There is no time zone called {typed}; type a city and choose one."
            )
            raise ValueError(sentence.format(typed=quoted(typed))) from error
        return typed

    @override
    def show_value(self, value: str) -> None:
        self.say_right()
        self._shown = value
        if self.editor.findText(value) < 0:
            self.editor.addItem(value)
        self.editor.setCurrentText(value)
