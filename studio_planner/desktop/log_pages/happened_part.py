"""Writing down and reading the log: the log at the left, beside it what is written down."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QBoxLayout, QFrame, QScrollArea, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop.log_pages.due_row import DueRow
from studio_planner.desktop.log_pages.entry_panel import EntryPanel
from studio_planner.desktop.log_pages.happened_form import HappenedForm
from studio_planner.desktop.log_pages.log_list import LogList
from studio_planner.desktop.log_pages.narrowing import Narrowing
from studio_planner.desktop.log_pages.nothing_yet import NothingYet
from studio_planner.desktop.log_pages.reading_row import ReadingRow
from studio_planner.desktop.log_pages.weights_form import WeightsForm
from studio_planner.desktop.studio_pages.lines import Line, Rule, verb
from studio_planner.desktop.tongue import translate
from studio_planner.services.log_book.log_rows import log_rows, wanted_rows

if TYPE_CHECKING:
    from PySide6.QtGui import QResizeEvent

    from studio_planner.craft.log import LogEntry
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView
    from studio_planner.services.log_book.log_rows import LogRow

_WIDE, _WRITING = 860, 400
_LIST_HEIGHT = 260
_AT_FIRST = 200
"""So many entries are read at first; the older ones when they are asked for."""


class HappenedPart(QWidget):
    """What is typed stays while the studio changes around it.

    Signals:
        trace_asked: the key of a piece of which everything is asked.
    """

    trace_asked = Signal(str)

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Show no studio yet."""
        super().__init__(parent)
        canvas = desk.canvas
        self._desk = desk
        self._view: DeskView | None = None
        self._every: tuple[LogRow, ...] = ()
        self._told_by: Studio | None = None
        self._most = _AT_FIRST
        self._weighing = False
        self.narrowing = Narrowing(canvas, self)
        self.list = LogList(canvas, self)
        self.none = Line(canvas, "", self)
        self.none.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.older = verb(translate("happened", "Show older ones"), self._show_older, self)
        self.all = verb(translate("happened", "Show all"), self.narrowing.want_all, self)
        self.entry = EntryPanel(desk, self)
        self.nothing = NothingYet(desk, self)
        self.due = DueRow(desk, self)
        self.form = HappenedForm(desk, self)
        self.weights = WeightsForm(desk, self)
        self.reading = ReadingRow(desk, self)
        self._inside = QWidget(self)
        self._columns = QBoxLayout(QBoxLayout.Direction.LeftToRight, self._inside)
        self._lay_out()
        self._connect()
        self._show_asked()

    def _lay_out(self) -> None:
        writing = self._writing = QWidget(self)
        column = QVBoxLayout(writing)
        column.setContentsMargins(0, 0, 12, 12)
        column.setSpacing(10)
        column.addWidget(self.nothing)
        column.addWidget(self.form.title)
        column.addWidget(self.due)
        for part in (self.form, self.weights, Rule(self._desk.canvas, writing), self.reading):
            column.addWidget(part)
        column.addStretch(1)
        self._scroll = QScrollArea(self)
        self._scroll.setAccessibleName(translate("happened", "Writing down"))
        self._scroll.setFrameShape(QFrame.Shape.NoFrame)
        self._scroll.setWidgetResizable(True)
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setWidget(writing)
        self._reading = reading = QVBoxLayout()
        reading.setSpacing(6)
        reading.addWidget(self.narrowing)
        reading.addWidget(self.none)
        reading.addWidget(self.list, 1)
        for button in (self.older, self.all):
            reading.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)
        reading.addWidget(self.entry)
        self._columns.setContentsMargins(0, 4, 0, 0)
        self._columns.setSpacing(24)
        self._columns.addLayout(reading, 1)
        self._columns.addWidget(self._scroll)
        whole = QScrollArea(self)
        whole.setFrameShape(QFrame.Shape.NoFrame)
        whole.setWidgetResizable(True)
        whole.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        whole.setWidget(self._inside)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(whole)

    def _connect(self) -> None:
        self.narrowing.wanted.connect(self._narrow)
        self.list.row_chosen.connect(self._chosen)
        self.entry.correct_asked.connect(self._correct)
        self.entry.weights_asked.connect(self._ask_weights)
        self.entry.trace_asked.connect(self.trace_asked)
        self.form.written.connect(self._written)
        self.form.left.connect(self._show_asked)
        self.weights.left.connect(self._leave_weights)

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        wide = self.width() >= _WIDE
        # Where there is no room for both, writing down comes first.
        self._columns.setDirection(
            QBoxLayout.Direction.LeftToRight if wide else QBoxLayout.Direction.BottomToTop
        )
        # One above the other both are as high as they need, and scroll together.
        need = self._writing.sizeHint().height()
        self._scroll.setMinimumHeight(0 if wide else need)
        self.list.setMinimumHeight(0 if wide else _LIST_HEIGHT)
        self._scroll.setMinimumWidth(_WRITING if wide else 0)
        self._scroll.setMaximumWidth(_WRITING if wide else 16_777_215)

    # What is shown

    def show_view(self, view: DeskView | None) -> None:
        """Show a studio as it is now."""
        self._view = view
        studio = None if view is None else view.studio
        self.due.show_view(view)
        self.form.show_studio(studio, self._desk.clock.now())
        self.weights.show_studio(studio)
        self.reading.show_studio(studio)
        if view is not None:
            self._take_rows(view)
            self.narrowing.offer(view.studio, self._every)
        self._narrow()
        self._show_asked()

    def _take_rows(self, view: DeskView) -> None:
        """Take every row of the log; most changes of a studio leave what was told as it is."""
        studio, before = view.studio, self._told_by
        self._told_by = studio
        if before is None or before.log is not studio.log or before.poured is not studio.poured:
            self._every = log_rows(studio, view.now)

    def tick(self) -> None:
        """Let times go along with the clock, and offer what is due by now."""
        self.form.tick(self._desk.clock.now())
        self.due.show_view(self._view)

    def _narrow(self) -> None:
        view = self._view
        if view is None:
            self.none.say(translate("happened", "Open a studio first."))
            self._make_room(narrowing=False, rows=False)
            for button in (self.older, self.all):
                button.hide()
            self.entry.show_row(None, None)
            return
        every = self._every
        rows = wanted_rows(view.studio, every, self.narrowing.asked)
        self.narrowing.say_count(len(rows), len(every))
        self._make_room(narrowing=bool(every), rows=bool(rows))
        self.older.setVisible(len(rows) > self._most)
        self.all.setVisible(bool(every) and not rows)
        self.none.say(_nothing(bool(every)) if not rows else "")
        self.list.show_rows(view.studio, rows[: self._most])
        self._chosen(self.list.chosen)

    def _make_room(self, *, narrowing: bool, rows: bool) -> None:
        """Give the room to the list; without rows to the words that say why."""
        self.narrowing.setVisible(narrowing)
        self.list.setVisible(rows)
        self.entry.setVisible(rows)
        self._reading.setStretchFactor(self.none, 0 if rows else 1)

    def _show_older(self) -> None:
        self._most += _AT_FIRST
        self._narrow()

    def _chosen(self, row: LogRow | None) -> None:
        studio = None if self._view is None else self._view.studio
        self.entry.show_row(studio, row)

    # What is asked

    @property
    def piece(self) -> str:
        """The key of the piece that is asked about; empty where there is none."""
        return self.form.fields["piece"].value() or ""

    def ask(self, piece: str) -> None:
        """Ask what happened to a piece, unless something else is being told."""
        known = self._view is not None and any(
            one.key == piece for one in self._view.studio.pieces
        )
        if known and not self.form.begun:
            self.form.ask(piece)
            self._show_asked()

    def _show_asked(self) -> None:
        """Show what is being filled in; where nothing can have happened, what is missing."""
        possible = self.form.possible
        self.weights.setVisible(self._weighing)
        for part in (self.form, self.form.title):
            part.setVisible(possible and not self._weighing)
        asks = possible and not self._weighing and self.form.corrects is None
        self.due.setVisible(asks)
        self.nothing.setVisible(self._view is not None and not possible and not self._weighing)

    def _correct(self, entry: LogEntry) -> None:
        self._weighing = False
        self.form.correct(entry)
        self._show_asked()
        self._scroll.verticalScrollBar().setValue(0)
        self.form.fields["piece"].setFocus()

    def _ask_weights(self, entry: LogEntry) -> None:
        view = self._view
        if view is None or not self.weights.ask(view.studio, entry):
            return
        self._weighing = True
        self._show_asked()
        self._scroll.verticalScrollBar().setValue(0)
        self.weights.fields["a_grams"].take_up()

    def _leave_weights(self) -> None:
        self._weighing = False
        self._show_asked()

    def _written(self) -> None:
        view = self._view
        if view is not None and view.studio.log:
            self.list.choose_entry(view.studio.log[-1].number)


def _nothing(elsewhere: bool) -> str:  # noqa: FBT001 - a fact
    if elsewhere:
        return translate("happened", "Nothing in the log is like that.")
    return translate(
        "happened",
        "Nothing was written down yet. What happens is told beside this, and is read here.",
    )
