"""What a noun is mostly entered with: text, notes, numbers, choices, yes or no."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QWidget,
)
from typing_extensions import override

from studio_planner.craft.settings import Units
from studio_planner.desktop.forms.field import Field, TypedField
from studio_planner.desktop.forms.still_editors import StillChoice
from studio_planner.desktop.quantities import (
    Quantity,
    number_of,
    number_words,
    scale_of,
    shown_number,
)
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtGui import QFocusEvent

    from studio_planner.desktop.canvas import Canvas


class TextField(TypedField):
    """A line of text."""

    def __init__(self, canvas: Canvas, label: str, parent: QWidget | None = None) -> None:
        """Start empty."""
        super().__init__(canvas, label, parent)
        self._shown = ""
        self.editor = QLineEdit(self)
        self.editor.editingFinished.connect(self._finished)
        self.hold(self.editor)

    @override
    def _typed(self) -> str:
        return self.editor.text()

    @override
    def value(self) -> str:
        return self.editor.text().strip()

    @override
    def show_value(self, value: str) -> None:
        self.say_right()
        self._shown = value
        self.editor.setText(value)


class _Note(QPlainTextEdit):
    left = Signal()

    @override
    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.left.emit()


class NoteField(TypedField):
    """Several lines of text, for what only the maker needs to know."""

    def __init__(self, canvas: Canvas, label: str, parent: QWidget | None = None) -> None:
        """Start empty."""
        super().__init__(canvas, label, parent)
        self._shown = ""
        self.editor = _Note(self)
        self.editor.setTabChangesFocus(True)
        self.editor.setFixedHeight(72)
        self.editor.left.connect(self._finished)
        self.hold(self.editor)

    @override
    def _typed(self) -> str:
        return self.editor.toPlainText()

    @override
    def value(self) -> str:
        return self.editor.toPlainText().strip()

    @override
    def show_value(self, value: str) -> None:
        self.say_right()
        self._shown = value
        self.editor.setPlainText(value)


class NumberField(TypedField):
    """A number with the maker's unit behind it; comma and point are both understood."""

    def __init__(
        self,
        canvas: Canvas,
        label: str,
        quantity: Quantity = Quantity.PLAIN,
        parent: QWidget | None = None,
        *,
        optional: bool = False,
    ) -> None:
        """Hold a number of that quantity; `optional` ones may be left empty (None).

        Minutes and counts are whole numbers.
        """
        super().__init__(canvas, label, parent)
        self.quantity = quantity
        self._optional = optional
        self._whole = quantity in {Quantity.COUNT, Quantity.MINUTES}
        self._shown = ""
        self._inside: float | None = None
        self._units = Units()
        self.editor = QLineEdit(self)
        self.editor.setMaximumWidth(110)
        self._unit = QLabel(self)
        self.editor.editingFinished.connect(self._finished)
        self.hold(self.editor, self._unit)
        self._row.addStretch(1)
        self._say_unit()

    def set_units(self, units: Units) -> None:
        """Show the number in the studio's units from now on."""
        if units != self._units:
            self._units = units
            self._say_unit()
            self.show_value(self._inside)

    def _say_unit(self) -> None:
        unit = scale_of(self.quantity, self._units).unit
        self._unit.setText(unit)
        self.editor.setAccessibleName(f"{self.words}, {unit}" if unit else self.words)

    @override
    def _typed(self) -> str:
        return self.editor.text()

    @override
    def value(self) -> float | int | None:
        text = self.editor.text().strip()
        if not text:
            if self._optional:
                return None
            raise ValueError(translate("forms", "Write a number here."))
        if self._inside is not None and text == self._text_of(self._inside):
            # What was not touched comes back as it was, however it is rounded to be read.
            return round(self._inside) if self._whole else self._inside
        number = scale_of(self.quantity, self._units).inside(number_of(text))
        if self._whole and number != round(number):
            raise ValueError(translate("forms", "Write a whole number here."))
        return round(number) if self._whole else number

    @override
    def show_value(self, value: float | None) -> None:
        self.say_right()
        self._inside = value
        text = "" if value is None else self._text_of(value)
        self._shown = text
        self.editor.setText(text)

    def _text_of(self, value: float) -> str:
        # In the unit that it is kept in, a number is shown as it was typed.
        kept = scale_of(self.quantity, self._units).factor == 1.0
        return number_words(value) if kept else shown_number(value, self.quantity, self._units)


class ChoiceField(Field):
    """One of several values, each with its words."""

    def __init__(
        self,
        canvas: Canvas,
        label: str,
        options: Sequence[tuple[object, str]] = (),
        parent: QWidget | None = None,
    ) -> None:
        """Offer `options`, each a value and its words."""
        super().__init__(canvas, label, parent)
        self._values: list[object] = []
        self.editor = StillChoice(self)
        self.editor.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        self.editor.activated.connect(lambda _index: self.edited.emit())
        self.hold(self.editor)
        # Long words get all the room that there is, short ones what they need.
        self._row.setStretch(0, 0)
        self._row.addStretch(1)
        self.offer(options)

    def offer(self, options: Sequence[tuple[object, str]]) -> None:
        """Offer other values; the chosen one stays chosen where it is among them."""
        chosen = self.value() if self._values else None
        self._values = [value for value, _ in options]
        self.editor.clear()
        self.editor.addItems([words for _, words in options])
        if chosen in self._values:
            self.show_value(chosen)

    @override
    def value(self) -> Any:
        index = self.editor.currentIndex()
        return self._values[index] if 0 <= index < len(self._values) else None

    @override
    def show_value(self, value: object) -> None:
        self.say_right()
        self.editor.setCurrentIndex(self._values.index(value) if value in self._values else -1)


class FlagField(Field):
    """Yes or no."""

    def __init__(self, canvas: Canvas, label: str, parent: QWidget | None = None) -> None:
        """Start with no."""
        super().__init__(canvas, label, parent)
        self._label.hide()
        self.editor = QCheckBox(label, self)
        self.editor.clicked.connect(lambda _checked: self.edited.emit())
        self.hold(self.editor)

    @override
    def value(self) -> bool:
        return self.editor.isChecked()

    @override
    def show_value(self, value: bool) -> None:
        self.say_right()
        self.editor.setChecked(value)
