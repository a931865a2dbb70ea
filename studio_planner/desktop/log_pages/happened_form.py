"""The form in which the maker says what happened, or what should have stood there."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.log import EntryKind, LogEntry
from studio_planner.craft.tongue import capital
from studio_planner.desktop.forms.fields import ChoiceField, TextField
from studio_planner.desktop.log_pages import choices
from studio_planner.desktop.log_pages.about_words import what_follows
from studio_planner.desktop.log_pages.told import FIELDS, told_anew, told_right
from studio_planner.desktop.log_pages.when_fields import NowField
from studio_planner.desktop.log_pages.written_form import WRITE, WrittenForm
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.services.log_book.pours import planned_minutes
from studio_planner.services.log_book.taps import next_coat, usual_coat
from studio_planner.services.log_book.touch_words import how_felt

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import datetime

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk

_TIMES = ("at", "start", "end")

_LAST = frozenset({EntryKind.SHIPPED, EntryKind.SPOILED, EntryKind.STRIPPED})
"""What must not lie ready for the next tap: it is told of a piece once, and ends something."""


class HappenedForm(QWidget):
    """Nothing is written before the maker says so; what is wrong stands beside its field.

    Signals:
        written: something was written down, or corrected.
        left: a correction is not wanted after all.
    """

    written = Signal()
    left = Signal()

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Ask of no studio yet."""
        super().__init__(parent)
        canvas = desk.canvas
        self._desk = desk
        self._studio: Studio | None = None
        self._corrects: LogEntry | None = None
        self._shown_for: tuple[str, EntryKind | None] = ("", None)
        self.title = Line(canvas, "", self, font="clock")
        self.about = Line(canvas, "", self, font="small", colour="quiet")
        self.felt = Line(canvas, "", self, font="small", colour="quiet")
        self.form = WrittenForm(desk, self._enter, self._edited, self)
        self.write = verb(translate("happened", "Write it down"), self.write_down, self)
        self.leave = verb(translate("happened", "Leave it as it is"), self.let_go, self)
        self._add_fields()
        self._lay_out()
        self._say_what()

    def _add_fields(self) -> None:
        canvas, add = self._desk.canvas, self.form.add
        add("piece", ChoiceField(canvas, translate("happened", "Piece")))
        add("kind", ChoiceField(canvas, translate("happened", "What")))
        add("coat", ChoiceField(canvas, translate("happened", "Coat")))
        add("start", NowField(canvas, translate("happened", "A met B, or it was begun")))
        add("end", NowField(canvas, translate("happened", "The last film was spread")))
        add("at", NowField(canvas, translate("happened", "When")))
        touch = ChoiceField(canvas, translate("happened", "Touch test"))
        touch.explain(self.felt)
        add("touch", touch)
        add("verdict", ChoiceField(canvas, translate("happened", "What was found")))
        add("spot", ChoiceField(canvas, translate("happened", "Spot")))
        add("joint", ChoiceField(canvas, translate("happened", "On the coat below")))
        add("words", TextField(canvas, translate("happened", "Note (may be empty)")))

    def _lay_out(self) -> None:
        verbs = QHBoxLayout()
        verbs.setSpacing(10)
        verbs.addWidget(self.write)
        verbs.addWidget(self.leave)
        verbs.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(6)
        for part in (self.title, self.about, self.form):
            layout.addWidget(part)
        layout.addLayout(verbs)

    # What is asked

    @property
    def fields(self) -> Mapping[str, Any]:
        """The fields by their names."""
        return self.form.fields

    @property
    def corrects(self) -> LogEntry | None:
        """The entry that is being corrected."""
        return self._corrects

    @property
    def possible(self) -> bool:
        """Whether there is anything to which something can have happened."""
        studio = self._studio
        return studio is not None and (bool(studio.pieces) or self._corrects is not None)

    @property
    def begun(self) -> bool:
        """Whether something is being told: a correction, a note, or a time that was set."""
        set_back = any(not self.fields[name].follows for name in _TIMES)
        return self._corrects is not None or set_back or bool(self.fields["words"].value())

    def show_studio(self, studio: Studio | None, now: datetime) -> None:
        """Offer what a studio has; what is typed and chosen stays."""
        self._studio = studio
        self.setEnabled(studio is not None)
        if studio is None:
            return
        for name in _TIMES:
            self.fields[name].set_zone(studio.time_zone)
            self.fields[name].set_units(studio.units)
        self.fields["piece"].offer(choices.pieces(studio, self._corrects))
        self.fields["kind"].offer(choices.kinds())
        self.fields["touch"].offer(choices.touches())
        self.fields["verdict"].offer(choices.verdicts())
        self.fields["joint"].offer(choices.joints())
        self._adapt(now)

    def ask(self, piece: str, kind: EntryKind | None = None) -> None:
        """Ask about a piece, at now; without a kind whether it was poured."""
        self._corrects = None
        self.fields["piece"].show_value(piece)
        # What was told of another piece, such as stripped, must not lie ready for this one.
        self.fields["kind"].show_value(kind or EntryKind.POURED)
        self._shown_for = ("", None)
        self._clear_times()
        self.fields["words"].show_value("")
        self._adapt(self._desk.clock.now())
        self._say_what()

    def correct(self, entry: LogEntry) -> None:
        """Ask what should have stood in an entry's place."""
        studio = self._studio
        if studio is None:
            return
        self._corrects = entry
        self.fields["piece"].offer(choices.pieces(studio, entry))
        self.fields["piece"].show_value(entry.piece)
        self.fields["kind"].show_value(entry.kind)
        self._shown_for = ("", None)
        self._adapt(self._desk.clock.now())
        self.fields["coat"].show_value(entry.coat)
        for name, value in (("at", entry.at), ("start", entry.at), ("end", entry.end)):
            if value is not None:
                self.fields[name].set_back(value)
        for name in ("touch", "verdict", "joint", "words"):
            self.fields[name].show_value(getattr(entry, name))
        self.fields["spot"].show_value(entry.spot or None)
        self._say_what()

    def let_go(self) -> None:
        """Correct nothing any more."""
        entry, self._corrects = self._corrects, None
        if entry is not None:
            self.ask(entry.piece or self.fields["piece"].value(), entry.kind)
        self.left.emit()

    def tick(self, now: datetime) -> None:
        """Let times that were not set by hand go along with the clock."""
        self.fields["at"].follow(now)
        self.fields["end"].follow(now)
        self._follow_start()

    def _follow_start(self) -> None:
        """A pour that ended then was begun its usual time before."""
        studio, piece, coat = self._studio, self.fields["piece"].value(), self._coat
        known = studio is not None and any(one.key == piece for one in studio.pieces)
        if studio is None or not known or not coat:
            return
        minutes = planned_minutes(studio, piece, coat)
        self.fields["start"].follow(self.fields["end"].value() - timedelta(minutes=minutes))

    @property
    def _coat(self) -> str:
        return self.fields["coat"].value() or ""

    def _clear_times(self) -> None:
        for name in _TIMES:
            self.fields[name].follows = True
            self.fields[name].say_right()

    def _adapt(self, now: datetime) -> None:
        """Ask what belongs to the kind, and offer what the piece has."""
        studio, piece, kind = self._studio, self.fields["piece"].value(), self._kind
        if studio is None or piece is None:
            return
        self.fields["coat"].offer(choices.coats(studio, piece, kind))
        self.fields["spot"].offer(choices.spots(studio, kind))
        if self._shown_for != (piece, kind):
            self._shown_for = (piece, kind)
            self.fields["coat"].show_value(usual_coat(studio, kind, piece))
            self._first_choices(studio, piece)
        asked = FIELDS[kind]
        for name in ("coat", "start", "end", "at", "touch", "verdict", "spot", "joint"):
            self.fields[name].setVisible(name in asked)
        self.fields["kind"].setEnabled(self._corrects is None)
        self.felt.say(how_felt(self.fields["touch"].value()))
        self.tick(now)
        self.about.say(
            what_follows(studio, piece, kind)
            if self._corrects is None
            else translate("happened", "The old entry stays to be read, struck through.")
        )

    def _first_choices(self, studio: Studio, piece: str) -> None:
        for name in ("spot", "joint", "touch"):
            self.fields[name].editor.setCurrentIndex(0)
        self.fields["verdict"].show_value(self.fields["touch"].value().usual)
        if self._kind is EntryKind.POURED and not next_coat(studio, piece):
            self.fields["coat"].editor.setCurrentIndex(0)

    @property
    def _kind(self) -> EntryKind:
        return self.fields["kind"].value() or EntryKind.POURED

    def _say_what(self) -> None:
        wrong = self._corrects
        if wrong is None:
            self.title.say(translate("happened", "What happened?"))
            self.write.setText(translate("happened", "Write it down"))
        else:
            what = capital(kind_word(wrong.kind))
            text = translate("happened", "Correct: {what}")
            self.title.say(text.format(what=what))
            self.write.setText(translate("happened", "Write the correction"))
        self.write.setAccessibleName(self.write.text())
        self.leave.setVisible(wrong is not None)

    # Writing

    def write_down(self) -> None:
        """Write what the fields say; what is wrong with it is said beside them."""
        if self.form.enter(WRITE):
            said = translate("happened", "It is in the log. Undo takes it back.")
            entry, self._corrects = self._corrects, None
            if self._kind in _LAST:
                self.fields["kind"].show_value(EntryKind.POURED)
            self._clear_times()
            self.fields["words"].show_value("")
            self._shown_for = ("", None)
            self._adapt(self._desk.clock.now())
            self._say_what()
            self._desk.tell_entry(said)
            self.written.emit()
            if entry is not None:
                self.left.emit()

    def _enter(self, values: Mapping[str, Any]) -> None:
        studio, right, now = self._studio, self._corrects, self._desk.clock.now()
        if studio is None:
            return
        change = (
            told_anew(studio, values, now)
            if right is None
            else told_right(studio, right, values, now)
        )
        self._desk.changes.make(change)

    def _edited(self, name: str) -> None:
        if name == "touch":
            self.fields["verdict"].show_value(self.fields["touch"].value().usual)
        self._adapt(self._desk.clock.now())
