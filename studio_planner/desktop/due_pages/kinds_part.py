"""What the studio reminds of, and how long before."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QHBoxLayout, QWidget

from studio_planner.craft.reminders import ReminderKind, reminder_word
from studio_planner.craft.tongue import capital
from studio_planner.desktop.forms.fields import FlagField, NumberField
from studio_planner.desktop.quantities import Quantity
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.wrapping import Wrapping

if TYPE_CHECKING:
    from studio_planner.craft.reminders import Reminding
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.forms.form import Form

_WITHOUT_LEAD = frozenset({ReminderKind.READINGS, ReminderKind.MOVED})
"""What is told of as soon as it is known."""

_FLAG_WIDTH, _NUMBER_WIDTH = 250, 160


class _Lead(NumberField):
    """Minutes in the line of their tick; only a screen reader needs their name."""

    def __init__(self, canvas: Canvas, what: str, parent: QWidget) -> None:
        spoken = translate("reminding", "{what}: minutes before its time").format(what=what)
        super().__init__(canvas, spoken, Quantity.MINUTES, parent)
        self._label.hide()
        self.editor.setMaximumWidth(64)
        self._unit.setText(translate("reminding", "min before"))


def switch_of(kind: ReminderKind) -> str:
    """The name of the field that switches a kind on and off."""
    return f"off, {kind.value}"


def lead_of(kind: ReminderKind) -> str:
    """The name of the field of a kind's minutes, as the craft calls it."""
    return f"leads, {kind.value}"


class KindsPart(QWidget):
    """A tick and some minutes for each kind."""

    def __init__(self, canvas: Canvas, form: Form, parent: QWidget) -> None:
        """Put the fields into `form`."""
        super().__init__(parent)
        self.switches: dict[ReminderKind, FlagField] = {}
        self.leads: dict[ReminderKind, NumberField] = {}
        cells = Wrapping(across=28, down=2)
        for kind in ReminderKind:
            cells.add(self._cell(canvas, form, kind))
        self.setLayout(cells)

    def _cell(self, canvas: Canvas, form: Form, kind: ReminderKind) -> QWidget:
        words = capital(reminder_word(kind))
        cell = QWidget(self)
        cell.setFixedWidth(_FLAG_WIDTH + _NUMBER_WIDTH)
        row = QHBoxLayout(cell)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        self.switches[kind] = flag = FlagField(canvas, words, self)
        flag.setFixedWidth(_FLAG_WIDTH)
        form.add(switch_of(kind), flag, into=row)
        if kind in _WITHOUT_LEAD:
            row.addStretch(1)
            return cell
        self.leads[kind] = lead = _Lead(canvas, words, self)
        lead.setFixedWidth(_NUMBER_WIDTH)
        form.add(lead_of(kind), lead, into=row)
        return cell

    def show_reminding(self, reminding: Reminding) -> dict[str, object]:
        """The values of all fields."""
        values: dict[str, object] = {
            switch_of(k): k not in reminding.off for k in self.switches
        }
        return values | {lead_of(kind): reminding.lead(kind) for kind in self.leads}
