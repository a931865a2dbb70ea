"""The entry that is chosen in the log, and what can be done with it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from studio_planner.craft.log import EntryKind
from studio_planner.craft.tongue import sentence
from studio_planner.desktop import words
from studio_planner.desktop.log_pages.row_words import happened
from studio_planner.desktop.page_keys import PIECES, PLAN
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.services.log_book.corrections import never_happened
from studio_planner.services.log_book.entry_words import about

if TYPE_CHECKING:
    from PySide6.QtWidgets import QPushButton

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.log_book.log_rows import LogRow


class EntryPanel(QWidget):
    """One sentence and its verbs.

    Signals:
        correct_asked: the LogEntry that should have been another one.
        weights_asked: the LogEntry of a pour, or of a weighing, whose weights are to be told.
        trace_asked: the key of the piece of which everything is asked.
    """

    correct_asked = Signal(object)
    weights_asked = Signal(object)
    trace_asked = Signal(str)

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Show no entry yet."""
        super().__init__(parent)
        self._desk = desk
        self._row: LogRow | None = None
        self._studio: Studio | None = None
        self.words = Line(desk.canvas, "", self)
        self.correct = verb(translate("happened", "Correct"), self._correct, self)
        self.withdraw = verb(translate("happened", "Withdraw"), self._withdraw, self)
        self.weights = verb(translate("happened", "Weights"), self._weights, self)
        self.trace = verb(translate("happened", "Where did it come from?"), self._trace, self)
        self.show_piece = verb(translate("happened", "Show the piece"), self._piece, self)
        self.show_plan = verb(translate("happened", "Show on the plan"), self._plan, self)
        first, second = _row(self._first), _row(self._second)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 4, 0, 4)
        layout.setSpacing(6)
        layout.addWidget(self.words)
        layout.addLayout(first)
        layout.addLayout(second)

    @property
    def _first(self) -> tuple[QPushButton, ...]:
        return self.correct, self.withdraw, self.weights

    @property
    def _second(self) -> tuple[QPushButton, ...]:
        return self.trace, self.show_piece, self.show_plan

    def show_row(self, studio: Studio | None, row: LogRow | None) -> None:
        """Show a row of the log; without one say what choosing one is good for."""
        self._studio, self._row = studio, row
        for button in (*self._first, *self._second):
            button.setVisible(row is not None)
        if studio is None or row is None:
            self.words.say(
                translate("happened", "Choose an entry to correct it or to follow it up.")
            )
            return
        self.words.say(_words(studio, row))
        entry, here = row.entry, any(one.key == row.entry.piece for one in studio.pieces)
        weighed = entry.kind is EntryKind.WEIGHED
        pour = entry.kind is EntryKind.POURED
        self.correct.setVisible(row.stands and not weighed)
        self.withdraw.setVisible(row.stands)
        self.weights.setVisible(row.stands and (weighed or (pour and here)))
        self.weights.setText(
            translate("happened", "Correct the weights")
            if weighed
            else translate("happened", "Write down its weights")
        )
        self.weights.setAccessibleName(self.weights.text())
        self.trace.setVisible(bool(entry.piece))
        self.show_piece.setVisible(here)
        self.show_plan.setVisible(here)

    def _correct(self) -> None:
        if self._row is not None:
            self.correct_asked.emit(self._row.entry)

    def _weights(self) -> None:
        if self._row is not None:
            self.weights_asked.emit(self._row.entry)

    def _trace(self) -> None:
        if self._row is not None:
            self.trace_asked.emit(self._row.entry.piece)

    def _piece(self) -> None:
        if self._row is not None:
            self._desk.go_to(PIECES, self._row.entry.piece)

    def _plan(self) -> None:
        if self._row is not None:
            self._desk.go_to(PLAN, self._row.entry.piece)

    def _withdraw(self) -> None:
        row, studio = self._row, self._studio
        if row is None or studio is None:
            return
        change = never_happened(studio, row.entry, self._desk.clock.now())
        if self._desk.changes.attempt(change):
            self._desk.tell(
                translate("happened", "Withdrawn; it stays to be read. Undo takes that back.")
            )


def _words(studio: Studio, row: LogRow) -> str:
    entry, wall = row.entry, words.wall_of(studio)
    parts = [words.moment(entry.at, wall), about(studio, entry), happened(studio, entry)]
    said = sentence(", ".join(part for part in parts if part))
    if row.older_than_log:
        return said
    number = translate("happened", "Entry {number}, written {when}.")
    written = words.moment(entry.written, wall)
    return f"{said} {number.format(number=entry.number, when=written)}"


def _row(buttons: tuple[QPushButton, ...]) -> QHBoxLayout:
    row = QHBoxLayout()
    row.setSpacing(8)
    for button in buttons:
        row.addWidget(button)
    row.addStretch(1)
    return row
