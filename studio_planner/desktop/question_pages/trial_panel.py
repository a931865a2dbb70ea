"""Trying a change: the verbs, how it goes, and the plans without and with it side by side."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from studio_planner.craft.errors import InvalidEntry, StudioError
from studio_planner.desktop.question_pages.answer_view import AnswerView
from studio_planner.desktop.question_pages.beside_view import BesideView
from studio_planner.desktop.question_pages.heat_figures import HeatFigures
from studio_planner.desktop.question_pages.trial_run import TrialRun
from studio_planner.desktop.question_pages.voice import QuestionVoice
from studio_planner.desktop.thread_work import ThreadWork
from studio_planner.desktop.tongue import translate
from studio_planner.services.desk import DeskView
from studio_planner.services.editing.changes import Change, bears_on_plan
from studio_planner.services.questions.asking import Answer, Sign
from studio_planner.services.questions.sentences import said
from studio_planner.services.trying.comparing_trials import compared
from studio_planner.services.trying.deserving import deserved
from studio_planner.services.trying.trial import as_followed, done_with

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.trying.trial import Trial, WhatIf


@dataclass(frozen=True, slots=True)
class Asked:
    """What is tried: the question, what was given, the studio it was asked of, the trial."""

    what_if: WhatIf
    given: Mapping[str, Any]
    view: DeskView
    trial: Trial


class TrialPanel(QWidget):
    """The answer to one what-if question; the newest question counts, older ones are dropped.

    Beside the change the studio is planned again as it is, for as long, and both are compared.

    Signals:
        answered: both are planned, and the answer stands.
        done: what was tried is done in the studio now.
    """

    answered = Signal()
    done = Signal()

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Try nothing yet."""
        super().__init__(parent)
        self._desk = desk
        self._asked: Asked | None = None
        self._so_far: Studio | None = None
        self._planned: Studio | None = None
        self._again: Studio | None = None
        self._answered = False
        self.weighing = ThreadWork(self)
        self.try_with(TrialRun(self), TrialRun(self))
        self.try_button = QPushButton(translate("questions", "Try it"), self)
        self.stop_button = QPushButton(translate("questions", "Stop trying"), self)
        self.do_button = QPushButton(translate("questions", "Do it"), self)
        self._how = QLabel(self)
        self._to_do = QLabel(self)
        self.answer = AnswerView(desk.canvas, self)
        self.beside = BesideView(desk.canvas, self)
        self.heat = HeatFigures(desk.canvas, desk.changes, self)
        self._lay_out()
        self.stop_button.clicked.connect(self._stop)
        self.do_button.clicked.connect(self.do_it)
        self.clear()

    def _lay_out(self) -> None:
        verbs = QHBoxLayout()
        verbs.setSpacing(10)
        for part in (self.try_button, self.stop_button):
            verbs.addWidget(part)
        verbs.addStretch(1)
        for label in (self._how, self._to_do):
            label.setWordWrap(True)
            label.setTextFormat(Qt.TextFormat.PlainText)
        doing = QHBoxLayout()
        doing.setSpacing(10)
        doing.addWidget(self.do_button)
        doing.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(14)
        layout.addLayout(verbs)
        layout.addWidget(self._how)
        layout.addWidget(self.answer)
        layout.addWidget(self._to_do)
        layout.addLayout(doing)
        layout.addWidget(self.heat)
        layout.addWidget(self.beside)
        layout.addStretch(1)

    def try_with(self, run: TrialRun, without: TrialRun) -> TrialRun:
        """Listen to runs with and without the change, and use them from now on."""
        run.better.connect(self._better)
        run.found.connect(self._found)
        run.failed.connect(self._failed)
        without.better.connect(self._better_without)
        without.found.connect(self._found_without)
        without.failed.connect(self._failed_without)
        self.run, self.without = run, without
        return run

    @property
    def how(self) -> str:
        """How the trial goes; empty when nothing is said."""
        return "" if self._how.isHidden() else self._how.text()

    @property
    def to_do(self) -> str:
        """What the maker does where the studio itself stays as it is."""
        return "" if self._to_do.isHidden() else self._to_do.text()

    def clear(self) -> None:
        """Drop what is tried, and its answer."""
        self.run.drop()
        self.without.drop()
        self._asked = self._so_far = self._planned = self._again = None
        self._answered = False
        self._say_how(
            translate("questions", "It is planned on a copy, in some seconds; nothing changes.")
        )
        self.answer.clear()
        self.beside.clear()
        self.heat.hide()
        self.do_button.hide()
        self._to_do.hide()
        self._offer()

    def ask(self, what_if: WhatIf, view: DeskView, given: Mapping[str, Any]) -> None:
        """Try something; InvalidEntry where what is given breaks a rule of the craft."""
        self.clear()
        # A moment of its own: the view's moves on while the trial is planned.
        still = DeskView(view.studio, view.now)
        try:
            trial = what_if.tried(still, given)
            self.run.start(trial, still.now)
            self.without.start(replace(trial, studio=still.studio), still.now)
        except InvalidEntry:
            raise
        except StudioError as error:
            self.run.drop()
            self._say(str(error))
            return
        self._asked = Asked(what_if, dict(given), still, trial)
        self._say_how(translate("questions", "Trying: the quick plan comes first…"))
        self._offer()

    def show_view(self, view: DeskView) -> None:
        """See the studio as it is now; an answer about another one is dropped."""
        asked = self._asked
        if asked is None:
            return
        before, after = asked.view.studio, view.studio
        if after.plan != before.plan or bears_on_plan(before, after):
            self.clear()
            self._say_how(
                translate("questions", "The studio is another one now; try it again.")
            )
        elif not self.heat.isHidden():
            self.heat.show_warmth(after, asked.trial.warmth)

    def do_it(self) -> None:
        """Take the tried studio with its plan, as one change that can be undone."""
        asked, planned = self._asked, self._planned
        if asked is None or planned is None:
            return

        def make(studio: Studio) -> Studio:
            trial = asked.what_if.tried(DeskView(studio, asked.view.now), asked.given)
            return self.heat.entered(done_with(trial, planned))

        words = asked.trial.words
        self.run.drop()
        self._asked = None
        if self._desk.changes.attempt(Change(words, make)):
            self.clear()
            text = translate("questions", "Done: {words}. Undo takes it back.")
            self._say_how(text.format(words=words))
            self.done.emit()
        else:
            self._asked = asked

    def _stop(self) -> None:
        self.run.stop()
        self.without.stop()

    def _better(self, _words: str, planned: Studio) -> None:
        self._so_far = planned
        self._show_so_far()

    def _better_without(self, _words: str, again: Studio) -> None:
        self._again = again
        self._show_so_far()

    def _show_so_far(self) -> None:
        asked, so_far, again = self._asked, self._so_far, self._again
        if asked is not None and so_far is not None and again is not None:
            self._show(asked, so_far, again)
            self._say_how(
                translate("questions", "So far, from the quick plan; looking for a better one…")
            )

    def _found(self, planned: Studio) -> None:
        self._planned = planned
        self._weigh()

    def _found_without(self, again: Studio) -> None:
        self._again = again
        self._weigh()

    def _failed_without(self, _why: str) -> None:
        self._weigh()

    def _weigh(self) -> None:
        """Once both are planned, see what of it the change is owed: that takes a moment."""
        asked, planned = self._asked, self._planned
        if asked is None or planned is None or self.without.running:
            return
        # What could not be planned again stays as it is planned today.
        again = self._again or as_followed(asked.view.studio, asked.view.now)
        self.weighing.do(
            lambda: deserved(planned, again), lambda made, _: self._answer(asked, made)
        )

    def _answer(self, asked: Asked, made: object) -> None:
        # Meanwhile something else may have been asked.
        if asked is not self._asked or not isinstance(made, tuple):
            return
        self._planned, again = made
        self._answered = True
        self._show(asked, self._planned, again)
        self._say_how("")
        self._offer()
        self.answered.emit()

    def _failed(self, why: str) -> None:
        self.without.drop()
        self._offer()
        self._say_how("" if why else translate("questions", "Stopped; nothing has changed."))
        if why:
            self._say(why)

    def _show(self, asked: Asked, planned: Studio, again: Studio) -> None:
        trial = asked.trial
        comparison = compared(asked.view, trial, planned, again)
        warm = trial.warmth is not None
        answer = Answer(comparison.sign, comparison.verdict, comparison.lines, caution=warm)
        self.answer.show_answer(planned, answer)
        self.beside.show_comparison(asked.view, comparison)
        self.heat.show_warmth(asked.view.studio, trial.warmth)

    def _offer(self) -> None:
        running = self.run.running or self.without.running
        self.stop_button.setVisible(running)
        asked = self._asked
        to_do = None if asked is None or not self._answered else asked.trial.to_do
        self._to_do.setVisible(to_do is not None)
        if to_do is not None and asked is not None:
            self._to_do.setText(to_do.words(QuestionVoice(asked.view.studio)))
        self.do_button.setVisible(self._answered)
        self.do_button.setText(
            translate("questions", "Do it all the same")
            if self.answer.sign is Sign.NO
            else translate("questions", "Do it")
        )

    def _say_how(self, words: str) -> None:
        self._how.setText(words)
        self._how.setVisible(bool(words))

    def _say(self, words: str) -> None:
        studio = None if self._desk.session is None else self._desk.session.studio
        if studio is not None:
            # The sentence is said as it is, whatever braces are in it.
            answer = Answer(Sign.OPEN, said("{words}", words=words))
            self.answer.show_answer(studio, answer)
