"""Working hours as rows of fields: days, from, to, and how often; and rules said in words."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from studio_planner.desktop import words
from studio_planner.desktop.forms.days_field import DaysField
from studio_planner.desktop.forms.fields import NumberField
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.forms.time_fields import DateField, TimeField
from studio_planner.desktop.layouts import take_out
from studio_planner.desktop.quantities import Quantity
from studio_planner.desktop.studio_pages.lines import Line, Rule, verb
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.wrapping import Wrapping
from studio_planner.services.editing.people import NEW_HOURS, with_hours
from studio_planner.services.editing.rule_words import rule_words
from studio_planner.services.editing.weeks import WeekRule, hours_of, week_rule

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import date

    from studio_planner.craft.hands import Person, WorkHours
    from studio_planner.craft.settings import Units
    from studio_planner.desktop.page import PageDesk


class HoursRow(QWidget):
    """Hours that days and weeks can say, in fields."""

    def __init__(self, desk: PageDesk, index: int, parent: QWidget) -> None:
        """Be the row of the hours at `index`."""
        super().__init__(parent)
        self._desk = desk
        self._index = index
        self._person: Person | None = None
        canvas = desk.canvas
        self.form = Form(canvas, self._enter, self)
        self.days = DaysField(canvas, translate("hours", "Days"), self)
        self.start = TimeField(canvas, translate("hours", "From"), self)
        self.end = TimeField(canvas, translate("hours", "To"), self)
        self.every = NumberField(
            canvas, translate("hours", "Every so many weeks"), Quantity.COUNT, self
        )
        self.first = DateField(canvas, translate("hours", "First date"), self)
        self.remove = verb(translate("hours", "Remove"), self._remove, self)
        line = Wrapping()
        for name, field in (
            ("start", self.start),
            ("end", self.end),
            ("every", self.every),
            ("first", self.first),
        ):
            self.form.add(name, field, into=line)
        line.add(self.remove)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 6, 0, 2)
        layout.setSpacing(2)
        self.form.add("days", self.days, into=layout)
        layout.addLayout(line)
        layout.addWidget(self.form)
        layout.addWidget(Rule(canvas, self))

    def show_hours(self, person: Person, units: Units, today: date, *, fresh: bool) -> None:
        """Show the hours of the row; `today` is offered as a first date."""
        self._person = person
        hours = person.work[self._index]
        rule = week_rule(hours)
        if rule is None:
            return
        values = {
            "days": rule.days,
            "start": rule.start,
            "end": rule.end,
            "every": rule.every,
            "first": rule.first or today,
        }
        self.form.show_values(values, units, fresh=fresh)
        self.first.setVisible(not rule.painted)
        about = f"{person.name}, {rule_words(hours.rule, hours.first)}"
        self.remove.setAccessibleName(f"{self.remove.text()}: {about}")

    def _enter(self, name: str, values: Mapping[str, Any]) -> None:
        if self._person is None:
            return
        painted = values["every"] == 1 and (self.first.isHidden() or name == "every")
        hours = hours_of(
            WeekRule(
                days=values["days"],
                start=values["start"],
                end=values["end"],
                every=values["every"],
                first=None if painted else values["first"],
            )
        )
        self._desk.changes.make(with_hours(self._person, self._index, hours))

    def _remove(self) -> None:
        if self._person is not None:
            self._desk.changes.attempt(with_hours(self._person, self._index, None))


class SaidRow(QWidget):
    """Hours whose rule no fields can say: in words, kept as they are."""

    def __init__(self, desk: PageDesk, index: int, parent: QWidget) -> None:
        """Be the row of the hours at `index`."""
        super().__init__(parent)
        self._desk = desk
        self._index = index
        self._person: Person | None = None
        self.said = Line(desk.canvas, "", self)
        self.remove = verb(translate("hours", "Remove"), self._remove, self)
        line = QHBoxLayout()
        line.addWidget(self.said, 1)
        line.addWidget(self.remove)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 6, 0, 2)
        layout.addLayout(line)
        layout.addWidget(Rule(desk.canvas, self))

    def show_hours(self, person: Person, units: Units, _today: date, *, fresh: bool) -> None:
        """Say the hours of the row."""
        del fresh  # there is nothing to type into
        self._person = person
        hours = person.work[self._index]
        said = translate("hours", "{rule}: {start} to {end}. Kept as it is.").format(
            rule=_capital(rule_words(hours.rule, hours.first)),
            start=words.time_of_day(hours.start, units.clock),
            end=words.time_of_day(hours.end, units.clock),
        )
        self.said.say(said)
        self.remove.setAccessibleName(f"{self.remove.text()}: {said}")

    def _remove(self) -> None:
        if self._person is not None:
            self._desk.changes.attempt(with_hours(self._person, self._index, None))


class HoursRows(QWidget):
    """All hours of one person, and the verb to add more."""

    def __init__(self, desk: PageDesk, parent: QWidget) -> None:
        """Lie in the window `desk`, without hours yet."""
        super().__init__(parent)
        self._desk = desk
        self._person: Person | None = None
        self.rows: list[HoursRow | SaidRow] = []
        self.add_button = verb(translate("hours", "Add a row of hours"), self._add, self)
        self._layout = QVBoxLayout(self)
        self._layout.setContentsMargins(0, 0, 0, 0)
        self._layout.setSpacing(0)
        foot = QHBoxLayout()
        foot.setContentsMargins(0, 8, 0, 0)
        foot.addWidget(self.add_button)
        foot.addStretch(1)
        self._layout.addLayout(foot)

    def show_person(self, person: Person, units: Units, today: date, *, fresh: bool) -> None:
        """Show somebody's hours; rows that stay keep what is being typed into them."""
        self._person = person
        kinds = [_kind(hours) for hours in person.work]
        while self.rows and (
            len(self.rows) > len(kinds)
            or not all(isinstance(r, k) for r, k in zip(self.rows, kinds, strict=False))
        ):
            self._drop_last()
        for index in range(len(self.rows), len(kinds)):
            row = kinds[index](self._desk, index, self)
            self.rows.append(row)
            self._layout.insertWidget(index, row)
        for row in self.rows:
            row.show_hours(person, units, today, fresh=fresh)

    def _drop_last(self) -> None:
        take_out(self._layout, self.rows.pop())

    def _add(self) -> None:
        if self._person is not None:
            self._desk.changes.attempt(with_hours(self._person, None, NEW_HOURS))


def _kind(hours: WorkHours) -> type[HoursRow | SaidRow]:
    return SaidRow if week_rule(hours) is None else HoursRow


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
