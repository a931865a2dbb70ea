"""When somebody is away: rows of from, to and why; what has gone by is folded away."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtWidgets import QVBoxLayout, QWidget

from studio_planner.craft.hands import Absence
from studio_planner.desktop import words
from studio_planner.desktop.forms.fields import TextField
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.forms.moment_field import MomentField
from studio_planner.desktop.layouts import take_out
from studio_planner.desktop.studio_pages.lines import Line, Rule, verb
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.wrapping import Wrapping
from studio_planner.services.editing.people import (
    away_this_evening,
    away_today,
    new_absence,
    with_absence,
    without_past,
)

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.hands import Person
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView


class AbsenceRow(QWidget):
    """One absence in fields."""

    def __init__(self, desk: PageDesk, parent: QWidget) -> None:
        """Lie in the window `desk`, of no absence yet."""
        super().__init__(parent)
        self._desk = desk
        self._person: Person | None = None
        self._index = -1
        canvas = desk.canvas
        self.form = Form(canvas, self._enter, self)
        self.start = MomentField(canvas, translate("away", "Away from"), self)
        self.end = MomentField(canvas, translate("away", "Back at"), self)
        self.why = TextField(canvas, translate("away", "Why"), self)
        self.why.editor.setMinimumWidth(110)
        self.remove = verb(translate("away", "Remove"), self._remove, self)
        line = Wrapping()
        for name, field in (("start", self.start), ("end", self.end), ("why", self.why)):
            self.form.add(name, field, into=line)
        line.add(self.remove)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 6, 0, 2)
        layout.setSpacing(2)
        layout.addLayout(line)
        layout.addWidget(self.form)
        layout.addWidget(Rule(canvas, self))

    def show_absence(self, studio: Studio, person: Person, index: int, *, fresh: bool) -> None:
        """Show the absence at `index`."""
        fresh = fresh or index != self._index
        self._person, self._index = person, index
        absence = person.absences[index]
        for field in (self.start, self.end):
            field.set_zone(studio.time_zone)
        values = {"start": absence.start, "end": absence.end, "why": absence.why}
        self.form.show_values(values, studio.units, fresh=fresh)
        wall = words.wall_of(studio)
        about = f"{person.name}, {words.span(absence.start, absence.end, wall)}"
        self.remove.setAccessibleName(f"{self.remove.text()}: {about}")

    def _enter(self, _name: str, values: Mapping[str, Any]) -> None:
        if self._person is not None:
            absence = Absence(start=values["start"], end=values["end"], why=values["why"])
            self._desk.changes.make(with_absence(self._person, self._index, absence))

    def _remove(self) -> None:
        if self._person is not None:
            self._desk.changes.attempt(with_absence(self._person, self._index, None))


class AbsenceRows(QWidget):
    """Absences that last or come, and the verbs to be away with one tap."""

    def __init__(self, desk: PageDesk, parent: QWidget) -> None:
        """Lie in the window `desk`, of nobody yet."""
        super().__init__(parent)
        self._desk = desk
        self._person: Person | None = None
        self._open = False
        canvas = desk.canvas
        self.rows: list[AbsenceRow] = []
        self.evening = verb(translate("away", "Away this evening"), self._this_evening, self)
        self.today = verb(translate("away", "Away today"), self._today, self)
        self.add_button = verb(translate("away", "Add an absence"), self._add, self)
        self.fold = verb("", self._unfold, self)
        self.forget = verb(translate("away", "Remove what has gone by"), self._forget, self)
        self.past = Line(canvas, "", self, font="small", colour="quiet")
        self.none = Line(canvas, translate("away", "Nobody is missed."), self, colour="quiet")
        self._layout = QVBoxLayout()
        self._lay_out()

    def _lay_out(self) -> None:
        verbs, folding = Wrapping(), Wrapping()
        verbs.add(self.evening, self.today, self.add_button)
        folding.add(self.fold, self.forget)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(verbs)
        layout.addWidget(self.none)
        layout.addLayout(self._layout)
        layout.addLayout(folding)
        layout.addWidget(self.past)

    def show_person(self, view: DeskView, person: Person, *, fresh: bool) -> None:
        """Show when somebody is away from now on, earliest first, and what has gone by."""
        self._person = person
        absences = person.absences
        order = sorted(range(len(absences)), key=lambda index: absences[index].start)
        to_come = [index for index in order if absences[index].end > view.now]
        while len(self.rows) > len(to_come):
            take_out(self._layout, self.rows.pop())
        for _ in range(len(self.rows), len(to_come)):
            row = AbsenceRow(self._desk, self)
            self.rows.append(row)
            self._layout.addWidget(row)
        for row, index in zip(self.rows, to_come, strict=True):
            row.show_absence(view.studio, person, index, fresh=fresh)
        self.none.setVisible(not to_come)
        self.none.say(translate("away", "{name} is always there.").format(name=person.name))
        self.none.setVisible(not to_come)
        self._show_past(
            view.studio, [absences[index] for index in order if index not in to_come]
        )

    def _show_past(self, studio: Studio, past: list[Absence]) -> None:
        wall = words.wall_of(studio)
        count = len(past)
        words_for = (
            translate("away", "Hide what has gone by")
            if self._open
            else translate("away", "Gone by: {count}").format(count=count)
        )
        self.fold.setText(words_for)
        self.fold.setAccessibleName(words_for)
        self.fold.setVisible(bool(past))
        said = [
            f"{words.span(absence.start, absence.end, wall)}"
            + (f", {absence.why}" if absence.why else "")
            for absence in past
        ]
        self.past.setText("\n".join(said))
        for part in (self.past, self.forget):
            part.setVisible(self._open and bool(past))

    def _unfold(self) -> None:
        self._open = not self._open
        session = self._desk.session
        if session is not None and self._person is not None:
            self.show_person(session.view, self._person, fresh=False)

    def _forget(self) -> None:
        session = self._desk.session
        if session is not None and self._person is not None:
            self._desk.changes.attempt(without_past(self._person, session.now()))

    def _this_evening(self) -> None:
        session = self._desk.session
        if session is not None and self._person is not None:
            zone = session.studio.time_zone
            self._desk.changes.attempt(away_this_evening(self._person, zone, session.now()))

    def _today(self) -> None:
        session = self._desk.session
        if session is not None and self._person is not None:
            zone = session.studio.time_zone
            self._desk.changes.attempt(away_today(self._person, zone, session.now()))

    def _add(self) -> None:
        session = self._desk.session
        if session is not None and self._person is not None:
            absence = new_absence(session.studio.time_zone, session.now())
            self._desk.changes.attempt(with_absence(self._person, None, absence))
