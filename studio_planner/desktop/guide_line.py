"""A line over the pages that leads through a new studio until it is first planned."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop.forms.noun_list import NounList
from studio_planner.desktop.page_keys import PLAN, SET_UP
from studio_planner.desktop.pages.studio_page import StudioPage
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.studio_pages.need_words import PLACES, titles, verbs, whys
from studio_planner.desktop.studio_pages.step_sign import StepSign
from studio_planner.desktop.tongue import translate
from studio_planner.services.needs import Need
from studio_planner.services.setting_up import ready, set_up_steps

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from studio_planner.desktop.page import PageDesk
    from studio_planner.desktop.page_stack import PageStack
    from studio_planner.services.desk import DeskView
    from studio_planner.services.needs import SetUpStep

_LEAST_VERB = 132


class GuideLine(QWidget):
    """What lacks next, why it matters, and the verb that leads there.

    It is there on every page on which something is entered; the page of the set-up says all of
    it at once, and the plan has its own words while there is none.
    """

    def __init__(self, desk: PageDesk, pages: PageStack, parent: QWidget | None = None) -> None:
        """Lie over the pages of `desk`, about no studio yet."""
        super().__init__(parent)
        self._desk = desk
        self._pages = pages
        self._view: DeskView | None = None
        self._heard: StudioPage | None = None
        self.next: Need | None = None
        canvas = desk.canvas
        self.signs = {need: StepSign(canvas, self) for need in Need}
        self.said = Line(canvas, "", self, font="bold")
        self.why = Line(canvas, "", self, font="small", colour="quiet")
        order = Need.ORDER
        self.later = verb(verbs()[order], lambda: self._meet(order), self)
        self.go = verb("", self._go, self)
        for button in (self.later, self.go):
            button.setMinimumWidth(_LEAST_VERB)
        self._lay_out()
        pages.currentChanged.connect(lambda _index: self._say())
        canvas.redrawn.connect(self.update)
        self.hide()

    def _lay_out(self) -> None:
        signs = QHBoxLayout()
        signs.setSpacing(2)
        for sign in self.signs.values():
            signs.addWidget(sign)
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(self.said)
        words.addWidget(self.why)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(14, 4, 16, 6)
        layout.setSpacing(14)
        layout.addLayout(signs)
        layout.addLayout(words, 1)
        layout.addWidget(self.later, 0, Qt.AlignmentFlag.AlignVCenter)
        layout.addWidget(self.go, 0, Qt.AlignmentFlag.AlignVCenter)

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        theme = self._desk.canvas.theme
        with QPainter(self) as painter:
            painter.fillRect(self.rect(), theme.colour("panel"))
            foot = self.rect().adjusted(0, self.height() - 1, 0, 0)
            painter.fillRect(foot, theme.colour("rule"))

    def show_view(self, view: DeskView | None) -> None:
        """Lead through a studio as it is now; one that has a plan needs no guide."""
        self._view = view
        self._say()

    @property
    def leads(self) -> bool:
        """Whether it leads through a studio now, on whatever page."""
        return self._view is not None

    def _say(self) -> None:
        view = self._view
        shown = view is not None and view.plan is None and not self._told_elsewhere
        if view is not None and shown:
            self._say_steps(set_up_steps(view.studio, view.now))
        self.setVisible(shown)

    @property
    def _told_elsewhere(self) -> bool:
        page = self._pages.currentWidget()
        if isinstance(page, StudioPage):
            if page is not self._heard:
                self._heard = page
                page.section_shown.connect(lambda _key: self._say())
            return page.key == SET_UP
        return self._pages.current_key == PLAN

    def _say_steps(self, steps: tuple[SetUpStep, ...]) -> None:
        for step in steps:
            sign = self.signs[step.need]
            sign.done = step.done
            sign.update()
        lacks_order = ready(steps) and not steps[-1].done
        self.later.setVisible(lacks_order)
        if ready(steps):
            self.next = None
            self.said.say(
                translate(
                    "set-up", "Everything that a plan needs is there: planning can begin."
                )
            )
            can_wait = translate("set-up", "An order can wait. {why}")
            self.why.say(can_wait.format(why=whys()[Need.ORDER]) if lacks_order else "")
            self.go.setText(translate("set-up", "Plan"))
        else:
            self._say_next(next(step for step in steps if not step.done), steps)
        self.go.setAccessibleDescription(f"{self.said.text()} {self.why.text()}")

    def _say_next(self, lacking: SetUpStep, steps: tuple[SetUpStep, ...]) -> None:
        self.next = lacking.need
        needed = [step for step in steps if not step.need.optional]
        self.said.say(
            translate("set-up", "{title}, {number} of {all}: {lacking}").format(
                title=titles()[lacking.need],
                number=needed.index(lacking) + 1,
                all=len(needed),
                lacking=lacking.lacking[0],
            )
        )
        self.why.say(whys()[lacking.need])
        self.go.setText(verbs()[lacking.need])

    def _go(self) -> None:
        if self.next is None:
            self._desk.go_to(PLAN)
            self._desk.verbs["plan"].trigger()
        else:
            self._meet(self.next)

    def _meet(self, need: Need) -> None:
        self._desk.go_to(*PLACES[need])
        self._offer_add(last=need is Need.SPOT)

    def _offer_add(self, *, last: bool) -> None:
        """Let the keys be on Add where there is nothing yet; `last` on the last list there."""
        page = self._pages.currentWidget()
        if page is None:
            return
        seen = [one for one in page.findChildren(NounList) if one.isVisibleTo(page)]
        lists = sorted(seen, key=lambda one: one.mapTo(page, QPoint()).y())
        if lists and not lists[-1 if last else 0].current_key:
            lists[-1 if last else 0].add_button.setFocus(Qt.FocusReason.TabFocusReason)
