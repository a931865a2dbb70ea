"""What a new studio still lacks for a plan, in the order in which a maker enters it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop.page import Page
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.services.setting_up import Need, ready, set_up_steps

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView
    from studio_planner.services.setting_up import SetUpStep

_SIGN = 22
_WIDEST = 820

_PLACES: dict[Need, tuple[str, str]] = {
    Need.HANDS: ("studio", "hands"),
    Need.ROOM: ("studio", "room"),
    Need.SPOT: ("studio", "room"),
    Need.PRODUCT: ("products", ""),
    Need.PIECE: ("pieces", ""),
    Need.ORDER: ("orders", ""),
}
"""The page where each need is met, and the thing on it."""


def _titles() -> dict[Need, str]:
    return {
        Need.HANDS: translate("set-up", "Hands and their hours"),
        Need.ROOM: translate("set-up", "The room's temperature"),
        Need.SPOT: translate("set-up", "A level spot"),
        Need.PRODUCT: translate("set-up", "A product with its data sheet"),
        Need.PIECE: translate("set-up", "A piece with its coats"),
        Need.ORDER: translate("set-up", "An order"),
    }


def _whys() -> dict[Need, str]:
    return {
        Need.HANDS: translate(
            "set-up",
            "A pour takes an hour or more of somebody's hands, and a window is of use only "
            "when somebody is there and awake.",
        ),
        Need.ROOM: translate(
            "set-up",
            "The room's temperature sets how fast every coat cures; its humidity says when a "
            "surface is too damp to be coated.",
        ),
        Need.SPOT: translate(
            "set-up",
            "A wet piece lies level on its spot until it can be handled. Spots decide how many "
            "pieces can be under way at once.",
        ),
        Need.PRODUCT: translate(
            "set-up",
            "From the sheet come the hours after which the next coat goes on, the piece can be "
            "handled, and packed.",
        ),
        Need.PIECE: translate(
            "set-up", "A plan is made of coats: which product, how thick, on which face."
        ),
        Need.ORDER: translate(
            "set-up",
            "Can wait. With a promised date the plan knows what has to be ready first.",
        ),
    }


def _verbs() -> dict[Need, str]:
    return {
        Need.HANDS: translate("set-up", "Enter hands"),
        Need.ROOM: translate("set-up", "Enter the room"),
        Need.SPOT: translate("set-up", "Enter spots"),
        Need.PRODUCT: translate("set-up", "Enter products"),
        Need.PIECE: translate("set-up", "Enter pieces"),
        Need.ORDER: translate("set-up", "Enter orders"),
    }


class StepSign(QWidget):
    """A mould that is empty while something lacks, and full with a tick when it is there."""

    def __init__(self, canvas: Canvas, parent: QWidget) -> None:
        """Start empty."""
        super().__init__(parent)
        self._canvas = canvas
        self.done = False
        self.setFixedSize(QSize(_SIGN, _SIGN))
        canvas.redrawn.connect(self.update)

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        theme = self._canvas.theme
        with QPainter(self) as painter:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            mould = QRectF(2.0, 4.0, 18.0, 15.0)
            if self.done:
                painter.fillRect(mould.adjusted(0, 3, 0, 0), theme.film_colour(0.55))
            painter.setPen(QPen(theme.colour("ink"), 1.6))
            sides = [mould.topLeft(), mould.bottomLeft(), mould.bottomRight(), mould.topRight()]
            painter.drawPolyline(QPolygonF(sides))
            if self.done:
                tick = [QPointF(6.0, 11.0), QPointF(9.5, 15.0), QPointF(17.5, 3.0)]
                painter.setPen(QPen(theme.colour("ink"), 2.2))
                painter.drawPolyline(QPolygonF(tick))


class StepRow(QWidget):
    """One need: its sign and word, why it matters, what is there or lacks, and a verb."""

    def __init__(self, desk: PageDesk, need: Need, parent: QWidget) -> None:
        """Lie in the window `desk`."""
        super().__init__(parent)
        canvas = desk.canvas
        title = _titles()[need]
        self._title = title
        self.sign = StepSign(canvas, self)
        self.title = Line(canvas, title, self, font="bold")
        self.state = Line(canvas, "", self, font="small_bold", colour="quiet")
        self.why = Line(canvas, _whys()[need], self, font="small", colour="quiet")
        self.there = Line(canvas, "", self)
        self.lacking = Line(canvas, "", self)
        self.knowing = Line(canvas, "", self)
        page, thing = _PLACES[need]
        self.verb = verb(_verbs()[need], lambda: desk.go_to(page, thing), self, about=title)
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
        self._say_summary(steps)

    def _say_summary(self, steps: tuple[SetUpStep, ...]) -> None:
        self.begin.setVisible(self._next is None)
        if self._next is None:
            self.summary.say(
                translate(
                    "set-up", "Everything that a plan needs is there: planning can begin."
                )
            )
        else:
            needed = [step for step in steps if not step.need.optional]
            done = sum(1 for step in needed if step.done)
            self.summary.say(
                translate("set-up", "{done} of {all} are there. Next: {next}.").format(
                    done=done, all=len(needed), next=_lowered(_titles()[self._next])
                )
            )

    def _begin(self) -> None:
        self.desk.go_to("plan")
        self.desk.verbs["plan"].trigger()


def _lowered(words: str) -> str:
    return words[:1].lower() + words[1:]
