"""By which means the studio reminds, whether each works, and a way to try them all."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QVBoxLayout, QWidget

from studio_planner.craft.reminders import Means, reminder_word
from studio_planner.craft.tongue import capital
from studio_planner.desktop.forms.fields import FlagField
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from studio_planner.craft.reminders import Reminding
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.forms.form import Form
    from studio_planner.desktop.reminding.desk_reminding import DeskReminding

MEANS = (Means.NOTIFICATION, Means.TRAY, Means.SOUND)
"""What an open desk can use."""

_SIGN = "\N{BLACK RIGHT-POINTING TRIANGLE}"


def field_of(means: Means) -> str:
    """The name of a means' field."""
    return f"means, {means.value}"


class MeansPart(QWidget):
    """A tick for each means, what it is, and what came of it last."""

    def __init__(
        self, canvas: Canvas, form: Form, reminding: DeskReminding, parent: QWidget
    ) -> None:
        """Put the ticks into `form`."""
        super().__init__(parent)
        self._reminding = reminding
        self.outcomes: dict[Means, Line] = {}
        self.failures: dict[Means, Line] = {}
        self.fields: dict[Means, FlagField] = {}
        self.ring = verb(translate("reminding", "Ring me now"), self._ring, self)
        self.rung = Line(canvas, "", self, font="small", colour="quiet")
        grid = QGridLayout()
        grid.setHorizontalSpacing(18)
        grid.setVerticalSpacing(4)
        for row, means in enumerate(MEANS):
            self._add(canvas, form, grid, row, means)
        grid.setColumnStretch(1, 1)
        foot = QHBoxLayout()
        foot.setSpacing(12)
        foot.addWidget(self.ring)
        foot.addWidget(self.rung, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(8)
        layout.addLayout(grid)
        layout.addLayout(foot)
        reminding.told.connect(self.show_outcomes)
        self.show_outcomes()

    def _add(
        self, canvas: Canvas, form: Form, grid: QGridLayout, row: int, means: Means
    ) -> None:
        field = FlagField(canvas, capital(reminder_word(means)), self)
        self.fields[means] = field
        place = QVBoxLayout()
        form.add(field_of(means), field, into=place)
        place.addStretch(1)
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(Line(canvas, _what(means), self))
        self.outcomes[means] = Line(canvas, "", self, font="small", colour="quiet")
        self.failures[means] = Line(canvas, "", self, font="small", colour="now")
        words.addWidget(self.outcomes[means])
        words.addWidget(self.failures[means])
        grid.addLayout(place, row, 0)
        grid.addLayout(words, row, 1)

    def show_reminding(self, reminding: Reminding) -> dict[str, object]:
        """The values of the ticks."""
        return {field_of(means): means not in reminding.means_off for means in MEANS}

    def show_outcomes(self) -> None:
        """Say of each means what came of it last."""
        for means, line in self.outcomes.items():
            why = self._reminding.outcomes.get(means.value)
            line.say("" if why else _outcome(means, tried=why is not None))
            self.failures[means].say(f"{_SIGN} {why}" if why else "")

    def _ring(self) -> None:
        self.ring.setEnabled(False)
        self.rung.say(translate("reminding", "Trying every means…"))
        self._reminding.ring_now(lambda _told: self._rang(), self._failed)

    def _rang(self) -> None:
        self.ring.setEnabled(True)
        failed = [means for means in MEANS if self._reminding.outcomes.get(means.value)]
        if not failed:
            said = translate("reminding", "Every means was tried and none has failed.")
        else:
            names = ", ".join(reminder_word(means) for means in failed)
            said = translate("reminding", "Every means was tried; not working: {means}.")
            said = said.format(means=names)
        self.rung.say(said)

    def _failed(self, why: str) -> None:
        self.ring.setEnabled(True)
        self.rung.say(f"{_SIGN} {why}")


def _outcome(means: Means, *, tried: bool) -> str:
    if not tried:
        return translate("reminding", "Not tried since the desk was opened.")
    if means is Means.SOUND:
        return translate(
            "reminding", "It was sounded; whether it can be heard, only you can tell."
        )
    return translate("reminding", "It worked the last time.")


def _what(means: Means) -> str:
    return {
        Means.NOTIFICATION: translate(
            "reminding", "A notice of the system, with Done, a later time, and Open on it."
        ),
        Means.TRAY: translate(
            "reminding", "A message from the tray, where no notification comes through."
        ),
        Means.SOUND: translate(
            "reminding",
            "The computer's own short sound; this program brings no sound of its own.",
        ),
    }[means]
