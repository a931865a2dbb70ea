"""What goes on while the window is closed: the tray, and the system's own scheduler."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QVBoxLayout, QWidget

from studio_planner.desktop.forms.fields import FlagField
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.wrapping import Wrapping

if TYPE_CHECKING:
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.forms.form import Form
    from studio_planner.desktop.reminding.while_closed import WhileClosed
    from studio_planner.services.ports import Errand

_SIGN = "\N{BLACK RIGHT-POINTING TRIANGLE}"


class ClosedPart(QWidget):
    """What the scheduler would be told is said first, and done only when agreed to."""

    def __init__(
        self, canvas: Canvas, form: Form, closed: WhileClosed, parent: QWidget
    ) -> None:
        """Put the tick of the tray into `form`."""
        super().__init__(parent)
        self._closed = closed
        self._errand: Errand | None = None
        stays = translate("reminding", "Stay in the tray when the window is closed")
        self.stays = FlagField(canvas, stays, self)
        self.tray = Line(canvas, "", self, font="small", colour="quiet")
        self.state = Line(canvas, "", self)
        self.install = verb(
            translate("reminding", "Let the system remind…"), self._ask_install, self
        )
        self.remove = verb(
            translate("reminding", "Let it remind no more…"), self._ask_remove, self
        )
        self.says = Line(canvas, "", self)
        self.agree = verb(translate("reminding", "Do it"), self._do, self)
        self.refuse = verb(translate("reminding", "Leave it as it is"), self._leave_it, self)
        self._lay_out(form)

    def _lay_out(self, form: Form) -> None:
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(6)
        form.add("stays_in_tray", self.stays, into=layout)
        layout.addWidget(self.tray)
        layout.addSpacing(4)
        layout.addWidget(self.state)
        for buttons in ((self.install, self.remove), (self.agree, self.refuse)):
            row = Wrapping(across=6)
            row.add(*buttons)
            if self.agree in buttons:
                layout.addWidget(self.says)
            layout.addLayout(row)

    def show_state(self) -> None:
        """Say how it is now."""
        self.tray.say(self._of_tray())
        scheduled = self._closed.scheduled
        self.state.say(
            translate(
                "reminding",
                "With the window closed, the system's own scheduler reminds of this studio.",
            )
            if scheduled
            else translate(
                "reminding",
                "With the window closed and nothing in the tray, nobody reminds of this "
                "studio. The system's own scheduler can.",
            )
        )
        self.install.setVisible(not scheduled)
        self.remove.setVisible(scheduled)
        self._show_errand()

    def _of_tray(self) -> str:
        if self._closed.tray.available:
            return translate(
                "reminding",
                "The desk goes on without its window and can be called back; Leave, in its "
                "menu there, ends it.",
            )
        none = translate(
            "reminding",
            "There is no tray on this system: whatever is chosen here, the desk ends with its "
            "window.",
        )
        return f"{_SIGN} {none}"

    def _show_errand(self) -> None:
        asked = self._errand is not None
        for button in (self.agree, self.refuse):
            button.setVisible(asked)
        for button in (self.install, self.remove):
            button.setEnabled(not asked)
        if self._errand is not None:
            self.says.say(_words(self._errand))

    def _ask_install(self) -> None:
        self._ask(install=True)

    def _ask_remove(self) -> None:
        self._ask(install=False)

    def _ask(self, *, install: bool) -> None:
        self._errand = self._closed.errand(install=install)
        self._show_errand()
        self.agree.setFocus()

    def _leave_it(self) -> None:
        self._errand = None
        self.says.say("")
        self.show_state()

    def _do(self) -> None:
        errand, self._errand = self._errand, None
        if errand is None:
            return
        self._show_errand()
        self.says.say(translate("reminding", "The system is being told…"))
        self._closed.carry_out(errand, self._done, self._failed)

    def _done(self) -> None:
        self.says.say(translate("reminding", "Done."))
        self.show_state()

    def _failed(self, why: str) -> None:
        self.says.say(f"{_SIGN} {why}")
        self.show_state()


def _words(errand: Errand) -> str:
    runs = [
        translate("reminding", "It runs: {command}").format(command=" ".join(command))
        for command in (*errand.clears, *errand.runs)
    ]
    return "\n".join((errand.says, *runs))
