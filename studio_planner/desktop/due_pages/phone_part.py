"""The calendar for the phone: files to write, and how they get there."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QVBoxLayout, QWidget

from studio_planner.desktop.forms.fields import ChoiceField
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.wrapping import Wrapping
from studio_planner.services.calendar.phones import phone_families

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.reminding.calendar_files import CalendarFiles


class PhonePart(QWidget):
    """Verbs for each file, and the steps on the chosen family of phones."""

    def __init__(self, canvas: Canvas, files: CalendarFiles, parent: QWidget) -> None:
        """Write by `files`."""
        super().__init__(parent)
        self._files = files
        self.whole = verb(translate("reminding", "The whole plan…"), files.write_plan, self)
        self.week = verb(translate("reminding", "This week…"), files.write_week, self)
        self.trial = verb(translate("reminding", "A test event…"), files.write_trial, self)
        self.order = ChoiceField(canvas, translate("reminding", "One order"), (), self)
        self.write_order = verb(translate("reminding", "This order…"), self._write_order, self)
        names = [(number, one.name) for number, one in enumerate(phone_families())]
        self.family = ChoiceField(canvas, translate("reminding", "Your phone"), names, self)
        self.steps = Line(canvas, "", self)
        self.family.edited.connect(self._show_steps)
        self._lay_out()
        self._show_steps()

    def _lay_out(self) -> None:
        verbs, order = Wrapping(across=6), Wrapping(across=6)
        verbs.add(self.whole, self.week, self.trial)
        order.add(self.order, self.write_order)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(8)
        layout.addLayout(verbs)
        layout.addLayout(order)
        layout.addWidget(self.family)
        layout.addWidget(self.steps)

    def show_studio(self, studio: Studio) -> None:
        """Offer its orders."""
        self.order.offer([(order.key, order.name) for order in studio.orders])
        for widget in (self.order, self.write_order):
            widget.setVisible(bool(studio.orders))
        for button in (self.whole, self.week, self.write_order):
            button.setEnabled(studio.plan is not None)

    def _write_order(self) -> None:
        self._files.write_order(self.order.value() or "")

    def _show_steps(self) -> None:
        family = phone_families()[self.family.value() or 0]
        self.steps.say(
            "\n".join(f"{number}. {step}" for number, step in enumerate(family.steps, start=1))
        )
