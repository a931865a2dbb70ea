"""A missed window of a piece: the ways out, each planned on a copy before anything is done."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from studio_planner.craft.errors import StudioError
from studio_planner.desktop import words
from studio_planner.desktop.layouts import take_out
from studio_planner.desktop.page_keys import LOG
from studio_planner.desktop.piece_pages.way_row import WayRow
from studio_planner.desktop.question_pages.trial_run import TrialRun
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.services.caution import deferral
from studio_planner.services.desk import DeskView
from studio_planner.services.log_book.after_missing import choices_after, missed_windows
from studio_planner.services.log_book.planned_choices import choice_done, dates_of

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.log_book.after_missing import Missed


class MissedPanel(QWidget):
    """It is there only while a window of the piece is missed and nothing was done about it."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Show nothing yet."""
        super().__init__(parent)
        canvas = desk.canvas
        self._desk = desk
        self._still: DeskView | None = None
        self._missed: Missed | None = None
        self._waiting: list[WayRow] = []
        self._planned: dict[WayRow, Studio] = {}
        self.rows: list[WayRow] = []
        self.run = self.plan_with(TrialRun(self))
        self.title = Line(canvas, "", self, font="clock")
        self.plan = verb(translate("missed", "Plan each of them"), self.plan_each, self)
        self.poured = verb(
            translate("missed", "It was poured: write that down"), self._write_down, self
        )
        self.caution = Line(canvas, deferral(), self, font="small", colour="quiet")
        self._ways = QVBoxLayout()
        verbs = QHBoxLayout()
        verbs.setSpacing(10)
        verbs.addWidget(self.plan)
        verbs.addWidget(self.poured)
        verbs.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 6, 0, 6)
        layout.setSpacing(4)
        layout.addWidget(self.title)
        layout.addLayout(self._ways)
        layout.addLayout(verbs)
        layout.addWidget(self.caution)
        layout.setAlignment(Qt.AlignmentFlag.AlignTop)

    @property
    def needed(self) -> bool:
        """Whether a window was missed, and nothing was done about it."""
        return self._missed is not None

    def plan_with(self, run: TrialRun) -> TrialRun:
        """Listen to a run of trials, and use it from now on."""
        run.found.connect(self._found)
        run.failed.connect(self._failed)
        self.run = run
        return run

    def show_piece(self, view: DeskView, piece: str) -> None:
        """Show the ways out for a piece; while it is the same studio, what is planned stays."""
        poured = bool(view.studio.pours_of(piece))
        every = missed_windows(view) if poured else ()
        missed = next((one for one in every if one.piece == piece), None)
        still = self._still
        if still is not None and missed == self._missed and view.studio == still.studio:
            return
        self._forget()
        self._missed = missed
        if missed is not None:
            self._show_ways(DeskView(view.studio, view.now), missed)

    def _show_ways(self, still: DeskView, missed: Missed) -> None:
        # A moment of its own: the view's moves on while the ways are planned.
        self._still = still
        wall = words.wall_of(still.studio)
        text = (
            translate("missed", "{coat}: its window closed {when}.")
            if missed.closed <= still.now
            else translate("missed", "{coat}: its window closes {when}, too soon for the pour.")
        )
        self.title.say(text.format(coat=missed.name, when=words.moment(missed.closed, wall)))
        for choice in choices_after(still, missed):
            row = WayRow(self._desk.canvas, still.studio, choice, self)
            row.done.connect(lambda row=row: self._do(row))
            self._ways.addWidget(row)
            self.rows.append(row)
        self.plan.setVisible(any(row.choice.trial for row in self.rows))
        self.plan.setEnabled(True)

    def _forget(self) -> None:
        self.run.drop()
        self._still = self._missed = None
        self._waiting, self._planned = [], {}
        take_out(self._ways, *self.rows)
        self.rows = []

    # Planning

    def plan_each(self) -> None:
        """Plan every way, one after the other, each on a copy."""
        self._planned = {}
        self._waiting = [row for row in self.rows if row.choice.trial is not None]
        for row in self._waiting:
            row.do.hide()
            row.say(translate("missed", "It will be planned on a copy; nothing changes."))
        self.plan.setEnabled(False)
        self._plan_next()

    def _plan_next(self) -> None:
        if not self._waiting or self._still is None:
            self.plan.setEnabled(True)
            return
        row = self._waiting[0]
        trial = row.choice.trial
        row.say(translate("missed", "Planning it…"))
        if trial is None:
            return
        try:
            self.run.start(trial, self._still.now)
        except StudioError as error:
            self._failed(str(error))

    def _found(self, planned: Studio) -> None:
        if not self._waiting or self._missed is None:
            return
        row = self._waiting.pop(0)
        self._planned[row] = planned
        row.show_dates(dates_of(row.choice, self._missed, planned))
        self._plan_next()

    def _failed(self, why: str) -> None:
        if not self._waiting:
            return
        row = self._waiting.pop(0)
        row.say(why or translate("missed", "It was stopped; nothing has changed."))
        self._plan_next()

    def _write_down(self) -> None:
        if self._missed is not None:
            self._desk.go_to(LOG, self._missed.piece)

    def _do(self, row: WayRow) -> None:
        planned, missed, still = self._planned.get(row), self._missed, self._still
        if planned is None or missed is None or still is None:
            return
        change = choice_done(row.choice, missed, planned, still.now)
        if self._desk.changes.attempt(change):
            said = translate("missed", "Done: {words}. Undo takes it back.")
            self._desk.tell_entry(said.format(words=change.words))
