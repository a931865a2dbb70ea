"""How the studio reminds: means, quiet hours, what of, with the window closed, on the phone."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.craft.reminders import Means, ReminderKind, reminder_word
from studio_planner.desktop import words
from studio_planner.desktop.due_pages.closed_part import ClosedPart
from studio_planner.desktop.due_pages.kinds_part import KindsPart
from studio_planner.desktop.due_pages.means_part import MeansPart
from studio_planner.desktop.due_pages.phone_part import PhonePart
from studio_planner.desktop.forms.fields import NumberField
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.forms.time_fields import TimeField
from studio_planner.desktop.page import Page
from studio_planner.desktop.quantities import Quantity
from studio_planner.desktop.studio_pages.lines import Line
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.wrapping import Wrapping
from studio_planner.services.editing.reminding_words import (
    changed_lead,
    changed_reminding,
    switched_kind,
    switched_means,
)

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.reminders import Reminding
    from studio_planner.craft.settings import ClockForm
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView
    from studio_planner.services.editing.changes import Change
    from studio_planner.services.reminding.due_list import DueList

_WIDEST = 860
_OWN = ("quiet_from", "quiet_to", "evening", "readings_hours", "moved_minutes")


class RemindersSection(Page):
    """One form for all of it; each change is one step of the studio."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Lie in the window `desk`, of no studio yet."""
        super().__init__(desk, parent)
        canvas, reminding = self.canvas, desk.reminding
        self._path: object = None
        self.form = Form(canvas, self._enter, self)
        self.means = MeansPart(canvas, self.form, reminding, self)
        self.quiet_from = TimeField(canvas, translate("reminding", "Quiet from"), self)
        self.quiet_to = TimeField(canvas, translate("reminding", "Quiet to"), self)
        self.evening = TimeField(
            canvas, translate("reminding", "Tell of the night's air at"), self
        )
        self.quiet = Line(canvas, "", self)
        self.tonight = Line(canvas, "", self, font="small", colour="quiet")
        self.kinds = KindsPart(canvas, self.form, self)
        self.closed = ClosedPart(canvas, self.form, reminding.closed, self)
        self.phone = PhonePart(canvas, desk.calendars, self)
        self._lay_out()
        reminding.answers.changed.connect(self._show_tonight)

    def _lay_out(self) -> None:
        column = QWidget(self)
        column.setMaximumWidth(_WIDEST)
        layout = QVBoxLayout(column)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(6)
        layout.addWidget(
            Line(self.canvas, translate("reminding", "Reminders"), self, font="clock")
        )
        said = translate(
            "reminding",
            "What is due always stands in the list at the top of the window, until you have "
            "answered it. Beside that, the studio can reach you by these means.",
        )
        layout.addWidget(Line(self.canvas, said, self, colour="quiet"))
        layout.addWidget(self.means)
        self._head(layout, translate("reminding", "Quiet hours"))
        self._row(layout, ("quiet_from", self.quiet_from), ("quiet_to", self.quiet_to))
        layout.addWidget(self.quiet)
        layout.addWidget(self.tonight)
        self._head(layout, translate("reminding", "What of, and how long before"))
        layout.addWidget(self.kinds)
        self._row(
            layout,
            ("evening", self.evening),
            ("readings_hours", self._readings()),
            ("moved_minutes", self._moved()),
        )
        self._head(layout, translate("reminding", "With the window closed"))
        layout.addWidget(self.closed)
        self._head(layout, translate("reminding", "On the phone"))
        said = translate(
            "reminding",
            "A calendar file takes the plan to a phone, which rings by itself. It knows the "
            "plan as it is now: write it again after the plan has changed.",
        )
        layout.addWidget(Line(self.canvas, said, self, colour="quiet"))
        layout.addWidget(self.phone)
        layout.addWidget(self.form)
        layout.addStretch(1)
        whole = QHBoxLayout(self)
        whole.setContentsMargins(20, 12, 16, 12)
        whole.addWidget(column, 10)
        whole.addStretch(1)

    def _head(self, layout: QVBoxLayout, words: str) -> None:
        line = Line(self.canvas, words, self, font="bold")
        line.setContentsMargins(0, 14, 0, 0)
        layout.addWidget(line)

    def _row(self, layout: QVBoxLayout, *fields: tuple[str, Any]) -> None:
        row = Wrapping(across=24)
        for name, field in fields:
            self.form.add(name, field, into=row)
        layout.addLayout(row)

    def _readings(self) -> NumberField:
        words = translate("reminding", "Readings are missed after")
        return NumberField(self.canvas, words, Quantity.HOURS, self)

    def _moved(self) -> NumberField:
        words = translate("reminding", "Tell of windows that moved by")
        return NumberField(self.canvas, words, Quantity.MINUTES, self)

    @override
    def show_view(self, view: DeskView | None) -> None:
        self.setEnabled(view is not None)
        if view is None:
            return
        session = self.desk.session
        path = None if session is None else session.path
        fresh, self._path = path != self._path, path
        studio = view.studio
        reminding = studio.reminding
        values: dict[str, Any] = {name: getattr(reminding, name) for name in _OWN}
        values["stays_in_tray"] = reminding.stays_in_tray
        values |= self.kinds.show_reminding(reminding)
        values |= self.means.show_reminding(reminding)
        self.form.show_values(values, studio.units, fresh=fresh)
        self.quiet.say(_quiet_words(reminding, studio.units.clock))
        self.closed.show_state()
        self.phone.show_studio(studio)
        self._show_tonight(self.desk.reminding.answers.due)

    def _show_tonight(self, due: DueList | None) -> None:
        self.tonight.say("" if due is None else "\n".join(due.tonight))

    def _enter(self, name: str, values: Mapping[str, Any]) -> None:
        self.desk.changes.make(_change(name, values[name]))


def _change(name: str, value: Any) -> Change:  # noqa: ANN401 - each field has its own kind
    sort, _, which = name.partition(", ")
    if sort == "leads":
        kind = ReminderKind(which)
        return changed_lead(reminder_word(kind), kind, value)
    if sort == "off":
        kind = ReminderKind(which)
        return switched_kind(reminder_word(kind), kind, on=value)
    if sort == "means":
        means = Means(which)
        return switched_means(reminder_word(means), means, on=value)
    return changed_reminding(_what(name), {name: value})


def _what(name: str) -> str:
    return {
        "evening": translate("reminding", "hour of the evening"),
        "readings_hours": translate("reminding", "missing readings"),
        "moved_minutes": translate("reminding", "moved windows"),
        "stays_in_tray": translate("reminding", "in the tray"),
    }.get(name, translate("reminding", "quiet hours"))


def _quiet_words(reminding: Reminding, form: ClockForm) -> str:
    start, end = reminding.quiet_from, reminding.quiet_to
    if start == end:
        return translate("reminding", "There are no quiet hours: everything rings at its time.")
    return translate(
        "reminding",
        "From {start} to {end} only what can't be saved later rings, such as the last torch or "
        "a window in which a coat that cannot be sanded is lost. All else waits until {end}. "
        "Hours in which somebody works are never quiet.",
    ).format(start=words.time_of_day(start, form), end=words.time_of_day(end, form))
