"""The page of questions: what can be tried, and what is answered at once."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QScrollArea, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop.page import Page
from studio_planner.desktop.question_pages.answer_view import AnswerView
from studio_planner.desktop.question_pages.parameter_form import ParameterForm
from studio_planner.desktop.question_pages.question_list import QuestionList
from studio_planner.desktop.question_pages.trial_panel import TrialPanel
from studio_planner.desktop.question_pages.voice import question_words
from studio_planner.desktop.tongue import translate
from studio_planner.services.questions.every import QUESTIONS
from studio_planner.services.trying.every import WHAT_IFS

if TYPE_CHECKING:
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView
    from studio_planner.services.questions.asking import Question
    from studio_planner.services.trying.trial import WhatIf

_WIDEST = 900


class QuestionsPage(Page):
    """Questions at the left; of the chosen one what it wants to know, and its answer."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Ask of no studio yet."""
        super().__init__(desk, parent)
        self._view: DeskView | None = None
        self._given: dict[str, dict[str, Any]] = {}
        self._minute = 0
        self._what_ifs: dict[str, WhatIf] = {one.key: one for one in WHAT_IFS}
        self._questions: dict[str, Question] = {one.key: one for one in QUESTIONS}
        self.list = QuestionList(self.canvas, self)
        self._title = QLabel(self)
        self.form = ParameterForm(self.canvas, self)
        self.answer = AnswerView(self.canvas, self)
        self.trial = TrialPanel(desk, self)
        self._lay_out()
        self.list.choose(WHAT_IFS[0].key)
        self.list.chosen.connect(lambda _key: self._show_chosen())
        self.form.entered.connect(self._entered)
        self.trial.try_button.clicked.connect(self.try_it)
        self.canvas.redrawn.connect(self._time_passes)
        self._show_chosen()

    def _lay_out(self) -> None:
        self._title.setFont(self.canvas.fonts.title)
        self._title.setWordWrap(True)
        self._title.setTextFormat(Qt.TextFormat.PlainText)
        inside = QWidget(self)
        inside.setMaximumWidth(_WIDEST)
        column = QVBoxLayout(inside)
        column.setContentsMargins(18, 0, 18, 12)
        column.setSpacing(14)
        for part in (self._title, self.form, self.answer, self.trial):
            column.addWidget(part)
        column.addStretch(1)
        scroll = QScrollArea(self)
        scroll.setAccessibleName(translate("questions", "The chosen question"))
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setWidgetResizable(True)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setWidget(inside)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(14, 8, 0, 12)
        layout.addWidget(self.list)
        layout.addWidget(scroll, 1)

    @property
    def title(self) -> str:
        """What stands over the question."""
        return self._title.text()

    @override
    def show_view(self, view: DeskView | None) -> None:
        before, self._view = self._view, view
        if view is None or (before is not None and before.studio.name != view.studio.name):
            self.trial.clear()
        if view is not None:
            self.list.show_clock(view.studio.units.clock)
            self.trial.show_view(view)
        self._show_question()

    @override
    def choose(self, key: str) -> None:
        self.list.choose(key)

    def try_it(self) -> None:
        """Try what the chosen question asks, with what the fields say."""
        view, what_if = self._view, self._what_ifs.get(self.list.current_key)
        if view is not None and what_if is not None:
            self.form.attempt(lambda given: self.trial.ask(what_if, view, given))
            self._given[what_if.key] = self.form.values

    def _show_chosen(self) -> None:
        self.trial.clear()
        self._show_question()

    def _show_question(self) -> None:
        key, view = self.list.current_key, self._view
        asked = self._what_ifs.get(key) or self._questions.get(key)
        for part in (self.form, self.answer, self.trial):
            part.setVisible(False)
        if view is None or asked is None:
            self._title.setText(translate("questions", "Open a studio first."))
            return
        self._title.setText(question_words(asked, view.studio.units.clock))
        self.form.show_parameters(
            asked.parameters(view), view.studio.units, self._given.get(key, {})
        )
        self.form.setVisible(bool(self.form.fields))
        self.trial.setVisible(key in self._what_ifs)
        if key in self._questions:
            self._answer_now()

    def _entered(self) -> None:
        self._given[self.list.current_key] = self.form.values
        if self.list.current_key in self._questions:
            self._answer_now()
        else:
            self.trial.clear()

    def _answer_now(self) -> None:
        view, question = self._view, self._questions.get(self.list.current_key)
        if view is not None and question is not None:
            self._minute = _minute(view)
            answer = question.asked(view, self.form.values)
            self.answer.show_answer(view.studio, answer)

    def _time_passes(self) -> None:
        # The view gets the new moment after everything was told to draw it.
        QTimer.singleShot(0, self, self._answer_anew)

    def _answer_anew(self) -> None:
        view, at_once = self._view, self.list.current_key in self._questions
        if view is None or not at_once or not self.isVisible():
            return
        if _minute(view) != self._minute:
            self._show_question()


def _minute(view: DeskView) -> int:
    return int(view.now.timestamp() // 60.0)
