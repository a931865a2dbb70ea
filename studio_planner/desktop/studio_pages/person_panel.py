"""One pair of hands: name, waking hours, the week, its rows, and when they are away."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from studio_planner.desktop.forms.fields import TextField
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.forms.same_names import same_name_words
from studio_planner.desktop.forms.time_fields import TimeField
from studio_planner.desktop.studio_pages.absence_rows import AbsenceRows
from studio_planner.desktop.studio_pages.hours_rows import HoursRows
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.studio_pages.week_drawing import WeekDrawing
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.wrapping import Wrapping
from studio_planner.services.editing.people import changed_person, painted
from studio_planner.services.editing.weeks import (
    DAY_MINUTES,
    minutes,
    on_work_days,
    painted_week,
)

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from studio_planner.craft.hands import Person
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView
    from studio_planner.services.editing.weeks import Block


class PersonPanel(QWidget):
    """All about one person; it keeps what is being typed until somebody else is shown."""

    def __init__(self, desk: PageDesk, parent: QWidget) -> None:
        """Lie in the window `desk`, of nobody yet."""
        super().__init__(parent)
        self._desk = desk
        self._person: Person | None = None
        canvas = desk.canvas
        self.form = Form(canvas, self._enter, self)
        self.name = TextField(canvas, translate("hands", "Name"), self)
        self.name.editor.setMinimumWidth(160)
        self.wakes = TimeField(canvas, translate("hands", "Wakes"), self)
        self.sleeps = TimeField(canvas, translate("hands", "Goes to bed"), self)
        self.week = WeekDrawing(canvas, self)
        self.chosen = Line(canvas, "", self, font="small", colour="quiet")
        self.add_block = verb(
            translate("hands", "Add hours on the day"), self.week.add_block, self
        )
        self.remove_block = verb(
            translate("hands", "Remove the chosen hours"), self.week.remove_chosen, self
        )
        self.same = verb(translate("hands", "The same Monday to Friday"), self._same, self)
        self.hours = HoursRows(desk, self)
        self.absences = AbsenceRows(desk, self)
        self.week.painted.connect(self._painted)
        self.week.chosen_changed.connect(self._say_chosen)
        self._lay_out()
        self._say_chosen()

    def _lay_out(self) -> None:
        canvas = self._desk.canvas
        names = Wrapping()
        self.form.add("name", self.name, into=names)
        self.form.add("wakes", self.wakes, into=names)
        self.form.add("sleeps", self.sleeps, into=names)
        verbs = Wrapping()
        verbs.add(self.add_block, self.same, self.remove_block)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(6)
        layout.addLayout(names)
        layout.addWidget(self.form)
        layout.addWidget(self._title(translate("hands", "Working hours")))
        layout.addWidget(self.week)
        layout.addLayout(verbs)
        layout.addWidget(self.chosen)
        hint = translate(
            "hands",
            "Drag over a day to add hours, an end to change them, the middle to move them. "
            "Keys: Up and Down for the day, Left and Right for the hours, Enter adds, Shift or "
            "Alt with Left and Right moves an end, Ctrl all of it, Delete removes.",
        )
        layout.addWidget(Line(canvas, hint, self, font="small", colour="quiet"))
        layout.addWidget(self._title(translate("hands", "Away")))
        layout.addWidget(self.absences)
        layout.addWidget(self._title(translate("hands", "The same hours in rows")))
        layout.addWidget(self.hours)
        layout.addStretch(1)

    def _title(self, words: str) -> Line:
        line = Line(self._desk.canvas, words, self, font="bold")
        line.setContentsMargins(0, 10, 0, 0)
        return line

    def show_person(self, view: DeskView, person: Person) -> None:
        """Show somebody, as they are now."""
        fresh = self._person is None or self._person.key != person.key
        self._person = person
        units = view.studio.units
        values = {"name": person.name, "wakes": person.wakes, "sleeps": person.sleeps}
        self.form.show_values(values, units, fresh=fresh)
        self.name.advise(same_name_words(person, view.studio.people))
        self.week.show_week(painted_week(person.work), units, _asleep(person))
        today = view.now.astimezone(view.studio.time_zone).date()
        self.hours.show_person(person, units, today, fresh=fresh)
        self.absences.show_person(view, person, fresh=fresh)
        self._say_chosen()

    def forget(self) -> None:
        """Show whoever comes next as somebody new, even under the same key."""
        self._person = None

    def _enter(self, name: str, values: Mapping[str, Any]) -> None:
        if self._person is None:
            return
        what = {
            "name": translate("hands", "name"),
            "wakes": translate("hands", "waking hours"),
            "sleeps": translate("hands", "waking hours"),
        }
        self._desk.changes.make(
            changed_person(
                self._person,
                what[name],
                lambda now: replace(
                    now, name=values["name"], wakes=values["wakes"], sleeps=values["sleeps"]
                ),
            )
        )

    def _painted(self, blocks: Sequence[Block]) -> None:
        if self._person is not None:
            self._desk.changes.attempt(painted(self._person, blocks))

    def _same(self) -> None:
        if self.week.chosen is not None:
            self._painted(on_work_days(self.week.blocks, self.week.chosen))

    def _say_chosen(self) -> None:
        block = self.week.chosen
        for button in (self.same, self.remove_block):
            button.setEnabled(block is not None)
        said = "" if block is None else self.week.block_words(block)
        if said and said != self.chosen.text() and self.week.hasFocus():
            QAccessible.updateAccessibility(QAccessibleAnnouncementEvent(self.week, said))
        self.chosen.say(said)


def _asleep(person: Person) -> tuple[tuple[int, int], ...]:
    """Minutes of every day in which a person sleeps."""
    wakes, sleeps = minutes(person.wakes), minutes(person.sleeps)
    if sleeps < wakes:
        return ((sleeps, wakes),)
    return ((0, wakes), (sleeps, DAY_MINUTES))
