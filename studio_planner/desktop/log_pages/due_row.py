"""What has probably just happened, each to be written down with one tap."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QPushButton, QSizePolicy, QVBoxLayout, QWidget

from studio_planner.desktop import words
from studio_planner.desktop.layouts import empty
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.services.log_book.taps import due_taps, tap_words, tapped

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView
    from studio_planner.services.log_book.taps import Tap

_MOST = 4
_TARGET = 44


class DueRow(QWidget):
    """A button for each thing that is due by the plan; one tap says that it is done now."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Offer nothing yet."""
        super().__init__(parent)
        self._desk = desk
        self._offered: list[tuple[Tap, str]] = []
        self._line = Line(desk.canvas, "", self, font="small", colour="quiet")
        self.buttons: list[QPushButton] = []
        self._row = QVBoxLayout()
        self._row.setSpacing(6)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(4)
        layout.addWidget(self._line)
        layout.addLayout(self._row)

    def show_view(self, view: DeskView | None) -> None:
        """Offer what the plan has near; buttons stay where nothing else is than before."""
        taps = () if view is None else due_taps(view)[:_MOST]
        offered = [] if view is None else [(tap, _said(view, tap)) for tap in taps]
        self._line.say(
            translate("happened", "Planned for about now; one tap says that it is done:")
            if offered
            else translate(
                "happened",
                "No step of the plan began lately or begins soon: nothing can be written down "
                "with one tap.",
            )
        )
        if offered == self._offered:
            return
        self._offered = offered
        empty(self._row)
        self.buttons = [self._button(tap, said) for tap, said in offered]
        for button in self.buttons:
            self._row.addWidget(button)

    def _button(self, tap: Tap, said: str) -> QPushButton:
        button = verb(said.replace("&", "&&"), lambda: self._tap(tap), self)
        button.setAccessibleName(said.replace("\n", ", "))
        button.setMinimumHeight(_TARGET)
        button.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        return button

    def _tap(self, tap: Tap) -> None:
        session = self._desk.session
        if session is None:
            return
        now = self._desk.clock.now()
        if self._desk.changes.attempt(tapped(session.studio, tap, now, now)):
            said = translate("happened", "It is in the log. Undo takes it back.")
            self._desk.tell_entry(said)


def _said(view: DeskView, tap: Tap) -> str:
    """What a tap says, and when the plan has it: the tap itself says that it was just now."""
    what = tap_words(view.studio, tap)
    return what if tap.planned is None else f"{what}\n{_planned_words(view, tap.planned)}"


def _planned_words(view: DeskView, planned: datetime) -> str:
    wall = words.wall_of(view.studio)
    today = planned.astimezone(wall.zone).date() == view.now.astimezone(wall.zone).date()
    when = (words.clock_time if today else words.moment)(planned, wall)
    return translate("happened", "planned {when}").format(when=when)
