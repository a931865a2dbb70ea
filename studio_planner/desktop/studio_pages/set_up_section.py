"""What a new studio still lacks for a plan, in the order in which a maker enters it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop.page import Page
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.studio_pages.need_words import PLACES, titles, verbs, whys
from studio_planner.desktop.studio_pages.step_sign import StepSign
from studio_planner.desktop.tongue import translate
from studio_planner.services.needs import Need
from studio_planner.services.setting_up import ready, set_up_steps

if TYPE_CHECKING:
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView
    from studio_planner.services.needs import SetUpStep

_WIDEST = 820


class StepRow(QWidget):
    """One need: its sign and word, why it matters, what is there or lacks, and a verb."""

    def __init__(self, desk: PageDesk, need: Need, parent: QWidget) -> None:
        """Lie in the window `desk`."""
        super().__init__(parent)
        canvas = desk.canvas
        title = titles()[need]
        self._title = title
        self.sign = StepSign(canvas, self)
        self.title = Line(canvas, title, self, font="bold")
        self.state = Line(canvas, "", self, font="small_bold", colour="quiet")
        self.why = Line(canvas, whys()[need], self, font="small", colour="quiet")
        self.there = Line(canvas, "", self)
        self.lacking = Line(canvas, "", self)
        self.knowing = Line(canvas, "", self)
        page, thing = PLACES[need]
        self.verb = verb(verbs()[need], lambda: desk.go_to(page, thing), self, about=title)
        self._lay_out()

    def _lay_out(self) -> None:
        head = QHBoxLayout()
        head.addWidget(self.title, 1)
        head.addWidget(self.state)
        self.state.setWordWrap(False)
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 8, 0, 8)
        grid.setHorizontalSpacing(12)
        grid.setVerticalSpacing(2)
        grid.addWidget(self.sign, 0, 0, Qt.AlignmentFlag.AlignTop)
        grid.addLayout(head, 0, 1)
        for row, line in enumerate((self.why, self.there, self.lacking, self.knowing), 1):
            grid.addWidget(line, row, 1)
        self.verb.setMinimumWidth(132)
        grid.addWidget(self.verb, 0, 2, 5, 1, Qt.AlignmentFlag.AlignTop)
        grid.setColumnStretch(1, 1)

    def show_step(self, step: SetUpStep) -> None:
        """Show how far the need is met."""
        self.sign.done = step.done
        self.sign.update()
        self.state.say(_state_word(step))
        self.there.say(step.there)
        mark = "\N{BLACK RIGHT-POINTING TRIANGLE} "
        lacking = () if step.need.optional else step.lacking
        self.lacking.say("\n".join(mark + words for words in lacking))
        self.knowing.say("\n".join(mark + words for words in step.knowing))
        spoken = (_state_word(step), step.there, *lacking, *step.knowing)
        self.verb.setAccessibleDescription(". ".join(filter(None, spoken)))


def _state_word(step: SetUpStep) -> str:
    if step.done:
        word = translate("set-up", "there, see below")
        return word if step.knowing else translate("set-up", "there")
    if step.need.optional:
        return translate("set-up", "can wait")
    return translate("set-up", "still lacks")


class SetUpSection(Page):
    """All needs in order, the next one at the top in one sentence with its verb."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Lie in the window `desk`, of no studio yet."""
        super().__init__(desk, parent)
        canvas = self.canvas
        self._next: Need | None = None
        self.title = Line(canvas, translate("set-up", "Set-up"), self, font="clock")
        self.summary = Line(canvas, "", self)
        self.begin = verb(translate("set-up", "Plan"), self._begin, self)
        self.rows = {need: StepRow(desk, need, self) for need in Need}
        self._lay_out()

    def _lay_out(self) -> None:
        column = QWidget(self)
        column.setMaximumWidth(_WIDEST)
        layout = QVBoxLayout(column)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(4)
        head = QHBoxLayout()
        head.addWidget(self.summary, 1)
        head.addWidget(self.begin)
        self.begin.setMinimumWidth(132)
        layout.addWidget(self.title)
        layout.addLayout(head)
        for row in self.rows.values():
            layout.addWidget(row)
        layout.addStretch(1)
        whole = QHBoxLayout(self)
        whole.setContentsMargins(20, 12, 16, 12)
        whole.addWidget(column, 10)
        whole.addStretch(1)

    @override
    def show_view(self, view: DeskView | None) -> None:
        self.setEnabled(view is not None)
        if view is None:
            self.summary.say(translate("set-up", "Open a studio, or make a new one."))
            self.begin.hide()
            return
        steps = set_up_steps(view.studio, view.now)
        for step in steps:
            self.rows[step.need].show_step(step)
        self._next = None if ready(steps) else next(s.need for s in steps if not s.done)
        self._say_summary(steps, planned=view.plan is not None)

    def _say_summary(self, steps: tuple[SetUpStep, ...], *, planned: bool) -> None:
        self.begin.setVisible(self._next is None)
        again = translate("set-up", "Plan again")
        self.begin.setText(again if planned else translate("set-up", "Plan"))
        self.begin.setAccessibleName(self.begin.text())
        if self._next is None:
            self.summary.say(
                translate("set-up", "Everything that a plan needs is there.")
                if planned
                else translate(
                    "set-up", "Everything that a plan needs is there: planning can begin."
                )
            )
        else:
            needed = [step for step in steps if not step.need.optional]
            done = sum(1 for step in needed if step.done)
            self.summary.say(
                translate("set-up", "{done} of {all} are there. Next: {next}.").format(
                    done=done, all=len(needed), next=titles()[self._next]
                )
            )

    def _begin(self) -> None:
        self.desk.go_to("plan")
        self.desk.verbs["plan"].trigger()
