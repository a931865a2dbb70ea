"""A form over one noun: each field that is edited becomes one change of the studio."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from studio_planner.craft.errors import InvalidEntry, StudioError
from studio_planner.desktop.forms.field import InUnits

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from studio_planner.craft.settings import Units
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.forms.field import Field


class Form(QWidget):
    """Fields by name, and a line at the foot for what belongs to none of them.

    `enter` gets the name of the field that was edited and the values of all fields by name; it
    makes the change, and lets InvalidEntry pass, whose broken rules are then said beside the
    fields they name. What is wrong is not kept and stays in its field, as typed.
    """

    def __init__(
        self,
        canvas: Canvas,
        enter: Callable[[str, Mapping[str, Any]], object],
        parent: QWidget | None = None,
    ) -> None:
        """Start without fields."""
        super().__init__(parent)
        self.canvas = canvas
        self.fields: dict[str, Field] = {}
        self._enter = enter
        self._body = QVBoxLayout()
        self._body.setContentsMargins(0, 0, 0, 0)
        self._body.setSpacing(4)
        self._rest = QLabel(self)
        self._rest.setWordWrap(True)
        self._rest.setTextFormat(Qt.TextFormat.PlainText)
        self._rest.hide()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(self._body)
        layout.addWidget(self._rest)
        canvas.recoloured.connect(self._recolour)
        self._recolour()

    def add(self, name: str, field: Field, *, into: Any = None) -> Field:  # noqa: ANN401 - a layout of Qt
        """Add a field under the name that the craft gives it; `into` a layout of the page."""
        self.fields[name] = field
        (self._body if into is None else into).addWidget(field)
        field.edited.connect(lambda: self.enter(name))
        field.answer_with(lambda: self.refused)
        return field

    def show_values(
        self, values: Mapping[str, Any], units: Units, *, fresh: bool = False
    ) -> None:
        """Show values by the fields' names.

        What is being typed is left alone, and everything while something is wrong, unless the
        values are those of another thing (`fresh`).
        """
        if not fresh and self.refused:
            return
        self._rest.hide()
        for name, field in self.fields.items():
            if isinstance(field, InUnits):
                field.set_units(units)
            if name in values and (fresh or not field.in_hand):
                field.show_value(values[name])

    def enter(self, name: str) -> bool:
        """Enter what the fields say after `name` was edited; True when it was taken."""
        for field in self.fields.values():
            field.say_right()
        self._rest.hide()
        values = self._values()
        if values is None:
            return False
        try:
            self._enter(name, values)
        except InvalidEntry as error:
            self._say(error)
        except StudioError as error:
            self._say_rest(str(error))
        else:
            return True
        return False

    def _values(self) -> dict[str, Any] | None:
        values, whole = {}, True
        for name, field in self.fields.items():
            try:
                values[name] = field.value()
            except ValueError as error:
                field.say_wrong(str(error))
                whole = False
        return values if whole else None

    def _say(self, error: InvalidEntry) -> None:
        left = []
        for rule in error.broken:
            field = self._field_for(rule.field)
            if field is None:
                left.append(rule.sentence if rule.field in {"", "studio"} else str(rule))
            else:
                field.say_wrong(rule.sentence)
        if left:
            self._say_rest(" ".join(left))

    def _field_for(self, named: str) -> Field | None:
        # A rule of the whole studio names the way to its field: "piece Moon, coat a, film_mm".
        return self.fields.get(named) or self.fields.get(named.rpartition(", ")[2])

    def _say_rest(self, sentence: str) -> None:
        self._rest.setText(f"\N{BLACK RIGHT-POINTING TRIANGLE} {sentence}")
        self._rest.show()

    @property
    def wrong(self) -> str:
        """What is said at the foot; empty when nothing is."""
        return "" if self._rest.isHidden() else self._rest.text()[2:]

    @property
    def refused(self) -> str:
        """The first of all that is said to be wrong; empty when nothing is."""
        said = (*(field.wrong for field in self.fields.values()), self.wrong)
        return next(filter(None, said), "")

    def _recolour(self) -> None:
        palette = self._rest.palette()
        palette.setColor(palette.ColorRole.WindowText, self.canvas.theme.colour("now"))
        self._rest.setPalette(palette)
