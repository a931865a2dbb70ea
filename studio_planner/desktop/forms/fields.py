"""One field: a label, an editor, its unit, and a line that says what is wrong with it."""

from __future__ import annotations

from datetime import date, time
from typing import TYPE_CHECKING, Any, Protocol, runtime_checkable

from PySide6.QtCore import QDate, Qt, QTime, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPlainTextEdit,
    QVBoxLayout,
    QWidget,
)
from typing_extensions import override

from studio_planner.craft.settings import ClockForm, Units
from studio_planner.desktop.forms.still_editors import StillChoice, StillDate, StillTime
from studio_planner.desktop.quantities import (
    Quantity,
    number_of,
    number_words,
    scale_of,
)
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Sequence

    from PySide6.QtGui import QFocusEvent

    from studio_planner.desktop.canvas import Canvas


class Field(QWidget):
    """A labelled editor. What is typed stays, right or wrong, until it is shown anew.

    Signals:
        edited: the maker has finished with the field, and it reads otherwise than before.
    """

    edited = Signal()

    def __init__(self, canvas: Canvas, label: str, parent: QWidget | None = None) -> None:
        """Put `label` over an editor that a subclass adds with `hold`."""
        super().__init__(parent)
        self.canvas = canvas
        self.words = label
        self._label = QLabel(label, self)
        self._wrong = QLabel(self)
        self._wrong.setWordWrap(True)
        self._wrong.setTextFormat(Qt.TextFormat.PlainText)
        self._wrong.hide()
        self._advice = QLabel(self)
        self._advice.setWordWrap(True)
        self._advice.setTextFormat(Qt.TextFormat.PlainText)
        self._advice.hide()
        self._row = QHBoxLayout()
        self._row.setSpacing(6)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 4)
        layout.setSpacing(2)
        # Beside a higher field the label stays over its editor.
        layout.setAlignment(Qt.AlignmentFlag.AlignTop)
        layout.addWidget(self._label)
        layout.addLayout(self._row)
        layout.addWidget(self._wrong)
        layout.addWidget(self._advice)
        canvas.redrawn.connect(self._recolour)
        self._recolour()

    def rename(self, label: str) -> None:
        """Say another label; the editor takes its name with the next unit or value shown."""
        self.words = label
        self._label.setText(label)
        buddy = self._label.buddy()
        if buddy is not None:
            buddy.setAccessibleName(label)

    def hold(self, editor: QWidget, unit: QLabel | None = None) -> None:
        """Take the editor in; a screen reader hears the label with it."""
        editor.setAccessibleName(self.words)
        self._label.setBuddy(editor)
        self._row.addWidget(editor, 1)
        if unit is not None:
            self._row.addWidget(unit)
        self.setFocusProxy(editor)

    def value(self) -> Any:  # noqa: ANN401 - each field has its own kind of value
        """What the field says; ValueError in a sentence when that makes no sense."""
        raise NotImplementedError

    def show_value(self, value: Any) -> None:  # noqa: ANN401 - likewise
        """Show a value; what was wrong before is forgotten."""
        raise NotImplementedError

    def say_wrong(self, sentence: str) -> None:
        """Say under the field what is wrong with it."""
        self._wrong.setText(f"\N{BLACK RIGHT-POINTING TRIANGLE} {sentence}")
        self._wrong.show()
        editor = self.focusProxy()
        if editor is not None:
            editor.setAccessibleDescription(sentence)

    def say_right(self) -> None:
        """Take back what was said to be wrong."""
        self._wrong.hide()
        editor = self.focusProxy()
        if editor is not None:
            editor.setAccessibleDescription("")

    def advise(self, sentence: str) -> None:
        """Say under the field what wants a second look though it is kept; empty: nothing."""
        self._advice.setText(sentence)
        self._advice.setVisible(bool(sentence))

    @property
    def advice(self) -> str:
        """What wants a second look; empty when nothing does."""
        return self._advice.text()

    @property
    def in_hand(self) -> bool:
        """Whether the maker is in the middle of typing into it."""
        editor = self.focusProxy()
        if editor is None or not editor.hasFocus():
            return False
        return editor.isModified() if isinstance(editor, QLineEdit) else self._unfinished()

    def _unfinished(self) -> bool:
        """Whether an editor that has the focus holds something that was not told yet."""
        return False

    @property
    def wrong(self) -> str:
        """What is said to be wrong with it; empty when nothing is."""
        return "" if self._wrong.isHidden() else self._wrong.text()[2:]

    def _recolour(self) -> None:
        theme = self.canvas.theme
        self._label.setFont(self.canvas.fonts.small)
        self._wrong.setFont(self.canvas.fonts.small)
        self._advice.setFont(self.canvas.fonts.small)
        coloured = ((self._label, "quiet"), (self._wrong, "now"), (self._advice, "warmth"))
        for label, colour in coloured:
            palette = label.palette()
            palette.setColor(palette.ColorRole.WindowText, theme.colour(colour))
            label.setPalette(palette)


class TextField(Field):
    """A line of text."""

    def __init__(self, canvas: Canvas, label: str, parent: QWidget | None = None) -> None:
        """Start empty."""
        super().__init__(canvas, label, parent)
        self._shown = ""
        self.editor = QLineEdit(self)
        self.editor.editingFinished.connect(self._finished)
        self.hold(self.editor)

    def _finished(self) -> None:
        if self.editor.text() != self._shown:
            self._shown = self.editor.text()
            self.edited.emit()

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


class NoteField(Field):
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
    def _unfinished(self) -> bool:
        return self.editor.toPlainText() != self._shown

    def _finished(self) -> None:
        if self.editor.toPlainText() != self._shown:
            self._shown = self.editor.toPlainText()
            self.edited.emit()

    @override
    def value(self) -> str:
        return self.editor.toPlainText().strip()

    @override
    def show_value(self, value: str) -> None:
        self.say_right()
        self._shown = value
        self.editor.setPlainText(value)


class NumberField(Field):
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

    def _finished(self) -> None:
        if self.editor.text() != self._shown:
            self._shown = self.editor.text()
            self.edited.emit()

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
        self._shown = "" if value is None else self._text_of(value)
        self.editor.setText(self._shown)

    def _text_of(self, value: float) -> str:
        scale = scale_of(self.quantity, self._units)
        # In another unit than the kept one a number has figures that nobody measured.
        digits = 6 if scale.factor == 1.0 else 4
        return number_words(scale.shown(value), digits=digits)


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


class TimeField(Field):
    """A time of day."""

    def __init__(self, canvas: Canvas, label: str, parent: QWidget | None = None) -> None:
        """Start at midnight."""
        super().__init__(canvas, label, parent)
        self._shown = time()
        self.editor = StillTime(self)
        self.editor.setDisplayFormat("HH:mm")
        self.editor.editingFinished.connect(self._finished)
        self.hold(self.editor)
        self._row.addStretch(1)

    def set_units(self, units: Units) -> None:
        """Write the time as the studio does."""
        twelve = units.clock is ClockForm.HOURS_12
        self.editor.setDisplayFormat("h:mm ap" if twelve else "HH:mm")

    @override
    def _unfinished(self) -> bool:
        return self.value() != self._shown

    def _finished(self) -> None:
        if self.value() != self._shown:
            self._shown = self.value()
            self.edited.emit()

    @override
    def value(self) -> time:
        shown = self.editor.time()
        return time(shown.hour(), shown.minute())

    @override
    def show_value(self, value: time) -> None:
        self.say_right()
        self._shown = value.replace(second=0, microsecond=0)
        self.editor.setTime(QTime(value.hour, value.minute))


class DateField(Field):
    """A date, with a calendar to choose from."""

    def __init__(self, canvas: Canvas, label: str, parent: QWidget | None = None) -> None:
        """Start with the calendar's own first date."""
        super().__init__(canvas, label, parent)
        self._shown = date(2000, 1, 1)
        self.editor = StillDate(self)
        self.editor.setCalendarPopup(True)
        self.editor.setDisplayFormat("ddd d MMM yyyy")
        self.editor.editingFinished.connect(self._finished)
        self.hold(self.editor)
        self._row.addStretch(1)

    def set_units(self, units: Units) -> None:
        """Begin the calendar's weeks on the day that the studio's begin on."""
        self.editor.calendarWidget().setFirstDayOfWeek(Qt.DayOfWeek(units.week_starts + 1))

    @override
    def _unfinished(self) -> bool:
        return self.value() != self._shown

    def _finished(self) -> None:
        if self.value() != self._shown:
            self._shown = self.value()
            self.edited.emit()

    @override
    def value(self) -> date:
        shown = self.editor.date()
        return date(shown.year(), shown.month(), shown.day())

    @override
    def show_value(self, value: date) -> None:
        self.say_right()
        self._shown = value
        self.editor.setDate(QDate(value.year, value.month, value.day))


@runtime_checkable
class InUnits(Protocol):
    """A field that follows the studio's units."""

    def set_units(self, units: Units) -> None:
        """Show the value in those units from now on."""
        ...
