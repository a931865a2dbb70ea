"""What a question wants to know, as fields of the forms kit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from studio_planner.desktop.forms.fields import ChoiceField, FlagField, NumberField
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.forms.time_fields import DateField, TimeField
from studio_planner.desktop.layouts import take_out
from studio_planner.desktop.quantities import Quantity
from studio_planner.desktop.tongue import translate
from studio_planner.services.questions.asking import Kind

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping, Sequence

    from studio_planner.craft.settings import Units
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.forms.field import Field
    from studio_planner.services.questions.asking import Parameter

_QUANTITIES = {
    Kind.TEMPERATURE: Quantity.TEMPERATURE,
    Kind.MINUTES: Quantity.MINUTES,
    Kind.LENGTH: Quantity.LENGTH,
}
_IN_A_ROW = 2
_WIDEST_CHOICE = 300


class ParameterForm(QWidget):
    """Fields for the parameters of one question; made anew for another one.

    Signals:
        entered: the maker has finished with a field, and all of them make sense.
    """

    entered = Signal()

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Start without a field."""
        super().__init__(parent)
        self._canvas = canvas
        self._form: Form | None = None
        self._values: dict[str, Any] = {}
        self._keys: tuple[str, ...] = ()
        self._do: Callable[[Mapping[str, Any]], object] | None = None
        self._layout = QVBoxLayout(self)
        self._layout.setContentsMargins(0, 0, 0, 0)

    @property
    def fields(self) -> Mapping[str, Field]:
        """The fields by the keys of their parameters."""
        return {} if self._form is None else self._form.fields

    @property
    def values(self) -> dict[str, Any]:
        """What was entered last; what makes no sense is not among it."""
        return dict(self._values)

    def show_parameters(
        self, parameters: Sequence[Parameter], units: Units, given: Mapping[str, Any]
    ) -> None:
        """Show fields for parameters, with what is `given` in place of their own values.

        Where they are the same as before, the fields stay and what is being typed with them.
        """
        keys = tuple(one.key for one in parameters)
        fresh = keys != self._keys
        if fresh:
            self._build(parameters, keys)
        self._offer(parameters)
        self._values = {one.key: _value(one, given) for one in parameters}
        if self._form is not None:
            self._form.show_values(self._values, units, fresh=fresh)

    def _build(self, parameters: Sequence[Parameter], keys: tuple[str, ...]) -> None:
        if self._form is not None:
            take_out(self._layout, self._form)
        self._keys = keys
        form = self._form = Form(self._canvas, self._entered, self)
        rows = QVBoxLayout()
        for together in _in_rows(parameters):
            row = QHBoxLayout()
            row.setSpacing(18)
            for parameter in together:
                form.add(parameter.key, self._field(parameter, form), into=row)
            row.addStretch(1)
            rows.addLayout(row)
        inside = form.layout()
        if isinstance(inside, QVBoxLayout):
            inside.insertLayout(0, rows)
        self._layout.addWidget(form)

    def _field(self, parameter: Parameter, form: Form) -> Field:
        words = translate("questions", parameter.words)
        if parameter.kind is Kind.CHOICE:
            choice = ChoiceField(self._canvas, words, (), form)
            choice.editor.setMaximumWidth(_WIDEST_CHOICE)
            return choice
        if parameter.kind is Kind.FLAG:
            return FlagField(self._canvas, words, form)
        if parameter.kind is Kind.TIME:
            return TimeField(self._canvas, words, form)
        if parameter.kind is Kind.DATE:
            return DateField(self._canvas, words, form)
        return NumberField(self._canvas, words, _QUANTITIES[parameter.kind], form)

    def _offer(self, parameters: Sequence[Parameter]) -> None:
        for parameter in parameters:
            field = self.fields.get(parameter.key)
            if isinstance(field, ChoiceField):
                field.offer(parameter.options)

    def attempt(self, do: Callable[[Mapping[str, Any]], object]) -> bool:
        """Do something with what the fields say; what is wrong is said beside them.

        True when they all make sense and `do` has raised no StudioError.
        """
        self._do = do
        try:
            if self._form is not None:
                return self._form.enter("")
            do({})
        finally:
            self._do = None
        return True

    def _entered(self, _name: str, values: Mapping[str, Any]) -> None:
        self._values = dict(values)
        if self._do is None:
            self.entered.emit()
        else:
            self._do(values)


def _in_rows(parameters: Sequence[Parameter]) -> list[list[Parameter]]:
    """Two in a row at most; a date begins one, so that its time stands beside it."""
    rows: list[list[Parameter]] = []
    for parameter in parameters:
        begins = parameter.kind in {Kind.DATE, Kind.FLAG}
        if not rows or begins or len(rows[-1]) == _IN_A_ROW:
            rows.append([])
        rows[-1].append(parameter)
    return rows


def _value(parameter: Parameter, given: Mapping[str, Any]) -> object:
    value = given.get(parameter.key, parameter.value)
    offered = [key for key, _ in parameter.options]
    return parameter.value if parameter.kind is Kind.CHOICE and value not in offered else value
