"""The weights of a pour, written down afterwards; what is left out stays unknown."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QCompleter, QHBoxLayout, QVBoxLayout, QWidget

from studio_planner.desktop import words
from studio_planner.desktop.forms.fields import ChoiceField, NumberField, TextField
from studio_planner.desktop.forms.moment_field import MomentField
from studio_planner.desktop.log_pages.colourants_field import ColourantsField
from studio_planner.desktop.log_pages.written_form import WRITE, WrittenForm
from studio_planner.desktop.quantities import Quantity
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.services.log_book.afterwards import (
    asked_of,
    coats_words,
    from_known_mix,
    known_mixes,
    told_of,
    weights_told,
)
from studio_planner.services.log_book.lots import lot_words
from studio_planner.services.log_book.trace_words import mix_words
from studio_planner.services.log_book.weighings import next_batch

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.log import LogEntry
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.log_book.afterwards import Afterwards

_OF_NEW = ("at", "a_grams", "b_grams", "lot_a", "lot_b", "colourants")


class WeightsForm(QWidget):
    """A small form; the whole of it is one change.

    Signals:
        left: the weights are written down, or not wanted after all.
    """

    left = Signal()

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Ask of nothing yet."""
        super().__init__(parent)
        canvas = desk.canvas
        self._desk = desk
        self._studio: Studio | None = None
        self._asked: Afterwards | None = None
        self.title = Line(canvas, translate("weights", "Its weights"), self, font="clock")
        self.about = Line(canvas, "", self)
        self.known = Line(canvas, "", self, font="small", colour="quiet")
        self.form = WrittenForm(desk, self._enter, self._edited, self)
        self._add_fields()
        self.write = verb(translate("weights", "Write the weights down"), self._write, self)
        self.leave = verb(translate("weights", "Leave it as it is"), self.left.emit, self)
        verbs = QHBoxLayout()
        verbs.setSpacing(10)
        verbs.addWidget(self.write)
        verbs.addWidget(self.leave)
        verbs.addStretch(1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(6)
        for part in (self.title, self.about, self.form, self.known):
            layout.addWidget(part)
        layout.addLayout(verbs)

    def _add_fields(self) -> None:
        canvas, add = self._desk.canvas, self.form.add
        mass = Quantity.MASS
        add("batch", ChoiceField(canvas, translate("weights", "Mix")))
        add("at", MomentField(canvas, translate("weights", "A met B")))
        add("a_grams", NumberField(canvas, translate("weights", "A weighed"), mass))
        add("b_grams", NumberField(canvas, translate("weights", "B weighed"), mass))
        add("lot_a", TextField(canvas, translate("weights", "Lot of A (if known)")))
        add("lot_b", TextField(canvas, translate("weights", "Lot of B (if known)")))
        add("colourants", ColourantsField(canvas))

    @property
    def fields(self) -> Mapping[str, Any]:
        """The fields by their names."""
        return self.form.fields

    def ask(self, studio: Studio, entry: LogEntry) -> bool:
        """Ask for the weights of a pour, or what a weighing should say; False if neither."""
        asked = asked_of(studio, entry)
        if asked is None:
            return False
        self._studio, self._asked = studio, asked
        self.about.say(coats_words(studio, asked))
        self._offer_mixes(studio, asked)
        self._offer_lots(studio, asked)
        self.fields["at"].set_zone(studio.time_zone)
        self.form.show_values(self._values(studio, asked), studio.units, fresh=True)
        self._adapt()
        return True

    def show_studio(self, studio: Studio | None) -> None:
        """Go on asking of the studio as it is now; what is typed stays."""
        self._studio = studio

    def _values(self, studio: Studio, asked: Afterwards) -> dict[str, Any]:
        mix = asked.corrects
        known = {one.batch for one in known_mixes(studio, asked)}
        return {
            "batch": asked.batch if mix is None and asked.batch in known else None,
            "at": asked.at if mix is None else mix.at,
            "a_grams": None if mix is None else mix.a_grams,
            "b_grams": None if mix is None or not asked.mixed else mix.b_grams,
            "lot_a": "" if mix is None else lot_words(studio, mix.lot_a),
            "lot_b": "" if mix is None else lot_words(studio, mix.lot_b),
            "colourants": () if mix is None else mix.colourants,
        }

    def _offer_mixes(self, studio: Studio, asked: Afterwards) -> None:
        number = next_batch(studio) if asked.corrects is None else asked.corrects.batch
        wall = words.wall_of(studio)
        new = translate("weights", "a new one, number {number}").format(number=number)
        options: list[tuple[object, str]] = [(None, new)]
        if asked.corrects is None:
            text = translate("weights", "number {number}, weighed {when}")
            options += [
                (one.batch, text.format(number=one.batch, when=words.moment(one.at, wall)))
                for one in known_mixes(studio, asked)
            ]
        else:
            same = translate("weights", "number {number}").format(number=number)
            options = [(None, same)]
        self.fields["batch"].offer(options)

    def _offer_lots(self, studio: Studio, asked: Afterwards) -> None:
        labels = [lot.label for lot in studio.lots if lot.product == asked.product]
        for name in ("lot_a", "lot_b"):
            completer = QCompleter(labels, self)
            completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
            self.fields[name].editor.setCompleter(completer)

    def _adapt(self) -> None:
        """Ask for weights of a new mix only: those of a known one are shown."""
        asked, batch = self._asked, self.fields["batch"].value()
        new = batch is None
        self.known.say("" if new else self._known_words(batch))
        for name in _OF_NEW:
            self.fields[name].setVisible(new)
        if asked is not None and not asked.mixed:
            for name in ("b_grams", "lot_b"):
                self.fields[name].hide()
        mixed = asked is None or asked.mixed
        self.fields["a_grams"].rename(
            translate("weights", "A weighed") if mixed else translate("weights", "Weighed")
        )

    def _known_words(self, batch: int) -> str:
        studio, asked = self._studio, self._asked
        mixes = () if studio is None or asked is None else known_mixes(studio, asked)
        mix = next((one for one in mixes if one.batch == batch), None)
        return "" if studio is None or mix is None else mix_words(studio, mix)

    def _write(self) -> None:
        asked, batch = self._asked, self.fields["batch"].value()
        if batch is not None or (asked is not None and not asked.mixed):
            # What is not asked can't be wrong.
            for name in ("b_grams", *(("a_grams",) if batch is not None else ())):
                self.fields[name].show_value(0.0)
        if self.form.enter(WRITE):
            self._desk.tell_entry(translate("weights", "The weights are in the log."))
            self.left.emit()

    def _edited(self, name: str) -> None:
        if name == "batch":
            self._adapt()

    def _enter(self, values: Mapping[str, Any]) -> None:
        studio, asked, now = self._studio, self._asked, self._desk.clock.now()
        if studio is None or asked is None:
            return
        if values["batch"] is not None:
            change = from_known_mix(studio, asked, values["batch"], now)
        else:
            told = told_of(
                asked,
                values["at"],
                (values["a_grams"], values["b_grams"]),
                (values["lot_a"], values["lot_b"]),
                values["colourants"],
            )
            change = weights_told(studio, asked, told, now)
        self._desk.changes.make(change)
